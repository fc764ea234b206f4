import { safeText } from '../diagnostics/safe-text.ts';
import type { Units } from '../diagnostics/units.ts';
import type { GownReport } from '../report/gown-report.ts';
import { ENGLISH_CHECK as words } from '../words/english-tables.ts';
import { textTable } from './text-table.ts';

/** The draft's figures as a maker checks them: lengths in the spec's units, differences in mm. */
export function checkTable(report: GownReport, units: Units): string {
  const length = lengthIn(units);
  const client = report.client === undefined ? undefined : safeText(report.client);
  return [
    words.title(safeText(report.gown), client, report.content, units),
    ...skirtTables(report, length),
    ...(report.parts.length === 0 ? [] : [partTable(report, length)]),
    ...report.overskirts.flatMap((overskirt) => [
      words.overskirt(safeText(overskirt.gown)),
      ...skirtTables(overskirt, length),
    ]),
  ].join('\n');
}

type InUnits = (millimetres: number) => string;

function skirtTables(report: GownReport, length: InUnits): string[] {
  return [
    textTable([
      words.goreHeads,
      ...report.gores.map((gore) => [
        words.sided(gore.name, gore.side),
        words.cut[gore.onFold ? 'onFold' : gore.copies === 1 ? 'single' : 'pair'],
        length(gore.top),
        length(gore.hem),
        `${gore.flareDegrees.toFixed(1)}°`,
        gore.tightestRadius === null ? words.straight : length(gore.tightestRadius),
      ]),
    ]),
    stationTable(report, length),
    textTable([
      words.seamHeads,
      ...report.seams.map((seam) => [
        words.sided(seam.name, seam.side),
        length(seam.lengths[0]),
        length(seam.lengths[1]),
        millimetres(seam.difference),
        `${seam.waistAngle.toFixed(2)}°`,
        `${seam.hemAngle.toFixed(2)}°`,
        `${seam.hemOffSquare.toFixed(1)}°`,
      ]),
    ]),
    textTable([
      words.roundHeads,
      [
        words.waist,
        length(report.waist.sewn),
        words.waistOf(length(report.waist.bodice), millimetres(report.waist.difference)),
      ],
      [words.hem, length(report.hem.sewn)],
      ...report.layers.map((layer) => [words.hemOf(safeText(layer.name)), length(layer.sewnHem)]),
    ]),
  ];
}

/** Each part's edges as they run round it: top, side, hem, side. */
function partTable(report: GownReport, length: InUnits): string {
  return textTable([
    words.partHeads,
    ...report.parts.map((part) => [
      part.name,
      part.layer,
      String(part.copies),
      Object.entries(part.edges)
        .map(([name, edge]) => words.edge(name, length(edge)))
        .join(', '),
    ]),
  ]);
}

/** A column for the lengths as worn only where they are not as given. */
function stationTable(report: GownReport, length: InUnits): string {
  const moved = report.stations.some(({ given, asWorn }) => given !== asWorn);
  const orFilledIn = (mm: number | null): string => (mm === null ? words.filledIn : length(mm));
  return textTable([
    words.stationHeads(moved),
    ...report.stations.map((station) => [
      words.sided(station.name, station.side),
      length(station.drop),
      orFilledIn(station.given),
      ...(moved ? [orFilledIn(station.asWorn)] : []),
      length(station.length),
    ]),
  ]);
}

const DECIMALS: Readonly<Record<Units, number>> = { mm: 1, cm: 2, in: 3 };
const MILLIMETRES: Readonly<Record<Units, number>> = { mm: 1, cm: 10, in: 25.4 };

function lengthIn(units: Units): InUnits {
  return (length) => (length / MILLIMETRES[units]).toFixed(DECIMALS[units]);
}

function millimetres(length: number): string {
  return `${length.toFixed(2)} mm`;
}
