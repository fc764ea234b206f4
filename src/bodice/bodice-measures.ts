/**
 * What a bodice is drafted from. Lengths in mm, heights along the body from the level waist: `above` is positive
 * upwards. Panels run from the centre front round to the centre back: one half, the wearer's left.
 */
export interface BodiceMeasures {
  readonly girths: readonly BodyGirth[];
  /** From one bust point to the other, over the body. */
  readonly bustPointsApart?: number;
  readonly panels: readonly BodicePanel[];
  /** The seam at which the front part and the back part meet. */
  readonly sideSeam?: string;
  /** What she is laced in by, all round, by level; negative is ease. */
  readonly reduce: Readonly<Record<string, number>>;
  readonly upperEdge: EdgeHeights;
  readonly lowerEdge: EdgeHeights;
  readonly lacings: readonly LacingGap[];
}

/** One level of the body. */
export interface BodyGirth {
  readonly at: string;
  readonly above: number;
  /** All round. */
  readonly girth: number;
  /** Over the front, side seam to side seam. */
  readonly front?: number;
  /** Over her left half, centre to centre, where her halves differ. */
  readonly left?: number;
}

export interface BodicePanel {
  readonly name: string;
  /** On the fold at a centre: it and all its widths are then halves. */
  readonly onFold: boolean;
  /** Sewn width by level, in place of what it would be given. */
  readonly widths: Readonly<Record<string, number>>;
  /** `centre` shapes both its edges alike; an edge on the grain is straight. A panel at a centre is straight there. */
  readonly grain?: 'centre' | 'front-edge' | 'back-edge';
}

/** An edge by station. */
export interface EdgeHeights {
  /** Above the level waist, mm; negative below it. */
  readonly above: Readonly<Record<string, number>>;
  /** Stations at which it may come to a point. */
  readonly points: readonly string[];
}

/** Where two edges are laced together and do not meet. */
export interface LacingGap {
  readonly at: string;
  /** Between the two edges, mm; one for all levels, or by level. */
  readonly gap: number | Readonly<Record<string, number>>;
  /** On this side of her only; on a seam that both sides have, both where absent. */
  readonly side?: 'left' | 'right';
}

export const CENTRE_FRONT = 'centre-front';
export const CENTRE_BACK = 'centre-back';

/** The stations of a half, one more than its panels. */
export function bodiceStations(panels: readonly Pick<BodicePanel, 'name'>[]): string[] {
  const seams = panels.slice(1).map(({ name }, i) => `${panels[i]!.name}/${name}`);
  return [CENTRE_FRONT, ...seams, CENTRE_BACK];
}
