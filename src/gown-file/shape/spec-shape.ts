import * as z from 'zod/mini';
import { notOneOf } from '../../diagnostics/value-problems.ts';
import { bodice, body, cape, fittedTo, straps } from './bodice-sections.ts';
import { BOUNDS, MOST } from './bounds.ts';
import { cloths, edging, layer, notion, sewnAsOne, trim } from './cloth-sections.ts';
import {
  gore,
  gownAllowances,
  lengths,
  petticoat,
  roughCut,
  train,
  USUAL_ALLOWANCES,
} from './gown-sections.ts';
import { leaf } from './leaf.ts';
import { darts, flounce, godet, overskirt, pleats, tiers } from './part-sections.ts';
import { described, list, listOf, optional, section } from './section.ts';
import { stones } from './stone-sections.ts';
import { length } from './values.ts';
import { loops, pocket, slit, waist, withOwnWaist, wrap } from './waist-sections.ts';
import { matching, notes, oneOf, text } from './words.ts';
import { bustle, closure, cut, dates, fitting, labour, paper } from './workroom-sections.ts';

const written = section(
  () => ({
    format: leaf('count', { const: 1 }, '1', (written) =>
      written.text.trim() === '1'
        ? { value: 1 as const }
        : notOneOf(written.span, written.label, written.text, ['1'], undefined),
    ),
    gown: described(text(300), 'Printed on every piece'),
    client: optional(text(60), "A code, never a person's name"),
    units: described(oneOf('cm', 'mm', 'in'), 'What a bare number is in'),
    notes: optional(notes()),
    'based-on': optional(text(500), 'Another spec; this one keeps only what differs'),
    without: optional(listOf(text(200)), 'Of the spec below: what this one leaves out'),
    symmetry: optional(oneOf('mirrored', 'none')),
    body: optional(body, 'Her measures, over what she wears under the gown'),
    bodice: optional(bodice, 'Not needed where the skirt has a `waist` of its own'),
    waist: optional(waist, 'Of a skirt that is sewn to no bodice'),
    gores: described(list(gore, MOST.gores), 'From the centre front round to the centre back'),
    sweep: optional(length(BOUNDS.sweep), 'Full hem all round at lengths.hem-width-at'),
    'fitted-to': optional(
      fittedTo,
      'The gores follow the girths of body as far as this level, and then run on by sweep',
    ),
    lengths,
    train: optional(train),
    allowances: optional(gownAllowances),
    'rough-cut': optional(roughCut),
    layers: described(list(layer, MOST.layers), 'From the inside out'),
    'sewn-as-one': optional(sewnAsOne),
    cloths,
    petticoat: optional(petticoat),
    flounces: optional(list(flounce, MOST.parts)),
    tiers: optional(list(tiers, MOST.parts)),
    godets: optional(list(godet, MOST.parts)),
    pleats: optional(pleats),
    darts: optional(darts),
    overskirts: optional(list(overskirt, MOST.parts)),
    straps: optional(straps),
    capes: optional(list(cape, MOST.parts)),
    wrap: optional(wrap, 'A skirt whose two edges lie over one another, in place of a closure'),
    closure: optional(closure),
    slits: optional(list(slit, MOST.parts)),
    pockets: optional(list(pocket, MOST.parts)),
    loops: optional(list(loops, MOST.parts)),
    edging: optional(edging),
    stones: optional(stones, 'Beads, stones and sequins that are set by hand'),
    trims: optional(list(trim, MOST.trims)),
    bustle: optional(bustle),
    fittings: optional(list(fitting, MOST.fittings)),
    labour: optional(labour),
    notions: optional(list(notion, MOST.notions)),
    currency: optional(matching(/^[A-Z]{3}$/, 'a currency code of ISO 4217, such as EUR')),
    dates: optional(dates),
    paper: optional(paper),
    cut: optional(cut),
  }),
  {
    symmetry: 'mirrored',
    bodice: { waistSeam: 0, panels: {}, dropBelowWaist: {} },
    allowances: USUAL_ALLOWANCES,
    roughCut: {},
  },
);

/** The whole spec. The JSON Schema for editors and the reader both come from this definition. */
export const specShape = z.pipe(
  written,
  z.transform((spec) => withOwnWaist(spec)),
);

/** What a file can say, its keys as written. */
export type WrittenForm = z.input<typeof specShape>;

/** A spec whose every value is well formed; whether they agree is for the checks. */
export type ShapedSpec = z.output<typeof specShape>;
