/**
 * An invented gown of any constructions: sections that are put together, each by its name. The skirt has three gores a
 * half and up to four layers, which every construction can find.
 */
export const CONSTRUCTIONS = {
  lining: { layer: '  - {name: lining, cloth: cupro, hem: turned, shorter: 2}' },
  bagged: {
    layer: `  - {name: underlay, cloth: cupro, hem: bagged, gap: {at: centre-back, from: 40, length: 30}}
  - {name: overlay, cloth: crepe, hem: bagged}`,
  },
  facing: { layer: '  - {name: tunic, cloth: crepe, hem: faced, facing: {depth: 6, cloth: cupro}}' },
  net: { layer: '  - {name: veil, cloth: tulle, hem: raw, fullness: {ratio: 2, by: gathers}}' },
  scallops: {
    layer: '  - {name: lace-layer, cloth: organza, hem: raw, edging: galloon}',
    section: 'edging: {name: galloon, from: bought-in, depth: 6, repeat: 12, scallop: 1.5}',
  },
  stones: {
    section: 'stones: [{name: crystals, layer: shell, sold-as: SS16, per-dm2: 2, over: [0, 20], from: hem}]',
  },
  closure: {
    section:
      'closure: {kind: zip, at: centre-back, starts: 2.5, opening: 22, hip: 98, entry: steps-in, finish: guard}',
  },
  petticoat: { section: 'petticoat: {hoop: 220, hoop-off-floor: 4}' },
  tiers: {
    section: 'tiers: [{name: underskirt, cloth: tulle, yoke: 96, tiers: [200, 400], depths: 30}]',
  },
  hemFlounce: { flounce: '{name: ring, layer: shell, cloth: crepe, kind: circular, depth: 20, hem: rolled}' },
  frill: { flounce: '{name: frill, layer: shell, cloth: cupro, depth: 10, above-hem: 8, hem: rolled}' },
  godet: { section: 'godets: [{name: wedge, seam: side/back, from: 60, width: 30}]' },
  braid: { trim: '{kind: horsehair, layer: shell, along: hem, width: 8}' },
  binding: { trim: '{kind: binding, layer: shell, along: hem, width: 3}' },
  slit: {
    section: 'slits: [{seam: front/side, above-hem: 40, stay: true, facing: {depth: 4, cloth: cupro}}]',
  },
  pocket: { section: 'pockets: [{seam: side/back, below-waist: 8, cloth: cupro}]' },
  loops: { section: 'loops: [{name: hangers, count: 2, length: 20, width: 0.6, cloth: cupro}]' },
  cutBinding: { trim: '{kind: binding, layer: shell, along: waist, width: 4, cloth: cupro}' },
  overskirt: {
    section: `overskirts:
  - name: court-train
    from: side/back
    gores: [{name: tail, top: 12, hem: 70}]
    lengths: {hem-width-at: 100, at: {outer-edge: 100, centre-back: 150}}
    layers: [{name: tail-shell, cloth: crepe, hem: faced}]`,
  },
  bustle: { section: 'bustle: {kind: over, clearance: 2, points: [{seam: centre-back, anchor: 12}]}' },
  bodice: {
    bodice: `bodice:
  draft:
    panels: [{name: front, on-fold: true}, {name: side}, {name: back}]
    side-seam: front/side
    reduce: {waist: 4}
    upper-edge: {centre-front: 17, front/side: 18, centre-back: 15}
  closing: {kind: lacing, at: centre-back, gap: 5, eyelets: 2.5, from-edge: 1.5}
  bones: {along: seams, kind: synthetic, width: 0.7, clear: 1.3}
  layers: [{name: strength, cloth: coutil}, {name: bodice-lining, cloth: cupro}]
body:
  girths:
    - {at: high-bust, above: 21, girth: 84}
    - {at: bust, above: 16, girth: 90, front: 47}
    - {at: underbust, above: 8, girth: 77, front: 39}
    - {at: waist, girth: 70, front: 36}
    - {at: high-hip, below: 9, girth: 87}
  bust-points-apart: 18`,
  },
} as const satisfies Readonly<
  Record<
    string,
    { [Part in 'layer' | 'section' | 'flounce' | 'trim' | 'bodice']?: string } & Readonly<
      Record<string, string>
    >
  >
>;

export type Construction = keyof typeof CONSTRUCTIONS;
export const ALL_CONSTRUCTIONS = Object.keys(CONSTRUCTIONS) as Construction[];

const WIDTHS: Readonly<Record<string, string>> = {
  cupro: 'width: 148, selvedge: 1, weight: 70, shrinkage: 1%',
  crepe: 'width: 150, selvedge: 1, weight: 210',
  organza: 'width: 140, selvedge: 1, weight: 40',
  tulle: 'width: 300, selvedge: 0, weight: 20, weave: net',
  coutil: 'width: 140, selvedge: 1, weight: 250',
};

/** The same constructions in any order give the same text. */
export function gownOf(asked: readonly Construction[]): string {
  const parts = ALL_CONSTRUCTIONS.filter((name) => asked.includes(name)).map(
    (name): Readonly<Record<string, string>> => CONSTRUCTIONS[name],
  );
  const of = (part: string): string[] => parts.flatMap((own) => own[part] ?? []);
  const bodice = of('bodice')[0] ?? 'bodice:\n  waist-seam: 72\n  bones-end: 1.3';
  const top = of('bodice').length === 0 ? 'top: 12, ' : '';
  const text = `${bodice}
gores:
  - {name: front, on-fold: true, ${top === '' ? '' : 'half-top: 12, '}half-hem: 40}
  - {name: side, ${top}hem: 40}
  - {name: back, ${top}hem: 40}
lengths: {measured: to-floor, off-floor: 2.5, hem-width-at: 100, at: {centre-front: 104, centre-back: 106}}
allowances: {seam: 1.5, waist: 1.5, hem: 1.5}
layers:
${[...of('layer'), '  - {name: shell, cloth: crepe, hem: faced}'].join('\n')}
${of('section').join('\n')}
${listed('flounces', of('flounce'))}
${listed('trims', of('trim'))}`;
  const cloths = Object.entries(WIDTHS).filter(([name]) => new RegExp(`cloth: ${name}\\b`).test(text));
  return `format: 1
gown: Trial
units: cm
${text}
cloths:
${cloths.map(([name, rest]) => `  ${name}: {${rest}}`).join('\n')}
`;
}

function listed(key: string, items: readonly string[]): string {
  return items.length === 0 ? '' : `${key}:\n${items.map((item) => `  - ${item}`).join('\n')}`;
}
