import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { type BustleSpec, placeOf } from '../../gown-file/spec.ts';
import type { Bench, Found } from '../findings.ts';
import * as problems from '../problems.ts';
import {
  type BustlePoint,
  bustlePoint,
  isUsualNumber,
  pointsIn,
  seamsAdvised,
  type TrainSeam,
  USUAL_ANCHOR,
  USUAL_LOOP,
  USUAL_POINTS,
  USUAL_POINTS_WHEN_HEAVY,
} from './bustle.ts';

/** The bustle as it is set. mm. */
export interface BustleFacts {
  readonly kind: BustleSpec['kind'];
  /** The points were not asked for and are advised. */
  readonly advised: boolean;
  readonly clearance: number;
  readonly loop: number;
  readonly heavy: boolean;
  /** From the centre outwards as the spec names them, or by what they lift. */
  readonly points: readonly BustlePoint[];
  /** In all, both sides counted. */
  readonly number: number;
  /** Points whose floor length nobody measured. */
  readonly estimated: readonly string[];
  /** Seams named for a point whose floor length is not known at all. */
  readonly withoutFloor: readonly string[];
}

export function bustleFacts({ spec, skirt, say }: Bench): Found<BustleFacts | undefined> {
  const bustle = spec.bustle;
  if (bustle === undefined) return { facts: undefined, findings: [] };
  const { clearance } = bustle;
  const loop = bustle.loop ?? USUAL_LOOP;
  const heavy = bustle.heavy ?? false;
  const seams = trainSeams(skirt);
  const asked = bustle.points ?? [];
  const advised = asked.length === 0;
  const points = advised
    ? seamsAdvised(seams, clearance, heavy).map((seam) => bustlePoint(seam, USUAL_ANCHOR, clearance, loop))
    : asked.flatMap(({ seam, anchor }) => {
        const own = seams.find((one) => one.name === seam);
        return own === undefined ? [] : [bustlePoint(own, anchor, clearance, loop)];
      });
  const stations = new Map(skirt.stations.map((station) => [station.name, station]));
  const facts: BustleFacts = {
    kind: bustle.kind,
    advised,
    clearance,
    loop,
    heavy,
    points,
    number: pointsIn(points),
    estimated: points.filter((p) => stations.get(p.seam)?.floor?.estimated === true).map((p) => p.seam),
    withoutFloor: asked
      .filter(({ seam }) => stations.has(seam) && stations.get(seam)?.floor === undefined)
      .map(({ seam }) => seam),
  };
  return { facts, findings: findingsOf({ spec, skirt, say }, facts) };
}

/** Every seam, and the middle of a folded back, which can carry a loop as well. */
function trainSeams(skirt: Bench['skirt']): TrainSeam[] {
  return skirt.stations.flatMap(({ name, seams, finished, floor }, i) => {
    const folded = seams === 0 && i > 0;
    if ((seams === 0 && !folded) || floor === undefined) return [];
    return [{ name, copies: Math.max(1, seams), length: finished, toFloor: floor.length }];
  });
}

function findingsOf({ spec, say }: Bench, facts: BustleFacts): Diagnostic[] {
  const findings: Diagnostic[] = [];
  const place = placeOf(spec, 'bustle');
  for (const [index, { seam }] of (spec.bustle?.points ?? []).entries()) {
    const at = placeOf(spec, 'bustle', 'points', index, 'seam');
    const point = facts.points.find((one) => one.seam === seam);
    if (point === undefined) continue;
    if (point.lift <= 0) findings.push(problems.bustlePointLiftsNothing(at, seam));
    else if (point.aboveHem < 0) findings.push(problems.bustleLoopBelowHem(at, seam, say(-point.aboveHem)));
  }
  if (facts.withoutFloor.length > 0) return findings;
  if (facts.points.every((point) => point.lift <= 0)) findings.push(problems.bustleWithoutTrain(place));
  else if (!isUsualNumber(facts.number, facts.heavy)) {
    const { least, most } = facts.heavy ? USUAL_POINTS_WHEN_HEAVY : USUAL_POINTS;
    const usual = `an odd number, ${least} to ${most}${facts.heavy ? ' on a heavy train' : ''}`;
    findings.push(problems.bustleNumber(place, facts.number, usual));
  }
  return findings;
}
