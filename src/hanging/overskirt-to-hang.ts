import type { GownDraft } from '../draft/draft-gown.ts';
import { FINEST, FOURS, panelOf, topsOf, widthsOf } from './gown-panels.ts';
import { alongLine } from './hung-parts.ts';
import type { ClothOver } from './part-to-hang.ts';
import { columnsOf, flatApart, newCloth, type Panel, placeIndex, type SewnCloth } from './sewn-cloth.ts';
import { type SpacePoint, spaceApart } from './space-point.ts';
import { gatherColumns } from './start-of-cloth.ts';

/** An overskirt, and the part of the gown's edge that it is sewn or fastened to. */
export interface OverskirtOnEdge {
  readonly name: string;
  readonly draft: GownDraft;
  readonly edge: readonly SpacePoint[];
  /** Its ends lie at the gown's centres: they meet there with those of her other side. */
  readonly meets: { readonly front: boolean; readonly back: boolean };
  /** Her other side has one too. */
  readonly image: boolean;
}

/** An overskirt's gores sewn together, held at the gown's edge; of two halves that meet at a centre one, and its image. */
export function overskirtToHang(
  { name, draft, edge, meets, image }: OverskirtOnEdge,
  facts: Pick<SewnCloth, 'bendingLength' | 'shearLength'>,
): ClothOver {
  const down = FOURS * Math.max(2, Math.round(Math.max(...draft.lengths) / FINEST / FOURS));
  const own = draft.gown.gores.map((gore, i) => ({
    panel: panelOf(draft, i, { down, columnEvery: FINEST }),
    top: gore.top,
  }));
  const isWhole = image && meets.front && !meets.back;
  const other = [...own].reverse().map(({ panel, top }) => ({ panel: turned(panel), top }));
  const run = isWhole ? [...other, ...own] : own;
  const closing = image && meets.back ? (meets.front ? 'mirrored' : 'half') : 'open';
  const panels = run.map(({ panel }) => panel);
  const cloth = newCloth(panels, down, closing, facts);
  const line = isWhole ? [...imageOf(edge), ...edge.slice(1)] : edge;
  const passed = [0];
  for (let i = 1; i < line.length; i++) passed.push(passed[i - 1]! + spaceApart(line[i - 1]!, line[i]!));
  const length = passed[passed.length - 1]!;
  const tops = run.reduce((sum, { top }) => sum + top, 0);
  const waves = wavesOf(panels, down, line, length);
  let [first, before] = [0, 0];
  for (const { panel, top } of run) {
    const widths = topsOf(panel);
    for (let column = 0; column <= panel.across; column++) {
      const along = before + (top * widths[column]!) / widths[panel.across]!;
      const held = alongLine(line, passed, (along / tops) * length);
      if (first + column < columnsOf(cloth)) startColumn(cloth, panel, column, first + column, held, waves);
    }
    gatherColumns(cloth, { first, across: panel.across }, widths[panel.across]! / top);
    first += panel.across;
    before += top;
  }
  const bothSides = image && closing === 'open' && !isWhole;
  return { is: 'cloth', name, cloth, image: bothSides, seams: seamsBetween(panels) };
}

/** How far out an overskirt starts, for each mm that it falls. */
const LEANS = 0.2;
/** Columns of a wave that it starts in. */
const WAVE = 8;

/** By row and column: how far out the wave that it starts in stands, where its cloth is wider than what it lies over. */
function wavesOf(
  panels: readonly Panel[],
  down: number,
  line: readonly SpacePoint[],
  length: number,
): (row: number, column: number, out: number) => number {
  const columns = panels.reduce((sum, { across }) => sum + across, 0);
  const cloth = Array.from({ length: down + 1 }, (_, row) =>
    panels.reduce((sum, panel) => sum + widthsOf(panel, row).reduce((all, width) => all + width, 0), 0),
  );
  const away = line.reduce((sum, [x, y]) => sum + Math.sqrt(x * x + y * y), 0) / line.length;
  return (row, column, out) => {
    if (row === 0) return 0;
    const excess = Math.sqrt(Math.max(0, cloth[row]! / ((length * (away + out)) / away) - 1));
    const along = column / WAVE;
    const off = along - Math.floor(along) - 0.5;
    // Parabolas, which every machine computes alike.
    const rise =
      Math.abs(off) < 0.25 ? 16 * off * off - 1 : 1 - 16 * (0.5 - Math.abs(off)) * (0.5 - Math.abs(off));
    return Math.min(0.3, excess / Math.PI) * ((WAVE * cloth[row]!) / columns) * (1 + rise);
  };
}

function seamsBetween(panels: readonly Panel[]): number[] {
  let first = 0;
  return panels.slice(0, -1).map(({ across }) => (first += across));
}

/** The panel of her other side, its columns in their order round her. */
function turned(panel: Panel): Panel {
  const strips = panel.strips.map((strip) => {
    const flat = new Float64Array(strip.flat.length);
    const rows = 2 * (strip.down + 1);
    for (let column = 0; column <= panel.across; column++) {
      const from = (panel.across - column) * rows;
      for (let k = 0; k < rows; k++) flat[column * rows + k] = (k % 2 === 0 ? -1 : 1) * strip.flat[from + k]!;
    }
    return { ...strip, flat };
  });
  return { ...panel, strips };
}

function imageOf(edge: readonly SpacePoint[]): SpacePoint[] {
  return [...edge].reverse().map(([x, y, z]): SpacePoint => [-x, y, z]);
}

/** Lying where it begins on the floor, mm. */
const ON_FLOOR = 2;

function startColumn(
  cloth: SewnCloth,
  panel: Panel,
  column: number,
  round: number,
  held: SpacePoint,
  waves: ReturnType<typeof wavesOf>,
): void {
  const [x, y] = held;
  const away = Math.sqrt(x * x + y * y);
  let [out, lain, z] = [0, 0, held[2]];
  const trails = trailing(x, y);
  for (let row = 0; row <= cloth.down; row++) {
    if (row > 0) {
      const length = flatApart(panel.strips[0]!, column, row - 1, column, row);
      const fall = length * Math.sqrt(1 - LEANS * LEANS);
      const above = Math.max(0, z - ON_FLOOR);
      if (above >= fall) [z, out] = [z - fall, out + LEANS * length];
      else
        [z, lain] = [Math.min(z, ON_FLOOR), lain + Math.sqrt(Math.max(0, length * length - above * above))];
    }
    const wave = waves(row, round, out) * (lain > 0 ? WAVE_LYING : 1);
    const share = away > 0 ? (away + out + wave) / away : 1;
    cloth.start.set(
      [x * share + lain * trails[0], y * share + lain * trails[1], z],
      3 * placeIndex(cloth, round, row),
    );
  }
  cloth.held[placeIndex(cloth, round, 0)] = 1;
}

/** What lies on the floor is spread out flatter than what hangs. */
const WAVE_LYING = 0.3;

/** Which way cloth trails on the floor behind her from under a place: half out from her, half back. */
function trailing(x: number, y: number): readonly [number, number] {
  const away = Math.sqrt(x * x + y * y);
  const [dx, dy] = away > 0 ? [x / away, y / away + 1] : [0, 1];
  const length = Math.sqrt(dx * dx + dy * dy);
  return length > 0.1 ? [dx / length, dy / length] : [0, 1];
}
