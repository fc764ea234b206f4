import type { Mark } from '../drawing.ts';
import { textWidth } from '../text/text-width.ts';
import { wrapText } from '../text/wrap-text.ts';
import type {
  Block,
  CautionBlock,
  ColumnsBlock,
  FieldsBlock,
  FigureBlock,
  FittedBlock,
  HeadingBlock,
  ItemBlock,
  ParagraphBlock,
} from './page-blocks.ts';
import { inset, type LaidBlock, laidBlock, type Strip, stacked } from './page-strip.ts';
import { layTable, TICK_BOX, tickBox } from './page-table.ts';
import { RULE, TYPE } from './page-type.ts';
import { boxMark, lineMark, textMark } from './ruled-marks.ts';

/** Lays one block in a column of `width`, to be placed on pages with `pageHeight` to fill; mm. */
export function layBlock(block: Block, width: number, pageHeight: number): LaidBlock {
  switch (block.kind) {
    case 'heading':
      return layHeading(block, width);
    case 'paragraph':
      return layParagraph(block, width);
    case 'item':
      return layItem(block, width);
    case 'caution':
      return layCaution(block, width);
    case 'table':
      return layTable(block, width, pageHeight);
    case 'figure':
      return layFigure(block, width, pageHeight);
    case 'fields':
      return layFields(block, width);
    case 'lines':
      return laidBlock(Array.from({ length: block.count }, () => writingLine(width)));
    case 'columns':
      return layColumns(block, width, pageHeight);
    case 'fitted':
      return layFitted(block, width, pageHeight);
    case 'gap':
      return laidBlock([], { before: block.height });
    case 'page-break':
      return laidBlock([], { breakBefore: true });
  }
}

const LINE = TYPE.body * TYPE.leading;

/** One line of text; `at` is the top left of the line, the baseline one em below it or a little less. */
function textLine(text: string, size: number, bold = false, left = 0): Strip {
  const draw = (at: { x: number; y: number }): Mark[] =>
    text === '' ? [] : [textMark(text, { x: at.x + left, y: at.y + size }, size, { bold })];
  return { height: size * TYPE.leading, draw };
}

function textLines(text: string, width: number, size: number = TYPE.body, bold = false): Strip[] {
  return wrapText(text, width, size, bold).map((line) => textLine(line, size, bold));
}

function layHeading(block: HeadingBlock, width: number): LaidBlock {
  const size = TYPE.heading[block.level];
  const strip = inset(stacked(textLines(block.text, width, size, true)), 0, 0, 0.25 * size);
  return laidBlock([strip], { before: 0.9 * size, keepWithNext: true });
}

function layParagraph(block: ParagraphBlock, width: number): LaidBlock {
  const strips = paragraphStrips(block, width);
  // Short paragraphs stay whole; of longer ones two lines at least stand together.
  return laidBlock(strips, { before: 0.4 * LINE, together: strips.length < 5, leastStrips: 2 });
}

function paragraphStrips(block: ParagraphBlock, width: number): Strip[] {
  if (block.lead === undefined) return textLines(block.text, width, TYPE.body, block.bold);
  const lead = `${block.lead} `;
  const leadWidth = textWidth(lead, TYPE.body, true) + 0.3 * TYPE.body;
  if (leadWidth > 0.6 * width) {
    return [...textLines(block.lead, width, TYPE.body, true), ...textLines(block.text, width)];
  }
  const lines = wrapText(block.text, width, TYPE.body, false, width - leadWidth);
  return lines.map((line, index) => {
    if (index > 0) return textLine(line, TYPE.body);
    const draw: Strip['draw'] = (at) => [
      ...textLine(lead, TYPE.body, true).draw(at),
      ...textLine(line, TYPE.body, false, leadWidth).draw(at),
    ];
    return { height: LINE, draw };
  });
}

function layItem(block: ItemBlock, width: number): LaidBlock {
  const boxRoom = block.tick === true ? TICK_BOX + 2 : 0;
  const marker = block.number ?? (block.tick === true ? '' : '–');
  const markerRoom = marker === '' ? 0 : Math.max(1.6 * TYPE.body, textWidth(marker, TYPE.body, true) + 1.6);
  const left = boxRoom + markerRoom;
  const notes = (block.notes ?? []).flatMap((note) => textLines(note, width - left));
  const body = [...textLines(block.text, width - left), ...notes].map((strip) => inset(strip, left));
  const strip = stacked(body);
  const draw: Strip['draw'] = (at) => [
    ...(block.tick === true ? [tickBox(at.x, at.y + 0.5)] : []),
    ...textLine(marker, TYPE.body, block.number !== undefined, boxRoom).draw(at),
    ...strip.draw(at),
  ];
  return laidBlock([{ height: strip.height, draw }], { before: 0.35 * LINE });
}

function layCaution(block: CautionBlock, width: number): LaidBlock {
  const pad = 2.2;
  const lines = paragraphStrips(
    { kind: 'paragraph', lead: `${block.lead ?? 'Caution'}:`, text: block.text },
    width - 2 * pad,
  );
  const inner = inset(stacked(lines), pad, pad - 0.6, pad - 0.6);
  const draw: Strip['draw'] = (at) => [
    boxMark(at.x, at.y, width, inner.height, { width: RULE.plain }),
    ...inner.draw(at),
  ];
  return laidBlock([{ height: inner.height, draw }], { before: 0.6 * LINE });
}

function layFigure(block: FigureBlock, width: number, pageHeight: number): LaidBlock {
  const caption = block.caption === undefined ? [] : textLines(block.caption, width);
  const captionHeight = caption.reduce((sum, strip) => sum + strip.height, 0);
  const { drawing } = block;
  const tallest = Math.min(block.maxHeight ?? Infinity, pageHeight - captionHeight - 0.4 * LINE);
  const wished = block.width === undefined ? 1 : block.width / drawing.width;
  const scale = Math.min(wished, width / drawing.width, tallest / drawing.height);
  const draw: Strip['draw'] = (at) => [
    {
      kind: 'use',
      drawing,
      scale: { x: scale, y: scale },
      offset: { x: at.x - drawing.x * scale, y: at.y - drawing.y * scale },
    },
  ];
  const figure = { height: drawing.height * scale, draw };
  return laidBlock([stacked([figure, ...caption.map((line) => inset(line, 0, 0.2, 0))])], {
    before: 0.6 * LINE,
  });
}

function layFields(block: FieldsBlock, width: number): LaidBlock {
  const columns = block.columns ?? 1;
  const gap = 6;
  const each = (width - gap * (columns - 1)) / columns;
  const rows: Strip[] = [];
  for (let first = 0; first < block.fields.length; first += columns) {
    const cells = block.fields.slice(first, first + columns).map((label) => field(label, each));
    const draw: Strip['draw'] = (at) =>
      cells.flatMap((cell, index) => cell.draw({ x: at.x + index * (each + gap), y: at.y }));
    rows.push({ height: Math.max(...cells.map((cell) => cell.height)), draw });
  }
  return laidBlock(rows, { before: 0.3 * LINE, leastStrips: 2 });
}

function field(label: string, width: number): Strip {
  const lines = wrapText(label, 0.62 * width, TYPE.body);
  const height = Math.max(1.9, lines.length + 0.5) * LINE;
  const labelWidth = Math.max(...lines.map((line) => textWidth(line, TYPE.body)));
  const draw: Strip['draw'] = (at) => {
    const baseline = at.y + height - 0.45 * LINE;
    const texts = lines.map((line, index) =>
      textMark(line, { x: at.x, y: baseline - (lines.length - 1 - index) * LINE }, TYPE.body),
    );
    const from = { x: at.x + labelWidth + 1.5, y: baseline + 0.6 };
    return [...texts, lineMark(from, { x: at.x + width, y: baseline + 0.6 }, { width: RULE.hair })];
  };
  return { height, draw };
}

function writingLine(width: number): Strip {
  const height = 1.9 * LINE;
  const draw: Strip['draw'] = (at) => [
    lineMark({ x: at.x, y: at.y + height }, { x: at.x + width, y: at.y + height }, { width: RULE.hair }),
  ];
  return { height, draw };
}

function layColumns(block: ColumnsBlock, width: number, pageHeight: number): LaidBlock {
  const gap = 6;
  const shares = block.shares ?? block.columns.map(() => 1);
  const whole = shares.reduce((sum, share) => sum + share, 0);
  const room = width - gap * (block.columns.length - 1);
  let left = 0;
  const columns = block.columns.map((blocks, index) => {
    const own = (room * shares[index]!) / whole;
    const column = inset(columnStrip(blocks, own, pageHeight), left);
    left += own + gap;
    return column;
  });
  const height = Math.max(0, ...columns.map((column) => column.height));
  const draw: Strip['draw'] = (at) => columns.flatMap((column) => column.draw(at));
  return laidBlock([{ height, draw }], { before: 0.4 * LINE });
}

/** How much smaller at a time what does not fit is set. */
const SHRINK_STEP = 0.97;

function layFitted({ versions, above }: FittedBlock, width: number, pageHeight: number): LaidBlock {
  const room = pageHeight - above;
  const fits = versions.find((blocks) => columnStrip(blocks, width, pageHeight).height <= room);
  if (fits !== undefined) return laidBlock([columnStrip(fits, width, pageHeight)], { before: 0.4 * LINE });
  const last = versions[versions.length - 1] ?? [];
  let scale = SHRINK_STEP;
  // Set smaller, a line holds more words: it is laid anew each time.
  while (scale > 0.05 && columnStrip(last, width / scale, pageHeight / scale).height * scale > room)
    scale *= SHRINK_STEP;
  return laidBlock([scaled(columnStrip(last, width / scale, pageHeight / scale), width, scale)], {
    before: 0.4 * LINE,
  });
}

function scaled(strip: Strip, width: number, scale: number): Strip {
  return {
    height: strip.height * scale,
    draw: (at) => [
      {
        kind: 'use',
        drawing: {
          x: 0,
          y: 0,
          width: width / scale,
          height: strip.height,
          marks: strip.draw({ x: 0, y: 0 }),
        },
        scale: { x: scale, y: scale },
        offset: at,
      },
    ],
  };
}

function columnStrip(blocks: readonly Block[], width: number, pageHeight: number): Strip {
  return stacked(
    blocks.flatMap((block, index) => {
      const laid = layBlock(block, width, pageHeight);
      const strips = laid.head === undefined ? laid.strips : [laid.head, ...laid.strips];
      const space: Strip = { height: index === 0 ? 0 : laid.before, draw: () => [] };
      return [space, ...strips];
    }),
  );
}
