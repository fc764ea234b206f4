import type { Units } from '../diagnostics/units.ts';
import type { OverskirtSpec } from '../gown-file/spec.ts';
import type { AskedBodice, Body, Cape, PanelsApart, Strap } from './above-waist.ts';
import type { Cloth } from './cloth.ts';
import type { Facing, Layer } from './layer.ts';
import type { GownLines } from './lines.ts';
import type { Loops, Pocket, Slit } from './openings.ts';
import type { Flounce, Godet, Pleat, Stones, Tiers } from './parts.ts';
import type { Placed } from './placed.ts';
import type {
  Bodice,
  Bustle,
  Closure,
  Currency,
  Dates,
  Edging,
  Fitting,
  Labour,
  Measuring,
  Notion,
  Paper,
  Petticoat,
  SewnAsOne,
  Trim,
} from './sections.ts';
import type { WaistFinish } from './waist.ts';
import type { Wrap } from './wrap.ts';

/** The whole gown as the file has it, with nothing left to look up. */
export interface Gown extends GownLines, Placed<[]> {
  readonly format: number;
  /** Names what the file says; printed on every piece and sheet. */
  readonly content: string;
  readonly client?: string;
  readonly units: Units;
  readonly notes?: string;
  /** The level as far as which the gores follow her girths. */
  readonly fittedTo?: string;
  readonly body?: Body;
  readonly bodice: Bodice;
  /** Where the bodice is drafted over her body. */
  readonly askedBodice?: AskedBodice;
  /** Of a skirt that is sewn to no bodice. */
  readonly waist?: WaistFinish;
  readonly wrap?: Wrap;
  /** Of an overskirt's end edges. */
  readonly edgeFacing?: Facing;
  /** Where the panels of her two sides differ. */
  readonly panelsApart?: PanelsApart;
  readonly straps: readonly Strap[];
  readonly capes: readonly Cape[];
  readonly measuring: Measuring;
  /** From the inside out. */
  readonly layers: readonly Layer[];
  readonly cloths: readonly Cloth[];
  readonly flounces: readonly Flounce[];
  readonly tiers: readonly Tiers[];
  readonly godets: readonly Godet[];
  readonly stones: readonly Stones[];
  readonly pleats: readonly Pleat[];
  readonly overskirts: readonly Overskirt[];
  readonly fittings: readonly Fitting[];
  readonly petticoat?: Petticoat;
  readonly sewnAsOne?: SewnAsOne;
  readonly closure?: Closure;
  readonly slits: readonly Slit[];
  readonly pockets: readonly Pocket[];
  readonly loops: readonly Loops[];
  readonly edging?: Edging;
  readonly trims: readonly Trim[];
  readonly bustle?: Bustle;
  readonly labour?: Labour;
  readonly notions: readonly Notion[];
  readonly currency?: Currency;
  readonly dates?: Dates;
  readonly paper?: Paper;
  /** By layer: the hash printed on the pieces that it was cut from. */
  readonly cut: Readonly<Record<string, string>>;
}

/** A detachable train or an overskirt. */
export interface Overskirt
  extends Pick<OverskirtSpec, 'name' | 'fastened' | 'edges' | 'quickRelease' | 'notes'>,
    Placed<['overskirts', number]> {
  /** Itself, as a gown: its stations have its own names, its ends are free edges. */
  readonly gown: Gown;
  /** Stations of the gown between which it is fastened, on the half. */
  readonly from: string;
  readonly to?: string;
}
