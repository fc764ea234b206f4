import type { LongCheck } from '../../sheets/long-checks.ts';
import type { SheetPlan } from '../../sheets/sheet-plan.ts';
import type { Drawing, Mark } from '../drawing.ts';
import type { Block } from '../page/page-blocks.ts';
import { layBlock } from '../page/page-lay.ts';
import { type Strip, stacked } from '../page/page-strip.ts';
import { legend } from './legend.ts';
import { laidPieceName } from './pattern-drawing.ts';
import type { PieceLabels } from './piece-text.ts';
import { sheetMap } from './sheet-map.ts';
import { TEST_SQUARE, testSquare } from './test-square.ts';

/**
 * The page before the sheets: how to print, the test square, what to measure once the sheets are taped, and the map
 * of the sheets in what room is left.
 */
export function firstPage(plan: SheetPlan, labels: PieceLabels, checks: readonly LongCheck[]): Drawing {
  const { paper } = plan;
  const margins = marginsHere(plan);
  const width = Math.min(WIDEST, paper.width - margins.left - margins.right);
  const height = paper.height - margins.top - margins.bottom;
  const squareWidth = TEST_SQUARE * plan.scale.across + 2;
  const square = testSquare(plan.scale);
  const title = stripOf([titleBlock(plan, labels)], width, height);
  const beside = stripOf(printingBlocks(plan), width - squareWidth - 5, height);
  const checked = stripOf(checkBlocks(plan, labels, checks), width, height);
  const lines = legend(plan, BESIDE_MAP * width);
  const reminders = stripOf(cautionBlocks(), BESIDE_MAP * width, height);
  const top = margins.top + title.height + 2;
  const besideHeight = Math.max(square.height, beside.height);
  const mapTop = top + besideHeight + checked.height + 5;
  const map = sheetMap(plan, {
    x: margins.left,
    y: mapTop,
    width: (0.97 - BESIDE_MAP) * width,
    height: paper.height - margins.bottom - mapTop,
  });
  const marks: Mark[] = [
    ...title.draw({ x: margins.left, y: margins.top }),
    ...square.draw({ x: margins.left + 1, y: top }),
    ...beside.draw({ x: margins.left + squareWidth + 5, y: top - 2 }),
    ...checked.draw({ x: margins.left, y: top + besideHeight }),
    ...lines.draw({ x: margins.left + (1 - BESIDE_MAP) * width, y: mapTop - 1 }),
    ...reminders.draw({ x: margins.left + (1 - BESIDE_MAP) * width, y: mapTop + lines.height + 1 }),
    ...map,
  ];
  return {
    x: 0,
    y: 0,
    width: paper.width,
    height: paper.height,
    title: 'Print and check this page first',
    marks,
  };
}

/** The printer's margins, but never so wide that the test square and the text beside it have no room. */
function marginsHere({ margins }: SheetPlan): SheetPlan['margins'] {
  const here = (margin: number) => Math.min(margin, WIDEST_MARGIN);
  return {
    left: here(margins.left),
    right: here(margins.right),
    top: here(margins.top),
    bottom: here(margins.bottom),
  };
}

/** No printer leaves more white than this, mm. */
const WIDEST_MARGIN = 16;

/** Share of the width that legend and reminders take beside the map. */
const BESIDE_MAP = 0.32;

/** Characters of a gown's name on this page. */
const LONGEST_NAME = 80;

/** Longer lines are hard to read, mm. */
const WIDEST = 277;

function stripOf(blocks: readonly Block[], width: number, pageHeight: number): Strip {
  return stacked(
    blocks.flatMap((block) => {
      const laid = layBlock(block, width, pageHeight);
      const space: Strip = { height: laid.before, draw: () => [] };
      return [space, ...(laid.head === undefined ? [] : [laid.head]), ...laid.strips];
    }),
  );
}

function titleBlock(plan: SheetPlan, labels: PieceLabels): Block {
  const client = labels.client === undefined ? '' : ` · ${labels.client}`;
  const first = plan.sheets[0]?.page ?? 1;
  const last = plan.sheets.at(-1)?.page ?? 1;
  const pages = first === last ? `page ${first}` : `pages ${first} to ${last}`;
  const one = plan.paper.longest === undefined ? 'sheet' : 'length of the roll';
  const many = plan.paper.longest === undefined ? 'sheets' : 'lengths of the roll';
  const characters = [...labels.gown];
  const name =
    characters.length > LONGEST_NAME ? `${characters.slice(0, LONGEST_NAME).join('')}…` : labels.gown;
  return {
    kind: 'paragraph',
    lead: `${name}${client}`,
    text: `Pattern on ${plan.sheets.length} ${plan.sheets.length === 1 ? one : many}, ${pages}. ${labels.trace}`,
  };
}

function printingBlocks(plan: SheetPlan): Block[] {
  const { across, down } = plan.scale;
  const corrected =
    across === 1 && down === 1
      ? []
      : [
          `The sheets are corrected for your printer: drawn at ${percent(across)} across and ${percent(down)} down, so that they come out true.`,
        ];
  const texts = [
    'Print this page first, at 100 % (actual size): no “fit to page”, no “shrink”.',
    'Measure the square both ways. 94.1 or 97.3 mm means that the page was fitted: turn that off. Another figure is your printer’s own error: write both into the spec under paper, measured, and draft again.',
    ...corrected,
    ...(isTaped(plan)
      ? [
          'Trim each sheet along the lines at its left and top, and lay it on its neighbours’ margins so that line meets line and the diamonds close.',
          'Pages run down each column of the map, then on to the next; arrows name the neighbours.',
        ]
      : []),
    ...(plan.gaps.length === 0
      ? []
      : [
          'Straight stretches are left out. At each cut-off stands how far the line runs on, and to which sheet: lay a long ruler along it, and keep the grain lines in one line.',
        ]),
  ];
  return [
    { kind: 'heading', level: 3, text: 'Print at 100 %, no fit to page' },
    ...texts.map((text, index): Block => ({ kind: 'item', number: `${index + 1}`, text })),
  ];
}

function isTaped(plan: SheetPlan): boolean {
  return plan.sheets.some(({ neighbours }) => Object.keys(neighbours).length > 0);
}

function percent(scale: number): string {
  return `${(scale * 100).toFixed(2)} %`;
}

function checkBlocks(plan: SheetPlan, labels: PieceLabels, checks: readonly LongCheck[]): Block[] {
  if (checks.length === 0) return [];
  const rows = checks.map((check) => [
    laidPieceName(plan, check.piece),
    checkText(check, plan),
    labels.length(check.length),
  ]);
  return [
    {
      kind: 'table',
      caption: isTaped(plan) ? 'When the sheets are taped, measure before cutting' : 'Measure before cutting',
      heads: ['piece', 'from seam line to seam line', 'should be'],
      align: ['start', 'start', 'end'],
      tick: true,
      rows,
    },
  ];
}

function checkText({ piece, edge, along }: LongCheck, plan: SheetPlan): string {
  if (along === 'chord') return 'hem line, straight from corner to corner';
  const top = plan.pieces[piece]!.cutPiece.piece.edges[0]!.name;
  return edge === 'fold' ? `along the fold, ${top} to hem` : `${edge}, ${top} to hem`;
}

function cautionBlocks(): Block[] {
  return [
    {
      kind: 'paragraph',
      lead: 'Cutting on the floor:',
      text: 'mind knees, back and open blades; your workplace-safety body has the rules.',
    },
    {
      kind: 'paragraph',
      lead: 'A client’s measures',
      text: 'are personal data, on paper too: your data-protection authority says how long you may keep them.',
    },
  ];
}
