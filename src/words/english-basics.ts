import { inWords } from '../diagnostics/in-words.ts';
import { tapeNumber, tapeText } from '../diagnostics/tape-text.ts';
import type { Units } from '../diagnostics/units.ts';
import type { BustlePlace } from '../gown/bustle-place.ts';
import type { StripFacts } from '../making/supplies/strip-facts.ts';
import { decimalText, type Fraction } from '../money/fraction.ts';

/** The small words that every sentence is made with, bound to the spec's units. */
export interface Basics {
  readonly unit: Units;
  readonly length: (mm: number) => string;
  /** Without its unit. */
  readonly number: (mm: number) => string;
  /** As fine as a chalk table is rounded. */
  readonly chalkNumber: (mm: number) => string;
  readonly percent: (share: number) => string;
  readonly percentExact: (share: Fraction) => string;
  readonly weight: (grams: number) => string;
  /** Of cloth. */
  readonly area: (mm2: number) => string;
  readonly metres: (mm: number) => string;
  /** Rounded up, for what is bought by the reel. */
  readonly wholeMetres: (mm: number) => string;
  /** A length that is paid for, in the unit that its price is for. */
  readonly lengthPriced: (mm: number, pricedPer: number) => string;
  readonly hours: (hours: Fraction) => string;
  /** Small measures of the trade, as a maker with this tape says them. */
  readonly usual: {
    readonly swatch: string;
    readonly pins: string;
    readonly lap: string;
    readonly roll: string;
  };
  readonly list: (names: readonly string[]) => string;
  /** With the wearer's side where there are two of that name: `left side-front/side`. */
  readonly station: (name: string, side?: 'left' | 'right') => string;
  /** Where a point of the bustle is: `back, 50 % across`. */
  readonly bustleAt: (place: BustlePlace) => string;
  readonly seamsOf: (name: string, copies: number) => string;
  readonly edge: (along: string) => string;
  readonly stripName: (kind: StripFacts['kind']) => string;
  /** `Saturday 12 June 2027`. */
  readonly date: (iso: string, weekday?: number) => string;
  /** `Sat 12 Jun 2027`. */
  readonly shortDate: (iso: string, weekday: number) => string;
}

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];
const STRIPS: Readonly<Record<StripFacts['kind'], string>> = {
  horsehair: 'horsehair braid',
  binding: 'binding',
  'stay-tape': 'stay tape',
};

export function englishBasics(units: Units): Basics {
  const plain = (name: string): string =>
    name
      .replace(/^centre-(front|back)$/, 'centre $1')
      .replace(/^(upper|inner|front|back|long|other-long)-(edge|end)$/, '$1 $2');
  return {
    unit: units,
    length: (mm) => tapeText(mm, units),
    number: (mm) => tapeNumber(mm, units),
    chalkNumber: (mm) => tapeNumber(mm, units, 32),
    percent: (share) => `${Number((share * 100).toFixed(1))} %`,
    percentExact: (share) => `${trimmed(decimalText({ ...share, numerator: share.numerator * 100n }, 2))} %`,
    weight: (grams) =>
      units === 'in'
        ? poundsText(grams)
        : grams < 1000
          ? `${Math.round(grams)} g`
          : `${(grams / 1000).toFixed(2)} kg`,
    area: (mm2) => (units === 'in' ? `${(mm2 / 914.4 ** 2).toFixed(2)} yd²` : `${(mm2 / 1e6).toFixed(2)} m²`),
    metres: (mm) => (units === 'in' ? `${(mm / 914.4).toFixed(2)} yd` : `${(mm / 1000).toFixed(2)} m`),
    wholeMetres: (mm) => (units === 'in' ? `${Math.ceil(mm / 914.4)} yd` : `${Math.ceil(mm / 1000)} m`),
    lengthPriced: (mm, pricedPer) =>
      pricedPer === 914.4 ? `${trimmed((mm / 914.4).toFixed(3))} yd` : `${trimmed((mm / 1000).toFixed(3))} m`,
    hours: (hours) => trimmed(decimalText(hours, 2)),
    usual:
      units === 'in'
        ? { swatch: '8 in', pins: '3 in', lap: '1/2 in', roll: '1/8 in' }
        : { swatch: '20 cm', pins: '7.5 cm', lap: '1.3 cm', roll: '2 to 3 mm' },
    list: inWords,
    station: (name, side) => (side === undefined ? plain(name) : `${side} ${plain(name)}`),
    bustleAt: ({ seam, gore, across }) =>
      seam === undefined ? `${plain(gore)}, ${Number((across * 100).toFixed(1))} % across` : plain(seam),
    seamsOf: (name, copies) => (copies === 1 ? plain(name) : `${plain(name)} (${copies})`),
    edge: (along) => (along === 'hem' || along === 'waist' ? along : `${plain(along)} seam`),
    stripName: (kind) => STRIPS[kind],
    date: (iso, weekday) => {
      const [year, month, day] = iso.split('-').map(Number) as [number, number, number];
      const text = `${day} ${MONTHS[month - 1]} ${year}`;
      return weekday === undefined ? text : `${WEEKDAYS[weekday]} ${text}`;
    },
    shortDate: (iso, weekday) => {
      const [year, month, day] = iso.split('-').map(Number) as [number, number, number];
      return `${short(WEEKDAYS[weekday])} ${day} ${short(MONTHS[month - 1])} ${year}`;
    },
  };
}

/** Ounces up to a pound, then pounds. */
function poundsText(grams: number): string {
  const ounces = grams / 28.349523125;
  return ounces < 16 ? `${ounces.toFixed(1)} oz` : `${(ounces / 16).toFixed(2)} lb`;
}

/** Enough of a day's or a month's name to know it by. */
function short(name: string | undefined): string {
  return (name ?? '').slice(0, 3);
}

function trimmed(decimal: string): string {
  return decimal.includes('.') ? decimal.replace(/(?<!0)0+$|\.0+$/, '') : decimal;
}
