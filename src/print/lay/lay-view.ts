import type { Curve, Point } from '../../geometry/curve.ts';
import { along, distance, subtract, unit } from '../../geometry/point.ts';
import { enlarged, placed, placedPoint } from '../../geometry/transform.ts';
import type { LayPlan } from '../../lay/plan/lay-plan.ts';
import type { LineStyle } from '../drawing.ts';

/** How cloth is shown: upright in its own mm for a screen, or small and lying along a page. */
export interface LayView {
  readonly curve: (curve: Curve) => Curve;
  readonly point: (point: Point) => Point;
  /** Em of the names on pieces, mm of the drawing. */
  readonly text: number;
  /** Smallest em that is worth printing, mm of the drawing; what would be smaller is left to the list beside it. */
  readonly least: number;
  /** Width of a cut line, mm of the drawing. */
  readonly line: number;
  /** Angle of text that follows the length of the cloth, radians. */
  readonly alongCloth: number;
}

/** Em on a lay in the cloth's own mm: read well where five metres of cloth fill a screen or a page. */
const SCREEN_TEXT = 44;

/** Em in the papers, mm: small print, read at the table (common practice: not under 2 mm). */
const PAPER_TEXT = 2.6;

/** Below this, mm, nobody reads a name on a piece (common practice: not under 1.5 mm). */
const LEAST_TEXT = 1.5;

export function screenView(): LayView {
  return {
    curve: (curve) => curve,
    point: (point) => point,
    text: SCREEN_TEXT,
    least: 0,
    line: 2,
    alongCloth: -Math.PI / 2,
  };
}

/** The cloth lies along the page, its beginning at the left, `scale` mm of the page for one of cloth. */
export function pageView({ facts }: LayPlan, scale: number): LayView {
  const lying = { mirror: false, angle: -Math.PI / 2, shift: { x: 0, y: facts.width } };
  return {
    curve: (curve) => enlarged(placed(lying, curve), scale),
    point: (at) => {
      const { x, y } = placedPoint(lying, at);
      return { x: x * scale, y: y * scale };
    },
    text: PAPER_TEXT,
    least: LEAST_TEXT,
    line: 0.3,
    alongCloth: 0,
  };
}

/** Share of room that the page's own margin of ruler and arrow takes. */
export const PAGE_MARGIN = 3.4 * PAPER_TEXT;

/** A dashed line finer than a cut line; dashes in widths of a cut line. */
export function dashed(view: LayView, ...dash: number[]): LineStyle {
  return { width: view.line * 0.6, dash: dash.map((part) => part * view.line) };
}

/** A place beside the cloth: from `at`, a place of the cloth, `by` ems of the drawing towards `towards`. */
export function beside(view: LayView, at: Point, towards: Point, by: number): Point {
  const from = view.point(at);
  return along(from, unit(subtract(view.point(towards), from)), by * view.text);
}

/** mm of the drawing between two places of the cloth. */
export function drawnDistance(view: LayView, a: Point, b: Point): number {
  return distance(view.point(a), view.point(b));
}
