import type { OnGore } from '../gown/sections.ts';
import type { Side } from '../gown/station.ts';
import type { BustleFacts } from '../making/bustle/bustle-facts.ts';
import { columnsOf, type Tie } from './sewn-cloth.ts';
import type { GownHung } from './sewn-gown.ts';

/** How far a loop on the outside, or a tie on the inside, keeps the cloth off what it is drawn up to, mm. From memory. */
const LOOP_OFF = 12;

export function tiesOf(sewn: GownHung, kind: BustleFacts['kind'], points: BustleFacts['points']): Tie[] {
  const outside = kind === 'over' ? LOOP_OFF : -LOOP_OFF;
  return points
    .filter(({ lift }) => lift > 0)
    .flatMap((point) => {
      const columns =
        point.seam === undefined
          ? columnsOnGore(sewn, point, point.side)
          : columnsAt(sewn, point.seam, point.side);
      return columns.map((column) => ({ column, anchor: point.anchor, pickUp: point.pickUp, outside }));
    });
}

function columnsAt({ stations, closing }: GownHung, seam: string, side: Side | undefined): number[] {
  return stations.flatMap(({ name, side: own, column }, i) => {
    const again = closing === 'ring' && i === stations.length - 1;
    return name !== seam || (side !== undefined && own !== side) || again ? [] : [column];
  });
}

/** The nearest columns that a mesh of twice the stride has as well. */
function columnsOnGore({ gores, cloth }: GownHung, at: OnGore, side: Side | undefined): number[] {
  const all = columnsOf(cloth);
  const columns = gores
    .filter(({ name, side: own }) => name === at.gore && (side === undefined || own === side))
    .map(({ side: own, first, across }) => {
      const share = own === 'right' ? 1 - at.across : at.across;
      return (first + 2 * Math.round((across * share) / 2)) % all;
    });
  return [...new Set(columns)];
}
