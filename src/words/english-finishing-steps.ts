import type { FinishingWork } from '../making/order/work-of-finishing.ts';
import type { Basics } from './english-basics.ts';
import { type StepText, type StepWriters, text } from './step-text.ts';

/** Facings, bands and what lies in openings, in words. */
export const FINISHING_WRITERS: StepWriters<FinishingWork> = {
  'own-waist': (work, basics) => ownWaistText(work, basics),
  slit: ({ seam, side, from, facing, stay }, { length, station }) =>
    text(
      `Finish the slit in the ${side === undefined ? '' : `${side} `}${station(seam)}, from ${length(from)} below the waist seam down.`,
      [
        facing === undefined
          ? 'Turn its allowances in and catch them down, in one line with the seam above.'
          : `Sew the ${facing.name}, ${length(facing.depth)} wide, to both edges, turn it inside and catch it; its lower end waits for the hem.`,
        stay === undefined
          ? 'Fasten the seam off well at its upper end: all the strain comes there.'
          : `Lay the ${stay} over its upper end on the inside and sew it round: all the strain comes there.`,
      ],
    ),
  pocket: ({ seam, side, from, to, layer, outermost }, { length, station }) =>
    text(
      `Sew the ${layer} to the ${outermost}’s ${side === undefined ? '' : `${side} `}${station(seam)}, from ${length(from)} to ${length(to)} below the waist seam, one side of the bag to each edge.`,
      [
        'A stay tape along the front edge of its opening keeps it from gaping.',
        'When the seam is sewn, go on round the bag in one row; catch its top in the waist.',
      ],
    ),
  loops: ({ name, count, length: long, width }, { length }) =>
    text(
      `Make the ${name}: sew and turn the strip, ${length(width)} wide, and cut it into ${count} of ${length(long)}.`,
      ['Each goes on where the fitting shows.'],
    ),
  bias: ({ name, cloth, width, length: long }, { length }) =>
    text(
      `Cut the ${name} on the bias from its block of ${cloth}: ${length(long)} in all${width === undefined ? '' : `, ${length(width)} wide`}.`,
      [
        'As one spiral: sew two sides of the block into a tube, one strip’s width out of step, and cut round it.',
        'Join ends along the thread, press open, and do not stretch it as it is pressed.',
      ],
    ),
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
  const { layers, finish, shaped, width, overlap, wraps, sewn, grams } = work;
  const long = wraps ? `${length(sewn + overlap)} from edge to edge` : `${length(sewn)} round`;
  const edge = `the waist edge of the ${list(layers)}${layers.length > 1 ? ' as one' : ''}, ${long}`;
  const carries =
    grams !== undefined &&
    `It carries the skirt, ${weight(grams)} without edging and what she wears under it.`;
  switch (finish) {
    case 'band':
      return text(`Sew the waistband to ${edge}: its marks on the seams and centres.`, [
        shaped
          ? `Sew its inside to it along the upper edge, turn, and fell the inside down: ${length(width)} wide.`
          : `Fold it lengthwise, close its ends, and fell its inside down: ${length(width)} wide.`,
        wraps && 'Its ends are level with the edges of the wrap.',
        overlap > 0 &&
          !wraps &&
          `${length(overlap)} of it runs on past the opening: a hook and bar, or a button.`,
        'A firm interfacing or a ribbon in it keeps its length; it is cut to the line of the fold.',
        carries,
      ]);
    case 'facing':
      return text(`Face ${edge}: join the facing, sew it on right sides together, clip and understitch.`, [
        `Cut smaller than the edge, it draws the seam inside; catch it to the seams, ${length(width)} deep, and to the ${wraps ? 'edges of the wrap' : 'closure'}.`,
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
