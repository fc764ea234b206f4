import * as z from 'zod/mini';

/** `waist-seam` to `waistSeam`. */
export type Camel<S extends string> = S extends `${infer Head}-${infer Tail}`
  ? `${Head}${Capitalize<Camel<Tail>>}`
  : S;
export type CamelKeys<T> = { [K in keyof T as K extends string ? Camel<K> : K]: T[K] };

/** A section with exactly these keys, its keys in camelCase once read. */
export function section<Shape extends z.core.$ZodLooseShape>(shape: Shape) {
  type Read = z.core.output<z.ZodMiniObject<Shape, z.core.$strict>>;
  return z.pipe(
    z.strictObject(shape),
    z.transform((value) => camelKeys(value as Read)),
  );
}

/**
 * Free names, such as gores or stations, to values; the names stay as written. The record has no prototype: a gore
 * called `toString` that is not in it must not find a function there.
 */
export function named<Value extends z.core.$ZodType>(value: Value) {
  type Read = Record<string, z.core.output<Value>>;
  return z.pipe(
    z.record(z.string(), value),
    z.transform((record): Read => Object.assign(Object.create(null), record)),
  );
}

/** A list of at most so many: what is longer is a slip, and would keep the tool busy for minutes. */
export function list<Item extends z.core.$ZodType>(item: Item, most: number) {
  return z.array(item).check(z.maxLength(most));
}

/** A key that may be left out, and what an editor says about it. */
export function optional<Value extends z.core.$ZodType>(value: Value, description?: string) {
  const schema = z.exactOptional(value);
  return description === undefined ? schema : described(schema, description);
}

/** What an editor says about a value. */
export function described<Value extends z.core.$ZodType>(value: Value, description: string): Value {
  z.globalRegistry.add(value, { ...z.globalRegistry.get(value), description });
  return value;
}

function camelKeys<T extends object>(value: T): CamelKeys<T> {
  const renamed = Object.entries(value).map(([key, item]) => [
    key.replace(/-([a-z])/g, (_, c: string) => c.toUpperCase()),
    item,
  ]);
  return Object.fromEntries(renamed) as CamelKeys<T>;
}
