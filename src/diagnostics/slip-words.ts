import { quoted } from './safe-text.ts';

/** The end of a sentence, and what was meant where that is plain. */
export const asked = (meant: string | undefined): string =>
  meant === undefined ? '.' : `. Did you mean ${quoted(meant)}?`;

export interface Doubt {
  readonly meant: string | undefined;
}
