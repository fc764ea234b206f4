import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/shaping-problems.ts';
import type { Page } from './page.ts';

/** Gores that follow her girths need a level that is measured below the waist, and a sweep to run on to. */
export function checkFittedTo(page: Page): Diagnostic[] {
  const { fittedTo, body, lengths } = page.sketch;
  if (!page.has('fitted-to')) return [];
  const span = page.keyAt('fitted-to');
  const faults: Diagnostic[] = [];
  const girths = page.sketch.petticoat?.girths?.length ?? 0;
  if (girths > 0) faults.push(problems.fittedOverPetticoat(span));
  if (!page.has('sweep')) faults.push(problems.fittedWithoutSweep(span));
  const level = fittedTo?.level;
  if (level === undefined) return faults;
  if (!page.hasSection('body')) return [...faults, problems.fittedWithoutBody(span)];
  const levels = (body?.girths ?? []).filter(({ at }) => at !== undefined);
  // A girth that could not be read has been spoken of.
  if (levels.length < (body?.girths ?? []).length) return faults;
  const own = levels.find(({ at }) => at === level);
  if (own?.below === undefined || !(own.below > 0)) {
    const below = levels.filter((other) => (other.below ?? 0) > 0).map(({ at }) => at!);
    return [...faults, problems.fittedToNoLevel(span, level, below)];
  }
  const at = lengths?.hemWidthAt;
  if (at !== undefined && at <= own.below)
    faults.push(
      problems.fittedBelowSweep(page.at('lengths', 'hem-width-at'), level, page.say(own.below), page.say(at)),
    );
  return faults;
}
