import { edgeAllRound } from '../draft/all-round.ts';
import type { GownDraft } from '../draft/draft-gown.ts';
import { runsRound } from '../gown/lines.ts';
import type { Fitting } from '../gown/sections.ts';
import { isSameOutline } from './same-outline.ts';

/** What one fitting did to the draft, for the report; mm. */
export interface FittingTrace {
  readonly date: string;
  /** Only this layer; all where absent. */
  readonly layer?: string;
  readonly side?: 'left' | 'right';
  /** All round, before and after. */
  readonly hem: readonly [number, number];
  readonly waist: readonly [number, number];
  /** Stations whose seam is longer or shorter for it: waist seam to hem, before and after. */
  readonly lengths: readonly {
    readonly station: string;
    readonly side?: 'left' | 'right';
    readonly length: readonly [number, number];
  }[];
  /** Gores whose outline changed. */
  readonly gores: readonly { readonly name: string; readonly side?: 'left' | 'right' }[];
}

type Sides = Readonly<Record<'left' | 'right', GownDraft>>;

/** Lengths that differ by less have not changed, mm: what a report rounds to. */
const CHANGED = 1e-4;

export function traceOf(fitting: Fitting, before: Sides, after: Sides): FittingTrace {
  const { date, layer, side } = fitting;
  const alike = after.left === after.right;
  const sides = alike
    ? ([[undefined, 'left']] as const)
    : ([
        ['left', 'left'],
        ['right', 'right'],
      ] as const);
  return {
    date,
    ...(layer === undefined ? {} : { layer }),
    ...(side === undefined ? {} : { side }),
    hem: [allRound(before, 'hem'), allRound(after, 'hem')],
    waist: [allRound(before, 'waist'), allRound(after, 'waist')],
    lengths: sides.flatMap(([name, key]) =>
      after[key].gown.stations.flatMap((station, i) => {
        const [was, is] = [before[key].lengths[i]!, after[key].lengths[i]!];
        if (Math.abs(was - is) < CHANGED) return [];
        return [
          {
            station: station.name,
            ...(name === undefined ? {} : { side: name }),
            length: [was, is] as const,
          },
        ];
      }),
    ),
    gores: sides.flatMap(([name, key]) =>
      after[key].pieces.flatMap((piece, i) =>
        isSameOutline(piece, before[key].pieces[i]!)
          ? []
          : [{ name: piece.gore, ...(name === undefined ? {} : { side: name }) }],
      ),
    ),
  };
}

function allRound({ left, right }: Sides, edge: 'hem' | 'waist'): number {
  const own = edgeAllRound(left, edge);
  return runsRound(left.gown) ? own : (own + edgeAllRound(right, edge)) / 2;
}
