import { type SpecValue, valueWords } from '../diagnostics/value-words.ts';
import type { Spec } from '../gown-file/spec.ts';
import { specValues } from './spec-values.ts';

/**
 * A spec read aloud, a line a value: paths in the order of their sections, lengths in millimetres whatever they were
 * written in, what is assumed written out, notes line by line. Two versions differ in the lines whose meaning differs.
 */
export function specLines(spec: Spec): string[] {
  return [...specValues(spec)]
    .sort(([a], [b]) => byPlace(a, b))
    .flatMap(([path, value]) => valueLines(path, value));
}

/** Order of the sections in a file of the templates; what is not here follows by name. */
const SECTIONS = [
  'format',
  'gown',
  'client',
  'notes',
  'symmetry',
  'bodice',
  'waist',
  'gores',
  'sweep',
  'lengths',
  'train',
];

/** By section, and in it by name, so that the order in which a file gives them makes no difference. */
function byPlace(a: string, b: string): number {
  const place = (path: string): number => {
    const index = SECTIONS.indexOf(path.split('.')[0]!);
    return index < 0 ? SECTIONS.length : index;
  };
  return place(a) - place(b) || (a < b ? -1 : 1);
}

function valueLines(path: string, value: SpecValue): string[] {
  const words = valueWords(value, 'mm');
  if (!words.includes('\n')) return [`${path}: ${words}`];
  return [
    `${path}:`,
    ...words
      .trimEnd()
      .split('\n')
      .map((line) => `  | ${line}`),
  ];
}

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
