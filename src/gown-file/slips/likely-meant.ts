/**
 * What was meant by a number with one slip in it: a decimal left out or moved, a digit typed twice, left out or swapped
 * with the next, inches in a file of centimetres or the reverse. As it would be written, without a unit where the slip
 * has none; nothing where no plain slip leads to a figure that fits. `units` of `oz` stands for a weight in a file of inches. `mayLack`: whether a digit may be missing, which fits
 * too much unless it is well known what to expect.
 */
export function likelyMeant(
  text: string,
  expected: number,
  fits: (factor: number) => boolean,
  units: string | undefined,
  mayLack: boolean,
): string | undefined {
  const match = /^([-−]?)(\d+(?:\.\d*)?|\.\d+)\s*([a-z"″]*)$/i.exec(text.trim());
  if (match === null) return undefined;
  const [, sign = '', digits = '', unit = ''] = match;
  const value = Number(digits);
  if (!(value > 0)) return undefined;
  let best: { readonly text: string; readonly far: number } | undefined;
  for (const { text: repaired, factor, cost } of repairs(digits, value, unit, units, mayLack)) {
    if (!fits(factor)) continue;
    const far = Math.abs(Math.log(Math.abs(expected) / factor)) + cost;
    if (best === undefined || far < best.far - 1e-12) best = { text: `${sign}${repaired}`, far };
  }
  return best?.text;
}

interface Repair {
  readonly text: string;
  /** Times the value as written. */
  readonly factor: number;
  /** How much farther off a rarer slip counts: a decimal moves more easily than a digit goes missing. */
  readonly cost: number;
}

const MOVED = 0;
const TOO_MANY = 0.02;
const ONE_TOO_MANY = 0.12;
const SWAPPED = 0.05;
const OTHER_UNIT = 0.04;
const LEFT_OUT = 0.1;

function repairs(
  digits: string,
  value: number,
  unit: string,
  units: string | undefined,
  mayLack: boolean,
): Repair[] {
  const found: Repair[] = [];
  const add = (text: string, cost: number) => {
    const meant = Number(text);
    if (meant > 0 && meant !== value)
      found.push({ text: `${plain(meant)}${unit}`, factor: meant / value, cost });
  };
  for (const by of [10, 100, 1000]) {
    add(plain(value / by), MOVED);
    add(plain(value * by), MOVED);
  }
  for (let i = 0; i < digits.length; i++) {
    add(digits.slice(0, i) + digits.slice(i + 1), digits[i] === digits[i + 1] ? TOO_MANY : ONE_TOO_MANY);
    const [here, next] = [digits[i]!, digits[i + 1] ?? ''];
    if (here !== next) add(digits.slice(0, i) + next + here + digits.slice(i + 2), SWAPPED);
  }
  for (let i = 0; mayLack && i <= digits.length; i++)
    for (const digit of '0123456789') add(digits.slice(0, i) + digit + digits.slice(i), LEFT_OUT);
  if (unit === '' && units === 'oz')
    found.push({ text: `${digits}oz/yd2`, factor: OUNCE_PER_SQUARE_YARD, cost: OTHER_UNIT });
  if (unit === '' && units === 'cm') found.push({ text: `${digits}in`, factor: 2.54, cost: OTHER_UNIT });
  if (unit === '' && units === 'in') found.push({ text: `${digits}cm`, factor: 1 / 2.54, cost: OTHER_UNIT });
  return found;
}

/** In g/m²: 28.349523125 g and 0.9144 m, both by definition. */
const OUNCE_PER_SQUARE_YARD = 28.349523125 / 0.9144 ** 2;

/** No exponent and no tail of binary digits. */
const plain = (value: number): string => String(Number(value.toPrecision(10)));
