import { markupText } from '../text/markup-text.ts';
import { plainText } from '../text/plain-text.ts';

/** Markup that may stand in a page as it is: made by `html` or by a writer of drawings, never text from a spec. */
export class Markup {
  constructor(readonly text: string) {}
}

export type Part = Markup | string | number | undefined | readonly Part[];

/** A template of markup: every value that is not markup itself is text, and is written so that it stays text. */
export function html(strings: TemplateStringsArray, ...parts: readonly Part[]): Markup {
  return new Markup(strings.map((string, i) => (i === 0 ? '' : written(parts[i - 1])) + string).join(''));
}

function written(part: Part): string {
  if (part === undefined) return '';
  if (part instanceof Markup) return part.text;
  if (Array.isArray(part)) return part.map(written).join('');
  return markupText(plainText(String(part)));
}
