import type { Drawing, Mark, TextMark } from '../../src/print/drawing.ts';
import { textWidth } from '../../src/print/text/text-width.ts';

export interface PlacedText {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly baseline: number;
  readonly size: number;
}

/** Every text of a page where it is printed, figures within figures included. */
export function textsOf(drawing: Drawing, scale = 1, shift = { x: 0, y: 0 }): PlacedText[] {
  const visit = (mark: Mark): PlacedText[] => {
    if (mark.kind === 'group') return mark.marks.flatMap(visit);
    if (mark.kind === 'use') {
      const inner = mark.scale?.x ?? 1;
      return textsOf(mark.drawing, scale * inner, {
        x: shift.x + mark.offset.x * scale,
        y: shift.y + mark.offset.y * scale,
      });
    }
    return mark.kind === 'text' ? [placed(mark, scale, shift)] : [];
  };
  return drawing.marks.flatMap(visit);
}

function placed(mark: TextMark, scale: number, shift: { x: number; y: number }): PlacedText {
  const width = textWidth(mark.text, mark.size, mark.bold ?? false) * scale;
  const x = shift.x + mark.at.x * scale;
  const left = mark.anchor === 'start' ? x : mark.anchor === 'middle' ? x - width / 2 : x - width;
  return {
    text: mark.text,
    left,
    right: left + width,
    baseline: shift.y + mark.at.y * scale,
    size: mark.size * scale,
  };
}

/** Texts that stand on one line of a page, from left to right. */
export function linesOf(texts: readonly PlacedText[]): PlacedText[][] {
  const lines: PlacedText[][] = [];
  for (const text of [...texts].sort((a, b) => a.baseline - b.baseline || a.left - b.left)) {
    const line = lines.at(-1);
    if (line !== undefined && Math.abs(line[0]!.baseline - text.baseline) < 0.2) line.push(text);
    else lines.push([text]);
  }
  return lines.map((line) => line.sort((a, b) => a.left - b.left));
}

/** Rows of the tables on a page that have these heads side by side: the cells below each head, by their right edges. */
export function tablesUnder(
  lines: readonly (readonly PlacedText[])[],
  heads: readonly string[],
): string[][][] {
  return lines.flatMap((line, at) =>
    line.flatMap((_, from) => {
      const found = line.slice(from, from + heads.length);
      if (found.map(({ text }) => text).join('|') !== heads.join('|')) return [];
      // Longer heads are another table's.
      const next = line[from + heads.length];
      if (next !== undefined && next.left - found.at(-1)!.right < 25 && found.at(-1)!.right > 100) return [];
      const rows: string[][] = [];
      for (const below of lines.slice(at + 1)) {
        const cells = found.map(
          (head) => below.find((cell) => Math.abs(cell.right - head.right) < 0.3)?.text ?? '',
        );
        if (cells[0] === '') {
          if (below.some((cell) => cell.left < found.at(-1)!.right && cell.right > found[0]!.left)) break;
          continue;
        }
        rows.push(cells);
      }
      return [rows];
    }),
  );
}
