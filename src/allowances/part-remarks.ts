import { tapeText } from '../diagnostics/tape-text.ts';
import type { Units } from '../diagnostics/units.ts';
import type { BiasStrip, Part, PartKind } from '../draft/part.ts';
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
    case 'panel':
      return [];
    case 'modesty-panel':
      return ['behind the lacing, sewn to one edge only'];
    case 'strap':
      return [
        `fold it lengthwise, sew and turn it: ${say(part.of.strap.width)} wide`,
        `from ${part.of.strap.from} to ${part.of.strap.to}`,
      ];
    case 'cape':
      return [capeRemark(part.of, say)];
    case 'hem-facing':
      return [`faces the hem of ${part.of.faces}, ${say(part.of.depth)} deep`, FACING_SMALLER];
    case 'waist-facing':
      return [`faces the waist, ${say(part.of.depth)} deep`, 'cut smaller at the waist: lay raw edges level'];
    case 'yoke':
      return [
        `of ${part.of.of}: joined to a ring of ${say(part.of.round)}, its lower edge takes the first tier`,
      ];
    case 'edge-facing':
      return [`faces the ${part.of.edge}, ${say(part.of.depth)} deep`];
    case 'waistband':
      return bandRemarks(part.of, say);
    case 'ties':
      return [`fold it lengthwise, sew and turn it: ${say(part.of.length)} long, ${say(part.of.width)} wide`];
    case 'placket':
      return [
        `one strip down one edge of the opening and up the other, ${say(part.of.opening)} each`,
        `folded over it: ${say(part.of.width)} wide`,
      ];
    case 'guard':
      return [`folded lengthwise, ${say(part.of.width)} wide; behind the zip, sewn to one edge only`];
    case 'opening-facing':
      return [`along both edges of the opening at ${part.of.at}`];
    case 'slit-facing':
      return [`along both edges of the slit at ${part.of.seam}, its lower end cut to the levelled hem`];
    case 'slit-stay':
      return [`over the upper end of the slit at ${part.of.seam}`];
    case 'pocket':
      return [`let into ${part.of.seam}: open ${say(part.of.opening)} between its notches`];
    case 'loops':
      return [
        `one strip, sewn and turned ${say(part.of.width)} wide, then cut into ${part.of.count} of ${say(part.of.length)}`,
      ];
    case 'binding':
      return [bindingRemark(part.of.strip, part.of.edge, say)];
    case 'upper-facing':
      return [`faces the upper edge, ${say(part.of.depth)} deep`, UPPER_FACING_SMALLER];
  }
}

function bindingRemark({ width, length, joins }: BiasStrip, edge: string, say: Say): string {
  const strip = `${say(length)} of bias ${say(width)} wide for the ${edge}`;
  return `cut at 45° to the thread, as one spiral or in strips: ${strip}, ${joins} ${joins === 1 ? 'join' : 'joins'}`;
}

function bandRemarks(
  { width, sewn, overlap, shaped, places }: PartKind & { kind: 'waistband' },
  say: Say,
): string[] {
  const sum = overlap > 0 ? `${say(sewn)} and ${say(overlap)} to overlap` : say(sewn);
  return [
    shaped ? `${sum}; outside and inside` : `${sum} long; fold it lengthwise: ${say(width)} wide`,
    `from its end: ${places.map(({ name, at }) => `${name} ${say(at)}`).join(', ')}`,
  ];
}

/** Raw edges are laid level: what the facing is smaller by rolls the seam inside. */
const FACING_SMALLER = 'cut smaller at the hem: lay raw edges level';

const UPPER_FACING_SMALLER = 'cut smaller at the upper edge: lay raw edges level';

function flounceRemark({ piece }: Part, { flounce, open }: PartKind & { kind: 'flounce' }, say: Say): string {
  const run = lengthOfRun(piece.edges[0]!.curves) * (piece.copies ?? 1);
  const line = flounce.aboveHem === 0 ? 'of the hem' : `${say(flounce.aboveHem)} above the hem`;
  const edge = `the line ${line} of ${flounce.sewnTo.name}`;
  const ring = open ? `join to a length of ${say(run)}` : `join to a ring of ${say(run)}`;
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

function capeRemark({ cape, inner }: PartKind & { kind: 'cape' }, say: Say): string {
  const where =
    cape.from === undefined
      ? 'sew it to its edge'
      : `sew it to the upper edge from ${cape.from} to ${cape.to}`;
  const free = cape.overArm === 0 ? '' : `, ${say(cape.overArm)} of it free over the arm`;
  return cape.fullness === undefined ? `${where}${free}` : `gather it to ${say(inner)}, ${where}${free}`;
}
