import type { Kept } from '../../kept/kept.ts';
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
  /** Streams that were compressed before. */
  readonly kept?: Kept;
}

export interface PdfFile {
  readonly bytes: Uint8Array;
  /** Characters that no font at hand has, drawn as a sign for a missing one: the caller's to report. */
  readonly missingGlyphs: readonly string[];
}
