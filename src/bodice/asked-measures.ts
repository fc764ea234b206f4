import type { AskedBodice, BodiceRules, ClosingAsked } from '../gown/above-waist.ts';
import type { BodiceMeasures, LacingGap } from './bodice-measures.ts';
import type { BodiceClosing, BoningRule } from './supplies.ts';

/** What the draft needs of a bodice that is asked for. A drop lies below the waist; heights here count upwards. */
export function askedMeasures({ body, draft, drops, point }: AskedBodice): BodiceMeasures {
  const lower = Object.entries(drops).map(([station, drop]) => [station, -drop] as const);
  return {
    girths: body.girths.map(({ at, above, below, girth, front, left }) => ({
      at,
      above: above ?? (below === undefined ? 0 : -below),
      girth,
      ...(front === undefined ? {} : { front }),
      ...(left === undefined ? {} : { left }),
    })),
    ...(body.bustPointsApart === undefined ? {} : { bustPointsApart: body.bustPointsApart }),
    panels: draft.panels,
    ...(draft.sideSeam === undefined ? {} : { sideSeam: draft.sideSeam }),
    reduce: draft.reduce,
    upperEdge: { above: draft.upperEdge, points: draft.upperPoint },
    lowerEdge: { above: Object.fromEntries(lower), points: point === undefined ? [] : [point] },
    lacings: draft.closing === undefined ? [] : lacingOf(draft.closing),
  };
}

function lacingOf({ kind, at, side, gap }: ClosingAsked): LacingGap[] {
  if (kind !== 'lacing') return [];
  return [{ at, gap: gap ?? 0, ...(side === undefined ? {} : { side }) }];
}

export function closingsOf({ closing }: Pick<BodiceRules, 'closing'>): BodiceClosing[] {
  if (closing === undefined) return [];
  const { kind, at, side } = closing;
  const place = { at, ...(side === undefined ? {} : { side }) };
  if (kind !== 'lacing') return [{ kind, ...place }];
  const { gap = 0, eyelets, fromEdge, doubled, modesty, tails } = closing;
  return [
    {
      kind,
      ...place,
      gap,
      eyelets,
      fromEdge,
      doubledAtWaist: doubled,
      tails,
      ...(modesty === undefined ? {} : { modesty }),
    },
  ];
}

/** Steels are sold in lengths a centimetre, or half an inch, apart (common practice). */
const USUAL_STEP = { mm: 10, cm: 10, in: 12.7 } as const;

export function boningOf({ draft, units }: AskedBodice): BoningRule | undefined {
  if (draft.bones === undefined) return undefined;
  const { along, also, kind, width, clear, soldBy } = draft.bones;
  return { along, also, kind, width, clear, step: soldBy ?? USUAL_STEP[units] };
}
