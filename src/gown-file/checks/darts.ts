import * as problems from '../../diagnostics/dart-problems.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Page } from './page.ts';

/** How deep hips commonly lie at most, mm, where hers is not measured (common practice: 18 to 22 cm). */
const DEEPEST_HIP = 220;

/** Less of the sewn top than this beside a dart, or between two, mm, cannot be sewn to anything. */
const LEAST_BESIDE = 5;

/** Darts by what they lie on and by how deep her hip is. */
export function checkDarts(page: Page): Diagnostic[] {
  const { darts = [], gores = [], layers = [], body, waist } = page.sketch;
  const hip = body?.girths?.find(({ at }) => at === 'hip')?.below;
  return darts.flatMap(({ name = 'dart', gore, at = 0.5, takesIn, length }, i) => {
    const own = gores.find((one) => one.name === gore);
    const full = own?.fullness !== undefined ? gore : layers.find((layer) => layer.fullness)?.name;
    const deepest = hip ?? DEEPEST_HIP;
    const top = own?.onFold === true ? own.halfTop : own?.top;
    const beside = top === undefined ? undefined : Math.min(at, 1 - at) * top;
    return [
      ...(waist?.finish === 'facing' ? [problems.dartWithWaistFacing(page.at('darts', i), name)] : []),
      ...(full === undefined ? [] : [problems.dartOnFullness(page.at('darts', i, 'gore'), name, full)]),
      ...(length !== undefined && length > deepest
        ? [
            problems.dartPastHip(
              page.at('darts', i, 'length'),
              name,
              page.say(length),
              page.say(deepest),
              hip !== undefined,
            ),
          ]
        : []),
      ...tooNear(page, i, top),
      ...(beside !== undefined && takesIn !== undefined && beside < Math.max(LEAST_BESIDE, takesIn / 2)
        ? [problems.dartTooWide(page.at('darts', i, 'takes-in'), name, gore ?? '', page.say(beside))]
        : []),
    ];
  });
}

/** Of a top that the bodice gives it is not known yet: there two darts may only not lie at one place. */
function tooNear(page: Page, i: number, top: number | undefined): Diagnostic[] {
  const { darts = [] } = page.sketch;
  const { name = 'dart', gore, at = 0.5 } = darts[i]!;
  const between = (other: (typeof darts)[number]): number => Math.abs((other.at ?? 0.5) - at);
  const near = darts
    .slice(0, i)
    .filter((other) => other.gore === gore)
    .find((other) => (top === undefined ? between(other) === 0 : between(other) * top < LEAST_BESIDE));
  if (near === undefined) return [];
  const room = page.say(between(near) * (top ?? 0));
  return [problems.dartsTooNear(page.at('darts', i), name, near.name ?? 'dart', gore ?? '', room)];
}
