import type { Cape } from '../gown/above-waist.ts';
import { halfWidthOf } from './figure.ts';
import { heightAt, heightOf, type Wearer } from './figure-lines.ts';
import { FINEST, FOURS, steady } from './gown-panels.ts';
import { alongLine } from './hung-parts.ts';
import type { ClothOver } from './part-to-hang.ts';
import { type Body, columnsOf, newCloth, placeIndex, type Strip } from './sewn-cloth.ts';
import { type SpacePoint, spaceApart } from './space-point.ts';
import { gatherColumns } from './start-of-cloth.ts';
import type { UpperBody } from './upper-body.ts';

/** The upper edge that a cape is sewn to, on her left, from the front: up to the arm, and behind it. */
export interface InnerEdge {
  readonly before: readonly SpacePoint[];
  readonly behind: readonly SpacePoint[];
}

interface CapeOver {
  readonly wearer: Wearer;
  readonly body: UpperBody;
  readonly bendingLength: number;
  readonly shearLength: number;
}

/** The outside of the arm beside her, across and by height, for one of her height (from memory: drawing manuals). */
const ARM = [
  { height: 0.35, across: 0.2 },
  { height: 0.49, across: 0.2 },
  { height: 0.625, across: 0.16 },
  { height: 0.74, across: 0.132 },
  { height: 0.79, across: 0.122 },
  { height: 0.83, across: 0.08 },
] as const;
const ARM_DEEP = 0.055;

/** A cape held at what it is sewn to and over the arm, on her left; the right has its image. */
export function capeToHang(cape: Cape, { before, behind }: InnerEdge, over: CapeOver): ClothOver {
  const side = before[before.length - 1]!;
  const line = [...before, ...armRound(side, cape.overArm), ...behind];
  const passed = [0];
  for (let i = 1; i < line.length; i++) passed.push(passed[i - 1]! + spaceApart(line[i - 1]!, line[i]!));
  const length = passed[passed.length - 1]!;
  const longest = Math.max(...lengthsOf(cape));
  const down = FOURS * Math.max(1, Math.round(longest / FINEST / FOURS));
  const strip = capeStrip(cape, length, down);
  const { across } = strip;
  const panel = { name: cape.name, across, strips: [strip.strip] };
  const cloth = newCloth([panel], down, 'open', over);
  for (let column = 0; column < columnsOf(cloth); column++) {
    const [x, y, z] = alongLine(line, passed, (length * column) / across);
    const out = Math.sqrt(x * x + y * y);
    for (let row = 0; row <= down; row++) {
      const fall = (strip.lengthAt(column / across) * row) / down;
      const share = out > 0 ? (out + LEANS * fall) / out : 1;
      cloth.start.set([x * share, y * share, z - 0.9 * fall], 3 * placeIndex(cloth, column, row));
    }
    cloth.held[placeIndex(cloth, column, 0)] = 1;
  }
  if (cape.angle === undefined) gatherColumns(cloth, { first: 0, across }, cape.fullness ?? 1);
  return { is: 'cloth', name: cape.name, cloth, over: bodyWithArms(over), image: true, seams: [] };
}

/** How far out a cape starts, for each mm that it falls. */
const LEANS = 0.4;

/** From the upper edge at her side round the outside of the arm and back: what hangs free, as long as it is. */
function armRound([x, y, z]: SpacePoint, length: number): SpacePoint[] {
  // A loop of five chords: out in front, round, and back behind.
  const [out, deep] = [length * 0.34, length * 0.2];
  return [
    [x + out * 0.45, y - deep, z + 4],
    [x + out, y - deep * 0.5, z + 10],
    [x + out * 1.08, y, z + 12],
    [x + out, y + deep * 0.5, z + 10],
    [x + out * 0.45, y + deep, z + 4],
  ];
}

/** By place along the inner edge where it differs: at its front end, over the arm, at its back end. */
function lengthsOf({ length, from, to }: Cape): readonly [number, number, number] {
  if (typeof length === 'number') return [length, length, length];
  const own = length as Readonly<Record<string, number>>;
  const all = Object.values(own);
  const front = (from === undefined ? undefined : own[from]) ?? all[0]!;
  const back = (to === undefined ? undefined : own[to]) ?? all[all.length - 1]!;
  return [front, own['over-arm'] ?? (front + back) / 2, back];
}

function capeStrip(
  cape: Cape,
  inner: number,
  down: number,
): { readonly strip: Strip; readonly across: number; readonly lengthAt: (part: number) => number } {
  const lengths = lengthsOf(cape);
  const lengthAt = (part: number): number => {
    const t = part < 0.5 ? 2 * part : 2 * part - 1;
    const [a, b] = part < 0.5 ? [lengths[0], lengths[1]] : [lengths[1], lengths[2]];
    return a + (b - a) * t * t * (3 - 2 * t);
  };
  const angle = cape.angle ?? 0;
  const wide = cape.angle === undefined ? inner * (cape.fullness ?? 1) : inner + angle * lengths[1];
  const across = FOURS * Math.max(2, Math.round(wide / FINEST / FOURS));
  const flat = new Float64Array(2 * (across + 1) * (down + 1));
  for (let column = 0; column <= across; column++) {
    const part = column / across - 0.5;
    for (let row = 0; row <= down; row++) {
      const at = 2 * (column * (down + 1) + row);
      const below = (lengthAt(part + 0.5) * row) / down;
      const radius = angle > 0 ? inner / angle + below : 0;
      flat[at] = steady(angle > 0 ? radius * Math.sin(angle * part) : wide * part);
      flat[at + 1] = steady(angle > 0 ? radius * Math.cos(angle * part) : below);
    }
  }
  return { strip: { first: 0, down, flat }, across, lengthAt };
}

const STEP = 10;

/** She with her arms at her sides, as wide as they are apart. */
function bodyWithArms({ wearer, body }: CapeOver): Body {
  const tall = heightOf(wearer);
  const count = Math.floor(heightAt(wearer, 0.87) / STEP) + 1;
  const halfWidth = new Float64Array(count);
  const halfDepth = new Float64Array(count);
  for (let level = 0; level < count; level++) {
    const height = level * STEP;
    const above = height - wearer.waistHeight;
    const roundness = body.roundnessAt(above);
    const own = halfWidthOf(body.girthAt(above), roundness);
    halfWidth[level] = Math.max(own, armAt(wearer, height) * tall);
    // Before her bust and behind her back, which the ellipse of her arms would else cut.
    halfDepth[level] = Math.max(own * roundness + Math.abs(body.forwardAt(above)), ARM_DEEP * tall);
  }
  return { lowest: 0, step: STEP, halfWidth, halfDepth };
}

function armAt(wearer: Wearer, height: number): number {
  const levels = ARM.map((level) => ({ ...level, at: heightAt(wearer, level.height) }));
  const last = levels[levels.length - 1]!;
  if (height <= levels[0]!.at) return levels[0]!.across;
  if (height >= last.at) return last.across;
  const next = levels.findIndex(({ at }) => at >= height);
  const [a, b] = [levels[next - 1]!, levels[next]!];
  return a.across + ((b.across - a.across) * (height - a.at)) / (b.at - a.at);
}
