import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/slip-problems.ts';
import type { Page } from '../checks/page.ts';
import type { FilePath } from '../spec.ts';
import { isScalar } from '../written.ts';

/** A price of nothing is a decimal that slipped; what costs nothing has no price. */
export function pricesOfNothing(page: Page): Diagnostic[] {
  const { cloths = {}, trims = [], notions = [] } = page.sketch;
  const paths: FilePath[] = [
    ...Object.keys(cloths).map((name): FilePath => ['cloths', name, 'price']),
    ['edging', 'price'],
    ...trims.map((_, i): FilePath => ['trims', i, 'price']),
    ...notions.map((_, i): FilePath => ['notions', i, 'price']),
    ['labour', 'rate'],
  ];
  return paths.flatMap((path) => {
    const written = page.sectionAt(...path);
    if (written === undefined || !isScalar(written) || written.text.trim() === '') return [];
    return Number(written.text) === 0 ? [problems.priceOfNothing(written.span, written.label)] : [];
  });
}
