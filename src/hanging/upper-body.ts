/** What stands above the waist, at a height above it. mm. */
export interface UpperBody {
  readonly girthAt: (above: number) => number;
  /** Depth from front to back for one of width. */
  readonly roundnessAt: (above: number) => number;
  /** How far before the middle of her waist the middle of a level lies. */
  readonly forwardAt: (above: number) => number;
}

export interface KnownGirth {
  readonly above: number;
  readonly girth: number;
}

/** Where the bust is, above the waist, and where the arms begin, for one of her height (from memory: drawing manuals). */
const BUST = 0.095;
const ARMPIT = 0.13;
/** Girth of the bust over the waist where nobody measured it, mm (EN 13402-3, from memory: 68 to 84, 20). */
const BUST_OVER_WAIST = 200;
/** Of the chest above the arms, for one of the bust. From memory. */
const CHEST_SHARE = 0.96;

/** Rounder at the bust than at the waist, flat across the shoulder-blades and chest; the bust stands before them. From memory. */
const LEVELS = [
  { part: 0, roundness: 0.76, forward: 0 },
  { part: 0.5, roundness: 0.78, forward: 0.001 },
  { part: 1, roundness: 0.88, forward: 0.01 },
  { part: 1.4, roundness: 0.76, forward: 0.004 },
  { part: 1.9, roundness: 0.66, forward: -0.002 },
] as const;

/**
 * @param known girths as they are sewn or measured; what is missing is as it usually is for her waist
 * @param tall her height
 */
export function upperBody(waist: number, tall: number, known: readonly KnownGirth[]): UpperBody {
  const bustAbove = known.length > 0 ? widest(known, BUST * tall) : BUST * tall;
  const levels = [...known].sort((a, b) => a.above - b.above);
  if (!levels.some(({ above }) => above <= 0)) levels.unshift({ above: 0, girth: waist });
  if (!levels.some(({ above }) => above > 0.05 * tall)) {
    const bust = waist + BUST_OVER_WAIST;
    levels.push({ above: bustAbove, girth: bust }, { above: ARMPIT * tall, girth: bust * CHEST_SHARE });
  }
  const shape = LEVELS.map(({ part, roundness, forward }) => ({
    above: part * bustAbove,
    roundness,
    forward: forward * tall,
  }));
  return {
    girthAt: (above) => smoothThrough(levels, above, ({ girth }) => girth),
    roundnessAt: (above) => smoothThrough(shape, above, ({ roundness }) => roundness),
    forwardAt: (above) => smoothThrough(shape, above, ({ forward }) => forward),
  };
}

function widest(known: readonly KnownGirth[], usual: number): number {
  const high = known.filter(({ above }) => above > usual / 2);
  if (high.length === 0) return usual;
  return high.reduce((best, level) => (level.girth > best.girth ? level : best)).above;
}

/** Between levels as a hand would draw it: Catmull-Rom over uneven distances, level beyond the last (Catmull, Rom 1974). */
function smoothThrough<Level extends { readonly above: number }>(
  levels: readonly Level[],
  above: number,
  of: (level: Level) => number,
): number {
  const last = levels.length - 1;
  if (above <= levels[0]!.above) return of(levels[0]!);
  if (above >= levels[last]!.above) return of(levels[last]!);
  const next = levels.findIndex((level) => level.above >= above);
  const [a, b] = [levels[next - 1]!, levels[next]!];
  const span = b.above - a.above;
  const t = (above - a.above) / span;
  const slope = (from: Level | undefined, to: Level | undefined): number =>
    from === undefined || to === undefined ? 0 : ((of(to) - of(from)) * span) / (to.above - from.above);
  const [into, out] = [slope(levels[next - 2], b), slope(a, levels[next + 1])];
  const [t2, t3] = [t * t, t * t * t];
  return (
    of(a) * (2 * t3 - 3 * t2 + 1) + into * (t3 - 2 * t2 + t) + of(b) * (3 * t2 - 2 * t3) + out * (t3 - t2)
  );
}
