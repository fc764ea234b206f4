import type { Span } from '../diagnostics/diagnostic.ts';

/** Where a value of a section stands in the file, by the keys below the section; the section itself without keys. */
export type PlaceIn = (...path: readonly (string | number)[]) => Span;

/** What a finding may point at. */
export interface Placed {
  readonly place: PlaceIn;
}
