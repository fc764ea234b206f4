import { type Gore, innerAngle } from '../measure/gore.ts';
import type { MeasuredGown } from '../measure/gown.ts';
import {
  type CurvePath,
  directionAtStart,
  distanceTo,
  polygonOf,
  type Sample,
  samplesOf,
} from '../measure/path.ts';
import { isInside, loopsOf } from '../measure/polygons.ts';
import { along, cross, distance, dot, minus, type Point } from '../measure/segment.ts';

/** The cut line keeps its distance from the seam line within this, mm (design, section 3). */
const ALLOWANCE = 0.05;
/** Curved edges meet a little farther from the corner than straight ones would: a part of the way, and mm. */
const CORNER_BEND = 1.15;
const CORNER_SLACK = 1.5;
/**
 * A turned hem's allowance may stand out by this where it is folded along the hem itself, and where it is folded along
 * what the hem would be if it ran on into the seam's allowance, mm: there its bend is a choice, worth a thread or two.
 */
const TURNED = 0.1;
const TURNED_BEYOND_SEAM = 1.5;
const STEP = 25;

/** What each edge of a piece asks for, and the corner zones at its two ends. */
interface Side {
  readonly name: string;
  readonly path: CurvePath;
  readonly width: number;
  /** Lengths at the start and at the end where a corner's own shape rules. */
  readonly zones: readonly [number, number];
  /** +1 where the outside lies to the left of travel as seen on the sheet, −1 to the right. */
  readonly outside: 1 | -1;
}

/** Cut lines at true distance, corners that lie inside when pressed open or turned up, outlines simple and apart. */
export function allowanceUntruths(gown: MeasuredGown): string[] {
  const seen = new Set<object>();
  const found: string[] = [];
  for (const { layer, gores } of gown.layers) {
    for (const [i, gore] of gores.entries()) {
      if (gore === undefined || seen.has(gore)) continue;
      seen.add(gore);
      const facts = gown.facts.gores[i]!;
      const hem = layer.allowance('hem') + facts.roughCut;
      const widths = {
        waist: layer.allowance('waist'),
        hem,
        front: layer.allowance(facts.frontEdge),
        back: layer.allowance(facts.backEdge),
      };
      const where = `${layer.name}, ${facts.name}`;
      const polygon = polygonOf(gore.piece.cut, 0.01);
      const sides = sidesOf(gore, widths);
      found.push(...sides.flatMap((side) => distanceUntruths(where, side, gore.piece.cut)));
      if (loopsOf(polygon) !== 1) found.push(`${where}: the cut outline crosses itself`);
      if (loopsOf(polygonOf(gore.outline)) !== 1) found.push(`${where}: the seam line crosses itself`);
      for (const side of sides) {
        if (layer.pressedOpen && !facts.shaped && (side.name === 'front' || side.name === 'back')) {
          found.push(...pressedOpenUntruths(where, side, widths.waist, gore.piece.cut, polygon));
        }
      }
      if (layer.hem === 'turned' && facts.roughCut === 0) {
        found.push(...turnedUpUntruths(where, gore, hem, polygon, facts.fold));
      }
    }
  }
  return found;
}

function sidesOf(gore: Gore, widths: Record<'waist' | 'hem' | 'front' | 'back', number>): Side[] {
  const slant = (edge: 'waist' | 'hem', side: 'front' | 'back') =>
    Math.abs(1 / Math.tan((innerAngle(gore, edge, side) * Math.PI) / 180));
  const zone = (name: 'waist' | 'hem' | 'front' | 'back', edge: 'waist' | 'hem', side: 'front' | 'back') =>
    widths[name] * slant(edge, side) * CORNER_BEND + CORNER_SLACK;
  const facing = Math.sign(
    cross(minus(gore.waist.to, gore.waist.from), minus(gore.hem.from, gore.waist.from)),
  ) as 1 | -1;
  const across = (name: 'waist' | 'hem') => [zone(name, name, 'front'), zone(name, name, 'back')] as const;
  const down = (name: 'front' | 'back') => [zone(name, 'waist', name), zone(name, 'hem', name)] as const;
  const other = -facing as 1 | -1;
  return [
    { name: 'waist', path: gore.waist, width: widths.waist, zones: across('waist'), outside: facing },
    { name: 'hem', path: gore.hem, width: widths.hem, zones: across('hem'), outside: other },
    { name: 'front', path: gore.front, width: widths.front, zones: down('front'), outside: other },
    { name: 'back', path: gore.back, width: widths.back, zones: down('back'), outside: facing },
  ];
}

function distanceUntruths(where: string, side: Side, cut: CurvePath): string[] {
  let worst = 0;
  let worstAt = 0;
  const tight = tightPoints(side);
  for (const { point, direction, distance: way } of samplesOf(side.path, STEP)) {
    if (tight.some((other) => distance(other, point) < 2.5 * side.width)) continue;
    if (way < side.zones[0] || side.path.length - way < side.zones[1]) continue;
    const off = distanceTo(cut, outwards(point, direction, side, side.width));
    const clear = [way, side.path.length - way].every(
      (left, end) => left > 2 * side.width + side.zones[end]!,
    );
    const error = Math.max(off, clear ? side.width - distanceTo(cut, point) : 0);
    if (error > worst) [worst, worstAt] = [error, way];
  }
  if (worst <= ALLOWANCE) return [];
  return [
    `${where}: allowance ${side.width} at ${side.name} is off by ${worst.toFixed(3)} mm, ${worstAt.toFixed(0)} mm along it`,
  ];
}

/** Where an edge bends towards its outside tighter than its allowance is wide: no cut line can keep its distance there. */
function tightPoints(side: Side): Point[] {
  const samples = samplesOf(side.path, 2);
  return samples.slice(1).flatMap(({ point, direction, distance: way }, i) => {
    const before = samples[i]!;
    const turn = cross(before.direction, direction) * side.outside * -1;
    return (turn / (way - before.distance)) * side.width * 1.05 > 1 ? [point] : [];
  });
}

/** The allowance of a straight seam, reflected about its seam line, lies inside what is cut. */
function pressedOpenUntruths(
  where: string,
  side: Side,
  waist: number,
  cut: CurvePath,
  polygon: readonly Point[],
): string[] {
  if (side.width === 0) return [];
  const down = directionAtStart(side.path);
  const end = side.path.length - side.zones[1] - side.width;
  let worst = 0;
  for (const { point } of samplesOf(cut, 8)) {
    const away = minus(point, side.path.from);
    const way = dot(away, down);
    const off = cross(down, away) * side.outside * -1;
    if (off < 0.001 || off > side.width + 1 || way > end || way < -3 * (waist + side.width)) continue;
    const reflected = outwards(along(side.path.from, down, way), down, side, -off);
    if (!isInside(reflected, polygon)) worst = Math.max(worst, distanceTo(cut, reflected));
  }
  if (worst <= ALLOWANCE) return [];
  return [`${where}: the ${side.name} allowance pressed open stands out by ${worst.toFixed(3)} mm`];
}

/** A turned hem's allowance, reflected across the hem curve, lies inside what is cut. */
function turnedUpUntruths(
  where: string,
  gore: Gore,
  depth: number,
  polygon: readonly Point[],
  fold: 'front' | 'back' | undefined,
): string[] {
  if (depth === 0) return [];
  const { hem } = gore;
  const inside = Math.sign(cross(minus(hem.to, hem.from), minus(gore.waist.from, hem.from)));
  // Half a millimetre: the foot is taken on the tangent of the nearest sample, a hem's depth away from the point.
  const own = samplesOf(hem, 0.5);
  const ways = [false, true].map((bending) => runOn(own, 4 * depth, bending));
  let worst = 0;
  for (const { point } of samplesOf(gore.piece.cut, 10)) {
    const off = ways.map((samples) => {
      const across = reflectedAcross(samples, point, inside, depth);
      if (across === undefined) return 0;
      const reflected = fold === undefined ? across.point : foldedIn(across.point, gore, fold);
      if (isInside(reflected, polygon)) return 0;
      const by = distanceTo(gore.piece.cut, reflected);
      return by > (across.beyondSeam ? TURNED_BEYOND_SEAM : TURNED) ? by : 0;
    });
    worst = Math.max(worst, Math.min(...off));
  }
  return worst === 0 ? [] : [`${where}: the hem allowance turned up stands out by ${worst.toFixed(3)} mm`];
}

/** On a fold the piece goes on: what reaches over it lies on the other half. */
function foldedIn(point: Point, gore: Gore, fold: 'front' | 'back'): Point {
  const line = gore[fold];
  const down = directionAtStart(line);
  const away = minus(point, line.from);
  const over =
    cross(down, away) * cross(down, minus(gore.waist[fold === 'front' ? 'to' : 'from'], line.from)) < 0;
  return over ? along(along(line.from, down, 2 * dot(away, down)), away, -1) : point;
}

type Along = Pick<Sample, 'point' | 'direction'> & { readonly beyondSeam: boolean };

/** Undefined for points that are not in the hem's allowance. */
function reflectedAcross(
  samples: readonly Along[],
  point: Point,
  inside: number,
  depth: number,
): { point: Point; beyondSeam: boolean } | undefined {
  const best = samples.reduce((a, b) => (distance(a.point, point) < distance(b.point, point) ? a : b));
  const foot = along(best.point, best.direction, dot(minus(point, best.point), best.direction));
  const off = cross(best.direction, minus(point, foot)) * inside;
  if (off >= -0.001 || -off > depth + 1) return undefined;
  return { point: { x: 2 * foot.x - point.x, y: 2 * foot.y - point.y }, beyondSeam: best.beyondSeam };
}

/** The hem run on into the seam allowances as it ends: straight, or by the circle that touches it there. */
function runOn(samples: readonly Sample[], by: number, bending: boolean): Along[] {
  const at = (from: number, step: number): Along[] => {
    const [end, next] = [samples.at(from)!, samples.at(from + 16 * step)!];
    const sense = -step;
    const heading = Math.atan2(end.direction.y, end.direction.x);
    const turn = Math.atan2(cross(next.direction, end.direction), dot(next.direction, end.direction));
    const bend = !bending ? 0 : turn / Math.abs(next.distance - end.distance);
    const points: Along[] = [];
    let point = end.point;
    for (let way = 0.5; way <= by; way += 0.5) {
      const middle = heading + bend * (way - 0.25);
      point = along(point, { x: Math.cos(middle), y: Math.sin(middle) }, 0.5 * sense);
      const turned = heading + bend * way;
      points.push({ point, direction: { x: Math.cos(turned), y: Math.sin(turned) }, beyondSeam: true });
    }
    return points;
  };
  const own = samples.map(({ point, direction }) => ({ point, direction, beyondSeam: false }));
  return [...at(0, 1), ...own, ...at(-1, -1)];
}

function outwards(point: Point, direction: Point, side: Side, by: number): Point {
  return along(point, { x: direction.y * side.outside, y: -direction.x * side.outside }, by);
}
