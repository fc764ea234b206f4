import { HEEL_BEHIND } from '../hanging/hang-figures.ts';
import type { HungGown } from '../hanging/hung-gown.ts';
import type { DraftedGown } from '../pipeline.ts';
import type { Drawing } from '../print/drawing.ts';
import { type DrawnViews, type ViewsRoom, viewsDrawing } from '../print/papers/views-drawing.ts';
import { english } from '../words/english.ts';

/** The gown's views as they are drawn anywhere: in a file, on a page, on paper. */
export function drawnViews({ spec }: Pick<DraftedGown, 'spec'>, hung: HungGown): DrawnViews {
  const { views: names, length } = english(spec.units);
  const { train, assumedFloor } = hung.figures;
  return {
    rows: [
      hung.views.map((view) => ({ view, name: names[view.side] })),
      (hung.bustled?.views ?? []).map((view) => ({ view, name: names.bustled(names[view.side]) })),
    ],
    ...(train === undefined ? {} : { train: { ...train, heelBehind: HEEL_BEHIND } }),
    floor: assumedFloor ? names.floorAssumed : names.floor,
    scaleBar: spec.units === 'in' ? 20 * 25.4 : 500,
    say: length,
  };
}

/** Width of the file, mm, and its scale where the gown has room at it. */
const ROOM: ViewsRoom = { width: 520, scale: 0.1 };

/** `views.svg` as a drawing. */
export function viewsFile({ spec }: Pick<DraftedGown, 'spec'>, views: DrawnViews): Drawing {
  return { ...viewsDrawing(views, ROOM), title: spec.gown };
}
