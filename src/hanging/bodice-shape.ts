import type { DraftedBodice } from '../bodice/draft-asked.ts';
import type { HalfBodice } from '../bodice/draft-half.ts';
import { gapAt } from '../bodice/sewn-levels.ts';
import type { GownDraft } from '../draft/draft-gown.ts';
import { runsRound } from '../gown/lines.ts';

/** One half of a bodice as it is worn, from the centre front round: panels, and what is laced open. mm, above the waist. */
export interface BodiceHalf {
  readonly slices: readonly BodiceSlice[];
  /** By station, front to back: the slice that begins there; the last one ends there. */
  readonly stations: readonly { readonly name: string; readonly slice: number }[];
}

/** A panel, or the gap between two laced edges. */
export interface BodiceSlice {
  readonly isGap: boolean;
  readonly widthAt: (above: number) => number;
  /** Upper edge at a part of its width. */
  readonly topAt: (part: number) => number;
}

export interface BodiceShape {
  readonly left: BodiceHalf;
  readonly right: BodiceHalf;
}

/** The drafted bodice as it is sewn and laced. */
export function draftedShape({ draft }: DraftedBodice): BodiceShape {
  const { lacings, girths } = draft.measures;
  const gap = (station: string, above: number): number => {
    const own = lacings.find(({ at }) => at === station);
    if (own === undefined) return 0;
    const nearest = girths.reduce((best, level) =>
      Math.abs(level.above - above) < Math.abs(best.above - above) ? level : best,
    );
    return gapAt(own, nearest.at) / 2;
  };
  const half = (of: HalfBodice): BodiceHalf => {
    const last = of.stations.length - 1;
    const topAt = (panel: number, part: number): number => {
      const [from, to] = [of.upper.ways[panel]!, of.upper.ways[panel + 1]!];
      return -of.upper.valueAt(from + (to - from) * part);
    };
    const panels = of.frames.map(
      (frame, p): BodiceSlice => ({
        isGap: false,
        widthAt: (above) => frame.widthAt(-above),
        topAt: (part) => topAt(p, part),
      }),
    );
    const gapSlice = (station: number): BodiceSlice[] => {
      const name = of.stations[station]!;
      if (!lacings.some(({ at }) => at === name)) return [];
      const top = topAt(Math.min(station, last - 1), station === 0 ? 0 : 1);
      return [{ isGap: true, widthAt: (above) => gap(name, above), topAt: () => top }];
    };
    const front = gapSlice(0);
    return {
      slices: [...front, ...panels, ...gapSlice(last)],
      stations: of.stations.map((name, i) => ({ name, slice: i + front.length })),
    };
  };
  return { left: half(draft.left), right: half(draft.right) };
}

/** Above the waist for one of her height, from the centre front to the centre back: an edge without straps. From memory. */
const PLAIN_EDGE = [
  { part: 0, above: 0.133 },
  { part: 0.2, above: 0.144 },
  { part: 0.5, above: 0.12 },
  { part: 1, above: 0.112 },
] as const;

/** A made bodice, of which the waist alone is known: its panels go on from the gores, to an even edge. */
export function plainShape(draft: GownDraft, tall: number): BodiceShape {
  const { gores, stations } = draft.gown;
  const round = runsRound(draft.gown);
  const middle = round ? Math.ceil(gores.length / 2) : gores.length;
  const left = plainHalf(
    gores.slice(0, middle).map(({ top }) => top),
    stations.slice(0, middle + 1).map(({ name }) => name),
    tall,
  );
  if (!round) return { left, right: left };
  const backwards = plainHalf(
    gores
      .slice(middle)
      .map(({ top }) => top)
      .reverse(),
    stations
      .slice(middle)
      .map(({ name }) => name)
      .reverse(),
    tall,
  );
  return { left, right: backwards };
}

function plainHalf(tops: readonly number[], names: readonly string[], tall: number): BodiceHalf {
  const whole = tops.reduce((sum, top) => sum + top, 0);
  let passed = 0;
  const slices = tops.map((top): BodiceSlice => {
    const from = passed / whole;
    passed += top;
    return {
      isGap: false,
      widthAt: () => top,
      topAt: (part) => plainEdge(from + (top / whole) * part) * tall,
    };
  });
  return { slices, stations: names.map((name, slice) => ({ name, slice })) };
}

function plainEdge(part: number): number {
  const next = Math.max(
    1,
    PLAIN_EDGE.findIndex((level) => level.part >= part),
  );
  const [a, b] = [PLAIN_EDGE[next - 1]!, PLAIN_EDGE[next]!];
  const t = (part - a.part) / (b.part - a.part);
  return a.above + (b.above - a.above) * t * t * (3 - 2 * t);
}
