import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import { ANGLE_AGREES, SEAM_AGREES } from '../geometry/tolerances.ts';
import type { Gown } from '../gown/gown.ts';
import type { DraftedBodice } from './draft-asked.ts';
import type { BodiceSeam } from './measure-bodice.ts';
import {
  edgeAboveGirths,
  fittingBesideDraft,
  girthUntrue,
  lacedTightly,
  seamBent,
  seamUneven,
} from './truth-problems.ts';

/** A drafted girth may miss by this, mm (design truth). Larger would add up to an ease that nobody asked for. */
const GIRTH_AGREES = 0.1;
/** An edge that runs farther than this above the highest girth is a guess, mm: beyond it a body narrows. */
const ABOVE_GIRTHS = 40;
/** Share of her waist beyond which lacing is tight (from memory; what a body bears is for her and her doctor). */
const TIGHT = 0.1;

/** Measures the drafted bodice against what is promised of it, and says what its measures leave to chance. */
export function trueBodice(bodice: DraftedBodice): Diagnostic[] {
  return [
    ...bodice.figures.seams.flatMap((seam) => untrueSeam(bodice, seam)),
    ...untrueGirths(bodice),
    ...highEdge(bodice),
    ...tightLacing(bodice),
  ];
}

function untrueSeam({ draft, asked }: DraftedBodice, seam: BodiceSeam): Diagnostic[] {
  const { upperEdge, lowerEdge } = draft.measures;
  const isStraight = (angle: number, points: readonly string[]): boolean =>
    points.includes(seam.name) || Math.abs(angle - Math.PI) <= ANGLE_AGREES;
  const differ = Math.abs(seam.lengths[0] - seam.lengths[1]);
  const place = asked.placeAt(['bodice', 'draft']);
  if (differ > SEAM_AGREES) return [seamUneven(place, seam.name, differ)];
  if (!isStraight(seam.upperAngle, upperEdge.points)) return [seamBent(place, seam.name, 'upper-edge')];
  return isStraight(seam.lowerAngle, lowerEdge.points) ? [] : [seamBent(place, seam.name, 'waist-seam')];
}

function untrueGirths({ draft, figures, asked }: DraftedBodice): Diagnostic[] {
  return figures.levels.flatMap(({ at, sewn }, l) => {
    const wanted = draft.left.levels[l]!.half + draft.right.levels[l]!.half;
    if (Math.abs(sewn - wanted) <= GIRTH_AGREES) return [];
    const more = (sewn - wanted).toFixed(2);
    return [girthUntrue(asked.placeAt(['body', 'girths', l]), at, more)];
  });
}

function highEdge({ draft, asked }: DraftedBodice): Diagnostic[] {
  const { girths, upperEdge } = draft.measures;
  const top = girths.reduce((high, level) => (level.above > high.above ? level : high));
  const [station, height] = Object.entries(upperEdge.above).reduce((best, one) =>
    one[1] > best[1] ? one : best,
  );
  if (height - top.above <= ABOVE_GIRTHS) return [];
  const say = (length: number): string => tapeText(length, asked.units);
  const span = asked.placeAt(['bodice', 'draft', 'upper-edge', station]);
  return [edgeAboveGirths(span, station, say(height), top.at, say(top.above))];
}

function tightLacing({ draft, asked }: DraftedBodice): Diagnostic[] {
  const { girths, reduce } = draft.measures;
  return girths.flatMap(({ at, girth }) => {
    const by = reduce[at] ?? 0;
    const isChild = asked.body.wearer === 'child';
    if (isChild ? !(by > 0) : by <= girth * TIGHT) return [];
    const say = (length: number): string => tapeText(length, asked.units);
    const span = asked.placeAt(['bodice', 'draft', 'reduce', at]);
    return [lacedTightly(span, at, say(girth), say(by), isChild)];
  });
}

/** Waists that differ by less are one, mm. */
const SAME_WAIST = 0.05;

/** A fitting that takes in the skirt's waist takes in the gores alone, unless it was pinned in the bodice too. */
export function fittedApart(
  { asked, figures }: DraftedBodice,
  { waistSeam, fittings }: Pick<Gown, 'waistSeam' | 'fittings'>,
): Diagnostic[] {
  const taken = figures.lower - waistSeam;
  if (Math.abs(taken) < SAME_WAIST) return [];
  const say = (length: number): string => tapeText(length, asked.units);
  const span = fittings.at(-1)?.place() ?? asked.placeAt(['bodice', 'draft']);
  return [fittingBesideDraft(span, taken > 0, say(Math.abs(taken)))];
}
