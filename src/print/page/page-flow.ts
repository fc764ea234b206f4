import type { Point } from '../../geometry/curve.ts';
import type { Drawing, Mark } from '../drawing.ts';
import { textWidth } from '../text/text-width.ts';
import { fitText } from '../text/wrap-text.ts';
import type { Block } from './page-blocks.ts';
import { layBlock } from './page-lay.ts';
import type { LaidBlock, Strip } from './page-strip.ts';
import { RULE, TYPE } from './page-type.ts';
import { lineMark, textMark } from './ruled-marks.ts';

/** The paper and what stands at the head and foot of each page. Lengths mm. */
export interface PageSetup {
  readonly paper: { readonly width: number; readonly height: number };
  /** Unprinted at every edge; 15 where not given. */
  readonly margin?: number;
  /** Gown and client code, as a rule. */
  readonly headerLeft: string;
  /** Name of the paper. */
  readonly headerRight: string;
  /** Spec format and content hash. `page n of m` stands at the right. */
  readonly footerLeft: string;
}

/** A heading's place, for a PDF's bookmarks; `page` counts from 0. */
export interface PageBookmark {
  readonly title: string;
  readonly page: number;
  readonly level: number;
}

export interface FlowedPages {
  readonly pages: readonly Drawing[];
  readonly bookmarks: readonly PageBookmark[];
}

/**
 * Lays blocks on as many pages as they need. No row, item, figure or caution is cut by a page end; a heading stays
 * with what it heads; a table's heads are repeated.
 *
 *     const { pages, bookmarks } = flowPages(
 *       [
 *         { kind: 'heading', level: 1, text: 'Job sheet' },
 *         { kind: 'paragraph', text: 'Evening, stone stairs.', lead: 'Notes' },
 *         { kind: 'table', heads: ['gore', 'top'], align: ['start', 'end'], rows: [['front', '11.2 cm']] },
 *         { kind: 'item', tick: true, number: '1', text: 'Test marking pen, needle and steam on a scrap.' },
 *         { kind: 'caution', text: 'Wear eye protection; the machine’s manual decides.' },
 *       ],
 *       { paper: { width: 210, height: 297 }, headerLeft: 'Lantern · LAN-07', headerRight: 'Job sheet',
 *         footerLeft: 'format 1 · 3f9a12' },
 *     );
 *     const { bytes } = await writePdf(pages, { title: 'Lantern: job sheet', bookmarks });
 */
export function flowPages(blocks: readonly Block[], setup: PageSetup): FlowedPages {
  const frame = frameOf(setup);
  const filled = fillPages(blocks, frame);
  const pages = filled.pages.map((marks, index) => ({
    x: 0,
    y: 0,
    ...setup.paper,
    title: `${setup.headerRight} ${index + 1}`,
    marks: [...header(setup, frame), ...marks, ...footer(setup, frame, index + 1, filled.pages.length)],
  }));
  return { pages, bookmarks: filled.bookmarks };
}

interface Frame {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

function frameOf(setup: PageSetup): Frame {
  const margin = setup.margin ?? 15;
  const line = 2.4 * TYPE.small;
  return {
    left: margin,
    top: margin + line,
    width: setup.paper.width - 2 * margin,
    height: setup.paper.height - 2 * margin - 2 * line,
  };
}

function fillPages(
  blocks: readonly Block[],
  frame: Frame,
): { pages: readonly (readonly Mark[])[]; bookmarks: PageBookmark[] } {
  const pages: Mark[][] = [[]];
  const bookmarks: PageBookmark[] = [];
  let used = 0;
  const turnPage = () => {
    if (used === 0) return;
    pages.push([]);
    used = 0;
  };
  const place = (strip: Strip) => {
    const at: Point = { x: frame.left, y: frame.top + used };
    pages[pages.length - 1]!.push(...strip.draw(at));
    used += strip.height;
  };
  const laid = blocks.map((block) => layBlock(block, frame.width, frame.height));
  for (const [index, block] of blocks.entries()) {
    const own = laid[index]!;
    const before = used === 0 ? 0 : own.before;
    if (own.breakBefore || used + before + startHeight(laid, index, frame.height) > frame.height + SLACK)
      turnPage();
    if (used > 0) used += own.before;
    if (block.kind === 'heading' && block.level < 3) {
      bookmarks.push({ title: block.text, page: pages.length - 1, level: block.level });
    }
    if (own.head !== undefined && own.strips.length > 0) place(own.head);
    for (const strip of own.strips) {
      if (used + strip.height > frame.height + SLACK) {
        turnPage();
        if (own.head !== undefined) place(own.head);
      }
      place(strip);
    }
  }
  if (used === 0 && pages.length > 1) pages.pop();
  return { pages, bookmarks };
}

/** mm; rounding must not turn a page. */
const SLACK = 1e-6;

/** Height that must be free for a block to begin here, with all that it may not be parted from. */
function startHeight(laid: readonly LaidBlock[], index: number, pageHeight: number): number {
  const block = laid[index]!;
  const head = block.head?.height ?? 0;
  const whole = head + block.strips.reduce((sum, strip) => sum + strip.height, 0);
  const least = head + block.strips.slice(0, block.leastStrips).reduce((sum, strip) => sum + strip.height, 0);
  const own = block.together && whole <= pageHeight ? whole : least;
  const next = laid[index + 1];
  if (!block.keepWithNext || next === undefined || next.breakBefore) return own;
  const withNext = own + next.before + startHeight(laid, index + 1, pageHeight);
  return withNext <= pageHeight ? withNext : own;
}

function header(setup: PageSetup, frame: Frame): Mark[] {
  const y = frame.top - 1.4 * TYPE.small;
  const right = textWidth(setup.headerRight, TYPE.small, true);
  const left = fitText(setup.headerLeft, Math.max(0, frame.width - right - 6), TYPE.small, TYPE.small);
  return [
    textMark(left.text, { x: frame.left, y }, left.size),
    textMark(setup.headerRight, { x: frame.left + frame.width, y }, TYPE.small, {
      anchor: 'end',
      bold: true,
    }),
    lineMark(
      { x: frame.left, y: y + 1.2 },
      { x: frame.left + frame.width, y: y + 1.2 },
      { width: RULE.hair },
    ),
  ];
}

function footer(setup: PageSetup, frame: Frame, page: number, pageCount: number): Mark[] {
  const y = frame.top + frame.height + 2 * TYPE.small;
  const count = `page ${page} of ${pageCount}`;
  const room = frame.width - textWidth(count, TYPE.small) - 6;
  const left = fitText(setup.footerLeft, room, TYPE.small, TYPE.small);
  return [
    textMark(left.text, { x: frame.left, y }, left.size),
    textMark(count, { x: frame.left + frame.width, y }, TYPE.small, { anchor: 'end' }),
  ];
}
