import type { CurvePath } from './path.ts';
import { directionAtEnd, directionAtStart, pathOf, reversed } from './path.ts';
import type { PatternPiece } from './pattern.ts';
import { along, cross, distance, dot, minus, mix, opposite, type Point, unitOf } from './segment.ts';

/** A piece with its four sides turned one way: waist and hem from front to back, seams from the waist down. */
export interface Gore {
  readonly piece: PatternPiece;
  readonly waist: CurvePath;
  readonly hem: CurvePath;
  readonly front: CurvePath;
  readonly back: CurvePath;
  /** The seam line as one closed run: waist, back, hem, front. */
  readonly outline: CurvePath;
}

/** How far apart two edges may end that meet in a corner, mm: coordinates are written in rounded decimals. */
const CORNER_GAP = 0.01;
/** How far a straight seam's curves may stray from its chord, mm. */
const STRAIGHT = 0.02;

export function goreOf(piece: PatternPiece, frontEdge: string, backEdge: string): Gore {
  const side = (name: string) => {
    const path = piece.sew.get(name);
    if (path === undefined)
      throw new Error(`${piece.gore} has no edge ${name}; it has ${[...piece.sew.keys()].join(', ')}`);
    return path;
  };
  const names = ['waist', 'hem', frontEdge, backEdge].sort().join(', ');
  if ([...piece.sew.keys()].sort().join(', ') !== names) {
    throw new Error(`${piece.gore} has edges ${[...piece.sew.keys()].join(', ')}, expected ${names}`);
  }
  const waist = turned(
    side('waist'),
    (path) => touches(path.from, side(frontEdge)) && touches(path.to, side(backEdge)),
  );
  const hem = turned(
    side('hem'),
    (path) => touches(path.from, side(frontEdge)) && touches(path.to, side(backEdge)),
  );
  const front = turned(side(frontEdge), (path) => near(path.from, waist.from) && near(path.to, hem.from));
  const back = turned(side(backEdge), (path) => near(path.from, waist.to) && near(path.to, hem.to));
  const outline = pathOf([
    ...waist.segments,
    ...back.segments,
    ...reversed(hem).segments,
    ...reversed(front).segments,
  ]);
  return { piece, waist, hem, front, back, outline };
}

function turned(path: CurvePath, fits: (path: CurvePath) => boolean): CurvePath {
  if (fits(path)) return path;
  const other = reversed(path);
  if (fits(other)) return other;
  throw new Error('an edge does not meet its neighbours at the corners');
}

const near = (a: Point, b: Point) => distance(a, b) <= CORNER_GAP;
const touches = (point: Point, path: CurvePath) => near(point, path.from) || near(point, path.to);

/** The angle between two sides inside the piece, degrees. */
export function innerAngle(gore: Gore, edge: 'waist' | 'hem', side: 'front' | 'back'): number {
  const across = side === 'front' ? directionAtStart(gore[edge]) : opposite(directionAtEnd(gore[edge]));
  const seam = edge === 'waist' ? directionAtStart(gore[side]) : opposite(directionAtEnd(gore[side]));
  return (Math.atan2(Math.abs(cross(across, seam)), dot(across, seam)) * 180) / Math.PI;
}

/** Straight seams of a sector of a ring, and widths along its arcs. */
export interface Sector {
  /** Unit directions down the two seams. */
  readonly frontDown: Point;
  readonly backDown: Point;
  /** Angle between the seams, signed: negative where the gore narrows downwards. */
  readonly flare: number;
  /** Width along the arc at a slant distance below the level waist. */
  widthAt(slant: number): number;
  /** How far the two seams disagree about where one slant distance lies, mm. */
  levelError(slant: number): number;
}

export function sectorOf(gore: Gore, frontDrop: number, backDrop: number): Sector {
  const frontDown = straight(gore.front);
  const backDown = straight(gore.back);
  const flare = Math.atan2(cross(backDown, frontDown), dot(backDown, frontDown));
  const chordAt = (slant: number) =>
    minus(
      along(gore.back.from, backDown, slant - backDrop),
      along(gore.front.from, frontDown, slant - frontDrop),
    );
  return {
    frontDown,
    backDown,
    flare,
    widthAt: (slant) => Math.hypot(chordAt(slant).x, chordAt(slant).y) * bulge(flare),
    levelError: (slant) => dot(chordAt(slant), unitOf(mix(frontDown, backDown, 0.5))),
  };
}

/** Arc over chord. */
const bulge = (angle: number) => (Math.abs(angle) < 1e-6 ? 1 : angle / 2 / Math.sin(angle / 2));

function straight(path: CurvePath): Point {
  const down = unitOf(minus(path.to, path.from));
  for (const segment of path.segments) {
    for (let i = 0; i <= 8; i++) {
      const off = Math.abs(cross(down, minus(segment.at(i / 8), path.from)));
      if (off > STRAIGHT) throw new Error(`a seam of a sector is ${off.toFixed(3)} mm from straight`);
    }
  }
  return down;
}

/** A point of an edge in the sector's own measures. */
export interface Placed {
  /** Slant distance below the level waist. */
  readonly slant: number;
  /** Angle from the front seam as a share of the flare; for parallel seams the share of the width. */
  readonly share: number;
  /** Way round from the front seam measured across the grain, up to this point: the integral of r·dφ. */
  readonly across: number;
}

/** Points of the waist or the hem, from front to back, in slant distance and the way round across the grain. */
export function placedIn(gore: Gore, frontDrop: number, points: readonly Point[]): Placed[] {
  const frontDown = straight(gore.front);
  const backDown = straight(gore.back);
  const flare = Math.atan2(cross(backDown, frontDown), dot(backDown, frontDown));
  const acrossGrain = { x: frontDown.y, y: -frontDown.x };
  const placed: Placed[] = [];
  const apex =
    Math.abs(flare) > 1e-7 ? meet(gore.front.from, frontDown, gore.back.from, backDown) : undefined;
  const width = Math.abs(dot(minus(gore.back.from, gore.front.from), acrossGrain));
  let across = 0;
  for (const [i, point] of points.entries()) {
    const away = apex === undefined ? minus(point, gore.front.from) : minus(point, apex);
    const share =
      apex === undefined
        ? Math.abs(dot(away, acrossGrain)) / width
        : angleBetween(flare > 0 ? frontDown : opposite(frontDown), away) / Math.abs(flare);
    const radius = apex === undefined ? 0 : Math.hypot(away.x, away.y);
    const topRadius = apex === undefined ? 0 : distance(gore.front.from, apex);
    const slant =
      apex === undefined
        ? dot(away, frontDown) + frontDrop
        : Math.sign(flare) * (radius - topRadius) + frontDrop;
    if (i > 0) {
      const before = placed[i - 1]!;
      const here = apex === undefined ? width : radius * Math.abs(flare);
      const there =
        apex === undefined
          ? width
          : (Math.sign(flare) * (before.slant - frontDrop) + topRadius) * Math.abs(flare);
      across += ((here + there) / 2) * (share - before.share);
    }
    placed.push({ slant, share, across });
  }
  return placed;
}

function meet(a: Point, downA: Point, b: Point, downB: Point): Point {
  return along(a, downA, cross(minus(b, a), downB) / cross(downA, downB));
}

const angleBetween = (a: Point, b: Point) => Math.atan2(Math.abs(cross(a, b)), dot(a, b));

/** The ring that a flared gore was cut from: its apex and the radii at the front seam's two ends. */
export function ringOf(gore: Gore): { apex: Point; inner: number; outer: number } {
  const apex = meet(gore.front.from, straight(gore.front), gore.back.from, straight(gore.back));
  return { apex, inner: distance(gore.front.from, apex), outer: distance(gore.front.to, apex) };
}
