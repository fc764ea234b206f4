import type { Gown } from '../../gown/gown.ts';

/** Whether the gown is a child's: as the body says, or, where no body is measured, as the maker's notes do. */
export function isForAChild({ body, notes }: Pick<Gown, 'body' | 'notes'>): boolean {
  if (body !== undefined) return body.wearer === 'child';
  return /\bchild(ren)?\b|year-old|\bgirl\b|\bboy\b/i.test(notes ?? '');
}
