import { bonesToBuy } from '../bodice/bones.ts';
import type { DraftedCape } from '../bodice/cape-parts.ts';
import type { DraftedBodice } from '../bodice/draft-asked.ts';
import type { BodiceTrace } from '../bodice/fit-bodice.ts';

/** A drafted bodice as `report.json` holds it: mm and degrees. A panel on the fold is given as its half. */
export interface BodiceReport {
  readonly levels: readonly {
    readonly at: string;
    readonly above: number;
    readonly body: number;
    /** Of the panels, all round; what is laced open is not in it. */
    readonly sewn: number;
    readonly open: number;
  }[];
  readonly panels: readonly {
    readonly name: string;
    readonly side?: 'left' | 'right';
    readonly upper: number;
    readonly lower: number;
    readonly widths: Readonly<Record<string, number>>;
  }[];
  readonly seams: readonly {
    readonly name: string;
    readonly side?: 'left' | 'right';
    readonly lengths: readonly [number, number];
    readonly difference: number;
    readonly upperAngle: number;
    readonly lowerAngle: number;
  }[];
  readonly upper: { readonly sewn: number };
  readonly lower: { readonly sewn: number };
  readonly bones: readonly {
    readonly along: string;
    readonly side?: 'left' | 'right';
    readonly seam: number;
    readonly length: number;
    readonly casing: number;
    readonly count: number;
  }[];
  readonly bonesToBuy: readonly { readonly length: number; readonly count: number }[];
  readonly lacing: LacingReport | null;
  readonly waistTape: { readonly round: number; readonly length: number };
  /** What was pinned in it and what that moved, by date; before and after, all round. */
  readonly fittings: readonly BodiceTrace[];
}

interface LacingReport {
  readonly at: string;
  /** On each side. */
  readonly eyelets: number;
  readonly pitch: number;
  /** From the upper end of the edge. */
  readonly places: readonly number[];
  /** Between the two rows of eyelets, at the upper and at the lower end. */
  readonly between: readonly number[];
  readonly worn: number;
  readonly tails: number;
  readonly lace: number;
  readonly modesty: { readonly width: number; readonly length: number } | null;
}

export function bodiceReport(bodice: DraftedBodice): BodiceReport {
  const { figures, bones } = bodice;
  const { kind } = bodice.asked.draft.bones ?? { kind: 'spiral-steel' as const };
  return {
    levels: figures.levels.map(({ at, above, body, sewn, open }) => ({
      at,
      above: mm(above),
      body: mm(body),
      sewn: mm(sewn),
      open: mm(open),
    })),
    panels: figures.panels.map((panel) => ({
      name: panel.name,
      ...sideOf(panel),
      upper: mm(panel.upper),
      lower: mm(panel.lower),
      widths: Object.fromEntries(Object.entries(panel.widths).map(([at, width]) => [at, mm(width)])),
    })),
    seams: figures.seams.map((seam) => ({
      name: seam.name,
      ...sideOf(seam),
      lengths: [mm(seam.lengths[0]), mm(seam.lengths[1])],
      difference: mm(Math.abs(seam.lengths[0] - seam.lengths[1])),
      upperAngle: degrees(seam.upperAngle),
      lowerAngle: degrees(seam.lowerAngle),
    })),
    upper: { sewn: mm(figures.upper) },
    lower: { sewn: mm(figures.lower) },
    bones: bones.map((bone) => ({
      along: bone.along,
      ...sideOf(bone),
      seam: mm(bone.seam),
      length: mm(bone.length),
      casing: mm(bone.casing),
      count: bone.count,
    })),
    bonesToBuy: bonesToBuy(bones, kind).map(({ length, count }) => ({ length: mm(length), count })),
    lacing: lacingReport(bodice),
    waistTape: { round: mm(bodice.tape.round), length: mm(bodice.tape.length) },
    fittings: bodice.fittings.map((trace) => ({
      ...trace,
      upper: [mm(trace.upper[0]), mm(trace.upper[1])],
      lower: [mm(trace.lower[0]), mm(trace.lower[1])],
    })),
  };
}

function lacingReport({ lacing, asked }: DraftedBodice): LacingReport | null {
  const { closing } = asked.draft;
  if (lacing === undefined || closing === undefined) return null;
  const [first, last] = [lacing.places[0]!, lacing.places[lacing.places.length - 1]!];
  return {
    at: closing.at,
    eyelets: lacing.eyelets,
    pitch: mm(lacing.pitch),
    places: lacing.places.map(mm),
    between: lacing.between.map(mm),
    worn: mm(lacing.worn),
    tails: mm(closing.tails),
    lace: mm(lacing.lace),
    modesty: closing.modesty === undefined ? null : { width: mm(closing.modesty), length: mm(first + last) },
  };
}

/** A cape as `report.json` holds it; mm and degrees, of one side of her. */
export interface CapeReport {
  readonly name: string;
  readonly inner: number;
  readonly hem: number;
  /** Of a ring sector; null where it is gathered. */
  readonly radius: number | null;
}

export function capeReport({ cape, inner, hem, radius }: DraftedCape): CapeReport {
  return {
    name: cape.name,
    inner: mm(inner),
    hem: mm(hem),
    radius: radius === undefined ? null : mm(radius),
  };
}

function sideOf({ side }: { readonly side?: 'left' | 'right' }): { readonly side?: 'left' | 'right' } {
  return side === undefined ? {} : { side };
}

function mm(length: number): number {
  return Math.round(length * 1e4) / 1e4;
}

function degrees(angle: number): number {
  return Math.round(((angle * 180) / Math.PI) * 1e6) / 1e6;
}
