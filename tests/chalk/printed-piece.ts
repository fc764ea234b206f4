import type { Point } from '../../src/geometry/curve.ts';
import { chalkPages } from '../../src/print/papers/chalk-pages.ts';
import type { PaperInput } from '../../src/print/papers/paper-input.ts';
import { linesOf, type PlacedText, textsOf } from '../print/page-texts.ts';
import { printedLength } from '../print/printed-length.ts';

/** Ordinates as they are printed below the letters of their chord; mm. */
export interface PrintedChord {
  readonly from: string;
  readonly to: string;
  readonly edge: string;
  readonly along: number[];
  readonly out: number[];
}

/** What the chalk paper says of one piece, read by the places of its words; what differs on other layers is left out. */
export interface PrintedPiece {
  readonly heading: string;
  /** By letter: x across, y down, mm. */
  readonly corners: Map<string, Point>;
  readonly chords: PrintedChord[];
  readonly swings: string[];
  diagonals: string;
  /** By the words for the layers that differ: their own corners. */
  readonly others: Map<string, Map<string, Point>>;
}

/** Of a piece's two halves abreast one begins left of this and one right of it, mm. */
const MIDDLE = 100;

export function printedPieces(input: PaperInput, unit: number): PrintedPiece[] {
  const starts = input.cutPieces.flatMap(({ gore }) => [`${gore}:`, `${gore}, her`, `bodice ${gore}:`]);
  const pieces: PrintedPiece[] = [];
  let isOfAnother = false;
  let open: (PrintedChord | undefined)[] = [];
  let layers: (string | undefined)[] = [];
  for (const line of chalkPages(input).pages.flatMap((page) => linesOf(textsOf(page)))) {
    const first = line[0]!.text;
    if (starts.some((start) => first.startsWith(start))) {
      pieces.push({
        heading: first,
        corners: new Map(),
        chords: [],
        swings: [],
        diagonals: '',
        others: new Map(),
      });
      [isOfAnother, open, layers] = [false, [], []];
    }
    if (first.startsWith('Different in')) isOfAnother = true;
    const piece = pieces.at(-1);
    if (piece === undefined) continue;
    const left = line.filter((text) => text.left < MIDDLE);
    const right = line.filter((text) => !left.includes(text));
    if (isOfAnother) {
      layers = [left, right].map((half, i) => readOther(piece, half, layers[i], unit));
      continue;
    }
    open = [left, right].map((half, i) => readHalf(piece, half, open[i], unit));
  }
  return pieces;
}

/** @returns the chord that what stands below belongs to */
function readHalf(
  piece: PrintedPiece,
  texts: readonly PlacedText[],
  open: PrintedChord | undefined,
  unit: number,
): PrintedChord | undefined {
  const words = texts.map(({ text }) => text);
  const [first = '', ...rest] = words;
  const caption = /^([A-Za-z]+)–([A-Za-z]+), (.+)$/.exec(first);
  if (caption !== null) {
    const chord = { from: caption[1]!, to: caption[2]!, edge: caption[3]!, along: [], out: [] };
    piece.chords.push(chord);
    return chord;
  }
  if (first === 'along') open?.along.push(...rest.map((text) => printedLength(text) * unit));
  if (first === 'off') open?.out.push(...rest.map((text) => printedLength(text) * unit));
  if (first.startsWith('Diagonals: ')) piece.diagonals = first;
  piece.swings.push(...words.filter((word) => word.includes(' line of the ')));
  readCorners(words, piece.corners, unit);
  return open;
}

/** @returns the layers that what stands below belongs to */
function readOther(
  piece: PrintedPiece,
  texts: readonly PlacedText[],
  layers: string | undefined,
  unit: number,
): string | undefined {
  const words = texts.map(({ text }) => text);
  const heading = /^Different in the (.+)$/.exec(words[0] ?? '')?.[1];
  if (heading !== undefined) piece.others.set(heading, new Map());
  const now = heading ?? layers;
  if (now !== undefined) readCorners(words, piece.others.get(now)!, unit);
  return now;
}

/** Letter, down and across by threes. */
function readCorners(words: readonly string[], corners: Map<string, Point>, unit: number): void {
  for (let i = 0; i + 2 < words.length; i += 3) {
    const [x, y] = [printedLength(words[i + 2]!) * unit, printedLength(words[i + 1]!) * unit];
    if (/^[A-Za-z]{1,2}$/.test(words[i]!) && !Number.isNaN(x + y)) corners.set(words[i]!, { x, y });
  }
}
