import type { Spec } from '../gown-file/spec.ts';

/** Width of a cloth between its selvedges, mm. */
export function usableWidth(spec: Spec, cloth: string): number {
  const own = spec.cloths[cloth];
  if (own === undefined) throw new Error(`no cloth is named ${cloth}`);
  return own.width - 2 * own.selvedge;
}
