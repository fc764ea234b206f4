import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { Gown } from '../gown/gown.ts';
import type { Spec } from '../gown-file/spec.ts';
import type { Skirt } from './skirt.ts';

/** What every part of the workroom starts from. */
export interface Bench {
  readonly gown: Gown;
  /** The file's form of `gown`, until every part has moved onto it. */
  readonly spec: Spec;
  readonly skirt: Skirt;
  /** A length in the spec's units, for a finding. */
  readonly say: (mm: number) => string;
}

export function benchOf(gown: Gown, spec: Spec, skirt: Skirt): Bench {
  return { gown, spec, skirt, say: (mm) => tapeText(mm, gown.units) };
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
