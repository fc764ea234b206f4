import { lengthOfRun } from '../geometry/length.ts';
import { FIT, SETTLED } from '../geometry/tolerances.ts';
import type { Gore, GownLines } from '../gown/lines.ts';
import { acrossFrame } from './across-frame.ts';
import { type EdgeProfile, integrateAlong } from './edge-profiles.ts';
import { widthThrough } from './girth-width.ts';
import type { GoreFrame } from './gore-frame.ts';
import { sectorFrame } from './sector-frame.ts';
import { type ShapedGrain, shapedFrame } from './shaped-frame.ts';
import type { Undraftable } from './undraftable.ts';
import type { WidthDown } from './width-down.ts';

/** Lays every gore flat. Under a drop its width is the one with which the dropped edge is the gore's top. */
export function goreFrames(gown: GownLines, waist: EdgeProfile): GoreFrame[] | Undraftable {
  const frames: GoreFrame[] = [];
  const reach = longestStation(gown) + BELOW_HEM;
  for (const [i, gore] of gown.gores.entries()) {
    const at = highestLevel(gore, waist, i);
    const width = widthAtLevel(gore, waist, i, at);
    if (width === undefined) return { reason: 'narrows-to-nothing', gore: gore.name };
    const frame =
      gore.width.kind === 'girths'
        ? frameOfTop(gore, width, reach, waist, i)
        : frameOf(gore, width, at, reach);
    if (frame === undefined) return { reason: 'widens-too-fast', gore: gore.name };
    frames.push(frame);
  }
  return frames;
}

/**
 * The level that a gore is measured from: the highest that it reaches. Under a deep drop a full gore may have no width
 * left as high as the level waist. Girths are given from the level waist itself.
 */
function highestLevel(gore: Gore, waist: EdgeProfile, i: number): number {
  if (gore.width.kind === 'girths') return 0;
  return Math.min(waist.valueAt(waist.ways[i]!), waist.valueAt(waist.ways[i + 1]!));
}

/** How far below the longest station a shaped gore is computed, mm: room for hems that dip between stations. */
const BELOW_HEM = 100;

/** Slant distance of the longest station from the level waist, train included, mm. */
export function longestStation(gown: GownLines): number {
  return (
    Math.max(...gown.stations.map(({ drop, length }) => drop + (length ?? 0))) + (gown.train?.onFloor ?? 0)
  );
}

/** Width at a level: found by making the whole gore span its stretch of the dropped edge. */
function widthAtLevel(gore: Gore, waist: EdgeProfile, i: number, at: number): number | undefined {
  const from = waist.ways[i]!;
  const to = waist.ways[i + 1]!;
  let width = to - from;
  for (let round = 0; round < 300; round++) {
    const down = widthDown(gore, width, at);
    const factor = integrateAlong(waist, (way) => 1 / down.valueAt(waist.valueAt(way)), from, to);
    if (!(factor > 0) || !Number.isFinite(factor)) return undefined;
    width *= factor;
    if (Math.abs(factor - 1) < SETTLED) return width;
  }
  return undefined;
}

/** Rounds in which a shaped gore's width at the level waist is put right by its drawn edge; each gains a digit or two. */
const ROUNDS = 8;

/**
 * A shaped gore drawn so that its dropped edge measures its top on the flat: between its seams a shaped gore is not
 * quite the body, so the widths alone miss it by tenths of a millimetre.
 */
function frameOfTop(
  gore: Gore,
  first: number,
  reach: number,
  waist: EdgeProfile,
  i: number,
): GoreFrame | undefined {
  let width = first;
  let frame = frameOf(gore, width, 0, reach);
  for (let round = 0; round < ROUNDS && frame !== undefined; round++) {
    const drawn = lengthOfRun(acrossFrame(frame, waist, waist.ways[i]!, waist.ways[i + 1]!));
    if (Math.abs(drawn - gore.top) < FIT) break;
    width *= gore.top / drawn;
    frame = frameOf(gore, width, 0, reach);
  }
  return frame;
}

/** The gore's width as it changes down the cloth, for a given width at slant distance `at`. */
function widthDown(gore: Gore, width: number, at: number): WidthDown {
  if (gore.width.kind === 'girths') {
    return widthThrough([{ down: 0, width }, ...gore.width.levels]);
  }
  const flare = flareOf(gore.width, width, at);
  return { valueAt: (s) => width + flare * (s - at), slopeAt: () => flare };
}

function frameOf(gore: Gore, width: number, at: number, reach: number): GoreFrame | undefined {
  const rule = gore.width;
  if (rule.kind === 'girths') return shapedFrame(widthDown(gore, width, at), reach, shapedGrain(gore));
  return sectorFrame(width, ...aboutGrain(gore, flareOf(rule, width, at)), at);
}

/** Angle of the sector that is `width` wide at slant distance `at`. */
function flareOf(rule: Exclude<Gore['width'], { kind: 'girths' }>, width: number, at: number): number {
  return rule.kind === 'flare' ? rule.angle : (rule.width - width) / (rule.at - at);
}

function aboutGrain(gore: Gore, flare: number): [number, number] {
  if ('frontPart' in gore.grain) return [flare * gore.grain.frontPart, flare * (1 - gore.grain.frontPart)];
  const { front, back } = gore.grain;
  const excess = (flare - front - back) / 2;
  return [front + excess, back + excess];
}

function shapedGrain(gore: Gore): ShapedGrain {
  if (!('frontPart' in gore.grain)) return 'centre';
  return gore.grain.frontPart === 0 ? 'front-edge' : gore.grain.frontPart === 1 ? 'back-edge' : 'centre';
}
