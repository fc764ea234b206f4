import { crossingAt } from '../../draft/depth-across.ts';
import type { GownDraft } from '../../draft/draft-gown.ts';
import type { OnGore } from '../../gown/sections.ts';
import type { Skirt, SkirtStation } from '../skirt.ts';
import type { TrainLine } from './bustle.ts';

/** Every seam, and the middle of a folded back, which can carry a loop as well. */
export function trainSeams(skirt: Skirt): TrainLine[] {
  return skirt.stations.flatMap(({ name, side, seams, finished, floor }, i) => {
    const folded = seams === 0 && i > 0;
    if ((seams === 0 && !folded) || floor === undefined) return [];
    const own = { name, ...(side === undefined ? {} : { side }) };
    return [{ ...own, copies: Math.max(1, seams), length: finished, toFloor: floor.length }];
  });
}

/** Seams or folds on both sides of the gores of a name. */
export function besideGore({ gown }: GownDraft, skirt: Skirt, name: string): SkirtStation[] {
  const beside = gown.gores.flatMap((gore, i) =>
    gore.name === name ? [stationAt(skirt, i), stationAt(skirt, i + 1)] : [],
  );
  return [...new Set(beside)];
}

/**
 * The line down each gore of that name, as long as the cloth is from its waist edge to its hem there; the floor goes from
 * one side to the other as evenly as between two stations of which it is known.
 */
export function linesDown(draft: GownDraft, skirt: Skirt, { gore: name, across }: OnGore): TrainLine[] {
  const { gown, waist, hem } = draft;
  return gown.gores.flatMap((gore, i) => {
    if (gore.name !== name) return [];
    const share = gore.side === 'right' ? 1 - across : across;
    // Where both halves have this very line, at a centre, it is that of her left.
    const centre = centreAt(draft, i, share);
    if (centre && gown.round === 'two-halves' && gore.side === 'right') return [];
    const [first, last] = [stationAt(skirt, i).floor, stationAt(skirt, i + 1).floor];
    if (first === undefined || last === undefined) return [];
    const frame = draft.frames[i]!;
    const bottom = crossingAt(frame, hem, i, share);
    return [
      {
        name,
        across,
        ...(gown.round === 'two-halves' && !centre ? { side: gore.side! } : {}),
        copies: gown.round === 'mirrored' && !centre ? 2 : 1,
        length: bottom.depth - crossingAt(frame, waist, i, share).depth,
        toFloor: first.length + (last.length - first.length) * bottom.part,
      },
    ];
  });
}

function centreAt({ gown }: GownDraft, gore: number, share: number): boolean {
  if (gown.round === 'ring') return false;
  const station = share === 0 ? gore : share === 1 ? gore + 1 : undefined;
  const back = gown.round === 'two-halves' ? gown.gores.length / 2 : gown.gores.length;
  return station !== undefined && station % back === 0;
}

/** All the way round the last is the first again. */
function stationAt({ stations }: Skirt, i: number): SkirtStation {
  return stations[i % stations.length]!;
}
