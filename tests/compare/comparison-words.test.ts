import { describe, expect, it } from 'vitest';
import type { Curve } from '../../src/geometry/curve.ts';
import { draft } from '../../src/pipeline.ts';
import { overlayDrawing } from '../../src/print/pattern/overlay-drawing.ts';
import { compareGowns } from '../../src/publish/comparison.ts';
import { comparisonText } from '../../src/words/comparison-text.ts';
import { ENGLISH_PATTERN } from '../../src/words/english-pattern.ts';
import { pieceWords } from '../../src/words/piece-words.ts';
import { changeOf, compared, cone } from './versions.ts';

/** What a comparison says at the table: which lines, of which piece, how far and which way; figures by hand. */
const level = (length: number) => ({
  lengths: { measured: 'finished', at: { 'centre-front': length, 'centre-back': length } },
});
const said = (old: string, now: string): string[] => comparisonText(compared(old, now)).split('\n');
/** What stands under a title, down to the next line that is no deeper. */
function below(lines: readonly string[], title: string): string[] {
  const at = lines.findIndex((line) => line.trim() === title);
  if (at < 0) return [];
  const deep = (line: string) => line.length - line.trimStart().length;
  const end = lines.findIndex((line, i) => i > at && deep(line) <= deep(lines[at]!));
  return lines.slice(at + 1, end < 0 ? undefined : end).map((line) => line.trim());
}

const TITLE = 'If it was cut from old.yaml: shell';

describe('what a comparison says', () => {
  it('of a hem 20 mm shorter: the old value, the new one, and what comes off', () => {
    const lines = said(cone(), cone(level(980)));
    const spec = below(lines, 'The spec');
    expect(spec).toHaveLength(2);
    for (const [i, station] of ['centre-front', 'centre-back'].entries())
      expect(spec[i]).toMatch(new RegExp(`^lengths\\.at\\.${station}: 1000 mm → 980 mm, .*20 mm`));
    expect(below(lines, TITLE)).toEqual([
      'mark anew and trim; the cloth is enough:',
      'front, side, back (shell)',
      'hem: 20 mm comes off all along',
    ]);
  });

  it('of a hem let down: what is left of the allowance, or how far the seam line runs outside', () => {
    // 3 of 10; 6 of 10, of which 2 are taken from the waist's allowance; 40, that is 30 too many.
    expect(below(said(cone(), cone(level(1003))), 'let out within the allowances:').join()).toMatch(
      /^front \(shell\),hem: 7 mm of 10 mm allowance left, least/,
    );
    const slid = below(said(cone(), cone(level(1006))), 'let out within the allowances:').join();
    expect(slid).toMatch(/slide the new piece 2 mm up on the old one, from waist on waist/);
    expect(slid).toMatch(/hem: 6 mm of 10 mm allowance left/);
    const again = below(said(cone(), cone(level(1040))), 'cut again:').join();
    expect(again).toMatch(/hem: the seam line runs 30 mm outside the cloth, most/);
    expect(again).not.toMatch(/allowance left|comes off/);
  });

  it('of what is to be done first: what is cut again before what is let out, trimmed or left', () => {
    // The back 40 longer, the front as it was; the side runs from one to the other.
    const lengths = {
      measured: 'finished',
      at: { 'centre-front': 1000, 'front/side': 1000, 'centre-back': 1040 },
    };
    const lines = said(
      cone({ lengths: { ...lengths, at: { ...lengths.at, 'centre-back': 1000 } } }),
      cone({ lengths }),
    );
    const verdicts = below(lines, TITLE).filter((line) => /again|allowances|enough|as they are/.test(line));
    expect(verdicts[0]).toBe('cut again:');
    expect(verdicts.at(-1)).toMatch(/^as they are/);
  });

  it('of a layer that is gone, and of another cloth', () => {
    const layers = [
      { name: 'lining', cloth: 'cupro', hem: 'faced' },
      { name: 'shell', cloth: 'calico', hem: 'faced' },
    ];
    const cloths = { calico: { width: '300cm', colour: 'ecru' }, cupro: { width: '300cm', colour: 'ink' } };
    const two = cone({ layers, cloths });
    const dropped = below(said(two, cone({ layers: layers.slice(1), cloths })), 'Not needed any more');
    expect(dropped).toEqual(['lining: front', 'lining: side', 'lining: back']);
    const other = [layers[0]!, { ...layers[1]!, cloth: 'cupro' }];
    const lines = below(
      said(two, cone({ layers: other, cloths })),
      'If it was cut from old.yaml: lining, shell',
    );
    expect(lines.join('\n')).toContain('front, side, back (shell)\nit is of another cloth now');
    expect(lines.join('\n')).toContain('as they are: front, side, back (lining)');
  });

  it('of one spec written twice', () => {
    expect(said(cone(), cone())).toContain('Both say the same: nothing changes.');
  });

  it('of findings: what is new, and what is gone', () => {
    const turned = (hem: string) =>
      cone({
        allowances: { seam: '15mm', waist: '15mm', hem },
        layers: [{ name: 'shell', cloth: 'calico', hem: 'turned' }],
      });
    const version = (name: string, text: string) => {
      const { spec, gown, diagnostics } = draft({ name, text });
      return { name, spec: spec!, gown: gown!, diagnostics };
    };
    const [few, many] = [version('few.yaml', turned('10mm')), version('many.yaml', turned('120mm'))];
    const lines = (old: typeof few, now: typeof few) => comparisonText(compareGowns(old, now)).split('\n');
    // Turned up 120 mm, twice 120 times the turn of 84 degrees is to be eased away: over 5 % of the hem.
    expect(below(lines(few, many), 'New findings').join()).toMatch(/hem-surplus/);
    expect(below(lines(few, many), 'Findings that are gone')).toEqual([]);
    expect(below(lines(many, few), 'Findings that are gone').join()).toMatch(/hem-surplus/);
  });
});

describe('what is said of one piece', () => {
  const change = changeOf(compared(cone(), cone(level(1006))), 'side');

  it.each([
    [{ x: 0, y: -2 }, '2 mm up'],
    [{ x: 0, y: 2 }, '2 mm down'],
    [{ x: 3, y: 0 }, '3 mm to the right'],
    [{ x: -3, y: 0 }, '3 mm to the left'],
    [{ x: -3, y: 2 }, '2 mm down and 3 mm to the left'],
  ])('slid by %j: %s', (slid, words) => {
    expect(pieceWords({ ...change, slid }, 'mm')[0]).toBe(
      `slide the new piece ${words} on the old one, from waist on waist`,
    );
  });

  it('where along an edge, and from which end', () => {
    const wordsOf = (edge: Partial<(typeof change.edges)[number]>) =>
      pieceWords(
        {
          ...change,
          verdict: edge.left === undefined ? 're-mark' : 'let-out',
          slid: { x: 0, y: 0 },
          edges: [{ edge: 'hem', ...edge }],
        },
        'mm',
      )[0];
    const left = { wanted: 10, least: 4, at: 250 };
    expect(wordsOf({ left })).toBe('hem: 4 mm of 10 mm allowance left, least 250 mm down from the waist');
    expect(wordsOf({ left, from: 'front/side' })).toBe(
      'hem: 4 mm of 10 mm allowance left, least 250 mm from front/side',
    );
    expect(wordsOf({ left: { ...left, at: 0 }, from: 'fold' })).toBe(
      'hem: 4 mm of 10 mm allowance left, least at the fold',
    );
    expect(wordsOf({ left: { ...left, least: -4 } })).toBe(
      'hem: the seam line runs 4 mm outside the cloth, most 250 mm down from the waist',
    );
    expect(wordsOf({ left, corner: true })).toBe(
      'hem: a corner of the allowance is 6 mm short, 250 mm down from the waist',
    );
    expect(wordsOf({ comesOff: { most: 9, least: 3, at: 250 } })).toBe(
      'hem: 3 mm to 9 mm comes off, most 250 mm down from the waist',
    );
    expect(wordsOf({ comesOff: { most: 9, least: 0, at: 250 } })).toBe(
      'hem: up to 9 mm comes off, most 250 mm down from the waist',
    );
  });
});

describe('the overlay', () => {
  it('lays the new lines where they come to lie on the old ones, the old ones dashed', () => {
    const { old, now } = compared(cone(), cone(level(980)));
    expect([old.name, now.name]).toEqual(['old.yaml', 'new.yaml']);
    const square = (left: number, top: number, size: number): Curve[] => {
      const corners = [
        { x: left, y: top },
        { x: left + size, y: top },
        { x: left + size, y: top + size },
        { x: left, y: top + size },
      ];
      return corners.map((from, i) => ({ kind: 'line', from, to: corners[(i + 1) % 4]! }));
    };
    const overlay = {
      gore: 'side',
      layers: ['shell'],
      verdict: 're-mark',
      title: 'side',
      words: [],
      old: { cut: [square(-500, 300, 100)], sew: [square(-490, 310, 80)] },
      now: { cut: [square(-495, 302, 60)], sew: [square(-485, 312, 40)] },
    };
    const drawing = overlayDrawing('Trial', [overlay, overlay], ENGLISH_PATTERN);
    const paths = drawing.marks.flatMap((mark) =>
      mark.kind === 'group' ? mark.marks.flatMap((own) => (own.kind === 'path' ? [own] : [])) : [],
    );
    const boxOf = (name: string, at: number) => {
      const path = paths.filter((own) => own.class === name)[at]!;
      const points = path.runs.flat().flatMap((curve) => (curve.kind === 'line' ? [curve.from] : []));
      const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
      return {
        left: Math.min(...xs),
        top: Math.min(...ys),
        size: Math.max(...xs) - Math.min(...xs),
        dash: path.line.dash,
      };
    };
    for (const at of [0, 1]) {
      const cut = boxOf('old cut', at);
      expect([cut.size, boxOf('new cut', at).size]).toEqual([100, 60]);
      expect([boxOf('old sew', at).size, boxOf('new sew', at).size]).toEqual([80, 40]);
      expect(boxOf('new cut', at).left - cut.left).toBeCloseTo(5, 9);
      expect(boxOf('new cut', at).top - cut.top).toBeCloseTo(2, 9);
      expect(boxOf('new sew', at).left - cut.left).toBeCloseTo(15, 9);
      expect(boxOf('old sew', at).top - cut.top).toBeCloseTo(10, 9);
      expect([cut.dash, boxOf('new cut', at).dash].map((dash) => dash !== undefined)).toEqual([true, false]);
      // All of it on the page, and the second beside the first.
      expect(cut.left).toBeGreaterThan(0);
      expect(cut.left + 100).toBeLessThan(drawing.width);
      expect(cut.top + 100).toBeLessThan(drawing.height);
    }
    expect(boxOf('old cut', 1).left).toBeGreaterThan(boxOf('old cut', 0).left + 100);
  });
});
