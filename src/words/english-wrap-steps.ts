import type { WrapWork } from '../making/order/work-of-wrap.ts';
import type { Basics } from './english-basics.ts';
import { type StepText, type StepWriters, text } from './step-text.ts';

/** A skirt that wraps, in words. */
export const WRAP_WRITERS: StepWriters<WrapWork> = {
  'wrap-edges': (work, basics) => edgesText(work, basics),
  'wrap-ties': ({ name, length: long, width, over }, { length }) =>
    text(
      `Make the ${name}: fold each lengthwise, sew and turn it, ${length(long)} long and ${length(width)} wide.`,
      [
        'Catch one in each end of the waist as that is finished.',
        `The tie of the under edge goes out through a slot at her ${over}, above the seam nearest to where it ends, and round her back: leave that stretch of the seam open and fasten off both its ends.`,
      ],
    ),
  'fasten-wrap': ({ at, over, overlap, overlapAtHem, fastened, tiesCut }, { length, station }) =>
    text(
      `Lay her ${over} side over the other, ${station(at)} on ${station(at)}: the edges lie over one another by ${length(overlap)} at the waist and ${length(overlapAtHem)} at the hem.`,
      [
        HELD[fastened],
        fastened === 'ties' && !tiesCut && 'Ties of ribbon or tape are caught in both ends of the waist.',
        fastened !== 'ties' &&
          'The under edge needs a fastening of its own inside, at the waist, or it slips down.',
        'Let her sit, step and turn in it: what opens too far wants a hook half-way down, or a wider overlap.',
      ],
    ),
};

const HELD: Readonly<Record<Extract<WrapWork, { kind: 'fasten-wrap' }>['fastened'], string>> = {
  ties: 'The upper tie and the one that comes round her back meet in a bow at the upper edge.',
  buttons:
    'Work the buttonholes in the upper edge at the waist, and sew the buttons to what lies under them.',
  hooks: 'Sew the hooks inside the upper edge at the waist, the bars to what lies under them.',
  snaps: 'Sew the snaps inside the upper edge at the waist and to what lies under them.',
};

function edgesText(
  { at, layers, edges, facing }: Extract<WrapWork, { kind: 'wrap-edges' }>,
  { length, list, station }: Basics,
): StepText {
  const asOne = layers.length > 1 ? `, ${list(layers)} as one` : '';
  return text(`Finish both edges of the wrap, past ${station(at)}, from waist to hem${asOne}.`, [
    edges === 'bound'
      ? 'Bind them; the lower end of the binding waits for the hem.'
      : edges === 'turned'
        ? 'Turn their allowances in and catch them; their lower ends wait for the hem.'
        : facing === undefined
          ? 'Face them with a strip, turn it inside and catch it; its lower end waits for the hem.'
          : `Sew the ${facing.name}, ${length(facing.depth)} deep, to both, turn it inside and catch it; its lower end waits for the hem.`,
    'A stay tape along each edge keeps it from growing as it hangs.',
    'To hang and to level it, pin it shut as she wears it; the hem of the under edge is levelled too.',
  ]);
}
