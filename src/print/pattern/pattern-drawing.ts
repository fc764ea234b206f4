import { boundsOfCurves } from '../../geometry/bounds.ts';
import { type Kept, NOTHING_KEPT } from '../../kept/kept.ts';
import type { Sheet, SheetPlan } from '../../sheets/sheet-plan.ts';
import type { PatternWords } from '../../words/english-pattern.ts';
import type { Drawing, GroupMark } from '../drawing.ts';
import { lineNames } from './line-names.ts';
import { drawPiece } from './piece-drawing.ts';
import { type PieceLabels, pieceName } from './piece-text.ts';
import type { LineName } from './placed-names.ts';

/** The pieces of a plan as drawn, and the whole pattern: `pattern.svg` and the sheets show the same marks. */
export interface PatternDrawing {
  /** Each piece apart, in the pattern's coordinates: what the sheets show parts of. */
  readonly pieces: readonly Drawing[];
  /** Every piece once, full size, lying where the sheets show it. */
  readonly whole: Drawing;
}

export function patternDrawing(
  plan: SheetPlan,
  labels: PieceLabels,
  kept: Kept = NOTHING_KEPT,
): PatternDrawing {
  const names = namesOfLines(plan, labels.words, kept);
  const groups = plan.pieces.map(({ cutPiece, grain, liesOn }, index) => {
    const around = { grain, windows: windowsOf(plan, index), names: names.get(index) ?? [] };
    if (liesOn !== undefined) return drawPiece(cutPiece, labels, { ...around, namesOnly: true });
    const sharers = sharersOf(plan, index);
    return drawPiece(cutPiece, labels, {
      ...around,
      sharing: sharers.map((own) => plan.pieces[own]!.cutPiece),
      otherNames: sharers.flatMap((own) => names.get(own) ?? []),
    });
  });
  const width = Math.max(1, ...plan.sheets.map((sheet) => sheet.x + sheet.width));
  const height = Math.max(1, ...plan.sheets.map((sheet) => sheet.y + sheet.height));
  return {
    pieces: plan.pieces.map((_, index) => pieceDrawing(plan, index, groups[index]!, labels.words)),
    whole: { x: 0, y: 0, width, height, title: labels.words.title(labels.gown), marks: groups },
  };
}

/** Pieces that lie on this one. */
function sharersOf(plan: SheetPlan, index: number): number[] {
  return plan.pieces.flatMap((other, own) => (other.liesOn === index ? [own] : []));
}

/** Names of the lines of pieces that lie on one another, by the piece. */
function namesOfLines(plan: SheetPlan, words: PatternWords, kept: Kept): Map<number, readonly LineName[]> {
  const names = new Map<number, readonly LineName[]>();
  for (const [index, { grain, liesOn }] of plan.pieces.entries()) {
    const sharers = sharersOf(plan, index);
    if (liesOn !== undefined || sharers.length === 0) continue;
    const members = [index, ...sharers];
    const pieces = members.map((own) => plan.pieces[own]!.cutPiece);
    const around = { grain, windows: windowsOf(plan, index) };
    const own = lineNames(pieces, around, words.piece.hemCut, kept);
    for (const [place, member] of members.entries()) names.set(member, own[place]!);
  }
  return names;
}

/** A piece by name and layers, which tell the pieces of one gore apart. */
export function laidPieceName(plan: SheetPlan, index: number, words: PatternWords): string {
  const { cutPiece } = plan.pieces[index]!;
  return `${pieceName(cutPiece, words)} (${cutPiece.layers.join(', ')})`;
}

/** The pieces with a line on a sheet; those that lie on one another as one, with all layers. */
export function sheetPieceNames(plan: SheetPlan, sheet: Sheet, words: PatternWords): string[] {
  const layers = new Map<number, string[]>();
  for (const index of sheet.pieces) {
    const { cutPiece, liesOn = index } = plan.pieces[index]!;
    layers.set(liesOn, [...(layers.get(liesOn) ?? []), ...cutPiece.layers]);
  }
  return [...layers].map(
    ([index, names]) => `${pieceName(plan.pieces[index]!.cutPiece, words)} (${names.join(', ')})`,
  );
}

/** One piece as a drawing of its own, with what is drawn of it. */
export function pieceDrawing(plan: SheetPlan, index: number, group: GroupMark, words: PatternWords): Drawing {
  const box = boundsOfCurves(plan.pieces[index]!.cutPiece.cutEdges.flatMap((edge) => edge.curves));
  return {
    x: box.left - ROUND_ABOUT,
    y: box.top - ROUND_ABOUT,
    width: box.right - box.left + 2 * ROUND_ABOUT,
    height: box.bottom - box.top + 2 * ROUND_ABOUT,
    title: laidPieceName(plan, index, words),
    marks: [group],
  };
}

/** Lines have a width, and text that found no room may stand out a little, mm. */
const ROUND_ABOUT = 20;

/** The sheets with a line of the piece, less a rim where joins and their marks lie. */
function windowsOf(
  plan: SheetPlan,
  index: number,
): { x: number; y: number; width: number; height: number }[] {
  return plan.sheets
    .filter((sheet) => sheet.pieces.includes(index))
    .map(({ x, y, width, height }) => ({
      x: x + RIM,
      y: y + RIM,
      width: width - 2 * RIM,
      height: height - 2 * RIM,
    }));
}

/** mm. */
const RIM = 7;
