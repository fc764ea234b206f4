import { cloth } from './cloth';

/** A cell smaller than this has no cloth in it: above a godet's point, mm². */
const LEAST_CELL: f64 = 1;

/**
 * Shear of every four places, as soft as the cloth is: the squared diagonals of a parallelogram of sides a, b differ by
 * 4ab·sin γ, and stretch does not change that. Energy G·γ²·ab/2, softened as in Macklin, Müller, Chentanez, "XPBD", 2016.
 * @param stiffness shear length · fall
 */
export function shear(stiffness: f64): void {
  const columns = cloth.columns;
  const rows = cloth.rows;
  const place = cloth.place;
  const ease = cloth.ease;
  const cell = cloth.cell;
  const skew = cloth.skew;
  const soft = 4 / stiffness;
  const pairs = cloth.ring ? columns : columns - 1;
  for (let column = 0; column < pairs; column++) {
    let i = column * rows;
    let j = (column + 1 === columns ? 0 : column + 1) * rows;
    for (let row = 0; row + 1 < rows; row++, i++, j++) {
      const area = cell[i];
      if (area < LEAST_CELL) continue;
      const a = 3 * i;
      const b = 3 * j + 3;
      const c = 3 * i + 3;
      const d = 3 * j;
      const fx = place[b] - place[a];
      const fy = place[b + 1] - place[a + 1];
      const fz = place[b + 2] - place[a + 2];
      const rx = place[d] - place[c];
      const ry = place[d + 1] - place[c + 1];
      const rz = place[d + 2] - place[c + 2];
      const falling = fx * fx + fy * fy + fz * fz;
      const rising = rx * rx + ry * ry + rz * rz;
      const ea = ease[i];
      const eb = ease[j + 1];
      const ec = ease[i + 1];
      const ed = ease[j];
      const sum = (ea + eb) * falling + (ec + ed) * rising;
      if (sum === 0) continue;
      // Both sides of the softened condition are multiplied by (2 · area)².
      const move = (falling - rising - skew[i]) / 2 / (sum + area * soft);
      place[a] += ea * move * fx;
      place[a + 1] += ea * move * fy;
      place[a + 2] += ea * move * fz;
      place[b] -= eb * move * fx;
      place[b + 1] -= eb * move * fy;
      place[b + 2] -= eb * move * fz;
      place[c] -= ec * move * rx;
      place[c + 1] -= ec * move * ry;
      place[c + 2] -= ec * move * rz;
      place[d] += ed * move * rx;
      place[d + 1] += ed * move * ry;
      place[d + 2] += ed * move * rz;
    }
  }
}
