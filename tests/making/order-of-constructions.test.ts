import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { english } from '../../src/words/english.ts';
import { ALL_CONSTRUCTIONS, type Construction, gownOf } from './constructions.ts';
import { type Made, made } from './made.ts';

/** Every step of one name waits, directly or not, for every step of the name before it. */
interface Rule {
  readonly why: string;
  /** In gowns of all of these. */
  readonly of: readonly Construction[];
  /** And of none of these. */
  readonly without?: readonly Construction[];
  readonly order: readonly RegExp[];
}

/** What the trade says, by common practice: each holds in every gown that has the construction, whatever else it has. */
const RULES: readonly Rule[] = [
  { why: 'a scrap tells before cloth is spoiled', of: [], order: [/^test-scraps$/, /^cut:/] },
  { why: 'what is cut is marked before it is lifted', of: [], order: [/^cut:/, /^mark$/, /^seams:/] },
  { why: 'cloth is shrunk before it is laid', of: ['lining'], order: [/^shrink:cupro$/, /^cut:cupro$/] },
  {
    why: 'only a hung gown is level, and only a level one is cut and hemmed',
    of: [],
    order: [
      /^(seams|waist):/,
      /^hang$/,
      /^level$/,
      /^trim$/,
      /^(hem|bag|flounce-hem|overskirt-hem|strip):/,
      /^fit$/,
    ],
  },
  {
    why: 'a facing is cut to the levelled edge',
    of: [],
    without: ['hemFlounce'],
    order: [/^level$/, /^hem:shell$/],
  },
  {
    why: 'a shaped facing is cut and joined before it is laid to the levelled edge',
    of: ['facing'],
    order: [/^cut:cupro$/, /^facing:tunic$/, /^hem:tunic$/],
  },
  {
    why: 'the opening is clean before the zip goes in, whatever the bodice does above it',
    of: ['closure'],
    order: [/^cut:crepe$/, /^finish-opening$/, /^close$/],
  },
  {
    why: 'the edges of a slit are faced once its seam is sewn above it, and hang with the gown',
    of: ['slit'],
    order: [/^cut:cupro$/, /^seams:/, /^slit:1$/, /^hang$/],
  },
  {
    why: 'a bag is sewn to both edges of its opening before the seam is closed round it',
    of: ['pocket'],
    order: [/^mark$/, /^pocket:1$/, /^seams:shell$/],
  },
  {
    why: 'what is felled last of all closes over the bustle’s stitches',
    of: ['bodice', 'bustle'],
    order: [/^bustle$/, /^bodice-lining$/, /^finish$/],
  },
  {
    why: 'loops are there when she tries it on',
    of: ['loops'],
    order: [/^cut:cupro$/, /^loops:hangers$/, /^fit$/],
  },
  {
    why: 'a bias strip is joined before it goes round its edge',
    of: ['cutBinding'],
    order: [/^cut:cupro$/, /^bias:/, /^strip-along:/],
  },
  {
    why: 'a flounce at the hem is on before its own hem is levelled and closed, and hangs a day first',
    of: ['hemFlounce'],
    order: [/^seams:shell$/, /^flounce:ring$/, /^hang$/, /^level$/, /^flounce-hem:ring$/],
  },
  {
    why: 'any flounce hangs a day before its hem is closed',
    of: ['frill'],
    order: [/^flounce:frill$/, /^hang$/, /^level$/, /^flounce-hem:frill$/, /^fit$/],
  },
  {
    why: 'net is cut away behind scallops that are on, and they are levelled by their high points once on',
    of: ['scallops'],
    order: [/^level$/, /^edging:lace-layer$/, /^hem:lace-layer$/, /^level-scallops$/, /^fit$/],
  },
  { why: 'a petticoat is made before a gown hangs over it', of: ['tiers'], order: [/^tiers:/, /^hang$/] },
  { why: 'a wedge is let into a sewn seam', of: ['godet'], order: [/^seams:shell$/, /^godet:shell:/] },
  {
    why: 'stones lie across pressed seams, and their weight draws the hem down',
    of: ['stones'],
    order: [/^seams:shell$/, /^stones:crystals$/, /^hang$/],
  },
  { why: 'a wedge draws the hem down as it hangs', of: ['godet'], order: [/^godet:/, /^hang$/] },
  {
    why: 'gathers are drawn up before the edge is sewn',
    of: ['net'],
    order: [/^seams:veil$/, /^gather:veil$/, /^waist:.*veil/],
  },
  {
    why: 'a bagged hem is turned through a gap that the seam was left with, and braid is in before',
    of: ['bagged'],
    order: [/^seams:underlay$/, /^bag:/, /^turn:/, /^fit$/],
  },
  {
    why: 'braid goes in before the hem is closed over it',
    of: ['braid'],
    without: ['hemFlounce', 'binding'],
    order: [/^strip:shell$/, /^hem:shell$/],
  },
  {
    why: 'a closure is set in flat, before the waist',
    of: ['closure'],
    order: [/^seams:/, /^close$/, /^waist:/],
  },
  {
    why: 'a train that comes off hangs and is levelled with the gown',
    of: ['overskirt'],
    order: [/^overskirt:/, /^hang$/, /^level$/, /^overskirt-hem:/, /^fit$/],
  },
  {
    why: 'a bustle is sewn as she danced in it',
    of: ['bustle'],
    order: [/^level$/, /^fit$/, /^bustle$/, /^finish$/],
  },
  { why: 'a toile that does not fit changes all that is cut', of: ['bodice'], order: [/^toile$/, /^cut:/] },
  {
    why: 'no needle meets a bone, and a hem is levelled below a bodice that stands',
    of: ['bodice'],
    order: [/^bodice-seams$/, /^bodice-close$/, /^waist:/, /^fit-bodice$/, /^bones$/, /^level$/],
  },
  {
    why: 'the lining is felled in last',
    of: ['bodice'],
    order: [/^upper-edge$/, /^fit$/, /^bodice-lining$/, /^finish$/],
  },
];

const everything = made(gownOf(ALL_CONSTRUCTIONS));
const alone = ALL_CONSTRUCTIONS.map((one) => ({ asked: [one], gown: made(gownOf([one])) }));

function ids({ facts }: Made): string[] {
  return facts.order.map(({ id }) => id);
}

/** Of each step all that it has to wait for, directly or not: the order may be any that keeps to it. */
function waits({ facts }: Made): ReadonlyMap<string, ReadonlySet<string>> {
  const known = facts.order.map(({ id }) => id as string);
  const direct = new Map(facts.order.map(({ id, after }) => [id as string, new Set<string>(after)]));
  for (const { id, before } of facts.order) for (const later of before) direct.get(later)?.add(id);
  const whole = new Map<string, Set<string>>();
  for (const id of known) {
    const own = [...direct.get(id)!].filter((one) => known.includes(one));
    whole.set(id, new Set(own.flatMap((one) => [one, ...(whole.get(one) ?? [])])));
  }
  return whole;
}

function brokenRules(gown: Made, asked: readonly Construction[]): string[] {
  const order = ids(gown);
  const waitsFor = waits(gown);
  const named = (name: RegExp): string[] => order.filter((id) => name.test(id));
  return RULES.filter(
    ({ of, without = [] }) =>
      of.every((one) => asked.includes(one)) && !without.some((one) => asked.includes(one)),
  ).flatMap(({ why, order: wanted }) =>
    wanted.slice(1).flatMap((later, i) => {
      const [first, then] = [named(wanted[i]!), named(later)];
      const holds = then.every((id) => first.every((one) => waitsFor.get(id)!.has(one)));
      const stands = first.length > 0 && then.length > 0 && holds;
      return stands ? [] : [`${why}: ${wanted[i]} before ${later} in ${order.join(' ')}`];
    }),
  );
}

/** What contradicts itself, or was named and is not there. */
function faults({ facts, findings }: Made): string[] {
  const order = facts.order.map(({ id }) => id as string);
  const twice = order.filter((id, i) => order.indexOf(id) !== i);
  const stuck = findings.filter(({ code }) => code === 'order-impossible').map(({ message }) => message);
  const early = facts.order.flatMap(({ id, after, before }, place) => [
    ...after.filter((one) => order.indexOf(one) > place).map((one) => `${id} before ${one}`),
    ...before
      .filter((one) => order.includes(one) && order.indexOf(one) < place)
      .map((one) => `${one} before ${id}`),
  ]);
  return [...twice.map((id) => `${id} twice`), ...stuck, ...early];
}

/** All that a maker reads of it. */
function told({ facts, gown }: Made): string {
  const words = english(gown.gown.units);
  return facts.order
    .flatMap(({ work }) => {
      const { does, notes, holds } = words.step(work);
      return [does, ...notes, ...holds];
    })
    .join('\n');
}

describe('the order of making', () => {
  it('of every construction by itself, and of all at once, is as the trade has it', () => {
    expect(alone.flatMap(({ asked, gown }) => brokenRules(gown, asked))).toEqual([]);
    expect(brokenRules(everything, ALL_CONSTRUCTIONS)).toEqual([]);
  });

  it('never contradicts itself', () => {
    expect([...alone.map(({ gown }) => gown), everything].flatMap(faults)).toEqual([]);
  });

  it('holds for any of the constructions together', () => {
    fc.assert(
      fc.property(fc.subarray(ALL_CONSTRUCTIONS, { minLength: 2 }), (asked) => {
        const gown = made(gownOf(asked));
        expect([...brokenRules(gown, asked), ...faults(gown)]).toEqual([]);
      }),
      { numRuns: 12 },
    );
  });

  it('waits for nothing that no gown has', () => {
    const kindOf = (id: string): string => id.replace(/:.*/, ':');
    const all = [...alone.map(({ gown }) => gown), everything].flatMap(({ facts }) => facts.order);
    const borne = new Set(all.map(({ id }) => kindOf(id)));
    const named = new Set(all.flatMap(({ after, before }) => [...after, ...before]).map(kindOf));
    // Asked for by name elsewhere: a back that is laced, and an edging cut off its cloth.
    for (const known of ['finish-opening', 'cut-own-edges', 'baste:', 'fell-lining']) named.delete(known);
    expect([...named].filter((kind) => !borne.has(kind))).toEqual([]);
  });
});

describe('each cloth', () => {
  it('is cut once, by its lay, with all that lies on it', () => {
    for (const gown of [...alone.map((one) => one.gown), everything]) {
      const cut = gown.facts.order.flatMap(({ work }) => (work.kind === 'cut' ? [work] : []));
      const used = new Set(gown.gown.layers.map(({ cloth }) => cloth.name));
      expect(cut.map(({ cloth }) => cloth).sort()).toEqual([...used].sort());
      expect(cut.flatMap(({ layers }) => layers).sort()).toEqual(
        gown.gown.layers.map(({ name }) => name).sort(),
      );
      for (const { cloth } of cut) expect(told(gown)).toContain(`Cut the ${cloth} by its lay`);
    }
  });

  it('that is kept apart is cut layer by layer', () => {
    const apart = gownOf(['lining', 'bagged']).replace('shrinkage: 1%', 'shrinkage: 1%, apart: true');
    expect(ids(made(apart)).filter((id) => id.startsWith('cut:'))).toEqual([
      'cut:cupro/lining',
      'cut:cupro/underlay',
      'cut:crepe',
    ]);
  });
});

describe('nothing is said of what is not there', () => {
  const plain = told(made(gownOf([])));

  it('no panels, no panel seams', () => {
    expect(plain).not.toMatch(/panel/);
    expect(told(made(gownOf(['bodice'])))).toContain('gore seams on panel seams');
  });

  it('no petticoat, nothing hangs over it', () => {
    const overIt = /(Hang the gown|shoes,) over (its|the) petticoat/;
    expect(plain).not.toMatch(overIt);
    expect(told(made(gownOf(['petticoat'])))).toMatch(overIt);
    expect(told(made(gownOf(['tiers'])))).toMatch(overIt);
  });

  it('a layer whose hem is a flounce has no hem of its own to close, nor an edge to trim', () => {
    const flounced = made(gownOf(['hemFlounce']));
    expect(ids(flounced)).not.toContain('hem:shell');
    const trimmed = flounced.facts.order.flatMap(({ work }) => (work.kind === 'trim' ? work.layers : []));
    expect(trimmed.map(({ name }) => name)).toEqual(['ring']);
    expect(ids(made(gownOf(['frill'])))).toContain('hem:shell');
  });

  it('what hangs with the gown is trimmed with it: layers, flounces, trains that come off', () => {
    const trimmed = everything.facts.order.flatMap(({ work }) => (work.kind === 'trim' ? work.layers : []));
    expect(trimmed.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['lining', 'ring', 'frill', 'tail-shell']),
    );
  });
});
