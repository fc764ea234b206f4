import { hermiteProfile } from '../geometry/hermite-profile.ts';
import { monotoneSlopes } from '../geometry/monotone-slopes.ts';
import type { WidthLevel } from '../gown/lines.ts';
import type { WidthDown } from './width-down.ts';

/**
 * The width down a gore, through its levels: smooth, rising only where the levels rise, and running on straight beyond
 * the last one.
 */
export function widthThrough(levels: readonly WidthLevel[]): WidthDown {
  const down = levels.map((level) => level.down);
  const width = levels.map((level) => level.width);
  return hermiteProfile(down, width, monotoneSlopes(down, width, 'free', 'free'));
}
