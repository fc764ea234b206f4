import * as z from 'zod';

/** `waist-seam` to `waistSeam`. */
export type Camel<S extends string> = S extends `${infer Head}-${infer Tail}`
  ? `${Head}${Capitalize<Camel<Tail>>}`
  : S;
export type CamelKeys<T> = { [K in keyof T as K extends string ? Camel<K> : K]: T[K] };

/** A section with exactly these keys, its keys in camelCase once read. */
export function section<Shape extends z.core.$ZodLooseShape>(shape: Shape) {
  type Read = z.output<z.ZodObject<Shape, z.core.$strict>>;
  return z.strictObject(shape).transform((value) => camelKeys(value as Read));
}

/** Free names, such as gores or stations, to values; the names stay as written. */
export function named<Value extends z.ZodType>(value: Value) {
  return z.record(z.string(), value);
}

function camelKeys<T extends object>(value: T): CamelKeys<T> {
  const renamed = Object.entries(value).map(([key, item]) => [
    key.replace(/-([a-z])/g, (_, c: string) => c.toUpperCase()),
    item,
  ]);
  return Object.fromEntries(renamed) as CamelKeys<T>;
}
