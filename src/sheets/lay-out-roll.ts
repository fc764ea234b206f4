import type { CutPiece } from '../draft/piece.ts';
import { areaInside } from '../geometry/area.ts';
import type { Placement } from '../geometry/transform.ts';
import { FIRST_PAGES, sheetLabel } from './grid-sheets.ts';
import { hemPartners } from './hem-partners.ts';
import type { LaidPiece } from './laid-piece.ts';
import { movedPiece } from './moved-piece.ts';
import { nestOnRoll, type RollNest } from './nest-on-roll.ts';
import { sheetFrame } from './sheet-frame.ts';
import type { SheetOptions } from './sheet-options.ts';
import type { Sheet, SheetPlan } from './sheet-plan.ts';
import { cutLine, everyRun, workingShape } from './working-shape.ts';

/**
 * Lays pieces whole on lengths of a roll, each length a page as long as it needs to be. Undefined where the paper is no
 * roll, or a piece is larger than one length.
 */
export function layOutRoll(cutPieces: readonly CutPiece[], options: SheetOptions): SheetPlan | undefined {
  const { paper, scale, margins } = options;
  if (paper.longest === undefined || cutPieces.length === 0) return undefined;
  const frame = sheetFrame({ ...paper, height: paper.longest }, margins, 0);
  const width = frame.width / scale.across;
  const groups = options.layersApart === true ? cutPieces.map((_, index) => [index]) : hemPartners(cutPieces);
  const shapes = groups.map((group) => {
    const [main, ...sharing] = group.map((index) => cutPieces[index]!);
    return TURNS.map((turn) => workingShape(main!, sharing, turn, everyRun));
  });
  const nest = nestOnRoll(shapes, width, frame.height / scale.down);
  if (nest === undefined) return undefined;
  const pieces = laidPieces(cutPieces, groups, nest, width);
  const sheets = nest.used.map((length, index): Sheet => {
    const on = groups.flatMap((group, place) => (nest.positions[place]!.length === index ? group : []));
    const around = paper.longest! - frame.height;
    return {
      page: FIRST_PAGES + index + 1,
      row: 0,
      column: index,
      label: sheetLabel(0, index),
      x: index * width,
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
): LaidPiece[] {
  const laid: LaidPiece[] = [];
  for (const [place, group] of groups.entries()) {
    const { shape, x, y, length } = nest.positions[place]!;
    const { shift, angle } = shape.placement;
    // The search has the roll running to the right; on its page it runs down: a quarter turn.
    const placement: Placement = {
      mirror: false,
      angle: angle + Math.PI / 2,
      shift: { x: (length + 1) * width - (shift.y + y), y: shift.x + x },
    };
    const turned = ((shape.turned + 90) % 360) as LaidPiece['turned'];
    for (const [member, index] of group.entries()) {
      const cutPiece = movedPiece(cutPieces[index]!, placement);
      const grain = movedPiece(cutPieces[group[0]!]!, placement).piece.grain;
      laid[index] = { cutPiece, turned, grain, ...(member === 0 ? {} : { liesOn: group[0]! }) };
    }
  }
  return laid;
}
