import type { Point } from '../../geometry/curve.ts';
import type { Mark } from '../drawing.ts';

/** A part of a page that no page end may cut. `draw` gives its marks, its top left corner at `at`. */
export interface Strip {
  readonly height: number;
  readonly draw: (at: Point) => readonly Mark[];
}

/** A block with its text wrapped and its height known. */
export interface LaidBlock {
  readonly strips: readonly Strip[];
  /** Repeated at the top of each page that the block runs on to. */
  readonly head?: Strip;
  /** Space above, dropped at the top of a page. */
  readonly before: number;
  /** Moved whole to the next page where it fits there. */
  readonly together: boolean;
  /** Strips that must find room for the block to begin. */
  readonly leastStrips: number;
  readonly keepWithNext: boolean;
  readonly breakBefore: boolean;
}

/** A block of strips that keeps to the usual rules; the rest is the caller's. */
export function laidBlock(strips: readonly Strip[], rules: Partial<LaidBlock> = {}): LaidBlock {
  return {
    strips,
    before: 0,
    together: false,
    leastStrips: 1,
    keepWithNext: false,
    breakBefore: false,
    ...rules,
  };
}

/** Strips one below the other as one that cannot be cut. */
export function stacked(strips: readonly Strip[]): Strip {
  const height = strips.reduce((sum, strip) => sum + strip.height, 0);
  const draw = (at: Point): Mark[] => {
    let y = at.y;
    return strips.flatMap((strip) => {
      const marks = strip.draw({ x: at.x, y });
      y += strip.height;
      return marks;
    });
  };
  return { height, draw };
}

/** A strip moved to the right, with space above and below. */
export function inset(strip: Strip, left: number, above = 0, below = 0): Strip {
  return {
    height: strip.height + above + below,
    draw: (at) => strip.draw({ x: at.x + left, y: at.y + above }),
  };
}
