import type { Span } from '../../diagnostics/diagnostic.ts';
import type { CutPiece } from '../../draft/piece.ts';
import type { ClothSpec } from '../../gown-file/spec.ts';
import type { ClothFacts } from './lay-plan.ts';

/** One layer to lay. */
export interface LayerToLay {
  readonly layer: string;
  readonly cloth: string;
  readonly pieces: readonly CutPiece[];
  readonly spec: ClothSpec;
  readonly facts: ClothFacts;
  /** Allowance of a join along the grain, mm. */
  readonly seam: number;
  readonly span: Span;
  readonly say: (mm: number) => string;
}
