import type { FoldWork } from '../making/order/work-of-folds.ts';
import type { Basics } from './english-basics.ts';
import { type StepText, type StepWriters, text } from './step-text.ts';

type PleatWork = Extract<FoldWork, { kind: 'pleat' }>;

/** Pleats in words. */
export const FOLD_WRITERS: StepWriters<FoldWork> = {
  pleat: (work, basics) => pleatText(work, basics),
  darts: ({ layer, darts }, { length, list }) =>
    text(
      `Sew the ${layer}’s darts: ${list(darts.map(({ name, gore, takesIn, length: long }) => `${name} on the ${gore}, ${length(takesIn)} at the waist and ${length(long)} long`))}.`,
      [
        'Leg on leg, from the waist to the point; let the last stitches run along the fold, and knot the ends.',
        `Fold ${foldedWhere(darts, list)}, as its cut edge was shaped for: that edge then lies on the waist’s.`,
        'Steam the point over a ham.',
      ],
    ),
  tucks: ({ layer, tucks: { count, width, aboveHem, apart }, toEase }, { length }) =>
    text(
      `Sew the ${layer}’s growth ${count === 1 ? 'tuck' : `tucks, ${count} of them`}: fold on each fold line, wrong sides together, and stitch ${length(width)} from the fold.`,
      [
        `The lowest is stitched ${length(aboveHem)} above the finished hem${count === 1 ? '' : `, the next ${length(apart)} above it`}; press them down.`,
        'Long stitches and no knots: they are let out one by one, from the lowest up.',
        toEase >= 1 &&
          `On this flare the lower line of each is ${length(toEase)} longer than the upper, all round: ease it in.`,
      ],
    ),
  'press-pleats': ({ layer, pleats }, { list }) =>
    text(`Press the ${layer}’s pleats for good, hem and all: ${list(pleats)}.`, [
      'Fold on the old creases from the top down, paper under each fold so that it does not print through.',
      'Inside, edge-stitch the inner folds through the hem, so that they keep their crease.',
    ]),
};

/** Each dart to its side, and all at once where that is one. */
function foldedWhere(darts: Extract<FoldWork, { kind: 'darts' }>['darts'], list: Basics['list']): string {
  const to = (side: 'front' | 'back'): string[] =>
    darts.filter(({ towards }) => towards === side).map(({ name, gore }) => `${name} on the ${gore}`);
  const [front, back] = [to('front'), to('back')];
  if (back.length === 0) return 'each to the front';
  if (front.length === 0) return 'each to the back';
  return `${list(front)} to the front, ${list(back)} to the back, each`;
}

const OUTER: Readonly<Record<PleatWork['pleat']['kind'], string>> = {
  knife: 'Bring its outer fold to its placement line, as the arrow points.',
  box: 'Bring both outer folds to their placement lines, away from each other: the inner folds meet behind the face.',
  inverted: 'Bring both outer folds to their placement lines, where they meet.',
  kick: 'The seam goes on round the outer edges of both its extensions: neaten them as one, and clip the allowance of the side that it does not fold to at the turn, so that the seam above presses open. Fold both to one side, along the seam, and sew across their tops from the right side.',
};

function pleatText({ layer, pleat, places, folds }: PleatWork, { length, station }: Basics): StepText {
  const { name, kind, at, gore, fromSeam, foldDepth, towards, stitchedDown, aboveHem = 0, hem } = pleat;
  const where =
    fromSeam === undefined
      ? `at ${station(at)}`
      : `on the ${gore}, ${length(fromSeam)} from ${station(at)} along the waist seam`;
  const count = places === 1 ? '' : ` (${places})`;
  const many = folds === 1 ? 'its fold' : `each of its ${folds} folds`;
  return text(
    `Lay the ${layer}’s ${name}${count}, ${article(kind)} ${kind} pleat ${where}: ${many} ${length(foldDepth)} deep, from its outer edge to its inner edge.`,
    [
      OUTER[kind],
      towards !== undefined && `Its outer fold points to the ${towards}.`,
      kind === 'kick' && `It begins ${length(aboveHem)} above the hem.`,
      kind !== 'kick' &&
        (stitchedDown > 0
          ? `Stitch it down from the waist seam for ${length(stitchedDown)}; below, baste it closed to the hem.`
          : 'It is not stitched down: baste it closed from the waist seam to the hem.'),
      hem === 'first'
        ? 'Its hem is sewn first, opened out flat; only then is it pressed for good.'
        : 'Press it now; its hem is turned up afterwards, folded as it hangs.',
    ],
  );
}

function article(word: string): string {
  return /^[aeiou]/.test(word) ? 'an' : 'a';
}
