import type { Diagnostic, Span } from '../../diagnostics/diagnostic.ts';
import { quoted } from '../../diagnostics/plain-text.ts';
import { layersInWords } from './lay-names.ts';

/** What can stand against laying layers on their cloth. Lengths come as text in the maker's units. */

export const widerThanCloth = (
  span: Span,
  says: {
    gore: string;
    layer: string;
    cloth: string;
    width: string;
    usable: string;
    needed: string;
    length: string;
  },
): Diagnostic => ({
  code: 'wider-than-cloth',
  level: 'error',
  span,
  message: `the gore ${quoted(says.gore)} (layer ${quoted(says.layer)}) is ${says.width} wide and ${says.length} long; ${quoted(says.cloth)} leaves ${says.usable}`,
  why: 'the piece cannot be cut from this cloth flat, across it, or in parts joined along the grain',
  hint: `take a cloth at least ${says.needed} wide, or divide the gore in two in the spec`,
});

export const piecedToFit = (
  span: Span,
  says: {
    gore: string;
    layer: string;
    parts: number;
    width: string;
    usable: string;
    needed: string;
    seam: string;
  },
): Diagnostic => ({
  code: 'pieced-to-fit',
  level: 'warning',
  span,
  message: `the gore ${quoted(says.gore)} (layer ${quoted(says.layer)}) is ${says.width} wide and its cloth leaves ${says.usable}: it is cut in ${says.parts} parts, joined along the grain`,
  why: 'a join that nobody expected is found when the cloth is already bought',
  hint: `sew the join first, marks on marks (allowance ${says.seam} on both parts, away from the centre front); a cloth ${says.needed} wide needs none`,
});

export const railroadedToFit = (
  span: Span,
  says: { gore: string; layer: string; width: string; usable: string; needed: string },
): Diagnostic => ({
  code: 'railroaded-to-fit',
  level: 'warning',
  span,
  message: `the gore ${quoted(says.gore)} (layer ${quoted(says.layer)}) is ${says.width} wide and its cloth leaves ${says.usable}: the whole layer is laid with its length across the cloth`,
  why: 'the grain then runs round the skirt: it hangs and shines differently from one cut along the cloth',
  hint: `hang a length of the cloth that way before buying; a cloth ${says.needed} wide can be cut along the grain`,
});

export const foldDoesNotFit = (
  span: Span,
  says: {
    gore: string;
    layers: readonly string[];
    fold: string;
    width: string;
    usable: string;
    way: string;
  },
): Diagnostic => ({
  code: 'fold-does-not-fit',
  level: 'warning',
  span,
  message: `${layerWords(says.layers)} cannot be cut ${says.fold} as asked: the gore ${quoted(says.gore)} takes ${says.width}, and the folded cloth leaves ${says.usable}`,
  why: 'a piece that runs off the fold or the selvedge is found at the cutting table',
  hint: `it is planned ${says.way} instead; a wider cloth could be folded`,
});

export const foldImpossible = (
  span: Span,
  says: { layers: readonly string[]; fold: string; way: string },
): Diagnostic => ({
  code: 'fold-does-not-fit',
  level: 'warning',
  span,
  message: `${layerWords(says.layers)} cannot be cut ${says.fold} as asked: ${says.layers.length === 1 ? 'it has' : 'they have'} no mirrored pairs or halves to cut double`,
  why: 'a fold gives two of every piece, and mirrored',
  hint: `it is planned ${says.way} instead`,
});

export const repeatAssumed = (
  span: Span,
  says: { layers: readonly string[]; cloth: string },
): Diagnostic => ({
  code: 'repeat-placed',
  level: 'note',
  span,
  message: `${layerWords(says.layers)}: every piece of ${quoted(says.cloth)} begins on a whole repeat, and a motif is taken to lie on the middle of the cloth`,
  why: 'where the motifs really lie is seen only on the cloth',
  hint: 'measure the repeat and where a motif lies before cutting, and move all pieces alike',
});

function layerWords(layers: readonly string[]): string {
  return `${layers.length === 1 ? 'layer' : 'layers'} ${layersInWords(layers.map(quoted))}`;
}
