import { type GownDraft, pieceOf } from '../draft/draft-gown.ts';
import type { EdgeProfile } from '../draft/edge-profiles.ts';
import type { GoreFrame } from '../draft/gore-frame.ts';
import type { Undraftable } from '../draft/undraftable.ts';
import type { LayerShape } from '../gown/layer.ts';
import type { Gore } from '../gown/lines.ts';
import { runsRound } from '../gown/lines.ts';
import { fullnessOf } from '../gown/lines-of-layer.ts';
import { altersSeams, altersTops, altersWaist, type HemKnot, type SideAlterations } from './alterations.ts';
import { alteredFrame } from './altered-frame.ts';
import { bentEdge } from './kept-edge.ts';
import { type SeamInset, seamInset } from './seam-inset.ts';
import { longerThanTops, noTakes, takesMore, WAIST_TAKE_REACHES, type WaistTakes } from './waist-takes.ts';

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
  const top = fittedTop(draft, side, other);
  if (top === undefined) return { reason: 'waist-does-not-settle' };
  const { frames, waist } = top;
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
  return { gown: fitted, shape, pieces, frames, waist, hem, lengths, ...top.letOut };
}

/** Rounds in which a gore is taken in as its waist edge moves; each gains two digits. */
const ROUNDS = 8;
/** Waist edges that miss their panels by less are as long as they, mm. */
const MEETS = 1e-3;

/**
 * The gores and their waist edge. Where the edge was moved on a skirt that flares it is longer or shorter there than
 * the bodice's: the seams beside it are taken in or let out as it goes. Under a drop a seam that is taken in at the
 * waist takes in a little more or less of the edge than of the level: that is made up for likewise.
 */
function fittedTop(
  draft: GownDraft,
  side: SideAlterations,
  other: SideAlterations,
):
  | { frames: readonly GoreFrame[]; waist: EdgeProfile; letOut: Pick<GownDraft, 'letOutAtWaist'> }
  | undefined {
  const taken = draft.gown.gores.map((_, i) => takenAtWaist(draft, side, i));
  const shares = draft.gown.gores.map((_, i) => sharesOf(draft, side, i));
  let takes = noTakes(draft);
  let letOut = 0;
  for (let round = 0; ; round++) {
    const frames = fittedFrames(draft, side, takes);
    const waist = fittedWaist(draft, side, other, frames);
    if (waist === undefined) return undefined;
    if (!altersWaist(side) && taken.every((own) => own === 0)) return { frames, waist, letOut: {} };
    const longer = longerThanTops(draft, frames, waist, taken);
    if (round === 0)
      letOut = -longer.reduce((sum, own, i) => sum + own / fullnessOf(draft.gown.gores[i]!, draft.shape), 0);
    if (round === ROUNDS || longer.every((own) => Math.abs(own) < MEETS))
      return { frames, waist, letOut: altersWaist(side) ? { letOutAtWaist: letOut } : {} };
    takes = takesMore(takes, draft, shares, longer);
  }
}

/**
 * What a gore's two edges take of what its top has to lose: beside where the edge was moved; where it was not, at the
 * seams that are taken in; to meet a fitted panel, at the seams that were pinned in the bodice, or at both alike.
 */
function sharesOf(draft: GownDraft, side: SideAlterations, gore: number): readonly [number, number] {
  const shares = altersWaist(side)
    ? side.waist
    : side.seams.map((own, station) => seamInset(own).valueAt(waistDepth(draft, station)));
  const [front, back] = [Math.abs(shares[gore]!), Math.abs(shares[gore + 1]!)];
  if (front + back > 0 || side.tops[gore] === 0) return [front, back];
  const pinned = [side.withBodice[gore], side.withBodice[gore + 1]].map(Number);
  return pinned[0]! + pinned[1]! === 0 ? [1, 1] : [pinned[0]!, pinned[1]!];
}

/** How far below its longest station a narrowed gore is followed, mm: room for hems that dip between stations. */
const BELOW_HEM = 100;

function fittedFrames(draft: GownDraft, side: SideAlterations, atWaist: WaistTakes): readonly GoreFrame[] {
  if (!altersSeams(side) && !altersWaist(side) && !altersTops(side)) return draft.frames;
  const { hem, gown, shape } = draft;
  const bottom = Math.max(...hem.ways.map((way) => hem.valueAt(way))) + letDown(side) + BELOW_HEM;
  return draft.frames.map((frame, i) => {
    const edge = (station: number, amount: number) => {
      const takes = side.seams[station]!;
      if (takes.length === 0 && amount === 0) return undefined;
      const inset = seamInset(takes, fullnessAlongSeam(gown.gores[i]!, shape));
      const from = waistDepth(draft, station);
      return { inset: amount === 0 ? inset : both(inset, waistInset(amount, from)), from };
    };
    const [front, back] = [edge(i, atWaist[i]![0]), edge(i + 1, atWaist[i]![1])];
    if (front === undefined && back === undefined) return frame;
    return alteredFrame(frame, { ...(front && { front }), ...(back && { back }) }, bottom);
  });
}

/** Taken in at the waist, and run out below it. */
function waistInset(amount: number, from: number): SeamInset {
  const open = { above: true, below: false };
  return seamInset([{ from, to: from + WAIST_TAKE_REACHES, amount, open }]);
}

function both(a: SeamInset, b: SeamInset): SeamInset {
  return { valueAt: (s) => a.valueAt(s) + b.valueAt(s), slopeAt: (s) => a.slopeAt(s) + b.slopeAt(s) };
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
    (sum, station) =>
      side.withBodice[station]
        ? sum
        : sum + seamInset(side.seams[station]!).valueAt(waistDepth(draft, station)),
    side.tops[gore]!,
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
  other: SideAlterations,
  frames: readonly GoreFrame[],
): EdgeProfile | undefined {
  if (!altersWaist(side) && frames === draft.frames) return draft.waist;
  const knots = ({ waist }: SideAlterations): HemKnot[] => waist.map((up, place) => ({ place, up }));
  return bentEdge(
    { edge: draft.waist, frames: { before: draft.frames, after: frames } },
    { own: [knots(side)], other: [knots(other)], closed: runsRound(draft.gown) },
  );
}

function fittedHem(
  draft: GownDraft,
  side: SideAlterations,
  other: SideAlterations,
  frames: readonly GoreFrame[],
): EdgeProfile | undefined {
  const closed = runsRound(draft.gown);
  if (side.hems.length === 0 && frames === draft.frames) return draft.hem;
  return bentEdge(
    { edge: draft.hem, frames: { before: draft.frames, after: frames } },
    { own: side.hems, other: other.hems, closed },
  );
}
