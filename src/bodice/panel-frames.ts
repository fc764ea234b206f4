import { widthThrough } from '../draft/girth-width.ts';
import type { GoreFrame } from '../draft/gore-frame.ts';
import { raisedFrame } from '../draft/raised-frame.ts';
import { sectorFrame } from '../draft/sector-frame.ts';
import { shapedFrame } from '../draft/shaped-frame.ts';
import type { WidthDown } from '../draft/width-down.ts';
import { lengthOfRun } from '../geometry/length.ts';
import { LEVEL } from '../geometry/tolerances.ts';
import type { BodiceFault } from './bodice-fault.ts';
import type { BodicePanel } from './bodice-measures.ts';
import { panelGrain } from './panel-widths.ts';
import type { SewnLevel } from './sewn-levels.ts';

/** How far beyond its edges a panel is computed, mm: its edges may dip between stations, and a seam's ends are coarser. */
const BEYOND = 40;
/** Levels within this of an edge lie on the panel as it is computed, mm. */
const COVERED = 16;

type Grain = ReturnType<typeof panelGrain>;

/** How high and how low the panels reach, above the level waist, mm. */
export interface Reach {
  readonly top: number;
  readonly bottom: number;
}

/**
 * Lays every panel flat, as a gore over a petticoat is: each level at its true width, the seams at one length on both
 * sides. Slant distances count from the level waist, negative above it.
 */
export function panelFrames(
  panels: readonly BodicePanel[],
  levels: readonly SewnLevel[],
  widths: readonly (readonly number[])[],
  reach: Reach,
): { readonly frames: readonly GoreFrame[]; readonly faults: readonly BodiceFault[] } {
  const faults: BodiceFault[] = [];
  const frames = panels.flatMap(({ name }, p) => {
    const frame = trueFrame(levels, widths[p]!, panelGrain(panels, p), reach);
    if (frame !== undefined) return [frame];
    faults.push({ code: 'panel-widens-too-fast', place: ['bodice', 'draft', 'panels', p], panel: name });
    return [];
  });
  return { frames, faults };
}

/** Rounds in which the drawn levels are brought to their widths; each gains a digit. */
const ROUNDS = 6;
/** Drawn levels that miss by less are true, mm: two dozen panels keep a girth well within what is promised. */
const DRAWN_TRUE = 0.0005;

/** A frame whose levels measure their widths where they are drawn: between its steps a shaped seam is not quite exact. */
function trueFrame(
  levels: readonly SewnLevel[],
  widths: readonly number[],
  grain: Grain,
  reach: Reach,
): GoreFrame | undefined {
  let asked = widths;
  let frame = frameOf(widthDown(levels, asked, reach), grain, reach);
  for (let round = 0; round < ROUNDS && frame !== undefined; round++) {
    const drawn = frame;
    const misses = levels.map(({ above }, i) =>
      above > reach.top + COVERED || above < reach.bottom - COVERED
        ? 0
        : widths[i]! - lengthOfRun(drawn.levelAt(-above)),
    );
    if (misses.every((miss) => Math.abs(miss) < DRAWN_TRUE)) break;
    asked = asked.map((width, i) => width + misses[i]!);
    frame = frameOf(widthDown(levels, asked, reach), grain, reach);
  }
  return frame;
}

/**
 * A panel's width through its levels. An edge that runs beyond the highest level goes on at that level's girth, its
 * seams turning smoothly to it: above the bust a body is nowhere fuller.
 */
function widthDown(levels: readonly SewnLevel[], widths: readonly number[], { top }: Reach): WidthDown {
  const places = levels
    .map(({ above }, i) => ({ down: -above, width: widths[i]! }))
    .sort((a, b) => a.down - b.down);
  return widthThrough(places, [top > -places[0]!.down ? 0 : 'free', 'free']);
}

function frameOf(width: WidthDown, grain: Grain, { top, bottom }: Reach): GoreFrame | undefined {
  const cone = coneOf(width, top, bottom);
  if (cone !== undefined) {
    const front = grain === 'centre' ? cone.flare / 2 : grain === 'front-edge' ? 0 : cone.flare;
    return sectorFrame(cone.width, front, cone.flare - front);
  }
  const above = top + BEYOND;
  const below: WidthDown = {
    valueAt: (s) => width.valueAt(s - above),
    slopeAt: (s) => width.slopeAt(s - above),
    levels: width.levels.map((down) => down + above),
  };
  const frame = shapedFrame(below, above - bottom + BEYOND, grain);
  return frame === undefined ? undefined : raisedFrame(frame, above);
}

/** Places at which a width is held against a straight one. */
const LOOKED_AT = 64;

/** Where the width changes evenly all the way down, the panel is part of a cone, and exactly a sector. */
function coneOf(
  width: WidthDown,
  top: number,
  bottom: number,
): { readonly width: number; readonly flare: number } | undefined {
  const [high, low] = [width.valueAt(-top), width.valueAt(-bottom)];
  const flare = (low - high) / (top - bottom);
  for (let i = 0; i <= LOOKED_AT; i++) {
    const down = -top + ((top - bottom) * i) / LOOKED_AT;
    if (Math.abs(width.valueAt(down) - high - flare * (down + top)) > LEVEL) return undefined;
  }
  return { width: high + flare * top, flare };
}
