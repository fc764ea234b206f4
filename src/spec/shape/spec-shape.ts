import * as z from 'zod';
import { notOneOf } from '../../diagnostics/value-problems.ts';
import { BOUNDS } from './bounds.ts';
import { cloths, edging, layer, notion, sewnAsOne, trim } from './cloth-sections.ts';
import { allowances, bodice, gore, lengths, petticoat, roughCut, train } from './gown-sections.ts';
import { leaf } from './leaf.ts';
import { section } from './section.ts';
import { length, matching, notes, oneOf, text } from './values.ts';
import { bustle, closure, cut, dates, fitting, labour, paper } from './workroom-sections.ts';

/** The whole spec. The JSON Schema for editors and the reader both come from this definition. */
export const specShape = section({
  format: leaf({ const: 1 }, '1', (written) =>
    written.text.trim() === '1'
      ? { value: 1 as const }
      : notOneOf(written.span, written.label, written.text, ['1'], undefined),
  ),
  gown: text(300).meta({ description: 'Printed on every piece' }),
  client: text(60).exactOptional().meta({ description: "A code, never a person's name" }),
  units: oneOf('cm', 'mm', 'in').meta({ description: 'What a bare number is in' }),
  notes: notes().exactOptional(),
  'based-on': text(500)
    .exactOptional()
    .meta({ description: 'Another spec; this one keeps only what differs' }),
  without: z
    .array(text(200))
    .exactOptional()
    .meta({ description: 'Of the spec below: what this one leaves out' }),
  symmetry: oneOf('mirrored', 'none').exactOptional(),
  bodice,
  gores: z.array(gore).meta({ description: 'From the centre front round to the centre back' }),
  sweep: length(BOUNDS.sweep)
    .exactOptional()
    .meta({ description: 'Full hem all round at lengths.hem-width-at' }),
  lengths,
  train: train.exactOptional(),
  allowances: allowances.exactOptional(),
  'rough-cut': roughCut.exactOptional(),
  layers: z.array(layer).meta({ description: 'From the inside out' }),
  'sewn-as-one': sewnAsOne.exactOptional(),
  cloths,
  petticoat: petticoat.exactOptional(),
  closure: closure.exactOptional(),
  edging: edging.exactOptional(),
  trims: z.array(trim).exactOptional(),
  bustle: bustle.exactOptional(),
  fittings: z.array(fitting).exactOptional(),
  labour: labour.exactOptional(),
  notions: z.array(notion).exactOptional(),
  currency: matching(/^[A-Z]{3}$/, 'a currency code of ISO 4217, such as EUR').exactOptional(),
  dates: dates.exactOptional(),
  paper: paper.exactOptional(),
  cut: cut.exactOptional(),
});

/** A spec whose every value is well formed; whether they agree is for the checks. */
export type ShapedSpec = z.output<typeof specShape>;

/** The same with anything missing: what is left of a spec once its faulty values are put aside. */
export type SketchedSpec = Sketched<ShapedSpec>;

type Sketched<T> = T extends readonly [unknown, unknown]
  ? T
  : T extends readonly (infer Item)[]
    ? readonly Sketched<Item>[]
    : T extends object
      ? { readonly [K in keyof T]?: Sketched<T[K]> | undefined }
      : T;
