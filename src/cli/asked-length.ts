import { safeText } from '../diagnostics/safe-text.ts';
import { lengthOf, parseQuantity } from '../gown-file/quantity.ts';
import { WrongCommandLine } from './fault.ts';

/** A length of an option in mm; a bare number is in the spec's units. */
export function askedLength(option: string, text: string | undefined, units: string): number | undefined {
  if (text === undefined) return undefined;
  const quantity = parseQuantity(text);
  const length = quantity === undefined ? undefined : lengthOf(quantity, units);
  if (length !== undefined && length >= SHORTEST && length <= LONGEST) return length;
  throw new WrongCommandLine(
    `${option}: "${safeText(text)}" is no length between 1 cm and 10 m. Write it as 10cm, 100mm or 4in.`,
  );
}

/** mm. Shorter would make tables of thousands of rows, longer is no length of a gown or a cloth. */
const SHORTEST = 10;
const LONGEST = 10_000;
