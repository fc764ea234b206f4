import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Gown } from '../gown/gown.ts';
import { runsRound } from '../gown/lines.ts';
import type { BustlePoint } from '../making/bustle/bustle.ts';
import { percentText } from '../making/findings.ts';
import type { Skirt } from '../making/skirt.ts';
import { type HangFigures, type HemPlace, LIES } from './hang-figures.ts';
import {
  bustledHemOnFloor,
  hemHangsOtherwise,
  hemOnFloor,
  notAtRest,
  trainLiesOtherwise,
} from './hang-problems.ts';
import type { HungGown } from './hung-gown.ts';

type Say = (mm: number) => string;

/** Cloth that is stretched by more did not come to rest, a fraction. */
const AT_REST = 0.02;
/** What lies on the floor may differ by this, or by a tenth, before it is said; less is no train. mm. */
const TRAIN_AS_ASKED = 50;
const LEAST_TRAIN = 100;

/** A hem may hang this much otherwise than was asked before it is said, mm. */
const AS_ASKED = 10;

/**
 * Where the hung gown contradicts its spec. `say` puts a length into the spec's units.
 * @param made its lengths to the floor, and the points of its bustle
 */
export function hangFindings(
  gown: Gown,
  hung: HungGown,
  say: Say,
  made: { readonly skirt?: Skirt; readonly points?: readonly BustlePoint[] } = {},
): Diagnostic[] {
  const { skirt, points = [] } = made;
  const stretch = Math.max(hung.figures.stretch, hung.bustled?.figures.stretch ?? 0);
  // Of cloth that did not come to rest nothing else is to be said.
  if (stretch > AT_REST) return [notAtRest(gown.place('gores'), percentText(stretch))];
  return [
    ...frontFindings(gown, hung.figures, say),
    ...trainFindings(gown, hung.figures, say, skirt),
    ...bustledFindings(gown, hung, say, points),
  ];
}

/** What hangs, all round or as far as the train begins: the place that hangs farthest from what was asked. */
function frontFindings(gown: Gown, { hem, assumedFloor }: HangFigures, say: Say): Diagnostic[] {
  const asked = gown.measuring.offFloor;
  if (asked === undefined || assumedFloor) return [];
  const ahead = hem.filter(({ near }) => isAheadOfTrain(gown, near.station));
  if (ahead.length === 0) return [];
  const place = gown.measuring.place('off-floor');
  const lowest = ahead.reduce((best, one) => (one.height < best.height ? one : best));
  if (asked > LIES && lowest.height <= LIES)
    return [hemOnFloor(place, { ...saidNear(lowest.near, say), asked: say(asked) })];
  const miss = ({ height }: HemPlace): number => Math.abs(height - asked);
  const worst = ahead.reduce((best, one) => (miss(one) > miss(best) ? one : best));
  if (miss(worst) <= AS_ASKED) return [];
  return [
    hemHangsOtherwise(place, {
      station: worst.near.station,
      hangs: say(worst.height),
      asked: say(asked),
      why: worst.height > asked ? 'folds' : 'shape',
    }),
  ];
}

/** Its hem is not yet drawn out into the train there; without a train, everywhere. */
function isAheadOfTrain({ train, stations }: Gown, name: string): boolean {
  if (train === undefined) return true;
  const index = stations.findIndex((station) => station.name === name);
  return index < train.begins || (train.ends !== undefined && index > train.ends);
}

function saidNear({ beside, station }: HemPlace['near'], say: Say): { beside: string; station: string } {
  return { beside: say(beside), station };
}

/** What of the train lies on the floor at the centre back, against what its length and the floor there give. */
function trainFindings(
  gown: Gown,
  { lainBehind, assumedFloor }: HangFigures,
  say: Say,
  skirt: Skirt | undefined,
): Diagnostic[] {
  const behind = skirt?.stations.find(({ name }) => name === 'centre-back');
  if (behind?.floor === undefined || assumedFloor) return [];
  const asked = behind.finished - behind.floor.length;
  if (asked < LEAST_TRAIN || Math.abs(lainBehind - asked) <= Math.max(TRAIN_AS_ASKED, asked / 10)) return [];
  const place = gown.train === undefined ? gown.measuring.place('at') : gown.place('train', 'on-floor');
  return [
    trainLiesOtherwise(place, { lies: say(lainBehind), asked: say(asked), longer: lainBehind > asked }),
  ];
}

/** Where the bustled hem lies on the floor, and what clears it; of a mirrored gown her left stands for both sides. */
function bustledFindings(
  gown: Gown,
  { bustled }: HungGown,
  say: Say,
  points: readonly BustlePoint[],
): Diagnostic[] {
  if (bustled === undefined) return [];
  const { figures, advice } = bustled;
  const places = figures.touches.flatMap(({ from, to }): HemPlace['near'][] => {
    const inside = figures.hem.filter(({ along }) => along >= from && along <= to);
    const lowest = inside.reduce((best, place) => (place.height < best.height ? place : best));
    return !runsRound(gown) && lowest.left < -LIES ? [] : [lowest.near];
  });
  if (places.length === 0) return [];
  return [
    bustledHemOnFloor(
      gown.place('bustle'),
      places.map((near) => saidNear(near, say)),
      advice && {
        // Where none was asked for, those that are advised at seams have to be listed too.
        lines: pointLines(
          gown.bustle?.points.length === 0 ? [...points, ...advice.points] : advice.points,
          say,
        ),
        clears: advice.clears,
      },
    ),
  ];
}

/** As they are written into the spec. */
function pointLines(points: readonly BustlePoint[], say: Say): string[] {
  const named = points.map(({ seam, gore, across, anchor }) =>
    seam === undefined
      ? `{gore: ${gore}, across: ${Math.round(100 * across)}%, anchor: ${say(anchor)}}`
      : `{seam: ${seam}, anchor: ${say(anchor)}}`,
  );
  return [...new Set(named)];
}
