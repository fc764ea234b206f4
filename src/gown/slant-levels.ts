import { hermiteProfile, type Profile } from '../geometry/hermite-profile.ts';
import { integrate } from '../geometry/integrate.ts';
import { monotoneSlopes } from '../geometry/monotone-slopes.ts';
import { LEVEL_HEIGHT } from '../geometry/tolerances.ts';
import type { PetticoatSpec } from '../gown-file/spec.ts';

/** A girth at a slant distance below the level waist, mm. */
export interface GirthLevel {
  readonly down: number;
  readonly girth: number;
}

/** Girths of the skirt at the petticoat's levels: measured along the cloth, the ease added below the waist. */
export function slantLevels(petticoat: PetticoatSpec): GirthLevel[] {
  return levelsAlong(petticoat).map(({ down, girth }) => ({
    down,
    girth: girth + (down > 0 ? petticoat.ease : 0),
  }));
}

/** The petticoat's own levels along the cloth, from the waist down. Heights are turned into slant distances. */
export function levelsAlong(petticoat: PetticoatSpec): GirthLevel[] {
  const levels = [...petticoat.girths].sort((a, b) => a.down - b.down);
  return petticoat.measured === 'along' || levels.length < 2 ? levels : alongFromHeights(levels);
}

/** The girth down the cloth: the monotone spline through the levels, straight on beyond the first and the last. */
export function girthThrough(levels: readonly GirthLevel[]): Profile {
  const down = levels.map((level) => level.down);
  const girth = levels.map((level) => level.girth);
  return hermiteProfile(down, girth, monotoneSlopes(down, girth, 'free', 'free'));
}

/** How far a stretch of cloth reaches down plumb over a round body of this girth, mm. */
export function heightOver(girth: Profile, from: number, to: number): number {
  const inner = girth.joins.filter((join) => join > from && join < to);
  const stops = [from, ...inner, to];
  return stops
    .slice(1)
    .reduce((sum, stop, i) => sum + integrate((s) => steepness(girth.slopeAt(s)), stops[i]!, stop, 4), 0);
}

/** Plumb for one of slant, where a round body's girth grows by `slope` for one of slant; 0 where it is a shelf. */
export function steepness(slope: number): number {
  const outwards = slope / (2 * Math.PI);
  return Math.sqrt(Math.max(0, 1 - outwards * outwards));
}

/** Rounds at most in which the slants settle; each gains a digit or more. */
const ROUNDS = 60;

/**
 * Slant distances at which the girth's curve reaches the heights that were measured. Over a cone that is
 * √(height² + (difference of the radii)²) from level to level (geometry); over a curve a little more.
 */
function alongFromHeights(levels: readonly GirthLevel[]): GirthLevel[] {
  const first = levels[0]!;
  const steps = levels.slice(1).map(({ down, girth }, i) => {
    const above = levels[i]!;
    return { height: down - above.down, out: Math.abs(girth - above.girth) / (2 * Math.PI) };
  });
  let slants = steps.map(({ height, out }) => Math.hypot(height, out));
  for (let round = 0; round < ROUNDS; round++) {
    const girth = girthThrough(laidOut(first, levels, slants));
    let from = first.down;
    let missed = 0;
    slants = slants.map((slant, i) => {
      const { height, out } = steps[i]!;
      const miss = height - heightOver(girth, from, from + slant);
      from += slant;
      missed = Math.max(missed, Math.abs(miss));
      // No shorter than the straight way between the two hoops.
      return Math.max(Math.hypot(height, out), slant + (miss * height) / slant);
    });
    if (missed < LEVEL_HEIGHT) break;
  }
  return laidOut(first, levels, slants);
}

function laidOut(first: GirthLevel, levels: readonly GirthLevel[], slants: readonly number[]): GirthLevel[] {
  let down = first.down;
  return levels.map(({ girth }, i) => {
    if (i > 0) down += slants[i - 1]!;
    return { down, girth };
  });
}
