import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Gown } from '../gown/gown.ts';
import { runsRound } from '../gown/lines.ts';
import { type HangFigures, type HemPlace, LIES } from './hang-figures.ts';
import { bustledHemOnFloor, hemHangsOtherwise } from './hang-problems.ts';
import type { HungGown } from './hung-gown.ts';

/** A hem may hang this much otherwise than was asked before it is said, mm. */
const AS_ASKED = 10;

/** Where the hung gown contradicts its spec. `say` puts a length into the spec's units. */
export function hangFindings(gown: Gown, hung: HungGown, say: (mm: number) => string): Diagnostic[] {
  return [...askedFindings(gown, hung.figures, say), ...bustledFindings(gown, hung, say)];
}

/** A skirt without a train, all round; the place that hangs farthest from what was asked. */
function askedFindings(gown: Gown, figures: HangFigures, say: (mm: number) => string): Diagnostic[] {
  const asked = gown.measuring.offFloor;
  if (asked === undefined || gown.train !== undefined || figures.assumedFloor) return [];
  const miss = (place: HemPlace): number => Math.abs(place.height - asked);
  const worst = figures.hem.reduce((best, place) => (miss(place) > miss(best) ? place : best));
  if (miss(worst) <= AS_ASKED) return [];
  return [
    hemHangsOtherwise(gown.measuring.place('off-floor'), {
      station: worst.near.station,
      hangs: say(worst.height),
      asked: say(asked),
      why: worst.height > asked ? 'folds' : 'shape',
    }),
  ];
}

/** One finding for each stretch of the bustled hem on the floor; on a mirrored gown her left stands for both. */
function bustledFindings(gown: Gown, { bustled }: HungGown, say: (mm: number) => string): Diagnostic[] {
  if (bustled === undefined) return [];
  const { hem, touches } = bustled.figures;
  return touches.flatMap(({ from, to }) => {
    const inside = hem.filter(({ along }) => along >= from && along <= to);
    const lowest = inside.reduce((best, place) => (place.height < best.height ? place : best));
    if (!runsRound(gown) && lowest.left < -LIES) return [];
    return [bustledHemOnFloor(gown.place('bustle'), say(lowest.near.beside), lowest.near.station)];
  });
}
