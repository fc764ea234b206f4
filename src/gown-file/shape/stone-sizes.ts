/** Seed beads: grams for a thousand, worked out from counts per 10 g (2715, 1050, 347, 150) that one seller publishes. */
const BEAD_GRAMS: Readonly<Record<string, number>> = { '15/0': 3.68, '11/0': 9.52, '8/0': 28.8, '6/0': 66.7 };

/** Diameter, mm: of seed beads from memory (makers differ); of flat-backed stones the middle of what one seller publishes. */
const DIAMETERS: Readonly<Record<string, number>> = {
  '15/0': 1.5,
  '11/0': 2.1,
  '8/0': 3,
  '6/0': 4,
  SS12: 3.1,
  SS16: 3.9,
  SS20: 4.7,
  SS30: 6.4,
};

/** What stones and beads are sold as. */
export const SOLD_AS = ['15/0', '11/0', '8/0', '6/0', 'SS12', 'SS16', 'SS20', 'SS30'] as const;

/** mm. */
export function diameterOf(soldAs: (typeof SOLD_AS)[number]): number {
  return DIAMETERS[soldAs]!;
}

/** Grams for a thousand, where they are published. */
export function gramsOf(soldAs: (typeof SOLD_AS)[number]): number | undefined {
  return BEAD_GRAMS[soldAs];
}
