import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Amount } from '../workroom/money.ts';
import { type ClothState, clothStates } from './cloth-state.ts';
import { type CutVersion, comparePieces, type PieceChanges } from './compare-pieces.ts';
import { type LayChange, type LayFigures, layChanges } from './lay-changes.ts';
import { type SpecChange, specChanges } from './spec-changes.ts';

/** One version of a gown, with all of it that can change. */
export interface GownVersion extends CutVersion {
  /** As the user named it: `gown.yaml@HEAD~2`. */
  readonly name: string;
  /** The content hash that is printed on its pieces. */
  readonly content: string;
  readonly lays: readonly LayFigures[];
  /** What the client pays, where prices are given. */
  readonly price?: Amount;
  readonly findings: readonly Diagnostic[];
}

export interface Comparison {
  readonly old: GownVersion;
  readonly now: GownVersion;
  readonly spec: readonly SpecChange[];
  readonly pieces: PieceChanges;
  /** By layer: whether cloth is cut, and from which version. */
  readonly cloth: ReadonlyMap<string, ClothState>;
  readonly lays: readonly LayChange[];
  readonly findings: { readonly added: readonly Diagnostic[]; readonly gone: readonly Diagnostic[] };
}

/** What changed between two versions of a gown, and what it means for cloth that was cut by the old one. */
export function compare(old: GownVersion, now: GownVersion): Comparison {
  return {
    old,
    now,
    spec: specChanges(old.spec, now.spec),
    pieces: comparePieces(old, now),
    cloth: clothStates(old, now),
    lays: layChanges(old.lays, now.lays),
    findings: {
      added: now.findings.filter((finding) => !isAmong(old.findings, finding)),
      gone: old.findings.filter((finding) => !isAmong(now.findings, finding)),
    },
  };
}

/** The same finding, wherever its line has moved to. */
function isAmong(findings: readonly Diagnostic[], { code, message }: Diagnostic): boolean {
  return findings.some((one) => one.code === code && one.message === message);
}
