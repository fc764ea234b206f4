import { describe, expect, it } from 'vitest';
import { decimalText, type Fraction } from '../../src/money/fraction.ts';
import { hoursByTask } from '../../src/money/labour-hours.ts';
import { amountText } from '../../src/money/money.ts';
import { pricedMaterials } from '../../src/money/priced-materials.ts';
import { pricing } from '../../src/money/pricing.ts';
import { quoteReport } from '../../src/money/quote-report.ts';
import { missingFacts } from '../../src/workroom/missing-facts.ts';

/** What is bought, at what, and what is wanting, from sections made by hand: no two figures alike. mm. */

const of = (numerator: number, denominator = 1): Fraction => ({
  numerator: BigInt(numerator),
  denominator: BigInt(denominator),
});
const cloth = (name: string, own: object = {}) => ({ name, cloth: { name: `${name} cloth`, ...own } });
const buy = (name: string, length: number) => ({
  cloth: `${name} cloth`,
  layers: [name],
  length: 1,
  buy: length,
});

const LAYERS = [
  cloth('shell', { price: '24.50', pricedPer: 1000 }),
  { ...cloth('shell', { price: '24.50', pricedPer: 1000 }), name: 'top' },
  cloth('net', { price: '3', pricedPer: 914.4 }),
  cloth('lining'),
  cloth('felt', { price: '9' }),
];
const BOUGHT = [buy('shell', 4100), buy('shell', 600), buy('net', 1828.8), buy('lining', 2100)];
const NOTHING = { edging: undefined, strips: [], stones: [], layers: [], bought: [] };
const strip = (kind: string, layer: string, along: string, own: object) => ({
  kind,
  layer,
  along,
  buy: 1500,
  isCut: false,
  trim: {},
  ...own,
});

describe('what is bought', () => {
  it('each cloth once, by all its lays together; without a lay or a price it is named', () => {
    const made = pricedMaterials(
      { edging: undefined, notions: [] } as never,
      { ...NOTHING, layers: LAYERS, bought: BOUGHT } as never,
    );
    expect(made).toEqual({
      priced: [
        { kind: 'cloth', name: 'shell cloth', length: 4700, price: '24.50', pricedPer: 1000 },
        { kind: 'cloth', name: 'net cloth', length: 1828.8, price: '3', pricedPer: 914.4 },
      ],
      withoutPrice: ['lining cloth'],
      withoutLength: ['felt cloth'],
    });
  });

  it('edging by the shop’s steps where it is bought in, not where it is cut off a cloth', () => {
    const edging = { name: 'galloon', price: '11.20', soldBy: 500 };
    const lengths = (facts: object, own: object = {}) =>
      pricedMaterials(
        { edging: { ...edging, ...own }, notions: [] } as never,
        { ...NOTHING, edging: { name: 'galloon', from: 'bought-in', buy: 5110, ...facts } } as never,
      ).priced.map(({ length }) => length);
    expect(lengths({})).toEqual([5500]);
    expect(lengths({ buy: 5500 })).toEqual([5500]);
    expect(lengths({}, { soldBy: undefined })).toEqual([5110]);
    expect(lengths({ from: 'own-edges' })).toEqual([]);
  });

  it('strips that are not cut from the gown’s cloths, stones by their number, notions by length or count', () => {
    const made = pricedMaterials(
      {
        notions: [
          { name: 'hooks', count: 7, price: '0.35' },
          { name: 'petersham', length: 800, price: '1.90', pricedPer: 1000 },
          { name: 'thimble', price: '2' },
          { name: 'wax' },
        ],
      } as never,
      {
        ...NOTHING,
        strips: [
          strip('horsehair', 'shell', 'hem', { trim: { price: '3.40', pricedPer: 1000 } }),
          strip('binding', 'net', 'side/back', { isCut: true }),
          strip('stay-tape', 'lining', 'waist', {}),
        ],
        stones: [
          { stones: { name: 'beads', pricePer: '0.02' }, count: 1234 },
          { stones: { name: 'drops' }, count: 9 },
        ],
      } as never,
    );
    expect(made.priced).toEqual([
      {
        kind: 'strip',
        name: 'horsehair hem',
        strip: { kind: 'horsehair', layer: 'shell', along: 'hem' },
        length: 1500,
        price: '3.40',
        pricedPer: 1000,
      },
      { kind: 'stones', name: 'beads', count: 1234, price: '0.02' },
      { kind: 'notion', name: 'hooks', count: 7, price: '0.35' },
      { kind: 'notion', name: 'petersham', length: 800, price: '1.90', pricedPer: 1000 },
      { kind: 'notion', name: 'thimble', count: 1, price: '2' },
    ]);
    expect(made.withoutPrice).toEqual(['stay-tape waist', 'drops', 'wax']);
  });
});

describe('hours', () => {
  const sewn = { seams: 12_340, waist: 745, hems: 8_010, edging: 5_555 };
  const told = (labour: object, setting: { task: string; hours: Fraction }[] = []) => {
    const { tasks, inAll, over } = hoursByTask(labour as never, sewn, setting);
    return [
      ...tasks.map(({ task, hours }) => `${task} ${decimalText(hours, 4)}`),
      decimalText(inAll, 4),
      over,
    ];
  };

  it('by the metre, to the centimetre, but for what has its own hours', () => {
    const perMetre = { seams: '0.5', waist: '2', hems: '0.25', edging: undefined };
    // 12.34 × 0.5, 0.75 × 2 (0.745 to the centimetre), 8.01 × 0.25
    expect(told({ perMetre })).toEqual(['seams 6.1700', 'waist 1.5000', 'hems 2.0025', '9.6725', false]);
    expect(told({ perMetre, tasks: { hems: '3' } })).toEqual([
      'hems 3.0000',
      'seams 6.1700',
      'waist 1.5000',
      '10.6700',
      false,
    ]);
  });

  it('what is set by hand counts, unless the maker says it herself', () => {
    const setting = [{ task: 'beads', hours: of(11, 4) }];
    expect(told({ hours: '10' }, setting)).toEqual(['beads 2.7500', 'other 7.2500', '10.0000', false]);
    expect(told({ hours: '10', tasks: { beads: '4' } }, setting)).toEqual([
      'beads 4.0000',
      'other 6.0000',
      '10.0000',
      false,
    ]);
    expect(told({ hours: '2.75' }, setting)).toEqual(['beads 2.7500', '2.7500', false]);
    expect(told({ hours: '2' }, setting)).toEqual(['beads 2.7500', '2.7500', true]);
    expect(told({ hours: '2' })).toEqual(['making 2.0000', '2.0000', false]);
  });
});

describe('the pricing of a whole gown', () => {
  const place = () => ({ start: 0, end: 0 });
  const gown = (labour: object | undefined, own: object = {}) => ({
    name: 'Lantern',
    client: 'LAN-07',
    currency: 'EUR',
    notions: [{ name: 'hooks', count: 7, price: '0.35' }],
    cloths: [],
    labour: labour && { ...labour, place },
    ...own,
  });
  const skirt = {
    waist: 740,
    layers: [
      {
        hem: 3000,
        seams: [
          { copies: 2, length: 1000 },
          { copies: 1, length: 500 },
        ],
      },
      { hem: 3500, seams: [{ copies: 2, length: 900 }] },
    ],
  };
  const priced = (labour: object | undefined, parts: object = {}, own: object = {}) =>
    pricing({ gown: gown(labour, own), skirt } as never, { ...NOTHING, ...parts } as never);

  it('lengths sewn: seams as often as they are there, hems of every layer, edging of every hem', () => {
    const perMetre = { seams: '1', waist: '1', hems: '1', edging: '1' };
    const edging = { from: 'own-edges', hems: [{ length: 2000 }, { length: 310 }] };
    const { facts } = priced({ rate: '10', perMetre }, { edging });
    expect(facts.hours!.tasks.map(({ task, hours }) => [task, decimalText(hours, 2)])).toEqual([
      ['seams', '4.30'],
      ['waist', '0.74'],
      ['hems', '6.50'],
      ['edging', '2.31'],
    ]);
    expect(facts.workCharged).toBe(true);
  });

  it('work is charged where there is a rate and something to charge', () => {
    expect(priced({ hours: '4' }).facts.workCharged).toBe(false);
    expect(priced({ rate: '10' }).facts.workCharged).toBe(false);
    expect(priced({ rate: '10', hours: '4' }).facts.workCharged).toBe(true);
    expect(priced(undefined, {}, { notions: [] }).facts.quote).toBeUndefined();
    expect(priced({ rate: '10', hours: '4' }, {}, { notions: [] }).facts.quote).toBeDefined();
  });

  it('stones by the hour, and none that are not counted or not timed', () => {
    const stones = [
      { stones: { name: 'beads', perHour: 90 }, count: 360 },
      { stones: { name: 'drops', perHour: 30 }, count: 0 },
      { stones: { name: 'pearls' }, count: 5 },
    ];
    expect(priced({ rate: '10' }, { stones }).facts.hours!.tasks).toEqual([{ task: 'beads', hours: of(4) }]);
  });

  it('findings: tasks over the whole, and a price that its rounding swallows', () => {
    const codes = (labour: object) => priced(labour).findings.map(({ code }) => code);
    expect(codes({ rate: '1', hours: '2', tasks: { sewing: '3' } })).toHaveLength(1);
    expect(codes({ rate: '1', hours: '3', tasks: { sewing: '3' } })).toEqual([]);
    // 2.45 to the nearest ten is nothing; to the nearest five as well, to the nearest one it is not.
    expect(codes({ rounding: '10' })).toHaveLength(1);
    expect(codes({ rounding: '1' })).toEqual([]);
  });

  it('what it came to: hours at the rate, cloth at what was used, or all materials at what was spent', () => {
    const cloths = [{ name: 'shell cloth', used: 4400 }, { name: 'net cloth' }];
    const parts = { layers: LAYERS, bought: BOUGHT };
    const kept = (actual: object, own: object = { cloths }) =>
      priced({ rate: '10', hours: '4', actual, paid: '30' }, parts, own).facts.record!;
    // 4.4 × 24.50 + 2 × 3 + 7 × 0.35 = 116.25; 5.5 × 10
    const used = kept({ hours: '5.5' });
    expect(amountText(used.revised!.total)).toBe('171.25');
    expect(used.cloths).toEqual([{ cloth: 'shell cloth', bought: 4700, used: 4400 }]);
    expect([used.hours.planned, used.hours.actual, used.hours.more]).toEqual([of(4), of(11, 2), of(3, 2)]);
    // 4.7 × 24.50 + 6 + 2.45 = 123.60 and 40 agreed.
    expect(amountText(used.balance!)).toBe('133.60');
    expect(amountText(used.balanceRevised!)).toBe('141.25');
    const spent = kept({ spent: '99.99' });
    expect(amountText(spent.revised!.total)).toBe('139.99');
    expect([amountText(spent.spent.planned!), amountText(spent.spent.more!)]).toEqual(['123.60', '-23.61']);
    expect(priced({ rate: '10', hours: '4' }).facts.record).toBeUndefined();
    expect(
      priced({ rate: '10', hours: '4' }, {}, { cloths: [{ name: 'felt', used: 9 }] }).facts.record!.cloths,
    ).toEqual([{ cloth: 'felt', bought: undefined, used: 9 }]);
  });

  it('for scripts: every amount as text, each under its name', () => {
    const labour = {
      rate: '10',
      hours: '4',
      overhead: 0.1,
      margin: 0.25,
      tax: 0.2,
      rounding: '1',
      deposit: 0.375,
      fittingsIncluded: 3,
      expires: '2027-03-09',
      actual: { hours: '5' },
      paid: '20',
    };
    const { facts } = priced(labour, { layers: LAYERS.slice(2, 4), bought: BOUGHT });
    // 6 + 2.45 and 40; a tenth 4.845; a quarter of 53.295 (rounded by lines: 53.30, 13.33); 66.63 to 67; a fifth 13.40
    expect(quoteReport(gown(labour) as never, facts)).toEqual({
      gown: 'Lantern',
      client: 'LAN-07',
      currency: 'EUR',
      lines: [
        { kind: 'cloth', name: 'net cloth', length: 1828.8, price: '3.00', pricedPer: 914.4, amount: '6.00' },
        { kind: 'notion', name: 'hooks', count: 7, price: '0.35', amount: '2.45' },
        { kind: 'labour', name: 'making', hours: '4', price: '10.00', amount: '40.00' },
      ],
      materials: '8.45',
      labour: '40.00',
      overhead: '4.85',
      cost: '53.30',
      margin: '13.33',
      rounding: '0.37',
      net: '67.00',
      tax: '13.40',
      total: '80.40',
      stages: [
        { name: 'deposit', share: '0.375', amount: '30.15' },
        { name: 'balance', share: '0.625', amount: '50.25' },
      ],
      fittingsIncluded: 3,
      expires: '2027-03-09',
      withoutPrice: ['lining cloth'],
      withoutLength: [],
      // 8.45 and 50; 5.85 (5.845); 64.30 and 16.08: 80.38 to 80; 16
      actual: { paid: '20.00', balance: '60.40', revisedTotal: '96.00' },
    });
    const { client: _, currency: __, labour: ___, ...nameless } = gown(undefined);
    const bare = quoteReport(
      nameless as never,
      pricing({ gown: nameless, skirt } as never, NOTHING as never).facts,
    )!;
    expect([bare.currency, 'client' in bare, 'actual' in bare, 'expires' in bare]).toEqual([
      null,
      false,
      false,
      false,
    ]);
  });
});

describe('what the spec does not say', () => {
  const gown = {
    layers: [{}, {}],
    sewnAsOne: { closure: [] },
    dates: { event: '2027-06-12' },
    labour: { rate: '10', fittingsIncluded: 2, expires: '2027-03-09' },
  };
  const facts = {
    waist: { grouped: true, bonesEnd: 13, groups: [{ bodicePliesAssumed: false }] },
    closure: { passage: { against: [{}] } },
    petticoat: { hoop: { sweep: {}, offFloorAssumed: false } },
    edging: { start: 'side/back', startAssumed: false },
    bustle: { withoutFloor: [], estimated: [] },
    weight: { layers: [{ net: 1, cloth: 'crepe' }], stones: [{ name: 'beads', grams: 1 }] },
    pricing: {
      materials: { withoutPrice: [], withoutLength: [] },
      quote: {},
      hours: { tasks: [{}] },
    },
  };
  const skirt = { stations: [{ name: 'a', floor: {} }, { name: 'b' }, { name: 'b' }] };
  const missing = (change: object, own: object = {}) =>
    missingFacts({ gown: { ...gown, ...own }, skirt } as never, { ...facts, ...change } as never);

  it('nothing, where all is said', () => expect(missing({})).toEqual([]));

  it.each<[object, object, object[]]>([
    [{ closure: undefined }, {}, [{ fact: 'closure' }]],
    [{ closure: { passage: { against: [] } } }, {}, [{ fact: 'girths' }]],
    [{ closure: {} }, {}, []],
    [{ waist: { ...facts.waist, grouped: false } }, {}, [{ fact: 'waist-groups' }]],
    [{ waist: { ...facts.waist, grouped: false } }, { layers: [{}] }, []],
    [{ waist: { ...facts.waist, grouped: false } }, { waist: {} }, []],
    [{}, { sewnAsOne: undefined }, [{ fact: 'closure-layers' }]],
    [{}, { sewnAsOne: undefined, layers: [{}] }, []],
    [{ waist: { ...facts.waist, groups: [{ bodicePliesAssumed: true }] } }, {}, [{ fact: 'bodice-plies' }]],
    [{ waist: { ...facts.waist, bonesEnd: undefined } }, {}, [{ fact: 'bones-end' }]],
    [{ waist: { ...facts.waist, bonesEnd: undefined } }, { waist: {} }, []],
    [{ petticoat: { hoop: { offFloorAssumed: false } } }, {}, [{ fact: 'floor-lengths', names: ['b'] }]],
    [{ petticoat: { hoop: { sweep: {}, offFloorAssumed: true } } }, {}, [{ fact: 'hoop-height' }]],
    [{ edging: { start: 'x/y', startAssumed: true } }, {}, [{ fact: 'edging-start', names: ['x/y'] }]],
    [{ bustle: { withoutFloor: ['p'], estimated: [] } }, {}, [{ fact: 'bustle-floor', names: ['p'] }]],
    [
      { bustle: { withoutFloor: [], estimated: ['q'] } },
      {},
      [{ fact: 'bustle-floor-estimated', names: ['q'] }],
    ],
    [
      {
        weight: {
          layers: [{ cloth: 'net' }, { cloth: 'net' }, { cloth: 'crepe', net: 1 }],
          stones: [{ name: 'beads' }],
        },
      },
      {},
      [{ fact: 'cloth-weight', names: ['net', 'beads'] }],
    ],
    [{ pricing: { ...facts.pricing, quote: undefined } }, { labour: undefined }, [{ fact: 'no-prices' }]],
    [
      { pricing: { ...facts.pricing, materials: { withoutPrice: ['p'], withoutLength: ['l'] } } },
      {},
      [
        { fact: 'price', names: ['p'] },
        { fact: 'lay', names: ['l'] },
      ],
    ],
    [{}, { labour: { ...gown.labour, rate: undefined } }, [{ fact: 'rate' }]],
    [{ pricing: { ...facts.pricing, hours: { tasks: [] } } }, {}, [{ fact: 'hours' }]],
    [{}, { labour: { rate: '1' } }, [{ fact: 'fittings-included' }, { fact: 'expires' }]],
    [{}, { dates: {} }, [{ fact: 'event' }]],
  ])('%j %j', (change, own, wanted) => expect(missing(change, own)).toEqual(wanted));
});
