/** A length as it is printed, without its unit: `12.5`, `-3/8`, `40 5/8`. NaN where it is none. */
export function printedLength(text: string): number {
  const match = /^(-?)(?:(\d+(?:\.\d+)?)(?: (\d+)\/(\d+))?|(\d+)\/(\d+))$/.exec(text.trim());
  if (match === null) return Number.NaN;
  const [, sign, whole = '0', over = match[5] ?? '0', under = match[6] ?? '1'] = match;
  const number = Number(whole) + Number(over) / Number(under);
  return sign === '-' ? -number : number;
}
