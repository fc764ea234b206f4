import { error, note, warning } from '../../diagnostics/finding.ts';
import { inWords } from '../../diagnostics/in-words.ts';
import { quoted } from '../../diagnostics/safe-text.ts';

/** What can stand against laying layers on their cloth. Lengths come as text in the maker's units. */

export const widerThanCloth = error(
  'wider-than-cloth',
  (says: {
    gore: string;
    layer: string;
    cloth: string;
    width: string;
    usable: string;
    needed: string;
    length: string;
  }) => ({
    message: `The gore ${quoted(says.gore)} (layer ${quoted(says.layer)}) is ${says.width} wide and ${says.length} long; ${quoted(says.cloth)} leaves ${says.usable}.`,
    why: 'The piece cannot be cut from this cloth flat, across it, or in parts joined along the grain.',
    hint: `Take a cloth at least ${says.needed} wide, or divide the gore in two in the spec.`,
  }),
);

export const piecedToFit = warning(
  'pieced-to-fit',
  (says: {
    gore: string;
    layer: string;
    parts: number;
    width: string;
    usable: string;
    needed: string;
    seam: string;
  }) => ({
    message: `The gore ${quoted(says.gore)} (layer ${quoted(says.layer)}) is ${says.width} wide and its cloth leaves ${says.usable}: it is cut in ${says.parts} parts, joined along the grain.`,
    why: 'A join that nobody expected is found when the cloth is already bought.',
    hint: `Sew the join first, marks on marks (allowance ${says.seam} on both parts, away from the centre front); a cloth ${says.needed} wide needs none.`,
  }),
);

export const railroadedToFit = warning(
  'railroaded-to-fit',
  (says: { gore: string; layer: string; width: string; usable: string; needed: string }) => ({
    message: `The gore ${quoted(says.gore)} (layer ${quoted(says.layer)}) is ${says.width} wide and its cloth leaves ${says.usable}: the whole layer is laid with its length across the cloth.`,
    why: 'The grain then runs round the skirt: it hangs and shines differently from one cut along the cloth.',
    hint: `Hang a length of the cloth that way before buying; a cloth ${says.needed} wide can be cut along the grain.`,
  }),
);

export const foldDoesNotFit = warning(
  'fold-does-not-fit',
  (says: {
    gore: string;
    layers: readonly string[];
    fold: string;
    width: string;
    usable: string;
    way: string;
  }) => ({
    message: `${layerWords(says.layers)} cannot be cut ${says.fold} as asked: the gore ${quoted(says.gore)} takes ${says.width}, and the folded cloth leaves ${says.usable}.`,
    why: 'A piece that runs off the fold or the selvedge is found at the cutting table.',
    hint: `It is planned ${says.way} instead; a wider cloth could be folded.`,
  }),
);

export const foldImpossible = warning(
  'fold-does-not-fit',
  (says: { layers: readonly string[]; fold: string; way: string }) => ({
    message: `${layerWords(says.layers)} cannot be cut ${says.fold} as asked: ${says.layers.length === 1 ? 'it has' : 'they have'} no mirrored pairs or halves to cut double.`,
    why: 'A fold gives two of every piece, and mirrored.',
    hint: `It is planned ${says.way} instead.`,
  }),
);

export const repeatAssumed = note('repeat-placed', (says: { layers: readonly string[]; cloth: string }) => ({
  message: `${layerWords(says.layers)}: every piece of ${quoted(says.cloth)} begins on a whole repeat, and a motif is taken to lie on the middle of the cloth.`,
  why: 'Where the motifs really lie is seen only on the cloth.',
  hint: 'Measure the repeat and where a motif lies before cutting, and move all pieces alike.',
}));

export const LAY_CUT_SHORT = 'lay-cut-short';

export const layCutShort = warning(LAY_CUT_SHORT, (layers: readonly string[]) => ({
  message: `The lay of ${layers.length === 1 ? 'layer' : 'layers'} ${inWords(layers.map(quoted))} was cut short by Ctrl-C, while a shorter one was being looked for.`,
  why: 'What it says to buy may be metres more than is needed.',
  hint: 'Draft again and let it finish before you buy or quote.',
}));

export const layTooLong = error(
  'lay-too-long',
  (says: { layers: readonly string[]; cloth: string; least: string }) => ({
    message: `${layerWords(says.layers)} ${says.layers.length === 1 ? 'takes' : 'take'} at least ${says.least} of ${quoted(says.cloth)}.`,
    why: 'No gown takes so much of one cloth: as a rule a measure is ten times too large, or the cloth too narrow.',
    hint: 'Look at the lengths, the hems and how full the layers are in the table of `check`, and at the width of the cloth.',
  }),
);

function layerWords(layers: readonly string[]): string {
  return `${layers.length === 1 ? 'Layer' : 'Layers'} ${inWords(layers.map(quoted))}`;
}
