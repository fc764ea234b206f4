import { dayNumber, daysBefore, weekday } from './civil-date.ts';

/**
 * What has to be done by when, and days before the event that it is usually done. Common practice: the maker moves
 * any of them by `dates.before`.
 */
export const USUAL_DAYS_BEFORE = {
  'order-cloth': 84,
  'test-scraps': 70,
  toile: 63,
  'toile-fitting': 56,
  cut: 49,
  'first-fitting': 35,
  hang: 24,
  'level-hem': 21,
  'last-fitting': 10,
  deliver: 4,
  event: 0,
} as const;

export type Milestone = keyof typeof USUAL_DAYS_BEFORE;

export interface CalendarEntry {
  readonly milestone: Milestone;
  readonly date: string;
  /** 0 Monday … 6 Sunday. */
  readonly weekday: number;
  readonly daysBefore: number;
  /** Moved by the spec from what is usual. */
  readonly moved: boolean;
}

export function isMilestone(name: string): name is Milestone {
  return Object.hasOwn(USUAL_DAYS_BEFORE, name);
}

/**
 * The calendar worked back from the event, earliest first; milestones of one day stay in the order of the work.
 * @param event ISO date; throws RangeError if it is none
 */
export function calendar(event: string, before: Readonly<Record<string, number>> = {}): CalendarEntry[] {
  dayNumber(event);
  return (Object.keys(USUAL_DAYS_BEFORE) as Milestone[])
    .map((milestone) => {
      const days = milestone === 'event' ? 0 : Math.round(before[milestone] ?? USUAL_DAYS_BEFORE[milestone]);
      const date = daysBefore(event, days);
      return {
        milestone,
        date,
        weekday: weekday(date),
        daysBefore: days,
        moved: days !== USUAL_DAYS_BEFORE[milestone],
      };
    })
    .sort((a, b) => b.daysBefore - a.daysBefore);
}

/** Pairs that stand in the wrong order: cutting before the toile was fitted, levelling in less than a day's hanging. */
export function clashesIn(
  entries: readonly CalendarEntry[],
): { readonly earlier: Milestone; readonly later: Milestone }[] {
  const days = new Map(entries.map((entry) => [entry.milestone, entry.daysBefore]));
  const names = Object.keys(USUAL_DAYS_BEFORE) as Milestone[];
  const clashes: { earlier: Milestone; later: Milestone }[] = [];
  for (let i = 0; i + 1 < names.length; i++) {
    const [earlier, later] = [names[i]!, names[i + 1]!];
    const apart = days.get(earlier)! - days.get(later)!;
    if (apart < (earlier === 'hang' ? 1 : 0)) clashes.push({ earlier, later });
  }
  return clashes;
}
