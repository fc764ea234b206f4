import { viewExtras } from '../hanging/gown-to-hang.ts';
import type { Hang } from '../hanging/hang.ts';
import { HEEL_BEHIND, hangFigures } from '../hanging/hang-figures.ts';
import { gownViews } from '../hanging/views.ts';
import type { Workroom } from '../making/workroom.ts';
import type { DraftedGown } from '../pipeline.ts';
import type { Drawing } from '../print/drawing.ts';
import { type DrawnViews, type ViewsRoom, viewsDrawing } from '../print/papers/views-drawing.ts';
import { english } from '../words/english.ts';

/** The gown's views as they are drawn anywhere: in a file, on a page, on paper. */
export function drawnViews(gown: DraftedGown, { closure }: Pick<Workroom, 'closure'>, hang: Hang): DrawnViews {
  const words = english(gown.spec.units);
  const sides = ['front', 'side', 'back', 'above'] as const;
  const views = gownViews(hang, sides, viewExtras(gown.spec, hang, closure));
  const { train } = hangFigures(hang);
  return {
    rows: [views.map((view) => ({ view, name: words.views[view.side] }))],
    ...(train === undefined ? {} : { train: { ...train, heelBehind: HEEL_BEHIND } }),
    floor: hang.assumedFloor ? words.views.floorAssumed : words.views.floor,
    scaleBar: gown.spec.units === 'in' ? 20 * 25.4 : 500,
    say: words.length,
  };
}

/** Width of the file, mm; it is no drawing to measure from, but its scale is round where the gown allows. */
const ROOM: ViewsRoom = { width: 520, scale: 0.1 };

/** `views.svg` as a drawing. */
export function viewsFile(gown: Pick<DraftedGown, 'spec'>, views: DrawnViews): Drawing {
  return { ...viewsDrawing(views, ROOM), title: gown.spec.gown };
}
