import type { CutPiece } from '../../draft/piece.ts';
import { lengthOfRun } from '../../geometry/length.ts';
import type { HemFinish } from '../../gown/cloth.ts';
import { type Finished, facingLayers, finishingLayers } from '../../gown/finishing.ts';
import type { Gown } from '../../gown/gown.ts';
import type { Layer } from '../../gown/layer.ts';

/** Rows of machine stitching in a flounce or a set of tiers, mm; `top` counts by its gathers and its seam together. */
export interface PartRows {
  readonly name: string;
  readonly cloth: string;
  /** Stitch length that the scrap test settled on, mm. */
  readonly stitch: number | undefined;
  readonly seams: number;
  readonly top: number;
  readonly hem: number;
}

/** Machine rows along a hem: a faced hem is seamed, understitched and neatened; a raw one has none of its own. */
export const HEM_ROWS: Readonly<Record<HemFinish, number>> = {
  turned: 1,
  faced: 3,
  bagged: 1,
  rolled: 1,
  raw: 0,
};

/** Gathers are drawn up on two rows (textbook), and the gathered edge is sewn on by one. */
const GATHERING_ROWS = 2;

/** Flounces and tiers: joined strip to strip, gathered, sewn to the edge above, hemmed. */
export function rowsOfParts(
  gown: Finished & Pick<Gown, 'flounces' | 'tiers'>,
  pieces: readonly CutPiece[],
): PartRows[] {
  const { flounces, tiers, waist } = gown;
  return [
    ...flounces.map((flounce) => rowsOfFlounce(flounce, pieces)),
    ...tiers.map((own) => rowsOfTiers(own, pieces)),
    ...ofFacings(gown).map((layer) => rowsOfFacing(layer, pieces)),
    ...rowsOfWaist(waist, pieces),
    ...otherFinishing(gown).map((layer) => rowsOfPieces(layer, pieces)),
  ];
}

function rowsOfFlounce(flounce: Gown['flounces'][number], pieces: readonly CutPiece[]): PartRows {
  const { layer, kind, fullness, depth } = flounce;
  const run = runOf(layer.name, pieces);
  // A circular flounce is as long as the edge at its top; a straight one is gathered to it.
  const gathered = kind === 'straight' && fullness > 1;
  const edge = gathered ? run.top / fullness : run.top;
  return {
    name: layer.name,
    cloth: layer.cloth.name,
    stitch: layer.cloth.stitch,
    seams: run.copies * depth,
    top: edge + (gathered ? GATHERING_ROWS * run.top : 0),
    hem: HEM_ROWS[layer.hem] * run.hem,
  };
}

function rowsOfTiers(
  { layer, yoke, tiers, depths }: Gown['tiers'][number],
  pieces: readonly CutPiece[],
): PartRows {
  const strips = pieces.filter((piece) => piece.layers.includes(layer.name));
  const runs = new Set(strips.map(({ gore }) => gore)).size;
  const joins = strips.reduce((sum, { piece }) => sum + (piece.copies ?? 1), 0);
  const deep = depths.reduce((sum, depth) => sum + depth, 0) / depths.length;
  const above = [yoke, ...tiers.slice(0, -1)];
  return {
    name: layer.name,
    cloth: layer.cloth.name,
    stitch: layer.cloth.stitch,
    // Strips are joined into a run, the run is cut into tiers, and each of them is joined into a round.
    seams: (joins - runs + tiers.length) * deep,
    top: above.reduce((sum, edge, i) => sum + edge + GATHERING_ROWS * tiers[i]!, 0),
    hem: 0,
  };
}

/** Facings of hems and of a bodice's upper edge. */
function ofFacings(gown: Finished): Layer[] {
  const upper = gown.askedBodice?.facing;
  return [...facingLayers(gown), ...(upper ? [upper.layer] : [])];
}

/** What lies in openings, loops and bindings: all but facings of hems and what finishes the waist. */
function otherFinishing(gown: Finished): Layer[] {
  const told = [...ofFacings(gown), gown.waist?.layer];
  return finishingLayers(gown).filter((layer) => !told.includes(layer));
}

/** Two rows along each piece: it is sewn on, and closed or stitched down. */
function rowsOfPieces({ name, cloth }: Layer, pieces: readonly CutPiece[]): PartRows {
  const own = pieces.filter((piece) => piece.layers.includes(name));
  const long = own.reduce((sum, { piece }) => {
    const longest = Math.max(...piece.edges.map(({ curves }) => lengthOfRun(curves)));
    return sum + (piece.cut === 'pair' ? 2 : (piece.copies ?? 1)) * longest;
  }, 0);
  return { name, cloth: cloth.name, stitch: cloth.stitch, seams: 2 * long, top: 0, hem: 0 };
}

/** Seams and neatening of a facing; of a band its ends and the edge that is felled or stitched down inside. */
function rowsOfWaist(waist: Gown['waist'], pieces: readonly CutPiece[]): PartRows[] {
  if (waist?.layer === undefined) return [];
  const { layer, finish, width } = waist;
  if (finish === 'facing') {
    const inner = runOf(layer.name, pieces);
    return [{ ...rowsOfFacing(layer, pieces), top: 2 * 2 * inner.hem }];
  }
  const long = Math.max(
    ...pieces
      .filter((piece) => piece.layers.includes(layer.name))
      .flatMap(({ piece }) => piece.edges.map(({ curves }) => lengthOfRun(curves))),
  );
  return [
    {
      name: layer.name,
      cloth: layer.cloth.name,
      stitch: layer.cloth.stitch,
      seams: 2 * width,
      top: long,
      hem: 0,
    },
  ];
}

/** Its seams alone: the rows along the hem, understitching and neatening among them, are the hem's that it faces. */
function rowsOfFacing({ name, cloth }: Layer, pieces: readonly CutPiece[]): PartRows {
  const own = pieces.filter((piece) => piece.layers.includes(name));
  const sides = own.flatMap(({ piece: { edges, cut } }) =>
    [edges[1]!, edges[3]!]
      .filter((edge) => edge.name !== 'fold')
      .map(
        ({ curves }) =>
          (cut === 'pair' || edges.some((edge) => edge.name === 'fold') ? 2 : 1) * lengthOfRun(curves),
      ),
  );
  // Every seam has two sides.
  const seams = sides.reduce((sum, length) => sum + length, 0) / 2;
  return { name, cloth: cloth.name, stitch: cloth.stitch, seams, top: 0, hem: 0 };
}

/** All copies of a part end to end. */
function runOf(name: string, pieces: readonly CutPiece[]) {
  const own = pieces.filter((piece) => piece.layers.includes(name));
  const sum = (of: (piece: CutPiece['piece'], copies: number) => number): number =>
    own.reduce((all, { piece }) => all + of(piece, piece.copies ?? 1), 0);
  return {
    copies: sum((_, copies) => copies),
    top: sum((piece, copies) => copies * lengthOfRun(piece.edges[0]!.curves)),
    hem: sum((piece, copies) => copies * lengthOfRun(piece.edges[2]!.curves)),
  };
}
