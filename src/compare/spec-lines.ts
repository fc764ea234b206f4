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
