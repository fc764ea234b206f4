import { error, type Words, warning } from '../diagnostics/finding.ts';

/** What is found of a bodice once it is drafted. */

export const seamUneven = error('bodice-seam-untrue', (seam: string, by: number) =>
  seamUntrue(seam, `differ by ${by.toFixed(2)} mm along it`),
);

export const seamBent = error('bodice-seam-untrue', (seam: string, at: 'upper-edge' | 'waist-seam') =>
  seamUntrue(seam, `meet at an angle at the ${at.replace('-', ' ')}`),
);

function seamUntrue(seam: string, what: string): Words {
  return {
    message: `The panels at ${seam} ${what}.`,
    why: 'They would not be sewn together without a pucker or a step.',
    hint: 'Look at the heights and girths beside it; where there is nothing odd, this is a fault of the tool.',
  };
}

export const girthUntrue = error('bodice-girth-untrue', (level: string, more: string) => ({
  message: `At the ${level} the drafted panels make ${more} mm more than they should.`,
  why: 'The bodice would not have her girth there.',
  hint: 'Share the girth among more panels, or look at levels that lie close together.',
}));

export const edgeAboveGirths = warning(
  'edge-above-girths',
  (station: string, height: string, level: string, above: string) => ({
    message: `The upper edge is ${height} above the waist at ${station}, and the highest girth is the ${level} at ${above}.`,
    why: 'Above it the panels keep its width, and the edge may gape.',
    hint: 'Measure her once more as high as the edge, and add the girth; the toile shows the rest.',
  }),
);

export const lacedTightly = warning(
  'laced-tightly',
  (level: string, girth: string, by: string, isChild: boolean) => ({
    message: isChild
      ? `At the ${level} a child of ${girth} is laced in by ${by}.`
      : `At the ${level} she is ${girth} and laced in by ${by}.`,
    why: 'Lacing presses on breath and organs; no figure here says what a body bears.',
    hint: isChild
      ? 'Leave a child her own girths; a doctor decides whether she may be laced at all.'
      : 'She and her doctor decide; try it in the toile for as long as she will wear it.',
  }),
);

export const fittingBesideDraft = warning('fitting-beside-draft', (isTakenIn: boolean, by: string) => ({
  message: `The fittings ${isTakenIn ? 'take in' : 'let out'} the waist seam by ${by} all round, and the drafted panels above it stay as they are.`,
  why: 'Skirt and bodice would not meet at the waist seam.',
  hint: 'Write what was pinned above the waist seam under `bodice` of the same fitting, from below the waist up.',
}));
