import type { CutPiece } from '../draft/piece.ts';
import { areaInside } from '../geometry/area.ts';
import type { Placement } from '../geometry/transform.ts';
import { FIRST_PAGES, sheetLabel } from './grid-sheets.ts';
import type { LaidPiece } from './laid-piece.ts';
import { groupsOf } from './lay-out-grid.ts';
import { movedPiece } from './moved-piece.ts';
import { fitsRoll, nestOnRoll, type RollNest } from './nest-on-roll.ts';
import { sheetFrame } from './sheet-frame.ts';
import type { SheetOptions } from './sheet-options.ts';
import type { Sheet, SheetPlan } from './sheet-plan.ts';
import { onEvery } from './shown-grain.ts';
import { cutLine, everyRun, workingShape } from './working-shape.ts';

/** Sheets that come before the lengths: of pieces that are too large to lie whole. */
interface Before {
  readonly columns: number;
  readonly pages: number;
}

/** What of the roll can be printed on, and the pieces in every turn. */
function onRoll(cutPieces: readonly CutPiece[], options: SheetOptions) {
  const { paper, scale, margins } = options;
  const frame = sheetFrame({ ...paper, height: paper.longest! }, margins, 0);
  const [width, longest] = [frame.width / scale.across, frame.height / scale.down];
  const groups = groupsOf(cutPieces, options);
  const shapes = groups.map((group) => {
    const [main, ...sharing] = group.map((index) => cutPieces[index]!);
    return TURNS.map((turn) => workingShape(main!, sharing, turn, everyRun)).filter((shape) =>
      fitsRoll(shape, width, longest),
    );
  });
  return { frame, width, longest, groups, shapes };
}

/** By piece, whether it lies whole on one length, with those that share its sheets. */
export function whichFitRoll(cutPieces: readonly CutPiece[], options: SheetOptions): boolean[] {
  const { groups, shapes } = onRoll(cutPieces, options);
  const fits: boolean[] = [];
  for (const [place, group] of groups.entries())
    for (const index of group) fits[index] = shapes[place]!.length > 0;
  return fits;
}

/** Lays pieces whole on lengths of a roll, each length a page as long as it needs to be. All of them must fit. */
export function layOutRoll(
  cutPieces: readonly CutPiece[],
  options: SheetOptions,
  before: Before = { columns: 0, pages: 0 },
): SheetPlan {
  const { paper, scale, margins } = options;
  const { frame, width, longest, groups, shapes } = onRoll(cutPieces, options);
  const nest = nestOnRoll(shapes, width, longest);
  const pieces = laidPieces(cutPieces, groups, nest, width, before.columns);
  const sheets = nest.used.map((length, index): Sheet => {
    const on = groups.flatMap((group, place) => (nest.positions[place]!.length === index ? group : []));
    const around = paper.longest! - frame.height;
    return {
      page: FIRST_PAGES + before.pages + index + 1,
      row: 0,
      column: before.columns + index,
      label: sheetLabel(0, before.columns + index),
      x: (before.columns + index) * width,
      y: 0,
      width,
      height: length,
      left: frame.left,
      bottom: frame.bottom,
      pageHeight: length * scale.down + around,
      pieces: [...on].sort((a, b) => a - b),
      neighbours: {},
    };
  });
  const area = groups.reduce((sum, [main]) => sum + areaInside(cutLine(cutPieces[main!]!)), 0);
  return {
    options,
    paper,
    margins,
    scale,
    frame,
    pieces,
    sheets,
    gaps: [],
    rows: 1,
    columns: sheets.length,
    gridPerPiece: groups.length,
    areaBound: Math.ceil((area / (width * frame.height)) * scale.down),
  };
}

/** Along the roll and across it, head to tail either way. */
const TURNS = [90, 270, 0, 180] as const;

function laidPieces(
  cutPieces: readonly CutPiece[],
  groups: readonly (readonly number[])[],
  nest: RollNest,
  width: number,
  columnsBefore: number,
): LaidPiece[] {
  const laid: LaidPiece[] = [];
  for (const [place, group] of groups.entries()) {
    const { shape, x, y, length } = nest.positions[place]!;
    const { shift, angle } = shape.placement;
    // The search has the roll running to the right; on its page it runs down: a quarter turn.
    const placement: Placement = {
      mirror: false,
      angle: angle + Math.PI / 2,
      shift: { x: (columnsBefore + length + 1) * width - (shift.y + y), y: shift.x + x },
    };
    const turned = ((shape.turned + 90) % 360) as LaidPiece['turned'];
    const [main, ...sharing] = group.map((index) => movedPiece(cutPieces[index]!, placement));
    const grain = onEvery(main!.piece.grain, sharing);
    for (const [member, index] of group.entries()) {
      const cutPiece = member === 0 ? main! : sharing[member - 1]!;
      laid[index] = { cutPiece, turned, grain, ...(member === 0 ? {} : { liesOn: group[0]! }) };
    }
  }
  return laid;
}
