import type { FinishingWork } from '../making/order/work-of-finishing.ts';
import type { Basics } from './english-basics.ts';
import { type StepText, type StepWriters, text } from './step-text.ts';

/** Facings, bands and what lies in openings, in words. */
export const FINISHING_WRITERS: StepWriters<FinishingWork> = {
  'own-waist': (work, basics) => ownWaistText(work, basics),
  facing: ({ facing, faces, depth }, { length }) =>
    text(
      `Join the pieces of the ${facing}, ${length(depth)} deep, as the gores of the ${faces} are joined; press the seams open.`,
      [
        'Neaten its inner edge.',
        'Where it is cut over a seam that seam is marked on it: mark and seam meet when it is laid on.',
      ],
    ),
};

type OwnWaist = Extract<FinishingWork, { kind: 'own-waist' }>;

function ownWaistText(work: OwnWaist, { length, list, weight }: Basics): StepText {
  const { layers, finish, shaped, width, overlap, sewn, grams } = work;
  const edge = `the waist edge of the ${list(layers)}${layers.length > 1 ? ' as one' : ''}, ${length(sewn)} round`;
  const carries =
    grams !== undefined && `It carries the skirt, ${weight(grams)} without edging and petticoat.`;
  switch (finish) {
    case 'band':
      return text(`Sew the waistband to ${edge}: its marks on the seams and centres.`, [
        shaped
          ? `Sew its inside to it along the upper edge, turn, and fell the inside down: ${length(width)} wide.`
          : `Fold it lengthwise, close its ends, and fell its inside down: ${length(width)} wide.`,
        overlap > 0 && `${length(overlap)} of it runs on past the opening: a hook and bar, or a button.`,
        'A firm interfacing or a ribbon in it keeps its length; it is cut to the line of the fold.',
        carries,
      ]);
    case 'facing':
      return text(`Face ${edge}: join the facing, sew it on right sides together, clip and understitch.`, [
        `Cut smaller than the edge, it draws the seam inside; catch it to the seams, ${length(width)} deep, and to the closure.`,
        'A stay tape in the seam keeps its length.',
        carries,
      ]);
    case 'stay':
      return text(
        `Sew a petersham ${length(width)} wide along ${edge}, turn it inside and catch it to the seams.`,
        ['Shape it with the iron first: its outer edge is the skirt’s.', carries],
      );
  }
}
