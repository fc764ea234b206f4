import type { CutPiece } from '../../draft/piece.ts';
import { across } from '../../draft/unfolded.ts';
import { areaInside } from '../../geometry/area.ts';
import type { Curve, Line, Point } from '../../geometry/curve.ts';
import { rotated } from '../../geometry/transform.ts';
import { toThread } from './to-thread.ts';
import { foldAt, foldSide, wholeOutline } from './whole-outline.ts';
import { workingOutline } from './working-outline.ts';

/** One cut piece of a layer with the shapes in which it can be laid. */
export interface LayItem {
  readonly cut: CutPiece;
  readonly layer: string;
  /** `1 of 2` where the gore is cut in parts. */
  readonly part?: string;
  readonly kind: CutPiece['piece']['cut'];
  /** Pieces that one layer needs: 2 of a mirrored pair. */
  readonly copies: number;
  /** As it lies in a single layer of cloth: a piece on the fold opened out. */
  readonly whole: LayShape;
  /** The drawn half of a piece on the fold, and whether its right side lies on the fold. */
  readonly half?: LayShape & { readonly foldOnRight: boolean };
  /** Laid with its grain across the cloth. */
  readonly railroaded: boolean;
  /** On the bias: by how many degrees the piece is turned from how it is drawn, counter-clockwise. */
  readonly tilt?: number;
}

/** An outline with what is packed in its place and what is marked on it, in one set of coordinates, mm. */
export interface LayShape {
  /** Closed, clockwise as drawn. */
  readonly outline: readonly Curve[];
  readonly working: readonly Point[];
  readonly area: number;
  /** Of the working outline. */
  readonly width: number;
  readonly height: number;
  readonly grain: Line;
  readonly notches: readonly Line[];
}

export function layItem(cut: CutPiece, layer: string, part?: string): LayItem {
  const side = foldSide(cut);
  const half = layShape(
    cut.cutEdges.flatMap((edge) => edge.curves),
    cut.piece.grain,
    cut.notches.flatMap(({ ticks }) => ticks),
  );
  const kind = cut.piece.cut;
  return {
    cut,
    layer,
    kind,
    copies: kind === 'on-fold' ? 1 : kind === 'pair' ? 2 : (cut.piece.copies ?? 1),
    whole: side === undefined ? half : openedOut(cut, half),
    railroaded: false,
    ...(part === undefined ? {} : { part }),
    ...(side === undefined ? {} : { half: { ...half, foldOnRight: side === 'back' } }),
  };
}

/** A piece on the bias, turned so that its thread runs along the cloth. */
export function biasItem(cut: CutPiece, layer: string): LayItem {
  const { from, to } = cut.piece.grain;
  const leansRight = (from.x - to.x) * (from.y - to.y) < 0;
  return { ...layItem(toThread(cut), layer), tilt: leansRight ? 45 : 315 };
}

/** The item with its length across the cloth, the head to the left; whole, as a fold does not run that way. */
export function railroadedItem({ half: _, ...item }: LayItem): LayItem {
  const turn = <C extends Curve>(curve: C): C => rotated(curve, -Math.PI / 2) as C;
  const { outline, grain, notches } = item.whole;
  return { ...item, railroaded: true, whole: layShape(outline.map(turn), turn(grain), notches.map(turn)) };
}

function openedOut(cut: CutPiece, half: LayShape): LayShape {
  const fold = foldAt(cut);
  const others = half.notches.map((tick) => across(tick, fold) as Line);
  const grain: Line = {
    kind: 'line',
    from: { x: fold, y: half.grain.from.y },
    to: { x: fold, y: half.grain.to.y },
  };
  return layShape(wholeOutline(cut), grain, [...half.notches, ...others]);
}

function layShape(outline: readonly Curve[], grain: Line, notches: readonly Line[]): LayShape {
  const working = workingOutline(outline);
  const xs = working.map(({ x }) => x);
  const ys = working.map(({ y }) => y);
  return {
    outline,
    working,
    area: Math.abs(areaInside(outline)),
    width: Math.max(...xs) - Math.min(...xs),
    height: Math.max(...ys) - Math.min(...ys),
    grain,
    notches,
  };
}
