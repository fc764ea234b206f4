import { expect, it } from 'vitest';
import { hangCloth } from '../../src/hanging/hang-cloth.ts';
import { placeOf, plainCloth } from './plain-cloth.ts';

const [DISC, CLOTH] = [90, 150];
const [ACROSS, DOWN] = [96, 8];

/** Share of the overhanging ring that its shadow covers: 30 cm of cloth over a disc of 18 cm (BS 5058 geometry). */
function drapeCoefficient(bendingLength: number): number {
  const step = (CLOTH - DISC) / (DOWN - 0.5);
  const at = (column: number, row: number): [number, number] => {
    const turn = (2 * Math.PI * column) / ACROSS;
    const radius = DISC + (row - 0.5) * step;
    return [radius * Math.sin(turn), -radius * Math.cos(turn)];
  };
  const cloth = plainCloth({
    across: ACROSS,
    down: DOWN,
    closing: 'ring',
    flat: at,
    start: (column, row) => [
      ...at(column, row),
      row < 2 ? 0 : -row * Math.sin((column * 12 * Math.PI) / ACROSS),
    ],
    isHeld: (_column, row) => row < 2,
    bendingLength,
  });
  const hung = hangCloth(cloth, { floorGrip: 0, bodyGrip: 0 }, [
    { stride: 1, steps: 600, fall: 0.05, keeps: 0.98 },
    { stride: 1, steps: 600, fall: 0.005, keeps: 0.97 },
  ]);
  let twice = 0;
  for (let column = 0; column < ACROSS; column++) {
    const [a, b] = [placeOf(hung, column, DOWN), placeOf(hung, (column + 1) % ACROSS, DOWN)];
    twice += a[0] * b[1] - b[0] * a[1];
  }
  return (twice / 2 - Math.PI * DISC * DISC) / (Math.PI * (CLOTH * CLOTH - DISC * DISC));
}

it('stiffer cloth drapes less: the coefficient rises with bending length, between nothing and the flat disc', () => {
  const coefficients = [12, 18, 25, 35, 50].map(drapeCoefficient);
  for (const [i, coefficient] of coefficients.entries()) {
    expect(coefficient).toBeGreaterThan(coefficients[i - 1] ?? 0);
    expect(coefficient).toBeLessThan(1);
  }
  // Cloth as limp as crepe falls below a cone that dips 41.5° (derived: 70.2 %), cloth as stiff as card stays above one of 30°.
  expect(coefficients[0]).toBeLessThan(0.702);
  expect(coefficients[4]).toBeGreaterThan(0.837);
});
