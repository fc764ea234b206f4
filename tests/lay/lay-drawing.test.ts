import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { boundsOfCurves } from '../../src/geometry/bounds.ts';
import type { Drawing, Mark, PathMark, TextMark } from '../../src/print/drawing.ts';
import { drawLay, layFigure } from '../../src/print/lay/lay-drawing.ts';
import { writeSvg } from '../../src/print/svg/write-svg.ts';
import { textWidth } from '../../src/print/text/text-width.ts';
import { englishLay } from '../../src/words/english-lay.ts';
import { laysOf } from './laid.ts';

const lantern = readFileSync(join(import.meta.dirname, '../../examples/lantern.yaml'), 'utf8');
const words = englishLay('cm');
const title = { name: 'Lantern, shell', says: 'crepe, 140 cm wide.' };

describe.each(['single', 'lengthwise', 'crosswise'] as const)('a lay drawn, cloth %s', (fold) => {
  const plan = laysOf(lantern, { fold }, ['shell']).lays[0]!;
  const drawing = drawLay(plan, title, words);
  const marks = flat(drawing.marks);

  it('shows each piece once where it lies on the cloth, with what a script needs to check it', () => {
    const placed = marks.filter((mark): mark is PathMark => mark.kind === 'path' && mark.class === 'placed');
    expect(placed.map(({ runs, closed, data }) => [runs, closed, data])).toEqual(
      plan.pieces.map(({ outline, gore, copy, mirrored, turned, layer }) => [
        [outline],
        true,
        { gore, copy: String(copy), mirrored: String(mirrored), turned: String(turned), layer },
      ]),
    );
    const svg = writeSvg(drawing);
    expect(
      svg.match(
        /class="placed" data-gore="[^"]+" data-copy="\d" data-mirrored="(true|false)" data-turned="(0|180)" data-layer="shell"/g,
      ),
    ).toHaveLength(9);
  });

  it('is to scale: the cloth is as wide and the lay as long as it says', () => {
    const cloth = marks.find((mark): mark is PathMark => mark.kind === 'path' && mark.class === 'cloth')!;
    const box = boundsOfCurves(cloth.runs.flat());
    expect([box.left, box.top, box.right]).toEqual([0, 0, 1400]);
    expect(box.bottom).toBeCloseTo(plan.length, 6);
  });

  it('has a tick every 10 cm', () => {
    const ticks = marks.filter((mark) => mark.kind === 'path' && mark.class === 'ruler');
    expect(ticks).toHaveLength(Math.floor(plan.length / 100) + 1);
  });

  it('cuts off no text, on the screen or on a page', () => {
    for (const one of [drawing, layFigure(plan, words, { width: 174, height: 95 })]) {
      for (const text of flat(one.marks).filter((mark) => mark.kind === 'text')) {
        expectInside(text, one);
      }
    }
  });

  it('names each piece, its number and how it faces', () => {
    const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
    for (const { number, gore, face } of plan.pieces) {
      expect(texts).toContain(String(number));
      expect(texts.some((text) => text.startsWith(gore))).toBe(true);
      expect(texts.some((text) => text.startsWith(`face ${face}`))).toBe(true);
    }
  });

  it('draws the fold where the cloth is folded', () => {
    const folds = marks.filter((mark): mark is PathMark => mark.kind === 'path' && mark.class === 'fold');
    expect(folds).toHaveLength(plan.sections.filter((section) => section.fold !== 'single').length);
  });
});

function flat(marks: readonly Mark[]): (PathMark | TextMark)[] {
  return marks.flatMap((mark): (PathMark | TextMark)[] => {
    if (mark.kind === 'group') return flat(mark.marks);
    return mark.kind === 'use' ? flat(mark.drawing.marks) : [mark];
  });
}

/** Upright text by its own width; text turned on end along its length. */
function expectInside({ text, at, size, anchor, angle, bold }: TextMark, drawing: Drawing): void {
  const width = textWidth(text, size, bold);
  const before = { start: 0, middle: width / 2, end: width }[anchor];
  const [from, to] = [-before, width - before];
  const onEnd = angle !== undefined && angle !== 0;
  const [left, right] = onEnd ? [at.x - size, at.x] : [at.x + from, at.x + to];
  const [top, bottom] = onEnd ? [at.y - to, at.y - from] : [at.y - size * 0.75, at.y];
  expect(left, text).toBeGreaterThanOrEqual(drawing.x - 1e-6);
  expect(right, text).toBeLessThanOrEqual(drawing.x + drawing.width + 1e-6);
  expect(top, text).toBeGreaterThanOrEqual(drawing.y - 1e-6);
  expect(bottom, text).toBeLessThanOrEqual(drawing.y + drawing.height + 1e-6);
}
