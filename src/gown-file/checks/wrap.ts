import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/wrap-problems.ts';
import type { FilePath } from '../spec.ts';
import type { Page } from './page.ts';

/** A skirt that wraps is sewn to no bodice, opens nowhere else, and has nothing else at its line. */
export function checkWrap(page: Page): Diagnostic[] {
  const { wrap } = page.sketch;
  if (wrap === undefined) return [];
  const { at, edges = 'faced', fastened = 'buttons' } = wrap;
  return [
    ...(page.has('waist') ? [] : [problems.wrapWithoutWaist(page.keyAt('wrap'))]),
    ...(page.has('closure') ? [problems.wrapAndClosure(page.keyAt('closure'))] : []),
    ...(page.has('waist', 'overlap') ? [problems.wrapSaysOverlap(page.keyAt('waist', 'overlap'))] : []),
    ...(edges !== 'faced' && page.has('wrap', 'edge-facing')
      ? [problems.wrapEdgesNotFaced(page.keyAt('wrap', 'edge-facing'), edges)]
      : []),
    ...(fastened !== 'ties' && page.has('wrap', 'ties')
      ? [problems.wrapNotTied(page.keyAt('wrap', 'ties'), fastened)]
      : []),
    ...(at === undefined ? [] : checkLine(page, at)),
  ];
}

function checkLine(page: Page, at: string): Diagnostic[] {
  const { stations = [] } = page;
  const isTwice = page.mirrored && stations.slice(1, -1).includes(at);
  if (isTwice) return [problems.wrapTwice(page.at('wrap', 'at'), at)];
  const full = fullBeside(page, at);
  return [
    ...alsoThere(page, at).map((path) => problems.wrapTakesPlace(page.at(...path), at, pathText(path))),
    ...(full === undefined ? [] : [problems.wrapOnFullness(page.at('wrap', 'at'), full)]),
  ];
}

/** Whatever else is said to lie at the line. */
function alsoThere(page: Page, at: string): FilePath[] {
  const {
    slits = [],
    pockets = [],
    godets = [],
    pleats = [],
    trims = [],
    fittings = [],
    layers = [],
  } = page.sketch;
  const found: FilePath[] = [];
  for (const [i, { seam }] of slits.entries()) if (seam === at) found.push(['slits', i, 'seam']);
  for (const [i, { seam }] of pockets.entries()) if (seam === at) found.push(['pockets', i, 'seam']);
  for (const [i, { seam }] of godets.entries()) if (seam === at) found.push(['godets', i, 'seam']);
  for (const [i, pleat] of pleats.entries()) if (pleat.at === at) found.push(['pleats', i, 'at']);
  for (const [i, { along }] of trims.entries()) if (along === at) found.push(['trims', i, 'along']);
  for (const [i, { gap }] of layers.entries()) if (gap?.at === at) found.push(['layers', i, 'gap', 'at']);
  for (const [i, { seams = [] }] of fittings.entries())
    for (const [j, { seam }] of seams.entries())
      if (seam === at) found.push(['fittings', i, 'seams', j, 'seam']);
  for (const i of layers.keys())
    if (page.has('layers', i, 'allowances', at)) found.push(['layers', i, 'allowances', at]);
  if (page.has('allowances', at)) found.push(['allowances', at]);
  return found;
}

function pathText(path: FilePath): string {
  return path.map((step) => (typeof step === 'number' ? step + 1 : step)).join('.');
}

/** A layer, or a gore beside the line, that is gathered or pleated at its top. */
function fullBeside({ sketch, mirrored, front, goreNames = [] }: Page, at: string): string | undefined {
  const beside = mirrored ? [at === front ? goreNames[0] : goreNames.at(-1)] : at.split('/');
  const gore = (sketch.gores ?? []).find(
    ({ name, fullness }) => fullness !== undefined && beside.includes(name),
  );
  return (gore ?? (sketch.layers ?? []).find(({ fullness }) => fullness !== undefined))?.name;
}
