import { pagesOf, type ReadPage } from './page-lines.ts';
import { PdfFile } from './pdf-file.ts';
import { UnreadablePdf } from './pdf-lexer.ts';
import { isString, type PdfValue } from './pdf-value.ts';

/** A pattern's PDF as the audit reads it, or why it cannot. */
export type ReadPattern =
  | { readonly pages: readonly ReadPage[]; readonly subject: string; readonly keywords: string }
  | { readonly unreadable: string };

/**
 * Reads a pattern's PDF with nothing of what wrote it: lines on pages, and what the file says of itself. Any PDF of
 * lines will do, saved again by another program or not; pictures of pages will not.
 */
export function readPattern(bytes: Uint8Array): ReadPattern {
  try {
    const file = new PdfFile(bytes);
    const info = file.trailer('Info');
    return {
      pages: pagesOf(file),
      subject: textOf(file.entry(info, 'Subject')),
      keywords: textOf(file.entry(info, 'Keywords')),
    };
  } catch (error) {
    if (error instanceof UnreadablePdf) return { unreadable: error.message };
    throw error;
  }
}

/** A text string: UTF-16 where it begins with the mark for it, else one character a byte. */
function textOf(value: PdfValue | undefined): string {
  if (!isString(value)) return '';
  if (!value.bytes.startsWith('\u00fe\u00ff')) return value.bytes;
  const units = value.bytes.slice(2).match(/[\s\S]{2}/g) ?? [];
  return units.map((pair) => String.fromCharCode(pair.charCodeAt(0) * 256 + pair.charCodeAt(1))).join('');
}
