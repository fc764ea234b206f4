import { safeText } from '../diagnostics/safe-text.ts';
import { BUST_GIRTHS, bodySize } from '../estimate/body-sizes.ts';
import type { Gown } from '../gown/gown.ts';
import type { Spec } from '../gown-file/spec.ts';
import { type SupposedMeasures, unusedMeasures } from '../gown-file/with-measures.ts';
import { askedLength } from './asked-length.ts';
import { WrongCommandLine } from './fault.ts';

export interface EstimateFlags {
  readonly from: string;
  readonly size?: string;
  readonly set?: readonly string[];
  readonly width?: readonly string[];
  readonly rate?: string;
  readonly price?: readonly string[];
  readonly paper?: string;
  readonly json?: boolean;
}

const MEASURES: Readonly<Record<string, keyof SupposedMeasures>> = {
  waist: 'waist',
  hip: 'hip',
  'to-floor': 'toFloor',
  train: 'train',
  sweep: 'sweep',
  hoop: 'hoop',
};

/** The measures that the command line supposes, of a size and one by one. */
export function supposedMeasures(flags: EstimateFlags, spec: Spec): SupposedMeasures {
  const size = flags.size === undefined ? {} : sizeOf(flags.size);
  const set = Object.fromEntries(
    (flags.set ?? []).map((text) => {
      const [name = '', value] = text.split('=');
      const measure = MEASURES[name.trim()];
      if (measure === undefined || value === undefined)
        throw new WrongCommandLine(
          `--set: "${safeText(text)}" is no measure. Write one of ${Object.keys(MEASURES).join(', ')} and its length, such as waist=74.`,
        );
      return [measure, askedLength('--set', value, spec.units)];
    }),
  );
  const measures: SupposedMeasures = { ...size, ...set };
  const unused = unusedMeasures(spec, measures)[0];
  if (unused !== undefined)
    throw new WrongCommandLine(
      `--set: the template has no ${unused} that could be set. Take another template; "gorewright new" lists them.`,
    );
  return measures;
}

function sizeOf(text: string): SupposedMeasures {
  const size = bodySize(Number(text));
  if (size === undefined)
    throw new WrongCommandLine(
      `--size: "${safeText(text)}" is no size of EN 13402-3. Give a bust girth in cm: ${BUST_GIRTHS.join(', ')}.`,
    );
  return { waist: size.waist, hip: size.hip };
}

const DECIMAL = /^\d{1,9}(\.\d{1,4})?$/;

/** What a metre or yard of each cloth costs, by its name. */
export function askedPrices(
  { price = [] }: EstimateFlags,
  names: readonly string[],
): ReadonlyMap<string, string> {
  return new Map(
    price.map((text) => {
      const [cloth = '', amount = ''] = text.split('=');
      if (!names.includes(cloth) || !DECIMAL.test(amount))
        throw new WrongCommandLine(
          `--price: "${safeText(text)}" is no cloth and price. Write such as shell=24.50; the cloths are ${names.join(', ')}.`,
        );
      return [cloth, amount];
    }),
  );
}

export function checkRate({ rate }: EstimateFlags): void {
  if (rate !== undefined && !DECIMAL.test(rate))
    throw new WrongCommandLine(`--rate: "${safeText(rate)}" is no amount. Write such as 23 or 23.50.`);
}

/** What a price wants that the command line does not say. */
export function missingPrices(
  { rate, price = [] }: EstimateFlags,
  { cloths: all }: Pick<Gown, 'cloths'>,
): string[] {
  const given = price.map((text) => text.split('=')[0]);
  const cloths = all.map(({ name }) => name).filter((name) => !given.includes(name));
  return [
    ...(rate === undefined ? ['--rate'] : []),
    ...(cloths.length === 0 ? [] : [`--price for ${cloths.join(', ')}`]),
  ];
}
