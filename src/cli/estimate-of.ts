import type { DraftedGown } from '../drafted-gown.ts';
import { QUICK, SLOW, USUAL_WIDTHS, type UsualWork } from '../estimate/usual-work.ts';
import type { Cloth } from '../gown/cloth.ts';
import { inOtherCloths } from '../gown/other-cloths.ts';
import type { Labour } from '../gown/sections.ts';
import type { LayPlan } from '../lay/plan/lay-plan.ts';
import { decimalText } from '../money/fraction.ts';
import { amountText } from '../money/money.ts';
import { draftWhole } from '../pipeline.ts';
import { paperOf, sheetPlan } from '../publish/pattern-sheets.ts';
import { workroom } from '../workroom/workroom.ts';
import { askedLength } from './asked-length.ts';
import { askedPaper } from './asked-paper.ts';
import { askedPrices, type EstimateFlags, missingPrices } from './estimate-flags.ts';
import type { Machine } from './machine.ts';
import { planGownLays } from './plan-gown-lays.ts';

/** Metres in mm, hours and amounts as decimal text. */
export interface Estimate {
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

/** What a drafted gown takes in each width asked for, and a price of the last that serves. */
export async function estimateOf(
  gown: DraftedGown,
  flags: EstimateFlags,
  machine: Machine,
): Promise<Estimate> {
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

/** The gown's cloths at these prices, and at none of their own. */
function pricedAt(flags: EstimateFlags, drafted: DraftedGown): DraftedGown {
  const prices = askedPrices(
    flags,
    drafted.gown.cloths.map(({ name }) => name),
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
