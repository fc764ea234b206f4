import type { DartSpec, GoreSpec, LengthsSpec, TrainSpec } from '../gown-file/spec.ts';
import type { WrapLines } from './lines.ts';
import type { PlaceIn } from './placed.ts';
import type { Petticoat } from './sections.ts';
import type { GirthLevel } from './slant-levels.ts';
import type { Tape } from './worn-lengths.ts';

/** Of a gown or an overskirt: all that decides its lines. */
export interface LinesAsked {
  readonly name: string;
  readonly round: 'mirrored' | 'ring';
  readonly gores: readonly GoreSpec[];
  readonly lengths: LengthsSpec;
  readonly train?: TrainSpec;
  readonly sweep?: number;
  /** Its girths decide the widths of gores that have none. */
  readonly petticoat?: Petticoat;
  /** So do those of her body, as far as they go; below them the sweep. */
  readonly fitted?: FittedTo;
  /** Darts at the waist of its gores. */
  readonly darts?: readonly DartSpec[];
  readonly waistSeam: number;
  readonly panels: Readonly<Record<string, number>>;
  /** The sewn edge below the level waist, by station. */
  readonly drops: Readonly<Record<string, number>>;
  readonly point?: string;
  /** What is taken off a length that was measured with its turnings. */
  readonly turnings: number;
  readonly roughCut: Readonly<Record<string, number>>;
  /** Stations in order; all the way round without the first one again. */
  readonly names: readonly string[];
  readonly free: readonly string[];
  readonly wrap?: WrapLines;
  readonly tape: Tape;
  readonly place: PlaceIn<[]>;
}

/** Her girths below the waist that the gores follow, their ease in them, from the waist down; mm. */
export interface FittedTo {
  readonly levels: readonly (GirthLevel & { readonly front?: number })[];
  /** Where front and back girths part, where that is known. */
  readonly sideSeam?: string;
}
