import type { Fullness } from './cloth.ts';
import type { LayerShape } from './layer.ts';
import type { Gore, GownLines, SewnEdge, WidthRule } from './lines.ts';

/** A gore without fullness: the level that stands for its hem, the hem's highest one, the width at `level` and at the level waist; mm. */
export interface PlainHem {
  readonly level: number;
  readonly least: number;
  readonly width: number;
  readonly waist: number;
}

/** Whether a layer's gores are known by what the hem is without it: see `linesOfLayer`. */
export function dependsOnHem({ gores }: GownLines, shape: LayerShape): boolean {
  return gores.some((gore) => {
    const fades = [gore.fullness, shape.fullness].some((by) => by?.where === 'waist');
    return gore.width.kind === 'girths'
      ? fades
      : gore.width.kind === 'flare' && (fades || shape.smallerAlong !== 0);
  });
}

export function withoutFullness(gown: GownLines): GownLines {
  return { ...gown, gores: gown.gores.map(({ fullness: _, ...gore }) => gore) };
}

/**
 * The gown as one layer is cut: wider where it is gathered, smaller where it stretches. What is taken off along the
 * cloth lies with the hem (see `hemProfile`), so that lengths to the floor are scaled once.
 * @param hems by gore; needed where the layer `dependsOnHem`
 */
export function linesOfLayer(gown: GownLines, shape: LayerShape, hems: readonly PlainHem[]): GownLines {
  const along = 1 - shape.smallerAlong;
  return {
    ...gown,
    gores: gown.gores.map((gore, i) => goreOfLayer(gore, shape, hems[i])),
    stations: gown.stations.map((station) => ({ ...station, drop: station.drop * along })),
    ...(gown.edge === undefined || along === 1 ? {} : { edge: raisedBy(gown.edge, along) }),
  };
}

function raisedBy(edge: SewnEdge, factor: number): SewnEdge {
  return {
    ...edge,
    valueAt: (way) => edge.valueAt(way) * factor,
    slopeAt: (way) => edge.slopeAt(way) * factor,
  };
}

/** Cloth for one of the edge, from the gore and the layer together. */
export function fullnessOf(gore: Gore, shape: LayerShape): number {
  return (gore.fullness?.ratio ?? 1) * (shape.fullness?.ratio ?? 1);
}

function goreOfLayer(gore: Gore, shape: LayerShape, hem: PlainHem | undefined): Gore {
  const across = 1 - shape.smallerAcross;
  const along = 1 - shape.smallerAlong;
  const rules = [gore.fullness, shape.fullness].flatMap((by) => by ?? []);
  const ratioOf = (where: Fullness['where']): number =>
    rules.reduce((ratio, by) => (by.where === where ? ratio * by.ratio : ratio), 1);
  const throughout = ratioOf('throughout');
  const fades = ratioOf('waist') !== 1;
  const full = acrossScaled(gore.width, throughout);
  const own = fades || along !== 1 ? heldAtHem(full, hem, throughout) : full;
  const dartsEnd = Math.max(0, ...(gore.fullness?.darts ?? []).map(({ length }) => length));
  const faded = fades ? fading(own, hem, throughout, dartsEnd) : own;
  return {
    ...gore,
    top: gore.top * ratioOf('waist') * throughout * across,
    width: acrossScaled(along === 1 ? faded : alongScaled(faded, along), across),
  };
}

/** At the waist only: a gore over girths keeps those that it has without fullness from the hem on; what darts take in, from their points on. */
function fading(rule: WidthRule, hem: PlainHem | undefined, throughout: number, dartsEnd: number): WidthRule {
  if (rule.kind !== 'girths') return rule;
  const { waist, least } = known(hem);
  return {
    ...rule,
    fading: { plain: waist * throughout, to: dartsEnd > 0 ? Math.min(least, dartsEnd) : least },
  };
}

/** A gore known by its flare as one known by the width that this gives it at the hem. */
function heldAtHem(rule: WidthRule, hem: PlainHem | undefined, throughout: number): WidthRule {
  if (rule.kind !== 'flare') return rule;
  const { width, level } = known(hem);
  return { kind: 'hem', width: width * throughout, at: level };
}

function known(hem: PlainHem | undefined): PlainHem {
  if (hem === undefined) throw new RangeError('the hem without fullness is not known');
  return hem;
}

function acrossScaled(rule: WidthRule, factor: number): WidthRule {
  switch (rule.kind) {
    case 'flare':
      return { ...rule, angle: rule.angle * factor };
    case 'hem':
      return { ...rule, width: rule.width * factor };
    case 'girths':
      return {
        ...rule,
        levels: rule.levels.map((level) => ({ ...level, width: level.width * factor })),
        ...(rule.fading === undefined
          ? {}
          : { fading: { ...rule.fading, plain: rule.fading.plain * factor } }),
      };
  }
}

function alongScaled(rule: WidthRule, factor: number): WidthRule {
  switch (rule.kind) {
    case 'flare':
      return rule;
    case 'hem':
      return { ...rule, at: rule.at * factor };
    case 'girths':
      return {
        ...rule,
        levels: rule.levels.map((level) => ({ ...level, down: level.down * factor })),
        ...(rule.fading === undefined ? {} : { fading: { ...rule.fading, to: rule.fading.to * factor } }),
      };
  }
}
