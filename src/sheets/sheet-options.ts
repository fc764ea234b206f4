import type { KeptPlace } from './kept-places.ts';
import type { Paper } from './paper.ts';
import type { Margins } from './sheet-frame.ts';

/** Millimetres on paper for one of the pattern, to undo what the printer gets wrong; 1 as a rule. */
export interface Scale {
  readonly across: number;
  readonly down: number;
}

/** How pieces are to be laid on sheets. */
export interface SheetOptions {
  readonly paper: Paper;
  readonly margins: Margins;
  /** Width of a printed strip that the next sheet lies on, mm on paper; 0 to lap on the white margin alone. */
  readonly lap: number;
  /** Millimetres on paper for one of the pattern. */
  readonly scale: Scale;
  /** Every layer's piece apart, also where only the hems differ. */
  readonly layersApart?: boolean;
  /** Leave out sheets that would show only straight stretches of seam and grain: she bridges them with a ruler. */
  readonly endsOnly?: boolean;
  /** Where the pieces lay in an earlier version, to lie there again if they still can. */
  readonly places?: readonly KeptPlace[];
}
