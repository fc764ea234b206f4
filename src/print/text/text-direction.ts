/** A stretch of text that is set in one direction. */
export interface TextRun {
  readonly text: string;
  readonly rightToLeft: boolean;
}

/**
 * A line of text as runs in the order in which they stand on paper, from the left. The line itself runs from left to
 * right; stretches of Hebrew, Arabic and other right-to-left letters run the other way, with numbers in them kept in
 * their own order and brackets turned: the cases of the Unicode bidirectional algorithm that names and codes need,
 * without embeddings, which `plainText` takes out.
 */
export function visualRuns(text: string): TextRun[] {
  const runs: TextRun[] = [];
  let done = 0;
  for (const stretch of text.matchAll(STRETCH)) {
    if (stretch.index > done) runs.push({ text: text.slice(done, stretch.index), rightToLeft: false });
    const own = withoutStrayBrackets(stretch[0]);
    runs.push(...stretchRuns(own));
    done = stretch.index + own.length;
  }
  if (done < text.length) runs.push({ text: text.slice(done), rightToLeft: false });
  return runs;
}

/** A bracket that closes one from before the stretch belongs to the line around it. */
function withoutStrayBrackets(stretch: string): string {
  let stray = count(stretch, /[)\]}>»]/gu) - count(stretch, /[([{<«]/gu);
  let end = stretch.length;
  for (; stray > 0 && /[)\]}>»]/u.test(stretch.charAt(end - 1)); stray--) end--;
  return stretch.slice(0, end);
}

function count(text: string, pattern: RegExp): number {
  return [...text.matchAll(pattern)].length;
}

/** Numbers part a right-to-left stretch; the parts then stand in reverse order. */
function stretchRuns(stretch: string): TextRun[] {
  const parts = stretch.match(/\p{N}+(?:[.,:/]\p{N}+)*|\P{N}+/gu) ?? [];
  return parts.reverse().map((part) => {
    const isNumber = /^\p{N}/u.test(part);
    return {
      text: isNumber ? part : part.replace(/[()[\]{}<>«»]/gu, (bracket) => TURNED[bracket]!),
      rightToLeft: !isNumber,
    };
  });
}

const LETTER =
  '\\p{Script=Hebrew}\\p{Script=Arabic}\\p{Script=Syriac}\\p{Script=Thaana}\\p{Script=Nko}\\p{Script=Samaritan}\\p{Script=Mandaic}';

/** From a right-to-left letter to the last one, number or closing bracket before a letter that runs the other way. */
const STRETCH = new RegExp(
  `[${LETTER}](?:(?:[${LETTER}]|[^\\p{L}])*[${LETTER}\\p{N}\\p{M}])?[)\\]}>»]*`,
  'gu',
);

const TURNED: Readonly<Record<string, string>> = {
  '(': ')',
  ')': '(',
  '[': ']',
  ']': '[',
  '{': '}',
  '}': '{',
  '<': '>',
  '>': '<',
  '«': '»',
  '»': '«',
};
