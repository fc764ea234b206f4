import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
import { draftedPattern, mustDraft } from '../outside/drafted.ts';
import { angleOf, dartsOf, nearest } from '../outside/measure/dart-legs.ts';
import { readPattern } from '../outside/measure/pattern.ts';
import { distance, minus } from '../outside/measure/segment.ts';
import type { Tree } from '../outside/plain-gown.ts';
import { goreNames, gowns, specText } from './gowns.ts';

/** `CONSTRUCTED=200 SEED=7` for more. */
const numRuns = Number(process.env.CONSTRUCTED ?? 4);
const seed = Number(process.env.SEED ?? 11);
const patience = { timeout: 60_000 + numRuns * 1000 };
const asked = fc.record({ gown: gowns, place: fc.nat(8), share: fc.constantFrom(0.4, 0.5, 0.6) });

describe(`random gowns with what is sewn away (seed ${seed})`, () => {
  it('a dart: legs alike, the waist smooth when it is closed, as long as the top', patience, () =>
    fc.assert(
      fc.asyncProperty(asked, async ({ gown, place, share }) => {
        const names = goreNames(gown.gores.length);
        const index = place % names.length;
        const { top } = gown.gores[index]!;
        const spec = parse(specText(gown)) as Tree;
        const [layer] = spec.layers as Tree[];
        const dart = {
          gore: names[index],
          at: `${share * 100}%`,
          'takes-in': Number((top * 0.12).toFixed(2)),
          length: 90,
        };
        const yaml = stringify({ ...spec, layers: [layer], darts: [dart] });
        const { legs, waist } = await dartsOf(names[index]!, yaml);
        const [left, right] = [legs[0]!, legs[1]!];
        expect(Math.abs(distance(left.top, left.point) - distance(right.top, right.point))).toBeLessThan(
          0.001,
        );
        const [a, b] = [nearest(waist, left.top), nearest(waist, right.top)];
        const turn = angleOf(minus(right.top, right.point)) - angleOf(minus(left.top, left.point));
        const bend = angleOf(waist[b + 2]!.direction) - turn - angleOf(waist[a - 2]!.direction);
        expect(Math.abs((bend * 180) / Math.PI)).toBeLessThan(0.3);
        const sewn = waist[a]!.distance + waist.at(-1)!.distance - waist[b]!.distance;
        expect(Math.abs(sewn - top)).toBeLessThan(0.25);
      }),
      { numRuns, seed, endOnFailure: true },
    ),
  );

  it(
    'on the bias, and with growth tucks: the outlines are those of the straight thread, and of a longer skirt',
    patience,
    () =>
      fc.assert(
        fc.asyncProperty(asked, async ({ gown }) => {
          const spec = parse(specText(gown)) as Tree;
          const [layer] = spec.layers as Tree[];
          const shorter = Number(layer!.shorter ?? 0);
          const tucks = { count: 2, width: 12, 'above-hem': 60 };
          const yaml = stringify({
            ...spec,
            gores: (spec.gores as Tree[]).map(wholeOf),
            layers: [
              { ...layer, name: 'bias', grain: 'bias', 'growth-tucks': tucks },
              { ...layer, name: 'longer', shorter: shorter - 48 },
            ],
          });
          const { svg } = mustDraft(await draftedPattern(yaml), yaml);
          const { pieces } = readPattern(svg);
          const of = (name: string) => pieces.filter(({ layers }) => layers.includes(name));
          expect(of('bias').length).toBe(of('longer').length);
          for (const [i, piece] of of('bias').entries())
            for (const [edge, path] of piece.sew)
              expect(Math.abs(path.length - of('longer')[i]!.sew.get(edge)!.length)).toBeLessThan(0.02);
        }),
        { numRuns, seed, endOnFailure: true },
      ),
  );
});

/** Every gore off the fold, where it has one edge of each name. */
function wholeOf({
  'on-fold': onFold,
  'half-top': top,
  'half-hem': hem,
  'half-flare': flare,
  ...gore
}: Tree): Tree {
  if (onFold !== true) return gore;
  return {
    ...gore,
    ...(top === undefined ? {} : { top }),
    ...(hem === undefined ? {} : { hem }),
    ...(flare === undefined ? {} : { flare }),
  };
}
