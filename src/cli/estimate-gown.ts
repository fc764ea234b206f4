import { safeText } from '../diagnostics/safe-text.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import { BUST_GIRTHS, bodySize } from '../estimate/body-sizes.ts';
import { QUICK, SLOW, USUAL_WIDTHS, type UsualWork } from '../estimate/usual-work.ts';
import { readSpec } from '../gown-file/read-spec.ts';
import type { Spec } from '../gown-file/spec.ts';
import { type SupposedMeasures, unusedMeasures, withMeasures } from '../gown-file/with-measures.ts';
import type { LayPlan } from '../lay/plan/lay-plan.ts';
import { workroom } from '../making/workroom.ts';
import { decimalText } from '../money/fraction.ts';
import { amountText } from '../money/money.ts';
import { draftSpec } from '../pipeline.ts';
import { paperOf, sheetPlan } from '../publish/pattern-sheets.ts';
import { ENGLISH_ESTIMATE as words } from '../words/english-estimate.ts';
import { askedLength } from './asked-length.ts';
import { askedPaper } from './asked-paper.ts';
import { chosenTemplate } from './chosen-template.ts';
import { ExitStatus } from './exit-status.ts';
import { WrongCommandLine } from './fault.ts';
import { jsonText } from './json-text.ts';
import type { Machine } from './machine.ts';
import { templates } from './package-files.ts';
import { planGownLays } from './plan-gown-lays.ts';
import { hasErrors, printFindings } from './print-findings.ts';
import { textTable } from './text-table.ts';

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

/** `estimate`: cloth, paper, hours and a price for a first talk, from a template and a size. */
export async function estimateGown(flags: EstimateFlags, machine: Machine): Promise<ExitStatus> {
  checkRate(flags);
  const template = chosenTemplate(templates(), flags.from);
  const { spec: own } = readSpec({ name: `${template.name}.yaml`, text: template.text });
  if (own === undefined) throw new Error(`the template ${template.name} cannot be read`);
  const measures = supposedMeasures(flags, own);
  const supposed = withoutRecord(withMeasures(own, measures));
  const drafting = draftSpec(supposed);
  if (drafting.gown === undefined || hasErrors(drafting.diagnostics)) {
    printFindings(drafting.diagnostics, machine);
    return ExitStatus.specWrong;
  }
  const estimate = await estimateOf(drafting.gown, flags, machine);
  if (flags.json) machine.out(jsonText({ template: template.name, ...estimate, measures }));
  else machine.out(textOf(template.name, estimate, { flags, measures, spec: supposed }));
  return ExitStatus.done;
}

/** Metres in mm, hours and amounts as decimal text. */
interface Estimate {
  readonly cloth: readonly {
    readonly layer: string;
    readonly cloth: string;
    readonly widths: readonly { readonly width: number; readonly buy: number | null }[];
  }[];
  readonly sheets: { readonly paper: string; readonly count: number };
  readonly hours: { readonly least: string; readonly most: string };
  readonly price: { readonly least: string; readonly most: string } | null;
}

async function estimateOf(gown: DraftedGown, flags: EstimateFlags, machine: Machine): Promise<Estimate> {
  const widths = (flags.width ?? []).map((width) => askedLength('--width', width, gown.spec.units)!);
  const asked = widths.length === 0 ? USUAL_WIDTHS : widths;
  const lays: (readonly LayPlan[])[] = [];
  for (const width of asked) {
    const variant = draftSpec(withWidth(gown.spec, width)).gown;
    lays.push(variant === undefined ? [] : (await planGownLays(variant, 'quick', machine)).lays);
  }
  const paper = paperOf(gown, askedPaper(flags.paper)?.name);
  const priced = pricedAt(flags, gown.spec);
  // One width is priced: the last that every layer can be cut from.
  const buying = lays.findLast((own) => own.length === gown.layers.length) ?? [];
  const [least, most] = [QUICK, SLOW].map((work) => figuresOf(gown, buying, priced, work, flags.rate));
  return {
    cloth: gown.layers.map(({ name, cloth }) => ({
      layer: name,
      cloth: cloth.name,
      widths: asked.map((width, i) => ({
        width,
        buy: lays[i]?.find((lay) => lay.layer === name)?.buy ?? null,
      })),
    })),
    sheets: { paper: paper.name, count: sheetPlan(gown, paper).sheets.length },
    hours: { least: least!.hours, most: most!.hours },
    price:
      least!.total === undefined || most!.total === undefined || missingPrices(flags, gown.spec).length > 0
        ? null
        : { least: least!.total, most: most!.total },
  };
}

/** The hours, and the price with the cloth, by the same reckoning as a quote. */
function figuresOf(
  gown: DraftedGown,
  lays: readonly LayPlan[],
  priced: Spec['cloths'],
  work: UsualWork,
  rate: string | undefined,
): { hours: string; total: string | undefined } {
  const labour = { ...NO_EXTRAS, ...work, ...(rate !== undefined && { rate }) };
  const { pricing } = workroom({ ...gown, spec: { ...gown.spec, cloths: priced, labour } }, lays).facts;
  return {
    hours: decimalText(pricing.hours!.inAll, 0),
    total: pricing.quote === undefined ? undefined : amountText(pricing.quote.total),
  };
}

const NO_EXTRAS = { overhead: 0, margin: 0, tax: 0, deposit: 0 };

function withWidth(spec: Spec, width: number): Spec {
  const cloths = Object.entries(spec.cloths).map(([name, cloth]) => [name, { ...cloth, width }]);
  return { ...spec, cloths: Object.fromEntries(cloths) };
}

/** A template's own prices, hours and dates are somebody's, not this client's. */
function withoutRecord(spec: Spec): Spec {
  const { labour: _labour, dates: _dates, notions: _notions, cut: _cut, fittings: _fittings, ...rest } = spec;
  return rest;
}

const MEASURES: Readonly<Record<string, keyof SupposedMeasures>> = {
  waist: 'waist',
  hip: 'hip',
  'to-floor': 'toFloor',
  train: 'train',
  sweep: 'sweep',
  hoop: 'hoop',
};

function supposedMeasures(flags: EstimateFlags, spec: Spec): SupposedMeasures {
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

function pricedAt(flags: EstimateFlags, spec: Spec): Spec['cloths'] {
  const prices = new Map(
    (flags.price ?? []).map((text) => {
      const [cloth = '', price = ''] = text.split('=');
      if (!Object.hasOwn(spec.cloths, cloth) || !DECIMAL.test(price))
        throw new WrongCommandLine(
          `--price: "${safeText(text)}" is no cloth and price. Write such as shell=24.50; the cloths are ${Object.keys(spec.cloths).join(', ')}.`,
        );
      return [cloth, price];
    }),
  );
  const cloths = Object.entries(spec.cloths).map(([name, { price: _own, ...cloth }]) => {
    const price = prices.get(name);
    return [name, price === undefined ? cloth : { ...cloth, price }];
  });
  return Object.fromEntries(cloths);
}

function checkRate({ rate }: EstimateFlags): void {
  if (rate !== undefined && !DECIMAL.test(rate))
    throw new WrongCommandLine(`--rate: "${safeText(rate)}" is no amount. Write such as 23 or 23.50.`);
}

function missingPrices({ rate, price = [] }: EstimateFlags, spec: Spec): string[] {
  const given = price.map((text) => text.split('=')[0]);
  const cloths = Object.keys(spec.cloths).filter((name) => !given.includes(name));
  return [
    ...(rate === undefined ? ['--rate'] : []),
    ...(cloths.length === 0 ? [] : [`--price for ${cloths.join(', ')}`]),
  ];
}

function textOf(
  template: string,
  { cloth, sheets, hours, price }: Estimate,
  { flags, measures, spec }: { flags: EstimateFlags; measures: SupposedMeasures; spec: Spec },
): string {
  const say = (mm: number) => tapeText(mm, spec.units);
  const metres = (mm: number | null) =>
    mm === null
      ? words.cannot
      : spec.units === 'in'
        ? `${(mm / 914.4).toFixed(2)} yd`
        : `${(mm / 1000).toFixed(1)} m`;
  const size = flags.size === undefined ? undefined : bodySize(Number(flags.size));
  const supposed = (Object.keys(words.measures) as (keyof SupposedMeasures)[])
    .filter(
      (name) =>
        measures[name] !== undefined && !(size !== undefined && measures[name] === size[name as 'waist']),
    )
    .map((name) => words.measures[name](say(measures[name]!)));
  const assumed = [
    ...(size === undefined ? [] : [words.size(say(size.bust), say(size.waist), say(size.hip))]),
    ...supposed,
    words.rest(template),
    words.work,
    ...(flags.price === undefined ? [] : [words.prices(flags.price.map((text) => text.replace('=', ' ')))]),
    ...(flags.rate === undefined ? [] : [words.rate(flags.rate)]),
    words.without,
  ];
  const heads = [words.cloth, ...(cloth[0]?.widths ?? []).map(({ width }) => words.wide(say(width)))];
  return [
    words.title(template),
    '',
    textTable([
      heads,
      ...cloth.map((row) => [words.layer(row.layer, row.cloth), ...row.widths.map(({ buy }) => metres(buy))]),
    ]).trimEnd(),
    '',
    words.sheets(sheets.count, sheets.paper),
    words.hours(hours.least, hours.most),
    price === null ? words.noPrice(missingPrices(flags, spec)) : words.price(price.least, price.most),
    '',
    `${words.assumed}:`,
    ...assumed.map((line) => `- ${line}`),
    '',
    words.notice,
    '',
  ].join('\n');
}
