import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/gore-problems.ts';
import { nearest } from '../nearest.ts';
import type { Page } from './page.ts';

type Gore = NonNullable<Page['sketch']['gores']>[number];

/** Each gore by itself: halves on the fold, and one rule for its width. */
export function checkGores(page: Page): Diagnostic[] {
  const gores = page.sketch.gores ?? [];
  if (page.hasList('gores') && page.sketch.gores?.length === 0)
    return [problems.noGores(page.keyAt('gores'))];
  return gores.flatMap((gore, index) => [
    ...checkFold(page, gore, index),
    ...checkWidth(page, gore, index),
    ...checkFlarePair(page, gore, index),
  ]);
}

const WIDTHS = ['hem', 'half-hem', 'flare', 'half-flare'] as const;
const GORE_KEYS = ['name', 'on-fold', 'grain', 'notes', 'top', 'half-top', 'share', 'half-share', ...WIDTHS];

const WHOLE_AND_HALF = [
  ['top', 'half-top'],
  ['hem', 'half-hem'],
  ['flare', 'half-flare'],
  ['share', 'half-share'],
] as const;

function checkFold(page: Page, gore: Gore, index: number): Diagnostic[] {
  const name = gore.name ?? '';
  const given = (key: (typeof WHOLE_AND_HALF)[number][number] | 'on-fold') => page.has('gores', index, key);
  if (gore.onFold === undefined && given('on-fold')) return [];
  if (gore.onFold !== true) {
    return WHOLE_AND_HALF.filter(([, half]) => given(half)).map(([whole, half]) =>
      problems.halfWithoutFold(page.keyAt('gores', index, half), name, half, whole),
    );
  }
  const faults = WHOLE_AND_HALF.filter(([whole]) => given(whole)).map(([whole, half]) =>
    problems.wholeOnFold(page.keyAt('gores', index, whole), name, whole, half),
  );
  const last = (page.sketch.gores?.length ?? 0) - 1;
  if (!page.mirrored) faults.push(problems.foldWithoutSymmetry(page.keyAt('gores', index, 'on-fold'), name));
  else if (index !== 0 && index !== last)
    faults.push(problems.foldInside(page.keyAt('gores', index, 'on-fold'), name));
  if (gore.grain !== undefined && gore.grain !== 'centre')
    faults.push(problems.grainOnFold(page.at('gores', index, 'grain'), name, gore.grain));
  return faults;
}

function checkWidth(page: Page, gore: Gore, index: number): Diagnostic[] {
  const name = gore.name ?? '';
  const own = WIDTHS.filter((key) => page.has('gores', index, key));
  const rules = [...own, ...(page.has('sweep') ? ['sweep'] : [])];
  if (rules.length > 1) return [problems.severalWidths(page.keyAt('gores', index, own[0]!), name, rules)];
  if (rules.length === 1 || (page.sketch.petticoat?.girths?.length ?? 0) > 0) return [];
  // A petticoat whose girths could not be read has been spoken of already, and a sweep that fitted gores lack is.
  if (page.has('petticoat', 'girths') || page.has('fitted-to')) return [];
  // A width under a misspelt key has been spoken of.
  if (page.keysOf('gores', index).some((key) => WIDTHS.some((width) => width === nearest(key, GORE_KEYS))))
    return [];
  return [problems.noWidth(page.at('gores', index), name, gore.onFold === true ? 'half-hem' : 'hem')];
}

function checkFlarePair(page: Page, gore: Gore, index: number): Diagnostic[] {
  if (!Array.isArray(gore.flare) || gore.grain === undefined || gore.grain === 'centre') return [];
  return [problems.grainBesideFlares(page.at('gores', index, 'grain'), gore.name ?? '')];
}
