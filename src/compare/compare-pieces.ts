import type { CutPiece } from '../draft/piece.ts';
import type { LayerSpec, Spec } from '../spec/spec.ts';
import { mirroredPiece } from './cloth.ts';
import { comparePiece, type ShapeChange } from './compare-piece.ts';
import type { NewCloth, PieceChange } from './piece-change.ts';
import { sameCloth } from './same-cloth.ts';

/** What is cut for one version of a gown. */
export interface CutVersion {
  readonly spec: Spec;
  readonly pieces: readonly CutPiece[];
  /** Every layer that has pieces, those that stand for a flounce or strips among them. */
  readonly layers: readonly LayerSpec[];
}

export interface PieceChanges {
  /** Every piece of the new version, layer by layer from the inside out, gores from the centre front round. */
  readonly changes: readonly PieceChange[];
  /** Pieces of the old version that the new one does not have. */
  readonly dropped: readonly PieceName[];
}

export type PieceName = Pick<PieceChange, 'gore' | 'layer' | 'side'>;

/** A piece as one layer has it. */
interface Placed extends PieceName {
  readonly cutPiece: CutPiece;
  readonly cloth: string;
}

export function comparePieces(old: CutVersion, now: CutVersion): PieceChanges {
  const before = placedPieces(old);
  const after = placedPieces(now);
  const used = new Set<Placed>();
  const shapes = new Map<string, ShapeChange>();
  const rename = renames(old, now);
  const changes = after.map((piece): PieceChange => {
    const was = partnerOf(piece, before, rename);
    const name = nameOf(piece);
    if (was === undefined) return { ...name, ...CUT_NEW, newCloth: 'piece-is-new' };
    used.add(was);
    const newCloth = newClothFor(was, piece, old.spec, now.spec);
    if (newCloth !== undefined) return { ...name, ...CUT_NEW, newCloth };
    return { ...name, ...shapeChange(was, piece, before, after, shapes) };
  });
  return { changes, dropped: before.filter((piece) => !used.has(piece)).map(nameOf) };
}

const CUT_NEW = { verdict: 're-cut', shift: { x: 0, y: 0 }, edges: [], marks: [], amount: 0 } as const;

function placedPieces({ pieces, layers }: CutVersion): Placed[] {
  return layers.flatMap(({ name, cloth }) =>
    pieces
      .filter((piece) => piece.layers.includes(name))
      .map((cutPiece) => ({
        gore: cutPiece.gore,
        layer: name,
        ...(cutPiece.piece.side === undefined ? {} : { side: cutPiece.piece.side }),
        cutPiece,
        cloth,
      })),
  );
}

function nameOf({ gore, layer, side }: Placed): PieceName {
  return { gore, layer, ...(side === undefined ? {} : { side }) };
}

/** What a gore or a layer was called before, where its place in the list shows that only its name changed. */
interface Renames {
  readonly gores: ReadonlyMap<string, string>;
  readonly layers: ReadonlyMap<string, string>;
}

function renames(old: CutVersion, now: CutVersion): Renames {
  const inPlace = (before: readonly string[], after: readonly string[]): ReadonlyMap<string, string> =>
    new Map(
      before.length !== after.length
        ? []
        : after.flatMap((name, i) =>
            before.includes(name) || after.includes(before[i]!) ? [] : [[name, before[i]!]],
          ),
    );
  const names = (list: readonly { readonly name: string }[]) => list.map(({ name }) => name);
  return {
    gores: inPlace(names(old.spec.gores), names(now.spec.gores)),
    layers: inPlace(names(old.spec.layers), names(now.spec.layers)),
  };
}

/** The piece of the old version that this one may be cut from: of its own side, else one of a pair, else either side. */
function partnerOf(piece: Placed, before: readonly Placed[], rename: Renames): Placed | undefined {
  const gore = rename.gores.get(piece.gore) ?? piece.gore;
  const layer = rename.layers.get(piece.layer) ?? piece.layer;
  const alike = before.filter((one) => one.gore === gore && one.layer === layer);
  return (
    alike.find((one) => one.side === piece.side) ?? alike.find((one) => one.side === undefined) ?? alike[0]
  );
}

function newClothFor(was: Placed, piece: Placed, old: Spec, now: Spec): NewCloth | undefined {
  if (!sameCloth(old.cloths[was.cloth], now.cloths[piece.cloth])) return 'cloth-is-other';
  const before = was.cutPiece.piece;
  const after = piece.cutPiece.piece;
  if (after.cut === 'on-fold' && before.cut === 'pair') return 'now-on-the-fold';
  return countOf(piece) > countOf(was) && after.side === undefined && before.cut !== 'on-fold'
    ? 'more-of-them'
    : undefined;
}

function countOf({ cutPiece: { piece } }: Placed): number {
  return piece.cut === 'pair' ? 2 : (piece.copies ?? 1);
}

/** Layers whose pieces are alike before and after are compared once. */
function shapeChange(
  was: Placed,
  piece: Placed,
  before: readonly Placed[],
  after: readonly Placed[],
  known: Map<string, ShapeChange>,
): ShapeChange {
  const first = (list: readonly Placed[], one: Placed) =>
    list.findIndex((other) => other.cutPiece === one.cutPiece);
  const key = `${first(before, was)} ${first(after, piece)}`;
  const found = known.get(key) ?? comparePiece(...asDrawnAlike(was, piece));
  known.set(key, found);
  return found;
}

/** One of a pair is drawn for the wearer's left; a single for her right is drawn the other way round. */
function asDrawnAlike(was: Placed, piece: Placed): [CutPiece, CutPiece] {
  const right = ({ cutPiece: { piece: own } }: Placed): boolean => own.side === 'right';
  const flip = right(piece) !== right(was);
  return [was.cutPiece, flip ? mirroredPiece(piece.cutPiece) : piece.cutPiece];
}
