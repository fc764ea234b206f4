import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { lineAndColumn } from '../diagnostics/place.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import type { LayPlan } from '../lay/plan/lay-plan.ts';
import { amountText } from '../money/money.ts';
import type { Drawing } from '../print/drawing.ts';
import { viewsCaption } from '../print/papers/views-block.ts';
import { type DrawnViews, viewsDrawing } from '../print/papers/views-drawing.ts';
import {
  type GownPage,
  gownPage,
  type PageDrawing,
  type PageFinding,
  type PageTable,
} from '../print/screen/gown-page.ts';
import { writeSvg } from '../print/svg/write-svg.ts';
import { layCost } from '../report/lay-report.ts';
import { paperText } from '../sheets/paper.ts';
import { english, type Words } from '../words/english.ts';
import type { Workroom } from '../workroom/workroom.ts';
import { layFigures, layTitle } from './lay-files.ts';
import type { PatternReport } from './pattern-files.ts';

/** What `gown.html` is made of; without lays or sheets it is the page of a draft that is not finished. */
export interface PageSource {
  readonly gown: DraftedGown;
  readonly facts: Workroom;
  readonly lays: readonly LayPlan[];
  /** Written already, by name: drawings are taken from them, and each gets a link. */
  readonly files: ReadonlyMap<string, string | Uint8Array>;
  readonly sheets?: PatternReport;
  /** The gown hung; absent while it is not. */
  readonly views?: DrawnViews;
  readonly findings: readonly Diagnostic[];
  readonly notice?: GownPage['notice'];
  readonly status?: string;
  readonly refreshed?: string;
}

/** `gown.html`: everything that a draft says, on one page for a screen. */
export function pageFile(source: PageSource): string {
  const { lays, files, sheets, findings, notice, status, refreshed } = source;
  const { gown } = source.gown;
  const words = english(gown.units);
  const screen = words.screen;
  return gownPage({
    gown: gown.name,
    about: [...(gown.client === undefined ? [] : [gown.client]), `format ${gown.format}`, gown.content],
    ...(notice && { notice }),
    ...(status !== undefined && { status }),
    views: viewsOf(source, words),
    ...patternOf(source),
    lays: layFigures(gown, lays, LAY_WIDTH).flatMap(({ drawing, caption }, i) => {
      const { name } = layTitle(gown, lays[i]!);
      return drawing === undefined ? [] : [{ title: name, svg: forScreen(drawing), caption }];
    }),
    ...(sheets && { sheets: { paper: paperText(sheets.paper), sheets: sheets.sheets } }),
    tables: [...buyTable(source, words), ...calendarTable(source, words)],
    findings: pageFindings(findings, source.gown),
    files: [...files.keys()],
    words: screen,
    ...(refreshed !== undefined && { refreshed }),
  });
}

/** A page with nothing but what is wrong, where there was never a gown to show. */
export function brokenPage(name: string, notice: NonNullable<GownPage['notice']>, refreshed: string): string {
  return gownPage({
    gown: name,
    about: [],
    notice,
    views: [],
    lays: [],
    tables: [],
    findings: [],
    files: [],
    words: english('cm').screen,
    refreshed,
  });
}

/** Findings with their line; with the file's name where it is another than the gown's own. */
export function pageFindings(
  findings: readonly Diagnostic[],
  drafted?: Pick<DraftedGown, 'gown'>,
): PageFinding[] {
  const own = drafted?.gown.place().source;
  return findings.map(({ level, message, why, hint, span }) => {
    const { line, column } = lineAndColumn(span);
    const file = span.source === own ? '' : `${span.source.name.split(/[\\/]/).at(-1)}:`;
    return { level, place: `${file}${line}:${column}`, message, why, hint };
  });
}

function viewsOf({ views }: PageSource, words: Words): PageDrawing[] {
  if (views === undefined) return [];
  const svg = forScreen(viewsDrawing(views, { width: HUNG_WIDTH }));
  return [{ title: words.screen.views, svg, caption: viewsCaption(views, words) }];
}

/** A drawing to look at: lines to a hundredth of a millimetre take a sixth less room, and look the same. */
function forScreen(drawing: Drawing): string {
  return writeSvg(drawing).replace(/ d="[^"]*"/g, (path) => path.replace(/(\.\d\d)\d+/g, '$1'));
}

/** Of a lay's drawing, mm. */
const LAY_WIDTH = 180;
/** Of the views of the hung gown, mm. */
const HUNG_WIDTH = 240;

function patternOf({ gown, files }: PageSource): Pick<GownPage, 'pattern'> {
  const svg = textOf(files, 'pattern.svg');
  const unit = gown.gown.units;
  const inches = unit === 'in';
  const mm = inches ? 25.4 : unit === 'cm' ? 10 : 1;
  const layers = [...new Set(gown.cut.pieces.flatMap((piece) => piece.layers))];
  return svg === '' ? {} : { pattern: { svg, layers, unit, mm, decimals: inches ? 2 : mm === 10 ? 1 : 0 } };
}

function textOf(files: PageSource['files'], name: string): string {
  const file = files.get(name);
  return typeof file === 'string' ? file : '';
}

function buyTable({ gown: { gown }, lays }: PageSource, words: Words): PageTable[] {
  const { buy, buyHeads, buyNote } = words.screen;
  if (lays.length === 0) return [];
  const rows = lays.map((lay) => {
    const cost = layCost(gown, lay.cloth, lay.buy);
    return [
      words.list(lay.layers),
      lay.cloth,
      words.length(lay.facts.width),
      words.length(lay.length),
      words.length(lay.buy),
      cost === undefined ? '' : amountText(cost),
    ];
  });
  return [{ title: buy, heads: buyHeads, figuresFrom: 2, rows, note: buyNote }];
}

function calendarTable({ facts: { calendar } }: PageSource, words: Words): PageTable[] {
  if (calendar === undefined) return [];
  const rows = calendar.map((entry) => [
    words.milestones[entry.milestone],
    words.date(entry.date, entry.weekday),
    String(entry.daysBefore),
  ]);
  return [{ title: words.screen.calendar, heads: words.screen.calendarHeads, figuresFrom: 2, rows }];
}
