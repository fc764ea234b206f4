import { NO_BREAK, plainText } from './plain-text.ts';
import { textWidth } from './text-width.ts';
import { isWinAnsi } from './win-ansi.ts';

/**
 * A text in lines no wider than `width` (same unit as `size`), broken at spaces and after hyphens and slashes; a word
 * wider than a line is broken where it must be. Line ends in the text are kept. An empty text is one empty line.
 * `firstWidth` narrows the first line, for a lead in front of it.
 */
export function wrapText(
  text: string,
  width: number,
  size: number,
  bold = false,
  firstWidth = width,
): string[] {
  const lines: string[] = [];
  for (const paragraph of text.split(/\r\n|[\n\r\u2028\u2029]/u)) {
    wrapParagraph(
      plainText(paragraph).trim(),
      size,
      bold,
      lines,
      (index) => (index === 0 ? firstWidth : width) + SLACK,
    );
  }
  return lines;
}

/** A column made exactly as wide as its text must not break it by rounding. */
const SLACK = 1e-6;

/** `text` at `size`, or smaller, down to `smallest`, so that it fits `width`; then cut short with an ellipsis. */
export function fitText(
  text: string,
  width: number,
  size: number,
  smallest: number,
  bold = false,
): { readonly text: string; readonly size: number } {
  const shown = plainText(text).trim();
  const natural = textWidth(shown, size, bold);
  if (natural <= width) return { text: shown, size };
  const shrunk = (size * width) / natural;
  if (shrunk >= smallest) return { text: shown, size: shrunk };
  const characters = [...shown];
  const fits = (count: number) =>
    textWidth(`${characters.slice(0, count).join('').trimEnd()}…`, smallest, bold) <= width;
  const kept = largestCount(characters.length, fits);
  return { text: `${characters.slice(0, kept).join('').trimEnd()}…`, size: smallest };
}

function wrapParagraph(
  text: string,
  size: number,
  bold: boolean,
  lines: string[],
  widthOf: (lineIndex: number) => number,
): void {
  // Most text in a table fits one line, and is not taken apart; in one font no beginning of it is wider.
  if (textWidth(text, size, bold) <= widthOf(lines.length) && isWinAnsi(text)) {
    lines.push(text.trimEnd().replaceAll(NO_BREAK, ' '));
    return;
  }
  let line = '';
  for (const part of text.match(BREAKABLE) ?? ['']) {
    if (textWidth((line + part).trimEnd(), size, bold) > widthOf(lines.length) && line !== '') {
      lines.push(line.trimEnd().replaceAll(NO_BREAK, ' '));
      line = '';
    }
    if (line !== '' || textWidth(part.trimEnd(), size, bold) <= widthOf(lines.length)) {
      line += part;
      continue;
    }
    const rest = [...part];
    const word = [...part.trimEnd()].length;
    let done = 0;
    while (line === '' && done < rest.length - 1) {
      const room = widthOf(lines.length);
      const fits = (count: number) => textWidth(rest.slice(done, done + count).join(''), size, bold) <= room;
      const kept = Math.max(1, firstThatFit(word - done, fits));
      if (done + kept >= word) break;
      lines.push(rest.slice(done, done + kept).join(''));
      done += kept;
    }
    line += rest.slice(done).join('');
  }
  lines.push(line.trimEnd().replaceAll(NO_BREAK, ' '));
}

/** Parts that stay together: a word with the spaces after it, or up to a hyphen or slash within it. */
const BREAKABLE = /(?:[^\s/-]|\u00a0)+(?:[/-]+|[^\S\u00a0]+)?|[/-]+|[^\S\u00a0]+/gu;

/** The same, for a count that is small beside `most`: little more is tried than what fits. */
function firstThatFit(most: number, fits: (count: number) => boolean): number {
  let tried = 16;
  while (tried < most && fits(tried)) tried *= 2;
  return largestCount(Math.min(tried, most), fits);
}

/** The largest count from 0 to `most` for which `fits` holds; `fits` holds up to some count and not after. */
function largestCount(most: number, fits: (count: number) => boolean): number {
  let low = 0;
  let high = most;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (fits(middle)) low = middle;
    else high = middle - 1;
  }
  return low;
}
