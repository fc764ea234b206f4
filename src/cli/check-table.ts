import { safeText } from '../diagnostics/safe-text.ts';
import type { Units } from '../diagnostics/units.ts';
import type { GownReport } from '../report/gown-report.ts';
import { textTable } from './text-table.ts';

/** The draft's figures as a maker checks them: lengths in the spec's units, differences in mm. */
export function checkTable(report: GownReport, units: Units): string {
  const length = lengthIn(units);
  const client = report.client === undefined ? '' : `, ${safeText(report.client)}`;
  return [
    `${safeText(report.gown)}${client}: content ${report.content}, lengths in ${units}\n`,
    ...skirtTables(report, length),
    ...(report.parts.length === 0 ? [] : [partTable(report, length)]),
    ...report.overskirts.flatMap((overskirt) => [
      `${safeText(overskirt.gown)}: an overskirt\n`,
      ...skirtTables(overskirt, length),
    ]),
  ].join('\n');
}

type InUnits = (millimetres: number) => string;

function skirtTables(report: GownReport, length: InUnits): string[] {
  return [
    textTable([
      ['gore', 'cut', 'top', 'hem', 'flare', 'tightest radius'],
      ...report.gores.map((gore) => [
        sided(gore),
        gore.onFold ? 'half, on fold' : gore.copies === 1 ? 'single' : 'pair',
        length(gore.top),
        length(gore.hem),
        `${gore.flareDegrees.toFixed(1)}°`,
        gore.tightestRadius === null ? 'straight' : length(gore.tightestRadius),
      ]),
    ]),
    stationTable(report, length),
    textTable([
      ['seam', 'front side', 'back side', 'differ', 'waist angles', 'hem angles', 'hem off square'],
      ...report.seams.map((seam) => [
        sided(seam),
        length(seam.lengths[0]),
        length(seam.lengths[1]),
        millimetres(seam.difference),
        `${seam.waistAngle.toFixed(2)}°`,
        `${seam.hemAngle.toFixed(2)}°`,
        `${seam.hemOffSquare.toFixed(1)}°`,
      ]),
    ]),
    textTable([
      ['all round', 'sewn'],
      [
        'waist',
        length(report.waist.sewn),
        `bodice ${length(report.waist.bodice)}, differ ${millimetres(report.waist.difference)}`,
      ],
      ['hem', length(report.hem.sewn)],
      ...report.layers.map((layer) => [`hem of ${safeText(layer.name)}`, length(layer.sewnHem)]),
    ]),
  ];
}

/** `side left` where her two sides differ. */
function sided({ name, side }: { readonly name: string; readonly side?: 'left' | 'right' }): string {
  return side === undefined ? name : `${name} ${side}`;
}

/** Each part's edges as they run round it: top, side, hem, side. */
function partTable(report: GownReport, length: InUnits): string {
  return textTable([
    ['part', 'in layer', 'copies', 'edges of each'],
    ...report.parts.map((part) => [
      part.name,
      part.layer,
      String(part.copies),
      Object.entries(part.edges)
        .map(([name, edge]) => `${name} ${length(edge)}`)
        .join(', '),
    ]),
  ]);
}

/** A column for the lengths as worn only where they are not as given. */
function stationTable(report: GownReport, length: InUnits): string {
  const moved = report.stations.some(({ given, asWorn }) => given !== asWorn);
  const orFilledIn = (mm: number | null): string => (mm === null ? 'filled in' : length(mm));
  return textTable([
    ['station', 'below the waist', 'given', ...(moved ? ['as worn'] : []), 'waist seam to hem'],
    ...report.stations.map((station) => [
      sided(station),
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
