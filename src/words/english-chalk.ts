/** What the chalk tables say. */
export function englishChalk() {
  return {
    chalk: {
      inner: {
        caption: 'Straight lines inside: what is folded, and what it is brought or sewn to',
        heads: ['line', 'from: down', 'across', 'to: down', 'across'],
        names: {
          'fold-line': 'fold',
          'placement-line': 'bring the outer fold here',
          'dart-leg-line': 'leg of a dart',
          'dart-fold-line': 'fold of a dart',
          'tuck-fold-line': 'fold of a tuck',
          'tuck-stitch-line': 'stitching of a tuck',
        },
      },
      bustle: {
        caption: (layer: string): string => `On the ${layer}`,
        heads: ['bustle: down, across', 'anchor', 'pick-up'],
      },
      title: 'Chalk tables',
      intro: [
        'Chalk the grain line down the cloth. “Down” is measured along it from the top of the cut line, “across” square from it: + to the right, - to the left.',
        'Mark the corners first, check the two diagonals, then the levels, then the curves: along the straight line between two corners, and square off it, + away from the piece, - into it. Join from mark to mark.',
        'Capitals are corners of the cut line, small letters of the seam line.',
      ],
      shared: (layers: string): string => `Of the ${layers}; what differs in the others stands below.`,
      differs: (layers: string): string => `Different in the ${layers}`,
      onSide: (gore: string, side: 'left' | 'right'): string => `${gore}, her ${side}`,
      biasIntro:
        'On the bias: chalk the line to measure along at 45° to the selvedge, as a corner of the cloth folded over to it shows, and use it as the grain line. Of a pair turn the second over.',
      onFoldIntro: 'On the fold: the fold is the grain line.',
      corners: 'Corners',
      cornerHeads: ['', 'down', 'across'],
      levels: 'Levels',
      levelHeads: { down: 'down', columns: ['cut left', 'seam left', 'seam right', 'cut right'] },
      curves: 'Curves',
      chord: (from: string, to: string, edge: string): string => `${from}–${to}, ${edge}`,
      along: 'along',
      out: 'off',
      swings: 'Swings',
      swing: (line: string, edge: string, radius: string, down: string, across: string): string =>
        `${line} line of the ${edge}: swing ${radius} from a point ${down}, ${across}.`,
      above: (length: string): string => `${length} above the top`,
      below: (length: string): string => `${length} down`,
      onGrain: 'on the grain line',
      left: (length: string): string => `${length} left of it`,
      right: (length: string): string => `${length} right of it`,
      cut: 'Cut',
      seam: 'Seam',
      diagonals: (pairs: readonly string[]): string => `Diagonals: ${pairs.join('; ')}.`,
      copies: {
        'on-fold': () => 'cut 1 on the fold',
        pair: () => 'cut 2, the second mirrored',
        single: (copies: number) => `cut ${copies}`,
      },
    },
  };
}
