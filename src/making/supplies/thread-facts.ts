import type { HemFinish } from '../../gown/cloth.ts';
import type { EdgingFacts } from '../edging/edging-facts.ts';
import type { Bench } from '../findings.ts';
import type { WaistFacts } from '../waist/waist-facts.ts';
import type { StripFacts } from './strip-facts.ts';
import { type ThreadNeed, threadFor, USUAL_STITCH } from './thread.ts';

/** Thread for one layer, in its cloth's colour. mm. */
export interface LayerThread {
  readonly layer: string;
  readonly stitch: number;
  readonly stitchAssumed: boolean;
  /** Rows sewn: seams, this layer's share of the waist seam, its hem with edging and strips. */
  readonly seams: number;
  readonly waist: number;
  readonly hem: number;
  readonly need: ThreadNeed;
}

/** Machine rows along a hem: a faced hem is seamed and understitched; a raw one has none of its own. */
const HEM_ROWS: Readonly<Record<HemFinish, number>> = { turned: 1, faced: 2, bagged: 1, rolled: 1, raw: 0 };

/** The waist seam is sewn twice; its thread is the colour of the group's outermost layer. */
const WAIST_ROWS = 2;

/** A strip is held along both its edges, an edging along its inner edge. */
const STRIP_ROWS = 2;

export function threadFacts(
  { skirt }: Bench,
  waist: WaistFacts,
  strips: readonly StripFacts[],
  edging: EdgingFacts | undefined,
): LayerThread[] {
  return skirt.layers.map(({ layer, seams, hem }) => {
    const given = layer.cloth.stitch;
    const stitch = given ?? USUAL_STITCH;
    const rows = layer.seams === 'french' ? 2 : 1;
    const seamRows = seams.reduce((sum, seam) => sum + rows * seam.copies * seam.length, 0);
    const groups = waist.groups.filter((group) => group.layers[group.layers.length - 1] === layer.name);
    const waistRows = WAIST_ROWS * groups.length * skirt.waist;
    const own = strips.filter((strip) => strip.layer === layer.name);
    const trims = own.reduce((sum, strip) => sum + STRIP_ROWS * strip.length.edge, 0);
    const edged = edging?.hems.find((one) => one.layer === layer.name)?.length ?? 0;
    const hemRows = HEM_ROWS[layer.hem] * hem + trims + edged;
    return {
      layer: layer.name,
      stitch,
      stitchAssumed: given === undefined,
      seams: seamRows,
      waist: waistRows,
      hem: hemRows,
      need: threadFor(seamRows + waistRows + hemRows, stitch),
    };
  });
}
