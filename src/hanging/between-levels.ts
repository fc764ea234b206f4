/** Distance between the levels at which a girth is worked out: between them it is nearly straight, mm. */
const LEVELS_APART = 10;

/** A value that is dear to work out, at levels alone, and between two of them in proportion. */
export function betweenLevels(valueAt: (below: number) => number): (below: number) => number {
  const known: number[] = [];
  const at = (level: number): number => {
    known[level] ??= valueAt(level * LEVELS_APART);
    return known[level];
  };
  return (below) => {
    const level = Math.floor(below / LEVELS_APART);
    return at(level) + (at(level + 1) - at(level)) * (below / LEVELS_APART - level);
  };
}
