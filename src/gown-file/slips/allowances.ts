import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/slip-problems.ts';
import type { Page } from '../checks/page.ts';
import { judged } from './unusual-figures.ts';
import { USUAL, type Usual } from './usual-figures.ts';
import { figureAt, spanOf } from './written-figure.ts';

type Path = readonly (string | number)[];
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
    ...allowancesAt(page, ['allowances'], left),
    ...layers.flatMap(({ hem }, i) => [
      ...allowancesAt(page, ['layers', i, 'allowances'], hem),
      ...shorterBy(page, ['layers', i, 'shorter'], hem),
    ]),
    ...flounces.flatMap(({ hem }, i) => allowancesAt(page, ['flounces', i, 'allowances'], hem)),
    ...tiers.flatMap((_, i) => allowancesAt(page, ['tiers', i, 'allowances'], 'rolled')),
    ...overskirts.flatMap(({ layers: own = [] }, i) =>
      own.flatMap(({ hem }, j) => [
        ...allowancesAt(page, ['overskirts', i, 'layers', j, 'allowances'], hem),
        ...shorterBy(page, ['overskirts', i, 'layers', j, 'shorter'], hem),
      ]),
    ),
  ];
}

function shorterBy(page: Page, path: Path, finish: Finish | undefined): Diagnostic[] {
  const figure = figureAt(page, path);
  if (figure === undefined) return [];
  if (figure.value < 0) return judged(page, figure, USUAL.longer);
  return judged(page, figure, finish === 'turned' ? USUAL.looseShorter : USUAL.shorter);
}

function allowancesAt(
  page: Page,
  path: Path,
  finishes: Finish | readonly Finish[] | undefined,
): Diagnostic[] {
  const seam = figureAt(page, [...path, 'seam']);
  return page.keysOf(...path).flatMap((edge) => {
    const figure = figureAt(page, [...path, edge]);
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
