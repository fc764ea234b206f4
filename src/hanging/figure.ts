import type { PetticoatProfile } from '../gown/petticoat-profile.ts';
import type { Petticoat } from '../gown/sections.ts';
import { girthThrough, levelsAlong } from '../gown/slant-levels.ts';
import { betweenLevels } from './between-levels.ts';
import type { Body } from './sewn-cloth.ts';

/** What the skirt hangs over: a girth and how round it is at any height above the floor. mm. */
export interface Figure {
  readonly girthAt: (height: number) => number;
  /** Depth from front to back for one of width. */
  readonly roundnessAt: (height: number) => number;
}

/** A woman's depth at the waist for one of width, and at the hip (from memory: anthropometric surveys, about 0.75, 0.72). */
const WAIST_ROUNDNESS = 0.76;

/** How far below the waist a petticoat has become round, mm. From memory. */
const ROUND_BELOW = 350;

/** Below the level waist, for one of the hip's girth: the hip itself, the thighs, the knees, the feet. From memory. */
const LEGS = [
  { below: 200, share: 1 },
  { below: 330, share: 0.93 },
  { below: 560, share: 0.72 },
  { below: 900, share: 0.6 },
] as const;

/** The hip for a waist where nobody measured it: sizes 68/92 to 80/104 of EN 13402-3 differ by 24 cm. From memory. */
const HIP_OVER_WAIST = 240;

/** A girth of her body, so far below the waist. mm. */
export interface GirthBelow {
  readonly below: number;
  readonly girth: number;
}

/** What she is: waist, hip, and legs that stand together; every girth that was measured, else as it usually is. */
export function figureOf(
  waist: number,
  hip: number | undefined,
  waistHeight: number,
  measured: readonly GirthBelow[] = [],
): Figure {
  const known = measured.filter(({ below }) => below > 0).sort((a, b) => a.below - b.below);
  const widest = Math.max(0, ...known.map(({ girth }) => girth));
  const own = Math.max(waist, hip ?? (widest > 0 ? widest : waist + HIP_OVER_WAIST));
  const lowest = known[known.length - 1]?.below ?? 0;
  const levels = [
    { below: 0, girth: waist },
    ...known,
    ...LEGS.filter(({ below }) => below > lowest).map(({ below, share }) => ({ below, girth: own * share })),
  ];
  return {
    girthAt: (height) => between(levels, waistHeight - height),
    roundnessAt: () => WAIST_ROUNDNESS,
  };
}

/** How far a petticoat's own hem holds the skirt out below its lowest hoop or measured level, mm. From memory. */
const PETTICOAT_HEM = 40;

/** She in her petticoat: the wider of the two at every height. */
export function figureInPetticoat(
  own: Figure,
  petticoat: Petticoat,
  profile: PetticoatProfile,
  waist: number,
  waistHeight: number,
): Figure {
  const along = petticoat.girths.length >= 2 ? levelsAlong(petticoat) : undefined;
  const girth = along === undefined ? undefined : girthThrough(along);
  const end = along?.at(-1)?.down;
  const lowest = end === undefined ? (petticoat.hoopOffFloor ?? 0) : waistHeight - profile.heightAt(end);
  const ends = Math.max(0, lowest - PETTICOAT_HEM);
  const ownAt =
    girth === undefined
      ? (below: number) => waist + (((petticoat.hoop ?? waist) - waist) * below) / (waistHeight - lowest)
      : betweenLevels((below) => girth.valueAt(profile.slantAt(below)));
  return {
    girthAt: (height) => {
      const bare = own.girthAt(height);
      return height < ends ? bare : Math.max(bare, ownAt(waistHeight - height));
    },
    roundnessAt: (height) => {
      if (height < ends) return WAIST_ROUNDNESS;
      const share = Math.min(1, Math.max(0, (waistHeight - height) / ROUND_BELOW));
      return WAIST_ROUNDNESS + (1 - WAIST_ROUNDNESS) * share;
    },
  };
}

/** Rows of net gathered to a yoke, as they are worn under the skirt. mm. */
export interface TiersUnder {
  /** Edge of the yoke, all round. */
  readonly yoke: number;
  /** From the top down. */
  readonly tiers: readonly { readonly girth: number; readonly depth: number }[];
}

/** How far gathered net stands out from the yoke for each mm that it hangs, the first tier's fullness being 2. From memory. */
const NET_STANDS = 0.32;
/** Deepest that a yoke ends below the waist, mm. From memory. */
const YOKE_ENDS = 200;

/** How far below the waist a yoke's edge lies: where her own girth is as wide, mm. */
export function tiersBegin(own: Figure, yoke: number, waistHeight: number): number {
  let begins = 0;
  while (begins < YOKE_ENDS && own.girthAt(waistHeight - begins) < yoke) begins += 10;
  return begins;
}

/** She with tiers of net over her: from where her own girth is the yoke's, as far out as net stands and as its width lets it. */
export function figureOverTiers(own: Figure, { yoke, tiers }: TiersUnder, waistHeight: number): Figure {
  const begins = tiersBegin(own, yoke, waistHeight);
  const outAt = (below: number): number | undefined => {
    let [top, girth] = [begins, yoke];
    for (const tier of tiers) {
      const depth = Math.min(tier.depth, below - top);
      if (depth < 0) return girth;
      const fullness = tier.girth / Math.max(1, girth);
      girth = Math.min(
        tier.girth,
        girth + 2 * Math.PI * NET_STANDS * Math.min(1, Math.max(0, fullness - 1)) * depth,
      );
      top += tier.depth;
    }
    return below <= top ? girth : undefined;
  };
  const under = (height: number): number | undefined =>
    waistHeight - height < begins ? undefined : outAt(waistHeight - height);
  return {
    girthAt: (height) => Math.max(own.girthAt(height), under(height) ?? 0),
    roundnessAt: (height) => {
      if (under(height) === undefined) return own.roundnessAt(height);
      const share = Math.min(1, (waistHeight - height) / ROUND_BELOW);
      return WAIST_ROUNDNESS + (1 - WAIST_ROUNDNESS) * share;
    },
  };
}

/** Distance between two levels of the body, mm. */
const STEP = 10;

/** @param closeness what the girths are scaled by, by height: drawn in where the sewn edge is tighter than she is */
export function scaledFigure(figure: Figure, closeness: (height: number) => number): Figure {
  return { ...figure, girthAt: (height) => figure.girthAt(height) * closeness(height) };
}

export function bodyOf(figure: Figure, waistHeight: number): Body {
  const count = Math.floor(waistHeight / STEP) + 1;
  const halfWidth = new Float64Array(count);
  const halfDepth = new Float64Array(count);
  for (let level = 0; level < count; level++) {
    const height = level * STEP;
    const width = halfWidthOf(figure.girthAt(height), figure.roundnessAt(height));
    halfWidth[level] = width;
    halfDepth[level] = width * figure.roundnessAt(height);
  }
  return { lowest: 0, step: STEP, halfWidth, halfDepth };
}

/** Half the width of an ellipse of this girth: Ramanujan's second approximation, 1914. */
export function halfWidthOf(girth: number, roundness: number): number {
  const h = ((1 - roundness) / (1 + roundness)) * ((1 - roundness) / (1 + roundness));
  const round = (1 + roundness) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
  return girth / (Math.PI * round);
}

function between(
  levels: readonly { readonly below: number; readonly girth: number }[],
  below: number,
): number {
  const after = levels.findIndex((level) => level.below >= below);
  if (after === 0) return levels[0]!.girth;
  if (after < 0) return levels[levels.length - 1]!.girth;
  const [a, b] = [levels[after - 1]!, levels[after]!];
  return a.girth + ((b.girth - a.girth) * (below - a.below)) / (b.below - a.below);
}
