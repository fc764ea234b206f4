import type { DepthMap } from './depth-map.ts';
import type { DrawnPart, PlaceLine } from './drawn-part.ts';
import { foldsSeen } from './folds-seen.ts';
import { hollowLines } from './hollow-lines.ts';
import { seenPlace } from './lines-on-skirt.ts';
import { inPlane, seenFrom, type ViewFrom } from './seen.ts';
import { lengthOfLine } from './smoothed-line.ts';
import type { Surface } from './surface.ts';
import { facingOf, type SeenLine, turningLines } from './turning-lines.ts';
import { isOverOther, notOutline, visibleParts } from './visible-parts.ts';

/** Where a part ends for the eye, and not its cloth: not shorter than this, mm. */
const LEAST_CONTOUR = 150;

/** What is sewn to the skirt or worn above it, as the eye sees it. */
export interface SeenPart {
  readonly part: DrawnPart;
  readonly seen: Surface;
}

/** Its lines that nothing hides. */
export type PartLines = Readonly<
  Record<'edges' | 'seams' | 'opening' | 'gathers' | 'folds', readonly SeenLine[]>
>;

/** As far as they are drawn from there. */
export function partsSeen(parts: readonly DrawnPart[], side: ViewFrom): SeenPart[] {
  return parts
    .filter((part) => side !== 'above' || !part.notFromAbove)
    .map((part) => ({ part, seen: lifted(seenFrom(part.surface, side), part.lifted) }));
}

function lifted(seen: Surface, by: number): Surface {
  if (by === 0) return seen;
  const place = seen.place.slice();
  for (let i = 2; i < place.length; i += 3) place[i]! += by;
  return { ...seen, place };
}

/** A part's own lines, as far as nothing hides them. */
export function partLines(map: DepthMap, { part, seen }: SeenPart, side: ViewFrom, owner: number): PartLines {
  const facing = part.filled ? facingOf(seen) : undefined;
  const shown = (lines: readonly PlaceLine[], also?: typeof notOutline): SeenLine[] =>
    lines
      .flatMap((line) => (facing === undefined ? [line] : facingParts(line, facing)))
      .flatMap((line) =>
        visibleParts(
          map,
          line.map((i) => seenPlace(seen.place, i)),
          owner,
          also,
        ),
      );
  // Where a part turns from the eye before what it hangs over, that is its edge for the eye.
  const contours = part.folds
    ? turningLines(seen)
        .flatMap((line) => visibleParts(map, line, owner, isOverOther(owner)))
        .filter((line) => lengthOfLine(inPlane(line)) >= LEAST_CONTOUR)
    : [];
  return {
    edges: [...shown(part.edges, notOutline), ...contours],
    seams: shown(part.seams, notOutline),
    opening: shown(part.opening),
    gathers: shown(part.gathers ?? [], notOutline),
    folds: part.folds ? foldsSeen(map, seen, hollowLines(part.surface), side, owner) : [],
  };
}

/** The stretches of a line that lie on the side towards the eye. */
function facingParts(line: PlaceLine, facing: Float64Array): number[][] {
  const parts: number[][] = [[]];
  for (const place of line) {
    if (facing[place]! > 0) parts[parts.length - 1]!.push(place);
    else if (parts[parts.length - 1]!.length > 0) parts.push([]);
  }
  return parts.filter((part) => part.length > 1);
}
