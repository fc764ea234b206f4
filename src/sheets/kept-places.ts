import type { CutPiece } from '../draft/piece.ts';
import { placedPoint } from '../geometry/transform.ts';
import type { LaidPiece } from './laid-piece.ts';
import { CLEAR, type Position } from './nest-on-grid.ts';
import type { Cell } from './touched-sheets.ts';
import { ROW, type WorkingShape } from './working-shape.ts';

/** Where a piece lay in an earlier version of a pattern, so that its sheets can be used again. */
export interface KeptPlace {
  /** Its gore, side and layers. */
  readonly piece: string;
  /** Clockwise as drawn, degrees. */
  readonly turned: number;
  /** What its drawn coordinates are moved by, mm. */
  readonly x: number;
  readonly y: number;
}

/**
 * The places of a plan's pieces.
 * @param cutPieces what they were before they were laid, in the same order
 * @param groups indices of pieces that lie on one another
 */
export function placesOf(
  { pieces }: { readonly pieces: readonly LaidPiece[] },
  cutPieces: readonly CutPiece[],
  groups: readonly (readonly number[])[],
): KeptPlace[] {
  return groups.map((group) => {
    const index = group[0]!;
    const { cutPiece, turned } = pieces[index]!;
    const turn = { mirror: false, angle: (turned * Math.PI) / 180, shift: { x: 0, y: 0 } };
    const from = placedPoint(turn, cutPieces[index]!.labelAt);
    const members = group.map((member) => cutPieces[member]!);
    return {
      piece: groupName(members),
      turned,
      x: rounded(cutPiece.labelAt.x - from.x),
      y: rounded(cutPiece.labelAt.y - from.y),
    };
  });
}

/** As it is kept in a file: finer than any printer. */
function rounded(length: number): number {
  return Math.round(length * 1e6) / 1e6;
}

/** Pieces that lie on one another, as one name. */
export function groupName(members: readonly CutPiece[]): string {
  const { gore, piece } = members[0]!;
  const layers = members.flatMap((member) => member.layers).sort();
  return [gore, piece.side ?? '', ...layers].join(' ');
}

/**
 * Every piece where it lay before. One that was not there, or would lie on another or off the sheets now, lies upright
 * on sheets of its own, right of all others.
 */
export function keptPositions(
  places: readonly KeptPlace[],
  names: readonly string[],
  shapes: readonly (readonly WorkingShape[])[],
  cell: Cell,
): readonly Position[] {
  const kept: (Position | undefined)[] = [];
  for (const [i, name] of names.entries()) {
    const position = placeAgain(
      places.find(({ piece }) => piece === name),
      shapes[i]!,
    );
    const free =
      position !== undefined && !kept.some((other) => other !== undefined && overlap(position, other));
    kept.push(free ? position : undefined);
  }
  let right = Math.max(
    0,
    ...kept.map((position) => (position === undefined ? 0 : position.x + position.shape.width)),
  );
  return kept.map((position, i) => {
    if (position !== undefined) return position;
    const shape = shapes[i]![0]!;
    const x = Math.ceil(right / cell.width) * cell.width + CLEAR;
    right = x + shape.width;
    return { shape, x, y: CLEAR };
  });
}

function placeAgain(place: KeptPlace | undefined, shapes: readonly WorkingShape[]): Position | undefined {
  const shape = shapes.find(({ turned }) => turned === place?.turned);
  if (place === undefined || shape === undefined) return undefined;
  const { shift } = shape.placement;
  const position = { shape, x: place.x - shift.x, y: place.y - shift.y };
  return position.x >= CLEAR / 2 && position.y >= CLEAR / 2 ? position : undefined;
}

/** Whether two pieces come nearer to each other than the room that shears need, row by row. */
function overlap(a: Position, b: Position): boolean {
  for (let i = 0; i < a.shape.rowLeft.length; i++) {
    const from = Math.floor((a.y + i * ROW - b.y) / ROW);
    for (const j of [from, from + 1]) {
      if (j < 0 || j >= b.shape.rowLeft.length) continue;
      const left = Math.max(a.x + a.shape.rowLeft[i]!, b.x + b.shape.rowLeft[j]!);
      const right = Math.min(a.x + a.shape.rowRight[i]!, b.x + b.shape.rowRight[j]!);
      if (left < right - TOUCHING) return true;
    }
  }
  return false;
}

/** Rows hold a gap of 4 mm; a kept place may use this much of it, mm: the rows of moved pieces do not line up. */
const TOUCHING = 3;
