import { safeText } from '../diagnostics/safe-text.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import { BUST_GIRTHS, bodySize } from '../estimate/body-sizes.ts';
import { QUICK, SLOW, USUAL_WIDTHS, type UsualWork } from '../estimate/usual-work.ts';
import type { Cloth } from '../gown/cloth.ts';
import type { Gown } from '../gown/gown.ts';
import { inOtherCloths } from '../gown/other-cloths.ts';
import type { Labour } from '../gown/sections.ts';
import { readSpec } from '../gown-file/read-spec.ts';
import type { Spec } from '../gown-file/spec.ts';
import { type SupposedMeasures, unusedMeasures, withMeasures } from '../gown-file/with-measures.ts';
import type { LayPlan } from '../lay/plan/lay-plan.ts';
import { decimalText } from '../money/fraction.ts';
import { amountText } from '../money/money.ts';
import { draftSpec, draftWhole } from '../pipeline.ts';
import { paperOf, sheetPlan } from '../publish/pattern-sheets.ts';
import { paperText } from '../sheets/paper.ts';
import { ENGLISH_ESTIMATE as words } from '../words/english-estimate.ts';
import { workroom } from '../workroom/workroom.ts';
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
  else machine.out(textOf(template.name, estimate, { flags, measures, gown: drafting.gown.gown }));
  return ExitStatus.done;
}

/** Metres in mm, hours and amounts as decimal text. */
interface Estimate {
  readonly cloth: readonly {
    readonly layer: string;
    readonly cloth: string;
    readonly widths: readonly { readonly width: number; readonly buy: number | null }[];
  }[];
  /** Of a cloth that several layers are cut from: all of them in one lay. */
  readonly together: readonly {
    readonly cloth: string;
    readonly layers: readonly string[];
    readonly widths: readonly { readonly width: number; readonly buy: number | null }[];
  }[];
  readonly sheets: { readonly paper: string; readonly count: number };
  readonly hours: { readonly least: string; readonly most: string };
  readonly price: { readonly least: string; readonly most: string } | null;
}

async function estimateOf(gown: DraftedGown, flags: EstimateFlags, machine: Machine): Promise<Estimate> {
  const widths = (flags.width ?? []).map((width) => askedLength('--width', width, gown.gown.units)!);
  const asked = widths.length === 0 ? USUAL_WIDTHS : widths;
  const lays: (readonly LayPlan[])[] = [];
  for (const width of asked) {
    const variant = draftWhole(inOtherCloths(gown.asked, (cloth) => ({ ...cloth, width }))).gown;
    lays.push(variant === undefined ? [] : (await planGownLays(variant, 'quick', machine)).lays);
  }
  const paper = paperOf(gown, askedPaper(flags.paper)?.name);
  const priced = pricedAt(flags, gown);
  // One width is priced: the last that every layer can be cut from.
  const buying = lays.findLast((own) => gown.layers.every(({ name }) => bought(name, own) !== null)) ?? [];
  const [least, most] = [QUICK, SLOW].map((work) => figuresOf(priced, buying, work, flags.rate));
  return {
    cloth: gown.layers.map(({ name, cloth }) => ({
      layer: name,
      cloth: cloth.name,
      widths: asked.map((width, i) => ({
        width,
        buy: bought(name, lays[i] ?? []),
      })),
    })),
    together: togetherOf(lays, asked),
    sheets: { paper: paper.name, count: sheetPlan(gown, paper).sheets.length },
    hours: { least: least!.hours, most: most!.hours },
    price:
      least!.total === undefined || most!.total === undefined || missingPrices(flags, gown.gown).length > 0
        ? null
        : { least: least!.total, most: most!.total },
  };
}

/** What one layer takes by itself; null where it cannot be cut from its cloth. */
function bought(layer: string, lays: readonly LayPlan[]): number | null {
  const lay = lays.find(({ layers }) => layers.includes(layer));
  return lay?.apart?.layers.find((own) => own.layer === layer)?.buy ?? lay?.buy ?? null;
}

function togetherOf(lays: readonly (readonly LayPlan[])[], asked: readonly number[]): Estimate['together'] {
  const shared = lays.flat().filter(({ layers }) => layers.length > 1);
  const names = [...new Set(shared.map(({ name }) => name))];
  return names.map((name) => {
    const { cloth, layers } = shared.find((lay) => lay.name === name)!;
    const widths = asked.map((width, i) => ({
      width,
      buy: lays[i]?.find((lay) => lay.name === name)?.buy ?? null,
    }));
    return { cloth, layers, widths };
  });
}

/** The hours, and the price with the cloth, by the same reckoning as a quote. */
function figuresOf(
  drafted: DraftedGown,
  lays: readonly LayPlan[],
  work: UsualWork,
  rate: string | undefined,
): { hours: string; total: string | undefined } {
  const { gown } = drafted;
  const labour: Labour = {
    ...NO_EXTRAS,
    ...work,
    ...(rate !== undefined && { rate }),
    place: (...path) => gown.place('labour', ...path),
  };
  const { pricing } = workroom({ ...drafted, gown: { ...gown, labour } }, lays).facts;
  return {
    hours: decimalText(pricing.hours!.inAll, 0),
    total: pricing.quote === undefined ? undefined : amountText(pricing.quote.total),
  };
}

const NO_EXTRAS = { overhead: 0, margin: 0, tax: 0, deposit: 0 };

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

/** The gown's cloths at these prices, and at none of their own. */
function pricedAt(flags: EstimateFlags, drafted: DraftedGown): DraftedGown {
  const names = drafted.gown.cloths.map(({ name }) => name);
  const prices = new Map(
    (flags.price ?? []).map((text) => {
      const [cloth = '', price = ''] = text.split('=');
      if (!names.includes(cloth) || !DECIMAL.test(price))
        throw new WrongCommandLine(
          `--price: "${safeText(text)}" is no cloth and price. Write such as shell=24.50; the cloths are ${names.join(', ')}.`,
        );
      return [cloth, price];
    }),
  );
  const priced = ({ price: _own, ...cloth }: Cloth): Cloth => {
    const price = prices.get(cloth.name);
    return price === undefined ? cloth : { ...cloth, price };
  };
  return {
    ...drafted,
    gown: inOtherCloths(drafted.gown, priced),
    layers: drafted.layers.map((layer) => ({ ...layer, cloth: priced(layer.cloth) })),
  };
}

function checkRate({ rate }: EstimateFlags): void {
  if (rate !== undefined && !DECIMAL.test(rate))
    throw new WrongCommandLine(`--rate: "${safeText(rate)}" is no amount. Write such as 23 or 23.50.`);
}

function missingPrices({ rate, price = [] }: EstimateFlags, { cloths: all }: Pick<Gown, 'cloths'>): string[] {
  const given = price.map((text) => text.split('=')[0]);
  const cloths = all.map(({ name }) => name).filter((name) => !given.includes(name));
  return [
    ...(rate === undefined ? ['--rate'] : []),
    ...(cloths.length === 0 ? [] : [`--price for ${cloths.join(', ')}`]),
  ];
}

function textOf(
  template: string,
  { cloth, together, sheets, hours, price }: Estimate,
  { flags, measures, gown }: { flags: EstimateFlags; measures: SupposedMeasures; gown: Gown },
): string {
  const say = (mm: number) => tapeText(mm, gown.units);
  const metres = (mm: number | null) =>
    mm === null
      ? words.cannot
      : gown.units === 'in'
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
      ...together.map((row) => [
        words.together(row.layers, row.cloth),
        ...row.widths.map(({ buy }) => metres(buy)),
      ]),
    ]).trimEnd(),
    '',
    words.sheets(sheets.count, paperText(sheets.paper)),
    words.hours(hours.least, hours.most),
    price === null ? words.noPrice(missingPrices(flags, gown)) : words.price(price.least, price.most),
    '',
    `${words.assumed}:`,
    ...assumed.map((line) => `- ${line}`),
    '',
    words.notice,
    '',
  ].join('\n');
}
