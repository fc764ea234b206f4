import type { DepthMap } from './depth-map.ts';
import type { PlaceLine } from './drawn-part.ts';
import { seenPlace } from './lines-on-skirt.ts';
import type { ViewFrom } from './seen.ts';
import type { Surface } from './surface.ts';
import { type SeenLine, turningLines } from './turning-lines.ts';
import { insideOf, isFold, visibleParts } from './visible-parts.ts';

/** Where cloth turns from the eye or lies in a hollow, as far as nothing hides it; from above hollows say nothing. */
export function foldsSeen(
  map: DepthMap,
  seen: Surface,
  hollows: readonly PlaceLine[],
  side: ViewFrom,
  owner: number,
): SeenLine[] {
  return [
    ...turningLines(seen).flatMap((line) => visibleParts(map, line, owner, isFold)),
    ...(side === 'above'
      ? []
      : hollows.flatMap((line) =>
          insideOf(
            map,
            line.map((i) => seenPlace(seen.place, i)),
            owner,
          ),
        )),
  ];
}
