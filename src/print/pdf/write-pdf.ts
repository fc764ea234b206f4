import type { Drawing } from '../drawing.ts';
import type { PdfFile, PdfOptions } from './pdf-file.ts';

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
