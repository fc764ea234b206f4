/** A paper that pieces are printed on, upright, mm. */
export interface Paper {
  /** As written in the spec and in file names. */
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/**
 * The paper of that name, or undefined. A-sizes by ISO 216; Letter, Legal and Tabloid by ANSI/ASME Y14.1, exact in
 * inches.
 */
export function paperNamed(name: string): Paper | undefined {
  return PAPERS.find((paper) => paper.name === name.toLowerCase());
}

const INCH = 25.4;

export const PAPERS: readonly Paper[] = [
  { name: 'a4', width: 210, height: 297 },
  { name: 'a3', width: 297, height: 420 },
  { name: 'letter', width: 8.5 * INCH, height: 11 * INCH },
  { name: 'legal', width: 8.5 * INCH, height: 14 * INCH },
  { name: 'tabloid', width: 11 * INCH, height: 17 * INCH },
];
