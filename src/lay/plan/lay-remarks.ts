import type { LayPlan } from './lay-plan.ts';

/** What must be known at the table before the first cut, in whole sentences. */
export function layRemarks(plan: Omit<LayPlan, 'remarks'>, say: (mm: number) => string): string[] {
  const { facts, sections, joins, railroaded } = plan;
  const folds = new Set(sections.map(({ fold }) => fold));
  const remarks: string[] = [];
  if (plan.cutShort) remarks.push('CUT SHORT: plan it again before you buy.');
  if (facts.edgingDepth > 0) {
    remarks.push(`First cut ${say(facts.edgingDepth)} of edging off each side inside the selvedge.`);
  }
  if (facts.oneWay) remarks.push('One-way cloth: all tops lie towards the arrow.');
  if (folds.has('lengthwise')) remarks.push('Fold lengthwise: right sides together, selvedges together.');
  if (folds.has('crosswise')) {
    remarks.push(
      facts.oneWay
        ? 'Crosswise on one-way cloth: cut along the fold and turn the upper layer round in its own plane, right sides together; folded only, half of the pieces would run the other way.'
        : 'Fold crosswise: right sides together, ends together.',
    );
  }
  if (sections.length > 1) {
    const cuts = sections.slice(1).map(({ from }) => say(from));
    remarks.push(`Cut the cloth straight across at ${cuts.join(' and ')} before folding.`);
  }
  if (railroaded) remarks.push('The grain of the pieces runs across this cloth.');
  for (const { gore, parts } of joins) {
    remarks.push(
      `${gore} is cut in ${parts} parts: join them along the grain, marks on marks, before anything else.`,
    );
  }
  if (facts.repeatDown !== undefined || facts.repeatAcross !== undefined) {
    remarks.push('Every piece begins on a whole repeat; look where the motifs lie before cutting.');
  }
  return remarks;
}
