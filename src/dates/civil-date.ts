/**
 * Days of the Gregorian calendar as ISO 8601 text: the language's own arithmetic of universal time (ECMA-262, Time Values
 * and Time Range), no clock and no time zone.
 */

const DAY = 86_400_000;

/** Days since 1970-01-01. Throws RangeError on text that is not a real day. */
export function dayNumber(date: string): number {
  if (!isDay(date)) throw new RangeError(`'${date}' is not a day such as 2026-06-20`);
  return daysTo(date);
}

/** Years of four figures. */
export function isDay(date: string): boolean {
  return /^\d{4}-\d{2}-\d{2}$/.test(date) && dateText(daysTo(date)) === date;
}

function daysTo(date: string): number {
  const [year, month, day] = date.split('-').map(Number) as [number, number, number];
  return new Date(0).setUTCFullYear(year, month - 1, day) / DAY;
}

export function dateText(dayNumberSince1970: number): string {
  return new Date(dayNumberSince1970 * DAY).toISOString().slice(0, 10);
}

export function daysBefore(date: string, days: number): string {
  return dateText(dayNumber(date) - days);
}

/** 0 Monday … 6 Sunday. */
export function weekday(date: string): number {
  return (new Date(dayNumber(date) * DAY).getUTCDay() + 6) % 7;
}
