import * as z from 'zod/mini';
import { BOUNDS } from './bounds.ts';
import { allowances, fullness } from './gown-sections.ts';
import { described, listOf, named, optional, section } from './section.ts';
import { USUAL_SELVEDGE } from './usual.ts';
import { count, length, price, share, soldBy, stiffness, weight } from './values.ts';
import { flag, meaning, name, notes, oneOf, station, text } from './words.ts';

/** Layers, cloths and what is sewn to their edges. */

const bought = {
  supplier: optional(text()),
  colour: optional(text()),
  'dye-lot': optional(text()),
  notes: optional(notes()),
};

const METRE = 1000;
const YARD = 914.4;

/** In mm. */
const perUnit = () => optional(meaning('length', { m: METRE, yd: YARD }), 'What one price is for');

interface Sold {
  readonly price?: { readonly amount: string; readonly inYards: boolean };
  readonly soldBy?: { readonly step: number; readonly inYards: boolean };
  readonly pricedPer?: number;
}

/** A price is for a metre or a yard: as said, else as the shop's step was written, else as its file measures. */
function sold<T extends Sold>({ price, soldBy, pricedPer, ...rest }: T) {
  const how = soldBy ?? price;
  const per = pricedPer ?? (how && (how.inYards ? YARD : METRE));
  return {
    ...rest,
    /** Decimal text as written, for `pricedPer` mm, or for one where things are counted. */
    ...(price && { price: price.amount }),
    ...(per !== undefined && { pricedPer: per }),
    /** The shop's step, mm. */
    ...(soldBy && { soldBy: soldBy.step }),
  };
}

export const hemFinish = () => oneOf('turned', 'faced', 'bagged', 'rolled', 'raw');

/** Cut to the shape of an edge and turned inside it. */
export const facing = section(() => ({
  depth: described(length(BOUNDS.facing), 'From the edge that it faces to its own inner edge, as sewn'),
  cloth: optional(name(), "The layer's own when absent"),
  notes: optional(notes()),
}));

/** Horizontal folds that are let out as a child grows. */
const growthTucks = section(() => ({
  count: count(1, 12),
  width: described(
    length(BOUNDS.pleat),
    'Of one, from its fold to its stitching: it takes twice this of cloth',
  ),
  'above-hem': described(
    length(BOUNDS.down),
    'From the finished hem to the stitching of the lowest, as sewn',
  ),
  apart: optional(length(BOUNDS.down), 'From one line of stitching to the next, as sewn'),
  notes: optional(notes()),
}));

export const layer = section(
  () => ({
    name: name(),
    cloth: name(),
    hem: hemFinish(),
    facing: optional(facing, 'Shaped facings of a faced hem'),
    shorter: optional(length(BOUNDS.shorter), 'Hem higher than the gown by this'),
    'cut-smaller-across': optional(share(BOUNDS.cutSmaller)),
    'cut-smaller-along': optional(share(BOUNDS.cutSmaller)),
    allowances: optional(allowances),
    gores: optional(listOf(name()), 'Only these gores; all when absent'),
    edging: optional(name()),
    grain: optional(oneOf('straight', 'bias'), 'bias: 45° on the thread, her two halves mirrored about it'),
    'growth-tucks': optional(growthTucks, 'Folded away above the hem, to be let out as she grows'),
    fullness: optional(fullness, 'The whole layer gathered or pleated to the waist'),
    seams: optional(oneOf('pressed-open', 'french')),
    gap: optional(
      section(() => ({
        at: station(),
        length: length(BOUNDS.opening),
        from: optional(length(BOUNDS.down)),
      })),
    ),
    notes: optional(notes()),
  }),
  { shorter: 0, cutSmallerAcross: 0, cutSmallerAlong: 0, allowances: {} },
);

export const sewnAsOne = section(() => ({
  waist: optional(listOf(listOf(name()))),
  closure: optional(listOf(name())),
  notes: optional(notes()),
}));

export const cloth = z.pipe(
  section(
    () => ({
      width: length(BOUNDS.clothWidth),
      selvedge: optional(length(BOUNDS.selvedge), "One selvedge's width; both are taken off"),
      'one-way': optional(flag(), 'All tops one way: satin, pile, sequins, motifs'),
      'head-to-tail': optional(flag(), 'Pieces may lie upside down; the opposite of one-way'),
      fold: optional(oneOf('any', 'single', 'lengthwise', 'crosswise')),
      apart: optional(flag(), 'Its layers are cut on different days, each in a lay of its own'),
      weight: optional(weight(BOUNDS.clothWeight), 'g/m²'),
      shrinkage: optional(share(BOUNDS.shrinkage)),
      price: optional(price()),
      'priced-per': perUnit(),
      'sold-by': optional(soldBy(BOUNDS.step)),
      minimum: optional(length(BOUNDS.none)),
      'end-loss': optional(length(BOUNDS.none)),
      safety: optional(share(BOUNDS.safety)),
      'repeat-down': optional(length(BOUNDS.repeat)),
      'repeat-across': optional(length(BOUNDS.repeat)),
      used: optional(length(BOUNDS.none), 'What was used in the end'),
      weave: optional(text(40)),
      'bending-length': optional(
        length(BOUNDS.bendingLength),
        'Half the overhang at which a strip pushed over the edge of the table hangs 41.5° down: how stiff it is',
      ),
      'shear-stiffness': optional(stiffness(BOUNDS.shearStiffness), 'N/m: how stiffly it gives on the bias'),
      stretch: optional(flag()),
      stitch: optional(
        length(BOUNDS.stitch, 'mm'),
        'Stitch length that the scrap test settled on; bare numbers in mm',
      ),
      ...bought,
    }),
    { selvedge: USUAL_SELVEDGE, fold: 'any', shrinkage: 0, endLoss: 0, safety: 0 },
  ),
  z.transform(({ headToTail, oneWay, ...rest }) => ({
    ...sold(rest),
    oneWay: oneWay ?? headToTail === false,
  })),
);

export const edging = z.pipe(
  section(
    () => ({
      name: name(),
      depth: optional(length(BOUNDS.trimWidth)),
      repeat: optional(length(BOUNDS.repeat)),
      from: optional(oneOf('bought-in', 'own-edges')),
      cloth: optional(name(), 'The cloth whose own edges are cut off'),
      start: optional(station()),
      price: optional(price()),
      'priced-per': perUnit(),
      'sold-by': optional(soldBy(BOUNDS.step)),
      braid: optional(length(BOUNDS.trimWidth)),
      scallop: optional(length(BOUNDS.trimWidth), 'From the low points of its scallops to the high points'),
      ...bought,
    }),
    { from: 'bought-in' },
  ),
  z.transform(sold),
);

export const trim = z.pipe(
  section(() => ({
    kind: oneOf('horsehair', 'binding', 'stay-tape'),
    layer: name(),
    along: described(station(), 'hem, waist, or a station'),
    width: optional(length(BOUNDS.trimWidth)),
    cloth: optional(name(), 'A binding is cut from it on the bias; bought by the metre when absent'),
    price: optional(price()),
    'priced-per': perUnit(),
    'sold-by': optional(soldBy(BOUNDS.step)),
    ...bought,
  })),
  z.transform(sold),
);

export const notion = z.pipe(
  section(() => ({
    name: text(80),
    count: optional(count(1, 100_000)),
    length: optional(length(BOUNDS.step)),
    price: optional(price()),
    'priced-per': perUnit(),
    ...bought,
  })),
  z.transform(sold),
);

export const cloths = named(cloth);
