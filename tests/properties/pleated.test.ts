import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
import { draftedPattern } from '../outside/drafted.ts';
import { folded, pleatLinesOf, pointsOf, uprightOf } from '../outside/measure/folding.ts';
import { readPattern } from '../outside/measure/pattern.ts';
import { distance, minus } from '../outside/measure/segment.ts';
import type { Tree } from '../outside/plain-gown.ts';
import { goreNames, gowns, specText, stationNames } from './gowns.ts';

/** `PLEATED=200 SEED=7` for more. */
const numRuns = Number(process.env.PLEATED ?? 6);
const seed = Number(process.env.SEED ?? 11);

const asked = fc.record({
  gown: gowns,
  kind: fc.constantFrom('knife', 'box', 'inverted'),
  place: fc.nat(8),
  share: fc.constantFrom(0.2, 0.4, 0.5),
  towards: fc.constantFrom('front', 'back'),
});

describe(`random pleats in random gowns (seed ${seed})`, () => {
  it('folded, every pleated gore is the gore without them', {
    timeout: 60_000 + numRuns * 1000,
  }, async () => {
    let pleated = 0;
    await fc.assert(
      fc.asyncProperty(asked, async ({ gown, kind, place, share, towards }) => {
        const names = goreNames(gown.gores.length);
        const gore = place % names.length;
        const top = gown.gores[gore]!.top;
        const spec = parse(specText(gown)) as Tree;
        // A shaped facing of a hem that is folded is refused.
        const { facing: _facing, ...layer } = (spec.layers as Tree[])[0]!;
        const pleat = {
          name: 'deep',
          kind,
          at: stationNames(names.length)[gore + 1],
          gore: names[gore],
          'from-seam': Number((top * share).toFixed(3)),
          'fold-depth': Number((top * 0.15).toFixed(3)),
          layers: ['pleated'],
          ...(kind === 'knife' ? { towards } : {}),
        };
        const layers = [
          { ...layer, name: 'plain' },
          { ...layer, name: 'pleated' },
        ];
        const { svg, diagnostics } = await draftedPattern(stringify({ ...spec, layers, pleats: [pleat] }));
        const codes = diagnostics.filter(({ level }) => level === 'error').map(({ code }) => code);
        // A gore that narrows downwards may have no room below.
        expect(codes.filter((code) => code !== 'pleat-too-wide')).toEqual([]);
        if (codes.length > 0) return;
        pleated++;
        const own = readPattern(svg).pieces.filter((piece) => piece.gore === names[gore]);
        const [plain, full] = ['plain', 'pleated'].map(
          (name) => own.find(({ layers: all }) => all.includes(name))!,
        );
        const [turn, turnPlain] = [uprightOf(full!), uprightOf(plain!)];
        const lines = pleatLinesOf(svg, names[gore]!, 'pleated', turn);
        const shift = minus(turnPlain(plain!.sew.get('waist')!.from), turn(full!.sew.get('waist')!.from));
        for (const line of ['cut', 'sew'] as const) {
          const truth = pointsOf(plain!, line, 1).map(turnPlain);
          for (const { x, y } of folded(lines, pointsOf(full!, line, 40).map(turn))) {
            const here = { x: x + shift.x, y: y + shift.y };
            expect(Math.min(...truth.map((other) => distance(here, other)))).toBeLessThan(0.6);
          }
        }
      }),
      { numRuns, seed, endOnFailure: true },
    );
    expect(pleated).toBeGreaterThan(numRuns / 3);
  });
});
