import type { Cloth } from '../../gown/cloth.ts';

/** Standard gravity, m/s². */
const GRAVITY = 9.81;

/**
 * How much longer cloth on the bias hangs than it lay, by its own weight alone and at once: w·g·L²/8G. In bias direction
 * cloth gives by shearing, a quarter as stiffly as it shears; below each place hangs what is left of the length. What it
 * goes on growing by, over hours, no formula gives.
 * @param weight g/m² @param length mm @param shear N/m @returns mm
 */
export function elasticDrop(weight: number, length: number, shear: number): number {
  const metres = length / 1000;
  return ((weight / 1000) * GRAVITY * metres * metres * 1000) / (8 * shear);
}

/** Shear stiffness of soft cloth and of firm, N/m, where it is not measured. From memory. */
const SOFT = 20;
const FIRM = 40;

/** As measured, else by the weave: soft ones shear half as stiffly. */
export function shearStiffnessOf({ shearStiffness, weave = '', name }: Cloth): number {
  if (shearStiffness !== undefined) return shearStiffness;
  return /crepe|crêpe|satin|charmeuse|chiffon|georgette|viscose|silk|jersey/i.test(`${weave} ${name}`)
    ? SOFT
    : FIRM;
}
