import { type ClothState, clothStates } from './cloth-state.ts';
import { comparePieces, type PieceChanges } from './compare-pieces.ts';
import { type FindingChanges, findingChanges } from './finding-changes.ts';
import type { GownVersion } from './gown-version.ts';
import { type LayChange, layChanges } from './lay-changes.ts';
import { type SpecChange, specChanges } from './spec-changes.ts';

/** Sheets of the pattern, by their labels. */
export interface SheetChanges {
  /** To be printed again. */
  readonly again: readonly string[];
  /** Of the old pattern, not used any more. */
  readonly gone: readonly string[];
  /** Sheets of the new pattern. */
  readonly count: number;
}

export interface Comparison {
  readonly old: GownVersion;
  readonly now: GownVersion;
  readonly spec: readonly SpecChange[];
  readonly pieces: PieceChanges;
  /** By layer: whether cloth is cut, and from which version. */
  readonly cloth: ReadonlyMap<string, ClothState>;
  readonly lays: readonly LayChange[];
  /** Absent where no paper was asked about. */
  readonly sheets?: SheetChanges;
  readonly findings: FindingChanges;
}

/** What changed between two versions of a gown, and what it means for cloth that was cut by the old one. */
export function compare(old: GownVersion, now: GownVersion, sheets?: SheetChanges): Comparison {
  return {
    old,
    now,
    spec: specChanges(old.spec, now.spec),
    pieces: comparePieces(old, now),
    cloth: clothStates(old, now),
    lays: layChanges(old.lays, now.lays),
    ...(sheets === undefined ? {} : { sheets }),
    findings: findingChanges(old.findings, now.findings),
  };
}
