import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { lineAndColumn } from '../diagnostics/place.ts';
import type { LayerDrafts } from '../draft/draft-layers.ts';
import { hemRound } from '../draft/flounces.ts';
import type { Gown } from '../gown/gown.ts';
import { hasGore, tuckedUp } from '../gown/layer.ts';
import { halves, stationsOnce } from '../gown/lines.ts';
import { type GownMeasures, type WorstSeams, worstSeams } from '../truing/measure-gown.ts';
import type { LayerMeasures } from '../truing/true-layers.ts';
import type { BodiceReport, CapeReport } from './bodice-report.ts';
import type { FinishingReport } from './finishing-report.ts';
import type { FittingReport } from './fitting-report.ts';
import type { PartReport } from './part-report.ts';
import type { PleatReport } from './pleat-report.ts';

/** Every figure of the draft as `report.json` holds it: mm, mm², degrees. A gore on the fold is given as its half. */
export interface GownReport {
  readonly gown: string;
  readonly client?: string;
  readonly format: number;
  /** Names what the spec says; printed on every piece and sheet. */
  readonly content: string;
  readonly gores: readonly {
    readonly name: string;
    /** The wearer's side, where her two sides differ. */
    readonly side?: 'left' | 'right';
    readonly copies: number;
    readonly onFold: boolean;
    readonly top: number;
    readonly hem: number;
    readonly flareDegrees: number;
    readonly area: number;
    /** Smallest radius of its edges, mm; null where all are straight. */
    readonly tightestRadius: number | null;
    readonly edges: Readonly<Record<string, number>>;
  }[];
  readonly stations: readonly StationReport[];
  readonly seams: readonly {
    readonly name: string;
    /** Where both sides of her have a seam of this name, and they differ. */
    readonly side?: 'left' | 'right';
    readonly lengths: readonly [number, number];
    readonly difference: number;
    readonly hemAngle: number;
    readonly waistAngle: number;
    /** How far the hem is off square there, degrees. */
    readonly hemOffSquare: number;
  }[];
  /** A skirt whose two edges lie over one another: by how much, at the waist and at the hem. */
  readonly wrap?: {
    readonly at: string;
    readonly over: 'left' | 'right';
    readonly overlap: number;
    readonly overlapAtHem: number;
  };
  readonly waist: { readonly sewn: number; readonly bodice: number; readonly difference: number };
  readonly hem: { readonly sewn: number };
  readonly layers: readonly {
    readonly name: string;
    readonly cloth: string;
    readonly hem: string;
    /** Cut on the bias: 45° on the thread. */
    readonly grain?: 'bias';
    /** What its growth tucks take up, along the cloth; its lines are those with them let out. */
    readonly tuckedUp?: number;
    readonly sewnHem: number;
    /** Of this layer's own seam lines, at worst: sides apart, and the sums of two angles farthest from 180°. */
    readonly seams: { readonly difference: number; readonly hemAngle: number; readonly waistAngle: number };
    /** Its waist edge as sewn, all round. */
    readonly sewnWaist: number;
  }[];
  /** Where it is drafted over her body. */
  readonly bodice?: BodiceReport;
  readonly capes?: readonly CapeReport[];
  /** Flounces, strips, godets, straps and capes. */
  readonly parts: readonly PartReport[];
  /** Facings, bands and what lies in openings. */
  readonly finishing: readonly FinishingReport[];
  /** Pleats that have their place, by layer. */
  readonly pleats?: readonly PleatReport[];
  readonly overskirts: readonly GownReport[];
  /** What each fitting did, in their order. */
  readonly fittings: readonly FittingReport[];
}

/** mm. `length` is finished, from the sewn edge of the bodice to the hem. */
export interface StationReport {
  readonly name: string;
  /** Where both sides of her have a station of this name, and they differ. */
  readonly side?: 'left' | 'right';
  readonly length: number;
  readonly drop: number;
  /** As the spec gives it; null where it is filled in. */
  readonly given: number | null;
  /** The same over the petticoat and in the shoes that she will wear; along the cloth. */
  readonly asWorn: number | null;
}

/** The draft and what was measured on it, of the gown itself and of every layer. */
export interface MeasuredDrafts {
  readonly drafts: LayerDrafts;
  readonly measures: GownMeasures;
  readonly layers: readonly LayerMeasures[];
}

export interface Finding {
  readonly code: string;
  readonly level: string;
  readonly message: string;
  readonly line: number;
  readonly column: number;
}

function wrapReport({ wrap }: Gown): Pick<GownReport, 'wrap'> {
  if (wrap === undefined) return {};
  const { at, over, overlap, overlapAtHem } = wrap;
  return { wrap: { at, over, overlap: mm(overlap), overlapAtHem: mm(overlapAtHem) } };
}

export function gownReport(
  gown: Gown,
  { drafts, measures, layers }: MeasuredDrafts,
  beside: Pick<GownReport, 'bodice' | 'capes' | 'parts' | 'finishing' | 'pleats' | 'overskirts' | 'fittings'>,
): GownReport {
  const { gown: lines, lengths } = drafts.gown;
  const ifKnown = (length: number | undefined): number | null => (length === undefined ? null : mm(length));
  const sewn = measures.seams.filter(({ free }) => free === undefined);
  return {
    gown: gown.name,
    ...(gown.client === undefined ? {} : { client: gown.client }),
    format: gown.format,
    content: gown.content,
    gores: measures.gores.map((gore) => ({
      name: gore.name,
      ...(gore.side === undefined ? {} : { side: gore.side }),
      copies: gore.copies,
      onFold: gore.onFold,
      top: mm(gore.top),
      hem: mm(gore.hem),
      flareDegrees: degrees(gore.flare),
      area: Math.round(gore.area * 100) / 100,
      tightestRadius: Number.isFinite(gore.tightest) ? mm(gore.tightest) : null,
      edges: Object.fromEntries(Object.entries(gore.edges).map(([name, length]) => [name, mm(length)])),
    })),
    stations: stationsOnce(lines).map(({ name, side, drop, given, asWorn }, i) => ({
      name,
      ...(side === undefined ? {} : { side }),
      length: mm(lengths[i]!),
      drop: mm(drop),
      given: ifKnown(given),
      asWorn: ifKnown(asWorn),
    })),
    seams: sewn.map((seam) => ({
      name: seam.name,
      ...(seam.side === undefined ? {} : { side: seam.side }),
      lengths: [mm(seam.lengths[0]), mm(seam.lengths[1])],
      difference: mm(Math.abs(seam.lengths[0] - seam.lengths[1])),
      hemAngle: degrees(seam.hemAngle),
      waistAngle: degrees(seam.waistAngle),
      hemOffSquare: degrees(seam.offSquare),
    })),
    waist: {
      sewn: mm(measures.waist.sewn),
      bodice: mm(gown.waistSeam),
      difference: mm(Math.abs(measures.waist.sewn - gown.waistSeam)),
    },
    ...wrapReport(gown),
    hem: { sewn: mm(measures.hem.sewn) },
    layers: layers.map(({ layer, draft, measures: own }) => ({
      name: layer.name,
      cloth: layer.cloth.name,
      hem: layer.hem,
      ...(layer.grain === undefined ? {} : { grain: layer.grain }),
      ...(layer.tucks === undefined ? {} : { tuckedUp: mm(tuckedUp(layer)) }),
      sewnHem: mm(hemRound({ layer, draft }, gown.godets)),
      seams: worstOf(worstSeams(draft, own, layer)),
      sewnWaist: mm(sewnWaist({ layer, draft, measures: own })),
    })),
    ...beside,
  };
}

function worstOf(worst: WorstSeams): GownReport['layers'][number]['seams'] {
  return {
    difference: mm(worst.difference),
    hemAngle: degrees(worst.hemAngle),
    waistAngle: degrees(worst.waistAngle),
  };
}

/** Tops of the gores that a layer has, gathered or pleated as they are sewn. */
function sewnWaist({ layer, draft, measures }: LayerMeasures): number {
  const own = measures.gores.filter((gore) => hasGore(layer, gore));
  return halves(draft.gown) * own.reduce((sum, { top }) => sum + top, 0);
}

export function findingsOf(diagnostics: readonly Diagnostic[]): Finding[] {
  return diagnostics.map(({ code, level, message, span }) => ({
    code,
    level,
    message,
    ...lineAndColumn(span),
  }));
}

/** Kept to a tenth of a micrometre: finer than any tool, coarse enough to be the same on every machine. */
function mm(length: number): number {
  return Math.round(length * 1e4) / 1e4;
}

function degrees(angle: number): number {
  return Math.round(((angle * 180) / Math.PI) * 1e4) / 1e4;
}
