import type { BodiceDraftSpec, BodySpec, ClosingSpec } from '../gown-file/bodice-spec.ts';
import type { BodiceSpec, Spec } from '../gown-file/spec.ts';
import type { BodiceMeasures, EdgeHeights, LacingGap } from './bodice-measures.ts';
import type { BodiceClosing, BoningRule } from './supplies.ts';

/** A spec whose bodice is drafted over a body. */
export interface DraftingSpec extends Spec {
  readonly body: BodySpec;
  readonly bodice: BodiceSpec & { readonly draft: BodiceDraftSpec };
}

export function hasBodiceDraft(spec: Spec): spec is DraftingSpec {
  return spec.bodice.draft !== undefined && spec.body !== undefined;
}

/** What the draft needs of a spec. */
export function bodiceMeasures({ body, bodice }: DraftingSpec): BodiceMeasures {
  const { draft } = bodice;
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
    lowerEdge: lowerEdge(bodice),
    lacings: draft.closing === undefined ? [] : lacingOf(draft.closing),
  };
}

/** A drop of the spec lies below the waist; heights of the draft count upwards. */
function lowerEdge({ dropBelowWaist, point }: BodiceSpec): EdgeHeights {
  return {
    above: Object.fromEntries(Object.entries(dropBelowWaist).map(([station, drop]) => [station, -drop])),
    points: point === undefined ? [] : [point],
  };
}

function lacingOf({ kind, at, side, gap }: ClosingSpec): LacingGap[] {
  if (kind !== 'lacing') return [];
  return [{ at, gap: gap ?? 0, ...(side === undefined ? {} : { side }) }];
}

export function closingsOf({ closing }: BodiceDraftSpec): BodiceClosing[] {
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

export function boningOf({ bones }: BodiceDraftSpec): BoningRule | undefined {
  if (bones === undefined) return undefined;
  const { along, also, kind, width, clear, soldBy } = bones;
  return { along, also, kind, width, clear, step: soldBy };
}
