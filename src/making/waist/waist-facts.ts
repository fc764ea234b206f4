import type { Diagnostic, Span } from '../../diagnostics/diagnostic.ts';
import type { Gown } from '../../gown/gown.ts';
import {
  boneClearance,
  LEAST_BONE_CLEARANCE,
  type PliesAtWaist,
  pliesAtWaist,
  USUAL_SECOND_ROW,
} from '../closure/closure.ts';
import type { Bench, Found } from '../findings.ts';
import * as problems from '../problems.ts';

/** How the layers are sewn to the bodice. */
export interface WaistFacts {
  /** From the outside in: each group is one sewing. */
  readonly groups: readonly WaistGroup[];
  /** Whether the spec says how the layers are grouped. */
  readonly grouped: boolean;
  readonly bonesEnd: number | undefined;
  readonly secondRow: number;
  /** Between needle and bone, mm. */
  readonly clearance: number | undefined;
}

export interface WaistGroup {
  readonly layers: readonly string[];
  readonly plies: PliesAtWaist;
  /** The bodice's plies were counted as one because the spec does not give them. */
  readonly bodicePliesAssumed: boolean;
}

export function waistFacts({ gown, skirt, say }: Bench): Found<WaistFacts> {
  const names = gown.layers.map((layer) => layer.name);
  const { bodice, sewnAsOne, waist } = gown;
  const { bonesEnd, plies, secondRow = USUAL_SECOND_ROW } = bodice;
  const clearance = bonesEnd === undefined ? undefined : boneClearance(bonesEnd, secondRow);
  const findings: Diagnostic[] = [];
  // At or under the least; a millionth of a millimetre is rounding, not a bone.
  if (clearance !== undefined && clearance <= LEAST_BONE_CLEARANCE + 1e-6) {
    findings.push(
      problems.needleNearBone(
        bodice.place('bones-end'),
        say(Math.max(0, clearance)),
        say(LEAST_BONE_CLEARANCE),
      ),
    );
  }
  for (const { place, group } of groupsNamed(gown)) {
    const between = layerBetween(names, group);
    if (between !== undefined) {
      findings.push(problems.layersNotNeighbours(place, group, between));
    }
  }
  const groups = groupsAtWaist(
    names,
    waist === undefined ? (sewnAsOne?.waist ?? eachByItself(skirt)) : [names],
  ).map((layers) => ({
    layers,
    plies: pliesAtWaist(mostLayersAtOnce(skirt, layers), waist === undefined ? (plies ?? 1) : 1),
    bodicePliesAssumed: plies === undefined && waist === undefined,
  }));
  const grouped = sewnAsOne?.waist !== undefined || names.length === 1;
  return { facts: { groups, grouped, bonesEnd, secondRow, clearance }, findings };
}

/** Where nothing is said each layer is sewn by itself, with those that have the gores that it lacks: they are one ring. */
function eachByItself(skirt: Bench['skirt']): string[][] {
  const rings: { readonly layers: string[]; readonly gores: string[] }[] = [];
  for (const { layer, gores } of skirt.layers) {
    const ring = rings.find((one) => !one.gores.some((gore) => gores.includes(gore)));
    if (ring === undefined) rings.push({ layers: [layer.name], gores: [...gores] });
    else {
      ring.layers.push(layer.name);
      ring.gores.push(...gores);
    }
  }
  return rings.map(({ layers }) => layers);
}

/** Groups from the outside in; a layer that no group names is sewn by itself. */
function groupsAtWaist(names: readonly string[], given: readonly (readonly string[])[]): string[][] {
  const alone = names.filter((name) => !given.some((group) => group.includes(name))).map((name) => [name]);
  const outermost = (group: readonly string[]): number =>
    Math.max(...group.map((name) => names.indexOf(name)));
  return [...given.map((group) => names.filter((name) => group.includes(name))), ...alone]
    .filter((group) => group.length > 0)
    .sort((a, b) => outermost(b) - outermost(a));
}

/** A layer that has only some of the gores shares its place with another: the most that lie on each other anywhere. */
function mostLayersAtOnce(skirt: Bench['skirt'], layers: readonly string[]): number {
  const own = skirt.layers.filter((layer) => layers.includes(layer.layer.name));
  const gores = [...new Set(own.flatMap((layer) => layer.gores))];
  return Math.max(0, ...gores.map((gore) => own.filter((layer) => layer.gores.includes(gore)).length));
}

function groupsNamed({ sewnAsOne }: Gown): { place: Span; group: readonly string[] }[] {
  if (sewnAsOne === undefined) return [];
  const { waist = [], closure, place } = sewnAsOne;
  return [
    ...waist.map((group, i) => ({ place: place('waist', i), group })),
    ...(closure === undefined ? [] : [{ place: place('closure'), group: closure }]),
  ];
}

/** A layer that lies between the layers of a group without belonging to it. */
function layerBetween(names: readonly string[], group: readonly string[]): string | undefined {
  const places = group.map((name) => names.indexOf(name)).filter((place) => place >= 0);
  const [first, last] = [Math.min(...places), Math.max(...places)];
  return names.find((name, place) => place > first && place < last && !group.includes(name));
}
