import { inWords } from '../diagnostics/in-words.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { Units } from '../diagnostics/units.ts';
import type { LayPlan } from '../lay/plan/lay-plan.ts';

/** What must be known at the table before the first cut, in whole sentences. */
export function layRemarks(plan: LayPlan, units: Units): string[] {
  const say = (mm: number) => tapeText(mm, units);
  const { facts, sections, joins, railroaded, layers } = plan;
  const folds = new Set(sections.map(({ fold }) => fold));
  const remarks = [...savingRemark(plan, say)];
  if (plan.cutShort) remarks.unshift('CUT SHORT: plan it again before you buy.');
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
    remarks.push(`Cut the cloth straight across at ${inWords(cuts)} before folding.`);
  }
  if (railroaded.length > 0) {
    const whose = railroaded.length === layers.length ? 'the pieces' : `the ${inWords(railroaded)}`;
    remarks.push(`The grain of ${whose} runs across this cloth.`);
  }
  for (const { gore, layer, parts } of joins) {
    const whose = layers.length === 1 ? gore : `${gore} of the ${layer}`;
    remarks.push(
      `${whose} is cut in ${parts} parts: join them along the grain, marks on marks, before anything else.`,
    );
  }
  if (facts.repeatDown !== undefined || facts.repeatAcross !== undefined) {
    remarks.push('Every piece begins on a whole repeat; look where the motifs lie before cutting.');
  }
  return remarks;
}

/** What a length of its own for each layer would take, and what is saved by cutting them from one. */
function savingRemark({ apart, buy }: LayPlan, say: (mm: number) => string): string[] {
  if (apart === undefined) return [];
  const each = apart.layers.map(({ layer, length }) => `${layer} ${say(length)}`);
  const saved = apart.buy - buy;
  const less = saved > 0.05 ? `this lay buys ${say(saved)} less` : 'this lay buys as much';
  return [`Laid apart: ${inWords(each)}, ${say(apart.buy)} to buy; ${less}.`];
}
