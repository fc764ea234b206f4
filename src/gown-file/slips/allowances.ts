import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/slip-problems.ts';
import type { Page } from '../checks/page.ts';
import { childOf, isScalar, type Written } from '../written.ts';
import { judged } from './unusual-figures.ts';
import type { Usual } from './usual.ts';
import { USUAL } from './usual-figures.ts';
import { type Figure, figureAt, figureOf, spanOf } from './written-figure.ts';

type Finish = 'turned' | 'faced' | 'bagged' | 'rolled' | 'raw';

const HEMS: Readonly<Partial<Record<Finish, Usual>>> = {
  turned: USUAL.turnedHem,
  faced: USUAL.enclosedHem,
  bagged: USUAL.enclosedHem,
  rolled: USUAL.rolledHem,
};

/** Allowances: a hem's by its finish, and a seam that is named has more than the others, not less. */
export function unusualAllowances(page: Page): Diagnostic[] {
  const { layers = [], flounces = [], tiers = [], overskirts = [] } = page.sketch;
  const ownHem = (layer: { readonly allowances?: { readonly hem?: number | undefined } | undefined }) =>
    layer.allowances?.hem !== undefined;
  // What its own layers are hemmed with may be much for a flounce or a train that comes off.
  const left = layers.flatMap((layer) => (ownHem(layer) ? [] : (layer.hem ?? [])));
  return [
    ...allowancesAt(page, page.sectionAt('allowances'), left),
    ...layers.flatMap(({ hem }, i) => [
      ...allowancesAt(page, page.sectionAt('layers', i, 'allowances'), hem),
      ...shorterBy(page, figureAt(page, ['layers', i, 'shorter']), hem),
    ]),
    ...flounces.flatMap(({ hem }, i) => allowancesAt(page, page.sectionAt('flounces', i, 'allowances'), hem)),
    ...tiers.flatMap((_, i) => allowancesAt(page, page.sectionAt('tiers', i, 'allowances'), 'rolled')),
    ...overskirts.flatMap(({ layers: own = [] }, i) =>
      own.flatMap(({ hem }, j) => [
        ...allowancesAt(page, page.sectionAt('overskirts', i, 'layers', j, 'allowances'), hem),
        ...shorterBy(page, figureAt(page, ['overskirts', i, 'layers', j, 'shorter']), hem),
      ]),
    ),
  ];
}

function shorterBy(page: Page, figure: Figure | undefined, finish: Finish | undefined): Diagnostic[] {
  if (figure === undefined) return [];
  if (figure.value < 0) return judged(page, figure, USUAL.longer);
  return judged(page, figure, finish === 'turned' ? USUAL.looseShorter : USUAL.shorter);
}

function allowancesAt(
  page: Page,
  section: Written | undefined,
  finishes: Finish | readonly Finish[] | undefined,
): Diagnostic[] {
  if (section?.kind !== 'map') return [];
  const widthAt = (edge: string): Figure | undefined => {
    const written = childOf(section, edge);
    return written === undefined || !isScalar(written) ? undefined : figureOf(written);
  };
  const seam = widthAt('seam');
  return [...section.entries.keys()].flatMap((edge) => {
    const figure = widthAt(edge);
    if (figure === undefined) return [];
    if (edge === 'hem') return hemJudged(page, figure, [finishes ?? []].flat());
    if (edge === 'seam' || edge === 'waist') return judged(page, figure, USUAL.seamAllowance);
    const found = judged(page, figure, USUAL.seamToLetOut);
    if (found.length > 0 || seam === undefined || figure.value >= seam.value - ROUNDED) return found;
    return [problems.namedSeamNarrower(spanOf(figure), edge, page.say(figure.value), page.say(seam.value))];
  });
}

/** Two allowances meant to be alike may differ by this where one is written in inches, mm. */
const ROUNDED = 1;

function hemJudged(
  page: Page,
  figure: Parameters<typeof judged>[1],
  finishes: readonly Finish[],
): Diagnostic[] {
  for (const finish of finishes) {
    const usual = HEMS[finish];
    const found = usual === undefined ? [] : judged(page, figure, usual);
    if (found.length > 0) return found;
  }
  return [];
}
