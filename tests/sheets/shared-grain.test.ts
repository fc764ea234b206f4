import fc from 'fast-check';
import { expect, test } from 'vitest';
import { draft } from '../../src/pipeline.ts';
import { layOutSheets } from '../../src/sheets/lay-out-sheets.ts';
import { paperNamed } from '../../src/sheets/paper.ts';
import { evenly } from '../evenly.ts';
import { sampled } from '../fittings/sampled.ts';
import { isInside } from '../outside/measure/polygons.ts';
import { plainGown } from '../outside/plain-gown.ts';

const OPTIONS = {
  margins: { left: 10, right: 10, top: 10, bottom: 10 },
  lap: 0,
  scale: { across: 1, down: 1 },
};

const gowns = fc.record({
  units: fc.constantFrom('mm' as const, 'cm' as const, 'in' as const),
  symmetry: fc.constantFrom('mirrored', 'none'),
  length: evenly(300, 1100),
  shorter: fc.tuple(evenly(0, 60), evenly(20, 250)),
  flare: evenly(4, 24),
  paper: fc.constantFrom('a4', 'letter', 'roll:914'),
  endsOnly: fc.boolean(),
});

test('a grain line that several layers share lies inside what is cut of each of them', () => {
  fc.assert(
    fc.property(gowns, (own) => {
      const by = (mm: number): number => Math.round(mm) / { mm: 1, cm: 10, in: 25.4 }[own.units];
      const closed = own.symmetry === 'none';
      const text = plainGown({
        units: own.units,
        symmetry: own.symmetry,
        bodice: { 'waist-seam': by(closed ? 360 : 720) },
        gores: ['a', 'b', 'c'].map((name, i) => ({ name, top: by(120), flare: `${own.flare + i}deg` })),
        lengths: {
          at: Object.fromEntries(
            (closed ? ['c/a', 'b/c'] : ['centre-front', 'centre-back']).map((name, i) => [
              name,
              by(own.length + 80 * i),
            ]),
          ),
        },
        layers: [
          { name: 'shell', cloth: 'calico', hem: 'faced' },
          { name: 'lining', cloth: 'calico', hem: 'turned', shorter: by(own.shorter[0]) },
          { name: 'net', cloth: 'calico', hem: 'raw', shorter: by(own.shorter[1]) },
        ],
      });
      const { gown } = draft({ name: 'grain.yaml', text });
      const plan = layOutSheets(gown!.cut.pieces, {
        ...OPTIONS,
        paper: paperNamed(own.paper)!,
        ...(own.endsOnly ? { endsOnly: true } : {}),
      });
      for (const { cutPiece, grain } of plan.pieces) {
        const around = cutPiece.cutEdges.flatMap(({ curves }) => sampled(curves, 20).slice(0, -1));
        for (const point of sampled([grain], 50))
          expect(isInside(point, around), `${cutPiece.gore} (${cutPiece.layers.join()})\n${text}`).toBe(true);
        expect(Math.hypot(grain.to.x - grain.from.x, grain.to.y - grain.from.y)).toBeGreaterThan(40);
      }
    }),
    { seed: 1, numRuns: 12, endOnFailure: true },
  );
}, 240_000);
