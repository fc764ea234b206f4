import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import { HEEL_BEHIND } from '../hanging/hang-figures.ts';
import { hangFindings } from '../hanging/hang-findings.ts';
import type { Hanging } from '../hanging/hung-gown.ts';
import type { Drawing } from '../print/drawing.ts';
import { type DrawnViews, type ViewsRoom, viewsDrawing } from '../print/papers/views-drawing.ts';
import { writeSvg } from '../print/svg/write-svg.ts';
import { type HangReport, hangReport } from '../report/hang-report.ts';
import { english } from '../words/english.ts';

/** What hanging gives to the outputs; nothing where the gown was not hung. */
export interface Views {
  readonly drawn: DrawnViews | undefined;
  readonly files: ReadonlyMap<string, string>;
  readonly report: HangReport | null;
  readonly findings: readonly Diagnostic[];
}

export function viewsOf(gown: Pick<DraftedGown, 'gown' | 'facts'>, hanging: Hanging | undefined): Views {
  if (hanging === undefined) return { drawn: undefined, files: new Map(), report: null, findings: [] };
  const { task, hung } = hanging;
  const drawn = drawnViews(gown, hanging);
  return {
    drawn,
    files: new Map([['views.svg', writeSvg(viewsFile(gown, drawn))]]),
    report: hangReport(task, hung),
    findings: hangFindings(gown.gown, hung, english(gown.gown.units).length, {
      skirt: gown.facts.skirt,
      points: gown.facts.bustle.facts?.points ?? [],
    }),
  };
}

/** The gown's views as they are drawn anywhere: in a file, on a page, on paper. */
export function drawnViews({ gown }: Pick<DraftedGown, 'gown'>, { task, hung }: Hanging): DrawnViews {
  const { views: names, length } = english(gown.units);
  const { train, assumedFloor } = hung.figures;
  return {
    layer: task.layer,
    notHung: task.notHung,
    isBodiceDrafted: task.isBodiceDrafted || gown.waist !== undefined,
    rows: [
      hung.views.map((view) => ({ view, name: names[view.side] })),
      (hung.bustled?.views ?? []).map((view) => ({ view, name: names.bustled(names[view.side]) })),
      (hung.under ?? []).map((view) => ({ view, name: names.under(names[view.side]) })),
    ].filter((row) => row.length > 0),
    ...(hung.under === undefined ? {} : { under: hung.under }),
    ...(train === undefined ? {} : { train: { ...train, heelBehind: HEEL_BEHIND } }),
    floor: assumedFloor ? names.floorAssumed : names.floor,
    scaleBar: gown.units === 'in' ? 20 * 25.4 : 500,
    say: length,
  };
}

/** Width of the file, mm, and its scale where the gown has room at it. */
const ROOM: ViewsRoom = { width: 520, scale: 0.1 };

/** `views.svg` as a drawing. */
export function viewsFile({ gown }: Pick<DraftedGown, 'gown'>, views: DrawnViews): Drawing {
  return { ...viewsDrawing(views, ROOM), title: gown.name };
}
