/** A step in words: what to do, what it needs or how, and where to stop. */
export interface StepText {
  readonly does: string;
  readonly notes: readonly string[];
  /** Printed after “Hold”. */
  readonly holds: readonly string[];
}

export function text(
  does: string,
  notes: readonly (string | false)[] = [],
  holds: readonly (string | false)[] = [],
): StepText {
  const kept = (lines: readonly (string | false)[]): string[] => lines.filter((line) => line !== false);
  return { does, notes: kept(notes), holds: kept(holds) };
}
