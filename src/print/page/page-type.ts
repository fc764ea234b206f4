/** Type of the papers, mm: the em of each size. Body text is legible at arm's length: 3.5 mm or more. */
export const TYPE = {
  body: 3.6,
  small: 3,
  heading: { 1: 6.4, 2: 4.8, 3: 4 },
  /** Line height as a multiple of the em. */
  leading: 1.3,
} as const;

/** Widths of lines on the papers, mm. */
export const RULE = { hair: 0.2, plain: 0.35 } as const;
