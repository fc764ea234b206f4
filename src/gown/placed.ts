import type { Span } from '../diagnostics/diagnostic.ts';
import type { FilePath } from '../gown-file/spec.ts';

/** The way to a section of the file, by its keys and the numbers of items. */
type Section = readonly (string | number)[];

/** Ways from a section to what stands in it; a way that no file can have does not compile. */
export type PathBelow<At extends Section, Path = FilePath> = Path extends readonly [
  ...At,
  ...infer Below extends Section,
]
  ? Below
  : never;

/** Where a value of a section stands in the file, by the keys below the section; the section itself without keys. */
export type PlaceIn<At extends Section> = (...path: PathBelow<At>) => Span;

/** What a finding may point at. `At` is the section that it came from, or one of the same kind. */
export interface Placed<At extends Section> {
  readonly place: PlaceIn<At>;
}
