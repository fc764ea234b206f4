import * as problems from '../../diagnostics/above-waist-problems.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { noLayers } from '../../diagnostics/material-problems.ts';
import { missingKey } from '../../diagnostics/value-problems.ts';
import { nearest } from '../nearest.ts';
import type { Page } from './page.ts';

/** The body, a bodice drafted over it, and what is sewn to its upper edge. */
export function checkAboveWaist(page: Page): Diagnostic[] {
  return [
    ...checkEdge(page),
    ...checkHeights(page),
    ...(page.hasSection('bodice', 'draft') ? checkDraft(page) : []),
    ...checkStraps(page),
    ...checkCapes(page),
  ];
}

/** The skirt is sewn to an edge that is measured, or to one that is drafted. */
function checkEdge(page: Page): Diagnostic[] {
  if (!page.hasSection('bodice')) return [];
  const keys = page.keysOf('bodice');
  if (!keys.includes('draft'))
    for (const key of ['closing', 'bones', 'layers'] as const)
      if (keys.includes(key)) return [problems.makingWithoutDraft(page.keyAt('bodice', key), key)];
  const typed = (['waist-seam', 'panels'] as const).filter((key) => keys.includes(key));
  if (keys.includes('draft')) return typed.map((key) => problems.edgeTwice(page.keyAt('bodice', key), key));
  const misspelt = keys.some(
    (key) => !BODICE_KEYS.includes(key) && nearest(key, BODICE_KEYS) === 'waist-seam',
  );
  if (keys.includes('waist-seam') || misspelt || page.has('waist')) return [];
  return [
    missingKey(
      page.at('bodice'),
      'waist-seam',
      'from `bodice`',
      'a length, such as `98`, `98cm` or `38 1/2in`',
    ),
  ];
}

const BODICE_KEYS = [
  'waist-seam',
  'draft',
  'closing',
  'bones',
  'layers',
  'panels',
  'bones-end',
  'second-row',
  'plies',
  'drop-below-waist',
  'point',
  'notes',
];

function checkHeights(page: Page): Diagnostic[] {
  return (page.sketch.body?.girths ?? []).flatMap(({ at }, i) => {
    if (at === undefined) return [];
    const given = (['above', 'below'] as const).filter((key) => page.has('body', 'girths', i, key));
    const span = page.at('body', 'girths', i, given[0] ?? 'at');
    if (at === 'waist') return given.length > 0 ? [problems.heightOfWaist(span)] : [];
    if (given.length === 2) return [problems.heightTwice(span, at)];
    return given.length === 0 ? [problems.heightMissing(span, at)] : [];
  });
}

function checkDraft(page: Page): Diagnostic[] {
  const draft = page.sketch.bodice?.draft;
  const faults: Diagnostic[] = [];
  if (!page.has('body')) faults.push(problems.draftWithoutBody(page.keyAt('bodice', 'draft')));
  if (!page.mirrored) faults.push(problems.draftWithoutSymmetry(page.keyAt('bodice', 'draft')));
  if (page.has('bodice', 'bones-end') && page.has('bodice', 'bones'))
    faults.push(problems.bonesEndTwice(page.keyAt('bodice', 'bones-end')));
  if (!page.has('bodice', 'layers'))
    faults.push(missingKey(page.keyAt('bodice', 'draft'), 'layers', 'from `bodice`', 'a list'));
  const panels = (draft?.panels ?? []).flatMap(({ name }) => name ?? []);
  const gores = page.goreNames;
  if (!page.has('gores')) faults.push(problems.panelsWithoutGores(page.keyAt('bodice', 'draft')));
  const isRead = panels.length > 0 && panels.length === (draft?.panels ?? []).length;
  if (isRead && gores !== undefined && panels.join('/') !== gores.join('/'))
    faults.push(problems.panelsUnlikeGores(page.keyAt('bodice', 'draft', 'panels'), panels, gores));
  if (page.hasList('bodice', 'layers') && page.sketch.bodice?.layers?.length === 0)
    faults.push(noLayers(page.keyAt('bodice', 'layers')));
  if (draft?.facing !== undefined && (draft.upperFinish ?? 'bound') !== 'faced')
    faults.push(
      problems.facingOfOtherEdge(page.keyAt('bodice', 'draft', 'facing'), draft.upperFinish ?? 'bound'),
    );
  return [...faults, ...checkClosing(page)];
}

const OF_LACING = ['gap', 'eyelets', 'from-edge', 'doubled', 'modesty', 'tails'] as const;

function checkClosing(page: Page): Diagnostic[] {
  const closing = page.sketch.bodice?.closing;
  const path = ['bodice', 'closing'] as const;
  if (closing?.kind === undefined) return [];
  const isCentre = closing.at === 'centre-front' || closing.at === 'centre-back';
  const side =
    isCentre && closing.side !== undefined
      ? [problems.sideOfCentre(page.at(...path, 'side'), closing.at)]
      : [];
  if (closing.kind === 'lacing')
    return page.has(...path, 'gap')
      ? side
      : [...side, problems.gapMissing(page.keyAt(...path), page.say(50))];
  const unused = OF_LACING.filter((key) => page.has(...path, key));
  return [
    ...side,
    ...unused.map((key) => problems.onlyForLacing(page.keyAt(...path, key), key, closing.kind!)),
  ];
}

function checkStraps(page: Page): Diagnostic[] {
  if (page.hasSection('bodice', 'draft')) return [];
  return (page.sketch.straps ?? []).map((_, i) => problems.noDraftedEdge(page.at('straps', i), 'A strap'));
}

function checkCapes(page: Page): Diagnostic[] {
  return (page.sketch.capes ?? []).flatMap(({ name = '' }, i) => {
    const has = (key: 'from' | 'to' | 'sewn-to' | 'angle' | 'fullness'): boolean => page.has('capes', i, key);
    const span = page.at('capes', i, 'name');
    const faults: Diagnostic[] = [];
    const isBetween = has('from') && has('to');
    if (has('sewn-to') ? has('from') || has('to') : !isBetween)
      faults.push(problems.capeEdgeUnclear(span, name));
    else if (isBetween && !page.hasSection('bodice', 'draft'))
      faults.push(problems.noDraftedEdge(page.at('capes', i, 'from'), `The cape ${name}`));
    if (has('angle') === has('fullness')) faults.push(problems.capeShapeUnclear(span, name));
    return faults;
  });
}
