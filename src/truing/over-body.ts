import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { GownDraft } from '../draft/draft-gown.ts';
import { PETTICOAT_AGREES } from '../geometry/tolerances.ts';
import type { Gown } from '../gown/gown.ts';
import { roundAt } from './over-petticoat.ts';
import { tighterThanBody } from './petticoat-problems.ts';

/** Holds a drafted skirt against her girths below the waist, where they are measured: what is tighter cannot be sat in. */
export function trueOverBody(gown: Gown, draft: GownDraft): Diagnostic[] {
  const { body, units } = gown;
  const edge = Math.max(...draft.gown.stations.map(({ drop }) => drop));
  const hem = Math.min(...draft.gown.stations.map(({ drop }, i) => drop + draft.lengths[i]!));
  const say = (length: number): string => tapeText(length, units);
  return (body?.girths ?? []).flatMap(({ at, below = 0, girth }, i): Diagnostic[] => {
    if (!(below > edge) || below > hem) return [];
    const skirt = roundAt(draft, below);
    if (skirt >= girth * (1 - PETTICOAT_AGREES)) return [];
    const span: Span = body!.place('girths', i, 'girth');
    return [tighterThanBody(span, at, say(skirt), say(girth))];
  });
}
