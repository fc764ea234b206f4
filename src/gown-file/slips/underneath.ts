import type { Diagnostic, Level } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/underneath-slip-problems.ts';
import type { Page } from '../checks/page.ts';
import { longestLevel } from './length-neighbours.ts';
import { figureAt, meantBeside, meantBy, spanOf } from './written-figure.ts';

/** What is worn underneath: tiers, girths and hoop, against each other and the skirt above. */
export function underneath(page: Page): Diagnostic[] {
  return [
    ...petticoatDepth(page),
    ...tierSteps(page),
    ...hoopAndGirths(page),
    ...girthsBelowHem(page),
    ...girthsFallIn(page),
  ];
}

/** Tiers hang from a yoke under the skirt: together they are most of its length, and no more. */
const OF_LENGTH = { least: 0.5, most: 1.05 };

function petticoatDepth(page: Page): Diagnostic[] {
  const length = longestLevel(page);
  if (length === undefined) return [];
  return (page.sketch.tiers ?? []).flatMap(({ depths, tiers = [] }, i) => {
    // One depth for all, or one for each.
    const isOne = !page.hasList('tiers', i, 'depths');
    const each = isOne ? tiers.map(() => depths?.[0]) : (depths ?? []);
    if (each.length === 0 || each.some((depth) => depth === undefined)) return [];
    const deep = each.reduce<number>((sum, depth) => sum + depth!, 0);
    if (deep >= OF_LENGTH.least * length && deep <= OF_LENGTH.most * length) return [];
    const one = isOne ? figureAt(page, ['tiers', i, 'depths']) : undefined;
    return [
      problems.tiersUnlikeSkirt(page.at('tiers', i, 'depths'), levelOf(deep / length, 0.25, 1.6), {
        deep: page.say(deep),
        skirt: page.say(length),
        meant:
          one &&
          meantBy(one, (0.85 * length) / each.length, (value) => {
            const part = (value * each.length) / length;
            return part >= OF_LENGTH.least && part <= OF_LENGTH.most;
          }),
      }),
    ];
  });
}

/** Each tier is gathered about as full as the one above it. */
const STEPS_ALIKE = 1.9;

function tierSteps(page: Page): Diagnostic[] {
  return (page.sketch.tiers ?? []).flatMap(({ yoke, tiers = [] }, i) => {
    const edges = [yoke, ...tiers];
    if (edges.some((edge) => edge === undefined) || edges.length < 3) return [];
    const steps = tiers.map((tier, j) => tier! / edges[j]!);
    const [least, most] = [Math.min(...steps), Math.max(...steps)];
    if (most / least <= STEPS_ALIKE) return [];
    // A tier too long makes its own step great and the next one small.
    const j = steps.indexOf(most);
    const span = page.at('tiers', i, 'tiers', j);
    return [problems.tierStepsDiffer(span, least.toFixed(1), most.toFixed(1))];
  });
}

const levelOf = (value: number, least: number, most: number): Level =>
  value < least || value > most ? 'warning' : 'note';

/** The lowest hoop is one of the petticoat's girths, or what the last of them runs on to. */
function hoopAndGirths(page: Page): Diagnostic[] {
  const { girths = [], hoop } = page.sketch.petticoat ?? {};
  const last = girths.at(-1)?.girth;
  const figure = figureAt(page, ['petticoat', 'hoop']);
  if (hoop === undefined || last === undefined || figure === undefined) return [];
  const off = Math.max(hoop / last, last / hoop);
  if (off <= HOOP_AGREES) return [];
  return [
    problems.hoopUnlikeGirths(spanOf(figure), off > 1.6 ? 'warning' : 'note', {
      hoop: page.say(hoop),
      girth: page.say(last),
      meant: meantBeside(figure, last, (value) => Math.abs(Math.log(value / last)) < Math.log(HOOP_AGREES)),
    }),
  ];
}

const HOOP_AGREES = 1.25;

/** A petticoat ends at the hem, or a little below it where nothing else is known. */
const BELOW_HEM = { note: 1.2, warning: 1.6 };

function girthsBelowHem(page: Page): Diagnostic[] {
  const girths = page.sketch.petticoat?.girths ?? [];
  const length = longestLevel(page);
  const last = figureAt(page, ['petticoat', 'girths', girths.length - 1, 'down']);
  const above = girths.at(-2)?.down ?? 0;
  if (last === undefined || length === undefined || last.value <= BELOW_HEM.note * length) return [];
  return [
    problems.girthBelowHem(spanOf(last), last.value > BELOW_HEM.warning * length ? 'warning' : 'note', {
      down: page.say(last.value),
      hem: page.say(length),
      meant: meantBeside(last, length, (value) => value > above && value <= BELOW_HEM.note * length),
    }),
  ];
}

/** Below the hip a petticoat may be pegged a little, and no more. */
const FALLS_IN = { note: 0.85, warning: 0.5 };

function girthsFallIn(page: Page): Diagnostic[] {
  const girths = page.sketch.petticoat?.girths ?? [];
  return girths.flatMap(({ girth }, i) => {
    const above = girths[i - 1]?.girth;
    const figure = figureAt(page, ['petticoat', 'girths', i, 'girth']);
    if (girth === undefined || above === undefined || figure === undefined) return [];
    if (girth >= FALLS_IN.note * above) return [];
    return [
      problems.girthFallsIn(spanOf(figure), girth < FALLS_IN.warning * above ? 'warning' : 'note', {
        girth: page.say(girth),
        above: page.say(above),
        meant: meantBy(figure, 1.3 * above, (value) => value >= above && value <= 2.5 * above),
      }),
    ];
  });
}
