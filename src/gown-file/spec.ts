import type { Span } from '../diagnostics/diagnostic.ts';
import type { Given as Value } from './shape/leaf.ts';
import type { ShapedSpec, WrittenForm } from './shape/spec-shape.ts';

/**
 * A gown spec as read: every length in mm, every angle in radians, every share a fraction of 1, money and hours as
 * the decimal text that was written. What it holds is what `shape` says: its keys in camelCase, what is usual filled
 * in; names of gores, stations, layers and cloths stay as written.
 */
export interface Spec extends Omit<ShapedSpec, 'basedOn' | 'without'> {
  /** Where each value stands, keyed by its path: `gores.1.top`, `lengths.at.centre-front`. See `placeOf`. */
  readonly places: ReadonlyMap<string, Span>;
}

/** The same with anything missing: what is left of a spec once its faulty values are put aside. */
export type SketchedSpec = Sketched<ShapedSpec>;

type Sketched<T> = T extends readonly [unknown, unknown]
  ? T
  : T extends readonly (infer Item)[]
    ? readonly Sketched<Item>[]
    : T extends object
      ? { readonly [K in keyof T]?: Sketched<T[K]> | undefined }
      : T;

type Given<Key extends keyof ShapedSpec> = NonNullable<ShapedSpec[Key]>;

/** Decimal text as written, never a binary float. */
export type Money = string;
export type Allowances = ShapedSpec['allowances'];
export type BodiceSpec = ShapedSpec['bodice'];
export type WaistSpec = Given<'waist'>;
export type WrapSpec = Given<'wrap'>;
export type SlitSpec = Given<'slits'>[number];
export type PocketSpec = Given<'pockets'>[number];
export type LoopsSpec = Given<'loops'>[number];
export type BodySpec = Given<'body'>;
export type BodiceDraftSpec = NonNullable<BodiceSpec['draft']>;
export type BodiceLayerSpec = NonNullable<Spec['bodice']['layers']>[number];
export type BonesSpec = NonNullable<Spec['bodice']['bones']>;
export type ClosingSpec = NonNullable<Spec['bodice']['closing']>;
export type StrapSpec = Given<'straps'>[number];
export type CapeSpec = Given<'capes'>[number];
export type GoreSpec = ShapedSpec['gores'][number];
export type FullnessSpec = NonNullable<GoreSpec['fullness']>;
export type LengthsSpec = ShapedSpec['lengths'];
export type TrainSpec = Given<'train'>;
export type LayerSpec = ShapedSpec['layers'][number];
export type HemFinish = LayerSpec['hem'];
export type SewnAsOneSpec = Given<'sewnAsOne'>;
export type ClothSpec = ShapedSpec['cloths'][string];
export type PetticoatSpec = Given<'petticoat'>;
export type FlounceSpec = Given<'flounces'>[number];
export type TiersSpec = Given<'tiers'>[number];
export type GodetSpec = Given<'godets'>[number];
export type StonesSpec = Given<'stones'>[number];
export type DartSpec = Given<'darts'>[number];
export type PleatSpec = Given<'pleats'>[number];
export type OverskirtSpec = Given<'overskirts'>[number];
export type ClosureSpec = Given<'closure'>;
export type EdgingSpec = Given<'edging'>;
export type TrimSpec = Given<'trims'>[number];
export type BustleSpec = Given<'bustle'>;
export type FittingSpec = Given<'fittings'>[number];
export type LabourSpec = Given<'labour'>;
export type NotionSpec = Given<'notions'>[number];
export type DatesSpec = Given<'dates'>;
export type PaperSpec = Given<'paper'>;

/** The way from the top of a file to a value or a section of it, by keys as they are written and numbers of items. */
export type FilePath = PathInto<WrittenForm>;

type PathInto<T> =
  | readonly []
  | (T extends Value
      ? never
      : T extends readonly (infer Item)[]
        ? readonly [number, ...PathInto<Item>]
        : { [Key in keyof T & string]-?: readonly [Key, ...PathInto<NonNullable<T[Key]>>] }[keyof T &
            string]);

/** The way to a list (`number`), or to a section whose keys are free names (`string`). */
export type PathOf<Step extends string | number, Path = FilePath> = Path extends readonly [
  ...infer Section,
  infer Last,
]
  ? [Step] extends [Last]
    ? Section
    : never
  : never;

/** The place of a value, or of the nearest section around it that has one. */
export function placeOf(spec: Spec, ...path: FilePath): Span {
  return placeAt(spec, path);
}

/** The same for a way that is put together of two, each of them checked. */
export function placeAt(spec: Spec, path: readonly (string | number)[]): Span {
  for (let length = path.length; length >= 0; length--) {
    const place = spec.places.get(path.slice(0, length).join('.'));
    if (place !== undefined) return place;
  }
  throw new Error('a spec has at least a place of its own');
}
