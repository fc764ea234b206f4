/** What a value measures or says, and so how it is printed and when two are the same. Lengths are in mm, angles in radians, shares fractions of 1, weights in g/m². */
export type ValueKind =
  | 'length'
  | 'angle'
  | 'share'
  | 'weight'
  | 'count'
  | 'times'
  | 'money'
  | 'hours'
  | 'date'
  | 'flag'
  | 'text'
  | 'notes';

/**
 * A figure for a message, as the maker would write it: lengths in her file's units, to a hundredth of a millimetre
 * or better. What is read off a tape is said by `tapeText`.
 */
export function valueText(kind: ValueKind, value: number, units: string | undefined): string {
  switch (kind) {
    case 'length':
      return lengthInUnits(value, units);
    case 'angle':
      return `${rounded((value * 180) / Math.PI, 3)}°`;
    case 'share':
      return `${rounded(value * 100, 3)} %`;
    case 'weight':
      return `${rounded(value, 1)} g/m²`;
    default:
      return rounded(value, 4);
  }
}

/** `105 cm`, `41.339 in`. */
export function lengthInUnits(millimetres: number, units: string | undefined): string {
  if (units === 'in') return `${rounded(millimetres / 25.4, 3)} in`;
  return units === 'mm' ? `${rounded(millimetres, 2)} mm` : `${rounded(millimetres / 10, 3)} cm`;
}

function rounded(value: number, decimals: number): string {
  const text = String(Number(value.toFixed(decimals)));
  return text === '-0' ? '0' : text;
}
