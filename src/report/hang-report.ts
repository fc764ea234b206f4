import type { HangFigures } from '../hanging/hang-figures.ts';
import type { HangTold, HungGown } from '../hanging/hung-gown.ts';
import { type BustleReport, bustlePointsReport } from './bustle-report.ts';

/** How the gown hangs, as `report.json` holds it: mm, to a tenth. Heights are off the floor, along the sewn hem. */
export interface HangReport {
  readonly layer: string;
  readonly bendingLength: number;
  readonly floor: 'measured' | 'assumed';
  readonly hem: readonly { readonly along: number; readonly offFloor: number; readonly near: string }[];
  /** Stretches of the hem that lie on the floor. */
  readonly touches: readonly { readonly from: number; readonly to: number }[];
  /** As it lies behind her heels, and how much of it at the centre back; null without one. */
  readonly train: { readonly behindHeel: number; readonly width: number; readonly onFloor: number } | null;
  /** Largest edge strain left, a fraction. */
  readonly stretch: number;
  readonly bustled:
    | (Pick<HangReport, 'hem' | 'touches' | 'stretch'> & {
        /** Points more that it wants where its hem lies on the floor, and whether it clears the floor with them. */
        readonly advised?: { readonly points: BustleReport['points']; readonly clears: boolean };
      })
    | null;
  /** Parts of the gown that are not hung with it. */
  readonly notHung: readonly string[];
}

export function hangReport({ layer, sewn, notHung }: HangTold, hung: HungGown): HangReport {
  const { train, lainBehind, assumedFloor } = hung.figures;
  return {
    layer,
    bendingLength: tenths(sewn.cloth.bendingLength),
    floor: assumedFloor ? 'assumed' : 'measured',
    ...hemOf(hung.figures),
    train:
      train === undefined
        ? null
        : {
            behindHeel: tenths(train.behindHeel),
            width: tenths(train.left - train.right),
            onFloor: tenths(lainBehind),
          },
    bustled: hung.bustled === undefined ? null : bustledOf(hung.bustled),
    notHung,
  };
}

function bustledOf({
  figures,
  advice,
}: NonNullable<HungGown['bustled']>): NonNullable<HangReport['bustled']> {
  return {
    ...hemOf(figures),
    ...(advice && { advised: { points: bustlePointsReport(advice.points), clears: advice.clears } }),
  };
}

function hemOf({ hem, touches, stretch }: HangFigures): Pick<HangReport, 'hem' | 'touches' | 'stretch'> {
  return {
    hem: hem.map(({ along, height, near }) => ({ along, offFloor: tenths(height), near: near.station })),
    touches,
    stretch: Math.round(stretch * 1e4) / 1e4,
  };
}

function tenths(mm: number): number {
  return Math.round(mm * 10) / 10;
}
