import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/finishing-problems.ts';
import { missingKey } from '../../diagnostics/value-problems.ts';
import { nearest } from '../nearest.ts';
import { keysAt } from '../shape/form.ts';
import { layersOf } from './layers-of.ts';
import type { Page } from './page.ts';

/** Facings, the waist of a skirt without a bodice, and what lies in openings. */
export function checkFinishing(page: Page): Diagnostic[] {
  return [
    ...checkFacings(page),
    ...checkWaist(page),
    ...checkSlits(page),
    ...checkPieces(page),
    ...checkEdges(page),
  ];
}

/** A facing belongs to a hem that is faced. */
function checkFacings(page: Page): Diagnostic[] {
  return layersOf(page).flatMap(({ layer: { name, hem, facing }, path }) =>
    facing === undefined || hem === undefined || hem === 'faced'
      ? []
      : [problems.facingOfOtherHem(page.keyAt(...path, 'facing'), name ?? '', hem)],
  );
}

/** The keys that each finish of the waist has a use for. */
const OF_WAIST = {
  band: ['cloth', 'overlap', 'upper', 'ease'],
  facing: ['cloth', 'ease'],
  stay: ['ease'],
} as const;

function checkWaist(page: Page): Diagnostic[] {
  if (!page.has('waist')) return page.has('bodice') || isMisspelt(page) ? [] : [noEdge(page)];
  if (page.hasSection('bodice', 'draft')) return [problems.waistBesideBodice(page.keyAt('waist'))];
  const finish = page.sketch.waist?.finish;
  if (finish === undefined) return [];
  const useless = (['cloth', 'overlap', 'upper'] as const).filter(
    (key) => page.has('waist', key) && !(OF_WAIST[finish] as readonly string[]).includes(key),
  );
  return [
    ...useless.map((key) => problems.waistTakesNo(page.keyAt('waist', key), finish, key)),
    ...(finish === 'band' && !page.has('waist', 'cloth')
      ? [problems.bandWithoutCloth(page.at('waist'))]
      : []),
    ...(finish === 'facing'
      ? fullNames(page).map((name) => problems.facingOfFullWaist(page.at('waist', 'finish'), name))
      : []),
  ];
}

function noEdge(page: Page): Diagnostic {
  return missingKey(
    page.at('format'),
    'bodice',
    'from the spec',
    'a section, or `waist:` where the skirt has no bodice',
  );
}

/** A key that is not known and means one of the two has been spoken of. */
function isMisspelt(page: Page): boolean {
  const keys = keysAt([]);
  return page
    .keysOf()
    .some((key) => !keys.includes(key) && ['bodice', 'waist'].includes(nearest(key, keys) ?? ''));
}

/** Gores and layers that are gathered or pleated at the waist. */
function fullNames({ sketch: { gores = [], layers = [] } }: Page): string[] {
  return [...gores, ...layers].flatMap(({ name, fullness }) =>
    fullness === undefined || name === undefined ? [] : [name],
  );
}

/** A slit is told from the hem or from the waist. */
function checkSlits(page: Page): Diagnostic[] {
  return (page.sketch.slits ?? []).flatMap((_, i) => {
    const given = (['above-hem', 'below-waist'] as const).filter((key) => page.has('slits', i, key));
    if (given.length === 1) return [];
    return [
      given.length === 0
        ? problems.slitUnmeasured(page.at('slits', i))
        : problems.slitTwice(page.keyAt('slits', i, 'below-waist')),
    ];
  });
}

/** What is cut needs something to be cut for. */
function checkPieces(page: Page): Diagnostic[] {
  const { closure, trims = [] } = page.sketch;
  const isPiece = closure?.finish !== undefined && closure.finish !== 'hook';
  const idle = (['cloth', 'width'] as const).filter((key) => page.has('closure', key));
  const ofClosure =
    closure === undefined || isPiece || (page.has('closure', 'finish') && closure.finish === undefined)
      ? []
      : idle.map((key) => problems.closureCutsNothing(page.keyAt('closure', key), key));
  const ofTrims = trims.flatMap(({ kind }, i) =>
    kind === undefined || kind === 'binding' || !page.has('trims', i, 'cloth')
      ? []
      : [problems.trimNotCut(page.keyAt('trims', i, 'cloth'), kind)],
  );
  return [...ofClosure, ...ofTrims];
}

/** The end edges of an overskirt have facings where they are faced. */
function checkEdges(page: Page): Diagnostic[] {
  return (page.sketch.overskirts ?? []).flatMap(({ edges = 'faced' }, i) =>
    edges === 'faced' || !page.has('overskirts', i, 'edge-facing')
      ? []
      : [problems.edgesNotFaced(page.keyAt('overskirts', i, 'edge-facing'), edges)],
  );
}
