import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { Gown } from '../gown/gown.ts';
import type { Skirt } from './skirt.ts';

/** What every part of the workroom starts from. */
export interface Bench {
  readonly gown: Gown;
  readonly skirt: Skirt;
  /** A length in the spec's units, for a finding. */
  readonly say: (mm: number) => string;
}

export function benchOf(gown: Gown, skirt: Skirt): Bench {
  return { gown, skirt, say: (mm) => tapeText(mm, gown.units) };
}

/** A part of the workroom's figures, and what was found on the way. */
export interface Found<T> {
  readonly facts: T;
  readonly findings: readonly Diagnostic[];
}

/** `12.5 %`. */
export function percentText(share: number): string {
  return `${Number((share * 100).toFixed(1))} %`;
}
