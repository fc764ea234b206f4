import type { Cloth } from '../gown/cloth.ts';

/** Cloth that is marked inside its allowance and cut on paper, by its weave or its name. */
export function isSheer({ name, weave = '' }: Pick<Cloth, 'name' | 'weave'>): boolean {
  return /organza|chiffon|georgette|tulle|voile|\bnet\b|netting|sheer/i.test(`${weave} ${name}`);
}

/** Sheers slip under the shears; net does not, for all that light comes through. */
export function isSlippery(cloth: Pick<Cloth, 'name' | 'weave'>): boolean {
  return isSheer(cloth) && !/tulle|\bnet\b|netting/i.test(`${cloth.weave ?? ''} ${cloth.name}`);
}

export function isSequinned({ name, weave = '' }: Pick<Cloth, 'name' | 'weave'>): boolean {
  return /sequin|bead|paillette/i.test(`${weave} ${name}`);
}
