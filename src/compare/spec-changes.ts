import type { Scalar, SpecValue } from '../diagnostics/value-words.ts';
import type { Spec } from '../gown-file/spec.ts';
import { specValues } from './spec-values.ts';

/** A value that the two specs give differently; absent where one does not give it. */
export interface SpecChange {
  readonly path: string;
  readonly old?: SpecValue;
  readonly now?: SpecValue;
}

/** What a spec says differently: comments, the order of keys and the units that it is written in make no difference. */
export function specChanges(old: Spec, now: Spec): SpecChange[] {
  const before = specValues(old);
  const after = specValues(now);
  const paths = [...after.keys(), ...[...before.keys()].filter((path) => !after.has(path))];
  return inSections(paths).flatMap((path): SpecChange[] => {
    const was = before.get(path);
    const is = after.get(path);
    if (was !== undefined && is !== undefined && alike(was, is)) return [];
    return [{ path, ...(was === undefined ? {} : { old: was }), ...(is === undefined ? {} : { now: is }) }];
  });
}

/** Sections in the order of the new spec, what is only in the old one at the end of its section. */
function inSections(paths: readonly string[]): string[] {
  const sectionOf = (path: string) => path.split('.')[0]!;
  const sections = [...new Set(paths.map(sectionOf))];
  return sections.flatMap((section) => paths.filter((path) => sectionOf(path) === section));
}

function alike(a: SpecValue, b: SpecValue): boolean {
  if (a.kind !== b.kind || Array.isArray(a.value) !== Array.isArray(b.value)) return false;
  const [left, right] = [listed(a), listed(b)];
  return left.length === right.length && left.every((value, i) => alikeScalars(value, right[i]!, a.kind));
}

/** mm, radians and fractions agree to a millionth: beyond that is only how a unit was multiplied out. */
const AGREE = 1e-6;

function alikeScalars(a: Scalar, b: Scalar, kind: SpecValue['kind']): boolean {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= AGREE;
  if ((kind === 'money' || kind === 'hours') && typeof a === 'string' && typeof b === 'string')
    return plainDecimal(a) === plainDecimal(b);
  return a === b;
}

/** `24.50` and `24.5` are one amount. */
function plainDecimal(text: string): string {
  return text.includes('.') ? text.replace(/(?<!0)0+$|\.0+$/, '') : text;
}

function listed({ value }: SpecValue): readonly Scalar[] {
  return Array.isArray(value) ? (value as readonly Scalar[]) : [value as Scalar];
}
