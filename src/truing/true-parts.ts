import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Part } from '../draft/part.ts';
import { ANGLE_AGREES, SEAM_AGREES } from '../geometry/tolerances.ts';
import type { PartMeasures } from './measure-parts.ts';
import { partMissesSeam } from './truing-problems.ts';

export interface MeasuredPart {
  readonly part: Part;
  readonly measures: PartMeasures;
}

/** Holds flounces, strips and godets against what they are sewn to. */
export function trueParts(parts: readonly MeasuredPart[]): Diagnostic[] {
  return parts
    .filter(
      ({ measures: { difference, hemAngle } }) =>
        difference > SEAM_AGREES || Math.abs(hemAngle - Math.PI) > ANGLE_AGREES,
    )
    .map(({ part: { piece, layer, place }, measures }) =>
      partMissesSeam(place(), piece.gore, layer.name, measures),
    );
}
