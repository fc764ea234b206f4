import { describe, expect, it } from 'vitest';
import { type FactsSoFar, missingFacts } from '../../src/workroom/missing-facts.ts';

/** What a spec leaves open, asked of facts made by hand: each alone, and not where it is said. */

type Own = Partial<Record<keyof FactsSoFar, object | undefined>> & { gown?: object; stations?: object[] };

/** Of these facts nothing is missing. */
const COMPLETE = {
  waist: { grouped: true, groups: [{ bodicePliesAssumed: false }], bonesEnd: 20 },
  closure: { passage: { against: ['hip'] } },
  edging: undefined,
  bustle: { withoutFloor: [], estimated: [] },
  petticoat: { hoop: { sweep: 3000, offFloorAssumed: false } },
  weight: { layers: [{ cloth: 'silk', net: 400 }], stones: [{ name: 'beads', grams: 3 }] },
  pricing: {
    materials: { withoutPrice: [], withoutLength: [] },
    quote: {},
    hours: { tasks: [{}] },
  },
};
const GOWN = {
  layers: [{}, {}],
  sewnAsOne: { closure: ['shell'] },
  labour: { rate: '20', fittingsIncluded: 3, expires: '2027-01-01' },
  dates: { event: '2027-06-12' },
};
const missing = ({ gown = {}, stations = [], ...own }: Own) =>
  missingFacts(
    { gown: { ...GOWN, ...gown }, skirt: { stations } } as never,
    { ...COMPLETE, ...own } as never,
  );
const named = (fact: string, ...names: string[]) => [{ fact, names }];

describe('what a spec leaves open', () => {
  it('nothing, where all is said', () => expect(missing({})).toEqual([]));

  it.each<[string, Own, string[]]>([
    ['no closure', { closure: undefined }, ['closure']],
    ['no closure, one layer', { closure: undefined, gown: { layers: [{}] } }, ['closure']],
    ['a wrap needs none', { closure: undefined, gown: { wrap: {} } }, []],
    ['nothing that she steps in past', { closure: { passage: { against: [] } } }, ['girths']],
    ['no passage at all', { closure: {} }, []],
    [
      'layers that nobody grouped at the waist',
      { waist: { ...COMPLETE.waist, grouped: false } },
      ['waist-groups'],
    ],
    ['one layer', { waist: { ...COMPLETE.waist, grouped: false }, gown: { layers: [{}] } }, []],
    ['a waist of its own', { waist: { ...COMPLETE.waist, grouped: false }, gown: { waist: {} } }, []],
    ['which layers the closure goes through', { gown: { sewnAsOne: {} } }, ['closure-layers']],
    ['nothing sewn as one', { gown: { sewnAsOne: undefined } }, ['closure-layers']],
    ['of one layer it is clear', { gown: { sewnAsOne: {}, layers: [{}] } }, []],
    ['nor without a closure', { closure: undefined, gown: { sewnAsOne: {}, wrap: {} } }, []],
    [
      'plies of the bodice in one of two groups',
      { waist: { ...COMPLETE.waist, groups: [{ bodicePliesAssumed: false }, { bodicePliesAssumed: true }] } },
      ['bodice-plies'],
    ],
    ['where bones end', { waist: { ...COMPLETE.waist, bonesEnd: undefined } }, ['bones-end']],
    [
      'a waist of its own has none',
      { waist: { ...COMPLETE.waist, bonesEnd: undefined }, gown: { waist: {} } },
      [],
    ],
    ['a hoop’s height', { petticoat: { hoop: { sweep: 1, offFloorAssumed: true } } }, ['hoop-height']],
    ['no petticoat', { petticoat: undefined }, []],
    ['no hoop', { petticoat: {} }, []],
    ['no prices', { pricing: { ...COMPLETE.pricing, quote: undefined } }, ['no-prices']],
    ['the rate', { gown: { labour: { ...GOWN.labour, rate: undefined } } }, ['rate']],
    ['all of labour', { gown: { labour: undefined } }, ['rate', 'fittings-included', 'expires']],
    ['hours', { pricing: { ...COMPLETE.pricing, hours: { tasks: [] } } }, ['hours']],
    ['hours at all', { pricing: { ...COMPLETE.pricing, hours: undefined } }, ['hours']],
    [
      'fittings',
      { gown: { labour: { ...GOWN.labour, fittingsIncluded: undefined } } },
      ['fittings-included'],
    ],
    ['none are some too', { gown: { labour: { ...GOWN.labour, fittingsIncluded: 0 } } }, []],
    ['until when', { gown: { labour: { ...GOWN.labour, expires: undefined } } }, ['expires']],
    ['the day', { gown: { dates: {} } }, ['event']],
    ['all dates', { gown: { dates: undefined } }, ['event']],
    ['no bustle', { bustle: undefined }, []],
  ])('%s', (_, own, facts) => expect(missing(own)).toEqual(facts.map((fact) => ({ fact }))));

  it('which stations, seams, cloths and stones it is', () => {
    const stations = [
      { name: 'a', floor: 1000 },
      { name: 'b' },
      { name: 'c', floor: 0 },
      { name: 'd' },
      { name: 'b' },
    ];
    expect(missing({ stations })).toEqual([]);
    expect(missing({ stations, petticoat: { hoop: {} } })).toEqual(named('floor-lengths', 'b', 'd'));
    expect(missing({ edging: { start: 'centre-back', startAssumed: true } })).toEqual(
      named('edging-start', 'centre-back'),
    );
    expect(missing({ edging: { start: 'centre-back', startAssumed: false } })).toEqual([]);
    expect(missing({ bustle: { withoutFloor: ['a', 'b'], estimated: [] } })).toEqual(
      named('bustle-floor', 'a', 'b'),
    );
    expect(missing({ bustle: { withoutFloor: [], estimated: ['c'] } })).toEqual(
      named('bustle-floor-estimated', 'c'),
    );
    const layers = [{ cloth: 'silk' }, { cloth: 'net', net: 0 }, { cloth: 'silk' }, { cloth: 'crepe' }];
    expect(
      missing({ weight: { layers, stones: [{ name: 'beads' }, { name: 'sequins', grams: 0 }] } }),
    ).toEqual(named('cloth-weight', 'silk', 'crepe', 'beads'));
    const materials = (withoutPrice: string[], withoutLength: string[]) => ({
      pricing: { ...COMPLETE.pricing, materials: { withoutPrice, withoutLength } },
    });
    expect(missing(materials(['tulle'], []))).toEqual(named('price', 'tulle'));
    expect(missing(materials([], ['net', 'lace']))).toEqual(named('lay', 'net', 'lace'));
  });

  it('in the order in which they are told', () => {
    const nothing = {
      waist: { grouped: false, groups: [{ bodicePliesAssumed: true }], bonesEnd: undefined },
      closure: { passage: { against: [] } },
      edging: { start: 'a', startAssumed: true },
      bustle: { withoutFloor: ['a'], estimated: ['b'] },
      petticoat: { hoop: { offFloorAssumed: true } },
      weight: { layers: [{ cloth: 'silk' }], stones: [] },
      pricing: { materials: { withoutPrice: ['x'], withoutLength: ['y'] }, quote: {}, hours: undefined },
      gown: { sewnAsOne: undefined, labour: undefined, dates: undefined },
    };
    expect(
      missing(nothing)
        .map(({ fact }) => fact)
        .join(' '),
    ).toBe(
      'girths waist-groups closure-layers bodice-plies bones-end floor-lengths hoop-height edging-start bustle-floor bustle-floor-estimated cloth-weight price lay rate hours fittings-included expires event',
    );
  });
});
