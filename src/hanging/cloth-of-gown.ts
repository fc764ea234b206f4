import type { GownDraft } from '../draft/draft-gown.ts';
import { integrateAlong } from '../draft/edge-profiles.ts';
import { halves, runsRound } from '../gown/lines.ts';
import { petticoatProfile } from '../gown/petticoat-profile.ts';
import type { Petticoat } from '../gown/sections.ts';
import type { Station } from '../gown/station.ts';
import { bodyOf, figureInPetticoat, figureOf } from './figure.ts';
import { type Body, type Closing, columnsOf, type Panel, placeIndex, type SewnCloth } from './sewn-cloth.ts';
import { type EdgePlace, type SewnEdge, sewnEdge } from './sewn-edge.ts';

/** What is asked of a drafted gown to hang it. mm. */
export interface GownToHang {
  readonly draft: GownDraft;
  readonly petticoat?: Petticoat;
  readonly waist: number;
  readonly hip?: number;
  /** By station: from the sewn edge to the floor, along the cloth; undefined where nobody knows. */
  readonly floors: readonly (number | undefined)[];
  readonly heel: number;
  readonly bendingLength: number;
  readonly shearLength: number;
  /** By gore: pleated rather than gathered. */
  readonly pleated: readonly boolean[];
}

export interface GownHung {
  readonly cloth: SewnCloth;
  readonly body: Body;
  readonly closing: Closing;
  /** The last of a ring is the first again. */
  readonly stations: readonly HungStation[];
  /** Every seam once for each side that it lies on, as columns all the way round. */
  readonly seams: readonly HungSeam[];
  readonly waistHeight: number;
  /** Nobody measured how high the waist lies above the floor. */
  readonly assumedFloor: boolean;
}

export interface HungStation extends Pick<Station, 'name' | 'side'> {
  readonly column: number;
}

export interface HungSeam {
  /** The station that it stands at. */
  readonly station: number;
  readonly column: number;
}

/** Width of cloth between two columns at the hem, and length between two rows, about, mm. Smaller shows finer folds. */
const FINEST = 32;
/** Rows and columns come in fours, so that the start can be twice as coarse, twice. */
const FOURS = 4;

/** Two plies bend at least twice as hard as one, and eight times where they are one (Bernoulli); a hem lies between. */
const HEM_STIFFNESS = 4;

/** Height of the level waist above the floor where nobody measured it, in bare feet: 168 tall (from memory). */
const USUAL_WAIST_HEIGHT = 1040;

export function clothOfGown(gown: GownToHang): GownHung {
  const { draft, petticoat, waist } = gown;
  const heights = stationHeights(gown);
  const waistHeight = heights.reduce((sum, height) => sum + height, 0) / heights.length;
  const profile = petticoatProfile(petticoat, waist, { height: waistHeight });
  const own = figureOf(waist, gown.hip, waistHeight);
  const figure =
    petticoat === undefined ? own : figureInPetticoat(own, petticoat, profile, waist, waistHeight);

  const half = !runsRound(draft.gown);
  const tops = draft.gown.gores.map(({ top }) => top);
  const length = tops.reduce((sum, top) => sum + top, 0);
  const partOfStation = [0];
  for (const top of tops) partOfStation.push(partOfStation[partOfStation.length - 1]! + top / length);
  const edge = sewnEdge(
    figure,
    (part) => {
      const gore = goreAt(partOfStation, part);
      const across = (part - partOfStation[gore]!) / (partOfStation[gore + 1]! - partOfStation[gore]!);
      const way = draft.waist.ways[gore]! + across * (draft.waist.ways[gore + 1]! - draft.waist.ways[gore]!);
      const level = heights[gore]! + (heights[gore + 1]! - heights[gore]!) * across;
      return level - profile.heightAt(draft.waist.valueAt(way));
    },
    length,
    half,
  );
  const cloth = sewn(gown, edge, partOfStation);
  const columns = [0];
  for (const { across } of cloth.panels) columns.push(columns[columns.length - 1]! + across);
  return {
    cloth,
    body: bodyOf(figure, waistHeight, (height) => {
      const below = waistHeight - height;
      const room = girthAt(draft, profile.slantAt(Math.max(0, below))) * ROOM;
      return Math.min(easedIn(edge.closeness, below), room / figure.girthAt(height));
    }),
    closing: cloth.closing,
    stations: draft.gown.stations.map(({ name, side }, i) => ({
      name,
      ...(side && { side }),
      column: columns[i]!,
    })),
    seams: seamsOf(cloth, columns),
    waistHeight,
    assumedFloor: gown.floors.every((floor) => floor === undefined),
  };
}

function seamsOf(cloth: SewnCloth, stations: readonly number[]): HungSeam[] {
  const last = stations.length - 1;
  const all = cloth.closing === 'ring' ? stations[last]! : 2 * stations[last]!;
  return stations.flatMap((column, station): HungSeam[] => {
    if (cloth.closing === 'ring') return station === last ? [] : [{ station, column }];
    if (column === 0 || station === last) return [{ station, column }];
    return [
      { station, column },
      { station, column: all - column },
    ];
  });
}

/** Part of the cloth's girth that she fills at most: a skirt that is too tight is shown as if it went on. */
const ROOM = 0.985;

/** Cloth all round at a slant distance below the level waist, mm. */
function girthAt({ frames, gown, hem, waist }: GownDraft, slant: number): number {
  const bottom = Math.max(...hem.ways.map((way) => hem.valueAt(way)));
  const top = Math.min(...waist.ways.map((way) => waist.valueAt(way)));
  const at = Math.min(bottom, Math.max(top, slant));
  return halves(gown) * frames.reduce((sum, frame) => sum + Math.max(0, frame.widthAt(at)), 0);
}

/** How far below the waist she is again as she is, mm. */
const EASED_BELOW = 200;

function easedIn(closeness: number, below: number): number {
  if (closeness >= 1) return 1;
  return closeness + (1 - closeness) * Math.min(1, Math.max(0, below / EASED_BELOW));
}

/** How far a waist leans from front to back or side to side, mm. From memory. */
const LEVEL_WITHIN = 30;

/** How high the level waist lies at each station: she does not stand level. */
function stationHeights({ draft, petticoat, waist, floors, heel }: GownToHang): number[] {
  const known = draft.gown.stations.map(({ drop }, i) => {
    const floor = floors[i];
    if (floor === undefined) return undefined;
    return petticoatProfile(petticoat, waist, { slant: drop + floor }).heightAt(drop + floor);
  });
  const highest = Math.max(...known.map((height) => height ?? 0));
  return known.map((height, i) => {
    // A station far lower is no floor but a hem set by hand.
    if (height !== undefined) return Math.max(height, highest - LEVEL_WITHIN);
    const nearest = known
      .map((other, k) => ({ other, apart: Math.abs(k - i) }))
      .filter(({ other }) => other !== undefined)
      .sort((a, b) => a.apart - b.apart)[0];
    return nearest?.other !== undefined
      ? Math.max(nearest.other, highest - LEVEL_WITHIN)
      : USUAL_WAIST_HEIGHT + heel;
  });
}

function goreAt(partOfStation: readonly number[], part: number): number {
  const next = partOfStation.findIndex((own) => own > part);
  return next < 0 ? partOfStation.length - 2 : Math.max(0, next - 1);
}

function sewn(gown: GownToHang, edge: SewnEdge, partOfStation: readonly number[]): SewnCloth {
  const { draft } = gown;
  const longest = Math.max(...draft.lengths);
  const down = FOURS * Math.max(2, Math.round(longest / FINEST / FOURS));
  const panels = draft.frames.map((_, gore) => panelOf(draft, gore, down));
  const cloth: SewnCloth = {
    panels,
    down,
    closing: runsRound(draft.gown) ? 'ring' : 'mirrored',
    held: new Uint8Array(0),
    start: new Float64Array(0),
    gathered: new Float64Array(0),
    bendingLength: gown.bendingLength,
    hemStiffness: HEM_STIFFNESS,
    shearLength: gown.shearLength,
  };
  const columns = columnsOf(cloth);
  const count = columns * (down + 1);
  const [held, start, gathered] = [
    new Uint8Array(count),
    new Float64Array(3 * count),
    new Float64Array(count).fill(1),
  ];
  const placed: SewnCloth = { ...cloth, held, start, gathered };
  const waves = wavesOf(placed, draft);
  let first = 0;
  for (const [gore, panel] of panels.entries()) {
    const tops = topsOf(panel, down);
    for (let column = 0; column <= panel.across; column++) {
      const round = (first + column) % columns;
      const [from, to] = [partOfStation[gore]!, partOfStation[gore + 1]!];
      const top = edge.placeAt(from + ((to - from) * tops[column]!) / tops[panel.across]!);
      startColumn(placed, { panel, column, round, top, wave: waves.at(first + column) }, waves.widths, draft);
    }
    gather(placed, gown, gore, first);
    first += panel.across;
  }
  return placed;
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
  const hems = cloth.panels.flatMap((panel) => widthsOf(panel, cloth.down, cloth.down));
  const passed = [0];
  for (const hem of hems) passed.push(passed[passed.length - 1]! + hem);
  const own = passed[passed.length - 1]!;
  const { bendingLength: bend } = cloth;
  const wanted = WAVE * Math.sqrt(Math.sqrt(bend * bend * bend * Math.max(...draft.lengths)));
  const count = Math.max(2, Math.round((copies * own) / wanted));
  return {
    widths: Array.from({ length: cloth.down + 1 }, (_, row) =>
      cloth.panels.reduce(
        (sum, panel) =>
          sum + copies * widthsOf(panel, cloth.down, row).reduce((all, width) => all + width, 0),
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

/** Width of cloth between a panel's columns along one row, mm. */
function widthsOf({ across, flat }: Panel, down: number, row: number): number[] {
  return Array.from({ length: across }, (_, column) => {
    const [a, b] = [2 * (column * (down + 1) + row), 2 * ((column + 1) * (down + 1) + row)];
    const [dx, dy] = [flat[b]! - flat[a]!, flat[b + 1]! - flat[a + 1]!];
    return Math.sqrt(dx * dx + dy * dy);
  });
}

function panelOf(draft: GownDraft, gore: number, down: number): Panel {
  const { waist, hem } = draft;
  const frame = draft.frames[gore]!;
  const [hemFrom, hemTo] = [hem.ways[gore]!, hem.ways[gore + 1]!];
  const across = FOURS * Math.max(1, Math.round((hemTo - hemFrom) / FINEST / FOURS));
  const flat = new Float64Array(2 * (across + 1) * (down + 1));
  const topAt = depthAcross(draft, gore, waist, across);
  const bottomAt = depthAcross(draft, gore, hem, across);
  for (let column = 0; column <= across; column++) {
    for (let row = 0; row <= down; row++) {
      const slant = topAt[column]! + ((bottomAt[column]! - topAt[column]!) * row) / down;
      const { x, y } = frame.pointAt(slant, column / across);
      const at = 2 * (column * (down + 1) + row);
      flat[at] = steady(x);
      flat[at + 1] = steady(y);
    }
  }
  return { name: draft.gown.gores[gore]!.name, across, flat };
}

/** Rounds to 1/4096 mm: what a machine's own sines may differ by is gone before any fold can make it larger. */
function steady(mm: number): number {
  return Math.round(mm * 4096) / 4096;
}

/** An edge's depth below the level waist at each column, which stands at an even part of the gore's width. */
function depthAcross(draft: GownDraft, gore: number, profile: GownDraft['hem'], across: number): number[] {
  const frame = draft.frames[gore]!;
  const [from, to] = [profile.ways[gore]!, profile.ways[gore + 1]!];
  const SAMPLES = 4 * across;
  const passed = [0];
  for (let i = 1; i <= SAMPLES; i++) {
    const [a, b] = [from + ((to - from) * (i - 1)) / SAMPLES, from + ((to - from) * i) / SAMPLES];
    passed.push(
      passed[i - 1]! + integrateAlong(profile, (way) => 1 / frame.widthAt(profile.valueAt(way)), a, b),
    );
  }
  const whole = passed[SAMPLES]!;
  return Array.from({ length: across + 1 }, (_, column) => {
    const wanted = (whole * column) / across;
    const next = Math.max(
      1,
      passed.findIndex((own) => own >= wanted - 1e-12),
    );
    const share = (wanted - passed[next - 1]!) / (passed[next]! - passed[next - 1]!);
    return profile.valueAt(from + ((to - from) * (next - 1 + share)) / SAMPLES);
  });
}

/** Steepest slope that cloth starts at, as change of radius for each mm of cloth: fuller cloth is left to fold. */
const WIDEST_SLOPE = 0.5;

/** One column of a panel, where it hangs from, and where on a wave it lies. */
interface Started {
  readonly panel: Panel;
  readonly column: number;
  /** Among all columns round. */
  readonly round: number;
  readonly top: EdgePlace;
  readonly wave: { readonly rise: number; readonly length: number };
}

/** One column before it is let go: down the cone that its cloth makes, in waves where that is too narrow, and out along the floor. */
function startColumn(
  cloth: SewnCloth,
  { panel, column, round, top, wave }: Started,
  widths: readonly number[],
  draft: GownDraft,
): void {
  const rows = cloth.down + 1;
  const flatAt = (row: number, axis: number): number => panel.flat[2 * (column * rows + row) + axis]!;
  const waist = halves(draft.gown) * draft.gown.gores.reduce((sum, gore) => sum + gore.top, 0);
  let [out, z] = [0, top.z];
  for (let row = 0; row < rows; row++) {
    const own = placeIndex(cloth, round, row);
    if (row > 0) {
      const [dx, dy] = [flatAt(row, 0) - flatAt(row - 1, 0), flatAt(row, 1) - flatAt(row - 1, 1)];
      const length = Math.sqrt(dx * dx + dy * dy);
      const flare = (widths[row]! - widths[row - 1]!) / (2 * Math.PI * length);
      const slope = Math.min(WIDEST_SLOPE, Math.max(0, flare));
      const fall = length * Math.sqrt(1 - slope * slope);
      const above = Math.max(0, z - ON_FLOOR);
      if (above >= fall) [z, out] = [z - fall, out + slope * length];
      else [z, out] = [Math.min(z, ON_FLOOR), out + Math.sqrt(Math.max(0, length * length - above * above))];
    } else {
      cloth.held[own] = 1;
    }
    const circle = waist + 2 * Math.PI * out;
    const excess = Math.sqrt(Math.max(0, widths[row]! / circle - 1));
    const height = row === 0 ? 0 : Math.min(0.3, excess / Math.PI) * wave.length * wave.rise;
    const radius = out + height;
    cloth.start[3 * own] = top.x + top.outX * radius;
    cloth.start[3 * own + 1] = top.y + top.outY * radius;
    cloth.start[3 * own + 2] = z;
  }
}

/** How high above the floor cloth is laid at first, mm. */
const ON_FLOOR = 1;

/** How far below the edge gathers have opened out, for one more of cloth over the edge, mm. From memory. */
const GATHERS_OPEN = 60;

function gather(cloth: SewnCloth, { draft, pleated }: GownToHang, gore: number, first: number): void {
  const panel = cloth.panels[gore]!;
  const ratio = topsOf(panel, cloth.down)[panel.across]! / draft.gown.gores[gore]!.top;
  if (ratio < 1.02) return;
  const least = 1 / (ratio * 1.02);
  const open = GATHERS_OPEN * (ratio - 1);
  const spacing = Math.max(...draft.lengths) / cloth.down;
  for (let column = first; column < first + panel.across; column++) {
    for (let row = 0; row <= cloth.down; row++) {
      const part = pleated[gore] ? 0 : Math.min(1, (row * spacing) / open);
      cloth.gathered[placeIndex(cloth, column, row)] = least + (1 - least) * part;
    }
  }
}

/** Along a panel's top from its first side edge to each column, mm. */
function topsOf(panel: Panel, down: number): number[] {
  const tops = [0];
  for (const width of widthsOf(panel, down, 0)) tops.push(tops[tops.length - 1]! + width);
  return tops;
}
