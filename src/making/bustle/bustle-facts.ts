import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { GownDraft } from '../../draft/draft-gown.ts';
import type { Bustle, BustlePointAsked } from '../../gown/sections.ts';
import { isSame } from '../../gown/station.ts';
import { type Bench, type Found, percentText } from '../findings.ts';
import * as problems from '../problems.ts';
import type { SkirtStation } from '../skirt.ts';
import {
  type BustlePoint,
  bustlePoint,
  isUsualNumber,
  pointsIn,
  seamsAdvised,
  type TrainLine,
  USUAL_ANCHOR,
  USUAL_LOOP,
  USUAL_POINTS,
  USUAL_POINTS_WHEN_HEAVY,
} from './bustle.ts';
import { besideGore, linesDown, trainSeams } from './train-lines.ts';

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
  /** Points more that it wants, so that its hem clears the floor as it hangs; nothing where it was not hung. */
  readonly more?: readonly BustlePoint[];
  /** In all, both sides counted. */
  readonly number: number;
  /** Stations at points, or beside them, whose floor length nobody measured. */
  readonly estimated: readonly string[];
  /** Those whose floor length is not known at all. */
  readonly withoutFloor: readonly string[];
}

export function bustleFacts(bench: Bench, draft: GownDraft): Found<BustleFacts | undefined> {
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
    : pointsAsked(bench, draft, bustle, loop);
  const beside = (name: string): SkirtStation[] => besideGore(draft, skirt, name);
  const named = (name: string): SkirtStation[] => skirt.stations.filter((station) => station.name === name);
  const hangsFrom = points.flatMap((point) =>
    point.seam === undefined ? beside(point.gore) : named(point.seam),
  );
  const asked = bustle.points.flatMap(({ at }) => ('gore' in at ? beside(at.gore) : named(at.name)));
  const facts: BustleFacts = {
    kind: bustle.kind,
    advised,
    clearance,
    loop,
    heavy,
    points,
    number: pointsIn(points),
    estimated: namesOf(hangsFrom.filter(({ floor }) => floor?.estimated === true)),
    withoutFloor: namesOf(asked.filter(({ floor }) => floor === undefined)),
  };
  return { facts, findings: findingsOf(bench, bustle, facts) };
}

function namesOf(stations: readonly SkirtStation[]): string[] {
  return [...new Set(stations.map(({ name }) => name))];
}

/** In the order asked for; what was asked of one name and is alike on both sides is one point, twice. */
function pointsAsked(
  { skirt }: Bench,
  draft: GownDraft,
  { points, clearance }: Bustle,
  loop: number,
): BustlePoint[] {
  const seams = trainSeams(skirt);
  const places = [...new Set(points.map(({ place }) => place))];
  return places.flatMap((place) => {
    const own = points.filter((point) => point.place === place);
    const found = own.flatMap(({ at }) =>
      'gore' in at ? linesDown(draft, skirt, at) : (seams.find((seam) => isSame(seam, at)) ?? []),
    );
    return onceWhereAlike(found).map((seam) => bustlePoint(seam, own[0]!.anchor, clearance, loop));
  });
}

/** Less than this is nothing that a loop could be moved by, mm. */
const ALIKE = 0.05;

/** Two seams of one name with the same figures are one that there are two of. */
function onceWhereAlike(seams: readonly TrainLine[]): TrainLine[] {
  const alike = (a: TrainLine, b: TrainLine): boolean =>
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
  for (const { at, place } of bustle.points)
    for (const point of pointsFor(at, facts.points)) {
      const where = problems.bustlePlace(point, percentText);
      const span = place('gore' in at ? 'gore' : 'seam');
      if (point.lift <= 0) findings.push(problems.bustlePointLiftsNothing(span, where));
      else if (point.aboveHem < 0)
        findings.push(problems.bustleLoopBelowHem(span, where, say(-point.aboveHem)));
    }
  if (facts.withoutFloor.length > 0) return findings;
  const place = bustle.place();
  if (facts.points.every((point) => point.lift <= 0)) findings.push(problems.bustleWithoutTrain(place));
  else if (!isUsualNumber(facts.number, facts.heavy)) {
    const { least, most } = facts.heavy ? USUAL_POINTS_WHEN_HEAVY : USUAL_POINTS;
    findings.push(problems.bustleNumber(place, { points: facts.number, least, most, heavy: facts.heavy }));
  }
  return findings;
}

/** What was set for a place that was asked for. */
function pointsFor(at: BustlePointAsked['at'], points: readonly BustlePoint[]): BustlePoint[] {
  if ('gore' in at) return points.filter(({ gore, across }) => gore === at.gore && across === at.across);
  const point =
    points.find(({ seam, ...one }) => seam !== undefined && isSame({ name: seam, ...one }, at)) ??
    points.find((one) => one.seam === at.name && one.side === undefined);
  // Of two that are alike, and share a place, the one on her left speaks for both.
  return point === undefined || (point.side === undefined && at.side === 'right') ? [] : [point];
}
