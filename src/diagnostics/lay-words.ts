/** How pieces are shared among stretches of one fold each; or each layer's own lay after the other. */
export type LayFolds =
  | 'layers-end-to-end'
  | readonly { readonly fold: keyof typeof FOLD_WORDS; readonly gores: readonly string[] }[];

export const FOLD_WORDS = {
  single: 'single',
  lengthwise: 'folded lengthwise',
  crosswise: 'folded crosswise',
};

/** A way to lay, for papers and findings: `front to side folded lengthwise, then back single`. */
export function layWords(folds: LayFolds): string {
  if (folds === 'layers-end-to-end') return 'each layer by itself, end to end';
  const [first] = folds;
  return folds.length === 1
    ? `${FOLD_WORDS[first!.fold]} throughout`
    : folds.map(({ fold, gores }) => `${goreWords(gores)} ${FOLD_WORDS[fold]}`).join(', then ');
}

function goreWords(gores: readonly string[]): string {
  return gores.length > 2 ? `${gores[0]} to ${gores[gores.length - 1]}` : gores.join(' and ');
}
