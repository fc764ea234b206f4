import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { Page } from '../checks/page.ts';
import { endsOfOverskirt } from '../stations.ts';
import { unusualAllowances } from './allowances.ts';
import { againstBody, unitsSlipped } from './body.ts';
import { goreWidths } from './gore-widths.ts';
import { unlikeHerBody } from './her-body.ts';
import { lengthsBesideOthers } from './length-neighbours.ts';
import { partsOfSkirt } from './parts.ts';
import { pricesOfNothing } from './prices.ts';
import { tooLargeToDraft } from './too-large.ts';
import { trainsAndLengths } from './trains.ts';
import { underneath } from './underneath.ts';
import { unusualFigures } from './unusual-figures.ts';

/** Figures that can be read and are likely slips; each place is spoken of once, the surest finding first. */
export function allSlips(written: Page): Diagnostic[] {
  const page = withoutDraftedEdge(written);
  // In a file read in the wrong unit everything else is off as well.
  const wrong = unitsSlipped(page);
  if (wrong.length > 0) return wrong;
  const skirts = [page, ...overskirtPages(page)];
  const lengths = skirts.flatMap(lengthsBesideOthers);
  const found = [
    ...lengths,
    ...(lengths.some(({ level }) => level === 'error') ? [] : skirts.flatMap(tooLargeToDraft)),
    ...skirts.flatMap(goreWidths),
    ...skirts.flatMap(trainsAndLengths),
    ...againstBody(page),
    ...unlikeHerBody(page),
    ...underneath(page),
    ...partsOfSkirt(page),
    ...unusualAllowances(page),
    ...unusualFigures(page),
    ...pricesOfNothing(page),
  ];
  const places = new Set<string>();
  return found.filter(({ span }) => {
    const place = `${span.source.name}:${span.start}:${span.end}`;
    return !places.has(place) && places.add(place);
  });
}

/** An edge that is drafted is not in the file: nothing can be held against it before it is. */
function withoutDraftedEdge(page: Page): Page {
  const { bodice } = page.sketch;
  const root = page.sectionAt();
  if (bodice?.draft === undefined || root === undefined) return page;
  const { waistSeam: _, ...rest } = bodice;
  return new Page({ ...page.sketch, bodice: rest }, root);
}

/** An overskirt as the skirt that it is drafted as. */
function overskirtPages(page: Page): Page[] {
  return (page.sketch.overskirts ?? []).flatMap((overskirt, i) => {
    const { gores, sweep, lengths, train, layers, to = 'centre-back' } = overskirt;
    const root = page.sectionAt('overskirts', i);
    const sketch = { units: page.sketch.units, gores, sweep, lengths, train, layers };
    return root === undefined ? [] : [new Page(sketch, root, ...endsOfOverskirt(to))];
  });
}
