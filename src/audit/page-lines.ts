import type { PdfFile } from './pdf-file.ts';
import { PdfLexer, UnreadablePdf, Word } from './pdf-lexer.ts';
import { isArray, isDictionary, isName, isStream, type PdfStream, type PdfValue } from './pdf-value.ts';

export interface XY {
  readonly x: number;
  readonly y: number;
}

/** A straight part of a stroked line, mm from the page's lower left corner, y up; curves come in many. */
export interface Stroke {
  readonly from: XY;
  readonly to: XY;
}

export interface ReadPage {
  /** mm. */
  readonly width: number;
  readonly height: number;
  readonly strokes: readonly Stroke[];
}

/** Every page of a file with its stroked lines, cut where the page cuts them. */
export function pagesOf(file: PdfFile): ReadPage[] {
  return pageNodes(file, file.entry(file.trailer('Root'), 'Pages'), 0).map(({ page, box, resources }) => {
    const [left = 0, bottom = 0, right = 0, top = 0] = box;
    const strokes: Stroke[] = [];
    const start: State = {
      matrix: [MM, 0, 0, MM, -left * MM, -bottom * MM],
      clip: { left: 0, bottom: 0, right: (right - left) * MM, top: (top - bottom) * MM },
    };
    new Interpreter(file, strokes).run(pageContent(file, page), resources, start, 0);
    return { width: start.clip.right, height: start.clip.top, strokes };
  });
}

const MM = 25.4 / 72;

interface PageNode {
  readonly page: PdfValue;
  readonly box: readonly number[];
  readonly resources: PdfValue | undefined;
}

/** Leaves of the page tree, with what they inherit. */
function pageNodes(file: PdfFile, node: PdfValue | undefined, depth: number, above?: PageNode): PageNode[] {
  if (node === undefined || depth > 40) return [];
  const ownBox = file.numbers(file.entry(node, 'MediaBox'));
  const own: PageNode = {
    page: node,
    box: ownBox.length === 4 ? ownBox : (above?.box ?? []),
    resources: file.entry(node, 'Resources') ?? above?.resources,
  };
  const kids = file.entry(node, 'Kids');
  if (!isArray(kids)) return [own];
  return kids.flatMap((kid) => pageNodes(file, file.resolved(kid), depth + 1, own));
}

function pageContent(file: PdfFile, page: PdfValue): Uint8Array {
  const contents = file.entry(page, 'Contents');
  const parts = (isArray(contents) ? contents : [contents])
    .map((part) => file.resolved(part))
    .filter(isStream);
  return Buffer.concat(parts.flatMap((part) => [file.content(part), Buffer.from('\n')]));
}

type Matrix = readonly [number, number, number, number, number, number];

interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

interface State {
  readonly matrix: Matrix;
  readonly clip: Box;
}

/** Follows a content stream as far as strokes need it: matrices, clips, paths, and the drawings that it uses. */
class Interpreter {
  private state: State = { matrix: [1, 0, 0, 1, 0, 0], clip: { left: 0, bottom: 0, right: 0, top: 0 } };
  private path: XY[][] = [];
  private clips = false;

  constructor(
    private readonly file: PdfFile,
    private readonly strokes: Stroke[],
  ) {}

  run(content: Uint8Array, resources: PdfValue | undefined, start: State, depth: number): void {
    if (depth > 12) throw new UnreadablePdf('drawings in it use one another without end');
    this.state = start;
    const saved: State[] = [];
    const lexer = new PdfLexer(content);
    let operands: PdfValue[] = [];
    for (let token = lexer.next(); token !== undefined; token = lexer.next()) {
      if (!(token instanceof Word)) {
        operands.push(token);
        continue;
      }
      if (token.text === 'q') saved.push(this.state);
      else if (token.text === 'Q') this.state = saved.pop() ?? this.state;
      else if (token.text === 'Do') this.use(operands[0], resources, depth);
      else if (token.text === 'ID') throw new UnreadablePdf('a page of it holds a picture in place of lines');
      else
        this.operator(
          token.text,
          operands.filter((one) => typeof one === 'number'),
        );
      operands = [];
    }
  }

  private operator(name: string, [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0]: number[]): void {
    switch (name) {
      case 'cm':
        this.state = { ...this.state, matrix: times(this.state.matrix, [a, b, c, d, e, f]) };
        break;
      case 'm':
        this.path.push([this.at(a, b)]);
        break;
      case 'l':
        this.current().push(this.at(a, b));
        break;
      case 'c':
        this.curve(this.at(a, b), this.at(c, d), this.at(e, f));
        break;
      case 'v':
        this.curve(this.current().at(-1)!, this.at(a, b), this.at(c, d));
        break;
      case 'y':
        this.curve(this.at(a, b), this.at(c, d), this.at(c, d));
        break;
      case 'h':
        this.close();
        break;
      case 're':
        this.path.push([
          this.at(a, b),
          this.at(a + c, b),
          this.at(a + c, b + d),
          this.at(a, b + d),
          this.at(a, b),
        ]);
        break;
      case 'W':
      case 'W*':
        this.clips = true;
        break;
      case 's':
      case 'b':
      case 'b*':
        this.close();
        this.paint(true);
        break;
      case 'S':
      case 'B':
      case 'B*':
        this.paint(true);
        break;
      case 'n':
      case 'f':
      case 'F':
      case 'f*':
        this.paint(false);
        break;
    }
  }

  private current(): XY[] {
    const run = this.path.at(-1);
    if (run === undefined) throw new UnreadablePdf('a line in it has no beginning');
    return run;
  }

  private close(): void {
    const run = this.path.at(-1);
    if (run !== undefined) run.push(run[0]!);
  }

  private curve(b: XY, c: XY, d: XY): void {
    const run = this.current();
    const a = run.at(-1)!;
    const bend = Math.max(
      Math.hypot(a.x - 2 * b.x + c.x, a.y - 2 * b.y + c.y),
      Math.hypot(b.x - 2 * c.x + d.x, b.y - 2 * c.y + d.y),
    );
    // The chord of a part lies within 6·bend/8n² of the curve.
    const parts = Math.max(1, Math.ceil(Math.sqrt((0.75 * bend) / CHORD)));
    for (let part = 1; part <= parts; part++) run.push(cubicAt(a, b, c, d, part / parts));
  }

  private paint(stroked: boolean): void {
    if (stroked) {
      for (const run of this.path) {
        for (const [index, to] of run.slice(1).entries()) {
          const shown = clippedTo(run[index]!, to, this.state.clip);
          if (shown !== undefined) this.strokes.push(shown);
        }
      }
    }
    if (this.clips) this.state = { ...this.state, clip: meet(this.state.clip, boxAround(this.path.flat())) };
    this.clips = false;
    this.path = [];
  }

  private use(name: PdfValue | undefined, resources: PdfValue | undefined, depth: number): void {
    if (!isName(name)) return;
    const form = this.file.entry(this.file.entry(resources, 'XObject'), name.name);
    const kind = this.file.entry(form, 'Subtype');
    if (!isStream(form) || !isName(kind)) return;
    if (kind.name !== 'Form') throw new UnreadablePdf('a page of it holds a picture in place of lines');
    this.useForm(form, resources, depth);
  }

  private useForm(form: PdfStream, resources: PdfValue | undefined, depth: number): void {
    const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = this.file.numbers(this.file.entry(form, 'Matrix'));
    const matrix = times(this.state.matrix, [a, b, c, d, e, f]);
    const [left = 0, bottom = 0, right = 0, top = 0] = this.file.numbers(this.file.entry(form, 'BBox'));
    const corners = [
      point(matrix, left, bottom),
      point(matrix, right, top),
      point(matrix, left, top),
      point(matrix, right, bottom),
    ];
    const own = this.file.entry(form, 'Resources');
    const inside = new Interpreter(this.file, this.strokes);
    const start = { matrix, clip: meet(this.state.clip, boxAround(corners)) };
    inside.run(this.file.content(form), isDictionary(own) ? own : resources, start, depth + 1);
  }

  private at(x: number, y: number): XY {
    return point(this.state.matrix, x, y);
  }
}

/** Chords of curves lie within this of them, mm: a fiftieth of what the audit tells apart. */
const CHORD = 0.002;

function point([a, b, c, d, e, f]: Matrix, x: number, y: number): XY {
  return { x: a * x + c * y + e, y: b * x + d * y + f };
}

/** First `inner`, then `outer`. */
function times([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix {
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

function cubicAt(a: XY, b: XY, c: XY, d: XY, t: number): XY {
  const s = 1 - t;
  const [u, v, w, z] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
  return { x: u * a.x + v * b.x + w * c.x + z * d.x, y: u * a.y + v * b.y + w * c.y + z * d.y };
}

/** Clips of sheets are upright rectangles, of which this is exact. */
function boxAround(points: readonly XY[]): Box {
  const box = { left: Infinity, bottom: Infinity, right: -Infinity, top: -Infinity };
  for (const { x, y } of points) {
    box.left = Math.min(box.left, x);
    box.right = Math.max(box.right, x);
    box.bottom = Math.min(box.bottom, y);
    box.top = Math.max(box.top, y);
  }
  return box;
}

function meet(a: Box, b: Box): Box {
  return {
    left: Math.max(a.left, b.left),
    right: Math.min(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
    top: Math.min(a.top, b.top),
  };
}

/** The part of a segment within a box, or undefined (Liang and Barsky 1984). */
export function clippedTo(from: XY, to: XY, box: Box): Stroke | undefined {
  let enter = 0;
  let leave = 1;
  const sides = [
    [from.x - to.x, from.x - box.left],
    [to.x - from.x, box.right - from.x],
    [from.y - to.y, from.y - box.bottom],
    [to.y - from.y, box.top - from.y],
  ] as const;
  for (const [towards, room] of sides) {
    if (towards === 0 && room < 0) return undefined;
    if (towards < 0) enter = Math.max(enter, room / towards);
    if (towards > 0) leave = Math.min(leave, room / towards);
  }
  if (enter > leave) return undefined;
  const at = (t: number): XY => ({ x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t });
  return { from: at(enter), to: at(leave) };
}
