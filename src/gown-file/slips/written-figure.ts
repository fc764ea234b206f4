import type { Span } from '../../diagnostics/diagnostic.ts';
import type { Page } from '../checks/page.ts';
import { lengthOf, parseQuantity, shareOf, weightOf } from '../quantity.ts';
import type { FilePath } from '../spec.ts';
import { isScalar, type WrittenScalar } from '../written.ts';
import { likelyMeant } from './likely-meant.ts';
import type { Usual } from './usual.ts';

/** A figure as it stands in the file, and what it comes to: mm, g/m² or a fraction of 1. */
export interface Figure {
  readonly written: WrittenScalar;
  readonly value: number;
  readonly kind: NonNullable<Usual['kind']>;
}

/** Nothing where none stands there or it cannot be read, which has been spoken of. */
export function figureAt(page: Page, path: FilePath, kind: Figure['kind'] = 'length'): Figure | undefined {
  const written = page.sectionAt(...path);
  if (written === undefined || !isScalar(written)) return undefined;
  return figureOf(written, kind);
}

export function figureOf(written: WrittenScalar, kind: Figure['kind'] = 'length'): Figure | undefined {
  const quantity = written.kind === 'left-out' ? undefined : parseQuantity(written.text);
  if (quantity === undefined) return undefined;
  // In a file without units nobody can judge a bare number.
  if (kind === 'length' && quantity.unit === '' && written.file.units === undefined) return undefined;
  const value =
    kind === 'length'
      ? lengthOf(quantity, written.file.units ?? 'cm')
      : kind === 'share'
        ? shareOf(quantity)
        : weightOf(quantity);
  return value === undefined || !Number.isFinite(value) ? undefined : { written, value, kind };
}

export const spanOf = ({ written }: Figure): Span => written.span;

/** What may have been meant by it, inside what fits; as it would be written. */
export function meantBy(figure: Figure, expected: number, fits: (value: number) => boolean) {
  return meant(figure, expected, fits, false);
}

/** The same where what stands beside it says what to expect, so that a digit left out can be told. */
export function meantBeside(figure: Figure, expected: number, fits: (value: number) => boolean) {
  return meant(figure, expected, fits, true);
}

function meant(
  { written, value, kind }: Figure,
  expected: number,
  fits: (value: number) => boolean,
  mayLack: boolean,
): string | undefined {
  const given = written.file.units;
  const units = kind === 'length' ? given : kind === 'weight' && given === 'in' ? 'oz' : undefined;
  const by = (factor: number) => fits(Math.abs(value) * factor);
  return likelyMeant(written.text, Math.abs(expected / value), by, units, mayLack);
}
