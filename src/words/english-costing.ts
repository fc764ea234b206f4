import type { MissingFact } from '../workroom/missing-facts.ts';
import type { Basics } from './english-basics.ts';

/** What it costs, what is not said in the spec, and what was spent. */
export function englishCosting({ list, station }: Basics) {
  return {
    missing: MISSING(list, station),
    costing: {
      title: 'Costing',
      private: 'For the maker only: the client’s pages show none of this.',
      cutShort:
        'The lays were cut short: this cloth is more than is needed. Draft again before you buy or quote.',
      heads: ['what', 'how much', 'at', 'amount'],
      perMetre: (amount: string): string => `${amount} a metre`,
      perYard: (amount: string): string => `${amount} a yard`,
      perHour: (amount: string): string => `${amount} an hour`,
      each: (amount: string): string => `${amount} each`,
      hours: (hours: string): string => `${hours} h`,
      tasks: {
        making: 'making',
        other: 'other work',
        seams: 'seams',
        waist: 'waist',
        hems: 'hems',
        edging: 'edging',
      } as Readonly<Record<string, string>>,
      materials: 'materials and notions',
      labour: 'work',
      overhead: (share: string): string => `overhead, ${share} of both`,
      cost: 'cost',
      margin: (share: string): string => `margin, ${share} of cost`,
      rounding: 'rounding',
      net: 'price before tax',
      tax: (share: string): string => `tax, ${share}`,
      total: 'price',
      spare: 'These are reckonings, not legal or tax advice: ask an accountant.',
    },
    record: {
      title: 'Planned and actual',
      heads: ['what', 'planned', 'actual', 'difference'],
      hours: 'hours',
      cloth: (name: string): string => `${name}, length`,
      spent: 'materials',
      revised: 'Price by what it came to',
      paid: 'paid so far',
      balance: 'balance to invoice on the price agreed',
      balanceRevised: 'balance by what it came to',
      empty: 'Nothing is kept yet: fill in here, then under `labour.actual` and `used` in the spec.',
    },
  };
}

type Sentence = (names: readonly string[]) => string;

function MISSING(
  list: Basics['list'],
  station: Basics['station'],
): Readonly<Record<MissingFact['fact'], Sentence>> {
  const stations: Sentence = (names) => list(names.map((name) => station(name)));
  return {
    closure: () => 'closure: nothing is said of how she gets in.',
    girths: () => 'closure.hip, closure.shoulders: whether she gets in was not checked.',
    'waist-groups': () => 'sewn-as-one.waist: each layer is sewn to the bodice by itself.',
    'closure-layers': () => 'sewn-as-one.closure: the closure is taken through all layers.',
    'bodice-plies': () => 'bodice.plies: the bodice is counted as one ply.',
    'bones-end': () => 'bodice.bones-end: the needle’s distance from the bones was not checked.',
    'off-floor': () => 'lengths.off-floor: the hem’s height off the floor is not known.',
    'floor-lengths': (names) =>
      `lengths.to-floor: the floor is not known at ${stations(names)}, so the sweep over the hoop was not checked.`,
    'hoop-height': () => 'petticoat.hoop-off-floor: the hoop is taken to hang as high as the hem.',
    'edging-start': (names) => `edging.start: taken as ${stations(names)}.`,
    'bustle-floor': (names) =>
      `lengths.to-floor: without it no pick-up for the bustle at ${stations(names)}.`,
    'bustle-floor-estimated': (names) =>
      `lengths.to-floor at ${stations(names)}: worked out between its neighbours; measure it before the bustle is marked.`,
    'cloth-weight': (names) => `weight of ${list(names)}: the skirt’s weight is not known.`,
    price: (names) => `price of ${list(names)}: not in the costing.`,
    lay: (names) => `length of ${list(names)} to buy: not in the costing.`,
    'no-prices': () => 'prices and hours: there is no costing and no quote.',
    rate: () => 'labour.rate: no work is charged.',
    hours: () => 'labour.hours, tasks or per-metre: no work is charged.',
    'fittings-included': () => 'labour.fittings-included: the quote does not say how many.',
    expires: () => 'labour.expires: the quote has no last day.',
    event: () => 'dates.event: no calendar.',
  };
}
