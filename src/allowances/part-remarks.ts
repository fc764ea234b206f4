import type { Part } from '../draft/part.ts';
import { tierRuns } from '../draft/tiers.ts';
import { lengthOfRun } from '../geometry/length.ts';
import type { Spec } from '../gown-file/spec.ts';
import { tapeText } from '../gown-file/tape-text.ts';

/** What the maker does with a flounce, a run of strips or a godet, for the text on the piece. */
export function partRemarks(spec: Spec, part: Part): string[] {
  const { gore: name } = part.piece;
  const say = (length: number): string => tapeText(length, spec.units);
  const godet = spec.godets?.find((own) => own.name === name);
  if (godet !== undefined)
    return [`let into ${godet.seam}, its point ${say(godet.from)} below the waist seam`];
  const flounce = spec.flounces?.find((own) => own.name === name);
  if (flounce !== undefined) {
    const run = lengthOfRun(part.piece.edges[0]!.curves) * (part.piece.copies ?? 1);
    const edge = `the line ${flounce.aboveHem === 0 ? 'of the hem' : `${say(flounce.aboveHem)} above the hem`} of ${flounce.layer}`;
    const ring = `join to a ring of ${say(run)}`;
    return flounce.kind === 'circular'
      ? [`${ring} and sew it flat to ${edge}`]
      : [`${ring}, gather it to ${say(run / flounce.fullness)} and sew it to ${edge}`];
  }
  return tierRemarks(spec, name, say);
}

function tierRemarks(spec: Spec, name: string, say: (length: number) => string): string[] {
  return (spec.tiers ?? []).flatMap((tiers) => {
    const runs = tierRuns(spec, tiers);
    return runs
      .filter((run) => run.name === name)
      .map((run) => {
        const cuts = run.tiers.map(say).join(', ');
        const gathered =
          runs.length === 1
            ? `gather the first to the yoke of ${say(tiers.yoke)}, each other to the one above, by quarters`
            : 'gather each to the one above, by quarters';
        return `join end to end, cut off ${run.tiers.length === 1 ? 'a tier' : 'tiers'} of ${cuts}; ${gathered}`;
      });
  });
}
