import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/shaping-problems.ts';
import { WAIST_AGREES } from '../../geometry/tolerances.ts';
import type { Page } from './page.ts';

/** Where a petticoat can stand. */
type Path = readonly ['petticoat'] | readonly ['lengths', 'measured-in', 'petticoat'];

/** Levels of the petticoat, and of the one that was worn at the measuring. */
export function checkPetticoats(page: Page): Diagnostic[] {
  const paths: readonly Path[] = [['petticoat'], ['lengths', 'measured-in', 'petticoat']];
  return paths.flatMap((path) => checkGirths(page, path));
}

type Petticoat = NonNullable<Page['sketch']['petticoat']>;

function petticoatAt(page: Page, path: Path): Petticoat | undefined {
  const own = path.length === 1 ? page.sketch.petticoat : page.sketch.lengths?.measuredIn?.petticoat;
  return typeof own === 'object' ? own : undefined;
}

function checkGirths(page: Page, path: Path): Diagnostic[] {
  const petticoat = petticoatAt(page, path);
  const girths = petticoat?.girths;
  if (girths === undefined || !page.hasList(...path, 'girths')) return [];
  if (girths.length < 2) return [problems.oneGirth(page.keyAt(...path, 'girths'))];
  const faults: Diagnostic[] = [];
  for (const [i, level] of girths.entries()) {
    const above = girths[i - 1];
    if (above?.down === undefined || level.down === undefined) continue;
    if (level.down <= above.down)
      faults.push(
        problems.girthsOutOfOrder(
          page.at(...path, 'girths', i, 'down'),
          page.say(level.down),
          page.say(above.down),
        ),
      );
    else if (petticoat?.measured !== 'vertical' && isShelf(above, level))
      faults.push(
        problems.girthsTooFarOut(page.at(...path, 'girths', i, 'girth'), page.say(level.down - above.down)),
      );
  }
  return [...faults, ...checkWaist(page, path, girths)];
}

type Level = { readonly down?: number | undefined; readonly girth?: number | undefined };

/** Girth for one of slant where cloth lies flat: a full circle, and a little for its rounded figures. */
const FLAT_DISC = 2 * Math.PI * 1.01;

/** The cloth from one hoop to the next is shorter than the way from the one to the other. */
function isShelf(above: Level, level: Level): boolean {
  if (above.girth === undefined || level.girth === undefined) return false;
  return Math.abs(level.girth - above.girth) > FLAT_DISC * (level.down! - above.down!);
}

function checkWaist(page: Page, path: Path, girths: readonly Level[]): Diagnostic[] {
  const first = girths[0];
  const waist = page.sketch.bodice?.waistSeam;
  if (first?.down !== undefined && first.down > 0)
    return [problems.noGirthAtWaist(page.at(...path, 'girths', 0, 'down'))];
  if (first?.girth === undefined || waist === undefined || dropped(page)) return [];
  return first.girth < waist - WAIST_AGREES
    ? [
        problems.girthUnderWaist(
          page.at(...path, 'girths', 0, 'girth'),
          page.say(first.girth),
          page.say(waist),
        ),
      ]
    : [];
}

/** Under a drop the level waist is another length than the sewn edge, and nothing follows from comparing them. */
function dropped(page: Page): boolean {
  return Object.values(page.sketch.bodice?.dropBelowWaist ?? {}).some(
    (drop) => drop !== undefined && drop > 0,
  );
}
