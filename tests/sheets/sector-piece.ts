import type { CutPiece } from '../../src/draft/piece.ts';
import type { Arc, Curve, Line, Point } from '../../src/geometry/curve.ts';

export interface SectorMeasures {
  readonly gore: string;
  readonly layers?: readonly string[];
  /** Top arc, mm. */
  readonly top: number;
  /** Angles of the two sides from the grain, radians. */
  readonly front: number;
  readonly back: number;
  /** Along the front and the back side, mm. */
  readonly frontLength: number;
  readonly backLength: number;
  readonly allowance?: number;
  readonly onFold?: boolean;
  readonly frontEdge?: string;
  readonly backEdge?: string;
}

/**
 * A gore made by hand, so that tests of paper need no draft: a sector of a ring with parallel allowances, its hem a
 * cubic where its two sides differ in length. Seam lines and cut lines are both exact where they are arcs and lines.
 */
export function sectorPiece(measures: SectorMeasures): CutPiece {
  const { gore, top, front, back, frontLength, backLength, onFold = false } = measures;
  const allowance = measures.allowance ?? 15;
  const radius = top / (front + back);
  const seam = ringEdges(radius, radius + frontLength, radius + backLength, 0, front, back, 0);
  const cut = ringEdges(
    radius - allowance,
    radius + frontLength + allowance,
    radius + backLength + allowance,
    allowance,
    front,
    back,
    onFold ? 0 : allowance,
  );
  const frontEdge = onFold ? 'fold' : (measures.frontEdge ?? `before/${gore}`);
  const backEdge = measures.backEdge ?? `${gore}/after`;
  const names = ['waist', backEdge, 'hem', frontEdge];
  const edges = (runs: readonly Curve[][]) => runs.map((curves, index) => ({ name: names[index]!, curves }));
  const middle = (back - front) / 2;
  const layers = measures.layers ?? ['shell'];
  const tick = (from: Point, to: Point): Line => ({ kind: 'line', from, to });
  const notchAt = radius + 0.4 * Math.min(frontLength, backLength);
  return {
    gore,
    layers,
    piece: {
      gore,
      layers,
      edges: edges(seam),
      frontEdge,
      backEdge,
      grain: tick(
        polar(radius + 0.2 * frontLength, middle),
        down(polar(radius + 0.2 * frontLength, middle), 0.6 * frontLength),
      ),
      cut: onFold ? 'on-fold' : 'pair',
    },
    cutEdges: edges(cut),
    notches: [
      {
        edge: backEdge,
        distance: notchAt - radius,
        ticks: [
          tick(
            polar(notchAt, back + Math.asin(allowance / notchAt)),
            polar(notchAt, back + Math.asin(allowance / 2 / notchAt)),
          ),
        ],
      },
    ],
    marks: [],
    roughCut: 0,
    allowances: {
      waist: allowance,
      [backEdge]: allowance,
      hem: allowance,
      ...(onFold ? {} : { [frontEdge]: allowance }),
    },
    labelAt: polar(radius + 0.5 * Math.min(frontLength, backLength), middle),
  };
}

function down(point: Point, length: number): Point {
  return { x: point.x, y: point.y + length };
}

/** Radius, and angle from straight down towards the right. */
function polar(radius: number, angle: number): Point {
  return { x: radius * Math.sin(angle), y: radius * Math.cos(angle) };
}

/** Waist, back, hem, front; sides parallel to those through the centre, at the given distances. */
function ringEdges(
  waist: number,
  hemFront: number,
  hemBack: number,
  backGap: number,
  front: number,
  back: number,
  frontGap: number,
): Curve[][] {
  const left = (radius: number) => -front - Math.asin(frontGap / radius);
  const right = (radius: number) => back + Math.asin(backGap / radius);
  const arc = (radius: number, from: number, to: number): Arc => ({
    kind: 'arc',
    centre: { x: 0, y: 0 },
    radius,
    start: Math.PI / 2 - from,
    sweep: from - to,
  });
  const corners = {
    topLeft: polar(waist, left(waist)),
    topRight: polar(waist, right(waist)),
    bottomRight: polar(hemBack, right(hemBack)),
    bottomLeft: polar(hemFront, left(hemFront)),
  };
  const hem: Curve =
    hemFront === hemBack
      ? arc(hemFront, right(hemFront), left(hemFront))
      : {
          kind: 'cubic',
          from: corners.bottomRight,
          control1: along(corners.bottomRight, right(hemBack), (hemBack * (front + back)) / 3),
          control2: along(corners.bottomLeft, left(hemFront), (-hemFront * (front + back)) / 3),
          to: corners.bottomLeft,
        };
  return [
    [arc(waist, left(waist), right(waist))],
    [{ kind: 'line', from: corners.topRight, to: corners.bottomRight }],
    [hem],
    [{ kind: 'line', from: corners.bottomLeft, to: corners.topLeft }],
  ];
}

/** Square to the radius at that angle, to the left by `distance`. */
function along(point: Point, angle: number, distance: number): Point {
  return { x: point.x - distance * Math.cos(angle), y: point.y + distance * Math.sin(angle) };
}

const DEGREE = Math.PI / 180;

/** The five gores of an invented evening gown with a round train, in one layer. */
export function lanternGores(layers: readonly string[] = ['shell'], shorter = 0): CutPiece[] {
  const gores = [
    { gore: 'front', top: 56, front: 0, back: 17, frontLength: 1015, backLength: 1030, onFold: true },
    { gore: 'side-front', top: 82, front: 10, back: 10, frontLength: 1030, backLength: 1060 },
    { gore: 'side', top: 86, front: 10, back: 10, frontLength: 1060, backLength: 1120 },
    { gore: 'side-back', top: 79, front: 10, back: 10.5, frontLength: 1120, backLength: 1390 },
    { gore: 'back', top: 67, front: 10.5, back: 6, frontLength: 1390, backLength: 1760 },
  ];
  return gores.map((gore) =>
    sectorPiece({
      ...gore,
      layers,
      front: gore.front * DEGREE,
      back: gore.back * DEGREE,
      frontLength: gore.frontLength - shorter,
      backLength: gore.backLength - shorter,
    }),
  );
}
