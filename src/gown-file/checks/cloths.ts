import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/material-problems.ts';
import { USUAL_SELVEDGE } from '../shape/usual.ts';
import type { Page } from './page.ts';

/** Each cloth by itself. */
export function checkCloths(page: Page): Diagnostic[] {
  return Object.entries(page.sketch.cloths ?? {}).flatMap(([name, cloth]) => {
    if (cloth === undefined) return [];
    const faults: Diagnostic[] = [];
    const { width, selvedge = USUAL_SELVEDGE } = cloth;
    if (width !== undefined && 2 * selvedge >= width)
      faults.push(
        problems.selvedgesWiderThanCloth(
          page.at('cloths', name, 'selvedge'),
          name,
          page.say(selvedge),
          page.say(width),
        ),
      );
    const oneWay = page.flagAt('cloths', name, 'one-way');
    const headToTail = page.flagAt('cloths', name, 'head-to-tail');
    if (oneWay === true && headToTail === true)
      faults.push(problems.oneWayHeadToTail(page.keyAt('cloths', name, 'head-to-tail'), name));
    if (oneWay === false && headToTail === false)
      faults.push(problems.neitherWay(page.keyAt('cloths', name, 'head-to-tail'), name));
    if (cloth.repeatAcross !== undefined && width !== undefined && cloth.repeatAcross > width)
      faults.push(
        problems.repeatWiderThanCloth(
          page.at('cloths', name, 'repeat-across'),
          name,
          page.say(cloth.repeatAcross),
          page.say(width),
        ),
      );
    if (page.has('cloths', name, 'priced-per') && !page.has('cloths', name, 'price'))
      faults.push(problems.pricedPerWithoutPrice(page.keyAt('cloths', name, 'priced-per'), name));
    return faults;
  });
}
