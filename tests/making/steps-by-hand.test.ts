import { describe, expect, it } from 'vitest';
import type { UnplacedStep } from '../../src/making/order/step.ts';
import { bodiceSteps } from '../../src/making/order/steps-of-bodice.ts';
import { edgingSteps } from '../../src/making/order/steps-of-edging.ts';
import { finishingSteps } from '../../src/making/order/steps-of-finishing.ts';
import { foldSteps } from '../../src/making/order/steps-of-folds.ts';
import { hemSteps } from '../../src/making/order/steps-of-hems.ts';
import { partSteps } from '../../src/making/order/steps-of-parts.ts';
import { layerSteps } from '../../src/making/order/steps-of-seams.ts';
import { clothSteps } from '../../src/making/order/steps-on-cloth.ts';
import { waistSteps } from '../../src/making/order/steps-to-waist.ts';
import { NO_PARTS } from './no-parts.ts';

/** What each construction asks for as steps, of facts made by hand: what it waits for, what waits for it, its figures. */

const layer = (name: string, own: object = {}) => ({
  name,
  cloth: { name: `${name}-cloth`, shrinkage: 0, oneWay: false },
  gores: ['front', 'side'],
  hem: 'turned',
  shape: { smallerAcross: 0, smallerAlong: 0, shorter: 0 },
  allowances: { seam: { width: 15 }, waist: { width: 10 }, hem: { width: 24 }, named: {} },
  ...own,
});
const SHELL = layer('shell');
const GOWN = {
  layers: [layer('lining'), SHELL],
  gores: [],
  ...NO_PARTS,
  bodice: { panelled: true },
};
const BENCH = { skirt: { layers: [], stations: [], offThread: [], waist: 741 } };
const NONE = { hems: [], strips: [], stones: [], waist: { groups: [] } };
const facts = ({
  gown = {},
  skirt = {},
  ...own
}: { gown?: object; skirt?: object } & Record<string, unknown> = {}) =>
  ({ ...NONE, bench: { gown: { ...GOWN, ...gown }, skirt: { ...BENCH.skirt, ...skirt } }, ...own }) as never;
const waits = (steps: readonly UnplacedStep[]) =>
  steps.map(({ id, after, before, hold }) =>
    `${after.join(' ')} > ${id}${hold ? '!' : ''} > ${before.join(' ')}`.trim(),
  );
const workOf = (steps: readonly UnplacedStep[], id: string) => steps.find((own) => own.id === id)?.work;
const hem = (name: string, own: object = {}) => ({
  layer: name,
  finish: 'turned',
  length: 4210,
  allowance: 23,
  shorter: 0,
  roughCut: [],
  ...own,
});

describe('from hanging to the hand-over', () => {
  const steps = (own: Parameters<typeof facts>[0] = {}) => hemSteps(facts(own));

  it('hung, levelled, trimmed, fitted, finished', () => {
    expect(waits(steps())).toEqual([
      'waist-stay > hang! >',
      'hang > level! >',
      'level > trim >',
      'trim > fit! >',
      'fit bustle fell-lining bodice-lining > finish >',
    ]);
    expect(steps().map(({ work }) => work)).toEqual([
      { kind: 'hang', bias: [], onBias: [], flounces: [], petticoat: false },
      {
        kind: 'level',
        offFloor: undefined,
        train: false,
        petticoat: false,
        flounces: [],
        atHem: [],
        overskirts: [],
      },
      { kind: 'trim', layers: [], roughCut: false },
      { kind: 'fit', bustle: false },
      { kind: 'finish' },
    ]);
  });

  it('hung: what drops, what grows, what hangs with it; levelled: what has a hem of its own', () => {
    const flounce = (name: string, aboveHem: number) => ({
      name,
      aboveHem,
      sewnTo: { name: 'net' },
      layer: layer(name, { allowances: { ...SHELL.allowances, hem: { width: 9 } } }),
    });
    const own = {
      gown: {
        train: {},
        tiers: [{}],
        flounces: [flounce('frill', 0), flounce('ruche', 200)],
        overskirts: [{ name: 'tail', gown: { layers: [layer('tail-net', { shape: { shorter: 12 } })] } }],
      },
      skirt: {
        offFloor: 26,
        offThread: ['side', 'back'],
        layers: [
          { layer: SHELL, bias: { drop: 8 } },
          { layer: layer('net'), bias: {} },
          { layer: layer('felt') },
        ],
      },
      hems: [hem('net'), hem('shell', { shorter: 13 })],
    };
    expect(workOf(steps(own), 'hang')).toEqual({
      kind: 'hang',
      bias: ['side', 'back'],
      onBias: [
        { layer: 'shell', drop: 8 },
        { layer: 'net', drop: undefined },
      ],
      flounces: ['frill', 'ruche'],
      petticoat: true,
    });
    expect(workOf(steps(own), 'level')).toEqual({
      kind: 'level',
      offFloor: 26,
      train: true,
      petticoat: true,
      flounces: ['frill', 'ruche'],
      atHem: ['frill'],
      overskirts: ['tail'],
    });
    // The net has the frill for its hem.
    expect(workOf(steps(own), 'trim')).toEqual({
      kind: 'trim',
      layers: [
        { name: 'shell', below: 23, shorter: 13 },
        { name: 'frill', below: 9, shorter: 0 },
        { name: 'ruche', below: 9, shorter: 0 },
        { name: 'tail-net', below: 24, shorter: 12 },
      ],
      roughCut: false,
    });
    expect(steps(own).map(({ id }) => id)).not.toContain('hem:net');
    const rough = {
      ...own,
      hems: [
        hem('shell', { roughCut: [{ gore: 'front' }, { gore: 'side' }] }),
        hem('net', { roughCut: [{ gore: 'side' }] }),
      ],
    };
    expect(workOf(steps(rough), 'hang')).toMatchObject({ bias: ['front', 'side'] });
    expect(workOf(steps(rough), 'trim')).toMatchObject({ roughCut: true });
    expect(workOf(steps({ gown: { petticoat: {} } }), 'level')).toMatchObject({ petticoat: true });
  });

  it('hems: each by its own figures, bound ones by their binding', () => {
    const strip = (kind: string, own: object = {}) => ({
      kind,
      layer: 'shell',
      along: 'hem',
      width: 30,
      length: { length: 4215, drawnIn: 5 },
      copies: 1,
      ...own,
    });
    const own = {
      hems: [hem('lining', { finish: 'faced', surplus: { toEase: 7 } }), hem('shell', { length: 4300 })],
      gown: {
        layers: [
          layer('lining', { facing: { layer: { name: 'lining-facing', cloth: { name: 'x' } } } }),
          SHELL,
        ],
      },
      edging: { name: 'lace', hems: [{ layer: 'lining', byGore: [] }] },
    };
    expect(workOf(steps(own), 'hem:lining')).toEqual({
      kind: 'hem',
      layer: 'lining',
      finish: 'faced',
      length: 4210,
      allowance: 23,
      toEase: 7,
      facing: 'lining-facing',
      edged: true,
    });
    expect(workOf(steps(own), 'hem:shell')).toMatchObject({
      length: 4300,
      toEase: undefined,
      facing: undefined,
      edged: false,
    });
    expect(waits(steps(own).filter(({ id }) => id === 'hem:shell'))).toEqual(['trim > hem:shell > fit']);
    const stripped = steps({
      ...own,
      strips: [
        strip('horsehair'),
        strip('stay-tape', { width: 12 }),
        strip('binding', { width: 34 }),
        strip('horsehair', { along: 'waist' }),
        strip('horsehair', { layer: 'lining' }),
      ],
    });
    expect(waits(stripped.filter(({ work }) => work.kind === 'strip'))).toEqual([
      'trim > strip:shell > hem:shell fit',
      'trim > strip:shell/2 > hem:shell fit',
      'trim > strip:lining > hem:lining fit',
      'trim > hem:shell > fit',
    ]);
    expect(workOf(stripped, 'hem:shell')).toEqual({
      kind: 'strip',
      strip: { kind: 'binding', layer: 'shell', along: 'hem', width: 34, length: 4215, drawnIn: 5 },
    });
  });

  it('bagged together: braid first, then the bag, then through the gap', () => {
    const bagged = [
      hem('lining', { finish: 'bagged', partner: 'shell' }),
      hem('shell', { finish: 'bagged', partner: 'lining', length: 4300, allowance: 12 }),
    ];
    const own = {
      hems: bagged,
      gown: { layers: [layer('lining', { gap: { at: 'a/b', length: 151, from: 310 } }), SHELL] },
      strips: [{ kind: 'horsehair', layer: 'lining', along: 'hem', length: { length: 1 } }],
    };
    expect(waits(steps(own).slice(3, 6))).toEqual([
      'trim > strip:lining > hem:lining bag:lining+shell fit',
      'trim > bag:lining+shell >',
      'bag:lining+shell > turn:lining+shell > fit',
    ]);
    expect(workOf(steps(own), 'bag:lining+shell')).toEqual({
      kind: 'bag-hem',
      inner: 'lining',
      outer: 'shell',
      length: 4300,
      allowance: 12,
    });
    expect(workOf(steps(own), 'turn:lining+shell')).toEqual({
      kind: 'turn-through',
      inner: 'lining',
      outer: 'shell',
      gap: { layer: 'lining', at: 'a/b', length: 151, from: 310 },
    });
    expect(workOf(steps({ hems: bagged }), 'turn:lining+shell')).toMatchObject({ gap: undefined });
  });

  it('a bustle and a lining that is felled come last', () => {
    const last = steps({
      bustle: { kind: 'over', number: 5 },
      closure: { felled: ['lining'], at: 'centre-back', side: 'left' },
    }).slice(-4);
    expect(waits(last)).toEqual([
      'trim > fit! >',
      'fit > bustle >',
      'fit bustle > fell-lining >',
      'fit bustle fell-lining bodice-lining > finish >',
    ]);
    expect(last.slice(0, 3).map(({ work }) => work)).toEqual([
      { kind: 'fit', bustle: true },
      { kind: 'bustle', over: true, number: 5 },
      { kind: 'fell-lining', layers: ['lining'], at: 'centre-back', side: 'left' },
    ]);
    expect(workOf(steps({ bustle: { kind: 'under', number: 1 } }), 'bustle')).toMatchObject({ over: false });
    expect(steps({ closure: { felled: [] } }).map(({ id }) => id)).not.toContain('fell-lining');
  });
});

describe('an edging', () => {
  const edging = {
    name: 'lace',
    from: 'own-edges',
    start: 'centre-back',
    side: 'left',
    scallops: { highPoints: 41, lowPoints: 22 },
    hems: [
      { layer: 'lining', byGore: [] },
      {
        layer: 'shell',
        plan: { repeats: 36, ease: 4 },
        byGore: [
          { gore: 'front', lap: 1, easeOuter: 0.9 },
          { gore: 'side', lap: 0, easeOuter: 1 },
          { gore: 'side', lap: 0, easeOuter: 3 },
        ],
      },
    ],
  };
  const own = { edging, hems: [hem('lining'), hem('shell', { finish: 'raw' })] };

  it('on hems that are closed; scallops on a raw one first, and the cloth is cut away behind them', () => {
    expect(edgingSteps(facts())).toEqual([]);
    const plain = edgingSteps(facts(own));
    expect(waits(plain)).toEqual([
      'trim hem:lining > edging:lining > fit level-scallops',
      'trim hem:shell > edging:shell > fit level-scallops',
    ]);
    expect(plain.map(({ work }) => work)).toEqual([
      {
        kind: 'edging',
        name: 'lace',
        layer: 'lining',
        start: 'centre-back',
        side: 'left',
        repeats: undefined,
        ease: undefined,
        curved: false,
        hollow: [],
        own: true,
      },
      {
        kind: 'edging',
        name: 'lace',
        layer: 'shell',
        start: 'centre-back',
        side: 'left',
        repeats: 36,
        ease: 4,
        curved: true,
        hollow: ['side'],
        own: true,
      },
    ]);
    const scalloped = edgingSteps(facts({ ...own, gown: { edging: { scallop: {} } } }));
    expect(waits(scalloped)).toEqual([
      'trim hem:lining > edging:lining > fit level-scallops',
      'trim > edging:shell > fit level-scallops',
      'edging:shell > hem:shell > level-scallops fit',
      'level > level-scallops! > fit',
    ]);
    expect(scalloped.slice(2).map(({ work }) => work)).toEqual([
      { kind: 'cut-behind', layer: 'shell', edging: 'lace' },
      { kind: 'level-scallops', edging: 'lace', hang: { highPoints: 41, lowPoints: 22 } },
    ]);
    expect(
      hemSteps(facts({ ...own, gown: { edging: { scallop: {} } } })).filter(({ id }) => id === 'hem:shell'),
    ).toHaveLength(1);
    const bagged = edgingSteps(
      facts({
        edging: { ...edging, from: 'bought-in', hems: edging.hems.slice(0, 1) },
        hems: [hem('a', { finish: 'bagged', partner: 'b' }), hem('b', { finish: 'bagged', partner: 'a' })],
      }),
    );
    expect(bagged[0]!.after).toEqual(['trim', 'hem:lining', 'turn:a+b']);
    expect(bagged[0]!.work).toMatchObject({ own: false });
  });
});

describe('parts', () => {
  it('tiers, flounces and overskirts hang with the gown, and their hems are closed after it', () => {
    const own = {
      gown: {
        wrap: {},
        tiers: [
          { name: 'net', layer: layer('net'), yokeLayer: layer('yoke') },
          { name: 'tulle', layer: layer('tulle') },
        ],
        flounces: [{ name: 'frill', layer: layer('frill', { hem: 'rolled' }), sewnTo: { name: 'shell' } }],
        overskirts: [
          {
            name: 'tail',
            gown: {
              layers: [layer('t1'), layer('t2', { hem: 'faced' })],
              edgeFacing: { layer: layer('ef') },
            },
          },
        ],
      },
      stones: [
        { stones: { name: 'beads', layer: { name: 'shell' } }, count: 350, gross: 3 },
        { stones: { name: 'leaf', layer: { name: 'net' }, motif: {}, offSeat: [1, 2] }, count: 5, gross: 1 },
        { stones: { name: 'rose', layer: { name: 'net' }, places: [] }, count: 7, gross: 1 },
      ],
    };
    const steps = partSteps(facts(own));
    expect(waits(steps)).toEqual([
      'cut:net-cloth cut:yoke-cloth mark > tiers:net > hang',
      'cut:tulle-cloth mark > tiers:tulle > hang',
      'cut:frill-cloth mark seams:shell > flounce:frill > hang',
      'trim flounce:frill > flounce-hem:frill > fit',
      'cut:t1-cloth cut:t2-cloth cut:ef-cloth mark > overskirt:tail > hang',
      'trim overskirt:tail > overskirt-hem:tail > fit',
      'seams:shell > stones:beads > hang',
      'seams:net > stones:leaf > hang',
      'seams:net > stones:rose > hang',
    ]);
    expect(workOf(steps, 'flounce:frill')).toMatchObject({ open: true });
    expect(workOf(steps, 'flounce-hem:frill')).toEqual({
      kind: 'part-hem',
      name: 'frill',
      layers: [{ name: 'frill', finish: 'rolled' }],
    });
    expect(workOf(steps, 'overskirt-hem:tail')).toMatchObject({
      layers: [
        { name: 't1', finish: 'turned' },
        { name: 't2', finish: 'faced' },
      ],
    });
    expect(steps.slice(6).map(({ work }) => work)).toEqual([
      {
        kind: 'set-stones',
        name: 'beads',
        layer: 'shell',
        count: 350,
        gross: 3,
        scattered: true,
        seat: false,
      },
      { kind: 'set-stones', name: 'leaf', layer: 'net', count: 5, scattered: true, seat: true },
      { kind: 'set-stones', name: 'rose', layer: 'net', count: 7, scattered: false, seat: true },
    ]);
  });
});

describe('cloth', () => {
  it('tried, shrunk, its own edges cut off, cut by its lay, marked, stayed', () => {
    const silk = { name: 'silk', weave: 'chiffon', shrinkage: 0.03, oneWay: true };
    const own = {
      gown: {
        layers: [
          layer('lining', {
            cloth: { ...silk, name: 'cupro', weave: 'plain', shrinkage: 0, oneWay: false, stretch: true },
            gap: { at: 'a/b', length: 151 },
          }),
          layer('shell', { cloth: silk, grain: 'bias' }),
          layer('over', { cloth: silk, shape: { smallerAcross: 0.02, smallerAlong: 0, shorter: 0 } }),
        ],
        flounces: [
          { kind: 'straight', layer: layer('frill', { cloth: silk }) },
          { kind: 'circular', layer: layer('swirl', { cloth: silk }) },
        ],
      },
      edging: { name: 'lace', depth: 33, own: { cloth: 'silk' } },
      hems: [
        hem('shell', {
          roughCut: [
            { gore: 'front', depth: 31 },
            { gore: 'side', depth: 42 },
            { gore: 'back', depth: 31 },
          ],
        }),
        hem('over', {
          roughCut: [
            { gore: 'front', depth: 31 },
            { gore: 'back', depth: 31 },
          ],
        }),
      ],
      closure: { at: 'c/d', side: 'left', starts: 21, stops: 232 },
      bustle: { points: [{ seam: 'centre-back' }] },
      strips: [
        { kind: 'stay-tape', layer: 'shell', along: 'waist', width: 12, length: { length: 741 } },
        { kind: 'stay-tape', layer: 'shell', along: 'hem', width: 12, length: { length: 1 } },
        { kind: 'horsehair', layer: 'shell', along: 'a/b', width: 12, length: { length: 1 } },
      ],
    };
    const steps = clothSteps(facts(own));
    expect(waits(steps)).toEqual([
      '> test-scraps >',
      'test-scraps > shrink:silk >',
      'test-scraps shrink:silk > cut-own-edges >',
      'toile test-scraps shrink:cupro > cut:cupro >',
      'toile test-scraps shrink:silk cut-own-edges > cut:silk >',
      'cut:cupro cut:silk > mark >',
      'mark > stay-edges >',
    ]);
    expect(steps.map(({ work }) => work)).toEqual([
      {
        kind: 'test-scraps',
        cloths: [
          { name: 'cupro', weave: 'plain', shrinkage: 0 },
          { name: 'silk', weave: 'chiffon', shrinkage: 0.03 },
        ],
      },
      { kind: 'shrink', cloth: 'silk', shrinkage: 0.03 },
      { kind: 'cut-own-edges', cloth: 'silk', edging: 'lace', depth: 33 },
      {
        kind: 'cut',
        cloth: 'cupro',
        layers: ['lining'],
        strips: [],
        oneWay: false,
        bias: [],
        stretch: true,
        slippery: false,
        beaded: false,
        roughCut: [],
      },
      {
        kind: 'cut',
        cloth: 'silk',
        layers: ['shell', 'over', 'frill', 'swirl'],
        strips: ['frill'],
        oneWay: true,
        bias: ['shell'],
        stretch: true,
        slippery: true,
        beaded: false,
        roughCut: [
          { depth: 31, layers: ['shell', 'over'], gores: ['front', 'back'] },
          { depth: 42, layers: ['shell'], gores: ['side'] },
        ],
      },
      {
        kind: 'mark',
        layers: ['lining', 'shell', 'over'],
        sheers: ['shell', 'over'],
        zipEnds: { at: 'c/d', side: 'left', starts: 21, stops: 232 },
        gaps: [{ layer: 'lining', at: 'a/b', length: 151, from: undefined }],
        bustle: [{ seam: 'centre-back' }],
      },
      {
        kind: 'stay-edges',
        tapes: [
          { kind: 'stay-tape', layer: 'shell', along: 'waist', width: 12, length: 741, drawnIn: undefined },
        ],
      },
    ]);
    const plain = clothSteps(facts({ closure: { at: 'c/d' } }));
    expect(workOf(plain, 'mark')).toMatchObject({ zipEnds: undefined, gaps: [], bustle: [], sheers: [] });
    expect(workOf(plain, 'cut:shell-cloth')).toMatchObject({ stretch: false });
    const along = clothSteps(
      facts({ gown: { layers: [layer('s', { shape: { smallerAcross: 0, smallerAlong: 0.1 } })] } }),
    );
    expect(workOf(along, 'cut:s-cloth')).toMatchObject({ stretch: true });
  });
});

describe('seams, folds and fullness of a layer', () => {
  const own = {
    gown: {
      layers: [layer('lining'), SHELL],
      gores: [
        {
          name: 'front',
          fullness: {
            by: 'darts',
            darts: [{ name: 'd', takesIn: 21, length: 92, towards: 'back', at: 0.5 }],
          },
        },
        { name: 'side', fullness: { by: 'gathers', ratio: 2 } },
      ],
      round: 'mirrored',
      slits: [
        { seam: 'a/b', side: 'left', aboveHem: 300, stations: [{ name: 'a/b' }] },
        { seam: 'x/y', belowWaist: 612, stations: [] },
      ],
      pockets: [{ seam: 'a/b', side: 'right', belowWaist: 82, opening: 151, layer: layer('bag') }],
    },
    skirt: {
      stations: [
        { station: { name: 'a/b' }, finished: 1010 },
        { station: { name: 'b/c' }, finished: 1100 },
      ],
      layers: [
        {
          layer: SHELL,
          gores: ['front', 'side'],
          seams: [
            { name: 'a/b', length: 1, copies: 2, withLayer: 'lining' },
            { name: 'centre-back', length: 1, copies: 1 },
          ],
          godets: [{ name: 'g', seam: 'a/b', copies: 2, side: 511, from: 500 }],
          pleats: [{ pleat: { name: 'box' }, places: 3, folds: 2 }],
          pleatedTops: [{ gore: 'side', depth: 17 }],
          clothAtWaist: 1501,
          waist: 742,
          flare: 0.5,
        },
        {
          layer: layer('lining', { seams: 'french', grain: 'bias', tucks: { count: 2, width: 14 } }),
          gores: ['back'],
          seams: [{ name: 'b/c', length: 1, copies: 1 }],
          godets: [],
          pleats: [],
          pleatedTops: [],
          flare: 0.5,
        },
        {
          layer: layer('none', { tucks: { count: 1, width: 14 } }),
          gores: [],
          seams: [],
          godets: [],
          pleats: [],
          flare: -0.5,
        },
      ],
    },
    closure: { at: 'centre-back', side: undefined, stops: 232 },
    waist: { groups: [{ layers: ['lining', 'shell'] }, { layers: ['net'] }] },
    strips: [
      { kind: 'horsehair', layer: 'shell', along: 'a/b', width: 12, length: { length: 1010 } },
      { kind: 'stay-tape', layer: 'shell', along: 'a/b', length: { length: 1 } },
    ],
  };

  it('each layer by itself', () => {
    const steps = layerSteps(facts(own));
    expect(waits(steps)).toEqual([
      'stay-edges seams:lining > seams:shell >',
      'stay-edges > seams:lining >',
      'seams:shell > godet:shell:g > hang',
      'seams:shell > gather:shell >',
      'seams:shell gather:shell > strip-along:shell/1 > hang',
    ]);
    expect(steps.slice(0, 4).map(({ work }) => work)).toEqual([
      {
        kind: 'sew-seams',
        layer: 'shell',
        french: false,
        bias: false,
        stretch: false,
        seams: [
          expect.objectContaining({ name: 'a/b', copies: 2, withLayer: 'lining' }),
          expect.objectContaining({ name: 'centre-back', copies: 1 }),
        ],
        openAbove: { at: 'centre-back', side: undefined, stops: 232 },
        gap: undefined,
        godets: [{ name: 'g', seam: 'a/b', from: 500 }],
        // 1010 less 300.
        slits: [{ seam: 'a/b', side: 'left', from: 710 }],
        pockets: [{ seam: 'a/b', side: 'right', from: 82, to: 233 }],
      },
      {
        kind: 'sew-seams',
        layer: 'lining',
        french: true,
        bias: true,
        stretch: false,
        seams: [expect.objectContaining({ name: 'b/c' })],
        openAbove: undefined,
        gap: undefined,
        godets: [],
        slits: [],
        pockets: [],
      },
      { kind: 'godet', layer: 'shell', name: 'g', seam: 'a/b', copies: 2, side: 511 },
      {
        kind: 'gather',
        layer: 'shell',
        fullness: { by: 'gathers', ratio: 2 },
        folds: [{ gore: 'side', depth: 17 }],
        cloth: 1501,
        edge: 742,
      },
    ]);
  });

  it('darts before the seams, pleats after them, tucks before it hangs: on a flare the lower line is longer', () => {
    const steps = foldSteps(facts(own)).filter(({ id }) => !id.startsWith('press'));
    expect(waits(steps)).toEqual([
      'stay-edges > darts:shell > seams:shell',
      'seams:shell > pleat:shell:box > baste:lining+shell waist:lining+shell',
      'seams:lining > tucks:lining > hang',
      'seams:none > tucks:none > hang',
    ]);
    expect(steps.map(({ work }) => work)).toEqual([
      {
        kind: 'darts',
        layer: 'shell',
        darts: [{ name: 'd', takesIn: 21, length: 92, towards: 'back', at: 0.5, gore: 'front' }],
      },
      { kind: 'pleat', layer: 'shell', pleat: { name: 'box' }, places: 3, folds: 2 },
      // Twice its width times the flare.
      { kind: 'tucks', layer: 'lining', tucks: { count: 2, width: 14 }, toEase: 14 },
      { kind: 'tucks', layer: 'none', tucks: { count: 1, width: 14 }, toEase: 0 },
    ]);
  });
});

describe('to the waist', () => {
  const own = {
    closure: {
      kind: 'zip',
      at: 'c/d',
      side: 'left',
      takes: ['lining', 'shell'],
      felled: [],
      beside: 'sewn',
      starts: 21,
      stops: 232,
      zip: { stock: 250, shortenBy: 18 },
    },
    waist: {
      groups: [
        { layers: ['lining', 'shell'], plies: { together: 5, atCrossings: 9 } },
        { layers: ['net'], plies: { together: 2, atCrossings: 4 } },
      ],
      clearance: 7,
      secondRow: 3,
    },
    gown: {
      layers: [
        layer('lining', { shape: { smallerAcross: 0.02 } }),
        layer('shell', { gores: ['front'] }),
        layer('net', { fullness: { by: 'pleats' } }),
      ],
      gores: [{ name: 'front', fullness: { by: 'gathers' } }],
    },
    grams: 812,
  };

  it('basted, closed, joined one over the other, stayed', () => {
    const steps = waistSteps(facts(own));
    expect(waits(steps)).toEqual([
      'seams:lining gather:lining seams:shell gather:shell > baste:lining+shell >',
      'seams:lining seams:shell baste:lining+shell finish-opening > close >',
      'seams:lining seams:shell baste:lining+shell gather:lining gather:shell close bodice-close > waist:lining+shell >',
      'seams:net baste:net gather:net close bodice-close waist:lining+shell > waist:net >',
      'waist:lining+shell waist:net > waist-stay >',
    ]);
    expect(steps.map(({ work }) => work)).toEqual([
      { kind: 'baste-as-one', layers: ['lining', 'shell'], at: 'c/d', side: 'left', stops: 232 },
      {
        kind: 'close',
        closure: 'zip',
        at: 'c/d',
        side: 'left',
        layers: ['lining', 'shell'],
        starts: 21,
        stops: 232,
        zip: { stock: 250, shortenBy: 18 },
      },
      {
        kind: 'join-waist',
        layers: ['lining', 'shell'],
        plies: 5,
        crossing: 9,
        clearance: 7,
        secondRow: 3,
        panelled: true,
        gathered: ['lining', 'shell'],
        pleated: [],
        stretched: ['lining'],
      },
      {
        kind: 'join-waist',
        layers: ['net'],
        plies: 2,
        crossing: 4,
        clearance: 7,
        secondRow: 3,
        panelled: true,
        gathered: [],
        pleated: ['net'],
        stretched: [],
      },
      { kind: 'waist-stay', length: 741, grams: 812, closes: true },
    ]);
    const apart = waistSteps(facts({ ...own, closure: { ...own.closure, takes: ['shell'] } }));
    expect(workOf(apart, 'baste:lining+shell')).toMatchObject({
      at: undefined,
      side: undefined,
      stops: undefined,
    });
    expect(waistSteps(facts({ ...own, closure: undefined })).map(({ id }) => id)).not.toContain('close');
    expect(workOf(waistSteps(facts({ ...own, closure: undefined })), 'waist-stay')).toMatchObject({
      closes: false,
    });
    expect(waistSteps(facts({ ...own, gown: { ...own.gown, waist: {} } })).map(({ id }) => id)).toEqual([
      'baste:lining+shell',
      'close',
    ]);
  });

  it('an opening is finished beside a clean bodice edge, and wherever it is said with what', () => {
    const opening = (closure: object, gown: object = {}) =>
      waistSteps(
        facts({ ...own, closure: { ...own.closure, ...closure }, gown: { ...own.gown, ...gown } }),
      ).filter(({ id }) => id === 'finish-opening');
    expect(opening({})).toEqual([]);
    expect(opening({ beside: 'laced' })).toMatchObject([
      {
        after: ['seams:lining', 'seams:shell'],
        work: { beside: 'laced', finish: undefined, piece: undefined },
      },
    ]);
    expect(opening({ finish: 'placket' }, { closure: { piece: { layer: layer('strip') } } })).toMatchObject([
      {
        after: ['seams:lining', 'seams:shell', 'cut:strip-cloth'],
        work: {
          kind: 'finish-opening',
          finish: 'placket',
          piece: 'strip',
          at: 'c/d',
          side: 'left',
          beside: 'sewn',
          stops: 232,
        },
      },
    ]);
  });
});

describe('what finishes', () => {
  it('facings before what they face, bags before their seam, bias before its edge', () => {
    const facing = (name: string) => ({ layer: layer(name), depth: 61 });
    const own = {
      gown: {
        layers: [layer('lining'), layer('shell', { facing: facing('hem-facing') })],
        overskirts: [{ name: 'tail', gown: { layers: [layer('t1', { facing: facing('tail-facing') })] } }],
        capes: [{ name: 'cape', layers: [layer('c1', { facing: facing('cape-facing') })] }],
        waist: { finish: 'band', layer: layer('band'), width: 36, overlap: 33 },
        slits: [
          {
            seam: 'a/b',
            side: 'left',
            belowWaist: 612,
            stations: [],
            facing: facing('slit-facing'),
            stayLayer: layer('stay'),
          },
        ],
        pockets: [{ seam: 'a/b', side: 'right', belowWaist: 82, opening: 151, layer: layer('bag') }],
        loops: [{ layer: layer('loops'), count: 13, length: 47, width: 6 }],
        trims: [
          { bias: layer('hem-binding'), layer: { name: 'shell' }, along: 'hem' },
          { bias: layer('seam-binding'), layer: { name: 'shell' }, along: 'a/b' },
          { bias: layer('lost'), layer: { name: 'shell' }, along: 'c/d' },
        ],
      },
      strips: [
        {
          isCut: true,
          kind: 'binding',
          layer: 'shell',
          along: 'hem',
          width: 34,
          length: { length: 4210 },
          copies: 1,
        },
        {
          isCut: false,
          kind: 'horsehair',
          layer: 'shell',
          along: 'c/d',
          width: 12,
          length: { length: 1 },
          copies: 1,
        },
        {
          isCut: true,
          kind: 'binding',
          layer: 'shell',
          along: 'a/b',
          width: 35,
          length: { length: 1010 },
          copies: 2,
        },
      ],
      grams: 812,
    };
    const steps = finishingSteps(facts(own));
    expect(waits(steps)).toEqual([
      'cut:hem-facing-cloth mark > facing:shell > hem:shell',
      'cut:tail-facing-cloth mark > facing:t1 > overskirt-hem:tail',
      'cut:cape-facing-cloth mark > facing:c1 > beside:cape',
      'seams:lining seams:shell gather:lining gather:shell baste:lining+shell finish-opening close cut:band-cloth > waist:lining+shell > hang',
      'seams:lining seams:shell cut:slit-facing-cloth cut:stay-cloth > slit:1 > hang',
      'cut:bag-cloth mark > pocket:1 > seams:shell',
      'cut:loops-cloth > loops:loops > fit',
      'cut:hem-binding-cloth > bias:hem-binding > hem:shell',
      // The second of the strips along seams.
      'cut:seam-binding-cloth > bias:seam-binding > strip-along:shell/2',
    ]);
    expect(steps.map(({ work }) => work)).toEqual([
      { kind: 'facing', facing: 'hem-facing', faces: 'shell', depth: 61 },
      { kind: 'facing', facing: 'tail-facing', faces: 't1', depth: 61 },
      { kind: 'facing', facing: 'cape-facing', faces: 'c1', depth: 61 },
      {
        kind: 'own-waist',
        layers: ['lining', 'shell'],
        finish: 'band',
        shaped: false,
        width: 36,
        overlap: 33,
        wraps: false,
        sewn: 741,
        grams: 812,
      },
      {
        kind: 'slit',
        seam: 'a/b',
        side: 'left',
        from: 612,
        facing: { name: 'slit-facing', depth: 61 },
        stay: 'stay',
      },
      { kind: 'pocket', seam: 'a/b', side: 'right', from: 82, to: 233, layer: 'bag', outermost: 'shell' },
      { kind: 'loops', name: 'loops', count: 13, length: 47, width: 6 },
      { kind: 'bias', name: 'hem-binding', cloth: 'hem-binding-cloth', width: 34, length: 4210 },
      { kind: 'bias', name: 'seam-binding', cloth: 'seam-binding-cloth', width: 35, length: 2020 },
    ]);
    const wrapped = finishingSteps(
      facts({
        gown: { wrap: { overlap: 312 }, waist: { finish: 'stay', upper: 700, width: 36, overlap: 0 } },
      }),
    );
    expect(wrapped[0]!.work).toMatchObject({ overlap: 312, wraps: true, shaped: true });
    expect(wrapped[0]!.after).not.toContain('cut:band-cloth');
  });
});

describe('a bodice', () => {
  const bodice = {
    asked: {
      layers: [layer('bodice-lining'), layer('coutil'), layer('silk')],
      facing: { layer: layer('upper'), depth: 52 },
      draft: {
        closing: { at: 'centre-back' },
        upperFinish: 'faced',
        bones: { kind: 'flat-steel', width: 9, clear: 12 },
      },
    },
    lacing: { eyelets: 13 },
    bones: [{ along: 'a/b', side: 'left', casing: 303, length: 281, count: 2 }],
    tape: { length: 805, round: 701 },
    figures: { upper: 861 },
  };
  const gown = {
    straps: [{ name: 'strap', layer: layer('s'), from: 'B', to: 'C', length: 401, width: 22 }],
    capes: [
      {
        name: 'cape',
        from: 'D',
        to: 'E',
        fullness: {},
        layers: [layer('c', { hem: 'raw', edging: 'lace' })],
      },
    ],
  };
  const waist = { groups: [{ layers: ['shell'] }] };

  it('fitted first; bones after the waist is sewn; its lining last', () => {
    const steps = bodiceSteps(facts({ bodice, gown, waist }));
    expect(waits(steps)).toEqual([
      '> toile! >',
      'mark > bodice-seams >',
      'bodice-seams > casings >',
      'bodice-seams casings > bodice-layers >',
      'bodice-layers > bodice-close >',
      'waist:shell bodice-close > fit-bodice! >',
      'fit-bodice casings > bones > level',
      'cut:upper-cloth mark > upper-facing > upper-edge',
      'fit-bodice bones beside:strap beside:cape > upper-edge > fit',
      'upper-edge fit bustle fell-lining > bodice-lining >',
      'cut:s-cloth mark fit-bodice > beside:strap > fit',
      'cut:c-cloth mark fit-bodice > beside:cape > fit',
    ]);
    expect(steps.map(({ work }) => work)).toEqual([
      { kind: 'toile-bodice', laced: true },
      { kind: 'bodice-seams', layers: ['bodice-lining', 'coutil', 'silk'] },
      {
        kind: 'casings',
        layer: 'coutil',
        width: 9,
        bones: [{ along: 'a/b', side: 'left', casing: 303, count: 2 }],
      },
      { kind: 'bodice-layers', layers: ['coutil', 'silk'], tape: 805, lining: 'bodice-lining' },
      { kind: 'bodice-close', closing: { at: 'centre-back' }, lacing: { eyelets: 13 } },
      { kind: 'fit-bodice', beside: ['strap', 'cape'] },
      {
        kind: 'bones',
        material: 'flat-steel',
        clear: 12,
        bones: [{ along: 'a/b', side: 'left', length: 281, count: 2 }],
      },
      { kind: 'upper-facing', facing: 'upper', depth: 52 },
      { kind: 'upper-edge', finish: 'faced', length: 861, facing: 'upper' },
      { kind: 'bodice-lining', layer: 'bodice-lining' },
      { kind: 'strap', name: 'strap', from: 'B', to: 'C', length: 401, width: 22 },
      {
        kind: 'cape',
        name: 'cape',
        from: 'D',
        to: 'E',
        gathered: true,
        hems: [{ layer: 'c', finish: 'raw', edging: 'lace' }],
      },
    ]);
  });

  it('without bones, facing, lining or lacing; of lining alone; and none drafted here', () => {
    const plain = bodiceSteps(
      facts({
        bodice: {
          ...bodice,
          lacing: { eyelets: 0 },
          asked: { layers: [layer('silk')], draft: { upperFinish: 'bound' } },
        },
        waist,
      }),
    );
    expect(plain.map(({ id }) => id)).toEqual([
      'toile',
      'bodice-seams',
      'bodice-layers',
      'bodice-close',
      'fit-bodice',
      'upper-edge',
    ]);
    expect(plain[0]!.work).toMatchObject({ laced: false });
    const lining = bodiceSteps(
      facts({ bodice: { ...bodice, asked: { ...bodice.asked, layers: [layer('lining')] } }, waist }),
    );
    expect(workOf(lining, 'casings')).toMatchObject({ layer: 'lining' });
    const beside = bodiceSteps(
      facts({ gown: { ...gown, capes: gown.capes.map(({ fullness: _, ...own }) => own) } }),
    );
    expect(waits(beside)).toEqual([
      'cut:s-cloth mark > beside:strap > fit',
      'cut:c-cloth mark > beside:cape > fit',
    ]);
    expect(beside[1]!.work).toMatchObject({ gathered: false });
  });
});
