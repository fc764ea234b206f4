import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Units } from '../diagnostics/units.ts';
import { lengthInUnits } from '../diagnostics/value-text.ts';
import type { Part } from '../draft/part.ts';
import { ANGLE_AGREES, SEAM_AGREES } from '../geometry/tolerances.ts';
import type { PartMeasures } from './measure-parts.ts';
import { degrees } from './true-gown.ts';
import { partMissesSeam } from './truing-problems.ts';

export interface MeasuredPart {
  readonly part: Part;
  readonly measures: PartMeasures;
}

/** Holds flounces, strips and godets against what they are sewn to. */
export function trueParts(
  { units }: { readonly units: Units },
  parts: readonly MeasuredPart[],
): Diagnostic[] {
  return parts
    .filter(
      ({ measures: { difference, hemAngle } }) =>
        difference > SEAM_AGREES || Math.abs(hemAngle - Math.PI) > ANGLE_AGREES,
    )
    .map(({ part: { piece, layer, place }, measures: { difference, hemAngle } }) =>
      partMissesSeam(place(), piece.gore, layer.name, lengthInUnits(difference, units), degrees(hemAngle)),
    );
}
