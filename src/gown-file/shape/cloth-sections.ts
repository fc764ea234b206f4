import * as z from 'zod/mini';
import { BOUNDS } from './bounds.ts';
import { allowances, fullness } from './gown-sections.ts';
import { described, named, optional, section } from './section.ts';
import { count, length, money, share, soldBy, weight } from './values.ts';
import { flag, name, notes, oneOf, station, text } from './words.ts';

/** Layers, cloths and what is sewn to their edges. */

const bought = {
  supplier: optional(text()),
  colour: optional(text()),
  'dye-lot': optional(text()),
  notes: optional(notes()),
};

const perUnit = () => optional(oneOf('m', 'yd'), 'What one price is for');

export const layer = section({
  name: name(),
  cloth: name(),
  hem: oneOf('turned', 'faced', 'bagged', 'rolled', 'raw'),
  shorter: optional(length(BOUNDS.shorter), 'Hem higher than the gown by this'),
  'cut-smaller-across': optional(share(BOUNDS.cutSmaller)),
  'cut-smaller-along': optional(share(BOUNDS.cutSmaller)),
  allowances: optional(allowances),
  gores: optional(z.array(name()), 'Only these gores; all when absent'),
  edging: optional(name()),
  fullness: optional(fullness, 'The whole layer gathered or pleated to the waist'),
  seams: optional(oneOf('pressed-open', 'french')),
  gap: optional(
    section({
      at: station(),
      length: length(BOUNDS.opening),
      from: optional(length(BOUNDS.down)),
    }),
  ),
  notes: optional(notes()),
});

export const sewnAsOne = section({
  waist: optional(z.array(z.array(name()))),
  closure: optional(z.array(name())),
  notes: optional(notes()),
});

export const cloth = section({
  width: length(BOUNDS.clothWidth),
  selvedge: optional(length(BOUNDS.selvedge), "One selvedge's width; both are taken off"),
  'one-way': optional(flag(), 'All tops one way: satin, pile, sequins, motifs'),
  'head-to-tail': optional(flag(), 'Pieces may lie upside down; the opposite of one-way'),
  fold: optional(oneOf('any', 'single', 'lengthwise', 'crosswise')),
  apart: optional(flag(), 'Its layers are cut on different days, each in a lay of its own'),
  weight: optional(weight(BOUNDS.clothWeight), 'g/m²'),
  shrinkage: optional(share(BOUNDS.shrinkage)),
  price: optional(money()),
  'priced-per': perUnit(),
  'sold-by': optional(soldBy(BOUNDS.step)),
  minimum: optional(length(BOUNDS.none)),
  'end-loss': optional(length(BOUNDS.none)),
  safety: optional(share(BOUNDS.safety)),
  'repeat-down': optional(length(BOUNDS.repeat)),
  'repeat-across': optional(length(BOUNDS.repeat)),
  used: optional(length(BOUNDS.none), 'What was used in the end'),
  weave: optional(text(40)),
  stretch: optional(flag()),
  stitch: optional(
    length(BOUNDS.stitch, 'mm'),
    'Stitch length that the scrap test settled on; bare numbers in mm',
  ),
  ...bought,
});

export const edging = section({
  name: name(),
  depth: optional(length(BOUNDS.trimWidth)),
  repeat: optional(length(BOUNDS.repeat)),
  from: optional(oneOf('bought-in', 'own-edges')),
  cloth: optional(name(), 'The cloth whose own edges are cut off'),
  start: optional(station()),
  price: optional(money()),
  'priced-per': perUnit(),
  'sold-by': optional(soldBy(BOUNDS.step)),
  braid: optional(length(BOUNDS.trimWidth)),
  scallop: optional(length(BOUNDS.trimWidth), 'From the low points of its scallops to the high points'),
  ...bought,
});

export const trim = section({
  kind: oneOf('horsehair', 'binding', 'stay-tape'),
  layer: name(),
  along: described(station(), 'hem, waist, or a station'),
  width: optional(length(BOUNDS.trimWidth)),
  price: optional(money()),
  'priced-per': perUnit(),
  'sold-by': optional(soldBy(BOUNDS.step)),
  ...bought,
});

export const notion = section({
  name: text(80),
  count: optional(count(1, 100_000)),
  length: optional(length(BOUNDS.step)),
  price: optional(money()),
  'priced-per': perUnit(),
  ...bought,
});

export const cloths = named(cloth);
