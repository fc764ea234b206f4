import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { GownDraft } from '../../draft/draft-gown.ts';
import { runsRound } from '../../gown/lines.ts';
import { USUAL_OFF_FLOOR } from '../../gown/sections.ts';
import type { Bench, Found } from '../findings.ts';
import * as problems from '../problems.ts';
import { sweepAt } from '../skirt.ts';
import {
  heightUnderSlant,
  LEAST_SWEEP_TO_HOOP,
  leastHoop,
  type SweepOverHoop,
  slantToHoop,
  sweepOverHoop,
} from './petticoat.ts';

/** The skirt over its hoop, and how it is walked in. mm. */
export interface PetticoatFacts {
  readonly offFloor: number | undefined;
  readonly hoop: HoopFacts | undefined;
}

export interface HoopFacts {
  readonly round: number;
  readonly offFloor: number;
  /** The hoop's height was not given and taken as the hem's. */
  readonly offFloorAssumed: boolean;
  readonly sweep: SweepOverHoop | undefined;
  /** Smallest that is comfortable for this gown. */
  readonly least: number;
  readonly withTrain: boolean;
  /** From the level waist to the hoop at the centre front: along the cloth, and straight down. */
  readonly slant: number | undefined;
  readonly height: number | undefined;
}

export function petticoatFacts(bench: Bench, draft: GownDraft): Found<PetticoatFacts | undefined> {
  const { gown, skirt, say } = bench;
  const { measuring, petticoat } = gown;
  const { offFloor } = skirt;
  const findings: Diagnostic[] = [];
  if (offFloor !== undefined && offFloor < USUAL_OFF_FLOOR) {
    findings.push(
      problems.hemLow(
        measuring.place(measuring.offFloor === undefined ? 'to-floor' : 'off-floor'),
        say(offFloor),
        say(USUAL_OFF_FLOOR),
      ),
    );
  }
  const round = petticoat?.hoop;
  if (petticoat === undefined || round === undefined) {
    const facts = offFloor === undefined ? undefined : { offFloor, hoop: undefined };
    return { facts, findings };
  }
  const hoop = hoopFacts(bench, draft, round);
  const place = petticoat.place('hoop');
  if (hoop.sweep !== undefined && !hoop.sweep.wideEnough && !isShapedToIt(draft)) {
    findings.push(
      problems.sweepNarrowOverHoop(place, {
        sweep: say(hoop.sweep.sweep),
        hoop: say(round),
        ratio: hoop.sweep.ratio.toFixed(2),
        least: String(LEAST_SWEEP_TO_HOOP),
        needed: say(LEAST_SWEEP_TO_HOOP * Math.max(round, hoop.least)),
        ...(hoop.sweep.widestHoop < hoop.least ? {} : { widest: say(hoop.sweep.widestHoop) }),
      }),
    );
  }
  if (round < hoop.least)
    findings.push(problems.hoopSmall(place, say(round), say(hoop.least), hoop.withTrain));
  return { facts: { offFloor, hoop }, findings };
}

/** Gores that take the petticoat's own girths follow it closely because they are meant to. */
function isShapedToIt(draft: GownDraft): boolean {
  return draft.gown.gores.every((gore) => gore.width.kind === 'girths');
}

function hoopFacts({ gown, skirt }: Bench, draft: GownDraft, round: number): HoopFacts {
  const given = gown.petticoat?.hoopOffFloor;
  const offFloor = given ?? skirt.offFloor ?? 0;
  const depths = skirt.stations.map((station) =>
    station.floor === undefined
      ? undefined
      : slantToHoop(station.drop + station.floor.length, offFloor, skirt.waist, round),
  );
  // On a ring of different sides the last station is the first again.
  const all = runsRound(draft.gown) ? [...depths, depths[0]] : depths;
  const known = all.flatMap((depth) => depth ?? []);
  const slant = depths[0];
  return {
    round,
    offFloor,
    offFloorAssumed: given === undefined,
    sweep: known.length === all.length ? sweepOverHoop(sweepAt(draft, known), round) : undefined,
    least: leastHoop(
      gown.train !== undefined,
      skirt.waist,
      skirt.stations[0]?.floor?.length,
      gown.body?.wearer,
    ),
    withTrain: gown.train !== undefined,
    slant,
    height: slant === undefined ? undefined : heightUnderSlant(slant, skirt.waist, round),
  };
}
