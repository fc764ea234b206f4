import { type GownDraft, pieceOf } from '../draft/draft-gown.ts';
import { type EdgeProfile, integrateAlong, profileThrough, settledProfile } from '../draft/edge-profiles.ts';
import type { GoreFrame } from '../draft/gore-frame.ts';
import { hemProfile } from '../draft/hem-profile.ts';
import type { Undraftable } from '../draft/undraftable.ts';
import type { Profile } from '../geometry/hermite-profile.ts';
import type { EndSlope } from '../geometry/monotone-slopes.ts';
import type { LayerShape } from '../gown/layer.ts';
import type { Gore } from '../gown/lines.ts';
import { runsRound } from '../gown/lines.ts';
import { altersSeams, altersWaist, type SideAlterations } from './alterations.ts';
import { alteredFrame } from './altered-frame.ts';
import { bent, hemBend } from './hem-bend.ts';
import { seamInset } from './seam-inset.ts';

/**
 * A draft with its alterations: frames narrowed or widened, waist edge and hem drawn again over them. What is not
 * altered stays the very same.
 * @param side what is altered here
 * @param other what is altered on the wearer's other side, which the hem runs on into
 */
export function fittedSide(
  draft: GownDraft,
  side: SideAlterations,
  other: SideAlterations,
): GownDraft | Undraftable {
  const { gown, shape } = draft;
  const nothingLeft = goreWithoutWidth(draft, side);
  if (nothingLeft !== undefined) return { reason: 'narrows-to-nothing', gore: nothingLeft };
  const frames = fittedFrames(draft, side);
  const waist = fittedWaist(draft, side, frames);
  if (waist === undefined) return { reason: 'waist-does-not-settle' };
  const hem = fittedHem(draft, side, other, frames);
  if (hem === undefined) return { reason: 'hem-does-not-settle' };
  const lengths = gown.stations.map((_, i) => hem.valueAt(hem.ways[i]!) - waist.valueAt(waist.ways[i]!));
  const short = lengths.findIndex((length) => !(length > 0));
  if (short >= 0)
    return { reason: 'hem-above-waist', gore: gown.gores[Math.min(short, gown.gores.length - 1)]!.name };
  const fitted = {
    ...gown,
    gores: gown.gores.map((gore, i) => fittedGore(gore, takenAtWaist(draft, side, i))),
  };
  const pieces = gown.gores.map((_, i) => pieceOf(gown, i, frames[i]!, waist, hem));
  return { gown: fitted, shape, pieces, frames, waist, hem, lengths };
}

/** How far below its longest station a narrowed gore is followed, mm: room for hems that dip between stations. */
const BELOW_HEM = 100;

function fittedFrames(draft: GownDraft, side: SideAlterations): readonly GoreFrame[] {
  if (!altersSeams(side)) return draft.frames;
  const { hem, gown, shape } = draft;
  const bottom = Math.max(...hem.ways.map((way) => hem.valueAt(way))) + letDown(side) + BELOW_HEM;
  return draft.frames.map((frame, i) => {
    const edge = (station: number) => {
      const takes = side.seams[station]!;
      if (takes.length === 0) return undefined;
      const inset = seamInset(takes, fullnessAlongSeam(gown.gores[i]!, shape));
      return { inset, from: waistDepth(draft, station) };
    };
    const [front, back] = [edge(i), edge(i + 1)];
    if (front === undefined && back === undefined) return frame;
    return alteredFrame(frame, { ...(front && { front }), ...(back && { back }) }, bottom);
  });
}

/** A gore narrower than this is nothing that can be sewn, mm. */
const LEAST_WIDTH = 1;
/** Between two places down a gore where its width is looked at, mm. */
const LOOK_EVERY = 10;

function goreWithoutWidth(draft: GownDraft, side: SideAlterations): string | undefined {
  if (!altersSeams(side)) return undefined;
  const { hem, gown, frames } = draft;
  const bottom = Math.max(...hem.ways.map((way) => hem.valueAt(way)));
  const insets = side.seams.map((takes) => seamInset(takes));
  return gown.gores.find((_, i) => {
    for (let s = 0; s <= bottom; s += LOOK_EVERY) {
      const left = frames[i]!.widthAt(s) - insets[i]!.valueAt(s) - insets[i + 1]!.valueAt(s);
      if (!(left > LEAST_WIDTH)) return true;
    }
    return false;
  })?.name;
}

function letDown({ hems }: SideAlterations): number {
  return hems.reduce((sum, knots) => sum + Math.max(0, ...knots.map(({ up }) => -up)), 0);
}

function waistDepth({ waist }: GownDraft, station: number): number {
  return waist.valueAt(waist.ways[station]!);
}

/** Gathered cloth is taken in by as much more as there is of it; where it is full at the waist only, by the edge. */
function fullnessAlongSeam(gore: Gore, shape: LayerShape): number {
  return [gore.fullness, shape.fullness].reduce(
    (ratio, by) => (by?.where === 'throughout' ? ratio * by.ratio : ratio),
    1,
  );
}

function takenAtWaist(draft: GownDraft, side: SideAlterations, gore: number): number {
  return [gore, gore + 1].reduce(
    (sum, station) => sum + seamInset(side.seams[station]!).valueAt(waistDepth(draft, station)),
    0,
  );
}

/** Where a seam is taken in at the waist the bodice is taken in with it: it is one seam. */
function fittedGore(gore: Gore, taken: number): Gore {
  if (taken === 0) return gore;
  return {
    ...gore,
    top: gore.top - taken,
    ...(gore.panel === undefined ? {} : { panel: gore.panel - taken }),
  };
}

function fittedWaist(
  draft: GownDraft,
  side: SideAlterations,
  frames: readonly GoreFrame[],
): EdgeProfile | undefined {
  if (!altersWaist(side) && frames === draft.frames) return draft.waist;
  const { gown, waist } = draft;
  const depths = gown.stations.map((_, i) => waistDepth(draft, i) - side.waist[i]!);
  const end = (station: number): EndSlope => (gown.pointedAt === station ? 'free' : 0);
  const ends = [end(0), end(gown.gores.length)] as const;
  return settledProfile(
    widthsOf(waist.ways),
    (ways) => profileThrough(ways, { depths, ends, closed: runsRound(gown) }),
    spanOf(frames),
    frames.map(() => 1),
  );
}

function fittedHem(
  draft: GownDraft,
  side: SideAlterations,
  other: SideAlterations,
  frames: readonly GoreFrame[],
): EdgeProfile | undefined {
  const { gown, shape } = draft;
  if (side.hems.length === 0 && frames === draft.frames) return draft.hem;
  return hemProfile(gown, frames, shape, (base, ways) =>
    bent(
      base,
      side.hems.map((own, i) => hemBend({ own, other: other.hems[i] ?? [], closed: runsRound(gown) }, ways)),
    ),
  );
}

/** Whole gores that a stretch of an edge spans, 1 where it runs from side to side. */
function spanOf(frames: readonly GoreFrame[]) {
  return (profile: Profile, gore: number, from: number, to: number): number =>
    integrateAlong(profile, (way) => 1 / frames[gore]!.widthAt(profile.valueAt(way)), from, to);
}

function widthsOf(ways: readonly number[]): number[] {
  return ways.slice(1).map((way, i) => way - ways[i]!);
}
