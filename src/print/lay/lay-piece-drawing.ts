import type { Line, Point } from '../../geometry/curve.ts';
import { flattenedRun } from '../../geometry/flatten.ts';
import { along, leftOf, subtract, unit } from '../../geometry/point.ts';
import type { PlacedPiece } from '../../lay/plan/lay-plan.ts';
import type { LayWords } from '../../words/english-lay.ts';
import type { GroupMark, Mark, PathMark, TextMark } from '../drawing.ts';
import { pieceTitle } from '../pattern/piece-text.ts';
import { textWidth } from '../text/text-width.ts';
import type { LayView } from './lay-view.ts';

/** Share of the room across a piece, and of that down it, that its text may take. */
const ROOM_ACROSS = 0.86;
const ROOM_DOWN = 0.8;

/**
 * A piece on the cloth: cut line, notches, an arrow along the grain to its top, and what it is.
 *
 * @param ofSeveral pieces of other layers lie beside it, so that it says of which it is
 */
export function drawPlacedPiece(
  piece: PlacedPiece,
  view: LayView,
  said: LayWords,
  ofSeveral: boolean,
): GroupMark {
  const { layer, gore, copy, mirrored, turned, outline, notches, part } = piece;
  const data = {
    gore,
    copy: String(copy),
    mirrored: String(mirrored),
    turned: String(turned),
    layer,
    ...(part === undefined ? {} : { part }),
  };
  const run = outline.map(view.curve);
  const ring = flattenedRun(run, view.line);
  const words = legibleIn(ring, linesOf(piece, view, said, ofSeveral), ofSeveral ? view.least : 0);
  return {
    kind: 'group',
    class: 'piece',
    marks: [
      { kind: 'path', runs: [run], closed: true, line: { width: view.line }, class: 'placed', data },
      ...notches.map(
        (tick): PathMark => ({
          kind: 'path',
          runs: [[view.curve(tick)]],
          closed: false,
          line: { width: view.line * 0.6 },
          class: 'notch',
        }),
      ),
      ...grainArrow(piece, words.box, view),
      ...words.marks,
    ],
  };
}

interface Words {
  readonly text: string;
  readonly size: number;
  readonly bold: boolean;
}

/** Which side of the wearer a piece is for, where it is for one. */
export function sideOf({ source, mirrored }: PlacedPiece): string | undefined {
  return source.piece.cut === 'pair' ? (mirrored ? 'right' : 'left') : source.piece.side;
}

/** Number, name, which of a pair, and how it faces: what is chalked on it before it is cut. */
function linesOf(piece: PlacedPiece, { text }: LayView, said: LayWords, ofSeveral: boolean): Words[] {
  const { number, layer, gore, part, source, mirrored, turned, face } = piece;
  const side = sideOf(piece);
  const lies = said.lies(face, mirrored, turned === 180, source.piece.bias === true);
  // Its layer tells a bodice's panel from the gore of its name, where it stands below.
  const isNamed = ofSeveral && layer !== gore;
  const name = isNamed ? gore : pieceTitle(source);
  return [
    { text: String(number), size: text * 1.5, bold: true },
    { text: [name, ...(side === undefined ? [] : [side])].join(', '), size: text, bold: false },
    ...(isNamed ? [{ text: layer, size: text, bold: false }] : []),
    ...(part === undefined ? [] : [{ text: said.part(part), size: text * 0.8, bold: false }]),
    { text: lies, size: text * 0.75, bold: false },
  ];
}

/** Of a piece too small for all of its lines its number and name, or its number alone. */
function legibleIn(ring: readonly Point[], lines: readonly Words[], least: number): WordsIn {
  const all = wordsIn(ring, lines);
  if (all.smallest >= least) return all;
  const fewer = wordsIn(ring, lines.slice(0, 2));
  return fewer.smallest >= least ? fewer : wordsIn(ring, lines.slice(0, 1));
}

interface WordsIn {
  readonly marks: readonly Mark[];
  readonly box: TextBox;
  /** Em of the smallest line. */
  readonly smallest: number;
}

interface TextBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The lines set where the piece has most room for them, made smaller where it has too little. */
function wordsIn(ring: readonly Point[], lines: readonly Words[]): WordsIn {
  const widest = Math.max(...lines.map(({ text, size, bold }) => textWidth(text, size, bold)));
  const full = lines.reduce((sum, { size }) => sum + size * 1.2, 0);
  const place = roomiest(ring, widest, full);
  let y = place.y - (full * place.scale) / 2;
  const marks = lines.map(({ text, size, bold }): TextMark => {
    const em = size * place.scale;
    y += em * 1.2;
    return {
      kind: 'text',
      text,
      at: { x: place.x, y: y - em * 0.28 },
      size: em,
      anchor: 'middle',
      ...(bold ? { bold } : {}),
    };
  });
  const [halfWidth, halfHeight] = [(widest * place.scale) / 2, (full * place.scale) / 2];
  const box = {
    left: place.x - halfWidth,
    right: place.x + halfWidth,
    top: place.y - halfHeight,
    bottom: place.y + halfHeight,
  };
  return { marks, box, smallest: Math.min(...lines.map(({ size }) => size)) * place.scale };
}

/** Of places on a coarse grid over the piece the one where a block of text can stand largest. */
function roomiest(ring: readonly Point[], width: number, height: number): Point & { readonly scale: number } {
  const turned = ring.map(({ x, y }) => ({ x: y, y: x }));
  const [left, across] = extentOf(turned);
  const [top, down] = extentOf(ring);
  const xs = GRID.map((i) => left + (i / 16) * across);
  const ys = GRID.map((j) => top + (j / 16) * down);
  const rows = ys.map((y) => bandAt(ring, y, height / 3));
  const columns = xs.map((x) => bandAt(turned, x, width / 3));
  let best = { x: left + across / 2, y: top + down / 2, scale: 0 };
  let bestFromMiddle = Infinity;
  for (const [i, x] of xs.entries()) {
    for (const [j, y] of ys.entries()) {
      const room = Math.min(
        (ROOM_ACROSS * roomIn(rows[j]!, x)) / width,
        (ROOM_DOWN * roomIn(columns[i]!, y)) / height,
        1,
      );
      const fromMiddle = Math.abs(GRID[i]! - 8) + Math.abs(GRID[j]! - 8);
      if (room > best.scale + 1e-9 || (room > best.scale - 1e-9 && fromMiddle < bestFromMiddle)) {
        best = { x, y, scale: room };
        bestFromMiddle = fromMiddle;
      }
    }
  }
  return best.scale > 0 ? best : { ...best, scale: 0.3 };
}

/** Sixteenths of a piece. */
const GRID = Array.from({ length: 13 }, (_, i) => i + 2);

/** Where a ring begins down the page, and how far it reaches. */
function extentOf(ring: readonly Point[]): [number, number] {
  const ys = ring.map(({ y }) => y);
  const least = Math.min(...ys);
  return [least, Math.max(...ys) - least];
}

/** Where a ring crosses a level, and one as far as `reach` above and below it. */
function bandAt(ring: readonly Point[], y: number, reach: number): number[][] {
  return [y - reach, y, y + reach].map((level) => crossingsAt(ring, level));
}

function crossingsAt(ring: readonly Point[], y: number): number[] {
  const crossings: number[] = [];
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    if (a.y > y !== b.y > y) crossings.push(a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x));
    a = b;
  }
  return crossings;
}

/** Room to both sides of a place, the same at both, over a band. */
function roomIn(band: readonly (readonly number[])[], x: number): number {
  return Math.min(...band.map((crossings) => roomBetween(crossings, x)));
}

function roomBetween(crossings: readonly number[], x: number): number {
  let left = -Infinity;
  let right = Infinity;
  let crossedLeft = 0;
  for (const at of crossings) {
    if (at < x) crossedLeft++;
    if (at < x) left = Math.max(left, at);
    else right = Math.min(right, at);
  }
  return crossedLeft % 2 === 1 && right < Infinity ? 2 * Math.min(x - left, right - x) : 0;
}

/** Along the grain, its head towards the piece's top, kept clear of the text: the longer free end of the grain line. */
function grainArrow({ grain }: PlacedPiece, box: TextBox, view: LayView): Mark[] {
  const head = view.point(grain.from);
  const tail = view.point(grain.to);
  const spans = freeSpans(head, tail, box, view.text * 0.4);
  const [from, to] = spans.reduce((a, b) => (b[1] - b[0] > a[1] - a[0] ? b : a));
  if (to - from < 0.1) return [];
  const reach = subtract(tail, head);
  return [arrowMark(along(head, reach, from), along(head, reach, to), view)];
}

/** Shares of a line that lie outside a box. */
function freeSpans(from: Point, to: Point, box: TextBox, gap: number): [number, number][] {
  let [enter, leave] = [0, 1];
  for (const [a, b, low, high] of [
    [from.x, to.x, box.left - gap, box.right + gap],
    [from.y, to.y, box.top - gap, box.bottom + gap],
  ] as const) {
    if (Math.abs(b - a) < 1e-9) {
      if (a < low || a > high) return [[0, 1]];
      continue;
    }
    const [first, second] = [(low - a) / (b - a), (high - a) / (b - a)];
    enter = Math.max(enter, Math.min(first, second));
    leave = Math.min(leave, Math.max(first, second));
  }
  if (enter >= leave) return [[0, 1]];
  return [
    [0, enter],
    [leave, 1],
  ];
}

/** A line with an open head at its first point. */
export function arrowMark(head: Point, tail: Point, view: LayView): PathMark {
  const back = unit(subtract(tail, head));
  const base = along(head, back, view.text * 0.65);
  const barb = (sign: number): Line => ({
    kind: 'line',
    from: head,
    to: along(base, leftOf(back), sign * view.text * 0.22),
  });
  return {
    kind: 'path',
    runs: [[{ kind: 'line', from: head, to: tail }], [barb(1)], [barb(-1)]],
    closed: false,
    line: { width: view.line * 0.6 },
    class: 'grain',
  };
}
