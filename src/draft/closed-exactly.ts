import type { Edge } from '../geometry/edge.ts';
import { startOf } from '../geometry/evaluate.ts';

/** Ends that agree to rounding are made one point, so that the outline is closed to the last bit. */
export function closedExactly(edges: readonly Edge[]): Edge[] {
  return edges.map((edge, i) => {
    const next = edges[(i + 1) % edges.length]!.curves[0]!;
    const last = edge.curves[edge.curves.length - 1]!;
    if (last.kind === 'arc') return edge;
    return { ...edge, curves: [...edge.curves.slice(0, -1), { ...last, to: startOf(next) }] };
  });
}
