/** A paper that pieces are printed on, upright, mm. */
export interface Paper {
  /** As it stands in file names. */
  readonly name: string;
  readonly width: number;
  /** Of a roll: the height of the page of instructions. */
  readonly height: number;
  /** A roll: lengths of it are pages, none longer than this. */
  readonly longest?: number;
}

/**
 * The paper of that name, or undefined. A-sizes by ISO 216; Letter, Legal and Tabloid by ANSI/ASME Y14.1, exact in
 * inches. `roll:914` is a copy shop's roll, 914 mm wide; `roll:36in` the same in inches.
 */
export function paperNamed(name: string): Paper | undefined {
  const wanted = name.trim().toLowerCase();
  const [, digits, unit] = /^roll[:-](\d{2,4}(?:\.\d+)?)(mm|cm|in)?$/.exec(wanted) ?? [];
  if (digits !== undefined) return rollOf(Number(digits) * UNITS[unit ?? 'mm']!);
  return PAPERS.find((paper) => paper.name === wanted);
}

/** A paper's name as it is said: A4. */
export function paperText(name: string): string {
  return name.replace(/^a(?=\d)/, 'A');
}

const INCH = 25.4;
const UNITS: Readonly<Record<string, number>> = { mm: 1, cm: 10, in: INCH };

export const PAPERS: readonly Paper[] = [
  { name: 'a4', width: 210, height: 297 },
  { name: 'a3', width: 297, height: 420 },
  { name: 'letter', width: 8.5 * INCH, height: 11 * INCH },
  { name: 'legal', width: 8.5 * INCH, height: 14 * INCH },
  { name: 'tabloid', width: 11 * INCH, height: 17 * INCH },
];

/** Narrower than this there is no room for instructions, wider no roll is made, mm. */
const NARROWEST_ROLL = 280;
const WIDEST_ROLL = 2000;

/**
 * A page of a PDF ends at 14 400 units, 5.08 m (ISO 32000-1); larger units are poorly honoured by viewers. Shops'
 * plotters stop at 5 m as well.
 */
const LONGEST_PAGE = 4990;

function rollOf(width: number): Paper | undefined {
  if (width < NARROWEST_ROLL || width > WIDEST_ROLL) return undefined;
  return { name: `roll-${Math.round(width)}`, width, height: 330, longest: LONGEST_PAGE };
}
