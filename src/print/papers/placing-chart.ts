import type { Curve, Point } from '../../geometry/curve.ts';
import { oval } from '../../geometry/oval.ts';
import type { Stones } from '../../gown/parts.ts';
import type { StonesOfPiece } from '../../stones/set-stones.ts';
import type { Drawing, LineStyle, Mark } from '../drawing.ts';
import { textMark } from '../page/ruled-marks.ts';

const OUTLINE: LineStyle = { width: 0.2 };
/** A stone is a square dot: its length and the width of its line. */
const DOT = 0.5;
const STONE: LineStyle = { width: DOT };
const TEXT = 2.8;
const GAP = 6;

/** The pieces side by side at one scale, a dot for each stone, its outline where that is larger. */
export function placingChart(
  { size = 0, motif }: Pick<Stones, 'size' | 'motif'>,
  pieces: readonly StonesOfPiece[],
  room: { readonly width: number; readonly height: number },
  say: (name: string, count: number, times: number, once: number) => string,
): Drawing {
  const boxes = pieces.map(({ outline }) => boxOf(outline));
  const wide = boxes.reduce((sum, box) => sum + box.right - box.left, 0);
  const tall = Math.max(...boxes.map((box) => box.bottom - box.top));
  const scale = Math.min((room.width - GAP * (pieces.length - 1)) / wide, (room.height - 3 * TEXT) / tall);
  const [across, down] = [(motif?.width ?? size) * scale, (motif?.height ?? size) * scale];
  // What would be no larger than its dot is a dot.
  const isOutlined = Math.min(across, down) > 2 * DOT;
  let left = 0;
  const marks = pieces.flatMap((piece, i): Mark[] => {
    const box = boxes[i]!;
    const place = ({ x, y }: Point): Point => ({
      x: left + (x - box.left) * scale,
      y: 3 * TEXT + (y - box.top) * scale,
    });
    const width = (box.right - box.left) * scale;
    const name = piece.side === undefined ? piece.gore : `${piece.gore}, ${piece.side}`;
    // Names of narrow pieces stand on two heights.
    const drawn: Mark[] = [
      textMark(
        say(name, piece.stones.length, piece.times, piece.once),
        { x: left + width / 2, y: i % 2 === 0 ? TEXT : 2.2 * TEXT },
        TEXT,
        { anchor: 'middle' },
      ),
      { kind: 'path', runs: [closed(piece.outline.map(place))], closed: true, line: OUTLINE },
      ...(piece.stones.length === 0
        ? []
        : [
            {
              kind: 'path',
              runs: piece.stones.map((stone) =>
                isOutlined ? oval(place(stone), across / 2, down / 2) : [dotAt(place(stone))],
              ),
              closed: false,
              line: isOutlined ? OUTLINE : STONE,
              class: 'stone',
            } as const,
          ]),
    ];
    left += width + GAP;
    return drawn;
  });
  return { x: 0, y: 0, width: Math.max(1, left - GAP), height: 3 * TEXT + tall * scale, marks };
}

function closed(points: readonly Point[]): Curve[] {
  return points.map((from, i) => ({ kind: 'line', from, to: points[(i + 1) % points.length]! }));
}

function dotAt({ x, y }: Point): Curve {
  return { kind: 'line', from: { x: x - DOT / 2, y }, to: { x: x + DOT / 2, y } };
}

function boxOf(points: readonly Point[]): { left: number; right: number; top: number; bottom: number } {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}
