import type { Spec } from '../../gown-file/spec.ts';

/** Whether the gown is a child's: as the body says, or, where no body is measured, as the maker's notes do. */
export function isForAChild({ body, notes }: Pick<Spec, 'body' | 'notes'>): boolean {
  if (body !== undefined) return body.wearer === 'child';
  return /\bchild(ren)?\b|year-old|\bgirl\b|\bboy\b/i.test(notes ?? '');
}
