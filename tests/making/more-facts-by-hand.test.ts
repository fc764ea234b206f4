import { describe, expect, it } from 'vitest';
import { bustleOffered } from '../../src/making/bustle/bustle-offered.ts';
import { edgingRound } from '../../src/making/edging/edging.ts';
import { hemFacts } from '../../src/making/hem/hem-facts.ts';
import { rowsOfParts } from '../../src/making/supplies/parts-thread.ts';
import { floorLengths } from '../../src/making/train/floor-lengths.ts';
import { upright } from '../quads.ts';

/** Rows of stitching, floors, points of a bustle that could be and gaps, of sections made by hand; sums beside them. mm. */

const layer = (name: string, own: object = {}) => ({
  name,
  cloth: { name: `${name}-cloth`, stitch: 2.5 },
  hem: 'turned',
  ...own,
});
const cut = (name: string, width: number, height: number, own: object = {}, gore = name) => {
  const piece = upright(width, height, undefined, { piece: { gore, ...own } });
  return { ...piece, gore, layers: [name] };
};

describe('rows of stitching of parts', () => {
  const NONE = {
    layers: [],
    capes: [],
    waist: undefined,
    closure: undefined,
    slits: [],
    pockets: [],
    loops: [],
    trims: [],
    tiers: [],
    flounces: [],
  };
  const rows = (gown: object, pieces: object[]) =>
    rowsOfParts({ ...NONE, ...gown } as never, pieces as never);
  const named = (name: string, figures: object) => ({
    name,
    cloth: `${name}-cloth`,
    stitch: 2.5,
    ...figures,
  });

  it('a straight flounce: joins, two rows of gathers and one along the edge; its hem as it is finished', () => {
    const flounce = (own: object, hem = 'turned') =>
      rows(
        { flounces: [{ layer: layer('frill', { hem }), kind: 'straight', fullness: 2, depth: 200, ...own }] },
        [cut('frill', 1100, 230, { copies: 3 }), cut('other', 9, 9)],
      );
    // Three strips of 1100: 3300 gathered to 1650.
    expect(flounce({})).toEqual([named('frill', { seams: 600, top: 1650 + 6600, hem: 3300 })]);
    expect(flounce({ fullness: 1 })).toEqual([named('frill', { seams: 600, top: 3300, hem: 3300 })]);
    expect(flounce({ kind: 'circular' })).toMatchObject([{ top: 3300 }]);
    expect(['faced', 'bagged', 'rolled', 'raw'].map((hem) => flounce({}, hem)[0]!.hem)).toEqual([
      9900, 3300, 3300, 0,
    ]);
  });

  it('tiers: strips into runs, runs into tiers, tiers into rounds; each gathered to the one above', () => {
    const tiers = { layer: layer('net'), yoke: 961, tiers: [1500, 2300, 3500], depths: [200, 300, 400] };
    const strips = [
      cut('net', 1400, 210, { copies: 3 }, 'run-1'),
      cut('net', 1400, 310, {}, 'run-1'),
      cut('net', 1400, 410, { copies: 2 }, 'run-2'),
    ];
    // Six strips in two runs are four joins, and three rounds: seven of 300. Edges 961, 1500, 2300; two rows of each tier.
    expect(rows({ tiers: [tiers] }, strips)).toEqual([
      named('net', { seams: 2100, top: 4761 + 2 * 7300, hem: 0 }),
    ]);
  });

  it('a facing of a hem or an upper edge: its seams alone, each of two sides', () => {
    const pieces = [cut('f', 300, 60, { cut: 'pair' }), cut('f', 300, 70, { cut: 'single' })];
    // Sides of 60 four times, of 70 twice: half of 380.
    expect(rows({ layers: [layer('shell', { facing: { layer: layer('f') } })] }, pieces)).toEqual([
      named('f', { seams: 190, top: 0, hem: 0 }),
    ]);
    expect(rows({ askedBodice: { facing: { layer: layer('f') } } }, pieces)).toEqual([
      named('f', { seams: 190, top: 0, hem: 0 }),
    ]);
    const folded = upright(300, 60, undefined, {
      names: ['waist', 'a', 'hem', 'fold'],
      piece: { cut: 'on-fold' },
    });
    // One side of 60, on both sides of the fold.
    expect(
      rows({ layers: [layer('shell', { facing: { layer: layer('f') } })] }, [{ ...folded, layers: ['f'] }]),
    ).toMatchObject([{ seams: 60 }]);
  });

  it('a waist: a facing twice two rows of its edge; a band its ends and the edge that is felled', () => {
    const facing = { layer: layer('w'), finish: 'facing', width: 40 };
    expect(rows({ waist: facing }, [cut('w', 350, 40, { cut: 'single', copies: 2 })])).toEqual([
      named('w', { seams: 40, top: 2800, hem: 0 }),
    ]);
    const band = { layer: layer('w'), finish: 'band', width: 36 };
    expect(rows({ waist: band }, [cut('w', 72, 773), cut('x', 1, 9000)])).toEqual([
      named('w', { seams: 72, top: 773, hem: 0 }),
    ]);
    expect(rows({ waist: { finish: 'stay', width: 25 } }, [])).toEqual([]);
  });

  it('what lies in openings: two rows along the longest edge of each', () => {
    const own = {
      pockets: [{ layer: layer('bag') }],
      loops: [{ layer: layer('loops') }],
      waist: { layer: layer('w'), finish: 'band', width: 36 },
    };
    const pieces = [
      cut('bag', 150, 305, { cut: 'pair' }),
      cut('loops', 12, 611, { copies: 3 }),
      cut('w', 72, 773),
    ];
    expect(rows(own, pieces).slice(1)).toEqual([
      named('bag', { seams: 2 * 2 * 305, top: 0, hem: 0 }),
      named('loops', { seams: 2 * 3 * 611, top: 0, hem: 0 }),
    ]);
  });
});

describe('an edging round a hem', () => {
  it('whole repeats, what is eased in all and in each; what its inner edge is too long by', () => {
    // 36 of 14 are 504.
    expect(edgingRound(498, 2.5, 14, 33)).toEqual({
      hem: 498,
      repeats: 36,
      length: 504,
      ease: 6,
      easePerRepeat: 6 / 36,
      innerSurplus: 82.5,
      overlapPerMotif: 82.5 / 36,
    });
    expect(edgingRound(504, 2.5, 14, undefined)).toMatchObject({
      repeats: 36,
      ease: 0,
      innerSurplus: undefined,
      overlapPerMotif: undefined,
    });
    expect(edgingRound(504.00001, 1, 14, 1).repeats).toBe(36);
    expect(edgingRound(504.1, 1, 14, 1).repeats).toBe(37);
    expect(edgingRound(3, 1, 14, 1).repeats).toBe(1);
  });
});

describe('the floor at each station', () => {
  const draft = (stations: object[], own: object = {}, measured = 'finished') => ({
    gown: { stations, round: 'mirrored', lengths: { measured, offFloor: 25 }, ...own },
    lengths: stations.map((_, i) => 1000 + 10 * i),
    hem: { ways: [0, 100, 300, 600, 1000] },
  });
  const floors = (
    stations: object[],
    own: object = {},
    measured?: string,
    offFloor: number | undefined = 25,
    level: () => number[] | undefined = () => undefined,
  ) =>
    floorLengths(offFloor, draft(stations, own, measured) as never, level).map(
      (own) => own && [own.length, own.estimated],
    );

  it('as measured, else the finished length and what it clears, or less what lies on it', () => {
    expect(
      floors([
        { toFloor: 1040 },
        {},
        { length: 1031 },
        { inTrain: true, onFloor: 300, length: 1400 },
        { inTrain: true },
      ]),
    ).toEqual([[1040, false], [1010 + 25, false], [1056, false], [1100, false], undefined]);
    expect(floorLengths(undefined, draft([{ toFloor: 1040 }, {}, {}]) as never, () => undefined)).toEqual([
      { length: 1040, estimated: false },
      undefined,
      undefined,
    ]);
  });

  it('measured to the floor: that itself, or level without the train', () => {
    expect(floors([{ length: 1040 }, {}, { length: 1060 }], {}, 'to-floor', 25, () => [1, 1019, 3])).toEqual([
      [1040, false],
      [1044, false],
      [1060, false],
    ]);
  });

  it('between its neighbours by the way along the hem, on each half by itself', () => {
    const train = { inTrain: true };
    // A third and, at 600, seven ninths of the way from 100 to 1000.
    expect(floors([{}, { toFloor: 1000 }, train, train, { toFloor: 1090 }])).toEqual([
      [1025, false],
      [1000, false],
      [1020, true],
      [1050, true],
      [1090, false],
    ]);
    const halves = floors([{ toFloor: 1000 }, train, { toFloor: 1060 }, train, { toFloor: 1100 }], {
      round: 'two-halves',
    });
    expect(halves[1]).toEqual([expect.closeTo(1020, 9), true]);
    expect(halves[3]).toEqual([expect.closeTo(1060 + (40 * 3) / 7, 9), true]);
    // The centre back divides them: what is known of one side alone says nothing of the other.
    expect(
      floors([{ toFloor: 1000 }, { toFloor: 1 }, train, train, { toFloor: 1100 }], { round: 'two-halves' }),
    ).toEqual([[1000, false], [1, false], undefined, undefined, [1100, false]]);
  });
});

describe('points that a bustle could have', () => {
  const stations = [
    { name: 'centre-front', seams: 0, finished: 1000, floor: { length: 1030 } },
    { name: 'a/b', side: undefined, seams: 2, finished: 1200, floor: { length: 1060 } },
    { name: 'centre-back', seams: 1, finished: 1800, floor: { length: 1090 } },
  ];
  const flat = (value: number) => ({ ways: [0, 200, 500], joins: [0, 200, 500], valueAt: () => value });
  const draft = {
    gown: { round: 'mirrored', gores: [{ name: 'a' }, { name: 'b' }] },
    frames: [200, 300].map((wide) => ({
      widthAt: () => wide,
      pointAt: (y: number, share: number) => ({ x: share * wide, y }),
    })),
    waist: flat(0),
    hem: flat(1500),
  };
  const facts = {
    points: [
      { seam: 'a/b', anchor: 60 },
      { seam: 'x', anchor: 68 },
    ],
    clearance: 20,
    loop: 15,
    advised: false,
  };
  const offered = (own: object = {}) =>
    bustleOffered(draft as never, { stations } as never, { ...facts, ...own } as never).map(
      ({ seam, gore, across, copies, anchor, pickUp }) => [
        seam ?? `${gore} ${across}`,
        copies,
        anchor,
        Math.round(pickUp),
      ],
    );

  it('seams without one and quarters of the gores, hooked on as far down as the others, in steps of five', () => {
    // 60 and 68 are 64 on the average. At the centre back 1800 − (1090 − 20); on the gores 1500 less the floor between.
    expect(offered()).toEqual([
      ['centre-back', 1, 65, 65 + 730],
      ['a 0.25', 2, 65, Math.round(65 + 1500 - (1037.5 - 20))],
      ['a 0.5', 2, 65, 65 + 1500 - 1025],
      ['a 0.75', 2, 65, Math.round(65 + 1500 - 1032.5)],
      ['b 0.25', 2, 65, Math.round(65 + 1500 - 1047.5)],
      ['b 0.5', 2, 65, 65 + 1500 - 1055],
      ['b 0.75', 2, 65, Math.round(65 + 1500 - 1062.5)],
    ]);
  });

  it('where none was asked for, as far down as is advised; what lifts less than twenty is none', () => {
    expect(offered({ advised: true })[0]).toEqual(['centre-back', 1, 150, 880]);
    expect(offered({ points: [] }).slice(0, 2)).toEqual([
      ['a/b', 2, 150, 310],
      ['centre-back', 1, 150, 880],
    ]);
    expect(offered({ points: [], clearance: -130 }).map(([where]) => where)).not.toContain('a/b');
    expect(offered({ points: [], clearance: -120 }).map(([where]) => where)).toContain('a/b');
  });
});

describe('a gap to turn a hem through', () => {
  const place = (key: string) => ({ source: { name: key, text: '' }, start: 0, end: 0 });
  const found = (gap: object) => {
    const shell = {
      ...layer('shell', { hem: 'raw' }),
      gap,
      place,
      allowances: { seam: { width: 1 }, waist: { width: 1 }, hem: { width: 1 }, named: {} },
      shape: { shorter: 0 },
    };
    const bagged = ['x', 'y'].map((name) => ({
      ...shell,
      name,
      hem: 'bagged',
      gap: name === 'y' ? { at: 'a/b', length: 1 } : undefined,
    }));
    const skirtLayer = (own: object) => ({
      layer: own,
      hem: 4000,
      flare: 0,
      gores: [],
      pleats: [],
      seams: [
        { name: 'a/b', length: 1010 },
        { name: 'a/b', length: 990 },
        { name: 'c/d', length: 400 },
      ],
    });
    const { findings } = hemFacts({
      gown: { layers: [shell, ...bagged], gores: [] },
      skirt: { layers: [shell, ...bagged].map(skirtLayer) },
      say: (mm: number) => `${mm} mm`,
    } as never);
    return findings
      .filter(({ code }) => code.startsWith('gap'))
      .map(({ message }) => message.replaceAll('`', ''));
  };

  it('fits into the shorter of two seams, from where it begins; else it is told why', () => {
    expect(found({ at: 'a/b', length: 989 })).toEqual([]);
    expect(found({ at: 'a/b', length: 990 })).toEqual([
      'A gap of 990 mm does not fit into a/b: the seam is 990 mm long.',
    ]);
    expect(found({ at: 'a/b', length: 400, from: 589 })).toEqual([]);
    expect(found({ at: 'a/b', length: 400, from: 590 })).toEqual([
      'A gap of 400 mm does not fit into a/b: the seam is 990 mm long.',
    ]);
    expect(found({ at: 'e/f', length: 400 })).toEqual([
      'A gap of 400 mm does not fit into e/f: shell has no seam there.',
    ]);
  });
});
