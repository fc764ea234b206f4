import { createHash } from 'node:crypto';
import type { Spec } from './spec.ts';

/** Digits of a hash that are printed on a piece: enough to tell one maker's specs apart, short enough to read out. */
const SHORT = 8;

/**
 * Names what a spec says, not how it is written: comments, the order of keys and the units make no difference, nor
 * does the record of what is cut already: writing this very hash into it must not change it.
 * @returns the first eight hexadecimal digits of a SHA-256
 */
export function contentHash(spec: Spec): string {
  const { places: _places, units: _units, cut: _cut, ...said } = spec;
  return createHash('sha256').update(canonical(said)).digest('hex').slice(0, SHORT);
}

/** JSON with sorted keys, numbers to the nanometre so that 40 in and 101.6 cm are one length. */
export function canonical(value: unknown): string {
  if (typeof value === 'number') return String(Number(value.toFixed(6)));
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const entries = Object.entries(value)
      // What one price is for follows from the units where nothing else is said; without a price it says nothing.
      .filter(([key, own]) => own !== undefined && (key !== 'pricedPer' || 'price' in value))
      .sort(([a], [b]) => (a < b ? -1 : 1));
    return `{${entries.map(([key, own]) => `${JSON.stringify(key)}:${canonical(own)}`).join(',')}}`;
  }
  return JSON.stringify(value) ?? 'null';
}
