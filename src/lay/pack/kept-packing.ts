import type { StripPacking, StripPlacement, StripProblem } from './strip-problem.ts';

/** A packing as it is kept: its length, and for each item which of its attitudes it lies in, and where. */
export function packingToKeep({ items }: StripProblem, { length, placements }: StripPacking): unknown {
  const lies = placements.map(({ attitude, x, y }, i) => [
    items[i]!.attitudes.findIndex((own) => isSame(own, attitude)),
    x,
    y,
  ]);
  return [length, lies];
}

/** The packing that was kept, if it can be one of this problem; whether its pieces overlap is for who lays them out. */
export function keptPacking({ items }: StripProblem, kept: unknown): StripPacking | undefined {
  if (!Array.isArray(kept)) return undefined;
  const [length, lies] = kept as unknown[];
  if (!isNumber(length) || length <= 0 || !Array.isArray(lies) || lies.length !== items.length)
    return undefined;
  const placements = lies.map((lie: unknown, i): StripPlacement | undefined => {
    const [choice, x, y] = Array.isArray(lie) ? (lie as unknown[]) : [];
    const attitude = isNumber(choice) ? items[i]!.attitudes[choice] : undefined;
    return attitude !== undefined && isNumber(x) && isNumber(y) ? { attitude, x, y } : undefined;
  });
  return placements.every((placement) => placement !== undefined) ? { length, placements } : undefined;
}

function isSame(a: StripPlacement['attitude'], b: StripPlacement['attitude']): boolean {
  return a.shape === b.shape && a.mirrored === b.mirrored && a.turned === b.turned;
}

function isNumber(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}
