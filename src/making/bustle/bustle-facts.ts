import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Bustle } from '../../gown/sections.ts';
import { isSame } from '../../gown/station.ts';
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
  readonly kind: Bustle['kind'];
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

export function bustleFacts(bench: Bench): Found<BustleFacts | undefined> {
  const { gown, skirt } = bench;
  const { bustle } = gown;
  if (bustle === undefined) return { facts: undefined, findings: [] };
  const { clearance } = bustle;
  const loop = bustle.loop ?? USUAL_LOOP;
  const heavy = bustle.heavy ?? false;
  const advised = bustle.points.length === 0;
  const points = advised
    ? seamsAdvised(onceWhereAlike(trainSeams(skirt)), clearance, heavy).map((seam) =>
        bustlePoint(seam, USUAL_ANCHOR, clearance, loop),
      )
    : pointsAsked(bench, bustle, loop);
  const floorOf = (name: string) => skirt.stations.filter((station) => station.name === name);
  const asked = [...new Set(bustle.points.map(({ station }) => station.name))];
  const facts: BustleFacts = {
    kind: bustle.kind,
    advised,
    clearance,
    loop,
    heavy,
    points,
    number: pointsIn(points),
    estimated: [...new Set(points.map(({ seam }) => seam))].filter((seam) =>
      floorOf(seam).some(({ floor }) => floor?.estimated === true),
    ),
    withoutFloor: asked.filter((seam) => floorOf(seam).some(({ floor }) => floor === undefined)),
  };
  return { facts, findings: findingsOf(bench, bustle, facts) };
}

/** In the order asked for; what was asked of one name and is alike on both sides is one point, twice. */
function pointsAsked({ skirt }: Bench, { points, clearance }: Bustle, loop: number): BustlePoint[] {
  const seams = trainSeams(skirt);
  const places = [...new Set(points.map(({ place }) => place))];
  return places.flatMap((place) => {
    const own = points.filter((point) => point.place === place);
    const found = own.flatMap(({ station }) => seams.find((seam) => isSame(seam, station)) ?? []);
    return onceWhereAlike(found).map((seam) => bustlePoint(seam, own[0]!.anchor, clearance, loop));
  });
}

/** Every seam, and the middle of a folded back, which can carry a loop as well. */
function trainSeams(skirt: Bench['skirt']): TrainSeam[] {
  return skirt.stations.flatMap(({ name, side, seams, finished, floor }, i) => {
    const folded = seams === 0 && i > 0;
    if ((seams === 0 && !folded) || floor === undefined) return [];
    const own = { name, ...(side === undefined ? {} : { side }) };
    return [{ ...own, copies: Math.max(1, seams), length: finished, toFloor: floor.length }];
  });
}

/** Less than this is nothing that a loop could be moved by, mm. */
const ALIKE = 0.05;

/** Two seams of one name with the same figures are one that there are two of. */
function onceWhereAlike(seams: readonly TrainSeam[]): TrainSeam[] {
  const alike = (a: TrainSeam, b: TrainSeam): boolean =>
    a.name === b.name && Math.abs(a.length - b.length) < ALIKE && Math.abs(a.toFloor - b.toFloor) < ALIKE;
  return seams.flatMap((seam, i) => {
    const other = seams.findIndex((one, k) => k !== i && alike(one, seam));
    if (other < 0) return [seam];
    const { side: _, ...both } = seam;
    return other < i ? [] : [{ ...both, copies: seam.copies + seams[other]!.copies }];
  });
}

function findingsOf({ say }: Bench, bustle: Bustle, facts: BustleFacts): Diagnostic[] {
  const findings: Diagnostic[] = [];
  for (const { station, place } of bustle.points) {
    const point =
      facts.points.find((one) => isSame({ name: one.seam, ...one }, station)) ??
      facts.points.find((one) => one.seam === station.name && one.side === undefined);
    // Of two that are alike, and share a place, the one on her left speaks for both.
    if (point === undefined || (point.side === undefined && station.side === 'right')) continue;
    const seam = point.side === undefined ? point.seam : `${point.seam} on her ${point.side}`;
    const at = place('seam');
    if (point.lift <= 0) findings.push(problems.bustlePointLiftsNothing(at, seam));
    else if (point.aboveHem < 0) findings.push(problems.bustleLoopBelowHem(at, seam, say(-point.aboveHem)));
  }
  if (facts.withoutFloor.length > 0) return findings;
  const place = bustle.place();
  if (facts.points.every((point) => point.lift <= 0)) findings.push(problems.bustleWithoutTrain(place));
  else if (!isUsualNumber(facts.number, facts.heavy)) {
    const { least, most } = facts.heavy ? USUAL_POINTS_WHEN_HEAVY : USUAL_POINTS;
    const usual = `an odd number, ${least} to ${most}${facts.heavy ? ' on a heavy train' : ''}`;
    findings.push(problems.bustleNumber(place, facts.number, usual));
  }
  return findings;
}
