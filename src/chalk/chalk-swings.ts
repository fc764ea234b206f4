import type { Arc } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import type { ChalkSwing } from './chalk.ts';
import type { ChalkAxes } from './chalk-chain.ts';

/** Longest radius that is swung with a tape on a table or a floor, mm. */
const LONGEST_SWING = 3000;

/** Edges that are one arc, with their centres. */
export function swingsOf(edges: readonly Edge[], axes: ChalkAxes, line: 'cut' | 'seam'): ChalkSwing[] {
  return edges.flatMap((edge) => {
    const arc = onlyArc(edge);
    if (arc === undefined || arc.radius > LONGEST_SWING) return [];
    const rounded = (value: number): number => Math.round(value / axes.step) * axes.step;
    return [
      {
        line,
        edge: edge.name,
        radius: rounded(arc.radius),
        down: rounded(arc.centre.y - axes.y),
        across: rounded(arc.centre.x - axes.x),
      },
    ];
  });
}

function onlyArc(edge: Edge): Arc | undefined {
  const arcs = edge.curves.filter((curve) => curve.kind === 'arc');
  const first = arcs[0];
  if (first === undefined || arcs.length !== edge.curves.length) return undefined;
  const same = arcs.every(
    (arc) =>
      Math.abs(arc.radius - first.radius) < 1e-6 &&
      Math.hypot(arc.centre.x - first.centre.x, arc.centre.y - first.centre.y) < 1e-6,
  );
  return same ? first : undefined;
}
