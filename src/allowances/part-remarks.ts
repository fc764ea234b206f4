import { tapeText } from '../diagnostics/tape-text.ts';
import type { Units } from '../diagnostics/units.ts';
import type { Part, PartKind } from '../draft/part.ts';
import { lengthOfRun } from '../geometry/length.ts';

type Say = (length: number) => string;

/** What the maker does with a flounce, a run of strips or a godet, for the text on the piece. */
export function partRemarks(part: Part, units: Units): string[] {
  const say: Say = (length) => tapeText(length, units);
  switch (part.of.kind) {
    case 'godet':
      return [`let into ${part.of.godet.seam}, its point ${say(part.of.godet.from)} below the waist seam`];
    case 'flounce':
      return [flounceRemark(part, part.of, say)];
    case 'tiers':
      return [tierRemark(part.of, say)];
  }
}

function flounceRemark({ piece }: Part, { flounce }: PartKind & { kind: 'flounce' }, say: Say): string {
  const run = lengthOfRun(piece.edges[0]!.curves) * (piece.copies ?? 1);
  const line = flounce.aboveHem === 0 ? 'of the hem' : `${say(flounce.aboveHem)} above the hem`;
  const edge = `the line ${line} of ${flounce.sewnTo.name}`;
  const ring = `join to a ring of ${say(run)}`;
  return flounce.kind === 'circular'
    ? `${ring} and sew it flat to ${edge}`
    : `${ring}, gather it to ${say(run / flounce.fullness)} and sew it to ${edge}`;
}

function tierRemark({ tiers, run, runs }: PartKind & { kind: 'tiers' }, say: Say): string {
  const cuts = run.tiers.map(say).join(', ');
  const gathered =
    runs === 1
      ? `gather the first to the yoke of ${say(tiers.yoke)}, each other to the one above, by quarters`
      : 'gather each to the one above, by quarters';
  return `join end to end, cut off ${run.tiers.length === 1 ? 'a tier' : 'tiers'} of ${cuts}; ${gathered}`;
}
