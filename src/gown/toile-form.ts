import type { ClothSpec, LayerSpec, Spec } from '../gown-file/spec.ts';

const TOILE_ALLOWANCES = { seam: 30, waist: 40, hem: 50 } as const;

const TOILE: LayerSpec = {
  name: 'toile',
  cloth: 'calico',
  hem: 'raw',
  shorter: 0,
  cutSmallerAcross: 0,
  cutSmallerAlong: 0,
  allowances: { ...TOILE_ALLOWANCES },
};

/** The file's form of a toile, for the rooms that still read it: goes with `Gown.spec`. */
export function toileForm(spec: Spec, calico: ClothSpec): Spec {
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
    ...shape
  } = rest;
  return {
    ...shape,
    gown: `${spec.gown} (toile)`,
    ...(godets === undefined ? {} : { godets: godets.map(({ layers: _layers, ...godet }) => godet) }),
    allowances: { ...TOILE_ALLOWANCES },
    roughCut: {},
    ...(overskirts === undefined
      ? {}
      : { overskirts: overskirts.map((overskirt) => ({ ...overskirt, layers: [TOILE] })) }),
    layers: [TOILE],
    cloths: {
      calico,
    },
  };
}
