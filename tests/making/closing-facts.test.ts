import { describe, expect, it } from 'vitest';
import { bustlePoint, isUsualNumber, seamsAdvised } from '../../src/making/bustle/bustle.ts';
import { bustleFacts } from '../../src/making/bustle/bustle-facts.ts';
import { passageOf, zipToBuy } from '../../src/making/closure/closure.ts';
import { closureFacts } from '../../src/making/closure/closure-facts.ts';
import { edgingFacts } from '../../src/making/edging/edging-facts.ts';
import { waistFacts } from '../../src/making/waist/waist-facts.ts';
import { missingFacts } from '../../src/workroom/missing-facts.ts';

/** Closure, waist, bustle and edging from sections made by hand, mm; sums beside them. */

const say = (mm: number) => `${mm}`;
const place = (...path: unknown[]) => ({ path: path.join('.') });
const codes = ({ findings }: { findings: readonly { code: string }[] }) => findings.map(({ code }) => code);

describe('a closure', () => {
  const closure = {
    kind: 'zip',
    station: { name: 'centre-back' },
    starts: 25,
    opening: 231,
    hip: 1010,
    entry: 'steps-in',
    place,
  };
  const facts = (own: object = {}, gown: object = {}, finished = 1000) =>
    closureFacts({
      gown: {
        closure: { ...closure, ...own },
        layers: ['lining', 'shell', 'net'].map((name) => ({ name })),
        ...gown,
      },
      skirt: { waist: 740, stations: [{ station: { name: 'centre-back' }, finished }] },
      say,
    } as never);

  it('stops where it starts and its opening; what is not taken is felled', () => {
    const { facts: own } = facts({}, { sewnAsOne: { closure: ['shell', 'net'] } });
    expect(own).toMatchObject({
      at: 'centre-back',
      starts: 25,
      opening: 231,
      stops: 256,
      takes: ['shell', 'net'],
      felled: ['lining'],
      beside: 'sewn',
    });
    expect(own!.zip).toEqual({ stock: 250, shortenBy: 19 });
    // 740 + 2 × 231
    expect(own!.passage).toMatchObject({ passes: 1202, clear: true, needed: 135 });
    expect(facts().facts!.takes).toEqual(['lining', 'shell', 'net']);
    expect(facts().facts!.felled).toEqual([]);
    expect(facts({ kind: 'lacing' }).facts).toMatchObject({ beside: 'laced', zip: undefined });
    expect(facts({ kind: 'hooks' }).facts).toMatchObject({ beside: 'sewn', zip: undefined });
    expect(facts({ opening: undefined }).facts).toMatchObject({
      stops: undefined,
      zip: undefined,
      passage: undefined,
    });
  });

  it.each<[string, object, number, number]>([
    ['nothing where all is well', {}, 1000, 0],
    ['an opening as long as the seam', {}, 256, 1],
    ['and a hair shorter', {}, 256.1, 0],
    ['one that is not given', { opening: undefined }, 1000, 1],
    ['one that does not let her through', { hip: 1203 }, 1000, 1],
    ['and just does', { hip: 1202 }, 1000, 0],
    ['a zip that no shop has', { opening: 601 }, 1000, 1],
    ['which hooks need not', { opening: 601, kind: 'hooks' }, 1000, 0],
    ['a raw edge below a finished bodice', { beside: 'finished' }, 1000, 1],
    ['that has its own finish', { beside: 'finished', finish: 'placket' }, 1000, 0],
  ])('findings: %s', (_, own, finished, count) =>
    expect(codes(facts(own, {}, finished))).toHaveLength(count),
  );

  it('stepping in, over the head, or whichever will do', () => {
    const body = { hip: 1010, shoulders: 1150 };
    const of = (own: object) => passageOf(740, 180, { ...body, ...own });
    // 740 + 360
    expect(of({}).against).toEqual([
      { entry: 'steps-in', girth: 1010, room: 90 },
      { entry: 'over-the-head', girth: 1150, room: -50 },
    ]);
    expect([of({}).clear, of({ entry: 'steps-in' }).clear, of({ entry: 'over-the-head' }).clear]).toEqual([
      true,
      true,
      false,
    ]);
    expect([of({}).needed, of({ entry: 'over-the-head' }).needed]).toEqual([135, 205]);
    expect(passageOf(740, 180, {})).toEqual({
      passes: 1100,
      against: [],
      clear: undefined,
      needed: undefined,
    });
    expect(passageOf(740, 180, { hip: 700 }).needed).toBe(0);
  });

  it('the next zip that shops keep (common practice)', () => {
    expect([200, 200.04, 200.1, 601].map(zipToBuy)).toEqual([
      { stock: 200, shortenBy: 0 },
      { stock: 200, shortenBy: 0 },
      { stock: 220, shortenBy: expect.closeTo(19.9, 9) },
      undefined,
    ]);
  });
});

describe('the waist', () => {
  const names = (...own: string[]) => own.map((name) => ({ name }));
  const layer = (name: string, ...gores: string[]) => ({ layer: { name }, gores });
  const facts = (
    gown: object = {},
    layers: object[] = ['a', 'b', 'c'].map((name) => layer(name, 'front', 'back')),
  ) =>
    waistFacts({
      gown: { layers: names('a', 'b', 'c'), bodice: { bonesEnd: 13, plies: 2, place }, ...gown },
      skirt: { layers },
      say,
    } as never);

  it('groups from the outside in, each with its plies and the bodice’s', () => {
    const sewnAsOne = { waist: [['a'], ['c', 'b']], place };
    const { groups, grouped, clearance, secondRow } = facts({ sewnAsOne }).facts;
    expect(groups.map(({ layers, plies }) => [layers, plies])).toEqual([
      [['b', 'c'], { skirt: 2, together: 4, atCrossings: 8 }],
      [['a'], { skirt: 1, together: 3, atCrossings: 6 }],
    ]);
    expect([grouped, clearance, secondRow]).toEqual([true, 10, 3]);
  });

  it('where nothing is said each by itself; two that make one ring together', () => {
    expect(facts().facts.groups.map(({ layers }) => layers)).toEqual([['c'], ['b'], ['a']]);
    const rings = [layer('a', 'front', 'back'), layer('b', 'front'), layer('c', 'back')];
    const { groups, grouped } = facts({}, rings).facts;
    expect(groups.map(({ layers, plies }) => [layers, plies.skirt])).toEqual([
      [['b', 'c'], 1],
      [['a'], 1],
    ]);
    expect(grouped).toBe(false);
    expect(facts({ waist: {} }).facts.groups.map(({ layers, plies }) => [layers, plies.together])).toEqual([
      [['a', 'b', 'c'], 4],
    ]);
  });

  it('the bodice’s plies are one where nobody says', () => {
    const bodice = { bonesEnd: undefined, plies: undefined, secondRow: 5, place };
    const { groups, clearance, secondRow } = facts({ bodice }).facts;
    expect(groups[0]).toMatchObject({ bodicePliesAssumed: true, plies: { together: 2 } });
    expect([clearance, secondRow]).toEqual([undefined, 5]);
    expect(facts().facts.groups[0]!.bodicePliesAssumed).toBe(false);
  });

  it.each<[number, number]>([
    // Above 6 has to stay (common practice), with the second row 3 above the first.
    [9, 1],
    [9.1, 0],
  ])('bones that end %s above: %s finding', (bonesEnd, count) =>
    expect(facts({ bodice: { bonesEnd, plies: 1, place } }).findings).toHaveLength(count),
  );

  it('a layer between two of a group', () => {
    expect(codes(facts({ sewnAsOne: { waist: [['a', 'c'], ['b']], place } }))).toHaveLength(1);
    expect(codes(facts({ sewnAsOne: { closure: ['a', 'c'], place } }))).toHaveLength(1);
    expect(codes(facts({ sewnAsOne: { waist: [['a', 'b']], closure: ['c', 'b'], place } }))).toEqual([]);
  });
});

describe('a bustle', () => {
  const station = (
    name: string,
    seams: number,
    finished: number,
    floor: number | undefined,
    own: object = {},
  ) => ({
    name,
    seams,
    finished,
    ...(floor === undefined ? {} : { floor: { length: floor, estimated: false } }),
    ...own,
  });
  const STATIONS = [
    station('centre-front', 0, 1000, 1020),
    station('front/side', 2, 1010, 1030),
    station('side/back', 2, 1250, 1100),
    station('centre-back', 1, 1760, 1115),
  ];
  // Each a line of the spec for itself.
  const asked = (name: string, anchor: number) => ({ at: { name }, anchor, place: () => place(name) });
  const bench = (bustle: object | undefined, stations = STATIONS) =>
    ({
      gown: { bustle: bustle && { kind: 'over', clearance: 20, points: [], place, ...bustle } },
      skirt: { stations },
      say,
    }) as never;
  const facts = (bustle: object | undefined, stations = STATIONS) =>
    bustleFacts(bench(bustle, stations), { gown: { gores: [] } } as never);
  const figures = (bustle: object, stations = STATIONS) =>
    facts(bustle, stations).facts!.points.map(
      ({ seam, side, copies, anchor, pickUp, lift, loopBottom, aboveHem }) => [
        seam,
        side,
        copies,
        anchor,
        pickUp,
        lift,
        loopBottom,
        aboveHem,
      ],
    );

  it('pick-up: anchor and what is over the floor less the clearance; the loop below it', () => {
    // 1760 − (1115 − 20) = 665; 1250 − 1080 = 170
    expect(figures({ loop: 25, points: [asked('centre-back', 120), asked('side/back', 140)] })).toEqual([
      ['centre-back', undefined, 1, 120, 785, 665, 810, 950],
      ['side/back', undefined, 2, 140, 310, 170, 335, 915],
    ]);
    // Where nobody says: a loop of 20.
    expect(figures({ points: [asked('centre-back', 120)] })[0]!.slice(6)).toEqual([805, 955]);
    expect(bustlePoint({ name: 'x', copies: 1, length: 1000, toFloor: 1100 }, 120, 20, 25)).toMatchObject({
      lift: 0,
      pickUp: 120,
      aboveHem: 855,
    });
  });

  it('advised where none is asked: the centre, then outwards while there is something to lift', () => {
    const { facts: own } = facts({});
    expect([own!.advised, own!.number]).toEqual([true, 3]);
    expect(own!.points.map(({ seam, anchor }) => [seam, anchor])).toEqual([
      ['centre-back', 150],
      ['side/back', 150],
    ]);
    const seam = (name: string, length: number, copies = 2) => ({ name, copies, length, toFloor: 1000 });
    const seams = [seam('d', 1100), seam('b', 1300), seam('a', 1400, 1), seam('c', 1200), seam('e', 999.9)];
    expect(seamsAdvised(seams, 20, false).map(({ name }) => name)).toEqual(['a', 'b', 'c']);
    expect(seamsAdvised(seams, 20, true).map(({ name }) => name)).toEqual(['a', 'b', 'c', 'd']);
    // Under 20 is not worth its loop (from memory); as much is.
    expect(seamsAdvised([seam('e', 999.9)], 20, false)).toEqual([]);
    expect(seamsAdvised([seam('e', 1000)], 20, false)).toHaveLength(1);
  });

  it.each([
    [3, false, true],
    [5, false, true],
    [7, false, false],
    [4, false, false],
    [1, false, false],
    [7, true, true],
    [9, true, true],
    [5, true, false],
  ])('%s points, heavy %s: usual %s (common practice)', (points, heavy, usual) =>
    expect(isUsualNumber(points, heavy)).toBe(usual),
  );

  it('her sides apart where they differ, together where they do not', () => {
    const sided = (right: number) => [
      station('side/back', 1, 1250, 1100, { side: 'left' }),
      station('centre-back', 1, 1760, 1115),
      station('side/back', 1, right, 1100, { side: 'right' }),
    ];
    const points = ['left', 'right'].map((side) => ({
      at: { name: 'side/back', side },
      anchor: 140,
      place: POINT,
    }));
    const both = (right: number) =>
      figures({ points }, sided(right)).map(([seam, side, copies, , , lift]) => [seam, side, copies, lift]);
    expect(both(1280)).toEqual([
      ['side/back', 'left', 1, 170],
      ['side/back', 'right', 1, 200],
    ]);
    expect(both(1250.04)).toEqual([['side/back', undefined, 2, 170]]);
    expect(both(1250.06)).toHaveLength(2);
  });

  it('floors that nobody measured, and those not known at all', () => {
    const stations = [
      station('side/back', 2, 1250, 1100, { floor: { length: 1100, estimated: true } }),
      station('front/side', 2, 1010, undefined),
      station('centre-back', 1, 1760, 1115),
    ];
    const { facts: own } = facts(
      { points: [asked('side/back', 1), asked('front/side', 1), asked('centre-back', 1)] },
      stations,
    );
    expect([own!.estimated, own!.withoutFloor]).toEqual([['side/back'], ['front/side']]);
  });

  it('findings: lifts nothing, hangs out below, a number that is not usual', () => {
    const three = [asked('centre-back', 120), asked('side/back', 140)];
    expect(codes(facts({ points: three }))).toEqual([]);
    expect(codes(facts({ points: [...three, asked('front/side', 1)] }))).toHaveLength(1);
    // 1250 − (140 + 170 + 20) is 920: a loop of 941 hangs out at one, not at the centre.
    expect(codes(facts({ points: three, loop: 941 }))).toHaveLength(1);
    expect(codes(facts({ points: [three[1]] }))).toHaveLength(1);
    expect(
      codes(facts({ points: [asked('front/side', 1)] }, [station('front/side', 2, 1000, 1030)])),
    ).toHaveLength(2);
    expect(facts(undefined).facts).toBeUndefined();
  });
});

/** One place for both points of one line of the spec. */
const POINT = place;

describe('edging', () => {
  const layer = (name: string, hem: number, own: object = {}) => ({
    layer: { name, edging: 'galloon' },
    hem,
    flare: 3,
    godets: [],
    hemTurns: [],
    ...own,
  });
  const edging = {
    name: 'galloon',
    from: 'bought-in',
    repeat: 140,
    depth: 60,
    start: { name: 'side/back', side: 'left' },
    startAssumed: false,
    place,
  };
  const facts = (
    own: object = {},
    layers = [layer('net', 4010)],
    bought: object[] = [],
    capes: object[] = [],
  ) =>
    edgingFacts(
      {
        gown: {
          edging: { ...edging, ...own },
          capes: [{ name: 'cape', layers: [{ name: 'cape', edging: 'galloon' }, { name: 'other' }] }],
        },
        skirt: { layers, offFloor: 30 },
        say,
      } as never,
      bought as never,
      capes as never,
    );

  it('whole repeats round each hem, and a motif more for each join', () => {
    // 4010 ÷ 140 is 28.6: 29; 3000: 22.
    const { facts: own } = facts({}, [
      layer('net', 4010),
      layer('veil', 3000),
      { ...layer('lining', 1), layer: { name: 'lining', edging: undefined as never } },
    ]);
    expect(own!.hems.map(({ layer: name, plan }) => [name, plan!.repeats, plan!.length, plan!.ease])).toEqual(
      [
        ['net', 29, 4060, 50],
        ['veil', 22, 3080, 80],
      ],
    );
    expect([own!.need, own!.buy]).toEqual([7140, 7420]);
    expect([own!.start, own!.side]).toEqual(['side/back', 'left']);
    const bare = facts({ repeat: undefined });
    expect([bare.facts!.need, bare.facts!.buy, bare.facts!.hems[0]!.plan]).toEqual([4010, 4010, undefined]);
    expect(bare.findings).toHaveLength(1);
  });

  it('gore by gore: laps where the hem bulges, eases where it is hollow; a wedge by its own turn', () => {
    const hemTurns = [
      { gore: 'front', length: 500, outwards: 0.3, inwards: 0 },
      { gore: 'back', side: 'right', length: 700, outwards: 0.1, inwards: 0.25 },
    ];
    const godets = [{ name: 'wedge', width: 240, side: 400 }];
    const [hem] = facts({}, [layer('net', 4010, { hemTurns, godets })]).facts!.hems;
    expect(hem!.byGore).toEqual([
      { gore: 'front', length: 500, lap: 18, lapPerMotif: expect.closeTo((18 * 140) / 500, 9), easeOuter: 0 },
      {
        gore: 'back',
        side: 'right',
        length: 700,
        lap: 6,
        lapPerMotif: expect.closeTo((6 * 140) / 700, 9),
        easeOuter: 15,
      },
      // 240 over 400 is 0.6.
      { gore: 'wedge', length: 240, lap: 36, lapPerMotif: expect.closeTo((36 * 140) / 240, 9), easeOuter: 0 },
    ]);
    expect(facts({ depth: undefined }, [layer('net', 4010, { hemTurns })]).facts!.hems[0]!.byGore).toEqual(
      [],
    );
  });

  it('off a cloth’s own edges: both of all that is bought of it', () => {
    const own = { from: 'own-edges', cloth: { name: 'lace' } };
    const lays = [
      { cloth: 'lace', buy: 1500 },
      { cloth: 'lace', buy: 500 },
      { cloth: 'net', buy: 9000 },
    ];
    // 4060 and a motif: 4200, of 2 × 2000.
    const { facts: found, findings } = facts(own, undefined, lays);
    expect(found!.own).toMatchObject({ cloth: 'lace', bought: 2000, supply: 4000 });
    expect(found!.own!.clothNeeded).toBeGreaterThanOrEqual(2100);
    expect(findings).toHaveLength(1);
    expect(facts(own, undefined, [{ cloth: 'lace', buy: 2100 }]).findings).toEqual([]);
    expect(facts(own).facts!.own).toMatchObject({ bought: undefined, supply: undefined });
    expect(facts({}, undefined, lays).facts!.own).toBeUndefined();
  });

  it('on a cape once at each side of her, without whole motifs', () => {
    const { facts: own } = facts(
      {},
      undefined,
      [],
      [
        { name: 'cape', hem: 800 },
        { name: 'none', hem: 1 },
      ],
    );
    expect(own!.hems.map(({ layer: name, length }) => [name, length])).toEqual([
      ['net', 4010],
      ['cape', 1600],
    ]);
    expect([own!.need, own!.buy]).toEqual([5660, 5940]);
  });

  it('scallops: their high points at the floor, by how far the hem is off it and how deep they are', () => {
    // 30 off the floor: 29 deep is a millimetre, 28 is two.
    const of = (scallop: number) => facts({ scallop });
    expect(of(28).facts!.scallops!.highPoints - of(28).facts!.scallops!.lowPoints).toBeCloseTo(28, 9);
    expect(facts().facts!.scallops).toBeUndefined();
  });
});

describe('what is not there is not missed', () => {
  it('a bustle, an edging, a petticoat', () => {
    const gown = {
      layers: [{}],
      sewnAsOne: { closure: [] },
      dates: { event: 'x' },
      labour: { rate: '1', fittingsIncluded: 1, expires: 'x' },
    };
    const facts = {
      waist: { grouped: true, bonesEnd: 13, groups: [] },
      closure: {},
      weight: { layers: [], stones: [] },
      pricing: { materials: { withoutPrice: [], withoutLength: [] }, quote: {}, hours: { tasks: [{}] } },
    };
    expect(missingFacts({ gown, skirt: { stations: [] } } as never, facts as never)).toEqual([]);
  });
});
