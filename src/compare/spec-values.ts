import type { Scalar, SpecValue } from '../diagnostics/value-words.ts';
import { type Form, formBelow, hasFreeNames, kindOfForm, WHOLE } from '../gown-file/shape/form.ts';
import type { Spec } from '../gown-file/spec.ts';

/**
 * Every value of a spec by its path, as its keys are written: `gores.side.hem`, `lengths.at.centre-back`. What stands
 * in a list goes by its name, or by what tells it apart.
 */
export function specValues(spec: Spec): Map<string, SpecValue> {
  const { places: _places, units: _units, ...said } = spec;
  const values = new Map<string, SpecValue>();
  addSection(values, '', said, WHOLE);
  return values;
}

type Values = Map<string, SpecValue>;

function addSection(values: Values, path: string, section: object, form: Form | undefined): void {
  for (const [key, value] of Object.entries(section)) {
    // What one price is for says nothing where there is no price.
    if (value === undefined || (key === 'pricedPer' && !('price' in section))) continue;
    // The edge of a drafted bodice is not said but drafted.
    if ((key === 'waistSeam' || key === 'panels') && path === 'bodice.' && 'draft' in section) continue;
    const written = hasFreeNames(form) ? key : kebab(key);
    add(values, `${path}${written}`, value, formBelow(form, written));
  }
}

function add(values: Values, path: string, value: unknown, form: Form | undefined): void {
  if (Array.isArray(value)) addList(values, path, value, form);
  else if (isScalar(value)) values.set(path, { kind: kindOfForm(form) ?? 'text', value });
  else addSection(values, `${path}.`, value as object, form);
}

function addList(values: Values, path: string, list: readonly unknown[], form: Form | undefined): void {
  const scalars = list.filter(isScalar);
  const lists = list.filter((item): item is readonly Scalar[] => Array.isArray(item));
  const ofItem = formBelow(form, 0);
  if (scalars.length === list.length) {
    values.set(path, { kind: kindOfForm(ofItem) ?? 'text', value: scalars });
  } else if (lists.length === list.length) {
    values.set(path, { kind: 'text', value: lists.map((names) => `[${names.join(', ')}]`) });
  } else {
    const { key: nameKey, names } = itemNames(list as readonly object[]);
    if (nameKey !== undefined) values.set(path, { kind: 'order', value: names });
    for (const [i, item] of list.entries()) {
      // What tells an item apart is in the path of all its values.
      const rest = Object.entries(item as object).filter(([own]) => own !== nameKey);
      addSection(values, `${path}.${names[i]}.`, Object.fromEntries(rest), ofItem);
    }
  }
}

/** A list's items by name, date, seam or whatever else tells each apart, else by their number. */
function itemNames(list: readonly object[]): { readonly key?: string; readonly names: readonly string[] } {
  for (const key of ['name', 'date', 'seam', 'at', 'down', 'kind']) {
    const names = list.map((item) => (item as Readonly<Record<string, unknown>>)[key]);
    if (names.every((name) => typeof name === 'string') && new Set(names).size === names.length)
      return { key, names };
  }
  return { names: list.map((_, i) => String(i + 1)) };
}

function kebab(key: string): string {
  return key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

function isScalar(value: unknown): value is Scalar {
  return ['string', 'number', 'boolean'].includes(typeof value);
}
