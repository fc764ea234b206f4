import { expect, it } from 'vitest';
import { bendingFigure } from '../../src/print/papers/bending-figure.ts';
import { english } from '../../src/words/english.ts';

it('the strip hangs with its tip 41.5° below the table, its own end steeper: the heavy elastica of two bending lengths', () => {
  const { measuresForm } = english('cm');
  const { marks } = bendingFigure(measuresForm, 180);
  const strip = marks.flatMap((mark) =>
    mark.kind === 'path' && mark.runs[0]!.length === 2 ? [mark.runs[0]!] : [],
  )[0]!;
  const [, hangs] = strip;
  if (hangs?.kind !== 'cubic') throw new Error('the strip is no curve');
  const degrees = (from: { x: number; y: number }, to: { x: number; y: number }): number =>
    (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  // Peirce 1930; BS 3356: 41.5°. The slope at the tip is from the exact elastica: 53.865°.
  expect(degrees(hangs.from, hangs.to)).toBeCloseTo(41.5, 6);
  expect(degrees(hangs.control2, hangs.to)).toBeCloseTo(53.865, 3);
  // 22 down for 25 along draws that line with a tape: within a third of a degree.
  expect(measuresForm.stiffnessText).toContain('22 down for 25 along');
  expect((Math.atan(22 / 25) * 180) / Math.PI).toBeCloseTo(41.5, 0);
});
