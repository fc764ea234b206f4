import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/workroom-section-problems.ts';
import type { Page } from './page.ts';

/** Closure, bustle, fittings and paper, as far as the spec alone can tell. */
export function checkWorkroom(page: Page): Diagnostic[] {
  return [...checkClosure(page), ...checkBustle(page), ...checkFittings(page), ...checkPaper(page)];
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

/** A point is at a seam, or on a gore so far across. */
function checkBustle(page: Page): Diagnostic[] {
  return (page.sketch.bustle?.points ?? []).flatMap((_, i) => {
    const [seam, gore, across] = (['seam', 'gore', 'across'] as const).map((key) =>
      page.has('bustle', 'points', i, key),
    );
    if (seam && (gore || across))
      return [problems.bustlePointTwice(page.keyAt('bustle', 'points', i, gore ? 'gore' : 'across'))];
    return seam || (gore && across) ? [] : [problems.bustlePointNowhere(page.at('bustle', 'points', i))];
  });
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
    faults.push(...checkPinnedBodice(page, fitting, i));
  }
  return faults;
}

/** What was pinned in the bodice is told of panels that are drafted, in all of their layers. */
function checkPinnedBodice(
  page: Page,
  { bodice }: NonNullable<Page['sketch']['fittings']>[number],
  i: number,
): Diagnostic[] {
  if (bodice === undefined) return [];
  const span = page.keyAt('fittings', i, 'bodice');
  if (!page.hasSection('bodice', 'draft')) return [problems.bodiceNotDrafted(span)];
  const faults = page.has('fittings', i, 'layer')
    ? [problems.bodiceOfOneLayer(page.at('fittings', i, 'layer'))]
    : [];
  for (const [j, { from, to }] of (bodice.seams ?? []).entries())
    if (from !== undefined && to !== undefined && to <= from)
      faults.push(
        problems.bodiceFittingUpsideDown(
          page.at('fittings', i, 'bodice', 'seams', j, 'to'),
          page.say(from),
          page.say(to),
        ),
      );
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
