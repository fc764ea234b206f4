import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/value-problems.ts';
import { type ValueKind, valueText } from '../../diagnostics/value-text.ts';
import { nearest } from '../nearest.ts';
import { angleOf, LENGTH_UNITS, lengthOf, parseQuantity, shareOf, weightOf } from '../quantity.ts';
import type { WrittenScalar } from '../written.ts';
import type { Bounds } from './bounds.ts';
import { LENGTH_IN_UNITS, leaf } from './leaf.ts';

/** A length in mm; a bare number is in the file's units unless `bareUnit` says otherwise. */
export function length(bounds: Bounds, bareUnit?: string) {
  const json = bareUnit === undefined ? LENGTH : NUMBER_OR_TEXT;
  return leaf('length', json, 'a length, such as `98`, `98cm` or `38 1/2in`', (written) => {
    const unit = bareUnit ?? written.file.units;
    const result = millimetres(written, unit);
    if (!('value' in result) || result.unit === undefined) return result;
    return within('length', written, result.value, bounds);
  });
}

/** A step that the shop sells by, and whether it was written in yards. */
export function soldBy(bounds: Bounds) {
  return leaf('length', LENGTH, 'a length, such as `0.1m` or `1/8yd`', (written) => {
    const result = millimetres(written, written.file.units);
    if (!('value' in result)) return result;
    const checked = within('length', written, result.value, bounds);
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
  return leaf('angle', NUMBER_OR_TEXT, 'an angle, such as `17deg`', (written) => {
    const quantity = parseQuantity(written.text);
    const radians = quantity === undefined ? undefined : angleOf(quantity);
    if (radians === undefined) return problems.notAnAngle(written.span, written.label, written.text);
    return within('angle', written, radians, bounds);
  });
}

/** A fraction of 1. */
export function share(bounds: Bounds) {
  return leaf('share', NUMBER_OR_TEXT, 'a percentage, such as `3%`', (written) => {
    const quantity = parseQuantity(written.text);
    const value = quantity === undefined ? undefined : shareOf(quantity);
    if (value === undefined) return problems.notAShare(written.span, written.label, written.text);
    return within('share', written, value, bounds);
  });
}

/** A cloth's weight in g/m². */
export function weight(bounds: Bounds) {
  return leaf('weight', NUMBER_OR_TEXT, 'a weight in g/m², such as 210', (written) => {
    const quantity = parseQuantity(written.text);
    const value = quantity === undefined ? undefined : weightOf(quantity);
    if (value === undefined) return problems.notAWeight(written.span, written.label, written.text);
    return within('weight', written, value, bounds);
  });
}

/** How stiffly a cloth shears, N/m. */
export function stiffness(bounds: Bounds) {
  const expected = 'a stiffness in N/m, such as 40';
  return leaf('times', NUMBER_OR_TEXT, expected, (written) => {
    const quantity = parseQuantity(written.text);
    const value =
      quantity === undefined || !['', 'n/m'].includes(quantity.unit.toLowerCase())
        ? undefined
        : quantity.numerator / quantity.denominator;
    return value === undefined
      ? problems.notOfForm(written.span, written.label, written.text, expected)
      : within('times', written, value, bounds);
  });
}

/** Money and hours are decimal text kept as written, never a binary float. */
export const money = () => decimal('money', AMOUNT, (amount) => amount);
export const hours = () => decimal('hours', 'hours, such as 41 or 2.5', (text) => text);

/** What one metre or yard costs, and whether its file would mean a yard where nothing else says so. */
export const price = () =>
  decimal('money', AMOUNT, (amount, { file }) => ({ amount, inYards: file.units === 'in' }));

const AMOUNT = 'an amount, such as 24.50';

function decimal<T>(
  kind: 'money' | 'hours',
  expected: string,
  value: (text: string, written: WrittenScalar) => T,
) {
  const json = {
    anyOf: [
      { type: 'number', minimum: 0 },
      { type: 'string', pattern: DECIMAL.source },
    ],
  };
  return leaf(kind, json, expected, (written) => {
    const text = written.text.trim();
    return DECIMAL.test(text)
      ? { value: value(text, written) }
      : problems.notADecimal(written.span, written.label, written.text, expected);
  });
}

/** A whole number. */
export function count(least: number, most: number) {
  return leaf('count', { type: 'integer', minimum: least, maximum: most }, 'a whole number', (written) => {
    const value = /^\d{1,9}$/.test(written.text.trim()) ? Number(written.text) : Number.NaN;
    return value >= least && value <= most
      ? { value }
      : problems.notACount(written.span, written.label, written.text, least, most);
  });
}

/** How many times, such as fullness: `2.5` or `2.5:1`. */
export function times(bounds: Bounds) {
  return leaf('times', NUMBER_OR_TEXT, 'a number of times, such as 2.5', (written) => {
    const quantity = parseQuantity(written.text.trim().replace(/(?<!\s)\s*:\s*1$/, ''));
    const value = quantity?.unit === '' ? quantity.numerator / quantity.denominator : undefined;
    if (value === undefined) return problems.notTimes(written.span, written.label, written.text);
    return within('times', written, value, bounds);
  });
}

const NUMBER_OR_TEXT = { type: ['number', 'string'] };
const LENGTH = { ...NUMBER_OR_TEXT, $comment: LENGTH_IN_UNITS };
const DECIMAL = /^\d{1,12}(\.\d{1,4})?$/;

function within(
  kind: ValueKind,
  written: WrittenScalar,
  value: number,
  bounds: Bounds,
): { value: number } | Diagnostic {
  if (value < 0 && bounds.least >= 0)
    return problems.negative(written.span, written.label, written.text, bounds.of);
  if (value >= bounds.least - SLACK && value <= bounds.most + SLACK) return { value };
  const say = (bound: number) => valueText(kind, bound, written.file.units);
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
