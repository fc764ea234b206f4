/** Why a bodice cannot be drafted from its measures, where that stands, and the figures that show it; mm. */
export type BodiceFault = { readonly place: BodicePlace } & (
  | { readonly code: 'no-panels' }
  | { readonly code: 'panel-twice'; readonly panel: string }
  | { readonly code: 'fold-not-at-centre'; readonly panel: string }
  | { readonly code: 'level-twice'; readonly level: string; readonly other: string; readonly above: number }
  | { readonly code: 'waist-missing' }
  | { readonly code: 'nothing-above-waist' }
  | {
      readonly code: 'level-out-of-place';
      readonly level: string;
      readonly wants: 'above' | 'below';
      readonly of: string;
    }
  | {
      readonly code: 'front-exceeds-girth';
      readonly level: string;
      readonly front: number;
      readonly girth: number;
    }
  | { readonly code: 'front-without-side-seam'; readonly level: string }
  | { readonly code: 'unknown-level'; readonly level: string; readonly levels: readonly string[] }
  | {
      readonly code: 'unknown-bodice-station';
      readonly station: string;
      readonly stations: readonly string[];
    }
  | { readonly code: 'edge-height-missing'; readonly edge: BodiceEdge; readonly station: string }
  | { readonly code: 'point-without-height'; readonly station: string }
  | { readonly code: 'laced-fold'; readonly station: string }
  | {
      readonly code: 'reduced-to-nothing';
      readonly level: string;
      readonly body: number;
      readonly by: number;
    }
  | { readonly code: 'gap-takes-all'; readonly level: string; readonly part: HalfPart; readonly left: number }
  | {
      readonly code: 'bust-points-too-far';
      readonly level: string;
      readonly apart: number;
      readonly front: number;
    }
  | {
      readonly code: 'widths-do-not-add-up';
      readonly level: string;
      readonly part: HalfPart;
      readonly wanted: number;
      readonly rows: readonly PanelWidth[];
    }
  | {
      readonly code: 'panel-without-width';
      readonly level: string;
      readonly panel: string;
      readonly width: number;
    }
  | { readonly code: 'panel-widens-too-fast'; readonly panel: string }
  | {
      readonly code: 'edges-cross';
      readonly station: string;
      readonly upper: number;
      readonly lower: number;
    }
  | {
      readonly code: 'no-girth-so-low';
      readonly station: string;
      readonly below: number;
      readonly lowest: string;
      readonly at: number;
    }
  | { readonly code: 'edge-does-not-settle'; readonly edge: BodiceEdge }
  | {
      readonly code: 'bones-do-not-fit';
      readonly seam: string;
      readonly length: number;
      readonly clear: number;
    }
  | {
      readonly code: 'eyelets-do-not-fit';
      readonly seam: string;
      readonly length: number;
      readonly end: number;
    }
  | { readonly code: 'modesty-too-narrow'; readonly width: number; readonly gap: number }
);

export type BodiceEdge = 'upper-edge' | 'lower-edge';

/** A half of her body, or what of it lies before and behind the side seam. */
export type HalfPart = 'half' | 'front-part' | 'back-part';

/** Where in the spec: a path under `body` or `bodice.draft`. */
export type BodicePlace = readonly (string | number)[];

export interface PanelWidth {
  readonly panel: string;
  readonly width: number;
  /** Whether the spec says so, or the rule. */
  readonly said: boolean;
}
