import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Amount } from '../money/money.ts';
import type { CutVersion } from './compare-pieces.ts';
import type { LayFigures } from './lay-changes.ts';

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
