import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Units } from '../diagnostics/units.ts';
import { lengthInUnits } from '../diagnostics/value-text.ts';
import type { GownDraft } from '../draft/draft-gown.ts';
import { selfCrossing } from '../geometry/self-crossing.ts';
import { ANGLE_AGREES, FLAT, SEAM_AGREES, WAIST_AGREES } from '../geometry/tolerances.ts';
import type { Gown } from '../gown/gown.ts';
import { type GownMeasures, mayComeToAPoint, type SeamMeasures } from './measure-gown.ts';
import {
  hemFarFromSquare,
  notSmooth,
  outlineCrossesItself,
  seamsDiffer,
  topsMissBodice,
} from './truing-problems.ts';

/** A hem farther off square than this at a seam is worth a word: it is hard to sew and to hang. */
const FAR_FROM_SQUARE = Math.PI / 4;

/** Holds a draft against the truths of a sewn gown; changes nothing. */
export function trueGown(gown: Gown, draft: GownDraft, measures: GownMeasures): Diagnostic[] {
  return [
    ...measures.seams.flatMap((seam) => trueSeam(draft, seam, gown.units)),
    ...trueWaist(gown, measures),
    ...draft.pieces.flatMap((piece, i) => {
      const crossing = selfCrossing(
        piece.edges.flatMap((edge) => edge.curves),
        FLAT,
      );
      return crossing === undefined ? [] : [outlineCrossesItself(draft.gown.gores[i]!.place(), piece.gore)];
    }),
  ];
}

function trueSeam(draft: GownDraft, seam: SeamMeasures, units: Units): Diagnostic[] {
  const findings: Diagnostic[] = [];
  const place = draft.gown.stations[seam.station]!.place();
  if (Math.abs(seam.lengths[0] - seam.lengths[1]) > SEAM_AGREES) {
    const [a, b] = seam.lengths.map((length) => lengthInUnits(length, units));
    findings.push(seamsDiffer(place, seam, a!, b!));
  }
  for (const edge of ['hem', 'waist'] as const) {
    const sum = edge === 'hem' ? seam.hemAngle : seam.waistAngle;
    if (Math.abs(sum - Math.PI) > ANGLE_AGREES && !mayComeToAPoint(draft, seam.station, edge)) {
      findings.push(notSmooth[edge](place, seam.name, degrees(sum)));
    }
  }
  if (Math.abs(seam.offSquare) > FAR_FROM_SQUARE)
    findings.push(hemFarFromSquare(place, seam.name, degrees(Math.abs(seam.offSquare))));
  return findings;
}

function trueWaist(gown: Gown, measures: GownMeasures): Diagnostic[] {
  const { sewn } = measures.waist;
  const seam = gown.waistSeam;
  if (Math.abs(sewn - seam) <= WAIST_AGREES) return [];
  const say = (length: number): string => lengthInUnits(length, gown.units);
  const tops = measures.gores.map(({ name, top }) => [name, say(top)] as const);
  return [topsMissBodice(gown.bodice.place('waist-seam'), say(sewn), say(seam), say(WAIST_AGREES), tops)];
}

export const degrees = (angle: number): string => `${((angle * 180) / Math.PI).toFixed(1)}°`;
