import type { Diagnostic, Span } from '../../diagnostics/diagnostic.ts';
import { quoted } from '../../diagnostics/plain-text.ts';

/** What can stand against laying a layer on its cloth. Lengths come as text in the maker's units. */

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
  says: { gore: string; layer: string; fold: string; width: string; usable: string; way: string },
): Diagnostic => ({
  code: 'fold-does-not-fit',
  level: 'warning',
  span,
  message: `layer ${quoted(says.layer)} cannot be cut ${says.fold} as asked: the gore ${quoted(says.gore)} takes ${says.width}, and the folded cloth leaves ${says.usable}`,
  why: 'a piece that runs off the fold or the selvedge is found at the cutting table',
  hint: `it is planned ${says.way} instead; a wider cloth could be folded`,
});

export const foldImpossible = (
  span: Span,
  says: { layer: string; fold: string; way: string },
): Diagnostic => ({
  code: 'fold-does-not-fit',
  level: 'warning',
  span,
  message: `layer ${quoted(says.layer)} cannot be cut ${says.fold} as asked: it has no mirrored pairs or halves to cut double`,
  why: 'a fold gives two of every piece, and mirrored',
  hint: `it is planned ${says.way} instead`,
});

export const repeatAssumed = (span: Span, says: { layer: string; cloth: string }): Diagnostic => ({
  code: 'repeat-placed',
  level: 'note',
  span,
  message: `layer ${quoted(says.layer)}: every piece of ${quoted(says.cloth)} begins on a whole repeat, and a motif is taken to lie on the middle of the cloth`,
  why: 'where the motifs really lie is seen only on the cloth',
  hint: 'measure the repeat and where a motif lies before cutting, and move all pieces alike',
});

export const LAY_CUT_SHORT = 'lay-cut-short';

export const layCutShort = (span: Span, layer: string): Diagnostic => ({
  code: LAY_CUT_SHORT,
  level: 'warning',
  span,
  message: `the lay of layer ${quoted(layer)} was cut short by Ctrl-C, while a shorter one was being looked for`,
  why: 'what it says to buy may be metres more than is needed',
  hint: 'draft again and let it finish before you buy or quote',
});

export const layTooLong = (
  span: Span,
  says: { layer: string; cloth: string; least: string },
): Diagnostic => ({
  code: 'lay-too-long',
  level: 'error',
  span,
  message: `layer ${quoted(says.layer)} takes at least ${says.least} of ${quoted(says.cloth)}`,
  why: 'no gown takes so much of one cloth: as a rule a measure is ten times too large, or the cloth too narrow',
  hint: 'look at the lengths, the hems and how full the layer is in the table of `check`, and at the width of the cloth',
});
