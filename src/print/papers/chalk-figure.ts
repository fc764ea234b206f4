import type { ChalkTable } from '../../chalk/chalk.ts';
import type { Point } from '../../geometry/curve.ts';
import type { Drawing, LineStyle, Mark } from '../drawing.ts';
import { textMark } from '../page/ruled-marks.ts';

const CUT: LineStyle = { width: 0.35 };
const SEAM: LineStyle = { width: 0.2, dash: [1.5, 0.8] };
const GRAIN: LineStyle = { width: 0.2, dash: [4, 1, 0.8, 1] };
const TEXT = 2.6;
/** Room for letters that had to move away. */
const MARGIN = 8;

/** Points of one line of the table in order, across and down, mm. */
export type ChalkedLine = readonly Point[];

/** A piece as its table plots it, with the letters of its corners; `size` mm at most on paper. */
export function chalkFigure(
  table: ChalkTable,
  lines: { readonly cut: ChalkedLine; readonly seam: ChalkedLine },
  size: { readonly width: number; readonly height: number },
): Drawing {
  const xs = lines.cut.map((point) => point.x);
  const ys = lines.cut.map((point) => point.y);
  const [left, right, top, bottom] = [
    Math.min(0, ...xs),
    Math.max(0, ...xs),
    Math.min(...ys),
    Math.max(...ys),
  ];
  const scale = Math.min(
    (size.width - 2 * MARGIN) / (right - left),
    (size.height - 2 * MARGIN) / (bottom - top),
  );
  const place = ({ x, y }: Point): Point => ({
    x: MARGIN + (x - left) * scale,
    y: MARGIN + (y - top) * scale,
  });
  const middle = place({ x: xs.reduce((sum, x) => sum + x, 0) / xs.length, y: (top + bottom) / 2 });
  const letters = clearLetters(
    table.stretches.map(({ line, from }) => ({
      letter: from.letter,
      at: place({ x: from.across, y: from.down }),
      outwards: line === 'cut' ? 1 : -1,
    })),
    middle,
  );
  return {
    x: 0,
    y: 0,
    width: (right - left) * scale + 2 * MARGIN,
    height: (bottom - top) * scale + 2 * MARGIN,
    marks: [
      closed(lines.cut.map(place), CUT),
      closed(lines.seam.map(place), SEAM),
      {
        kind: 'path',
        runs: [[{ kind: 'line', from: place({ x: 0, y: top }), to: place({ x: 0, y: bottom }) }]],
        closed: false,
        line: GRAIN,
      },
      ...letters,
    ],
  };
}

interface CornerLetter {
  readonly letter: string;
  readonly at: Point;
  /** 1 for the cut line's letters, which stand outside; -1 for the seam line's, which stand inside. */
  readonly outwards: 1 | -1;
}

/** Every letter near its corner and clear of the others; one that had to move away is joined to its corner. */
function clearLetters(corners: readonly CornerLetter[], middle: Point): Mark[] {
  const taken: Point[] = [];
  return corners.flatMap(({ letter, at, outwards }): Mark[] => {
    const straight = Math.atan2(outwards * (at.y - middle.y), outwards * (at.x - middle.x));
    const places = LETTER_AWAY.flatMap((away) =>
      LETTER_TURNS.map((turn) => ({
        x: at.x + away * Math.cos(straight + turn),
        y: at.y + away * Math.sin(straight + turn),
        away,
      })),
    );
    const clear = (one: Point): boolean =>
      taken.every((other) => Math.hypot(one.x - other.x, one.y - other.y) >= LETTERS_APART);
    const centre = places.find(clear) ?? places[0]!;
    taken.push(centre);
    const text = textMark(letter, { x: centre.x, y: centre.y + TEXT * 0.35 }, TEXT, { anchor: 'middle' });
    if (centre.away === LETTER_AWAY[0]) return [text];
    const stop = 1 - TEXT / 2 / centre.away;
    const to = { x: at.x + (centre.x - at.x) * stop, y: at.y + (centre.y - at.y) * stop };
    return [text, { kind: 'path', runs: [[{ kind: 'line', from: at, to }]], closed: false, line: LEADER }];
  });
}

/** From a corner to the middle of its letter, nearest first; mm. */
const LETTER_AWAY = [2.2, 4, 5.8, 7.6, 9.4] as const;
/** From the straight way out, radians. */
const LETTER_TURNS = [0, 0.5, -0.5, 1, -1] as const;
/** Between the middles of two letters of this size, mm: neither touches the other. */
const LETTERS_APART = 2.7;
const LEADER: LineStyle = { width: 0.1 };

function closed(points: readonly Point[], line: LineStyle): Mark {
  const run = points.map((from, i) => ({
    kind: 'line' as const,
    from,
    to: points[(i + 1) % points.length]!,
  }));
  return { kind: 'path', runs: [run], closed: true, line };
}
