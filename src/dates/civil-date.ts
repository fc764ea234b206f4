/** Days of the Gregorian calendar as ISO 8601 text; pure arithmetic, no clock and no time zone. */

/** Days since 1970-01-01. Throws RangeError on text that is not a real day. */
export function dayNumber(date: string): number {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  if (match === null) throw new RangeError(`'${date}' is not a date such as 2026-06-20`);
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  const number = daysFromCivil(year, month, day);
  if (month < 1 || month > 12 || dateText(number) !== date) throw new RangeError(`there is no day ${date}`);
  return number;
}

export function dateText(dayNumberSince1970: number): string {
  const { year, month, day } = civilFromDays(dayNumberSince1970);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}

export function daysBefore(date: string, days: number): string {
  return dateText(dayNumber(date) - days);
}

/** 0 Monday … 6 Sunday. */
export function weekday(date: string): number {
  return (((dayNumber(date) + 3) % 7) + 7) % 7;
}

/** Years are counted from March, so that the leap day is a year's last. */
function daysFromCivil(year: number, month: number, day: number): number {
  const shifted = month <= 2 ? year - 1 : year;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146097 + dayOfEra - 719468;
}

function civilFromDays(days: number): { year: number; month: number; day: number } {
  const shifted = days + 719468;
  const era = Math.floor(shifted / 146097);
  const dayOfEra = shifted - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const day = dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1;
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  return { year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, day };
}
