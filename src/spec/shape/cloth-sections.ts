import * as z from 'zod';
import { BOUNDS } from './bounds.ts';
import { allowances, fullness } from './gown-sections.ts';
import { named, section } from './section.ts';
import {
  count,
  flag,
  length,
  money,
  name,
  notes,
  oneOf,
  share,
  soldBy,
  station,
  text,
  weight,
} from './values.ts';

/** Layers, cloths and what is sewn to their edges. */

const bought = {
  supplier: text().exactOptional(),
  colour: text().exactOptional(),
  'dye-lot': text().exactOptional(),
  notes: notes().exactOptional(),
};

const perUnit = () => oneOf('m', 'yd').exactOptional().meta({ description: 'What one price is for' });

export const layer = section({
  name: name(),
  cloth: name(),
  hem: oneOf('turned', 'faced', 'bagged', 'rolled', 'raw'),
  shorter: length(BOUNDS.shorter).exactOptional().meta({ description: 'Hem higher than the gown by this' }),
  'cut-smaller-across': share(BOUNDS.cutSmaller).exactOptional(),
  'cut-smaller-along': share(BOUNDS.cutSmaller).exactOptional(),
  allowances: allowances.exactOptional(),
  gores: z.array(name()).exactOptional().meta({ description: 'Only these gores; all when absent' }),
  edging: name().exactOptional(),
  fullness: fullness
    .exactOptional()
    .meta({ description: 'The whole layer gathered or pleated to the waist' }),
  seams: oneOf('pressed-open', 'french').exactOptional(),
  gap: section({
    at: station(),
    length: length(BOUNDS.opening),
    from: length(BOUNDS.down).exactOptional(),
  }).exactOptional(),
  notes: notes().exactOptional(),
});

export const sewnAsOne = section({
  waist: z.array(z.array(name())).exactOptional(),
  closure: z.array(name()).exactOptional(),
  notes: notes().exactOptional(),
});

export const cloth = section({
  width: length(BOUNDS.clothWidth),
  selvedge: length(BOUNDS.selvedge)
    .exactOptional()
    .meta({ description: "One selvedge's width; both are taken off" }),
  'one-way': flag().exactOptional().meta({ description: 'All tops one way: satin, pile, sequins, motifs' }),
  'head-to-tail': flag()
    .exactOptional()
    .meta({ description: 'Pieces may lie upside down; the opposite of one-way' }),
  fold: oneOf('any', 'single', 'lengthwise', 'crosswise').exactOptional(),
  weight: weight(BOUNDS.clothWeight).exactOptional().meta({ description: 'g/m²' }),
  shrinkage: share(BOUNDS.shrinkage).exactOptional(),
  price: money().exactOptional(),
  'priced-per': perUnit(),
  'sold-by': soldBy(BOUNDS.step).exactOptional(),
  minimum: length(BOUNDS.none).exactOptional(),
  'end-loss': length(BOUNDS.none).exactOptional(),
  safety: share(BOUNDS.safety).exactOptional(),
  'repeat-down': length(BOUNDS.repeat).exactOptional(),
  'repeat-across': length(BOUNDS.repeat).exactOptional(),
  used: length(BOUNDS.none).exactOptional().meta({ description: 'What was used in the end' }),
  weave: text(40).exactOptional(),
  stretch: flag().exactOptional(),
  stitch: length(BOUNDS.stitch, 'mm')
    .exactOptional()
    .meta({ description: 'Stitch length that the scrap test settled on; bare numbers in mm' }),
  ...bought,
});

export const edging = section({
  name: name(),
  depth: length(BOUNDS.trimWidth).exactOptional(),
  repeat: length(BOUNDS.repeat).exactOptional(),
  from: oneOf('bought-in', 'own-edges').exactOptional(),
  cloth: name().exactOptional().meta({ description: 'The cloth whose own edges are cut off' }),
  start: station().exactOptional(),
  price: money().exactOptional(),
  'priced-per': perUnit(),
  'sold-by': soldBy(BOUNDS.step).exactOptional(),
  braid: length(BOUNDS.trimWidth).exactOptional(),
  scallop: length(BOUNDS.trimWidth)
    .exactOptional()
    .meta({ description: 'From the low points of its scallops to the high points' }),
  ...bought,
});

export const trim = section({
  kind: oneOf('horsehair', 'binding', 'stay-tape'),
  layer: name(),
  along: station().meta({ description: 'hem, waist, or a station' }),
  width: length(BOUNDS.trimWidth).exactOptional(),
  price: money().exactOptional(),
  'priced-per': perUnit(),
  'sold-by': soldBy(BOUNDS.step).exactOptional(),
  ...bought,
});

export const notion = section({
  name: text(80),
  count: count(1, 100_000).exactOptional(),
  length: length(BOUNDS.step).exactOptional(),
  price: money().exactOptional(),
  'priced-per': perUnit(),
  ...bought,
});

export const cloths = named(cloth);
