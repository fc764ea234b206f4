import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import * as problems from '../diagnostics/pleat-problems.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { LayerDraft } from '../draft/draft-layers.ts';
import type { Piece } from '../draft/piece.ts';
import { bendOf, sideDown, sidesAt } from '../draft/piece-sides.ts';
import type { Point } from '../geometry/curve.ts';
import { flattenedRun } from '../geometry/flatten.ts';
import { lengthOfRun } from '../geometry/length.ts';
import { dot, leftOf, subtract, unit } from '../geometry/point.ts';
import { FLAT } from '../geometry/tolerances.ts';
import type { Gown } from '../gown/gown.ts';
import { hasGore } from '../gown/layer.ts';
import type { Pleat } from '../gown/parts.ts';
import { dartedWaist } from './dart-waist.ts';
import { type PleatFold, pleatFolds, pleatsOfLayer } from './pleat-folds.ts';
import { type TopFullness, topFullness } from './top-fullness.ts';

/** Pleats that find no room on the drafted gores, or no straight line; each said once. */
export function pleatFindings({ pleats, units }: Gown, layers: readonly LayerDraft[]): Diagnostic[] {
  const said = new Set<string>();
  return layers
    .flatMap(({ layer, draft }) =>
      draft.pieces.flatMap((piece, i) => {
        if (!hasGore(layer, draft.gown.gores[i]!)) return [];
        const own = pleatsOfLayer(pleats, layer);
        const say: Say = (length) => tapeText(length, units);
        const bent = bentFindings(own, piece, say);
        if (bent.length > 0) return bent;
        const full = topFullness(layer, draft, i);
        const folds = pleatFolds(own, piece, full);
        const room = roomFindings(folds, piece, layer.name, say);
        return room.length > 0 || full?.rule.by !== 'darts' ? room : dartFindings(folds, piece, full);
      }),
    )
    .filter(({ code, span }) => {
      const key = `${code} ${span.start}`;
      return !said.has(key) && said.add(key);
    });
}

type Say = (length: number) => string;

/** A side that bends by less than this is straight to the iron, mm. */
const STRAIGHT = 0.5;

function bentFindings(pleats: readonly Pleat[], piece: Piece, say: Say): Diagnostic[] {
  return pleats.flatMap((pleat) => {
    const { name, at, fromSeam, kind, place, aboveHem = 0, stitchedDown } = pleat;
    return sidesAt(piece, at).flatMap((side) => {
      const length = lengthOfRun(sideDown(piece, side));
      const [key, own] =
        kind === 'kick' ? (['above-hem', aboveHem] as const) : (['stitched-down', stitchedDown] as const);
      if (own >= length || (kind === 'kick' && aboveHem + pleat.foldDepth > length))
        return [problems.pleatBelowHem(place(key), name, key, say(own), say(length))];
      if (fromSeam !== undefined) return [];
      const bend = bendOf(piece, side, kind === 'kick' ? length - aboveHem : 0);
      return bend > STRAIGHT ? [problems.pleatOnCurve(place('at'), name, at, piece.gore, say(bend))] : [];
    });
  });
}

function roomFindings(folds: readonly PleatFold[], piece: Piece, layer: string, say: Say): Diagnostic[] {
  const wide = folds.flatMap(({ pleat, line, under }) => {
    const room = roomBeside(piece, { pleat, line, under });
    if (pleat.foldDepth < room + STRAIGHT / 10) return [];
    const { name, foldDepth, place } = pleat;
    return [
      problems.pleatTooWide(
        place('fold-depth'),
        name,
        piece.gore,
        layer,
        say(foldDepth),
        say(Math.max(0, room)),
      ),
    ];
  });
  if (wide.length > 0) return wide;
  return folds.flatMap((fold, i) =>
    folds
      .slice(i + 1)
      .filter((other) => areOver(fold, other))
      .map((other) =>
        problems.pleatsOverlap(other.pleat.place(), other.pleat.name, fold.pleat.name, piece.gore, layer),
      ),
  );
}

/** A dart in the cloth that a fold lies over, or on its line. */
function dartFindings(folds: readonly PleatFold[], piece: Piece, full: TopFullness): Diagnostic[] {
  const darts = dartedWaist(piece, full);
  return folds.flatMap(({ pleat, line, under }) => {
    const out = leftOf(unit(subtract(line.to, line.from)));
    const sign = under === 'left' ? -1 : 1;
    const met = darts.find(({ left, right, point }) => {
      const away = [left, right, point].map((at) => sign * dot(subtract(at, line.from), out));
      return Math.max(...away) > -STRAIGHT && Math.min(...away) < pleat.foldDepth + STRAIGHT;
    });
    return met === undefined ? [] : [problems.pleatOnDart(pleat.place(), pleat.name, met.name, piece.gore)];
  });
}

/** From a fold's line to the side that it lies towards, or past the piece altogether, mm. */
function roomBeside(piece: Piece, { line, under }: PleatFold): number {
  const out = leftOf(unit(subtract(line.to, line.from)));
  const sign = under === 'left' ? -1 : 1;
  const side = flattenedRun(sideDown(piece, under), FLAT);
  const behind = flattenedRun(sideDown(piece, under === 'left' ? 'right' : 'left'), FLAT);
  const away = (point: Point): number => sign * dot(subtract(point, line.from), out);
  const isInside = behind.every((point) => away(point) < STRAIGHT);
  return isInside ? Math.min(...side.map(away)) : 0;
}

/** Whether the cloth that two folds lie over is the same somewhere; side by side it may touch. */
function areOver(a: PleatFold, b: PleatFold): boolean {
  return [a.line.from, a.line.to].some((at, end) => {
    const out = leftOf(unit(subtract(a.line.to, a.line.from)));
    const other = end === 0 ? b.line.from : b.line.to;
    const place = dot(subtract(other, at), out);
    const span = ({ under, pleat }: PleatFold, from: number): [number, number] =>
      under === 'left' ? [from - pleat.foldDepth, from] : [from, from + pleat.foldDepth];
    const [first, second] = [span(a, 0), span(b, place)];
    return Math.min(first[1], second[1]) - Math.max(first[0], second[0]) > STRAIGHT;
  });
}
