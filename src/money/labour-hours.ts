import type { Labour } from '../gown/sections.ts';
import { type Fraction, fractionOfNumber, fractionOfText, minus, plus, times, ZERO } from './fraction.ts';

/** Hours for one task, exact. */
export interface TaskHours {
  /** As the spec names it, or `seams`, `waist`, `hems`, `edging` where worked out, or `other`. */
  readonly task: string;
  readonly hours: Fraction;
  /** Metres sewn that the hours were worked out from. */
  readonly metres?: Fraction;
}

/** Lengths sewn that hours can be worked out from, mm. */
export type SewnLengths = Readonly<Record<keyof NonNullable<Labour['perMetre']>, number>>;

export interface HoursInAll {
  readonly tasks: readonly TaskHours[];
  readonly inAll: Fraction;
  /** The tasks add up to more than `hours` says. */
  readonly over: boolean;
}

/**
 * Hours by task. Where `hours` gives the whole, what the tasks leave of it is other work; where it does not, work whose
 * rate per metre is given and that no task names is worked out from the lengths sewn.
 * @param setting hours of what is set by hand, by its name
 */
export function hoursByTask(
  labour: Labour,
  sewn: SewnLengths,
  setting: readonly TaskHours[] = [],
): HoursInAll {
  const named = Object.entries(labour.tasks ?? {}).map(
    ([task, hours]): TaskHours => ({ task, hours: fractionOfText(hours) }),
  );
  // What the maker says of a task stands before what is worked out for it.
  const given = [...named, ...setting.filter(({ task }) => labour.tasks?.[task] === undefined)];
  if (labour.hours === undefined) {
    const tasks = [...given, ...byMetre(labour, sewn)];
    return { tasks, inAll: sumOfHours(tasks), over: false };
  }
  const whole = fractionOfText(labour.hours);
  const rest = minus(whole, sumOfHours(given));
  if (rest.numerator < 0n) return { tasks: given, inAll: sumOfHours(given), over: true };
  const tasks =
    rest.numerator === 0n
      ? given
      : [...given, { task: given.length === 0 ? 'making' : 'other', hours: rest }];
  return { tasks, inAll: whole, over: false };
}

function byMetre(labour: Labour, sewn: SewnLengths): TaskHours[] {
  return Object.entries(labour.perMetre ?? {}).flatMap(([task, rate]) => {
    if (rate === undefined || labour.tasks?.[task] !== undefined) return [];
    // Metres to the centimetre: nobody charges closer.
    const metres = fractionOfNumber(Math.round(sewn[task as keyof SewnLengths] / 10) / 100);
    return [{ task, hours: times(fractionOfText(rate), metres), metres }];
  });
}

function sumOfHours(tasks: readonly TaskHours[]): Fraction {
  return tasks.reduce((sum, { hours }) => plus(sum, hours), ZERO);
}
