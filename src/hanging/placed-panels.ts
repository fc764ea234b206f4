import type { GownDraft } from '../draft/draft-gown.ts';
import { runsRound } from '../gown/lines.ts';
import type { GorePleating } from './gore-folds.ts';
import { type Fineness, FOURS, panelOf, steady } from './gown-panels.ts';
import { pleatedPanel } from './pleated-panel.ts';
import type { Panel } from './sewn-cloth.ts';

/** A wedge let into the seam at a station, as far as hanging asks: from its point `from` down to the hem. mm. */
export interface GodetToHang {
  readonly station: number;
  readonly name: string;
  readonly from: number;
  readonly width: number;
}

/** A panel in its place round the skirt: a gore, or a godet, which takes no part of the sewn edge. */
export interface PlacedPanel {
  readonly panel: Panel;
  readonly first: number;
  /** The stations at its first and its last side edge: one for a godet. */
  readonly from: number;
  readonly to: number;
}

/** Gores and godets in their order from the centre front. On a mirrored gown a godet at a centre is there by its half. */
export function placedPanels(
  draft: GownDraft,
  godets: readonly GodetToHang[],
  down: number,
  columnEvery: number,
  pleating: readonly (GorePleating | undefined)[],
): PlacedPanel[] {
  const last = draft.gown.gores.length;
  const round = runsRound(draft.gown);
  const placed: PlacedPanel[] = [];
  const place = (panel: Panel, from: number, to: number): void => {
    const before = placed[placed.length - 1];
    placed.push({ panel, first: before === undefined ? 0 : before.first + before.panel.across, from, to });
  };
  for (let station = 0; station <= last; station++) {
    const godet = round && station === last ? undefined : godets.find((own) => own.station === station);
    if (godet !== undefined) {
      const half = round || (station > 0 && station < last) ? undefined : station === 0 ? 'after' : 'before';
      place(godetPanel(draft, godet, { down, columnEvery }, half), station, station);
    }
    if (station === last) break;
    const pleated = pleating[station];
    const panel =
      pleated === undefined
        ? panelOf(draft, station, { down, columnEvery })
        : pleatedPanel(draft, station, pleated, down);
    place(panel, station, station + 1);
  }
  return placed;
}

/**
 * A godet: a sector from its point down. Above the point it is as long as its seam and has no width, so that rows and
 * columns go on through it.
 */
function godetPanel(
  draft: GownDraft,
  { station, name, from, width }: GodetToHang,
  { down, columnEvery }: Fineness,
  half: 'before' | 'after' | undefined,
): Panel {
  const length = draft.lengths[station]!;
  const flare = width / (length - from);
  const across =
    FOURS * Math.max(1, Math.round((half === undefined ? width : width / 2) / columnEvery / FOURS));
  const flat = new Float64Array(2 * (across + 1) * (down + 1));
  for (let column = 0; column <= across; column++) {
    const part = column / across;
    const turn = flare * (half === undefined ? part - 0.5 : half === 'before' ? (part - 1) / 2 : part / 2);
    for (let row = 0; row <= down; row++) {
      const below = (length * row) / down - from;
      const at = 2 * (column * (down + 1) + row);
      flat[at] = steady(below > 0 ? below * Math.sin(turn) : 0);
      flat[at + 1] = steady(below > 0 ? below * Math.cos(turn) : below);
    }
  }
  return { name, across, strips: [{ first: 0, down, flat }] };
}
