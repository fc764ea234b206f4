import type { GownDraft } from '../../draft/draft-gown.ts';
import type { GoreFrame } from '../../draft/gore-frame.ts';
import type { Point } from '../../geometry/curve.ts';
import { halves, runsRound, stationsOnce } from '../../gown/lines.ts';
import type { Godet } from '../../gown/parts.ts';
import type { Skirt } from '../skirt.ts';

/**
 * What of the skirt lies on the floor, spread out flat and seen from above: mm, behind the wearer downwards, her left
 * at the left. Where the cloth meets the floor at the longest station is 0, 0.
 */
export interface TrainFootprint {
  /** The hem from one end of the train to the other, and the line where the cloth meets the floor, the other way. */
  readonly outline: readonly Point[];
  /** Seams of the train, from the floor to the hem. */
  readonly seams: readonly (readonly [Point, Point])[];
  /** Behind the line where the cloth meets the floor at the longest station. */
  readonly length: number;
  /** From side to side. */
  readonly width: number;
  /** Of the skirt where it meets the floor, as a circle. */
  readonly radius: number;
}

/** Places across each gore. */
const ACROSS = 24;
/** Less than this on the floor is no train but a hem, mm. */
const LEAST = 1;

/**
 * The train's cloth lies as it was cut: gore beside gore about their seams, wedges let in between them. Undefined
 * where no floor is known, or nothing reaches it: a sweep with no floor length is only a hem.
 */
export function trainFootprint(
  draft: GownDraft,
  skirt: Skirt,
  godets: readonly Pick<Godet, 'seam' | 'from' | 'width'>[] = [],
): TrainFootprint | undefined {
  const floors = floorDepths(draft, skirt);
  if (floors === undefined) return undefined;
  const last = draft.gown.gores.length;
  const depths = draft.gown.stations.map(({ drop }, i) => drop + draft.lengths[i]!);
  const longest = depths.reduce(
    (most, depth, i) => (depth - floors[i]! > depths[most]! - floors[most]! + 1e-9 ? i : most),
    runsRound(draft.gown) ? 0 : last,
  );
  if (depths[longest]! - floors[longest]! < LEAST) return undefined;
  const floor: Floor = { draft, floors, godets };
  const left = sideOf(floor, longest, -1);
  const right = runsRound(draft.gown) ? sideOf(floor, longest, 1) : mirrored(left);
  const outline = [...[...left.hem].reverse(), ...right.hem, ...[...right.floor].reverse(), ...left.floor];
  const xs = outline.map(({ x }) => x);
  return {
    outline,
    seams: [...left.seams, ...right.seams],
    length: Math.max(...outline.map(({ y }) => y)),
    width: Math.max(...xs) - Math.min(...xs),
    radius: girthAt(floor, longest) / (2 * Math.PI),
  };
}

/** How far below the level waist the floor lies at each station, along the cloth. */
function floorDepths(draft: GownDraft, skirt: Skirt): number[] | undefined {
  const depths = draft.gown.stations.map(({ drop }, i) => {
    const length = skirt.stations[i % skirt.stations.length]!.floor?.length;
    return length === undefined ? undefined : drop + length;
  });
  const known = depths.flatMap((depth) => depth ?? []);
  return known.length === depths.length ? known : undefined;
}

interface Floor {
  readonly draft: GownDraft;
  readonly floors: readonly number[];
  readonly godets: readonly Pick<Godet, 'seam' | 'from' | 'width'>[];
}

interface Side {
  readonly hem: readonly Point[];
  readonly floor: readonly Point[];
  readonly seams: readonly (readonly [Point, Point])[];
}

/** A seam as it lies: where it meets the floor, and which way it runs from there to the hem, a unit vector. */
interface SeamLine {
  readonly at: Point;
  readonly down: Point;
}

/** Gore after gore from a station on, towards the front by the wearer's left (−1) or by her right (1). */
function sideOf(floor: Floor, from: number, way: 1 | -1): Side {
  const { draft } = floor;
  const count = draft.gown.gores.length;
  const hem: Point[] = [];
  const line: Point[] = [];
  const seams: [Point, Point][] = [];
  let station = from;
  let seam: SeamLine = { at: { x: 0, y: 0 }, down: { x: 0, y: 1 } };
  const letIn = (part: number): void => {
    const lines = wedgeAt(floor, station, seam, way, part);
    const onFloor = lengthOnFloor(floor, station);
    hem.push(...lines.map((own) => alongSeam(own, onFloor)));
    line.push(...lines.map(({ at }) => at));
    seam = lines[lines.length - 1] ?? seam;
  };
  letIn(0.5);
  for (let step = 0; step < count; step++) {
    const index = way < 0 ? (station === 0 ? count : station) - 1 : station % count;
    if (!runsRound(draft.gown) && way < 0 && station === 0) break;
    const gore = laidBy(floor, index, seam, way);
    if (gore.hem.length === 0) break;
    hem.push(...gore.hem);
    line.push(...gore.floor);
    seams.push([seam.at, alongSeam(seam, lengthOnFloor(floor, station))]);
    station = way < 0 ? index : (index + 1) % count;
    if (gore.ended || (runsRound(draft.gown) && station === from)) break;
    seam = gore.next;
    letIn(1);
  }
  return { hem, floor: line, seams };
}

function lengthOnFloor({ draft, floors }: Floor, station: number): number {
  return Math.max(0, draft.gown.stations[station]!.drop + draft.lengths[station]! - floors[station]!);
}

function alongSeam({ at, down }: SeamLine, by: number): Point {
  return { x: at.x + down.x * by, y: at.y + down.y * by };
}

/** A seam as it turns through the godets that are let into it; none where there are none. */
function wedgeAt(floor: Floor, station: number, seam: SeamLine, way: 1 | -1, part: number): SeamLine[] {
  const { name } = floor.draft.gown.stations[station]!;
  if (!floor.godets.some((godet) => godet.seam === name)) return [];
  return Array.from({ length: ACROSS + 1 }, (_, k) =>
    openedBy(floor, station, seam, way, (part * k) / ACROSS),
  );
}

/** A seam turned about the points of its godets, by a part of their angle: half of one in the middle of the train. */
function openedBy(
  { draft, floors, godets }: Floor,
  station: number,
  seam: SeamLine,
  way: 1 | -1,
  part: number,
): SeamLine {
  const { name, drop } = draft.gown.stations[station]!;
  return godets
    .filter((godet) => godet.seam === name)
    .reduce((line, godet) => {
      const side = draft.lengths[station]! - godet.from;
      if (!(side > 0)) return line;
      const turn = -way * part * (godet.width / side);
      const point = alongSeam(line, drop + godet.from - floors[station]!);
      return { at: turned(line.at, point, turn), down: turned(line.down, { x: 0, y: 0 }, turn) };
    }, seam);
}

interface LaidGore {
  /** From the seam that it is laid by to the other. */
  readonly hem: readonly Point[];
  readonly floor: readonly Point[];
  readonly next: SeamLine;
  /** The hem rises off the floor within this gore. */
  readonly ended: boolean;
}

function laidBy({ draft, floors }: Floor, index: number, seam: SeamLine, way: 1 | -1): LaidGore {
  const frame = draft.frames[index]!;
  const fractions = acrossGore(draft, frame, index);
  const near = way < 0 ? 1 : 0;
  const floorAt = (f: number): number => floors[index]! + (floors[index + 1]! - floors[index]!) * f;
  const lie = placing(frame, floorAt(near), near, seam);
  const places = way < 0 ? [...fractions].reverse() : fractions;
  const onFloor: typeof places = [];
  const liesBy = (place: (typeof places)[number]): number => place.depth - floorAt(place.f);
  const lifts = places.findIndex((place) => liesBy(place) < LEAST);
  const ended = lifts >= 0;
  const above = places.findIndex((place, k) => k >= lifts && liesBy(place) < 0);
  // A hem that comes down to the floor and no farther is no train there.
  onFloor.push(...places.slice(0, !ended ? places.length : above < 0 ? lifts : above));
  if (ended && above > 0) onFloor.push(liftedOff(places[above - 1]!, places[above]!, liesBy));
  const far = 1 - near;
  const depth = floorAt(far);
  return {
    hem: onFloor.map(({ f, depth: own }) => lie(frame.pointAt(own, f))),
    floor: onFloor.map(({ f }) => lie(frame.pointAt(floorAt(f), f))),
    next: { at: lie(frame.pointAt(depth, far)), down: direction(lie, frame, depth, far) },
    ended,
  };
}

/** Where the hem leaves the floor between two places, the first of which lies on it: as good as straight between them. */
function liftedOff<Place extends { readonly f: number; readonly depth: number }>(
  on: Place,
  off: Place,
  liesBy: (place: Place) => number,
): { f: number; depth: number } {
  const [from, to] = [liesBy(on), liesBy(off)];
  const part = from / (from - to);
  return { f: on.f + (off.f - on.f) * part, depth: on.depth + (off.depth - on.depth) * part };
}

/** The hem across a gore: how far across, and how deep. */
function acrossGore(draft: GownDraft, frame: GoreFrame, index: number): { f: number; depth: number }[] {
  const [from, to] = [draft.hem.ways[index]!, draft.hem.ways[index + 1]!];
  const depths = Array.from({ length: ACROSS + 1 }, (_, k) =>
    draft.hem.valueAt(from + ((to - from) * k) / ACROSS),
  );
  let passed = 0;
  const ways = depths.map((depth, k) => {
    if (k > 0) passed += 2 / (frame.widthAt(depth) + frame.widthAt(depths[k - 1]!));
    return passed;
  });
  return depths.map((depth, k) => ({ f: ways[k]! / passed, depth }));
}

/** Moves a gore so that one of its sides lies on a seam. */
function placing(frame: GoreFrame, depth: number, f: number, seam: SeamLine): (point: Point) => Point {
  const from = frame.pointAt(depth, f);
  const down = frame.downAt(depth, f);
  const turn = Math.atan2(seam.down.y, seam.down.x) - Math.atan2(Math.cos(down), Math.sin(down));
  return (point) => {
    const own = turned(point, from, turn);
    return { x: own.x - from.x + seam.at.x, y: own.y - from.y + seam.at.y };
  };
}

function direction(lie: (point: Point) => Point, frame: GoreFrame, depth: number, f: number): Point {
  const from = frame.pointAt(depth, f);
  const down = frame.downAt(depth, f);
  const [a, b] = [lie(from), lie({ x: from.x + Math.sin(down), y: from.y + Math.cos(down) })];
  return { x: b.x - a.x, y: b.y - a.y };
}

function turned(point: Point, about: Point, angle: number): Point {
  const [x, y] = [point.x - about.x, point.y - about.y];
  return {
    x: about.x + x * Math.cos(angle) - y * Math.sin(angle),
    y: about.y + x * Math.sin(angle) + y * Math.cos(angle),
  };
}

function mirrored(side: Side): Side {
  const across = ({ x, y }: Point): Point => ({ x: -x, y });
  return {
    hem: side.hem.map(across),
    floor: side.floor.map(across),
    seams: side.seams.map(([a, b]) => [across(a), across(b)]),
  };
}

/** Round the skirt, godets and all, where the longest station meets the floor. */
function girthAt({ draft, floors, godets }: Floor, longest: number): number {
  const depth = floors[longest]!;
  const widths = draft.frames.reduce((sum, frame) => sum + frame.widthAt(depth), 0);
  const wedges = stationsOnce(draft.gown).flatMap(({ name, drop, seams }, station) =>
    godets
      .filter((godet) => godet.seam === name)
      .map(({ from, width }) => {
        const below = Math.max(0, depth - drop - from);
        return (seams * width * below) / Math.max(1, draft.lengths[station]! - from);
      }),
  );
  return halves(draft.gown) * widths + wedges.reduce((sum, width) => sum + width, 0);
}
