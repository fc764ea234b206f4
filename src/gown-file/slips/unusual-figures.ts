import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/slip-problems.ts';
import type { Page } from '../checks/page.ts';
import { isScalar, type Written } from '../written.ts';
import type { Usual } from './usual.ts';
import { FIGURES, SOLD_BY, USUAL } from './usual-figures.ts';
import { type Figure, figureOf, meantBy, spanOf } from './written-figure.ts';

/** Each figure by itself, against what bodies, gowns and cloths are. */
export function unusualFigures(page: Page): Diagnostic[] {
  const found: Diagnostic[] = [];
  const root = page.sectionAt();
  if (root !== undefined) visit(root, [], (figure, usual) => found.push(...judged(page, figure, usual)));
  return found;
}

function visit(
  written: Written,
  path: readonly string[],
  judge: (figure: Figure, usual: Usual) => void,
): void {
  if (isScalar(written)) {
    const usual = usualAt(path);
    const figure = usual && figureOf(written, usual.kind);
    if (usual !== undefined && figure !== undefined) judge(figure, usual);
    return;
  }
  const items =
    written.kind === 'map'
      ? [...written.entries]
      : written.items.map((item, i): [string, Written] => [String(i), item]);
  for (const [key, value] of items) visit(value, [...path, key], judge);
}

/** Figures by the section that they stand in, each by the steps that lead to it. */
const PATTERNS = new Map<string, { readonly steps: readonly string[]; readonly usual: Usual }[]>();
for (const [pattern, usual] of FIGURES) {
  const steps = pattern.split('.');
  const section = PATTERNS.get(steps[0]!) ?? [];
  section.push({ steps, usual });
  PATTERNS.set(steps[0]!, section);
}

function usualAt(path: readonly string[]): Usual | undefined {
  // An overskirt is judged as a gown; its lengths begin and end anywhere.
  const own = path[0] === 'overskirts' ? path.slice(2) : path;
  return PATTERNS.get(own[0] ?? '')?.find(
    ({ steps }) => steps.length === own.length && steps.every((step, i) => step === '*' || step === own[i]),
  )?.usual;
}

/** A finding where a figure lies outside what is usual: a note near it, a warning far out. */
export function judged(page: Page, figure: Figure, usual: Usual): Diagnostic[] {
  const size = usual.signed ? Math.abs(figure.value) : figure.value;
  if (usual === USUAL.soldBy && !SOLD_BY.some((step) => Math.abs(size / step - 1) < STEP_AGREES))
    return [problems.oddStep(spanOf(figure), figure.written.label, page.say(size))];
  if (size === 0 || (size >= usual.least - CLOSE && size <= usual.most + CLOSE)) return [];
  const [least, most] = usual.possible ?? [usual.least / 2, usual.most * 2];
  const meant = meantBy(figure, usual.typical, (value) => value >= usual.least && value <= usual.most);
  return [
    problems.unusualFigure(spanOf(figure), size < least - CLOSE || size > most + CLOSE ? 'warning' : 'note', {
      label: figure.written.label,
      figure: said(page, size, usual),
      of: usual.of,
      least: roughly(page, usual.least, usual),
      most: roughly(page, usual.most, usual),
      meant,
    }),
  ];
}

/** An eighth of a yard is 11.43 cm, and some write 11. */
const STEP_AGREES = 0.039;

/** A figure written in inches may miss a round bound of centimetres by its last digit. */
const CLOSE = 1e-6;

function said(page: Page, value: number, { kind }: Usual): string {
  if (kind === 'share') return `${Number((value * 100).toFixed(2))} %`;
  return kind === 'weight' ? `${Number(value.toFixed(1))} g/m²` : page.say(value);
}

/** A bound in inches, no finer than it is meant: 59 in, not 59.055. */
function roughly(page: Page, value: number, usual: Usual): string {
  return usual.kind === undefined && page.sketch.units === 'in'
    ? `${Number((value / 25.4).toPrecision(2))} in`
    : said(page, value, usual);
}
