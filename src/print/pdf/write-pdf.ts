import type { Drawing } from '../drawing.ts';
import type { Bookmark } from './pdf-outline.ts';

export interface PdfOptions {
  readonly title: string;
  /** What made it: spec format and content hash, in the file's properties. */
  readonly subject?: string;
  /** How it was made, in the file's properties too, for an audit. */
  readonly keywords?: string;
  /** The pages' titles where not given. */
  readonly bookmarks?: readonly Bookmark[];
  /** Bytes of a TrueType font, asked for only when a text needs more than the standard fonts have. */
  readonly font?: () => Uint8Array | Promise<Uint8Array>;
}

export interface PdfFile {
  readonly bytes: Uint8Array;
  /** Characters that no font at hand has, drawn as a sign for a missing one: the caller's to report. */
  readonly missingGlyphs: readonly string[];
}

/**
 * Drawings as the pages of a PDF 1.7, full size, whatever their shape; the same bytes for the same drawings anywhere
 * and on any day. Each distinct drawing that a page uses is written once. Print scaling is off; pages are numbered
 * from 1 as a viewer numbers them.
 */
export async function writePdf(pages: readonly Drawing[], options: PdfOptions): Promise<PdfFile> {
  // Loaded here: most commands write no PDF, and reading the library takes longer than drafting a gown.
  const { pdfDocument } = await import('./pdf-document.ts');
  return pdfDocument(pages, options);
}
