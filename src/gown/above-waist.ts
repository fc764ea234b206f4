import type { Span } from '../diagnostics/diagnostic.ts';
import type { Units } from '../diagnostics/units.ts';
import type {
  BodiceDraftSpec,
  BodySpec,
  BonesSpec,
  CapeSpec,
  ClosingSpec,
  FittingSpec,
  StrapSpec,
} from '../gown-file/spec.ts';
import type { Facing, Layer } from './layer.ts';
import type { Placed } from './placed.ts';

export type {
  BonesSpec as BonesAsked,
  ClosingSpec as ClosingAsked,
} from '../gown-file/spec.ts';

/** How a bodice is drafted, closed and boned. mm. */
export interface BodiceRules extends BodiceDraftSpec {
  readonly closing?: ClosingSpec;
  readonly bones?: BonesSpec;
}

/** Her body, over what she wears under the gown. mm. */
export interface Body extends BodySpec, Placed<['body']> {}

/** A bodice that is to be drafted over her body, and the gores that will be sewn to it. mm. */
export interface AskedBodice {
  /** Where a value stands in the file, by its keys from the top. */
  readonly placeAt: (path: readonly (string | number)[]) => Span;
  readonly units: Units;
  readonly body: BodySpec;
  readonly draft: Omit<BodiceRules, 'allowances' | 'facing'>;
  /** The first carries the bones; `gores` are its panels. */
  readonly layers: readonly Layer[];
  /** By station: how far its lower edge lies below the level waist. */
  readonly drops: Readonly<Record<string, number>>;
  readonly point?: 'centre-front' | 'centre-back';
  /** Tops that the gores say themselves; of the half on a fold. */
  readonly tops: readonly {
    readonly gore: string;
    readonly index: number;
    readonly key: string;
    readonly top: number;
  }[];
  /** Of its upper edge, cut as a layer of its own. */
  readonly facing?: Facing;
  /** What was pinned in it, by date. */
  readonly fittings: readonly BodiceFitting[];
}

/** The panels of one side of her, as they were fitted. */
export interface FittedPanels {
  /** By gore: by how much less its panel measures at the waist seam than the gore was drafted for, mm; of the half on a fold. */
  readonly less: Readonly<Record<string, number>>;
  /** Seams that were pinned as far as the waist seam: where the skirt was pinned there too, both are one. */
  readonly seams: readonly string[];
}

/** Where the panels differ from what the gores were drafted for: on one side of her, or as they were pinned. */
export type PanelsApart = Readonly<Record<'left' | 'right', FittedPanels>>;

/** What one fitting pinned in a bodice: heights above the level waist, mm. */
export interface BodiceFitting
  extends Pick<FittingSpec, 'date' | 'side'>,
    NonNullable<FittingSpec['bodice']>,
    Placed<['fittings', number, 'bodice']> {}

/** A strip over the shoulder, on each side of her. mm. */
export interface Strap extends Omit<StrapSpec, 'name' | 'cloth'>, Placed<['straps', number]> {
  readonly name: string;
  readonly layer: Layer;
}

/** A cape or cape sleeve of one side. mm and radians. */
export interface Cape extends Omit<CapeSpec, 'layers'>, Placed<['capes', number]> {
  readonly layers: readonly Layer[];
}
