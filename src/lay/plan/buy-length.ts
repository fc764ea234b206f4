import type { ClothAsSold } from './lay-to-plan.ts';

/** A lay longer than a whole number of steps by less than this, mm, is not worth another step: no one cuts to it. */
const NOT_WORTH_A_STEP = 0.5;

/** Steps where a shop's are not known, mm: the centimetre. */
const USUAL_STEP = 10;

/**
 * What to buy for a lay, mm: ⌈(lay + end loss) × (1 + shrinkage) × (1 + safety) ÷ step⌉ × step, and the shop's
 * minimum. A cloth that shrinks is bought longer, washed, and then cut.
 */
export function buyLength(length: number, cloth: ClothAsSold): number {
  const step = cloth.soldBy ?? USUAL_STEP;
  const needed = (length + cloth.endLoss) * (1 + cloth.shrinkage) * (1 + cloth.safety);
  const least = cloth.minimum ?? 0;
  const steps = Math.max(Math.ceil((needed - NOT_WORTH_A_STEP) / step), Math.ceil((least - 1e-6) / step));
  return Math.round(steps * step * 1e6) / 1e6;
}
