import { tapeText } from './tape-text.ts';
import type { Units } from './units.ts';
import { type ValueKind, valueText } from './value-text.ts';

/** One value of a spec, or a list of values of one kind: mm, radians, fractions, g/m²; money as written. */
export interface SpecValue {
  /** `order`: the names of a list's items, in their order. */
  readonly kind: ValueKind | 'order';
  readonly value: Scalar | readonly Scalar[];
}

export type Scalar = string | number | boolean;

/** A value of a spec as the maker would write it, in her units. */
export function valueWords({ kind, value }: SpecValue, units: Units): string {
  if (Array.isArray(value))
    return (value as readonly Scalar[]).map((one) => scalarWords(kind, one, units)).join(', ');
  return scalarWords(kind, value as Scalar, units);
}

function scalarWords(kind: SpecValue['kind'], value: Scalar, units: Units): string {
  if (typeof value !== 'number' || kind === 'order') return String(value);
  return valueText(kind, value, units);
}

/** How much more or less a measure is; nothing for what cannot be measured. */
export function differenceWords(old: SpecValue, now: SpecValue, units: Units): string {
  if (typeof old.value !== 'number' || typeof now.value !== 'number' || old.kind !== now.kind) return '';
  const by = now.value - old.value;
  const size = scalarWords(now.kind, Math.abs(by), units);
  return `${size} ${by > 0 ? 'more' : 'less'}`;
}

/** What comes off or is left at an edge: to a tenth of a millimetre, or in sixteenths of an inch from there on. */
export function edgeWords(mm: number, units: Units): string {
  if (units === 'in' && Math.abs(mm) >= SIXTEENTH) return tapeText(mm, 'in');
  return valueText('length', Number(mm.toFixed(1)), 'mm');
}

const SIXTEENTH = 25.4 / 16;
