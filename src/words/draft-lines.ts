/** The figures of a report that are read aloud; mm, degrees. */
export interface DraftFigures {
  readonly waist: { readonly sewn: number };
  readonly hem: { readonly sewn: number };
  readonly layers: readonly { readonly name: string; readonly sewnHem: number }[];
  readonly stations: readonly { readonly name: string; readonly length: number }[];
  readonly gores: readonly {
    readonly name: string;
    readonly side?: 'left' | 'right';
    readonly top: number;
    readonly hem: number;
    readonly flareDegrees: number;
  }[];
}

/** What the draft makes of it, to a tenth of a millimetre. */
export function draftLines(report: DraftFigures): string[] {
  const mm = (length: number): string => `${Number(length.toFixed(1))} mm`;
  return [
    `drafted waist all round: ${mm(report.waist.sewn)}`,
    `drafted hem all round: ${mm(report.hem.sewn)}`,
    ...report.layers.map(({ name, sewnHem }) => `drafted hem of ${name}: ${mm(sewnHem)}`),
    ...report.stations.map(({ name, length }) => `drafted ${name}: ${mm(length)} from waist seam to hem`),
    ...report.gores.map(
      ({ name, side, top, hem, flareDegrees }) =>
        `drafted gore ${side === undefined ? name : `${name} ${side}`}: top ${mm(top)}, hem ${mm(hem)}, flare ${Number(flareDegrees.toFixed(2))}°`,
    ),
  ];
}
