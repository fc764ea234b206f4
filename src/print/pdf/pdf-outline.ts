/** A place to jump to. `page` counts from 0; a higher level lies below the nearest lower one before it. */
export interface Bookmark {
  readonly title: string;
  readonly page: number;
  readonly level: number;
}

/** A bookmark with its neighbours in the tree, by index; the PDF outline's own shape (ISO 32000-1, 12.3.3). */
export interface OutlineItem extends Bookmark {
  readonly parent?: number;
  readonly previous?: number;
  readonly next?: number;
  readonly children: readonly number[];
}

export function outlineItems(bookmarks: readonly Bookmark[]): OutlineItem[] {
  const parents = bookmarks.map((_, index) => parentOf(bookmarks, index));
  const children = new Map<number | undefined, number[]>();
  const places = parents.map((parent, index) => {
    const siblings = children.get(parent) ?? [];
    children.set(parent, siblings);
    return siblings.push(index) - 1;
  });
  return bookmarks.map((bookmark, index) => {
    const siblings = children.get(parents[index])!;
    const place = places[index]!;
    const neighbours = { parent: parents[index], previous: siblings[place - 1], next: siblings[place + 1] };
    const known = Object.entries(neighbours).filter(([, value]) => value !== undefined);
    return { ...bookmark, ...Object.fromEntries(known), children: children.get(index) ?? [] };
  });
}

function parentOf(bookmarks: readonly Bookmark[], index: number): number | undefined {
  for (let before = index - 1; before >= 0; before--) {
    if (bookmarks[before]!.level < bookmarks[index]!.level) return before;
  }
  return undefined;
}
