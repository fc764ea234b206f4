import type { GownFacts, LayerFacts } from '../facts.ts';
import { type Gore, goreOf } from './gore.ts';
import { type Pattern, readPattern } from './pattern.ts';

/** The files of one run, opened beside what the spec asked for. */
export interface MeasuredGown {
  readonly facts: GownFacts;
  readonly pattern: Pattern;
  readonly report: Report;
  readonly layers: readonly MeasuredLayer[];
}

export interface MeasuredLayer {
  readonly layer: LayerFacts;
  /** By position in the spec; undefined where the layer has no such gore. */
  readonly gores: readonly (Gore | undefined)[];
}

/** What design section 5 promises of `report.json`, as far as these tests read it. */
export interface Report {
  readonly gown: string;
  readonly gores: readonly {
    readonly name: string;
    readonly copies: number;
    readonly top: number;
    readonly hem: number;
    readonly flareDegrees: number;
    readonly area: number;
    readonly edges: Readonly<Record<string, number>>;
  }[];
  readonly seams: readonly {
    readonly name: string;
    readonly lengths: readonly [number, number];
    readonly difference: number;
    readonly hemAngle: number;
    readonly waistAngle: number;
  }[];
  readonly waist: { readonly sewn: number; readonly bodice: number; readonly difference: number };
  readonly hem: { readonly sewn: number };
  readonly layers: readonly { readonly name: string; readonly hem: string; readonly sewnHem: number }[];
  readonly finishing?: readonly {
    readonly part: string;
    readonly layer: string;
    readonly copies: number;
    readonly edges: Readonly<Record<string, number>>;
  }[];
  readonly pattern?: { readonly paper: string; readonly sheets: readonly Sheet[] };
  readonly findings: readonly {
    readonly code: string;
    readonly level: string;
    readonly line: number;
    readonly column: number;
  }[];
}

export interface Sheet {
  readonly page: number;
  readonly label: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly bottom: number;
}

export function measuredGown(svg: string, report: Report, facts: GownFacts): MeasuredGown {
  const pattern = readPattern(svg);
  const opened = new Map<object, Gore>();
  const layers = facts.layers.map((layer) => ({
    layer,
    gores: facts.gores.map((gore) => {
      if (!layer.gores.includes(gore.name)) return undefined;
      const pieces = pattern.pieces.filter(
        (p) => p.part === undefined && p.gore === gore.name && p.layers.includes(layer.name),
      );
      if (pieces.length !== 1)
        throw new Error(`${pieces.length} pieces for ${gore.name} of layer ${layer.name}`);
      const piece = pieces[0]!;
      if (!opened.has(piece)) opened.set(piece, goreOf(piece, gore.frontEdge, gore.backEdge));
      return opened.get(piece)!;
    }),
  }));
  return { facts, pattern, report, layers };
}
