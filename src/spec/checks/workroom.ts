import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/gown-problems.ts';
import { WAIST_AGREES } from '../../geometry/tolerances.ts';
import type { Page } from './page.ts';

/** Petticoat, closure, fittings and paper, as far as the spec alone can tell. */
export function checkWorkroom(page: Page): Diagnostic[] {
  return [
    ...checkGirths(page),

    ...checkClosure(page),
    ...checkFittings(page),
    ...checkPaper(page),
  ];
}

function checkGirths(page: Page): Diagnostic[] {
  const girths = page.sketch.petticoat?.girths;
  if (girths === undefined || !page.hasList('petticoat', 'girths')) return [];
  if (girths.length < 2) return [problems.oneGirth(page.keyAt('petticoat', 'girths'))];
  const faults: Diagnostic[] = [];
  for (const [i, level] of girths.entries()) {
    const above = girths[i - 1]?.down;
    if (above !== undefined && level.down !== undefined && level.down <= above)
      faults.push(
        problems.girthsOutOfOrder(
          page.at('petticoat', 'girths', i, 'down'),
          page.say(level.down),
          page.say(above),
        ),
      );
  }
  const first = girths[0];
  const waist = page.sketch.bodice?.waistSeam;
  if (first?.down !== undefined && first.down > 0)
    faults.push(problems.noGirthAtWaist(page.at('petticoat', 'girths', 0, 'down')));
  else if (
    first?.girth !== undefined &&
    waist !== undefined &&
    first.girth < waist - WAIST_AGREES &&
    !dropped(page)
  )
    faults.push(
      problems.girthUnderWaist(
        page.at('petticoat', 'girths', 0, 'girth'),
        page.say(first.girth),
        page.say(waist),
      ),
    );
  return faults;
}

/** Under a drop the level waist is another length than the sewn edge, and nothing follows from comparing them. */
function dropped(page: Page): boolean {
  return Object.values(page.sketch.bodice?.dropBelowWaist ?? {}).some(
    (drop) => drop !== undefined && drop > 0,
  );
}

function checkClosure(page: Page): Diagnostic[] {
  const closure = page.sketch.closure;
  if (
    closure?.side !== undefined &&
    page.has('closure', 'side') &&
    closure.at !== undefined &&
    /^centre-/.test(closure.at)
  )
    return [problems.sideOfCentre(page.at('closure', 'side'), closure.at)];
  return [];
}

function checkFittings(page: Page): Diagnostic[] {
  const faults: Diagnostic[] = [];
  const fittings = page.sketch.fittings ?? [];
  for (const [i, fitting] of fittings.entries()) {
    const before = fittings[i - 1]?.date;
    if (before !== undefined && fitting.date !== undefined && fitting.date < before)
      faults.push(problems.fittingsOutOfOrder(page.at('fittings', i, 'date'), fitting.date, before));
    for (const [j, seam] of (fitting.seams ?? []).entries())
      if (seam.from !== undefined && seam.to !== undefined && seam.to <= seam.from)
        faults.push(
          problems.fittingUpsideDown(
            page.at('fittings', i, 'seams', j, 'to'),
            page.say(seam.from),
            page.say(seam.to),
          ),
        );
  }
  return faults;
}

/** What the 100 mm square measures where a full page was fitted to the other paper: A4 on Letter, Letter on A4. */
const FITTED = [94.07, 97.27];

function checkPaper(page: Page): Diagnostic[] {
  const measured = page.sketch.paper?.measured;
  return (['across', 'down'] as const).flatMap((way) => {
    const value = measured?.[way];
    if (value === undefined) return [];
    const fitted = FITTED.some((size) => Math.abs(value - size) <= RULER_AGREES);
    if (value >= 97 && value <= 103 && !fitted) return [];
    return [
      problems.printerOffScale(
        page.at('paper', 'measured', way),
        way,
        String(Number(value.toFixed(2))),
        fitted,
      ),
    ];
  });
}

/** What a ruler on the test square may miss by. Larger would accuse a true printer; smaller nobody reads off. */
const RULER_AGREES = 0.15;
