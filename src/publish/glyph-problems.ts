import { warning } from '../diagnostics/finding.ts';

/** Names on paper with letters that no font at hand can draw. */
export const lettersMissing = warning('letters-missing', (letters: readonly string[]) => ({
  message: `No font at hand has ${letters.length === 1 ? 'the letter' : 'the letters'} ${letters.join(' ')}.`,
  why: 'On paper a small box stands in their place, so two names may look alike there.',
  hint: 'Latin, Greek and Cyrillic letters can be printed: write what is printed in one of these.',
}));
