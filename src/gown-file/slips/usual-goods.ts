import { PRACTICE, type Usual } from './usual.ts';

/** Cloths, trims, how they are sold, and paper. */
export const GOODS = {
  clothWidth: {
    least: 850,
    most: 3300,
    typical: 1400,
    of: 'a cloth',
    source: 'cloths are sold 90, 112, 137, 140 and 150 cm wide, tulle to 300: common practice',
  },
  selvedge: {
    least: 5,
    most: 20,
    typical: 10,
    of: 'one selvedge',
    source: `0.5 to 1.5 cm, ${PRACTICE}`,
  },
  clothWeight: {
    least: 8,
    most: 700,
    typical: 150,
    of: 'a cloth',
    source:
      'tulle 10 to 25, chiffon 20, velvet 200 to 350 g/m²: converted from momme, the heavy ones from memory',
    kind: 'weight',
  },
  shrinkage: {
    least: 0.002,
    most: 0.08,
    typical: 0.03,
    of: 'the shrinkage of a cloth',
    source: 'textbook: silk satin about 5 %',
    kind: 'share',
  },
  repeat: { least: 5, most: 1000, typical: 300, of: 'a repeat', source: 'from memory' },
  edgingDepth: { least: 5, most: 300, typical: 60, of: 'an edging', source: PRACTICE },
  edgingRepeat: { least: 5, most: 600, typical: 120, of: 'the repeat of an edging', source: PRACTICE },
  scallop: { least: 2, most: 80, typical: 15, of: 'a scallop', source: PRACTICE },
  trimWidth: { least: 3, most: 200, typical: 20, of: 'a trim', source: `braid to 15 cm, ${PRACTICE}` },
  notionLength: {
    least: 50,
    most: 5000,
    possible: [20, 30_000],
    typical: 800,
    of: 'a notion sold by length',
    source: PRACTICE,
  },
  soldBy: {
    least: 50,
    most: 1000,
    possible: [10, 5000],
    typical: 100,
    of: 'the step that a shop sells by',
    source: 'textbook: 0.1 to 0.5 m, 1/8 yd',
  },
  lap: { least: 3, most: 30, typical: 10, of: 'the lap of two sheets', source: PRACTICE },
  margin: {
    least: 3,
    most: 20,
    typical: 10,
    of: 'the margin of a sheet',
    source: "printers' manuals: 1.8 to 12.7 mm",
  },
} as const satisfies Readonly<Record<string, Usual>>;
