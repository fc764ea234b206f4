import type { Fullness } from './cloth.ts';
import type { LayerShape } from './layer.ts';
import type { Gore, GownLines, WidthRule } from './lines.ts';

/**
 * The gown as one layer is cut: wider where it is gathered, smaller where it stretches. What is taken off along the
 * cloth lies with the hem (see `hemProfile`), so that lengths to the floor are scaled once.
 */
export function linesOfLayer(gown: GownLines, shape: LayerShape): GownLines {
  const along = 1 - shape.smallerAlong;
  return {
    ...gown,
    gores: gown.gores.map((gore, i) => goreOfLayer(gore, shape, frontLength(gown, i))),
    stations: gown.stations.map((station) => ({ ...station, drop: station.drop * along })),
  };
}

/** Cloth for one of the edge, from the gore and the layer together. */
export function fullnessOf(gore: Gore, shape: LayerShape): number {
  return (gore.fullness?.ratio ?? 1) * (shape.fullness?.ratio ?? 1);
}

function goreOfLayer(gore: Gore, shape: LayerShape, length: number): Gore {
  const across = 1 - shape.smallerAcross;
  const sized: Gore = {
    ...gore,
    top: gore.top * across,
    width: alongScaled(acrossScaled(gore.width, across), 1 - shape.smallerAlong),
  };
  return [gore.fullness, shape.fullness].reduce(
    (full, by) => (by === undefined ? full : filled(full, by, length)),
    sized,
  );
}

/** At the waist only, the gore keeps the hem that it has without fullness. */
function filled(gore: Gore, by: Pick<Fullness, 'ratio' | 'where'>, length: number): Gore {
  const top = gore.top * by.ratio;
  if (by.where === 'throughout') return { ...gore, top, width: acrossScaled(gore.width, by.ratio) };
  if (gore.width.kind !== 'flare') return { ...gore, top };
  return { ...gore, top, width: { kind: 'hem', width: gore.top + gore.width.angle * length, at: length } };
}

function acrossScaled(rule: WidthRule, factor: number): WidthRule {
  switch (rule.kind) {
    case 'flare':
      return { ...rule, angle: rule.angle * factor };
    case 'hem':
      return { ...rule, width: rule.width * factor };
    case 'girths':
      return { ...rule, levels: rule.levels.map((level) => ({ ...level, width: level.width * factor })) };
  }
}

function alongScaled(rule: WidthRule, factor: number): WidthRule {
  switch (rule.kind) {
    case 'flare':
      return rule;
    case 'hem':
      return { ...rule, at: rule.at * factor };
    case 'girths':
      return { ...rule, levels: rule.levels.map((level) => ({ ...level, down: level.down * factor })) };
  }
}

/** Slant distance to the hem at the nearest station that has a length. */
function frontLength(gown: GownLines, gore: number): number {
  const known = gown.stations.slice(0, gore + 1).findLast((station) => station.length !== undefined);
  const station = known ?? gown.stations.find(({ length }) => length !== undefined);
  return (station?.drop ?? 0) + (station?.length ?? 0);
}
