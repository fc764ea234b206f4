import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { tapeText } from '../../src/diagnostics/tape-text.ts';
import type { Curve, Point } from '../../src/geometry/curve.ts';
import { flattenedRun } from '../../src/geometry/flatten.ts';
import type { PlacedPiece } from '../../src/lay/plan/lay-plan.ts';
import { gownToLay } from '../../src/lay/plan/lay-to-plan.ts';
import { planLays } from '../../src/lay/plan/plan-lays.ts';
import { elasticDrop } from '../../src/making/bias/elastic-drop.ts';
import { draft } from '../../src/pipeline.ts';
import { english } from '../../src/words/english.ts';
import { workroom } from '../../src/workroom/workroom.ts';

const SLIP = readFileSync(join(import.meta.dirname, '../../templates/bias-slip.yaml'), 'utf8');

function drafted(text: string) {
  const { gown, diagnostics } = draft({ name: 'slip.yaml', text });
  if (gown === undefined) throw new Error(diagnostics.map(({ message }) => message).join('; '));
  return { gown, diagnostics };
}

const { gown } = drafted(SLIP);
const [lay] = planLays(gownToLay(gown), { say: (mm) => tapeText(mm, 'cm') }).lays;

/** Which way a piece hangs on her, from the middle of its waist to the middle of its hem, degrees from down the cloth. */
function hangs({ outline, source }: PlacedPiece): number {
  // The placed outline begins with the waist's cut edge, as the piece is drawn; it is found again by its length.
  const drawn = source.cutEdges;
  let index = 0;
  const runs = drawn.map(({ curves }) => {
    const own = outline.slice(index, index + curves.length);
    index += curves.length;
    return own;
  });
  const middle = (run: readonly Curve[]): Point => {
    const points = flattenedRun(run, 0.01);
    const [a, b] = [points[0]!, points[points.length - 1]!];
    return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  };
  const [waist, hem] = [middle(runs[0]!), middle(runs[2]!)];
  return (Math.atan2(hem.x - waist.x, hem.y - waist.y) * 180) / Math.PI;
}

describe('a layer on the bias', () => {
  it('its own weight draws it w·g·L²/8G longer: 100 g/m², 1 m, 40 N/m: 3.1 mm; 150, 1.1 m, 20: 11.1 mm (derived)', () => {
    expect(elasticDrop(100, 1000, 40)).toBeCloseTo(3.1, 1);
    expect(elasticDrop(150, 1100, 20)).toBeCloseTo(11.1, 1);
  });

  it('lies at 45° to the thread in the lay, every piece, and no other way', () => {
    expect(lay!.pieces).toHaveLength(4);
    for (const piece of lay!.pieces) {
      // Straight gores whose two seams lean alike: the middle of the hem lies plumb below the middle of the waist.
      const way = hangs(piece);
      expect(Math.abs(((way + 360) % 90) - 45), `${piece.gore} ${piece.copy}`).toBeLessThan(0.2);
      expect(piece.turned % 90).toBe(45);
      expect(Math.abs(piece.grain.from.x - piece.grain.to.x)).toBeLessThan(1e-6);
    }
  });

  it('the two of a pair are mirrored about the thread: one leans to its left, the other to its right', () => {
    for (const gore of ['front', 'back']) {
      const pair = lay!.pieces.filter((piece) => piece.gore === gore);
      expect(pair.map(({ mirrored }) => mirrored).sort()).toEqual([false, true]);
      const leans = pair.map((piece) => {
        // Seen with its head up the cloth.
        const way = hangs(piece);
        return Math.sign(Math.abs(way) > 90 ? way - Math.sign(way) * 180 : way);
      });
      expect(leans[0]! * leans[1]!).toBe(-1);
    }
  });

  it('has the outlines that it has on the straight thread, and its arrow at 45°', () => {
    const straight = drafted(SLIP.replace(', grain: bias', '')).gown;
    for (const [i, piece] of gown.cut.pieces.entries()) {
      expect(piece.cutEdges).toEqual(straight.cut.pieces[i]!.cutEdges);
      const { from, to } = piece.piece.grain;
      expect(Math.abs((to.x - from.x) / (to.y - from.y))).toBeCloseTo(1, 9);
    }
  });

  it('is cut whole where it would lie on the fold', () => {
    const onFold = SLIP.replace(
      '{name: front, top: 18, hem: 40}',
      '{name: front, on-fold: true, half-top: 18, half-hem: 40}',
    );
    const piece = drafted(onFold).gown.cut.pieces.find(({ gore }) => gore === 'front')!;
    expect(piece.piece.cut).toBe('single');
    expect(piece.piece.edges.map(({ name }) => name)).toEqual(['waist', 'front/back', 'hem', 'front/back']);
  });

  it('says to hang it, with what its weight draws it and that creep comes on top', () => {
    const { facts } = workroom(gown, []);
    const words = english('cm');
    const hang = words.step(facts.order.find(({ id }) => id === 'hang')!.work);
    // 90 g/m², 93 cm, 20 N/m by the rule for crepe: 4.8 mm, read off a tape.
    expect(hang.notes.join(' ')).toContain('draws it up to 0.5 cm longer at once, and it goes on growing');
    const { diagnostics } = drafted(SLIP.replace('rough-cut: {front: 4, back: 4}', 'rough-cut: {}'));
    expect(diagnostics.filter(({ code }) => code === 'bias-without-rough-cut')).toHaveLength(1);
  });
});
