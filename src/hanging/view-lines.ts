import type { Point } from '../geometry/curve.ts';
import { drawn, LEAST_LINE, met } from './drawn-lines.ts';
import { leastFold } from './fold-strokes.ts';
import { foldsSeen } from './folds-seen.ts';
import type { Hang } from './hang.ts';
import { keptApart } from './kept-apart.ts';
import { depthOfCloth, openingLine, rowLine, seenPlace } from './lines-on-skirt.ts';
import { allRound, type DrawnCloth, inside, type Look, ofParts } from './look.ts';
import { metLine } from './met-lines.ts';
import { seamLines } from './seam-lines.ts';
import { inPlane } from './seen.ts';
import { hemDepth, slotSeen } from './slot-lines.ts';
import { lengthOfLine } from './smoothed-line.ts';
import { FINER } from './surface.ts';
import type { ViewExtras } from './view-extras.ts';
import { SKIRT, visibleParts } from './visible-parts.ts';

const LEAST_GATHER = 20;

/** Lines that are drawn already, which others meet or keep off. */
type Lines = readonly (readonly Point[])[];

/** Where strips and gores are sewn together. */
export function seamsOf(
  hang: Hang,
  look: Look,
  { pleats = [], edge }: ViewExtras,
  { strong, parts }: { readonly strong: Lines; readonly parts: Lines },
) {
  const { seen } = look;
  const rows = hang.joins.flatMap((row) => allRound(look, rowLine(seen, row * FINER)));
  const joins = met(keptApart(drawn(rows), parts, LEAST_LINE), strong);
  const own = seamLines(hang, seen, { pleats, edge }).flatMap((line) => inside(look, line));
  return { joins, seams: met(drawn([...own, ...ofParts(look, 'seams')]), [...strong, ...joins]) };
}

/** The opening that she steps in by, and pockets and slits. */
export function openingsOf(
  hang: Hang,
  look: Look,
  { opening, slits = [], pockets = [] }: ViewExtras,
  outlines: Lines,
) {
  const { map, seen } = look;
  const openings = [
    ...(opening === undefined ? [] : visibleParts(map, openingLine(hang, seen, opening), SKIRT)),
    ...ofParts(look, 'opening'),
  ];
  const slots = [...pockets, ...slits.map((slit) => ({ ...slit, to: hemDepth(hang, slit.column) }))];
  return {
    open: keptApart(drawn(openings), outlines, LEAST_LINE),
    slotted: slots.map((slot) => slotSeen(map, hang, seen, slot, outlines)),
  };
}

/** Short strokes down from what the cloth is gathered to. */
export function gathersOf(
  look: Look,
  { gathers }: DrawnCloth,
  { beside, on }: { readonly beside: Lines; readonly on: Lines },
): Point[][] {
  const { place } = look.seen;
  const own = gathers.flatMap((line) =>
    inside(
      look,
      line.map((i) => seenPlace(place, i)),
    ),
  );
  return keptApart([...own, ...ofParts(look, 'gathers')].map(inPlane), beside, LEAST_GATHER)
    .map((line) => metLine(line, on, LEAST_GATHER))
    .filter(({ line, startMeets }) => startMeets && lengthOfLine(line) > LEAST_GATHER)
    .map(({ line }) => [...line]);
}

/** By what they lie on: the skirt's first. */
export function foldsOf({ side, map, shown, beside, lines }: Look, { surface, hollows }: DrawnCloth) {
  return [
    {
      lines: foldsSeen(map, shown, hollows, side, SKIRT).map(inPlane),
      least: leastFold(depthOfCloth(surface)),
    },
    ...lines.map(({ folds }, i) => ({
      lines: folds.map(inPlane),
      least: leastFold(depthOfCloth(beside[i]!.part.surface)),
    })),
  ];
}
