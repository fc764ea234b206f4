import type { PetticoatSpec } from '../spec/spec.ts';

/** Girth of the skirt, ease included, at a slant distance below the level waist. */
export interface GirthLevel {
  readonly down: number;
  readonly girth: number;
}

/**
 * The petticoat's levels measured along the cloth. Levels measured by their height are turned into slant distances
 * over round hoops: √(height² + (difference of the radii)²) from level to level (geometry).
 */
export function slantLevels(petticoat: PetticoatSpec): GirthLevel[] {
  const levels = [...petticoat.girths].sort((a, b) => a.down - b.down);
  const eased = (girth: number, down: number): number => girth + (down > 0 ? petticoat.ease : 0);
  if (petticoat.measured === 'along') {
    return levels.map(({ down, girth }) => ({ down, girth: eased(girth, down) }));
  }
  let slant = 0;
  return levels.map(({ down, girth }, i) => {
    const above = levels[i - 1];
    if (above === undefined) slant = down;
    else slant += Math.hypot(down - above.down, (girth - above.girth) / (2 * Math.PI));
    return { down: slant, girth: eased(girth, down) };
  });
}
