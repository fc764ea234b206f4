import type { Cloth } from '../gown/cloth.ts';

/**
 * Bending lengths where nobody pushed a strip over the table's edge: by weave, mm, at a weight that is usual for it,
 * g/m². All from memory, of the order that fabric handbooks print: limp cloths 12 to 18, dress cloths 18 to 28, crisp
 * ones 30 to 45. A maker's own figure goes before them.
 */
const BY_WEAVE: readonly { readonly named: RegExp; readonly length: number; readonly weight: number }[] = [
  { named: /chiffon|georgette|voile/i, length: 14, weight: 40 },
  { named: /organza|organdie/i, length: 34, weight: 35 },
  { named: /tulle|\bnet\b|netting/i, length: 30, weight: 20 },
  { named: /jersey|knit/i, length: 13, weight: 200 },
  { named: /crepe|crêpe/i, length: 16, weight: 180 },
  { named: /charmeuse|habotai|cupro|lining|viscose/i, length: 16, weight: 80 },
  { named: /taffeta|faille|dupion|shantung/i, length: 34, weight: 110 },
  { named: /duchess|mikado|brocade|damask|jacquard/i, length: 38, weight: 220 },
  { named: /satin|sateen/i, length: 22, weight: 160 },
  { named: /velvet|velveteen/i, length: 22, weight: 280 },
  { named: /lace|galloon/i, length: 20, weight: 120 },
  { named: /coutil|canvas|denim/i, length: 45, weight: 280 },
  { named: /wool|flannel|suiting/i, length: 24, weight: 250 },
  { named: /linen|cotton|lawn|poplin|calico/i, length: 26, weight: 140 },
];
const OTHERWISE = { length: 22, weight: 170 } as const;

/** Least and most that a heavier or lighter cloth of one weave is given, of what is usual for it. */
const WITHIN = [0.75, 1.35] as const;

/**
 * How far a cloth's strip reaches for its bend: half the overhang at which its tip hangs 41.5° down, mm (Peirce 1930;
 * BS 3356). A heavier cloth of one weave is thicker, and its stiffness grows faster than its weight: about as the fourth
 * root of the weight, from memory.
 */
export function bendingLengthOf(cloth: Pick<Cloth, 'name' | 'weave' | 'weight' | 'bendingLength'>): number {
  const { name } = cloth;
  if (cloth.bendingLength !== undefined) return cloth.bendingLength;
  const named = cloth.weave ?? name;
  const usual =
    BY_WEAVE.find((weave) => weave.named.test(named)) ?? BY_WEAVE.find((weave) => weave.named.test(name));
  const { length, weight } = usual ?? OTHERWISE;
  const share = cloth.weight === undefined ? 1 : Math.sqrt(Math.sqrt(cloth.weight / weight));
  return length * Math.min(WITHIN[1], Math.max(WITHIN[0], share));
}

/** Shear stiffness over weight, mm: soft beside real cloth (15 m and more), or rows, columns and shear would lock. */
export const SHEAR_LENGTH = 5000;
