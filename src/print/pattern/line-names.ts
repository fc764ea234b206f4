import type { CutPiece } from '../../draft/piece.ts';
import type { Curve, Line } from '../../geometry/curve.ts';
import { type Kept, keptOrWorked, NOTHING_KEPT } from '../../kept/kept.ts';
import type { Window } from '../text/label-place.ts';
import { linesOfPiece, meets, within } from './lines-drawn.ts';
import { type LineName, type NamedLines, nameAt, type Pile, placedNames, SIZES } from './placed-names.ts';

/**
 * Names for the cut lines of pieces that lie on one another, a list for each piece: of its hem, once on each sheet that
 * the line crosses, and of a waist corner of its own. Each stands on the inner side of its line, in the largest letters
 * that touch no line and no other name.
 */
export function lineNames(
  pieces: readonly CutPiece[],
  around: { readonly grain: Line; readonly windows: readonly Window[] },
  nameOf: (layers: readonly string[]) => string,
  kept: Kept = NOTHING_KEPT,
): LineName[][] {
  const named = pieces.map((piece): NamedLines => {
    const [waist, , hem] = piece.piece.edges.map(({ name }) => edgesNamed(piece, name));
    return { ...linesOfPiece(piece), text: nameOf(piece.layers), waist: waist!, hem: hem! };
  });
  const pile: Pile = { pieces: named, grain: around.grain, windows: around.windows };
  return keptOrWorked(kept, {
    what: 'line-names',
    from: pile,
    read: (known) => knownNames(known, pile),
    write: (names) => names.map((own) => own.map(({ box, mark }) => [box.x, box.y, mark.size])),
    work: () => placedNames(pile),
  });
}

/** Names where they were, if each is in one of the sizes, within a sheet and clear of the others. */
function knownNames(known: unknown, { pieces, windows }: Pile): LineName[][] | undefined {
  if (!Array.isArray(known) || known.length !== pieces.length || !known.every(Array.isArray))
    return undefined;
  const names = known.map((own: unknown[], index) => own.map((at) => knownName(at, pieces[index]!.text)));
  const all = names.flat();
  const hold = all.every(
    (name, index) =>
      name !== undefined &&
      windows.some((window) => within(name.box, window)) &&
      !all.slice(0, index).some((other) => meets(other!.box, name.box)),
  );
  return hold ? (names as LineName[][]) : undefined;
}

function knownName(known: unknown, text: string): LineName | undefined {
  if (!Array.isArray(known) || known.length !== 3) return undefined;
  const [x, y, size] = known as unknown[];
  const isOne = typeof x === 'number' && typeof y === 'number' && SIZES.some((one) => one === size);
  return isOne ? nameAt(text, x, y, size as number) : undefined;
}

function edgesNamed({ cutEdges }: CutPiece, name: string): Curve[] {
  return cutEdges.filter((edge) => edge.name === name).flatMap(({ curves }) => curves);
}
