import type { PdfFile } from './pdf-file.ts';
import { PdfLexer, UnreadablePdf, Word } from './pdf-lexer.ts';
import { isDictionary, isName, isStream, type PdfStream, type PdfValue } from './pdf-value.ts';
import {
  type Box,
  boxAround,
  clippedTo,
  cubicAt,
  type Matrix,
  mapped,
  meet,
  type Stroke,
  times,
  type XY,
} from './plane.ts';

export interface State {
  readonly matrix: Matrix;
  readonly clip: Box;
}

/** Follows a content stream as far as strokes need it: matrices, clips, paths, and the drawings that it uses. */
export class ContentReader {
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
      mapped(matrix, left, bottom),
      mapped(matrix, right, top),
      mapped(matrix, left, top),
      mapped(matrix, right, bottom),
    ];
    const own = this.file.entry(form, 'Resources');
    const inside = new ContentReader(this.file, this.strokes);
    const start = { matrix, clip: meet(this.state.clip, boxAround(corners)) };
    inside.run(this.file.content(form), isDictionary(own) ? own : resources, start, depth + 1);
  }

  private at(x: number, y: number): XY {
    return mapped(this.state.matrix, x, y);
  }
}

/** Chords of curves lie within this of them, mm: a fiftieth of what the audit tells apart. */
const CHORD = 0.002;
