import type { Cloth } from '../gown/cloth.ts';

/** Cloth that is marked inside its allowance and cut on paper, by its weave or its name. */
export function isSheer({ name, weave = '' }: Pick<Cloth, 'name' | 'weave'>): boolean {
  return /organza|chiffon|georgette|tulle|voile|\bnet\b|netting|sheer/i.test(`${weave} ${name}`);
}

export function isSequinned({ name, weave = '' }: Pick<Cloth, 'name' | 'weave'>): boolean {
  return /sequin|bead|paillette/i.test(`${weave} ${name}`);
}
