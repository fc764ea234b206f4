import type { HemFinish } from '../gown/cloth.ts';
import type { HemWork } from '../making/order/work-on-hems.ts';
import type { Basics } from './english-basics.ts';
import { type StepText, type StepWriters, sentenceStart, text } from './step-text.ts';

type WorkOf<Kind extends HemWork['kind']> = Extract<HemWork, { kind: Kind }>;

/** From hanging to the hand-over, in words. */
export const HEM_WRITERS: StepWriters<HemWork> = {
  hang: ({ bias, onBias, flounces, petticoat }, { list, length }) =>
    text(
      `Hang the gown${petticoat ? ' over its petticoat' : ''}${flounces.length === 0 ? '' : `, with the ${list(flounces)} on it`}.`,
      [
        onBias.length === 0 && bias.length > 0 && `The bias edges drop: ${list(bias)}.`,
        ...onBias.map(
          ({ layer, drop }) =>
            `The ${layer} is all on the bias: ${drop === undefined ? 'it' : `its own weight draws it up to ${length(drop)} longer at once, and it`} goes on growing as it hangs, by how much no figure tells.`,
        ),
        onBias.length > 0 &&
          'Hang it by its whole waist, free of the floor; look again until it has stopped.',
      ],
      ['at least 24 hours, before the hem is levelled.'],
    ),
  level: ({ offFloor, train, petticoat, flounces, atHem, overskirts }, { length, list, usual }) =>
    text(
      `Level the hem on her, in the shoes${petticoat ? ', over the petticoat' : ''}, measuring from the floor up.`,
      [
        `A pin every ${usual.pins} all round${offFloor === undefined ? '' : `, ${length(offFloor)} off the floor${train ? ' as far round as the hem leaves it' : ''}`}; write down how far along the hem each lies and how far it moved, not only at the seams.`,
        atHem.length > 0 && `The hem is that of the ${list(atHem)}.`,
        flounces.length > atHem.length &&
          `Level the ${list(flounces.filter((name) => !atHem.includes(name)))} at its own hem too.`,
        overskirts.length > 0 && `Then the ${list(overskirts)}, fastened on over the skirt.`,
        train && 'Lay the train out on a clean floor and look along its curve through every seam.',
      ],
      ['she has walked, turned and climbed a step before a pin is moved for good.'],
    ),
  trim: ({ layers, roughCut }, { length }) =>
    text('Cut every layer to the levelled line and its own allowance.', [
      `${sentenceStart(layers.map(({ name, below, shorter }) => `${name} ${shorter > 0 ? `${length(shorter)} shorter, ` : ''}${below > 0 ? `${length(below)} below its hem line` : 'on its hem line'}`).join('; '))}.`,
      roughCut && 'The extra at the hem comes off now.',
    ]),
  hem: (work, basics) => hemText(work, basics),
  'part-hem': ({ name, layers }, { list }) =>
    text(
      layers.length === 1
        ? `${FINISH_HEM[layers[0]!.finish]} the ${name}’s hem.`
        : `Finish the ${name}’s hems: ${list(layers.map((layer) => `${FINISH_HEM[layer.finish].toLowerCase()} that of the ${layer.name}`))}.`,
    ),
  'bag-hem': ({ inner, outer, length: round, allowance }, { length }) =>
    text(`Bag the hems: ${inner} and ${outer} right sides together, seam on seam, ${length(round)} round.`, [
      `Sew at ${length(allowance)}, clip the curve, trim in steps.`,
    ]),
  'turn-through': ({ inner, outer, gap }, { length, station, usual }) =>
    text(
      gap === undefined
        ? `Turn ${inner} and ${outer} to the right side. The spec leaves no gap for it: leave one before the hems are bagged.`
        : `Turn the skirt through the gap in the ${gap.layer}’s ${station(gap.at)} (${length(gap.length)}).`,
      [`Roll the ${outer} ${usual.roll} to the inside and press; then close the gap by hand.`],
    ),
  edging: ({ name, layer, start, side, repeats, ease, curved, hollow, own }, { length, station, list }) =>
    text(
      `Lay the ${name} round the ${layer}, its outer edge on the hem line, starting at ${station(start, side)}${repeats === undefined ? '' : `: ${repeats} repeats`}.`,
      [
        ease !== undefined && `${length(ease)} in all to ease in evenly; eased, never stretched.`,
        curved &&
          'Its inner edge is too long where the hem bulges: lap or tuck it at the motifs, gore by gore as the table says.',
        hollow.length > 0 &&
          `In the hollow of ${list(hollow)} ease its outer edge instead, and never stretch the inner.`,
        `Cut round a motif and lap the ends where it began${own ? '; hide the join between the two edges of the cloth in a seam' : ''}.`,
      ],
    ),
  'cut-behind': ({ layer, edging }) =>
    text(`Cut the ${layer} away behind the ${edging}, along the stitches that hold its motifs.`, [
      'Lift it off what lies below, with duckbill or round-nosed scissors: the edge is now the scallops’ own.',
    ]),
  'level-scallops': ({ edging, hang }, { length }) =>
    text(
      `Level the ${edging} by its scallops’ high points, now that they are on${hang === undefined ? '' : `: ${length(hang.highPoints)} off the floor, the low points ${length(hang.lowPoints)}`}.`,
      ['The eye follows the high points; where one is out, unpick and shift the motif, never the hem line.'],
      ['she has stood for it in the shoes before an end is cut.'],
    ),
  fit: ({ bustle }) =>
    text(
      'Last fitting: she walks, sits, turns and climbs a step, in the shoes.',
      [bustle && 'Pin the bustle up and let her dance in it.'],
      [`nothing more is sewn before she is content${bustle ? ' with hem and bustle' : ' with the hem'}.`],
    ),
  bustle: ({ over, number }) =>
    text(
      `Sew the bustle, ${number} ${number === 1 ? 'point' : 'points'} as pinned: ${over ? 'loops at the pick-ups, hooks or buttons outside' : 'ribbons in pairs on the inside, numbered from the centre out'}.`,
      ['Through the seam allowances, on a small patch behind the cloth.'],
    ),
  'fell-lining': ({ layers, at, side }, { list, station }) =>
    text(`Fell the ${list(layers)} to the closure at ${station(at, side)} by hand, last of all.`),
  finish: () =>
    text(
      'Press from the inside, take out every basting thread, count the pins, and pack with the care card.',
    ),
};

/** What is done to a hem, by how it is finished. */
const FINISH_HEM: Readonly<Record<HemFinish, string>> = {
  turned: 'Turn up and sew',
  faced: 'Face',
  bagged: 'Bag',
  rolled: 'Roll',
  raw: 'Cut clean',
};

function hemText(work: WorkOf<'hem'>, { length }: Basics): StepText {
  const { layer, finish, allowance, toEase, facing, edged } = work;
  const round = length(work.length);
  switch (finish) {
    case 'turned':
      return text(`Turn up the ${layer}’s hem ${length(allowance)}, ${round} round, and sew it.`, [
        toEase !== undefined &&
          toEase > 0 &&
          `${length(toEase)} has to be eased away along the turned edge: gather it on a thread and steam it in.`,
      ]);
    case 'faced':
      return text(`Face the ${layer}’s hem, ${round} round.`, [
        facing === undefined
          ? 'Cut the facing to the levelled edge; sew right sides together, clip, understitch, and roll the seam just inside.'
          : `Lay the ${facing} on right sides together, its seams on the gores’ seams, and trim it to the levelled edge; sew, clip, understitch, and roll the seam just inside. Catch its inner edge by hand.`,
      ]);
    case 'rolled':
      return text(`Roll the ${layer}’s hem, ${round} round, by hand or with the foot.`);
    case 'raw':
      return text(
        edged
          ? `Cut the ${layer}’s edge clean: the edging covers it.`
          : `Cut the ${layer}’s edge clean in one sweep, ${round} round; it stays raw.`,
      );
  }
}
