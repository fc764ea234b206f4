import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { placeOf, type Spec } from '../gown-file/spec.ts';
import { type HangFigures, type HemPlace, LIES } from './hang-figures.ts';
import { bustledHemOnFloor, hemHangsOtherwise } from './hang-problems.ts';
import type { HungGown } from './hung-gown.ts';

/** A hem may hang this much otherwise than was asked before it is said, mm. */
const AS_ASKED = 10;

/** Where the hung gown contradicts its spec. `say` puts a length into the spec's units. */
export function hangFindings(spec: Spec, hung: HungGown, say: (mm: number) => string): Diagnostic[] {
  return [...askedFindings(spec, hung.figures, say), ...bustledFindings(spec, hung, say)];
}

/** A skirt without a train, all round; the place that hangs farthest from what was asked. */
function askedFindings(spec: Spec, figures: HangFigures, say: (mm: number) => string): Diagnostic[] {
  const asked = spec.lengths.offFloor;
  if (asked === undefined || spec.train !== undefined || figures.assumedFloor) return [];
  const miss = (place: HemPlace): number => Math.abs(place.height - asked);
  const worst = figures.hem.reduce((best, place) => (miss(place) > miss(best) ? place : best));
  if (miss(worst) <= AS_ASKED) return [];
  return [
    hemHangsOtherwise(placeOf(spec, 'lengths', 'off-floor'), {
      station: worst.near.station,
      hangs: say(worst.height),
      asked: say(asked),
      why: worst.height > asked ? 'folds' : 'shape',
    }),
  ];
}

/** One finding for each stretch of the bustled hem on the floor; on a mirrored gown her left stands for both. */
function bustledFindings(spec: Spec, { bustled }: HungGown, say: (mm: number) => string): Diagnostic[] {
  if (bustled === undefined) return [];
  const { hem, touches } = bustled.figures;
  return touches.flatMap(({ from, to }) => {
    const inside = hem.filter(({ along }) => along >= from && along <= to);
    const lowest = inside.reduce((best, place) => (place.height < best.height ? place : best));
    if (spec.symmetry !== 'none' && lowest.left < -LIES) return [];
    return [bustledHemOnFloor(placeOf(spec, 'bustle'), say(lowest.near.beside), lowest.near.station)];
  });
}
