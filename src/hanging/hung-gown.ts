import { type BustleAdvice, bustleAdvice, type PointOffered } from './bustle-advice.ts';
import type { DrawnPart } from './drawn-part.ts';
import { type Hang, hangOf } from './hang.ts';
import { hangCloth, type Settling } from './hang-cloth.ts';
import { type HangFigures, hangFigures } from './hang-figures.ts';
import { hungParts } from './hung-parts.ts';
import type { PartToHang } from './part-to-hang.ts';
import type { ViewFrom } from './seen.ts';
import type { Tie } from './sewn-cloth.ts';
import type { GownHung } from './sewn-gown.ts';
import type { ViewExtras } from './view-extras.ts';
import { type GownView, gownViews } from './views.ts';

/** All that one thread needs to hang a gown and look at it: plain numbers. */
export interface HangTask {
  /** What is hung, and what else there is that is not. */
  readonly layer: string;
  readonly notHung: readonly string[];
  readonly sewn: GownHung;
  /** Net tiers that it hides. */
  readonly under?: GownHung;
  /** What is sewn on and hangs over the skirt, from the inside out. */
  readonly parts: readonly PartToHang[];
  /** What she wears above the skirt: drawn as it stands. */
  readonly above: readonly DrawnPart[];
  /** Her bodice is the drafted one; else a plain one stands for it. */
  readonly isBodiceDrafted: boolean;
  readonly extras: ViewExtras;
  /** The bustle's loops; none where the train stays down. */
  readonly ties: readonly Tie[];
  /** Where the bustle could have a point more. */
  readonly offered: readonly PointOffered[];
}

/** A gown hung, and what was hung. */
export interface Hanging {
  readonly task: HangTold;
  readonly hung: HungGown;
}

/** What is told of what was hung. */
export interface HangTold extends Pick<HangTask, 'layer' | 'notHung' | 'isBodiceDrafted'> {
  readonly sewn: { readonly cloth: Pick<GownHung['cloth'], 'bendingLength'> };
}

/** How a gown hangs, and how it looks. */
export interface HungGown {
  readonly figures: HangFigures;
  /** Front, from her left, back and from above. */
  readonly views: readonly GownView[];
  /** The net tiers that the skirt hides, by themselves. */
  readonly under?: readonly GownView[];
  readonly bustled?: {
    readonly figures: HangFigures;
    readonly views: readonly GownView[];
    /** Where its hem lies on the floor. */
    readonly advice?: BustleAdvice;
  };
}

/**
 * From a start twice as coarse, in which the cloth finds its place and its folds, to the finest mesh. The last steps are
 * small: what stretch is left falls with the step.
 */
export const SETTLINGS: readonly Settling[] = [
  { stride: 2, steps: 360, fall: 0.2, keeps: 0.97 },
  { stride: 1, steps: 110, fall: 0.05, keeps: 0.97 },
  { stride: 1, steps: 50, fall: 0.02, keeps: 0.95 },
  { stride: 1, steps: 60, fall: 0.005, keeps: 0.9 },
  { stride: 1, steps: 60, fall: 0.0006, keeps: 0.88 },
];

/** The start alone, drawn as it is: a picture while the maker waits. */
export const AT_FIRST: readonly Settling[] = [
  { stride: 2, steps: 260, fall: 0.2, keeps: 0.97 },
  { stride: 2, steps: 60, fall: 0.03, keeps: 0.95 },
];

/** With a train drawn up much hangs from few places: small falls throughout, or the cloth would slip off them. */
export const DRAWN_UP: readonly Settling[] = [
  { stride: 2, steps: 300, fall: 0.1, keeps: 0.98 },
  { stride: 2, steps: 80, fall: 0.03, keeps: 0.96 },
  { stride: 1, steps: 60, fall: 0.01, keeps: 0.95 },
  { stride: 1, steps: 60, fall: 0.003, keeps: 0.93 },
  { stride: 1, steps: 40, fall: 0.0003, keeps: 0.85 },
  { stride: 1, steps: 40, fall: 0.00005, keeps: 0.8 },
];

/** The floor at 0, and friction of cloth on it and of cloth on a petticoat, for one of pressure. From memory: 0.3 to 0.6, 0.15 to 0.3. */
export const AROUND = { floor: 0, floorGrip: 0.4, bodyGrip: 0.15 } as const;

/** The same in a tenth of the work, with its train down: coarser folds, and figures that are not yet to be relied on. */
export function hungAtFirst(task: HangTask): HungGown {
  const { sewn } = task;
  const mesh = hangCloth(sewn.cloth, { body: sewn.body, ...AROUND }, AT_FIRST);
  return looked(hangOf(sewn, mesh), ['front', 'side', 'back', 'above'], task);
}

/** Hangs a drafted gown over what she wears under it, on the floor, and with its train drawn up. */
export function hungGown(task: HangTask): HungGown {
  const { sewn, ties } = task;
  const around = { body: sewn.body, ...AROUND };
  const mesh = hangCloth(sewn.cloth, around, SETTLINGS);
  const down = {
    ...looked(hangOf(sewn, mesh), ['front', 'side', 'back', 'above'], task),
    ...(task.under && { under: underneath(task, task.under) }),
  };
  if (ties.length === 0) return down;
  const hangWith = (more: readonly Tie[]): Hang =>
    hangOf(sewn, hangCloth(sewn.cloth, around, DRAWN_UP, { ties: [...ties, ...more], from: mesh }));
  const drawnUp = hangWith([]);
  const advice = bustleAdvice(task, drawnUp, hangWith);
  const bustled = looked(drawnUp, ['front', 'side', 'back'], task);
  return { ...down, bustled: { ...bustled, ...(advice && { advice }) } };
}

/** What is hidden lies on the shape that holds the skirt out: it hangs in as little work as a flounce. */
export const UNDERNEATH: readonly Settling[] = [
  { stride: 2, steps: 100, fall: 0.15, keeps: 0.96 },
  { stride: 1, steps: 30, fall: 0.03, keeps: 0.95 },
  { stride: 1, steps: 30, fall: 0.004, keeps: 0.9 },
  { stride: 1, steps: 40, fall: 0.0004, keeps: 0.85 },
];

function underneath({ extras: { wearer } }: HangTask, under: GownHung): readonly GownView[] {
  const mesh = hangCloth(under.cloth, { body: under.body, ...AROUND }, UNDERNEATH);
  return gownViews(hangOf(under, mesh), ['front', 'side', 'back'], { wearer: { ...wearer, bare: true } }, []);
}

/** What it measures, and how it looks with all that is sewn to it. */
function looked(
  hang: Hang,
  sides: readonly ViewFrom[],
  { parts, above, extras }: HangTask,
): { readonly figures: HangFigures; readonly views: readonly GownView[] } {
  const hung = hungParts(parts, hang, AROUND).flatMap(({ drawn }) => drawn);
  return {
    figures: hangFigures(
      hang,
      hung.map(({ surface }) => surface.place),
    ),
    views: gownViews(hang, sides, extras, [...above, ...hung]),
  };
}
