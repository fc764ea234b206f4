import type { GownDraft } from '../../draft/draft-gown.ts';
import { isSame } from '../../gown/station.ts';
import type { Skirt } from '../skirt.ts';
import { type BustlePoint, bustlePoint, LEAST_LIFT, USUAL_ANCHOR } from './bustle.ts';
import type { BustleFacts } from './bustle-facts.ts';
import { linesDown, trainSeams } from './train-lines.ts';

/** Shares of a gore's width that a point more may be offered at. */
const SHARES = [0.25, 0.5, 0.75];

/** An anchor is offered in steps of this, mm. */
const ANCHOR_STEP = 5;

/**
 * Every place that the bustle could have a point more: seams of the train without one, and lines down its gores; as far
 * below the waist as its other points hook on.
 */
export function bustleOffered(
  draft: GownDraft,
  skirt: Skirt,
  { points, clearance, loop, advised }: BustleFacts,
): BustlePoint[] {
  const sum = points.reduce((all, { anchor }) => all + anchor, 0);
  const anchor =
    advised || points.length === 0
      ? USUAL_ANCHOR
      : ANCHOR_STEP * Math.round(sum / points.length / ANCHOR_STEP);
  const has = (name: string): boolean => points.some(({ seam }) => seam === name);
  const gores = [...new Set(draft.gown.gores.map(({ name }) => name))];
  const lines = [
    ...trainSeams(skirt).filter(
      (seam, i, all) => !has(seam.name) && all.findIndex((one) => isSame(one, seam)) === i,
    ),
    ...gores.flatMap((gore) => SHARES.flatMap((across) => linesDown(draft, skirt, { gore, across }))),
  ];
  return lines
    .map((line) => bustlePoint(line, anchor, clearance, loop))
    .filter(({ lift }) => lift >= LEAST_LIFT);
}
