import type { GownDraft } from '../draft/draft-gown.ts';
import { halves, runsRound } from '../gown/lines.ts';
import { shownWidths, topsOf, widthsOf } from './gown-panels.ts';
import type { PlacedPanel } from './placed-panels.ts';
import {
  columnsOf,
  flatApart,
  newCloth,
  type Panel,
  placeIndex,
  type SewnCloth,
  type Strip,
  stripOf,
} from './sewn-cloth.ts';
import type { EdgePlace, SewnEdge } from './sewn-edge.ts';
import type { SpacePoint } from './space-point.ts';

/** How the cloth is, beside its lines. */
export interface Drape {
  readonly bendingLength: number;
  readonly shearLength: number;
  /** By gore: pleated rather than gathered. */
  readonly pleated: readonly boolean[];
}

/** How far out from a place of the edge what she wears comes at a height, mm; negative where it is narrower. */
export type WornBeyond = (top: EdgePlace, height: number) => number;

/**
 * The panels sewn together, held at the edge and laid out to be let go; and where each column is sewn on, without folds.
 * @param partOfStation where each station lies along the edge, 0 to 1
 */
export function clothToHang(
  draft: GownDraft,
  placed: readonly PlacedPanel[],
  down: number,
  edge: SewnEdge,
  partOfStation: readonly number[],
  wornBeyond: WornBeyond,
  { bendingLength, shearLength, pleated }: Drape,
): { readonly cloth: SewnCloth; readonly edge: SpacePoint[] } {
  const panels = placed.map(({ panel }) => panel);
  const closing = runsRound(draft.gown) ? 'ring' : 'mirrored';
  const columns = columnsOf({ panels, closing });
  const cloth = newCloth(panels, down, closing, { bendingLength, shearLength });
  const waves = wavesOf(cloth, draft);
  const held: SpacePoint[] = [];
  const edgeLength = draft.gown.gores.reduce((sum, gore) => sum + gore.top, 0);
  for (const { panel, first, from, to } of placed) {
    const tops = topsOf(panel);
    const [start, end] = [partOfStation[from]!, partOfStation[to]!];
    for (let column = 0; column <= panel.across; column++) {
      const round = (first + column) % columns;
      const along = panel.folded?.along ?? tops;
      const part = from === to ? start : start + ((end - start) * along[column]!) / along[panel.across]!;
      const started = {
        panel,
        column,
        round,
        top: edge.placeAt(part),
        beside: (by: number) => edge.placeAt(part + by / edgeLength),
        wave: waves.at(first + column),
      };
      held[round] = [started.top.x, started.top.y, started.top.z];
      startColumn(cloth, started, { widths: waves.widths, wornBeyond }, draft);
    }
    if (from !== to && panel.folded === undefined)
      gather(cloth, draft, panel, first, from, pleated[from] ?? false);
    for (const strip of panel.strips.slice(1))
      gatherStrip(cloth, { first, across: panel.across }, strip, fullnessOf(panel, strip));
  }
  return { cloth, edge: held };
}

/** How cloth that is wider than the cone that it starts on is laid in waves. */
interface Waves {
  /** By row: cloth all round, mm. */
  readonly widths: readonly number[];
  /** At a column: −1 in the hollow of a wave to 1 on its crest, and how long a wave is at the hem, mm. */
  readonly at: (column: number) => { readonly rise: number; readonly length: number };
}

/** Length of a wave for the fourth root of bending length³ · length: what hanging cloth folds by. From trials. */
const WAVE = 4;

/** Whole waves all round, alike on both halves: it is from these that the cloth finds its own folds. */
function wavesOf(cloth: SewnCloth, draft: GownDraft): Waves {
  const copies = halves(draft.gown);
  const hems = cloth.panels.flatMap((panel) => shownWidths(panel, cloth.down));
  const passed = [0];
  for (const hem of hems) passed.push(passed[passed.length - 1]! + hem);
  const own = passed[passed.length - 1]!;
  const { bendingLength: bend } = cloth;
  const wanted = WAVE * Math.sqrt(Math.sqrt(bend * bend * bend * Math.max(...draft.lengths)));
  const count = Math.max(2, Math.round((copies * own) / wanted));
  return {
    widths: Array.from({ length: cloth.down + 1 }, (_, row) =>
      cloth.panels.reduce(
        (sum, panel) => sum + copies * shownWidths(panel, row).reduce((all, width) => all + width, 0),
        0,
      ),
    ),
    at: (column) => {
      const along = (passed[column]! / own) * (count / copies);
      const off = along - Math.floor(along) - 0.5;
      // A crest at the first column; parabolas, which every machine computes alike.
      return {
        rise:
          Math.abs(off) < 0.25 ? 16 * off * off - 1 : 1 - 16 * (0.5 - Math.abs(off)) * (0.5 - Math.abs(off)),
        length: (copies * own) / count,
      };
    },
  };
}

/**
 * Widest slope that cloth starts at, as change of radius for each mm of cloth, unless what she wears is wider: what is
 * fuller starts in waves that are alike all round, and falls from them into its own folds.
 */
const WIDEST_SLOPE = 0.35;
/** Over a shelf it goes out no steeper than this. */
const STEEPEST = 0.95;
/** How far it starts off what she wears, mm. */
const LIES_OFF = 4;

/** One column of a panel, where it hangs from, and where on a wave it lies. */
interface Started {
  readonly panel: Panel;
  readonly column: number;
  /** Among all columns round. */
  readonly round: number;
  readonly top: EdgePlace;
  /** The edge's place so far beside it, mm. */
  readonly beside: (by: number) => EdgePlace;
  readonly wave: { readonly rise: number; readonly length: number };
}

/** One column before it is let go: down the cone that its cloth makes, in waves where that is too narrow, and out along the floor. */
function startColumn(
  cloth: SewnCloth,
  { panel, column, round, top, beside, wave }: Started,
  { widths, wornBeyond }: { readonly widths: Waves['widths']; readonly wornBeyond: WornBeyond },
  draft: GownDraft,
): void {
  const rows = cloth.down + 1;
  const waist = halves(draft.gown) * draft.gown.gores.reduce((sum, gore) => sum + gore.top, 0);
  let [out, z] = [0, top.z];
  for (let row = 0; row < rows; row++) {
    const own = placeIndex(cloth, round, row);
    if (row > 0) {
      const length = flatApart(stripOf(panel, row), column, row - 1, column, row);
      const flare = (widths[row]! - widths[row - 1]!) / (2 * Math.PI * length);
      const least = wornBeyond(top, z - length) + LIES_OFF - out;
      const slope = Math.min(STEEPEST, Math.max(Math.min(WIDEST_SLOPE, flare), least / length, 0));
      const fall = length * Math.sqrt(1 - slope * slope);
      const above = Math.max(0, z - ON_FLOOR);
      if (above >= fall) [z, out] = [z - fall, out + slope * length];
      else [z, out] = [Math.min(z, ON_FLOOR), out + Math.sqrt(Math.max(0, length * length - above * above))];
    } else {
      cloth.held[own] = 1;
    }
    const circle = waist + 2 * Math.PI * out;
    const excess = Math.sqrt(Math.max(0, widths[row]! / circle - 1));
    const height = row === 0 ? 0 : Math.min(0.3, excess / Math.PI) * wave.length * (wave.rise + 1);
    const { aside, lifted } = foldedAt(panel, column, row);
    const turned = panel.folded?.widens === true ? aside : (aside * widths[0]!) / widths[row]!;
    const at = aside === 0 ? top : beside(turned);
    const radius = out + height + lifted;
    cloth.lifted[own] = lifted;
    cloth.start[3 * own] = at.x + at.outX * radius;
    cloth.start[3 * own + 1] = at.y + at.outY * radius;
    cloth.start[3 * own + 2] = z;
  }
}

/** Room that a ply of cloth takes, with the air in it, mm. */
const PLY = 3;
/** Sewn flat into the edge they take no room there, and all of it so many rows below it. */
const FLAT_ROWS = 4;

/** How far beside its line, and how far off what is under it, cloth of a pleat lies. */
function foldedAt({ folded }: Panel, column: number, row: number): { aside: number; lifted: number } {
  if (folded === undefined || row < folded.from[column]!) return { aside: 0, lifted: 0 };
  const thick = Math.min(1, row / FLAT_ROWS);
  return { aside: folded.aside[column]!, lifted: PLY * folded.plies[column]! * thick };
}

/** How high above the floor cloth is laid at first, mm. */
const ON_FLOOR = 1;

/** How far below the edge gathers have opened out, for one more of cloth over the edge, mm. From memory. */
const GATHERS_OPEN = 60;

function gather(
  cloth: SewnCloth,
  draft: GownDraft,
  panel: Panel,
  first: number,
  gore: number,
  pleated: boolean,
): void {
  const fullness = topsOf(panel)[panel.across]! / draft.gown.gores[gore]!.top;
  gatherColumns(cloth, { first, across: panel.across }, fullness, pleated);
}

/** Gathers a panel's top, the first strip's; pleats stay closed all the way down. */
export function gatherColumns(
  cloth: SewnCloth,
  { first, across }: { readonly first: number; readonly across: number },
  fullness: number,
  pleated = false,
): void {
  if (fullness < 1.02) return;
  const least = 1 / (fullness * 1.02);
  const open = GATHERS_OPEN * (fullness - 1);
  const strip = cloth.panels[0]!.strips[0]!;
  const spacing = flatApart(strip, 0, 0, 0, 1);
  for (let column = first; column < first + across; column++) {
    for (let row = 0; row <= strip.down; row++) {
      const part = pleated ? 0 : Math.min(1, (row * spacing) / open);
      cloth.gathered[placeIndex(cloth, column, row)] = least + (1 - least) * part;
    }
  }
}

/** How many times wider a strip is at its top than what it is sewn to. */
function fullnessOf(panel: Panel, strip: Strip): number {
  const round = (widths: readonly number[]): number => widths.reduce((sum, width) => sum + width, 0);
  return round(widthsOf(panel, strip.first, strip)) / round(widthsOf(panel, strip.first));
}

/** Gathers a strip along its top: there so narrow, opening out below. */
export function gatherStrip(
  cloth: SewnCloth,
  { first, across }: { readonly first: number; readonly across: number },
  strip: Strip,
  fullness: number,
): void {
  if (fullness < 1.02) return;
  const least = 1 / (fullness * 1.02);
  const spacing = flatApart(strip, 0, strip.first, 0, strip.first + 1);
  for (let column = first; column < first + across; column++) {
    for (let row = strip.first === 0 ? 0 : 1; row <= strip.down; row++) {
      const part = Math.min(1, (row * spacing) / (GATHERS_OPEN * (fullness - 1)));
      cloth.gathered[placeIndex(cloth, column, strip.first + row)] = least + (1 - least) * part;
    }
  }
}
