import { expect, it } from 'vitest';
import { patternFiles } from '../../src/publish/pattern-files.ts';
import { paperOf, sheetPlan } from '../../src/publish/pattern-sheets.ts';
import { gownOf } from '../making/constructions.ts';
import { made } from '../making/made.ts';

const { gown } = made(gownOf(['tiers', 'frill', 'hemFlounce']));
const printed = (options: { layers?: string[] }) =>
  new Set(sheetPlan(gown, paperOf(gown), options).pieces.map(({ cutPiece }) => cutPiece.gore));

it('strips of net and frills are drawn, full size and whole, and not printed: a ring is', async () => {
  const svg = (await patternFiles(gown, {})).files.get('pattern.svg') as string;
  const drawn = [...svg.matchAll(/data-gore="([^"]+)"/g)].map((match) => match[1]);
  // In the order in which they are cut.
  expect(drawn).toEqual(['front', 'side', 'back', 'ring', 'frill', 'underskirt']);
  expect([...printed({})].sort()).toEqual(['back', 'front', 'ring', 'side']);
  // All of them inside the drawing.
  const [, , width, height] = /viewBox="([^"]+)"/.exec(svg)![1]!.split(' ').map(Number);
  const cut = gown.cut.pieces.find(({ gore }) => gore === 'underskirt')!;
  const [first] = cut.cutEdges[0]!.curves;
  if (first?.kind !== 'line') throw new Error('a strip has straight edges');
  expect(width).toBeGreaterThan(Math.abs(first.to.x - first.from.x));
  const bottom = Math.max(
    ...[...svg.matchAll(/[ML] ?[-\d.]+[ ,]([-\d.]+)/g)].map((match) => Number(match[1])),
  );
  expect(bottom).toBeLessThan(height!);
});

it('a strip whose layer is asked for is printed', () => {
  expect([...printed({ layers: ['underskirt'] })]).toEqual(['underskirt']);
});
