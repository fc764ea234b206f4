/** Whether the maker's notes speak of a child as the wearer. */
export function isForAChild(notes: string | undefined): boolean {
  return /\bchild(ren)?\b|year-old|\bgirl\b|\bboy\b/i.test(notes ?? '');
}
