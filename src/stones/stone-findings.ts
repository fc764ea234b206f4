import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import * as problems from '../diagnostics/stone-problems.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { LayerDraft, LayerDrafts } from '../draft/draft-layers.ts';
import type { Gown } from '../gown/gown.ts';
import type { Stones } from '../gown/parts.ts';
import { placedStones } from './placed-stones.ts';
import { distanceFor, PACKED } from './scatter.ts';
import { beside, seamLine } from './seam-line.ts';

/** Stones that cannot lie as they are asked for. */
export function stoneFindings({ stones, units }: Gown, { layers }: LayerDrafts): Diagnostic[] {
  return stones.flatMap((own) => {
    const layer = layers.find((one) => one.layer.name === own.layer.name);
    if (layer === undefined) return [];
    const say = (mm: number) => tapeText(mm, units);
    return own.perDm2 === undefined ? placeFindings(own, layer, say) : crowded(own, say);
  });
}

type Say = (mm: number) => string;

/** As dense as they are to be, their middles lie nearer than they are wide and are to be kept apart. */
function crowded({ name, size = 0, apart, perDm2 = [0, 0], place }: Stones, say: Say): Diagnostic[] {
  const densest = Math.max(...perDm2);
  const needed = size + (apart ?? 0);
  if (densest === 0 || distanceFor(densest) >= needed) return [];
  const most = String(Number(((1e4 * PACKED) / needed ** 2).toPrecision(2)));
  return apart === undefined
    ? [
        problems.stonesOverlap(place('per-dm2'), {
          name,
          apart: say(distanceFor(densest)),
          needed: say(needed),
          most,
        }),
      ]
    : [problems.stonesKeptApart(place('apart'), { name, asked: String(densest), apart: say(apart), most })];
}

/** Places off the cloth, and places too near to an edge; a fold is none. One place is told once, however often it is there. */
function placeFindings(stones: Stones, layer: LayerDraft, say: Say): Diagnostic[] {
  const { name, places = [], clear, size = 0, place } = stones;
  const needed = clear + size / 2;
  const placed = placedStones(stones, layer);
  return places.flatMap(({ gore }, told) => {
    const span = place('places', told);
    const first = placed.find((one) => one.told === told);
    if (first === undefined) return [problems.stoneOffCloth(span, name, gore, layer.layer.name)];
    const edges = layer.draft.pieces[first.index]!.edges.filter((edge) => edge.name !== 'fold');
    const aways = edges.map((edge) => ({ edge, away: beside(seamLine(edge.curves), first.at).away }));
    const nearest = aways.reduce((best, one) => (one.away < best.away ? one : best));
    if (nearest.away >= needed) return [];
    const says = { name, gore, edge: nearest.edge.name, away: say(nearest.away), needed: say(needed) };
    return [problems.stoneNearEdge(span, says)];
  });
}
