import { describe, expect, it } from 'vitest';
import { isSameHash, recordedCuts } from '../../src/compare/cloth-state.ts';
import { layChanges } from '../../src/compare/lay-changes.ts';
import { comparisonText } from '../../src/words/comparison-text.ts';
import { pieceWords } from '../../src/words/piece-words.ts';

/** What a comparison says of changes made by hand: every figure another, so that each stands where it belongs. */

const euro = (minor: number) => ({ minor: BigInt(minor), currency: 'EUR' });
const piece = (gore: string, layer: string, verdict: string, own: object = {}) => ({
  gore,
  layer,
  verdict,
  slid: { x: 0, y: 0 },
  edges: [],
  marks: [],
  piece: { piece: {} },
  ...own,
});
const lay = (cloth: string, layers: string[], length: number, buy: number, cost?: number) => ({
  cloth,
  layers,
  length,
  buy,
  ...(cost === undefined ? {} : { cost: euro(cost) }),
});
const finding = (code: string) => ({ level: 'warning', code, message: `About ${code}.` });

const CUT = (edge: string, most: number) => ({ edge, comesOff: { most, least: most, at: 0 } });

const WHOLE = {
  old: { name: 'old.yaml', content: 'aaaa1111', spec: {}, price: euro(90000) },
  now: { name: 'new.yaml', content: 'bbbb2222', spec: { gown: 'Lantern', units: 'cm' }, price: euro(91250) },
  spec: [
    { path: 'train.on-floor', old: { kind: 'length', value: 645 }, now: { kind: 'length', value: 520 } },
    { path: 'lengths.off-floor', old: { kind: 'length', value: 20 }, now: { kind: 'length', value: 25 } },
    { path: 'bustle.loop', now: { kind: 'length', value: 21 } },
    { path: 'edging.depth', old: { kind: 'length', value: 33 } },
    { path: 'notes', old: { kind: 'notes', value: 'a' }, now: { kind: 'notes', value: 'b' } },
    { path: 'gores.notes', now: { kind: 'notes', value: 'b' } },
    { path: 'layers.notes', old: { kind: 'notes', value: 'b' } },
    { path: 'layers', old: { kind: 'order', value: ['a', 'b'] }, now: { kind: 'order', value: ['b', 'a'] } },
    { path: 'straps', now: { kind: 'order', value: ['x'] } },
  ],
  pieces: {
    changes: [
      piece('front', 'shell', 'same'),
      piece('side', 'shell', 're-mark', { edges: [CUT('hem', 12)] }),
      piece('back', 'shell', 're-mark', { edges: [CUT('hem', 12)] }),
      piece('back', 'net', 're-mark', { edges: [CUT('hem', 12)] }),
      piece('front', 'net', 're-cut', { newCloth: 'piece-is-new' }),
      piece('front', 'lining', 're-cut', { side: 'left' }),
      piece('side', 'lining', 'same'),
      piece('front', 'frill', 'same', { marks: ['notches'] }),
      piece('back', 'frill', 'same'),
    ],
    dropped: [{ gore: 'gusset', layer: 'shell', part: 'facing', side: 'right' }],
  },
  cloth: new Map<string, unknown>([
    ['shell', 'cut-from-old'],
    ['net', 'cut-from-old'],
    ['lining', 'not-cut'],
    ['frill', 'not-cut'],
    ['tulle', 'cut-from-new'],
    ['felt', { cutFrom: 'cccc3333' }],
    ['wool', { cutFrom: 'dddd4444', found: 'gown.yaml@HEAD~3' }],
  ]),
  lays: [
    {
      old: lay('crepe', ['shell'], 4310, 4500, 11025),
      now: lay('crepe', ['shell', 'net'], 4630, 4700, 11515),
    },
    { now: lay('felt', ['felt'], 210, 300) },
    { old: lay('cupro', ['lining'], 990, 1000) },
  ],
  sheets: { again: ['A2', 'C1'], gone: ['D4'], count: 11 },
  findings: {
    added: [finding('hem-low')],
    changed: [{ old: finding('x'), now: finding('train-long') }],
    gone: [finding('hoop-small')],
  },
};

const text = (own: object = {}) => comparisonText({ ...WHOLE, ...own } as never);

describe('a whole comparison', () => {
  it('says each thing under its title, old before new', () => {
    expect(text()).toBe(`Lantern: from old.yaml (aaaa1111) to new.yaml (bbbb2222)

The spec
  train.on-floor: 64.5 cm → 52 cm, 12.5 cm less
  lengths.off-floor: 2 cm → 2.5 cm, 0.5 cm more
  bustle.loop: 2.1 cm, new
  edging.depth: 3.3 cm, taken out
  notes: the note reads differently; no measure changes by it
  gores.notes: the note is new; no measure changes by it
  layers.notes: the note is gone; no measure changes by it
  layers: a, b → b, a

Cloth on the table: shell, net
  cut again:
    front (net)
      the old version has no such piece
  mark anew and trim; the cloth is enough:
    side (shell)
      hem: 12 mm comes off all along
    back (shell, net)
      hem: 12 mm comes off all along
  as they are: front (shell)

Not cut yet: lining, frill
  cut by the new lines: front left, front

Cut from the new version already: tulle
  nothing to do

Not needed any more
  shell: facing gusset right

Lays and cloth to buy
  shell and net: lay 431 cm, buy 450 cm of crepe, EUR 110.25 for shell → lay 463 cm, buy 470 cm of crepe, EUR 115.15
  felt: lay 21 cm, buy 30 cm of felt, new
  lining: no lay any more (was lay 99 cm, buy 100 cm of cupro)

Price
  EUR 900.00 → EUR 912.50

Sheets to print again
  2 of 11: A2, C1
  not used any more: D4
  \`draft --since\` prints them so that they go with the old ones

New findings
  warning[hem-low]: About hem-low.

Findings with other figures
  warning[train-long]: About train-long.

Findings that are gone
  warning[hoop-small]: About hoop-small.
`);
  });

  it('in inches, and where a version has no price', () => {
    const old = { ...WHOLE.old, price: undefined };
    const now = { ...WHOLE.now, spec: { gown: 'Lantern', units: 'in' } };
    const said = text({ old, now });
    expect(said).toContain('Price\n  none given → EUR 912.50\n');
    // 4310 and 4500, 4630 and 4700: 169.685, 177.165, 182.283, 185.039
    expect(said).toContain('lay 169 11/16 in, buy 177 3/16 in of crepe');
    expect(said).toContain('lay 182 5/16 in, buy 185 1/16 in of crepe');
    expect(text({ now, old: { ...WHOLE.old, price: euro(91250) } })).not.toContain('Price');
  });

  it('sheets: all of them, none of them, and none asked about', () => {
    const sheets = (own: object | undefined) =>
      /Sheets[^\n]*\n((?: {2}.*\n)*)/.exec(text({ sheets: own }))?.[1];
    expect(sheets({ again: ['A1', 'A2'], gone: [], count: 2 })).toBe(
      '  all 2: the pieces lie elsewhere on them\n',
    );
    expect(sheets({ again: [], gone: ['B1'], count: 2 })).toBe(
      '  not used any more: B1\n  `draft --since` prints them so that they go with the old ones\n',
    );
    expect(sheets({ again: [], gone: [], count: 2 })).toBeUndefined();
    expect(sheets(undefined)).toBeUndefined();
  });

  it('layers that were cut from elsewhere, where pieces of theirs change', () => {
    const changes = ['felt', 'wool', 'felt-2'].map((layer) => piece('front', layer, 'same'));
    const cloth = new Map([...WHOLE.cloth, ['felt-2', 'not-recorded'], ['lining', 'not-cut']]);
    const said = text({ cloth, pieces: { changes, dropped: [] } });
    expect(said).toContain(
      'Cut from another version (cccc3333), compared with old.yaml all the same: felt\n  as they are: front (felt)\n',
    );
    expect(said).toContain('Cloth on the table, cut from gown.yaml@HEAD~3 (dddd4444): wool\n');
    expect(said).toContain('If it was cut from old.yaml: felt-2\n');
    expect(said).toContain('Not cut yet: lining, frill\n  no piece changes\n');
  });
});

describe('what is said of one piece', () => {
  const words = (verdict: string, own: object) =>
    pieceWords(piece('side', 'shell', verdict, own) as never, 'mm');

  it.each([
    ['now-on-the-fold', 'it was cut as a pair and is one piece on the fold now'],
    ['thread-runs-otherwise', 'the straight thread runs another way across it now'],
    ['more-of-them', 'more of them are needed than were cut'],
  ])('%s', (newCloth, said) => expect(words('re-cut', { newCloth, edges: [CUT('hem', 9)] })).toEqual([said]));

  it('what is too small to be seen is not told', () => {
    const edges = [CUT('hem', 0.4), { edge: 'waist', comesOff: { most: 7, least: 6.6, at: 3 } }];
    expect(words('re-mark', { edges, slid: { x: 0.3, y: 0.3 } })).toEqual([
      'waist: 7 mm comes off all along',
    ]);
    expect(words('re-mark', { edges: [CUT('hem', 0.4)] })).toEqual([
      'the seam line moves; next to nothing comes off',
    ]);
    expect(words('same', { edges: [], slid: { x: 4, y: 0 }, marks: ['notches', 'folds'] })).toEqual([
      'its notches move: mark them anew',
      'its folds lie elsewhere: mark them anew',
    ]);
    // Of one that is cut again only what is lacking matters.
    const lacking = { edge: 'back', left: { wanted: 15, least: 2, at: 300 }, tooLittle: true };
    const enough = { edge: 'hem', left: { wanted: 10, least: 8, at: 20 } };
    expect(
      words('re-cut', { edges: [lacking, enough, CUT('waist', 8)], marks: ['notches', 'folds'] }),
    ).toEqual(['back: 2 mm of 15 mm allowance left, least 300 mm down from the waist']);
    const hair = { edge: 'back', left: { wanted: 15, least: 14.8, at: 300 } };
    expect(words('let-out', { edges: [hair] })).toEqual(['back: all but a hair of the allowance is left']);
  });

  it.each([
    [{ x: 0, y: 3 }, '3 mm down'],
    [{ x: 0.2, y: -3 }, '3 mm up'],
    [{ x: 4, y: 0 }, '4 mm to the right'],
    [{ x: -4, y: 3 }, '3 mm down and 4 mm to the left'],
    [{ x: 0.4, y: 0.4 }, '0.6 mm'],
  ])('slid by %j', (slid, said) =>
    expect(words('re-mark', { slid, edges: [CUT('hem', 9)] })).toEqual([
      `slide the new piece ${said} on the old one, from waist on waist`,
      'hem: 9 mm comes off all along',
    ]),
  );

  it('places along waist and hem are told from the front edge, in front of the fold by its name', () => {
    const edges = (at: number, from: string) => [
      { edge: 'hem', comesOff: { most: 9, least: 0.2, at }, from },
    ];
    expect(words('re-mark', { edges: edges(0.3, 'fold') })).toEqual([
      'hem: up to 9 mm comes off, most at the fold',
    ]);
    expect(words('re-mark', { edges: edges(70, 'fold') })).toEqual([
      'hem: up to 9 mm comes off, most 70 mm from the fold',
    ]);
    expect(words('re-mark', { edges: edges(70, 'front/side') })).toEqual([
      'hem: up to 9 mm comes off, most 70 mm from front/side',
    ]);
  });

  it('what is left: short of a corner, outside the cloth, or so much of so much', () => {
    const left = (own: object, more: object = {}) =>
      words('let-out', {
        edges: [{ edge: 'back', left: { wanted: 15, least: 11, at: 80, ...own }, ...more }],
      });
    expect(left({})).toEqual(['back: 11 mm of 15 mm allowance left, least 80 mm down from the waist']);
    expect(left({}, { corner: true })).toEqual([
      'back: a corner of the allowance is 4 mm short, 80 mm down from the waist',
    ]);
    const outside = { edge: 'back', left: { wanted: 15, least: -6, at: 80 }, tooLittle: true };
    expect(words('re-cut', { edges: [outside] })).toEqual([
      'back: the seam line runs 6 mm outside the cloth, most 80 mm down from the waist',
    ]);
  });

  it.each([
    ['facing', 'its inner edge'],
    ['bodice', 'the upper edge'],
    ['flounce', 'its top'],
  ])('the sides of a %s run down from %s', (part, top) => {
    const edges = [{ edge: 'back', comesOff: { most: 9, least: 2, at: 120 } }];
    expect(words('re-mark', { edges, piece: { piece: { part } } })).toEqual([
      `back: 2 mm to 9 mm comes off, most 120 mm down from ${top}`,
    ]);
  });
});

describe('lays that are each other’s', () => {
  const old = [
    lay('crepe', ['shell'], 4000, 4100),
    lay('crepe', ['top'], 900, 1000),
    lay('net', ['veil'], 500, 600),
  ];

  it('by their layers, then by their cloth; each once', () => {
    const now = [lay('crepe', ['top', 'shell'], 4700, 4800), lay('felt', ['veil'], 500, 600)];
    expect(layChanges(old, now)).toEqual([
      { old: old[0], now: now[0] },
      { old: old[2], now: now[1] },
      { old: old[1] },
    ]);
  });

  it.each([
    ['half a millimetre of lay', { length: 4000.4 }, 0],
    ['more of it', { length: 4000.6 }, 1],
    ['half a millimetre to buy', { buy: 4100.4 }, 0],
    ['more to buy', { buy: 4200 }, 1],
    ['a cost', { cost: euro(1) }, 1],
    ['another cloth', { cloth: 'felt' }, 1],
  ])('%s', (_, change, told) => {
    expect(layChanges(old.slice(0, 1), [{ ...old[0]!, ...change }])).toHaveLength(told);
  });

  it('a price in another currency is another price', () => {
    const priced = { ...old[0]!, cost: euro(5) };
    expect(layChanges([priced], [{ ...priced, cost: { minor: 5n, currency: 'GBP' } }])).toHaveLength(1);
    expect(layChanges([priced], [{ ...priced, cost: euro(5) }])).toEqual([]);
  });
});

describe('the hash that a layer was cut from', () => {
  it.each([
    ['ab12cd34', 'ab12cd34', true],
    ['ab12', 'ab12cd34', true],
    ['ab12cd34ef', 'ab12cd34', true],
    ['b12c', 'ab12cd34', false],
    ['ab13', 'ab12cd34', false],
  ])('%s for %s: %s', (recorded, content, same) => expect(isSameHash(recorded, content)).toBe(same));

  it('the new spec’s word holds before the old one’s, in small letters', () => {
    const cuts = recordedCuts(
      { cut: { shell: 'AA', net: 'bb' } } as never,
      { cut: { shell: 'Cc' } } as never,
    );
    expect(cuts).toEqual({ shell: 'cc', net: 'bb' });
  });
});
