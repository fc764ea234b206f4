import type { Diagnostic, Source } from '../diagnostics/diagnostic.ts';
import * as problems from '../diagnostics/text-problems.ts';

/** Bytes that a spec may have. A gown's is 4 kB and the longest that tests know 40; more is another kind of file. */
export const LARGEST_SPEC = 200_000;

/** Bytes of a file to text, or one diagnostic that says what the file is instead. */
export function decodeSpec(bytes: Uint8Array, name: string): { source?: Source; diagnostics: Diagnostic[] } {
  const nowhere = { source: { name, text: '' }, start: 0, end: 0 };
  if (bytes.length > LARGEST_SPEC) return { diagnostics: [problems.tooLarge(nowhere, LARGEST_SPEC)] };
  const wide = wideEncodingOf(bytes);
  if (wide !== undefined) return { diagnostics: [problems.notUtf8(nowhere, wide)] };
  const text = new TextDecoder('utf-8').decode(bytes);
  const source = { name, text };
  const fault = faultOfCharacters(source);
  if (fault !== undefined) return { diagnostics: [fault] };
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    const at = text.indexOf('\ufffd');
    return { diagnostics: [problems.notUtf8({ source, start: at, end: at + 1 }, 'in another encoding')] };
  }
  return { source, diagnostics: [] };
}

/** What readSpec itself refuses in text, whichever way the text came. */
export function faultOfText(source: Source): Diagnostic | undefined {
  if (source.text.length > LARGEST_SPEC)
    return problems.tooLarge({ source: { name: source.name, text: '' }, start: 0, end: 0 }, LARGEST_SPEC);
  return faultOfCharacters(source);
}

function faultOfCharacters(source: Source): Diagnostic | undefined {
  const match = NOT_TEXT.exec(source.text);
  if (match === null) return undefined;
  const span = { source, start: match.index, end: match.index + 1 };
  return problems.controlCharacter(span, match[0].charCodeAt(0));
}

function wideEncodingOf([a, b, c, d]: Uint8Array): string | undefined {
  if (a === 0xff && b === 0xfe) return c === 0 && d === 0 ? 'UTF-32' : 'UTF-16';
  if (a === 0xfe && b === 0xff) return 'UTF-16';
  // Without a byte order mark: the first letter of a spec is Latin, so every second byte is nought.
  return (a === 0 && b !== 0 && c === 0) || (a !== 0 && b === 0 && d === 0 && c !== 0) ? 'UTF-16' : undefined;
}

/** Controls other than tab and line ends, the C1 range, and lone surrogates: YAML allows none of them either. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for.
const NOT_TEXT = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u0084\u0086-\u009f\ufffe\uffff]|\p{Cs}/u;
