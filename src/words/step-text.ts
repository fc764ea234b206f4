import type { Basics } from './english-basics.ts';

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

/** What each kind of work says. */
export type StepWriters<Work extends { readonly kind: string }> = {
  readonly [Kind in Work['kind']]: (work: Extract<Work, { kind: Kind }>, basics: Basics) => StepText;
};

export function sentenceStart(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
