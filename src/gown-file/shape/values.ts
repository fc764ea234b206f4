import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { lengthText } from '../../diagnostics/length-in-units.ts';
import * as problems from '../../diagnostics/value-problems.ts';
import { nearest } from '../nearest.ts';
import { angleOf, LENGTH_UNITS, lengthOf, parseQuantity, shareOf, weightOf } from '../quantity.ts';
import type { WrittenScalar } from '../written.ts';
import type { Bounds } from './bounds.ts';
import { LENGTH_IN_UNITS, leaf } from './leaf.ts';

/** A length in mm; a bare number is in the file's units unless `bareUnit` says otherwise. */
export function length(bounds: Bounds, bareUnit?: string) {
  const json = bareUnit === undefined ? LENGTH : NUMBER_OR_TEXT;
  return leaf(json, 'a length, such as 98, 98cm or 38 1/2in', (written) => {
    const unit = bareUnit ?? written.file.units;
    const result = millimetres(written, unit);
    if (!('value' in result) || result.unit === undefined) return result;
    return within(written, result.value, bounds, (value) => lengthText(value, written.file.units));
  });
}

/** A step that the shop sells by, and whether it was written in yards. */
export function soldBy(bounds: Bounds) {
  return leaf(LENGTH, 'a length, such as 0.1m or 1/8yd', (written) => {
    const result = millimetres(written, written.file.units);
    if (!('value' in result)) return result;
    const checked = within(written, result.value, bounds, (value) => lengthText(value, written.file.units));
    const inYards = ['in', 'ft', 'yd', '"', '″'].includes(result.unit ?? '');
    return 'value' in checked ? { value: { step: checked.value, inYards } } : checked;
  });
}

/** In mm, and the unit it was read in; none for a bare number in a file whose units are unknown: nobody can judge it. */
function millimetres(written: WrittenScalar, bareUnit: string | undefined) {
  const quantity = parseQuantity(written.text);
  if (quantity === undefined) return problems.notALength(written.span, written.label, written.text);
  const value = lengthOf(quantity, bareUnit ?? 'cm');
  if (value !== undefined) return { value, unit: quantity.unit === '' ? bareUnit : quantity.unit };
  return problems.unknownUnit(
    written.span,
    quantity.unit,
    LENGTH_UNITS,
    nearest(quantity.unit, LENGTH_UNITS),
  );
}

/** An angle in radians; a bare number is in degrees. */
export function angle(bounds: Bounds) {
  return leaf(NUMBER_OR_TEXT, 'an angle, such as 17deg', (written) => {
    const quantity = parseQuantity(written.text);
    const radians = quantity === undefined ? undefined : angleOf(quantity);
    if (radians === undefined) return problems.notAnAngle(written.span, written.label, written.text);
    return within(written, radians, bounds, (value) => `${round((value * 180) / Math.PI, 3)}deg`);
  });
}

/** A fraction of 1. */
export function share(bounds: Bounds) {
  return leaf(NUMBER_OR_TEXT, 'a percentage, such as 3%', (written) => {
    const quantity = parseQuantity(written.text);
    const value = quantity === undefined ? undefined : shareOf(quantity);
    if (value === undefined) return problems.notAShare(written.span, written.label, written.text);
    return within(written, value, bounds, (part) => `${round(part * 100, 4)}%`);
  });
}

/** A cloth's weight in g/m². */
export function weight(bounds: Bounds) {
  return leaf(NUMBER_OR_TEXT, 'a weight in g/m², such as 210', (written) => {
    const quantity = parseQuantity(written.text);
    const value = quantity === undefined ? undefined : weightOf(quantity);
    if (value === undefined) return problems.notAWeight(written.span, written.label, written.text);
    return within(written, value, bounds, (grams) => String(round(grams, 2)));
  });
}

/** Money, hours: decimal text kept as written, never a binary float. */
export function decimal(expected: string) {
  return leaf(
    {
      anyOf: [
        { type: 'number', minimum: 0 },
        { type: 'string', pattern: DECIMAL.source },
      ],
    },
    expected,
    (written) =>
      DECIMAL.test(written.text.trim())
        ? { value: written.text.trim() }
        : problems.notADecimal(written.span, written.label, written.text, expected),
  );
}

export const money = () => decimal('an amount, such as 24.50');
export const hours = () => decimal('hours, such as 41 or 2.5');

/** A whole number. */
export function count(least: number, most: number) {
  return leaf({ type: 'integer', minimum: least, maximum: most }, 'a whole number', (written) => {
    const value = /^\d{1,9}$/.test(written.text.trim()) ? Number(written.text) : Number.NaN;
    return value >= least && value <= most
      ? { value }
      : problems.notACount(written.span, written.label, written.text, least, most);
  });
}

/** How many times, such as fullness: `2.5` or `2.5:1`. */
export function times(bounds: Bounds) {
  return leaf(NUMBER_OR_TEXT, 'a number of times, such as 2.5', (written) => {
    const quantity = parseQuantity(written.text.trim().replace(/(?<!\s)\s*:\s*1$/, ''));
    const value = quantity?.unit === '' ? quantity.numerator / quantity.denominator : undefined;
    if (value === undefined) return problems.notTimes(written.span, written.label, written.text);
    return within(written, value, bounds, String);
  });
}

const NUMBER_OR_TEXT = { type: ['number', 'string'] };
const LENGTH = { ...NUMBER_OR_TEXT, $comment: LENGTH_IN_UNITS };
const DECIMAL = /^\d{1,12}(\.\d{1,4})?$/;

function within(
  written: WrittenScalar,
  value: number,
  bounds: Bounds,
  say: (value: number) => string,
): { value: number } | Diagnostic {
  if (value < 0 && bounds.least >= 0)
    return problems.negative(written.span, written.label, written.text, bounds.of);
  if (value >= bounds.least - SLACK && value <= bounds.most + SLACK) return { value };
  return problems.outOfBounds(
    written.span,
    written.label,
    written.text,
    bounds.of,
    say(bounds.least),
    say(bounds.most),
  );
}

/** What a bound gives way by, for values that are not whole in binary. */
const SLACK = 1e-9;

function round(value: number, decimals: number): number {
  return Number(value.toFixed(decimals));
}
