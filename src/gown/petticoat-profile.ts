import type { PetticoatSpec } from '../gown-file/spec.ts';
import { girthThrough, heightOver, levelsAlong, steepness } from './slant-levels.ts';

/** The petticoat from the side: how far down plumb a slant distance below the level waist lies, and back. mm. */
export interface PetticoatProfile {
  readonly heightAt: (slant: number) => number;
  readonly slantAt: (height: number) => number;
}

/** Without a petticoat the tape hangs plumb. */
const PLUMB: PetticoatProfile = { heightAt: (slant) => slant, slantAt: (height) => height };

/** Where the floor lies at a station, below the level waist: plumb, or along the cloth. mm. */
export type Floor = { readonly height: number } | { readonly slant: number };

/**
 * A petticoat known by its girths follows their curve; one known by its lowest hoop alone is a cone from the waist to
 * that hoop, so that its slope depends on how high the floor leaves the hoop.
 */
export function petticoatProfile(
  petticoat: PetticoatSpec | undefined,
  waist: number,
  floor: Floor,
): PetticoatProfile {
  if (petticoat === undefined) return PLUMB;
  if (petticoat.girths.length >= 2) return overGirths(petticoat);
  return petticoat.hoop === undefined
    ? PLUMB
    : overHoop((petticoat.hoop - waist) / (2 * Math.PI), petticoat.hoopOffFloor ?? 0, floor);
}

function overGirths(petticoat: PetticoatSpec): PetticoatProfile {
  const levels = levelsAlong(petticoat);
  const girth = girthThrough(levels);
  const end = levels[levels.length - 1]!.down;
  const endHeight = heightOver(girth, 0, end);
  const endSteepness = steepness(girth.slopeAt(end));
  const heightAt = (slant: number): number =>
    slant <= end ? heightOver(girth, 0, slant) : endHeight + (slant - end) * endSteepness;
  return {
    heightAt,
    slantAt: (height) =>
      height >= endHeight && endSteepness > 0
        ? end + (height - endHeight) / endSteepness
        : slantByHalving(heightAt, height, end),
  };
}

function slantByHalving(heightAt: (slant: number) => number, height: number, longest: number): number {
  let [above, below] = [0, longest];
  for (let step = 0; step < 60; step++) {
    const middle = (above + below) / 2;
    if (heightAt(middle) < height) above = middle;
    else below = middle;
  }
  return (above + below) / 2;
}

/** @param out how much farther out the hoop is than the waist, mm */
function overHoop(out: number, offFloor: number, floor: Floor): PetticoatProfile {
  const height = 'height' in floor ? floor.height : heightUnder(floor.slant, out, offFloor);
  const toHoop = height - offFloor;
  if (!(toHoop > 0)) return PLUMB;
  const plumb = toHoop / Math.hypot(toHoop, out);
  return { heightAt: (slant) => slant * plumb, slantAt: (down) => down / plumb };
}

/** The floor's height that a slant down to it stands for, over a hoop `offFloor` above it. */
function heightUnder(slant: number, out: number, offFloor: number): number {
  const slantAt = (toHoop: number): number =>
    Math.hypot(toHoop, out) * (offFloor === 0 ? 1 : 1 + offFloor / toHoop);
  // The slant grows with the height from its least one on, which lies where the cone is steepest.
  let [low, high] = [Math.cbrt(offFloor * out * out), slant];
  if (!(slantAt(low) < slant)) return low + offFloor;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (slantAt(middle) < slant) low = middle;
    else high = middle;
  }
  return (low + high) / 2 + offFloor;
}
