import type { Wearer } from './figure-lines.ts';
import type { Columns } from './gather-lines.ts';
import type { Opening } from './lines-on-skirt.ts';
import type { PleatLine } from './seam-lines.ts';
import type { SlantedLine } from './wrap-line.ts';

/** What is drawn beside the cloth itself. */
export interface ViewExtras {
  readonly wearer: Wearer;
  readonly opening?: Opening;
  /** Seams that are open from a depth of cloth down to the hem. */
  readonly slits?: readonly Omit<Opening, 'to'>[];
  /** How deep the edging along the hem is, mm. */
  readonly edging?: number;
  readonly pleats?: readonly PleatLine[];
  /** Columns inside the folds of pleats: of them nothing is drawn. */
  readonly inFolds?: readonly number[];
  /** Where it is gathered to what it is sewn to. */
  readonly gathered?: readonly Columns[];
  readonly pockets?: readonly Opening[];
  /** The upper edge of a wrap. */
  readonly edge?: SlantedLine;
}
