import { acrossFrame } from '../draft/across-frame.ts';
import type { GownDraft } from '../draft/draft-gown.ts';
import type { EdgeProfile } from '../draft/edge-profiles.ts';
import type { GoreFrame } from '../draft/gore-frame.ts';
import { lengthOfRun } from '../geometry/length.ts';

/** What each gore is taken in by at the waist on its two sides, front and back, mm; negative lets out. */
export type WaistTakes = readonly (readonly [front: number, back: number])[];

/** How far below the waist seam such a take has run out, mm: the way to the hip, over which cloth is worked (common practice). */
export const WAIST_TAKE_REACHES = 200;

export const noTakes = (draft: GownDraft): WaistTakes => draft.gown.gores.map(() => [0, 0]);

/** How much longer every gore's waist edge is drawn than its bodice panel, in cloth; mm. */
export function longerThanTops(
  draft: GownDraft,
  frames: readonly GoreFrame[],
  waist: EdgeProfile,
  taken: readonly number[],
): number[] {
  return draft.gown.gores.map((gore, i) => {
    const before = lengthOfRun(draft.pieces[i]!.edges[0]!.curves);
    const now = acrossFrame(frames[i]!, waist, waist.ways[i]!, waist.ways[i + 1]!);
    return lengthOfRun(now) - before * (1 - taken[i]! / gore.top);
  });
}

/** Takes that are so much more, shared between a gore's two seams as `shares` has it; nothing can be taken on a fold. */
export function takesMore(
  takes: WaistTakes,
  { gown }: GownDraft,
  shares: readonly (readonly [front: number, back: number])[],
  longer: readonly number[],
): WaistTakes {
  return takes.map(([front, back], i) => {
    const [up, next] = shares[i]!;
    if (up + next === 0) return [front, back];
    const { fold } = gown.gores[i]!;
    const share = fold === 'front' ? 0 : fold === 'back' ? 1 : up / (up + next);
    return [front + share * longer[i]!, back + (1 - share) * longer[i]!];
  });
}
