import * as z from 'zod/mini';
import { $constructor, $ZodLazy } from 'zod/v4/core';

/** `waist-seam` to `waistSeam`. */
type Camel<S extends string> = S extends `${infer Head}-${infer Tail}`
  ? `${Head}${Capitalize<Camel<Tail>>}`
  : S;
type CamelKeys<T> = { readonly [K in keyof T as K extends string ? Camel<K> : K]: T[K] };

/** What is usual in a section is there whether or not it is written. */
type Filled<Read, Usual> = Omit<Read, keyof Usual> & Required<Pick<Read, keyof Usual & keyof Read>>;
/** One object in place of several put together, for the reader of a type. */
type Flat<T> = { readonly [K in keyof T]: T[K] };

/** What a section's keys are read as, before what is usual is put beneath them. */
type ReadOf<Shape extends z.core.$ZodLooseShape> = CamelKeys<
  z.core.output<z.ZodMiniObject<Shape, z.core.$strict>>
>;

interface SectionSchema extends z.core.$ZodType<unknown, unknown> {
  readonly _zod: z.core.$ZodLazyInternals<z.core.$ZodType>;
}

/**
 * The library's lazy kind, of which is known that it must be there: asked whether it may be left out, that would put the
 * section together to find out. No gown has more than a third of the sections that a spec may have.
 */
const SectionOfSpec = $constructor<SectionSchema, z.core.$ZodLazyDef>(
  'SectionOfSpec',
  (section, definition) => {
    $ZodLazy.init(section, definition);
    section._zod.optin = undefined;
    section._zod.optout = undefined;
  },
);

/**
 * A section with exactly these keys, in camelCase once read, over what is usual where it says nothing. Its keys are put
 * together when the first such section is read.
 */
export function section<
  Shape extends z.core.$ZodLooseShape,
  const Usual extends Partial<ReadOf<Shape>> = object,
>(keys: () => Shape, usual?: Usual | ((read: ReadOf<Shape>) => Usual)) {
  const getter = () =>
    z.pipe(
      z.strictObject(keys()),
      z.transform((value) => {
        const read = camelKeys(value) as ReadOf<Shape>;
        return { ...(typeof usual === 'function' ? usual(read) : usual), ...read };
      }),
    );
  return new SectionOfSpec({ type: 'lazy', getter }) as unknown as z.ZodMiniType<
    Flat<Filled<ReadOf<Shape>, Usual>>,
    z.core.input<z.ZodMiniObject<Shape, z.core.$strict>>
  >;
}

/**
 * Free names, such as gores or stations, to values; the names stay as written. The record has no prototype: a gore
 * called `toString` that is not in it must not find a function there.
 */
export function named<Value extends z.core.$ZodType>(value: Value) {
  return z.pipe(
    z.record(z.string(), value),
    z.transform((record): Readonly<Record<string, z.core.output<Value>>> => nameless(record)),
  );
}

export function nameless<T>(...records: readonly Readonly<Record<string, T>>[]): Readonly<Record<string, T>> {
  return Object.assign(Object.create(null), ...records);
}

/** A list of at most so many: what is longer is a slip, and would keep the tool busy for minutes. */
export function list<Item extends z.core.$ZodType>(item: Item, most: number) {
  return listed(z.array(item).check(z.maxLength(most)));
}

/** A list of any length. */
export function listOf<Item extends z.core.$ZodType>(item: Item) {
  return listed(z.array(item));
}

function listed<Item extends z.core.$ZodType>(items: z.ZodMiniArray<Item>) {
  return items as z.ZodMiniType<readonly z.core.output<Item>[], readonly z.core.input<Item>[]>;
}

/**
 * A key that may be left out, and what an editor says about it. Of the library's two kinds the one that does not read
 * what is not there; no key of a spec is there without a value, in which alone they differ.
 */
export function optional<Value extends z.core.$ZodType>(value: Value, description?: string) {
  const schema = z.optional(value) as unknown as z.ZodMiniExactOptional<Value>;
  return description === undefined ? schema : described(schema, description);
}

/** What an editor says about a value. */
export function described<Value extends z.core.$ZodType>(value: Value, description: string): Value {
  z.globalRegistry.add(value, { ...z.globalRegistry.get(value), description });
  return value;
}

function camelKeys(value: object): object {
  const renamed = Object.entries(value).map(([key, item]) => [
    key.replace(/-([a-z])/g, (_, c: string) => c.toUpperCase()),
    item,
  ]);
  return Object.fromEntries(renamed);
}
