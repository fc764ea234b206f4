import { childOf, type Written, type WrittenMap } from './written.ts';

/** What says how a drafted bodice is made. */
const OF_MAKING = ['closing', 'bones', 'layers'];

/**
 * Specs written before these keys stood beside `draft` have them in it: they are taken as if they stood beside it. What
 * stands in both places is left, and so found.
 */
export function withMakingOfBodice(root: WrittenMap): WrittenMap {
  const bodice = childOf(root, 'bodice');
  const draft = childOf(bodice, 'draft');
  if (bodice?.kind !== 'map' || draft?.kind !== 'map') return root;
  const moved = OF_MAKING.filter((key) => draft.entries.has(key) && !bodice.entries.has(key));
  if (moved.length === 0) return root;
  const left = [...draft.entries].filter(([key]) => !moved.includes(key));
  const entries: [string, Written][] = [
    ...[...bodice.entries].map(([key, value]): [string, Written] =>
      key === 'draft' ? [key, { ...draft, entries: new Map(left) }] : [key, value],
    ),
    ...moved.map((key): [string, Written] => [key, draft.entries.get(key)!]),
  ];
  const own: WrittenMap = { ...bodice, entries: new Map(entries) };
  return {
    ...root,
    entries: new Map([...root.entries].map(([key, value]) => [key, key === 'bodice' ? own : value])),
  };
}
