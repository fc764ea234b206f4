import type { LayerSpec, Spec } from '../gown-file/spec.ts';

/** Allowances of a toile: wide enough to let out and to pin over, mm. From memory. */
export const TOILE_ALLOWANCES = { seam: 30, waist: 40, hem: 50 } as const;

/** Calico as it is usually sold, mm. Textbook width. */
const CALICO_WIDTH = 1500;

const TOILE: LayerSpec = {
  name: 'toile',
  cloth: 'calico',
  hem: 'raw',
  shorter: 0,
  cutSmallerAcross: 0,
  cutSmallerAlong: 0,
  allowances: { ...TOILE_ALLOWANCES },
};

/**
 * The same gores as a toile: one layer of calico with wide allowances, no rough cut, no edging, no trims and no prices.
 * Everything that decides the shape stays as it is.
 */
export function toileSpec(spec: Spec): Spec {
  const {
    edging: _edging,
    trims: _trims,
    bustle: _bustle,
    sewnAsOne: _sewn,
    labour: _labour,
    ...rest
  } = spec;
  const {
    notions: _notions,
    cut: _cut,
    flounces: _flounces,
    tiers: _tiers,
    godets,
    overskirts,
    // Tape shows where straps go.
    straps: _straps,
    capes,
    ...shape
  } = rest;
  return {
    ...shape,
    gown: `${spec.gown} (toile)`,
    bodice: toileBodice(spec.bodice),
    ...(capes === undefined ? {} : { capes: capes.map((cape) => ({ ...cape, layers: [TOILE] })) }),
    ...(godets === undefined ? {} : { godets: godets.map(({ layers: _layers, ...godet }) => godet) }),
    allowances: { ...TOILE_ALLOWANCES },
    roughCut: {},
    ...(overskirts === undefined
      ? {}
      : { overskirts: overskirts.map((overskirt) => ({ ...overskirt, layers: [TOILE] })) }),
    layers: [TOILE],
    cloths: {
      calico: {
        width: CALICO_WIDTH,
        selvedge: 10,
        oneWay: false,
        fold: 'any',
        shrinkage: 0,
        pricedPer: 1000,
        endLoss: 0,
        safety: 0,
      },
    },
  };
}

/** A drafted bodice in calico, with cloth left above its upper edge to draw on. */
function toileBodice(bodice: Spec['bodice']): Spec['bodice'] {
  const { draft } = bodice;
  if (draft === undefined) return bodice;
  const { name, cloth } = TOILE;
  return {
    ...bodice,
    draft: { ...draft, upperFinish: 'turned', allowances: {}, layers: [{ name, cloth, allowances: {} }] },
  };
}
