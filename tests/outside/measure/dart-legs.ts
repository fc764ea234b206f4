import { draftedPattern, mustDraft } from '../drafted.ts';
import { uprightOf } from './folding.ts';
import { readPaths, type Sample, samplesOf } from './path.ts';
import { readPattern } from './pattern.ts';
import { distance, type Point } from './segment.ts';

/** Its waist beside its first and its last dart, and the legs of each, with the waist at the top. */
export async function dartsOf(gore: string, yaml: string) {
  const { svg, report } = mustDraft(await draftedPattern(yaml), yaml);
  const piece = readPattern(svg).pieces.find((one) => one.gore === gore)!;
  const turn = uprightOf(piece);
  const group = svg.split('<g class="piece"').find((text) => text.includes(`data-gore="${gore}"`))!;
  const legs = [...group.matchAll(/data-mark="dart-leg-line" d="([^"]*)"/g)]
    .map(([, d]) => readPaths(d!)[0]!)
    .map(({ from, to }) => ({ top: turn(from), point: turn(to) }))
    .sort((a, b) => a.top.x - b.top.x);
  // Directions turn with their points.
  const samples = (of: Parameters<typeof samplesOf>[0]): Sample[] =>
    samplesOf(of, 0.1).map((own) => ({ ...own, point: turn(own.point), direction: turn(own.direction) }));
  return { report, legs, waist: samples(piece.sew.get('waist')!), cut: samples(piece.cut) };
}

export const nearest = (samples: readonly Sample[], point: Point): number =>
  samples.reduce(
    (best, { point: own }, i) => (distance(own, point) < distance(samples[best]!.point, point) ? i : best),
    0,
  );

export const angleOf = ({ x, y }: Point): number => Math.atan2(y, x);
