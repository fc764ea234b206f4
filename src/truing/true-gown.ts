import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { GownDraft } from '../draft/draft-gown.ts';
import { selfCrossing } from '../geometry/self-crossing.ts';
import { ANGLE_AGREES, FLAT, SEAM_AGREES, WAIST_AGREES } from '../geometry/tolerances.ts';
import type { Gown } from '../gown/gown.ts';
import type { GownMeasures, SeamMeasures } from './measure-gown.ts';
import {
  anglesDoNotClose,
  hemFarFromSquare,
  outlineCrossesItself,
  seamsDiffer,
  topsMissBodice,
} from './truing-problems.ts';

/** A hem farther off square than this at a seam is worth a word: it is hard to sew and to hang. */
const FAR_FROM_SQUARE = Math.PI / 4;

/** Holds a draft against the truths of a sewn gown; changes nothing. */
export function trueGown(gown: Gown, draft: GownDraft, measures: GownMeasures): Diagnostic[] {
  return [
    ...measures.seams.flatMap((seam) => trueSeam(draft, seam)),
    ...trueWaist(gown, measures),
    ...draft.pieces.flatMap((piece, i) => {
      const crossing = selfCrossing(
        piece.edges.flatMap((edge) => edge.curves),
        FLAT,
      );
      return crossing === undefined
        ? []
        : [outlineCrossesItself(draft.gown.gores[i]!.place(), piece.gore, 'seam line')];
    }),
  ];
}

function trueSeam(draft: GownDraft, seam: SeamMeasures): Diagnostic[] {
  const findings: Diagnostic[] = [];
  const place = draft.gown.stations[seam.station]!.place();
  if (Math.abs(seam.lengths[0] - seam.lengths[1]) > SEAM_AGREES) findings.push(seamsDiffer(place, seam));
  for (const edge of ['hem', 'waist'] as const) {
    const sum = edge === 'hem' ? seam.hemAngle : seam.waistAngle;
    if (Math.abs(sum - Math.PI) > ANGLE_AGREES && !mayComeToAPoint(draft, seam.station, edge)) {
      findings.push(anglesDoNotClose(place, seam.name, edge, sum));
    }
  }
  if (Math.abs(seam.offSquare) > FAR_FROM_SQUARE) findings.push(hemFarFromSquare(place, seam));
  return findings;
}

/** The bodice's point and a pointed train's end are corners by design. */
function mayComeToAPoint(draft: GownDraft, station: number, edge: 'hem' | 'waist'): boolean {
  if (edge === 'waist') return draft.gown.pointedAt === station;
  return draft.gown.train?.shape === 'pointed' && station === draft.gown.train.full;
}

function trueWaist(gown: Gown, measures: GownMeasures): Diagnostic[] {
  const { sewn } = measures.waist;
  const seam = gown.waistSeam;
  if (Math.abs(sewn - seam) <= WAIST_AGREES) return [];
  return [topsMissBodice(gown.bodice.place('waist-seam'), sewn, seam, measures)];
}
