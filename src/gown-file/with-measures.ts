import type { BodySpec, GoreSpec, OverskirtSpec, PetticoatSpec, Spec } from './spec.ts';
import { stationsOf } from './stations.ts';

/** Measures that a gown can be supposed for before there are any: mm. What is absent stays as it is. */
export interface SupposedMeasures {
  readonly waist?: number;
  readonly hip?: number;
  /** Sewn edge of the bodice to the floor, at the centre front. */
  readonly toFloor?: number;
  /** Train on the floor, at the centre back. */
  readonly train?: number;
  /** Full hem all round. */
  readonly sweep?: number;
  /** Girth of the lowest hoop. */
  readonly hoop?: number;
}

/**
 * The same gown for other measures: every top in the proportion of the waists, its hem wider by as much, every girth
 * between them in the proportion of the hips, every length longer by as much as the front is. An estimate, never a pattern: nobody was measured.
 */
export function withMeasures(spec: Spec, measures: SupposedMeasures): Spec {
  const own = ownWaist(spec);
  const waist = (measures.waist ?? own) / own;
  const longer = measures.toFloor === undefined ? 0 : measures.toFloor - frontToFloor(spec);
  const wider = own * (waist - 1);
  const hem = measures.sweep === undefined ? 1 : measures.sweep / (hemAllRound(spec) + wider);
  const { train, petticoat, closure, body } = spec;
  return {
    ...spec,
    bodice: {
      ...spec.bodice,
      waistSeam: spec.bodice.waistSeam * waist,
      panels: scaled(spec.bodice.panels, waist),
    },
    gores: spec.gores.map((gore) => goreScaled(gore, spec.bodice.panels, waist, hem)),
    ...(spec.sweep !== undefined && { sweep: measures.sweep ?? spec.sweep + wider }),
    lengths: lengthened(spec.lengths, longer),
    ...(train && { train: { ...train, onFloor: measures.train ?? train.onFloor ?? 0 } }),
    ...(body && { body: bodyFor(body, waist, hipRatio(spec, measures)) }),
    ...(petticoat && { petticoat: petticoatFor(petticoat, measures, hipRatio(spec, measures)) }),
    ...(closure && { closure: { ...closure, ...(measures.hip !== undefined && { hip: measures.hip }) } }),
    ...(spec.overskirts && {
      overskirts: spec.overskirts.map((one) => overskirtFor(one, waist, longer)),
    }),
  };
}

/** Her waist where the bodice is drafted over it, else the seam that was measured. */
function ownWaist({ bodice, body }: Spec): number {
  const girth = body?.girths.find(({ above, below }) => above === undefined && below === undefined)?.girth;
  return bodice.draft === undefined ? bodice.waistSeam : (girth ?? bodice.waistSeam);
}

/** Down to the waist in the proportion of the waists, below it in that of the hips. */
function bodyFor(body: BodySpec, waist: number, hips: number): BodySpec {
  return {
    ...body,
    girths: body.girths.map((level) => {
      const by = level.below === undefined ? waist : hips;
      return {
        ...level,
        girth: level.girth * by,
        ...(level.front !== undefined && { front: level.front * by }),
        ...(level.left !== undefined && { left: level.left * by }),
      };
    }),
    ...(body.bustPointsApart !== undefined && { bustPointsApart: body.bustPointsApart * waist }),
  };
}

/** What of a gown's measures this one would have to be given anew: a train has no place on a gown without one. */
export function unusedMeasures(spec: Spec, measures: SupposedMeasures): (keyof SupposedMeasures)[] {
  const unused: (keyof SupposedMeasures)[] = [];
  if (measures.train !== undefined && spec.train === undefined) unused.push('train');
  if (measures.hoop !== undefined && spec.petticoat?.hoop === undefined) unused.push('hoop');
  if (measures.sweep !== undefined && hemAllRound(spec) === 0) unused.push('sweep');
  return unused;
}

/** At the first station, which is the centre front whatever it is called. */
function frontToFloor({ lengths, gores, symmetry }: Spec): number {
  const front = stationsOf(
    gores.map(({ name }) => name),
    symmetry,
  )[0]!;
  if (lengths.measured === 'to-floor') return lengths.at[front]!;
  return lengths.toFloor?.[front] ?? lengths.at[front]! + (lengths.offFloor ?? 0);
}

/** The hem as the spec says it, both halves; 0 where no gore says it. */
function hemAllRound(spec: Spec): number {
  if (spec.sweep !== undefined) return spec.sweep;
  const round = spec.gores.reduce((sum, gore) => sum + (gore.hem ?? gore.halfHem ?? 0), 0);
  return spec.symmetry === 'none' ? round : 2 * round;
}

function hipRatio(spec: Spec, { hip }: SupposedMeasures): number {
  const own = spec.closure?.hip;
  return hip === undefined || own === undefined ? 1 : hip / own;
}

function petticoatFor(petticoat: PetticoatSpec, { hoop }: SupposedMeasures, hips: number): PetticoatSpec {
  return {
    ...petticoat,
    girths: petticoat.girths.map(({ down, girth }) => ({ down, girth: girth * hips })),
    ...(petticoat.hoop !== undefined && { hoop: hoop ?? petticoat.hoop }),
  };
}

function overskirtFor(overskirt: OverskirtSpec, waist: number, longer: number): OverskirtSpec {
  return {
    ...overskirt,
    gores: overskirt.gores.map((gore) => goreScaled(gore, {}, waist, 1)),
    lengths: lengthened(overskirt.lengths, longer),
  };
}

/** Its hem is first as much wider as its top is, so that it flares as before. */
function goreScaled(gore: GoreSpec, panels: Spec['bodice']['panels'], waist: number, hem: number): GoreSpec {
  const panel = panels[gore.name] ?? 0;
  const wider = (gore.top ?? panel) * (waist - 1);
  const halfWider = (gore.halfTop ?? panel / 2) * (waist - 1);
  return {
    ...gore,
    ...(gore.top !== undefined && { top: gore.top * waist }),
    ...(gore.halfTop !== undefined && { halfTop: gore.halfTop * waist }),
    ...(gore.hem !== undefined && { hem: (gore.hem + wider) * hem }),
    ...(gore.halfHem !== undefined && { halfHem: (gore.halfHem + halfWider) * hem }),
  };
}

function lengthened(lengths: Spec['lengths'], by: number): Spec['lengths'] {
  const longer = (named: Readonly<Record<string, number>>) =>
    Object.fromEntries(Object.entries(named).map(([name, length]) => [name, length + by]));
  return {
    ...lengths,
    at: longer(lengths.at),
    ...(lengths.toFloor && { toFloor: longer(lengths.toFloor) }),
    ...(lengths.hemWidthAt !== undefined && { hemWidthAt: lengths.hemWidthAt + by }),
  };
}

function scaled(named: Readonly<Record<string, number>>, by: number): Record<string, number> {
  return Object.fromEntries(Object.entries(named).map(([name, length]) => [name, length * by]));
}
