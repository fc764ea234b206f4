import type { Spec } from '../gown-file/spec.ts';

/** What a value of a spec measures, and so how it is said and when two are the same. */
export type ValueKind =
  | 'length'
  | 'angle'
  | 'share'
  | 'weight'
  | 'number'
  | 'decimal'
  | 'flag'
  | 'text'
  | 'note'
  | 'order';

/** One value of a spec, or a list of values of one kind: mm, radians, fractions, g/m²; money as written. */
export interface SpecValue {
  readonly kind: ValueKind;
  readonly value: Scalar | readonly Scalar[];
}

export type Scalar = string | number | boolean;

/**
 * Every value of a spec by its path, as its keys are written: `gores.side.hem`, `lengths.at.centre-back`. What stands
 * in a list goes by its name, or by what tells it apart.
 */
export function specValues(spec: Spec): Map<string, SpecValue> {
  const { places: _places, units: _units, ...said } = spec;
  const values = new Map<string, SpecValue>();
  addSection(values, '', said);
  return values;
}

type Values = Map<string, SpecValue>;

function addSection(values: Values, path: string, section: object, freeNames = false): void {
  for (const [key, value] of Object.entries(section)) {
    // What one price is for says nothing where there is no price.
    if (value === undefined || (key === 'pricedPer' && !('price' in section))) continue;
    // The edge of a drafted bodice is not said but drafted.
    if ((key === 'waistSeam' || key === 'panels') && path === 'bodice.' && 'draft' in section) continue;
    add(values, `${path}${freeNames ? key : kebab(key)}`, key, value);
  }
}

function add(values: Values, path: string, key: string, value: unknown): void {
  if (Array.isArray(value)) addList(values, path, key, value);
  else if (isScalar(value)) values.set(path, { kind: kindOf(path, key, value), value });
  else if (typeof value === 'object' && value !== null)
    addSection(values, `${path}.`, value, FREE_NAMES.test(path));
}

function addList(values: Values, path: string, key: string, list: readonly unknown[]): void {
  const scalars = list.filter(isScalar);
  const lists = list.filter((item): item is readonly Scalar[] => Array.isArray(item));
  if (scalars.length === list.length) {
    values.set(path, { kind: list.length === 0 ? 'text' : kindOf(path, key, scalars[0]!), value: scalars });
  } else if (lists.length === list.length) {
    values.set(path, { kind: 'text', value: lists.map((names) => `[${names.join(', ')}]`) });
  } else {
    const { key: nameKey, names } = itemNames(list as readonly object[]);
    if (nameKey !== undefined) values.set(path, { kind: 'order', value: names });
    for (const [i, item] of list.entries()) {
      // What tells an item apart is in the path of all its values.
      const rest = Object.entries(item as object).filter(([own]) => own !== nameKey);
      addSection(values, `${path}.${names[i]}.`, Object.fromEntries(rest));
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

/** Sections whose keys are names that the maker chose. */
const FREE_NAMES =
  /(^|\.)(panels|drop-below-waist|lengths\.at|to-floor|allowances|rough-cut|cloths|tasks|stages|before|cut|reduce|upper-edge|widths|gap)$|^fittings\.[^.]+\.(hem|waist)$|^capes\.[^.]+\.length$/;

const ANGLES = new Set(['flare', 'halfFlare', 'angle']);
const SHARES = new Set([
  'share',
  'cutSmallerAcross',
  'cutSmallerAlong',
  'shrinkage',
  'safety',
  'overhead',
  'tax',
  'deposit',
]);
const NUMBERS = new Set(['format', 'plies', 'count', 'pieces', 'fittingsIncluded', 'fullness', 'ratio']);

function kindOf(path: string, key: string, value: Scalar): ValueKind {
  if (key === 'notes') return 'note';
  if (typeof value === 'boolean') return 'flag';
  if (typeof value === 'string') return DECIMALS.test(path) ? 'decimal' : 'text';
  if (ANGLES.has(key)) return 'angle';
  if (SHARES.has(key) || /^labour\.(margin|stages\..*)$/.test(path)) return 'share';
  if (key === 'weight') return 'weight';
  return NUMBERS.has(key) || path.startsWith('dates.before.') ? 'number' : 'length';
}

const DECIMALS = /(^|\.)(price|rate|hours|rounding|spent|paid)$|^labour\.(tasks|per-metre)\./;

function kebab(key: string): string {
  return key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

function isScalar(value: unknown): value is Scalar {
  return ['string', 'number', 'boolean'].includes(typeof value);
}
