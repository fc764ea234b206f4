import { HOSTILE_NUMBERS, HOSTILE_TEXT, RESERVED_WORDS } from './hostile-values.ts';
import type { Random } from './random.ts';

export type Tree = { [key: string]: Tree } | Tree[] | string | number | boolean | null;

/** One change to what a spec says, its YAML well formed: the tree itself is changed. `other` lends parts. */
export function treeChanged(tree: Tree, other: Tree, random: Random): void {
  const places = placesOf(tree);
  if (places.length > 0) random.pick(CHANGES)(places, random, other, tree);
}

/** A value and the section or list that holds it. */
interface Place {
  readonly path: readonly string[];
  readonly value: Tree;
  set(value: Tree): void;
  remove(): void;
}

type Change = (places: readonly Place[], random: Random, other: Tree, tree: Tree) => void;

const CHANGES: readonly Change[] = [
  (places, random) => random.pick(places).remove(),
  retyped,
  swapped,
  repeated,
  reversed,
  lent,
  lentSection,
  renamedKey,
  renamedEverywhere,
  renamedEverywhere,
  hostileNumber,
  hostileNumber,
  scaled,
  scaled,
  scaled,
  scaled,
  nudged,
  nudged,
  allScaled,
  otherUnits,
  hostileText,
  hostileText,
  anotherWord,
];

function placesOf(value: Tree, path: readonly string[] = []): Place[] {
  if (Array.isArray(value)) {
    return value.flatMap((item, i) => {
      const place: Place = {
        path: [...path, String(i)],
        value: item,
        set: (changed) => {
          value[i] = changed;
        },
        remove: () => value.splice(i, 1),
      };
      return [place, ...placesOf(item, place.path)];
    });
  }
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, item]) => {
    const place: Place = {
      path: [...path, key],
      value: item,
      set: (changed) => {
        value[key] = changed;
      },
      remove: () => {
        delete value[key];
      },
    };
    return [place, ...placesOf(item, place.path)];
  });
}

function retyped(places: readonly Place[], random: Random): void {
  const place = random.pick(places);
  const { value } = place;
  place.set(random.pick<Tree>([null, true, 'text', 0, [], {}, [value], { value }, [[value, value]], '12cm']));
}

function swapped(places: readonly Place[], random: Random): void {
  const [a, b] = [random.pick(places), random.pick(places)];
  const [here, there] = [structuredClone(a.value), structuredClone(b.value)];
  a.set(there);
  b.set(here);
}

function repeated(places: readonly Place[], random: Random): void {
  const lists = places.filter(({ value }) => Array.isArray(value) && value.length > 0);
  if (lists.length === 0) return;
  const list = random.pick(lists).value as Tree[];
  const times = random.pick([1, 1, 2, 30]);
  for (let i = 0; i < times; i++)
    list.splice(random.below(list.length), 0, structuredClone(random.pick(list)));
}

function reversed(places: readonly Place[], random: Random): void {
  const lists = places.filter(({ value }) => Array.isArray(value) && value.length > 1);
  if (lists.length > 0) (random.pick(lists).value as Tree[]).reverse();
}

/** A value that stands somewhere in another spec. */
function lent(places: readonly Place[], random: Random, other: Tree): void {
  const others = placesOf(other);
  const place = random.pick(places);
  const named = others.filter(({ path }) => path.at(-1) === place.path.at(-1));
  place.set(structuredClone(random.pick(named.length > 0 ? named : others).value));
}

function lentSection(_: readonly Place[], random: Random, other: Tree, tree: Tree): void {
  if (!isSection(other) || !isSection(tree)) return;
  const key = random.pick(Object.keys(other));
  tree[key] = structuredClone(other[key]!);
}

function renamedKey(places: readonly Place[], random: Random): void {
  const keyed = places.filter(({ path }) => !/^\d+$/.test(path.at(-1)!));
  const place = random.pick(keyed);
  const holder = places.find(({ path }) => path.join('.') === place.path.slice(0, -1).join('.'))?.value;
  if (holder === undefined || !isSection(holder)) return;
  place.remove();
  const key = random.pick([
    () => random.pick(HOSTILE_TEXT),
    () => random.pick(RESERVED_WORDS),
    () => place.path.at(-1)!.toUpperCase(),
    () => random.pick(keyed).path.at(-1)!,
  ])();
  Object.defineProperty(holder, key, {
    value: place.value,
    enumerable: true,
    configurable: true,
    writable: true,
  });
}

/** A name changed wherever it is used, so that the spec may still be right. */
function renamedEverywhere(places: readonly Place[], random: Random, _: Tree, tree: Tree): void {
  const names = places.filter(({ path, value }) => path.at(-1) === 'name' && typeof value === 'string');
  if (names.length === 0) return;
  const was = random.pick(names).value as string;
  const name = random.pick(random.chance(0.5) ? RESERVED_WORDS : NAMES);
  rename(tree, was, name);
}

const NAMES: readonly string[] = [
  'A',
  '7',
  'front-2',
  'επτά',
  'Юбка',
  'שמלה',
  'Zwölf',
  'e\u0301',
  '👗',
  '裙',
  'Front',
  'FRONT',
  'ﬀ',
  '٣',
];

function rename(value: Tree, was: string, name: string): void {
  const renamed = (text: string): string =>
    text
      .split('/')
      .map((part) => (part === was ? name : part))
      .join('/');
  if (typeof value !== 'object' || value === null) return;
  for (const [key, item] of Object.entries(value)) {
    if (Array.isArray(value)) {
      if (typeof item === 'string') value[Number(key)] = renamed(item);
    } else {
      delete value[key];
      const safe = renamed(key) === '__proto__' ? 'proto' : renamed(key);
      value[safe] = typeof item === 'string' ? renamed(item) : item;
    }
    rename(item, was, name);
  }
}

function hostileNumber(places: readonly Place[], random: Random): void {
  const numbers = places.filter(isNumber);
  if (numbers.length > 0) random.pick(numbers).set(random.pick(HOSTILE_NUMBERS));
}

const FACTORS = [0.001, 0.01, 0.1, 0.3, 0.5, 0.8, 0.95, 1.05, 1.3, 2, 3, 5, 10, 25.4, 100, -1, 0];

function scaled(places: readonly Place[], random: Random): void {
  const numbers = places.filter(isNumber);
  if (numbers.length > 0) scale(random.pick(numbers), random.pick(FACTORS));
}

function nudged(places: readonly Place[], random: Random): void {
  const numbers = places.filter(isNumber);
  if (numbers.length > 0) scale(random.pick(numbers), 0.9 + 0.2 * random.share());
}

function allScaled(places: readonly Place[], random: Random): void {
  const factor = random.pick([0.1, 0.25, 0.5, 0.9, 1.1, 2, 4, 10]);
  const sections = random.chance(0.3)
    ? undefined
    : random.pick(['gores', 'bodice', 'lengths', 'allowances', 'cloths']);
  for (const place of places.filter(isNumber)) {
    if (place.path[0] !== 'format' && (sections === undefined || place.path[0] === sections))
      scale(place, factor);
  }
}

function scale(place: Place, factor: number): void {
  const match = /^(-?[\d.]+)(.*)$/.exec(String(place.value));
  if (match === null) return;
  const changed = Number((Number(match[1]) * factor).toPrecision(6));
  place.set(match[2] === '' ? changed : `${changed}${match[2]}`);
}

function otherUnits(_: readonly Place[], random: Random, __: Tree, tree: Tree): void {
  if (isSection(tree)) tree.units = random.pick(['cm', 'mm', 'in', 'CM', 'ell', '']);
}

function hostileText(places: readonly Place[], random: Random): void {
  const texts = places.filter(({ path, value }) => typeof value === 'string' && FREE.has(path.at(-1)!));
  if (texts.length > 0) random.pick(texts).set(random.pick(HOSTILE_TEXT));
}

/** What a maker may call as she likes, and what is printed as she wrote it. */
const FREE = new Set(['gown', 'client', 'notes', 'supplier', 'colour', 'dye-lot', 'weave', 'name']);

function anotherWord(places: readonly Place[], random: Random): void {
  const words = places.filter(({ value }) => typeof value === 'string' || typeof value === 'boolean');
  if (words.length > 1)
    random.pick(words).set(random.chance(0.3) ? random.chance(0.5) : random.pick(words).value);
}

function isNumber({ value }: Place): boolean {
  return (
    typeof value === 'number' || (typeof value === 'string' && /^-?[\d.]+(cm|mm|in|m|yd|deg|%)?$/.test(value))
  );
}

function isSection(value: Tree): value is { [key: string]: Tree } {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
