import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/slip-problems.ts';
import type { Page } from '../checks/page.ts';
import { flaresOf } from './gore-widths.ts';
import { levelLengths, namedLengths } from './length-neighbours.ts';

/**
 * What would take the tool minutes to draw, and nobody a day to sew. Cloth of one layer, mm² of half or all of the gown
 * as it is drafted: a full circle of floor length in ten layers comes to 20 m². A pattern of 250 m² is 5000 sheets.
 */
const MOST_PAPER = 250e6;
/** A hem all round, mm: the longest train of a court gown runs round in 15 m. */
const MOST_HEM = 40_000;

/** Before anything is drafted: how much cloth and paper the gores would come to. */
export function tooLargeToDraft(page: Page): Diagnostic[] {
  const flares = flaresOf(page);
  const lengths = namedLengths(page, 'at').map(({ down }) => down);
  if (flares === undefined || lengths.length === 0) return [];
  const longest = Math.max(...lengths) + (page.sketch.train?.onFloor ?? 0);
  const level = Math.max(0, ...levelLengths(page).map(({ down }) => down));
  const round = flares.reduce((sum, { angle }) => sum + Math.max(0, angle), 0);
  const top = flares.reduce((sum, { top: width }) => sum + width, 0);
  const layers = Math.max(1, page.sketch.layers?.length ?? 1);
  const paper = layers * longest * (top + (round * longest) / 2);
  const hem = (page.mirrored ? 2 : 1) * (top + round * level);
  if (paper <= MOST_PAPER && hem <= MOST_HEM) return [];
  return [
    problems.tooLargeToDraft(page.keyAt('lengths', 'at'), {
      hem: page.say(Math.round(hem)),
      longest: page.say(Math.round(longest)),
      sheets: String(Math.round(paper / SHEET / 100) * 100),
    }),
  ];
}

/** What one A4 sheet shows, mm². */
const SHEET = 190 * 277;
