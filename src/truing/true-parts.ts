import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Part } from '../draft/part.ts';
import { placeOfPart } from '../draft/part-findings.ts';
import { ANGLE_AGREES, SEAM_AGREES } from '../geometry/tolerances.ts';
import type { Spec } from '../gown-file/spec.ts';
import type { PartMeasures } from './measure-parts.ts';
import { partMissesSeam } from './truing-problems.ts';

export interface MeasuredPart {
  readonly part: Part;
  readonly measures: PartMeasures;
}

/** Holds flounces, strips and godets against what they are sewn to. */
export function trueParts(spec: Spec, parts: readonly MeasuredPart[]): Diagnostic[] {
  return parts
    .filter(
      ({ measures: { difference, hemAngle } }) =>
        difference > SEAM_AGREES || Math.abs(hemAngle - Math.PI) > ANGLE_AGREES,
    )
    .map(({ part: { piece, layer }, measures }) =>
      partMissesSeam(placeOfPart(spec, piece.gore), piece.gore, layer.name, measures),
    );
}
