import type { BodiceWork } from '../making/order/work-on-bodice.ts';
import type { Basics } from './english-basics.ts';
import { type StepText, type StepWriters, sentenceStart, text } from './step-text.ts';

type WorkOf<Kind extends BodiceWork['kind']> = Extract<BodiceWork, { kind: Kind }>;

const MATERIALS = {
  'spiral-steel': 'spiral steels',
  'flat-steel': 'flat steels',
  synthetic: 'bones',
} as const;

/** Steps of a drafted bodice, of straps and of capes, in words. */
export const BODICE_WRITERS: StepWriters<BodiceWork> = {
  'toile-bodice': ({ laced }) =>
    text(
      `Sew the bodice in calico first, with its bones taped on, and fit it on her${laced ? ', laced' : ''}.`,
      [
        'Pin what is too wide seam by seam, mark the upper edge and the waist on her, and change girths, widths or heights in the spec; then draft again.',
      ],
      ['no cloth is cut before the toile fits; the fitter decides.'],
    ),
  'bodice-seams': ({ layers }, { list }) =>
    text(`Sew the panels of the bodice, each layer by itself: ${list(layers)}.`, [
      'Waist marks on waist marks; both sides of a seam are equally long, so nothing is eased.',
      'Press every seam open over a ham, clipped at the waist.',
    ]),
  casings: ({ layer, width, bones }, { list, length, station }) =>
    text(`Sew the casings to the ${layer}, over its open seams, for bones ${length(width)} wide.`, [
      `${sentenceStart(list(bones.map(({ along, side, casing, count }) => `${sideOf(side)}${station(along)} ${length(casing)}${count > 1 ? ` (${count})` : ''}`)))}, from edge to edge.`,
      'Close their lower ends clear of the waist seam; the upper ends stay open.',
    ]),
  'bodice-layers': ({ layers, tape, lining }, { list, length }) =>
    text(
      layers.length > 1
        ? `Lay ${list(layers)} on each other, right sides out, and baste them as one along every edge.`
        : `Stay-stitch the edges of the ${list(layers)}.`,
      [
        `Tack the waist tape, ${length(tape)} with its ends, to the seams at the waist: it takes the strain.`,
        lining !== undefined && `The ${lining} stays apart: it goes in last.`,
      ],
    ),
  'bodice-close': (work, basics) => closeText(work, basics),
  'fit-bodice': ({ beside }, { list }) =>
    text(
      'Fit bodice and skirt together on her: the waist seam, the upper edge, the closing.',
      [beside.length > 0 && `Pin the ${list(beside)} on and move them until they sit.`],
      ['the upper edge is not closed, and no bone goes in, before it fits; the fitter decides.'],
    ),
  bones: ({ material, clear, bones }, { list, length, station }) =>
    text(
      `Push the ${MATERIALS[material]} into their casings from the upper edge, their ends rounded or tipped.`,
      [
        `${sentenceStart(list(bones.map(({ along, side, length: own, count }) => `${sideOf(side)}${station(along)} ${count} × ${length(own)}`)))}.`,
        `Each ends ${length(clear)} or more clear of the waist seam and of the upper edge.`,
      ],
    ),
  'upper-facing': ({ facing, depth }, { length }) =>
    text(
      `Join the pieces of the ${facing}, ${length(depth)} deep, round as the panels are joined; press the seams open.`,
      ['Neaten its inner edge.'],
    ),
  'upper-edge': ({ finish, length: long, facing }, { length }) =>
    text(
      finish === 'bound'
        ? `Bind the upper edge, ${length(long)} round, over the ends of the casings.`
        : finish === 'faced'
          ? facing === undefined
            ? `Face the upper edge, ${length(long)} round, and close the casings under the facing.`
            : `Lay the ${facing} on the upper edge, ${length(long)} round, right sides together, its seams on the panels’ seams; sew clear of the bones, clip, understitch and turn it inside over the casings.`
          : `Turn the upper edge down, ${length(long)} round, over the ends of the casings.`,
    ),
  'bodice-lining': ({ layer }) =>
    text(`Fell the ${layer} to the upper edge, the closing and the waist seam by hand, last of all.`),
  strap: ({ name, from, to, length: long, width }, { length, station }) =>
    text(
      `Make the ${name}, ${length(width)} wide: fold, sew, turn and press; catch it in the upper edge at ${station(from)} and ${station(to)}.`,
      [`${length(long)} from edge to edge as drafted; as pinned on her where the fitting says otherwise.`],
    ),
  cape: ({ name, from, to, gathered, hems }, { list, station }) =>
    text(
      `Make the ${name} and ${gathered ? 'gather' : 'sew'} it to ${from === undefined || to === undefined ? 'its edge' : `the upper edge from ${station(from)} to ${station(to)}`}, caught in its finish.`,
      [
        `Hems and free edges first: ${list(hems.map(({ layer, finish }) => `${layer} ${finish}`))}.`,
        ...hems.flatMap(({ layer, edging }) =>
          edging === undefined
            ? []
            : [`Then the ${edging} along the hem of the ${layer}, on both sides of her.`],
        ),
        hems.some(({ finish }) => finish === 'raw') && 'Net does not fray: a clean cut is its hem.',
      ],
    ),
};

function closeText({ closing, lacing }: WorkOf<'bodice-close'>, { length, station }: Basics): StepText {
  if (closing === undefined)
    return text('Leave the seam open at which she gets in, or decide now how the bodice closes.');
  const where = `${closing.side === undefined ? '' : `${closing.side} `}${station(closing.at)}`;
  if (lacing === undefined) {
    const what = { zip: 'zip', hooks: 'hooks and eyes', busk: 'busk', lacing: 'lacing' }[closing.kind];
    return text(`Set the ${what} into the ${where}.`);
  }
  const { eyelets, pitch, lace } = lacing;
  return text(
    `Turn in the edges at the ${where} and set ${eyelets} eyelets a side, ${length(pitch)} apart, ${length(closing.fromEdge)} from the edge.`,
    [
      'Try one on a scrap of all the layers first. A bone lies on each side of the row.',
      `Lace: ${length(lace)}, with what hangs free for tying.`,
      closing.modesty !== undefined &&
        `The panel behind the lacing, ${length(closing.modesty)} wide, is sewn to one edge only.`,
    ],
  );
}

function sideOf(side: 'left' | 'right' | undefined): string {
  return side === undefined ? '' : `${side} `;
}
