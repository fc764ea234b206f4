import { bodyOf, type Figure } from './figure.ts';
import { FINEST, FOURS, flounceRows, withFlounce } from './gown-panels.ts';
import { seamColumns, seamsOf } from './hung-seams.ts';
import { placedPanels } from './placed-panels.ts';
import type { GownHung, GownToHang } from './sewn-gown.ts';
import { standing } from './standing.ts';
import { clothToHang, type WornBeyond } from './start-of-cloth.ts';
import { outwards } from './tape.ts';
import { tiersToHang } from './tiers-to-hang.ts';

/** The skirt, and the outermost of the tiers that are worn under it. */
export function clothOfGown(gown: GownToHang): { readonly sewn: GownHung; readonly under?: GownHung } {
  const { draft } = gown;
  const tops = draft.gown.gores.map(({ top }) => top);
  const length = tops.reduce((sum, top) => sum + top, 0);
  const partOfStation = [0];
  for (const top of tops) partOfStation.push(partOfStation[partOfStation.length - 1]! + top / length);
  const { waistHeight, worn, bare, edge } = standing(gown, partOfStation, length);
  const longest = Math.max(...draft.lengths);
  const down = FOURS * Math.max(2, Math.round(longest / FINEST / FOURS));
  const { flounce } = gown;
  const panels = placedPanels(draft, gown.godets, down, FINEST / (flounce?.fullness ?? 1), gown.pleating);
  const placed =
    flounce === undefined
      ? panels
      : panels.map((own) => ({ ...own, panel: withFlounce(own.panel, flounce, down) }));
  const all = down + (flounce === undefined ? 0 : flounceRows(flounce));
  const { cloth, edge: sewnOn } = clothToHang(
    draft,
    placed,
    all,
    edge,
    partOfStation,
    beyondEdge(worn),
    gown,
  );
  const sewn: GownHung = {
    cloth,
    edge: sewnOn,
    body: bodyOf(worn, waistHeight),
    closing: cloth.closing,
    stations: draft.gown.stations.map(({ name, side }, i) => ({
      name,
      ...(side && { side }),
      column: seamColumns(placed, i)[0],
    })),
    gores: placed
      .filter(({ from, to }) => from !== to)
      .map(({ panel: { name, across }, first, from }) => {
        const { side } = draft.gown.gores[from]!;
        return { name, ...(side && { side }), first, across };
      }),
    seams: seamsOf(gown, placed),
    joins: flounce === undefined ? [] : [down],
    waistHeight,
    assumedFloor: gown.floors.every((floor) => floor === undefined),
  };
  const tiers = gown.tiers[gown.tiers.length - 1];
  if (tiers === undefined) return { sewn };
  const facts = { bendingLength: tiers.bendingLength, shearLength: gown.shearLength };
  const net = tiersToHang(tiers, { bare, worn }, waistHeight, facts);
  return {
    sewn,
    under: { ...sewn, ...net, edge: [], closing: 'mirrored', stations: [], gores: [], seams: [] },
  };
}

function beyondEdge(worn: Figure): WornBeyond {
  return ({ x, y, outX, outY }, height) =>
    outwards(worn, Math.max(0, height), outX, outY) - Math.sqrt(x * x + y * y);
}
