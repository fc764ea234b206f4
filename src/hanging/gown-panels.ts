import type { GownDraft } from '../draft/draft-gown.ts';
import { integrateAlong } from '../draft/edge-profiles.ts';
import { flatApart, type Panel, type Strip, stripOf } from './sewn-cloth.ts';

/** Width of cloth between two columns at the hem, and length between two rows, about, mm. Smaller shows finer folds. */
export const FINEST = 36;
/** Rows and columns come in fours, so that the start can be twice as coarse, twice. */
export const FOURS = 4;

/** Rows below the top one, and cloth between two columns at the skirt's hem, about, mm. */
export interface Fineness {
  readonly down: number;
  readonly columnEvery: number;
}

/** A gore, its columns at even parts of its width and its rows at even parts of its length. */
export function panelOf(draft: GownDraft, gore: number, { down, columnEvery }: Fineness): Panel {
  const { waist, hem } = draft;
  const frame = draft.frames[gore]!;
  const [hemFrom, hemTo] = [hem.ways[gore]!, hem.ways[gore + 1]!];
  const across = FOURS * Math.max(1, Math.round((hemTo - hemFrom) / columnEvery / FOURS));
  const flat = new Float64Array(2 * (across + 1) * (down + 1));
  const shares = Array.from({ length: across + 1 }, (_, column) => column / across);
  const topAt = depthsAcross(draft, gore, waist, shares);
  const bottomAt = depthsAcross(draft, gore, hem, shares);
  for (let column = 0; column <= across; column++) {
    for (let row = 0; row <= down; row++) {
      const slant = topAt[column]! + ((bottomAt[column]! - topAt[column]!) * row) / down;
      const { x, y } = frame.pointAt(slant, column / across);
      const at = 2 * (column * (down + 1) + row);
      flat[at] = steady(x);
      flat[at + 1] = steady(y);
    }
  }
  return { name: draft.gown.gores[gore]!.name, across, strips: [{ first: 0, down, flat }] };
}

/** Rounds to 1/4096 mm: what a machine's own sines may differ by is gone before any fold can make it larger. */
export function steady(mm: number): number {
  return Math.round(mm * 4096) / 4096;
}

/** An edge's depth below the level waist at shares of the gore's width, in their order from its first side edge. */
export function depthsAcross(
  draft: GownDraft,
  gore: number,
  profile: GownDraft['hem'],
  shares: readonly number[],
): number[] {
  const frame = draft.frames[gore]!;
  const [from, to] = [profile.ways[gore]!, profile.ways[gore + 1]!];
  const samples = 4 * (shares.length - 1);
  const passed = [0];
  for (let i = 1; i <= samples; i++) {
    const [a, b] = [from + ((to - from) * (i - 1)) / samples, from + ((to - from) * i) / samples];
    passed.push(
      passed[i - 1]! + integrateAlong(profile, (way) => 1 / frame.widthAt(profile.valueAt(way)), a, b),
    );
  }
  const whole = passed[samples]!;
  return shares.map((own) => {
    const wanted = whole * own;
    const next = Math.max(
      1,
      passed.findIndex((past) => past >= wanted - 1e-12),
    );
    const share = (wanted - passed[next - 1]!) / (passed[next]! - passed[next - 1]!);
    return profile.valueAt(from + ((to - from) * (next - 1 + share)) / samples);
  });
}

/** Width of cloth between a panel's columns along one row, mm; of the lower one's cloth along a seam where asked. */
export function widthsOf(panel: Panel, row: number, strip = stripOf(panel, row)): number[] {
  return Array.from({ length: panel.across }, (_, column) => flatApart(strip, column, row, column + 1, row));
}

/** The same without what lies in the folds of pleats. */
export function shownWidths(panel: Panel, row: number): number[] {
  const { shows } = panel.folded ?? {};
  return widthsOf(panel, row).map((width, column) => (shows?.[column] === false ? 0 : width));
}

/** Along a panel's top from its first side edge to each column, mm. */
export function topsOf(panel: Panel): number[] {
  const tops = [0];
  for (const width of widthsOf(panel, 0)) tops.push(tops[tops.length - 1]! + width);
  return tops;
}

/** A flounce sewn to the hem. mm. */
export interface FlounceToHang {
  readonly depth: number;
  /** Circular: outer edge for one of the inner. Straight: cloth for one of the hem. */
  readonly fullness: number;
  readonly kind: 'straight' | 'circular';
}

/** Rows of a flounce: in fours, as the skirt's. */
export function flounceRows({ depth }: FlounceToHang, every: number = FINEST): number {
  return FOURS * Math.max(1, Math.round(depth / every / FOURS));
}

/** A panel with its share of the flounce below it. */
export function withFlounce(panel: Panel, flounce: FlounceToHang, first: number): Panel {
  const hem = widthsOf(panel, first).reduce((sum, width) => sum + width, 0);
  return {
    ...panel,
    strips: [
      ...panel.strips,
      flounceStrip(hem, flounce, { across: panel.across, down: flounceRows(flounce) }, first),
    ],
  };
}

/** Flounce for so much of an edge: a sector of a ring from there, or a straight strip to be gathered. */
export function flounceStrip(
  edge: number,
  flounce: FlounceToHang,
  { across, down }: { readonly across: number; readonly down: number },
  first: number,
): Strip {
  const { depth, fullness, kind } = flounce;
  const angle = kind === 'circular' ? (edge * (fullness - 1)) / depth : 0;
  const flat = new Float64Array(2 * (across + 1) * (down + 1));
  for (let column = 0; column <= across; column++) {
    const part = column / across - 0.5;
    for (let row = 0; row <= down; row++) {
      const at = 2 * (column * (down + 1) + row);
      const below = (depth * row) / down;
      const radius = angle > 0 ? edge / angle + below : 0;
      flat[at] = steady(angle > 0 ? radius * Math.sin(angle * part) : edge * fullness * part);
      flat[at + 1] = steady(angle > 0 ? radius * Math.cos(angle * part) : below);
    }
  }
  return { first, down, flat };
}
