import { type FilePath, placeAt, type Spec } from '../gown-file/spec.ts';
import type { PlaceIn } from './placed.ts';

/** Where each section's values stand. */
export function placesIn(spec: Spec) {
  return <const At extends FilePath>(...section: At): PlaceIn<At> =>
    (...path) =>
      placeAt(spec, [...section, ...path]);
}

export type PlacesIn = ReturnType<typeof placesIn>;
