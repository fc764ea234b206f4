import type { Source, Span } from '../diagnostics/diagnostic.ts';

/**
 * A spec as it stands in its file: maps, lists and scalars, each with its place. Nothing is converted yet: a number
 * keeps the digits it was written with, so that `24.50` stays `24.50` and a dye lot `0123` keeps its nought.
 */
export type Written = WrittenMap | WrittenList | WrittenScalar;

export interface WrittenScalar extends WrittenBase {
  /** `left-out` stands for a faulty value while the rest is checked; it is in no file. */
  readonly kind: 'text' | 'number' | 'flag' | 'nothing' | 'left-out';
  readonly text: string;
}

export interface WrittenMap extends WrittenBase {
  readonly kind: 'map';
  readonly entries: ReadonlyMap<string, Written>;
}

export interface WrittenList extends WrittenBase {
  readonly kind: 'list';
  readonly items: readonly Written[];
}

interface WrittenBase {
  readonly file: WrittenFile;
  readonly span: Span;
  /** The key that names this value; for an item of a list, that of the list; empty at the top. */
  readonly label: string;
  /** Where that key stands; none for the items of a list. */
  readonly key?: Span;
}

/** The file that a value came from. A value of a file that another is based on keeps its own file's units. */
export interface WrittenFile {
  readonly source: Source;
  /** What a bare number is in; set once, when the top of the file has been read. */
  units?: string;
}

export function isScalar(written: Written): written is WrittenScalar {
  return written.kind !== 'map' && written.kind !== 'list';
}

export function childOf(written: Written | undefined, step: string | number): Written | undefined {
  if (written?.kind === 'map') return written.entries.get(String(step));
  return written?.kind === 'list' ? written.items[Number(step)] : undefined;
}

export function writtenAt(root: Written, path: readonly (string | number)[]): Written | undefined {
  return path.reduce<Written | undefined>(childOf, root);
}

/** Where a message about this value points: a scalar itself, a section's key, a list item's name. */
export function placeOfWritten(written: Written): Span {
  if (isScalar(written)) return written.text === '' ? (written.key ?? written.span) : written.span;
  if (written.key !== undefined) return written.key;
  const name = childOf(written, 'name');
  return name === undefined || !isScalar(name) ? written.span : name.span;
}

/** Places of everything under `root` by path: `gores.1.top`. */
export function placesOf(root: Written): Map<string, Span> {
  const places = new Map<string, Span>();
  const visit = (written: Written, path: string) => {
    places.set(path, placeOfWritten(written));
    const under = (step: string | number) => (path === '' ? String(step) : `${path}.${step}`);
    if (written.kind === 'map') for (const [key, value] of written.entries) visit(value, under(key));
    if (written.kind === 'list')
      for (const [index, item] of written.items.entries()) visit(item, under(index));
  };
  visit(root, '');
  return places;
}
