import { WAIST_AGREES } from '../geometry/tolerances.ts';
import type { BodiceFault, HalfPart, PanelWidth } from './bodice-fault.ts';
import { type BodiceMeasures, type BodicePanel, bodiceStations } from './bodice-measures.ts';
import type { SewnLevel } from './sewn-levels.ts';

/** Sewn widths of every panel of a half: `widths[panel][level]`, mm. */
export interface PanelWidths {
  readonly widths: readonly (readonly number[])[];
  readonly faults: readonly BodiceFault[];
}

/** Panels of one part of a half, and what they must make together. */
interface Part {
  readonly name: HalfPart;
  readonly from: number;
  readonly to: number;
  readonly wanted: number;
}

/**
 * How a half is shared among its panels. At the bust the seam next the front panel passes over the bust point and the
 * rest of each part is shared evenly; at other levels the difference from the bust is taken evenly by the edges that
 * are shaped. What a panel's own `widths` say takes the place of any of it, and then all must add up.
 */
export function panelWidths(measures: BodiceMeasures, levels: readonly SewnLevel[]): PanelWidths {
  const { panels } = measures;
  const faults: BodiceFault[] = [];
  const first = levelSharedFirst(levels);
  const settle = (level: SewnLevel, byRule: readonly number[]): number[] => {
    const said = panels.map(({ widths }) => widths[level.at]);
    const own = said.map((width, i) => width ?? byRule[i]!);
    return partsOf(measures, level).flatMap((part) => {
      const rows = panels.slice(part.from, part.to).map(
        ({ name }, i): PanelWidth => ({
          panel: name,
          width: own[part.from + i]!,
          said: said[part.from + i] !== undefined,
        }),
      );
      const miss = part.wanted - rows.reduce((sum, { width }) => sum + width, 0);
      if (Math.abs(miss) > WAIST_AGREES) {
        const index = panels.findIndex(({ widths }) => widths[level.at] !== undefined);
        faults.push({
          code: 'widths-do-not-add-up',
          place: ['bodice', 'draft', 'panels', index, 'widths', level.at],
          level: level.at,
          part: part.name,
          wanted: part.wanted,
          rows,
        });
      }
      return madeUp(rows, miss);
    });
  };
  const start = settle(first, sharedEvenly(measures, first, faults));
  const byLevel = levels.map((level) =>
    level === first ? start : settle(level, takenByEdges(measures, level, start)),
  );
  for (const [l, level] of levels.entries())
    for (const [p, { name }] of panels.entries()) {
      const width = byLevel[l]![p]!;
      if (!(width > 0))
        faults.push({
          code: 'panel-without-width',
          place: ['bodice', 'draft', 'panels', p],
          level: level.at,
          panel: name,
          width,
        });
    }
  return { widths: panels.map((_, p) => byLevel.map((own) => own[p]!)), faults };
}

/** The bust; on a body without one, the widest level. */
function levelSharedFirst(levels: readonly SewnLevel[]): SewnLevel {
  const bust = levels.find(({ at }) => at === 'bust');
  return bust ?? levels.reduce((widest, level) => (level.half > widest.half ? level : widest));
}

/** Front and back part where the body's front is known at this level, else the half as one. */
function partsOf({ panels, sideSeam }: BodiceMeasures, { half, front }: SewnLevel): Part[] {
  const side = sideSeam === undefined ? -1 : bodiceStations(panels).indexOf(sideSeam);
  if (front === undefined || side < 0) return [{ name: 'half', from: 0, to: panels.length, wanted: half }];
  return [
    { name: 'front-part', from: 0, to: side, wanted: front },
    { name: 'back-part', from: side, to: panels.length, wanted: half - front },
  ];
}

function sharedEvenly(measures: BodiceMeasures, level: SewnLevel, faults: BodiceFault[]): number[] {
  const { bustPointsApart } = measures;
  return partsOf(measures, level).flatMap(({ from, to, wanted }) => {
    const count = to - from;
    const overPoint = from === 0 && count > 1 && level.at === 'bust' ? bustPointsApart : undefined;
    if (overPoint === undefined) return new Array<number>(count).fill(wanted / count);
    const front = overPoint / 2 - openAtCentreFront(measures, level.at);
    if (!(front > 0 && front < wanted))
      faults.push({
        code: 'bust-points-too-far',
        place: ['body', 'bust-points-apart'],
        level: level.at,
        apart: overPoint,
        front: 2 * wanted,
      });
    return [front, ...new Array<number>(count - 1).fill((wanted - front) / (count - 1))];
  });
}

function openAtCentreFront({ lacings }: BodiceMeasures, level: string): number {
  return lacings
    .filter(({ at }) => at === 'centre-front')
    .reduce((sum, { gap }) => sum + (typeof gap === 'number' ? gap : (gap[level] ?? 0)) / 2, 0);
}

function takenByEdges(measures: BodiceMeasures, level: SewnLevel, start: readonly number[]): number[] {
  const edges = measures.panels.map((_, i) => shapedEdges(measures.panels, i));
  return partsOf(measures, level).flatMap(({ from, to, wanted }) => {
    const difference = wanted - sum(start.slice(from, to));
    const all = sum(edges.slice(from, to));
    return start.slice(from, to).map((width, i) => width + (difference * edges[from + i]!) / all);
  });
}

/** A miss too small to matter is taken up by the panels that the spec leaves free, or else by all alike. */
function madeUp(rows: readonly PanelWidth[], miss: number): number[] {
  const free = rows.filter(({ said }) => !said).length;
  const takes = (row: PanelWidth): boolean => free === 0 || !row.said;
  const share = miss / (free === 0 ? rows.length : free);
  return rows.map((row) => row.width + (takes(row) ? share : 0));
}

/** Where the straight thread lies in a panel: at a centre its edge, elsewhere its middle, unless it is said. */
export function panelGrain(panels: readonly BodicePanel[], i: number): 'centre' | 'front-edge' | 'back-edge' {
  const panel = panels[i]!;
  if (panel.grain !== undefined && !panel.onFold) return panel.grain;
  if (i === 0) return 'front-edge';
  return i === panels.length - 1 ? 'back-edge' : 'centre';
}

/** How many of a panel's two edges follow the body; the one on the grain is straight. */
function shapedEdges(panels: readonly BodicePanel[], i: number): number {
  return panelGrain(panels, i) === 'centre' ? 2 : 1;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
