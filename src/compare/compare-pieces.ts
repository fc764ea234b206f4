import type { CutPiece } from '../draft/piece.ts';
import type { Spec } from '../gown-file/spec.ts';
import { mirroredPiece } from './cloth.ts';
import { comparePiece, type ShapeChange } from './compare-piece.ts';
import type { NewCloth, PieceChange, Verdict } from './piece-change.ts';
import { sameCloth } from './same-cloth.ts';

/** What is cut for one version of a gown. */
export interface CutVersion {
  readonly spec: Spec;
  readonly pieces: readonly CutPiece[];
  /** Every layer that has pieces, those that stand for a flounce or strips among them. */
  readonly layers: readonly { readonly name: string; readonly cloth: string }[];
}

export interface PieceChanges {
  /** Every piece of the new version, layer by layer from the inside out, gores from the centre front round. */
  readonly changes: readonly PieceChange[];
  /** Pieces of the old version that the new one does not have. */
  readonly dropped: readonly PieceName[];
}

export type PieceName = Pick<PieceChange, 'gore' | 'part' | 'layer' | 'side'>;

/** A piece as one layer has it. */
interface Placed extends PieceName {
  readonly cutPiece: CutPiece;
  readonly cloth: string;
}

export function comparePieces(old: CutVersion, now: CutVersion): PieceChanges {
  const before = placedPieces(old);
  const after = placedPieces(now);
  const used = new Set<Placed>();
  const shapes: Shapes = new Map();
  const rename = renames(old, now);
  const changes = after.map((piece): PieceChange => {
    const partners = partnersOf(piece, before, rename);
    for (const partner of partners) used.add(partner);
    const found = partners.map((was) => pieceChange(was, piece, old, now, shapes));
    return worst(found) ?? { ...nameOf(piece), ...CUT_NEW, piece: piece.cutPiece, newCloth: 'piece-is-new' };
  });
  return { changes, dropped: before.filter((piece) => !used.has(piece)).map(nameOf) };
}

const CUT_NEW = {
  verdict: 're-cut',
  shift: { x: 0, y: 0 },
  slid: { x: 0, y: 0 },
  edges: [],
  marks: [],
  amount: 0,
} as const;

function placedPieces({ pieces, layers }: CutVersion): Placed[] {
  return layers.flatMap(({ name, cloth }) =>
    pieces
      .filter((piece) => piece.layers.includes(name))
      .map((cutPiece) => ({
        gore: cutPiece.gore,
        ...(cutPiece.piece.part === undefined ? {} : { part: cutPiece.piece.part }),
        layer: name,
        ...(cutPiece.piece.side === undefined ? {} : { side: cutPiece.piece.side }),
        cutPiece,
        cloth,
      })),
  );
}

function nameOf({ gore, part, layer, side }: Placed): PieceName {
  return { gore, ...(part === undefined ? {} : { part }), layer, ...(side === undefined ? {} : { side }) };
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

/** The pieces of the old version that this one is cut from: of its own side, else one of a pair, else both sides. */
function partnersOf(piece: Placed, before: readonly Placed[], rename: Renames): Placed[] {
  const gore = rename.gores.get(piece.gore) ?? piece.gore;
  const layer = rename.layers.get(piece.layer) ?? piece.layer;
  const alike = before.filter((one) => one.gore === gore && one.part === piece.part && one.layer === layer);
  const own = alike.find((one) => one.side === piece.side) ?? alike.find((one) => one.side === undefined);
  return own === undefined ? alike : [own];
}

function pieceChange(
  was: Placed,
  piece: Placed,
  old: CutVersion,
  now: CutVersion,
  known: Shapes,
): PieceChange {
  const [before, after] = asDrawnAlike(was, piece);
  const pieces = { was: before, piece: after };
  const newCloth = newClothFor(was, piece, old.spec, now.spec);
  if (newCloth !== undefined) return { ...nameOf(piece), ...CUT_NEW, ...pieces, newCloth };
  // Layers whose pieces are alike before and after are compared once.
  const key = [was, piece]
    .map(({ cutPiece, side }) => `${cutPiece.piece.part} ${cutPiece.gore} ${cutPiece.layers} ${side}`)
    .join();
  const shape = known.get(key) ?? comparePiece(before, after);
  known.set(key, shape);
  return { ...nameOf(piece), ...shape, ...pieces };
}

type Shapes = Map<string, ShapeChange>;

const FROM_BAD_TO_GOOD: readonly Verdict[] = ['re-cut', 'let-out', 're-mark', 'same'];

function worst(changes: readonly PieceChange[]): PieceChange | undefined {
  return [...changes].sort(
    (a, b) => FROM_BAD_TO_GOOD.indexOf(a.verdict) - FROM_BAD_TO_GOOD.indexOf(b.verdict),
  )[0];
}

function newClothFor(was: Placed, piece: Placed, old: Spec, now: Spec): NewCloth | undefined {
  if (!sameCloth(old.cloths[was.cloth], now.cloths[piece.cloth])) return 'cloth-is-other';
  const before = was.cutPiece.piece;
  const after = piece.cutPiece.piece;
  if (after.cut === 'on-fold' && before.cut === 'pair') return 'now-on-the-fold';
  if (after.bias !== before.bias) return 'thread-runs-otherwise';
  // Left and right that were cut apart serve a pair between them.
  const sided = was.side !== undefined || piece.side !== undefined;
  return countOf(piece) > countOf(was) && !sided && before.cut !== 'on-fold' ? 'more-of-them' : undefined;
}

function countOf({ cutPiece: { piece } }: Placed): number {
  return piece.cut === 'pair' ? 2 : (piece.copies ?? 1);
}

/** One of a pair is drawn for the wearer's left; a single for her right is drawn the other way round. */
function asDrawnAlike(was: Placed, piece: Placed): [CutPiece, CutPiece] {
  const right = ({ cutPiece: { piece: own } }: Placed): boolean => own.side === 'right';
  const flip = right(piece) !== right(was);
  return [was.cutPiece, flip ? mirroredPiece(piece.cutPiece) : piece.cutPiece];
}
