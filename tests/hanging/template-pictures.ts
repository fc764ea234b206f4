import { createHash } from 'node:crypto';
import type { templates } from '../../src/cli/package-files.ts';
import { hangTask } from '../../src/hanging/hang-task.ts';
import { hungGown } from '../../src/hanging/hung-gown.ts';
import { draft } from '../../src/pipeline.ts';
import type { Drawing, Mark } from '../../src/print/drawing.ts';
import { viewsDrawing } from '../../src/print/papers/views-drawing.ts';
import { writeSvg } from '../../src/print/svg/write-svg.ts';
import { drawnViews } from '../../src/publish/views-file.ts';

/** mm on paper: a picture's width, the room for a gown, and for what is written under it. */
const CELL = { width: 68, gown: 86, text: 16 };
const COLUMNS = 5;
/** What is drawn at one scale for all, however wide; nothing of it is cut off. */
const ROOM = 110;
/** Of what a drawing of views leaves below its floor for words. */
const UNDER_FLOOR = 7;
const SCALE = 1 / 22;
/** Characters of a line under a picture. */
const LINE = 44;

type Template = ReturnType<typeof templates>[number];

/** The front view of a template as a nested `<svg>`, and what it was drawn from. */
export function templatePicture({ name, text }: Template): string {
  const { gown } = draft({ name: `${name}.yaml`, text });
  if (gown === undefined) throw new Error(`${name} does not draft`);
  const task = hangTask(gown);
  const { train: _train, ...views } = drawnViews(gown, { task, hung: hungGown(task) });
  const front = views.rows[0]!.filter(({ view }) => view.side === 'front');
  const drawn = viewsDrawing({ ...views, rows: [front] }, { width: ROOM, scale: SCALE });
  const marks = drawn.marks.filter((mark) => mark.kind === 'group');
  const floor = {
    x: (ROOM - CELL.width) / 2,
    y: drawn.height - UNDER_FLOOR - CELL.gown,
    width: CELL.width,
    height: CELL.gown,
  };
  return rounded(writeSvg({ ...floor, marks, title: name })).replace(/(width|height)="(\d+)mm"/g, '$1="$2"');
}

/** All templates on one sheet: each from the front, hung from its pattern, with its name and what it is for. */
export function templateSheet(all: readonly Template[]): string {
  const rows = Math.ceil(all.length / COLUMNS);
  const [width, height] = [COLUMNS * CELL.width, rows * (CELL.gown + CELL.text)];
  const cells = all.map((template, i) => {
    const x = (i % COLUMNS) * CELL.width;
    const y = Math.floor(i / COLUMNS) * (CELL.gown + CELL.text);
    const picture = templatePicture(template).replace(/^<svg /, `<svg x="${x}" y="${y}" `);
    return `<g data-template="${template.name}" data-drawn-from="${drawnFrom(template)}">\n${picture}${underneath(template, x + CELL.width / 2, y + CELL.gown)}</g>\n`;
  });
  const head = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" font-family="Helvetica, Arial, sans-serif">`;
  return `${head}\n<title>The templates</title>\n<rect width="${width}" height="${height}" fill="#fff"/>\n${cells.join('')}</svg>\n`;
}

/** Names a template's text. */
export function drawnFrom({ text }: Template): string {
  return createHash('sha256').update(text).digest('hex').slice(0, 16);
}

function underneath({ name, about }: Template, middle: number, top: number): string {
  const marks: Mark[] = [
    { kind: 'text', text: name, at: { x: middle, y: top + 1 }, size: 3.2, anchor: 'middle', bold: true },
    ...broken(about).map(
      (text, i): Mark => ({
        kind: 'text',
        text,
        at: { x: middle, y: top + 4.6 + 3.2 * i },
        size: 2.6,
        anchor: 'middle',
      }),
    ),
  ];
  const drawing: Drawing = { x: 0, y: 0, width: 0, height: 0, marks };
  return rounded(writeSvg(drawing).split('\n').slice(1, -2).join('\n').concat('\n'));
}

function broken(text: string): string[] {
  const lines = [''];
  for (const word of text.split(' ')) {
    const last = lines[lines.length - 1]!;
    if (last.length + word.length >= LINE) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`.trim();
  }
  return lines;
}

/** A hundredth of a millimetre is enough for a picture on a screen. */
function rounded(svg: string): string {
  return svg.replace(/\d+\.\d{3,}/g, (figure) => String(Number(Number(figure).toFixed(2))));
}
