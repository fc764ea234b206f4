import type { CutPiece } from '../../draft/piece.ts';
import type { EdgingFacts } from '../edging/edging-facts.ts';
import type { Bench } from '../findings.ts';
import type { WaistFacts } from '../waist/waist-facts.ts';
import { HEM_ROWS, rowsOfParts } from './parts-thread.ts';
import type { StripFacts } from './strip-facts.ts';
import { type ThreadNeed, threadFor, USUAL_STITCH } from './thread.ts';

/** Thread for one layer, in its cloth's colour. mm. */
export interface LayerThread {
  readonly layer: string;
  readonly cloth: string;
  readonly stitch: number;
  readonly stitchAssumed: boolean;
  /** Rows sewn: seams, this layer's share of the waist seam, its hem with edging and strips; of a flounce or tiers the edge above. */
  readonly seams: number;
  readonly waist: number;
  readonly hem: number;
  readonly need: ThreadNeed;
}

/** The waist seam is sewn twice; its thread is the colour of the group's outermost layer. */
const WAIST_ROWS = 2;

/** A strip is held along both its edges, an edging along its inner edge. */
const STRIP_ROWS = 2;

export function threadFacts(
  { gown, skirt }: Bench,
  waist: WaistFacts,
  strips: readonly StripFacts[],
  edging: EdgingFacts | undefined,
  pieces: readonly CutPiece[],
): LayerThread[] {
  const parts = rowsOfParts(gown, pieces).map((part) => ({
    layer: part.name,
    cloth: part.cloth,
    stitch: part.stitch ?? USUAL_STITCH,
    stitchAssumed: part.stitch === undefined,
    seams: part.seams,
    waist: part.top,
    hem: part.hem,
    need: threadFor(part.seams + part.top + part.hem, part.stitch ?? USUAL_STITCH),
  }));
  const layers = skirt.layers.map(({ layer, seams, hem, wrapEdge = 0 }, i) => {
    const given = layer.cloth.stitch;
    const stitch = given ?? USUAL_STITCH;
    const rows = layer.seams === 'french' ? 2 : 1;
    const seamRows = seams.reduce((sum, seam) => sum + rows * seam.copies * seam.length, 0);
    // Facings of a wrap's edges are counted as pieces; else its edges are turned or bound, all layers as one.
    const edges = gown.wrap?.facing === undefined && i === skirt.layers.length - 1 ? 2 * wrapEdge : 0;
    const groups = waist.groups.filter((group) => group.layers[group.layers.length - 1] === layer.name);
    const waistRows = WAIST_ROWS * groups.length * skirt.waist;
    const own = strips.filter((strip) => strip.layer === layer.name);
    const trims = own.reduce((sum, strip) => sum + STRIP_ROWS * strip.copies * strip.length.edge, 0);
    const edged = edging?.hems.find((one) => one.layer === layer.name)?.length ?? 0;
    const hemRows = HEM_ROWS[layer.hem] * hem + trims + edged;
    return {
      layer: layer.name,
      cloth: layer.cloth.name,
      stitch,
      stitchAssumed: given === undefined,
      seams: seamRows + edges,
      waist: waistRows,
      hem: hemRows,
      need: threadFor(seamRows + edges + waistRows + hemRows, stitch),
    };
  });
  return [...layers, ...parts];
}
