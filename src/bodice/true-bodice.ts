import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import { ANGLE_AGREES, SEAM_AGREES } from '../geometry/tolerances.ts';
import type { Gown } from '../gown/gown.ts';
import type { DraftedBodice } from './draft-asked.ts';
import type { BodiceSeam } from './measure-bodice.ts';

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
  const what =
    differ > SEAM_AGREES
      ? `differ by ${differ.toFixed(2)} mm along it`
      : !isStraight(seam.upperAngle, upperEdge.points)
        ? 'meet at an angle at the upper edge'
        : isStraight(seam.lowerAngle, lowerEdge.points)
          ? undefined
          : 'meet at an angle at the waist seam';
  if (what === undefined) return [];
  return [
    {
      code: 'bodice-seam-untrue',
      level: 'error',
      span: asked.place('bodice', 'draft'),
      message: `the panels at ${seam.name} ${what}`,
      why: 'they would not be sewn together without a pucker or a step',
      hint: 'look at the heights and girths beside it; where there is nothing odd, this is a fault of the tool',
    },
  ];
}

function untrueGirths({ draft, figures, asked }: DraftedBodice): Diagnostic[] {
  return figures.levels.flatMap(({ at, sewn }, l) => {
    const wanted = draft.left.levels[l]!.half + draft.right.levels[l]!.half;
    if (Math.abs(sewn - wanted) <= GIRTH_AGREES) return [];
    return [
      {
        code: 'bodice-girth-untrue',
        level: 'error',
        span: asked.place('body', 'girths', l),
        message: `at the ${at} the drafted panels make ${(sewn - wanted).toFixed(2)} mm more than they should`,
        why: 'the bodice would not have her girth there',
        hint: 'share the girth among more panels, or look at levels that lie close together',
      },
    ];
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
  return [
    {
      code: 'edge-above-girths',
      level: 'warning',
      span: asked.place('bodice', 'draft', 'upper-edge', station),
      message: `the upper edge is ${say(height)} above the waist at ${station}, and the highest girth is the ${top.at} at ${say(top.above)}`,
      why: 'above it the panels keep its width, and the edge may gape',
      hint: 'measure her once more as high as the edge, and add the girth; the toile shows the rest',
    },
  ];
}

function tightLacing({ draft, asked }: DraftedBodice): Diagnostic[] {
  const { girths, reduce } = draft.measures;
  return girths.flatMap(({ at, girth }) => {
    const by = reduce[at] ?? 0;
    const isChild = asked.body.wearer === 'child';
    if (isChild ? !(by > 0) : by <= girth * TIGHT) return [];
    const say = (length: number): string => tapeText(length, asked.units);
    return [
      {
        code: 'laced-tightly',
        level: 'warning',
        span: asked.place('bodice', 'draft', 'reduce', at),
        message: `at the ${at} ${isChild ? 'a child of' : 'she is'} ${say(girth)} ${isChild ? 'is' : 'and'} laced in by ${say(by)}`,
        why: 'lacing presses on breath and organs; no figure here says what a body bears',
        hint: isChild
          ? 'leave a child her own girths; a doctor decides whether she may be laced at all'
          : 'she and her doctor decide; try it in the toile for as long as she will wear it',
      },
    ];
  });
}

/** Waists that differ by less are one, mm. */
const SAME_WAIST = 0.01;

/** A fitting that takes in the waist takes in the gores; a drafted panel follows her girths alone. */
export function fittedApart(
  { asked }: DraftedBodice,
  before: Pick<Gown, 'waistSeam' | 'fittings'>,
  after: Pick<Gown, 'waistSeam'>,
): Diagnostic[] {
  const taken = before.waistSeam - after.waistSeam;
  if (Math.abs(taken) < SAME_WAIST) return [];
  const say = (length: number): string => tapeText(length, asked.units);
  return [
    {
      code: 'fitting-beside-draft',
      level: 'warning',
      span: before.fittings.at(-1)?.place() ?? asked.place('fittings'),
      message: `the fittings ${taken > 0 ? 'take in' : 'let out'} the waist seam by ${say(Math.abs(taken))} all round, and the drafted panels above it stay as they are`,
      why: 'skirt and bodice would not meet at the waist seam',
      hint: 'take the same out of her girth, of `reduce` or of the `widths` of those panels, and draft again',
    },
  ];
}
