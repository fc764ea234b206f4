import type * as z from 'zod/mini';
import type { ValueKind } from '../../diagnostics/value-text.ts';
import { jsonOf, kindOf, LENGTH_IN_UNITS } from './leaf.ts';
import { specShape } from './spec-shape.ts';

/** The way to a value by its keys; items of a list by their numbers. */
type Path = readonly (string | number)[];

/** A part of a spec's shape: what may be written there. */
export type Form = z.core.$ZodTypes;

/** The keys that a section may have, by its path; none where its names are free. */
export function keysAt(path: Path): readonly string[] {
  return waysToWrite(formAt(path)).flatMap(({ _zod: { def } }) =>
    def.type === 'object' ? Object.keys(def.shape) : [],
  );
}

/** Whether a bare number here is a length in the file's units; of a few lengths it is in mm whatever these are. */
export function isLengthInUnits(path: Path): boolean {
  return waysToWrite(formAt(path)).some((form) => jsonOf(form).$comment === LENGTH_IN_UNITS);
}

/** What a single value measures or says. */
export function kindOfForm(form: Form | undefined): ValueKind | undefined {
  return waysToWrite(form)
    .map(kindOf)
    .find((kind) => kind !== undefined);
}

/** What may stand below a key of a section, a free name or a number of a list. */
export function formBelow(form: Form | undefined, step: string | number): Form | undefined {
  return waysToWrite(form)
    .map(({ _zod: { def } }) => {
      if (def.type === 'object') return def.shape[step];
      if (def.type === 'record') return def.valueType;
      if (def.type === 'array') return def.element;
      return def.type === 'tuple' ? def.items[Number(step)] : undefined;
    })
    .find((child) => child !== undefined) as Form | undefined;
}

/** Whether the keys here are names that the maker chooses. */
export function hasFreeNames(form: Form | undefined): boolean {
  return waysToWrite(form).some(({ _zod: { def } }) => def.type === 'record');
}

export const WHOLE = specShape as unknown as Form;

function formAt(path: Path): Form | undefined {
  return path.reduce<Form | undefined>(formBelow, WHOLE);
}

/** Apart from what it is turned into: one form, or each of several. */
function waysToWrite(form: Form | undefined): readonly Form[] {
  if (form === undefined) return [];
  const { def } = form._zod;
  if (kindOf(form) !== undefined) return [form];
  if (def.type === 'pipe') return waysToWrite(def.in as Form);
  if (def.type === 'lazy') return waysToWrite((form as z.core.$ZodLazy)._zod.innerType as Form);
  if (def.type === 'optional') return waysToWrite(def.innerType as Form);
  return def.type === 'union' ? def.options.flatMap((option) => waysToWrite(option as Form)) : [form];
}
