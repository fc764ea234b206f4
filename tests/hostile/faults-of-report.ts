/** Figures that are no numbers, anywhere in a report, and sizes that no piece can have. */
export function faultsOfReport(report: unknown, path = 'report'): string[] {
  if (typeof report === 'number') {
    if (!Number.isFinite(report)) return [`${path} is ${report}`];
    return POSITIVE.test(path) && report <= 0 ? [`${path} is ${report}`] : [];
  }
  if (typeof report === 'bigint' || typeof report === 'function' || typeof report === 'symbol')
    return [`${path} is a ${typeof report}`];
  if (report === undefined)
    return /\.(?:why|length|used|buy|cost)$/.test(path) ? [] : [`${path} is undefined`];
  if (typeof report !== 'object' || report === null) return [];
  return Object.entries(report).flatMap(([key, value]) => faultsOfReport(value, `${path}.${key}`));
}

const POSITIVE =
  /\.gores\.\d+\.(?:area|top|hem|copies)$|\.edges\.|\.stations\.\d+\.length$|\.(?:waist|hem)\.sewn$|\.lays\.\d+\.(?:width|length|used|buy)$|\.sheets\.\d+\.(?:page|width|height)$/;
