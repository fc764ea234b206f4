import { clothOfGown, type GownToHang } from './cloth-of-gown.ts';
import { hangCloth, type Settling } from './hang-cloth.ts';
import { type Hang, hangOf } from './hang.ts';

/**
 * From a start four times as coarse, in which the cloth finds its place and its large folds, to the finest mesh. The
 * last steps are small: what stretch is left falls with the step.
 */
const SETTLINGS: readonly Settling[] = [
  { stride: 2, steps: 400, fall: 0.2, keeps: 0.97 },
  { stride: 1, steps: 140, fall: 0.05, keeps: 0.97 },
  { stride: 1, steps: 60, fall: 0.02, keeps: 0.95 },
  { stride: 1, steps: 80, fall: 0.005, keeps: 0.9 },
  { stride: 1, steps: 60, fall: 0.001, keeps: 0.9 },
];

/** Friction of cloth on a floor, and of cloth on a petticoat, for one of pressure. From memory: 0.3 to 0.6, 0.15 to 0.3. */
const GRIP = { floorGrip: 0.4, bodyGrip: 0.15 } as const;

/** Hangs a drafted gown over what she wears under it, on the floor. */
export function hangGown(gown: GownToHang): Hang {
  const sewn = clothOfGown(gown);
  const mesh = hangCloth(sewn.cloth, { body: sewn.body, floor: 0, ...GRIP }, SETTLINGS);
  return hangOf(sewn, mesh);
}
