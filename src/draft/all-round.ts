import { lengthOfRun } from '../geometry/length.ts';
import { halves } from '../gown/lines.ts';
import type { GownDraft } from './draft-gown.ts';

type Chosen = (gore: { readonly name: string }) => boolean;

/** What is measured on the gores that are chosen, all together, as often as they stand in the whole skirt. */
export function allRound({ gown }: GownDraft, chosen: Chosen, measure: (gore: number) => number): number {
  return halves(gown) * gown.gores.reduce((sum, gore, i) => (chosen(gore) ? sum + measure(i) : sum), 0);
}

/** Length of an edge of the gores that are chosen, all round, mm. */
export function edgeAllRound(draft: GownDraft, edge: 'waist' | 'hem', chosen: Chosen = () => true): number {
  return allRound(draft, chosen, (i) =>
    lengthOfRun(draft.pieces[i]!.edges.find(({ name }) => name === edge)!.curves),
  );
}
