import { describe, expect, it } from 'vitest';
import type { Curve } from '../../src/geometry/curve.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import type { Drawing } from '../../src/print/drawing.ts';
import { clientPages } from '../../src/print/papers/client-pages.ts';
import { quoteText } from '../../src/print/papers/quote-text.ts';
import { stationFigure } from '../../src/print/papers/station-figure.ts';
import { viewsCaption } from '../../src/print/papers/views-block.ts';
import { english } from '../../src/words/english.ts';
import { handMade } from './hand-made-facts.ts';
import { beside, printedLines } from './page-rows.ts';

/** What the client reads, of facts made by hand: each figure once, beside its own words. mm. */

const money = (minor: number) => ({ minor: BigInt(minor), currency: 'GBP' });
const share = (percent: number) => ({ numerator: BigInt(percent), denominator: 100n });
const QUOTE = {
  currency: 'GBP',
  net: money(51000),
  tax: money(10200),
  taxShare: share(20),
  total: money(61200),
  stages: [
    { name: 'deposit', share: share(40), amount: money(24480) },
    { name: 'balance', share: share(60), amount: money(36720) },
  ],
};
const pricing = (own: object = {}, quote: object = {}) => ({
  materials: { withoutPrice: [], withoutLength: [] },
  workCharged: true,
  quote: { ...QUOTE, ...quote },
  ...own,
});
const station = (name: string, finished: number, floor?: number) => ({
  name,
  finished,
  drop: 0,
  floor: floor === undefined ? undefined : { length: floor, estimated: false },
});
const WORKROOM = {
  skirt: {
    waist: 741,
    hem: 4210,
    offFloor: 26,
    stations: [station('centre-front', 1010, 1036), station('a/b', 1050), station('centre-back', 1410, 1080)],
  },
  weight: { layers: [{ cloth: 'silk' }, { cloth: 'net' }, { cloth: 'silk' }], inAll: 1812 },
  cautions: { client: [] },
  pricing: { ...pricing(), quote: undefined },
};
const cloth = (name: string, of: string) => ({ name, cloth: { name: of } });
const input = ({
  workroom = {},
  gown = {},
  ...rest
}: { workroom?: object; gown?: object } & Record<string, unknown> = {}) =>
  handMade('mm', {
    ...rest,
    workroom: { ...WORKROOM, ...workroom },
    gown: {
      name: 'Lantern',
      format: 1,
      content: 'abcd',
      layers: [cloth('lining', 'cupro'), cloth('silk', 'silk')],
      ...gown,
    },
  });
const printed = (own: Parameters<typeof input>[0] = {}) => printedLines(clientPages(input(own)).pages);
const said = (own: Parameters<typeof input>[0] = {}) =>
  printed(own)
    .map((line) => line.map(({ text }) => text).join(' '))
    .join('\n');

describe('what she approves', () => {
  it('each measure beside its own words', () => {
    const lines = printed({
      workroom: {
        closure: { kind: 'zip', at: 'centre-back', side: 'left' },
        stones: [{ stones: { name: 'beads', layer: { name: 'silk' } }, count: 350 }],
      },
      gown: {
        flounces: [{ layer: cloth('frill', 'organza') }],
        capes: [{ name: 'cape', layers: [cloth('c1', 'felt'), cloth('c2', 'wool')] }],
        tiers: [{ layer: cloth('net', 'net') }],
        overskirts: [{ name: 'tail', gown: { layers: [cloth('t1', 'x'), cloth('t2', 'lace')] } }],
      },
    });
    const rows: Record<string, string> = {
      'waist seam, all round': '741 mm',
      'front, from the bodice’s edge to the hem': '1010 mm',
      'back, from the bodice’s edge to the hem': '1410 mm',
      // 1410 less 1080.
      'train on the floor at the centre back': '330 mm',
      'hem off the floor in front': '26 mm',
      'hem, all round': '4210 mm',
      opens: 'zip at centre back, on your left',
      'set by hand': 'beads on the silk, 350',
      'layers, from the inside out': 'lining (cupro) and silk',
      'sewn on to it': 'frill (organza) and cape (wool)',
      'worn with it': 'net and tail (lace)',
    };
    for (const [label, value] of Object.entries(rows)) expect(beside(lines, label), label).toEqual([value]);
  });

  it('only what there is: no train that lies on no floor, none of an unknown one but as asked', () => {
    const labels = (own: Parameters<typeof input>[0]) => {
      const lines = printed(own);
      return [
        'train on the floor at the centre back',
        'hem off the floor in front',
        'opens',
        'sewn on to it',
        'worn with it',
        'set by hand',
      ].flatMap((label) => beside(lines, label));
    };
    const skirt = (back: object, own: object = {}) => ({
      workroom: {
        skirt: {
          ...WORKROOM.skirt,
          offFloor: undefined,
          stations: [station('centre-front', 1010), back],
          ...own,
        },
      },
    });
    expect(labels(skirt(station('centre-back', 1080, 1080)))).toEqual([]);
    expect(labels(skirt(station('centre-back', 1081, 1080)))).toEqual(['1 mm']);
    expect(labels({ ...skirt(station('centre-back', 1410)), gown: { train: { onFloor: 602 } } })).toEqual([
      '602 mm',
    ]);
    expect(labels({ ...skirt(station('centre-back', 1410)), gown: { train: { onFloor: 0 } } })).toEqual([]);
    expect(labels(skirt(station('other', 1410, 1000)))).toEqual([]);
    const own = printed({ gown: { waist: {} }, ...skirt(station('centre-back', 1410)) });
    expect(beside(own, 'front, from the waist to the hem')).toEqual(['1010 mm']);
    expect(beside(own, 'back, from the waist to the hem')).toEqual(['1410 mm']);
  });
});

describe('the quote', () => {
  const quoted = (own: object = {}, quote: object = {}, more: object = {}) =>
    said({ workroom: { pricing: pricing(own, quote) }, ...more });

  it('none where nothing is priced', () => expect(said()).not.toContain('Quote'));

  it('what is missing is told, and the price is only one so far', () => {
    const whole = quoted();
    expect(whole).toContain('price GBP 612.00');
    expect(whole).not.toContain('Not in the price yet');
    expect(whole).not.toContain('price so far');
    const lacking = quoted({
      materials: { withoutPrice: ['silk'], withoutLength: ['net'] },
      workCharged: false,
    });
    expect(lacking).toContain('price so far GBP 612.00');
    expect(lacking).toContain('Not in the price yet: silk, net and making.');
  });

  it('tax only where there is some; stages where there are two; not final where lays were cut short', () => {
    const untaxed = quoted({}, { tax: money(0) });
    expect(untaxed).not.toContain('before tax');
    expect(untaxed).toContain('price GBP 612.00');
    expect(quoted()).toContain('When it falls due');
    expect(quoted({}, { stages: QUOTE.stages.slice(1) })).not.toContain('falls due');
    expect(quoted()).not.toContain('Not final');
    expect(quoted({}, {}, { cutShort: true })).toContain('Not final');
    const [first] = clientPages(input({ cutShort: true })).pages;
    const [other] = clientPages(input()).pages;
    expect(JSON.stringify(first)).toContain('format 1 · abcd · ');
    expect(JSON.stringify(other)).not.toContain('abcd · ');
  });

  it('fittings that are in it, and until when', () => {
    const labour = (own: object) => quoted({}, {}, { gown: { labour: own } });
    expect(labour({ fittingsIncluded: 1, expires: '2027-03-09' })).toMatch(
      /making, and 1 fitting\.[\s\S]*until 9 March 2027[\s\S]*more than the 1 fitting included\./,
    );
    const plain = labour({});
    expect(plain).toContain('trimmings, making.');
    expect(plain).toContain('can take in or let out.');
    expect(plain).not.toContain('until');
    const terminal = quoteText(
      input({ gown: { labour: { fittingsIncluded: 3 } } }).gown,
      pricing({ workCharged: false }) as never,
      english('mm'),
    );
    expect(terminal).toContain('and 3 fittings.');
    expect(terminal).toMatch(/price so far +GBP 612\.00\nNot in the price yet: making\./);
    expect(quoteText(input().gown, pricing({ quote: undefined }) as never, english('mm'))).toMatch(
      /^The spec has no prices/,
    );
  });
});

describe('the card', () => {
  it('what it fastens and hangs by; a care label for each cloth, once; the bustle’s steps by number', () => {
    expect(said()).toContain('Fasten the waist stay first');
    expect(said({ gown: { waist: {} } })).toMatch(/Hang it by its whole waist/);
    expect(said({ gown: { waist: {} } })).not.toMatch(/Fasten/);
    expect(said({ gown: { waist: {}, wrap: {} } })).toMatch(/Fasten the under edge inside first/);
    const labels = said().match(/\w+: care by/g);
    expect(labels).toEqual(['silk: care by', 'net: care by']);
    expect(said()).not.toContain('To put the bustle up');
    expect(said({ workroom: { bustle: { kind: 'over', number: 0 } } })).not.toContain('To put the bustle up');
    const bustled = printed({ workroom: { bustle: { kind: 'under', number: 5 } } });
    expect(beside(bustled, '2')).toEqual([expect.stringContaining('tie the ribbons')]);
    expect(beside(bustled, '3')).toEqual([expect.stringContaining('Walk a few steps')]);
    expect(said({ workroom: { bustle: { kind: 'over', number: 1 } } })).toContain(
      'Loop over hook at the centre back.',
    );
  });

  it('what she should know, with the weight that it speaks of', () => {
    const lines = said({ workroom: { cautions: { client: ['weight', 'stairs'] } } });
    expect(lines.match(/Please note/g)).toHaveLength(2);
    expect(lines).toContain('1.81 kg');
  });
});

describe('what stands under the views', () => {
  const view = (own: object = {}) => ({ opening: [], edging: [], ...own });
  const caption = (own: object) =>
    viewsCaption(
      { layer: 'shell', notHung: [], isBodiceDrafted: true, rows: [], ...own } as never,
      english('mm'),
    );
  const words = english('mm');
  const [plain, net] = [view(), view()];
  const rows = (...views: object[]) => [views.map((own) => ({ view: own, name: 'x' }))];

  it.each<[string, object, string[]]>([
    ['the layer', { rows: rows(plain) }, [words.hung.drawn('shell'), words.hung.figure(true)]],
    [
      'a plain bodice',
      { rows: rows(plain), isBodiceDrafted: false },
      [words.hung.drawn('shell'), words.hung.figure(false)],
    ],
    [
      'tiers too',
      { rows: rows(plain, net), under: [net] },
      [words.hung.drawn('shell'), words.hung.tiers, words.hung.figure(true)],
    ],
    ['tiers alone', { rows: rows(net), under: [net] }, [words.hung.tiers, words.hung.figure(true)]],
    [
      'an opening, an edging and what is not hung',
      { rows: rows(view({ opening: [1] }), view({ edging: [1] })), notHung: ['cape', 'tail'] },
      [
        words.hung.drawn('shell'),
        words.opening,
        words.hung.edging,
        words.hung.figure(true),
        words.hung.without('cape and tail'),
      ],
    ],
  ])('%s', (_, own, told) => expect(caption(own)).toBe(told.join(' ')));
});

describe('rings round the figure', () => {
  const names = { shoulders: 'a', waist: 'b', hip: 'c', floor: 'd' };
  const dashed = ({ marks }: Drawing): (readonly Curve[])[] =>
    marks.flatMap((mark) => (mark.kind === 'path' && mark.line?.dash !== undefined ? mark.runs : []));
  const rings = (levels: object) =>
    dashed(stationFigure({ ...names, ...levels }, [], 180))
      .filter((run) => run[0]!.kind !== 'line')
      .map((run) => [0, 0.5, 1].map((t) => pointAt(run[0]!, t)));

  it('each level’s from her right to her left, lower in front, the lower the wider from the waist down', () => {
    const all = rings({ hoop: 'h', bust: 'e', underbust: 'f' });
    expect(all).toHaveLength(4);
    for (const [left, front, right] of all) {
      expect(left!.y).toBeCloseTo(right!.y, 9);
      expect(front!.y).toBeGreaterThan(left!.y);
      expect(front!.x).toBeCloseTo((left!.x + right!.x) / 2, 9);
      expect(left!.x).toBeLessThan(right!.x);
      // About the middle of the body.
      expect(front!.x).toBeCloseTo(20, 9);
    }
    const [hip, hoop, bust, underbust] = all.map(([left, , right]) => ({
      wide: right!.x - left!.x,
      y: left!.y,
    }));
    expect(hoop!.wide).toBeGreaterThan(2 * hip!.wide);
    expect(bust!.wide).toBeGreaterThan(underbust!.wide);
    expect([bust!.y, underbust!.y, hip!.y, hoop!.y]).toEqual(
      [bust!.y, underbust!.y, hip!.y, hoop!.y].toSorted((a, b) => a - b),
    );
    expect(rings({})).toHaveLength(1);
    expect(rings({ underbust: 'f' })).toHaveLength(2);
  });
});
