/** A length for a message, in the file's units: `105 cm`, `41.339 in`. */
export function lengthText(millimetres: number, units: string | undefined): string {
  if (units === 'in') return `${rounded(millimetres / 25.4, 3)} in`;
  return units === 'mm' ? `${rounded(millimetres, 2)} mm` : `${rounded(millimetres / 10, 3)} cm`;
}

function rounded(value: number, decimals: number): string {
  const text = String(Number(value.toFixed(decimals)));
  return text === '-0' ? '0' : text;
}
