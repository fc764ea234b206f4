import { type ClothState, clothStates } from './cloth-state.ts';
import { type CutVersion, comparePieces, type PieceChanges } from './compare-pieces.ts';
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

/** What a comparison may know beside the two versions. */
export interface BesideVersions {
  readonly sheets?: SheetChanges;
  /** By layer: the version that its cloth was cut from, where that is neither the old nor the new one. */
  readonly cutFrom?: ReadonlyMap<string, CutVersion & { readonly name: string }>;
}

/** What changed between two versions of a gown, and what it means for cloth that was cut by an earlier one. */
export function compare(
  old: GownVersion,
  now: GownVersion,
  { sheets, cutFrom = new Map() }: BesideVersions = {},
): Comparison {
  return {
    old,
    now,
    spec: specChanges(old.spec, now.spec),
    pieces: piecesOnTable(old, now, cutFrom),
    cloth: clothStates(old, now, cutFrom),
    lays: layChanges(old.lays, now.lays),
    ...(sheets === undefined ? {} : { sheets }),
    findings: findingChanges(old.findings, now.findings),
  };
}

/** Each layer against the version that its cloth was cut from. */
function piecesOnTable(
  old: GownVersion,
  now: GownVersion,
  cutFrom: NonNullable<BesideVersions['cutFrom']>,
): PieceChanges {
  const versions = [...new Set(cutFrom.values())].map((version) => ({
    version,
    pieces: comparePieces(version, now),
  }));
  const plain = comparePieces(old, now);
  const forLayer = (layer: string): PieceChanges =>
    versions.find(({ version }) => version === cutFrom.get(layer))?.pieces ?? plain;
  const all = [plain, ...versions.map(({ pieces }) => pieces)];
  return {
    changes: plain.changes.map((change, i) => forLayer(change.layer).changes[i]!),
    dropped: all.flatMap((pieces) => pieces.dropped.filter(({ layer }) => forLayer(layer) === pieces)),
  };
}
