import DOMMatrixShim from '@thednp/dommatrix';

/** A PDF as another library reads it: every stroked line in mm from the page's lower left corner, y up. */
export interface ReadPdf {
  readonly pages: readonly ReadPage[];
  readonly printScaling: unknown;
  readonly labels: readonly string[] | null;
  readonly outline: readonly {
    readonly title: string;
    readonly items: readonly { readonly title: string }[];
  }[];
  readonly layers: string[];
  /** Those that are off when the file is opened. */
  readonly layersOff: string[];
}

export interface ReadPage {
  /** Points, as the page box has them. */
  readonly box: readonly number[];
  readonly lines: readonly ReadLine[];
  readonly text: string;
}

/** One straight bit of a stroked path, curves having been cut finely. */
export interface ReadLine {
  readonly from: XY;
  readonly to: XY;
  /** mm. */
  readonly width: number;
  /** Drawn by a form that the page uses, rather than by the page itself. */
  readonly inForm: boolean;
  readonly clip: Box | undefined;
}

export interface XY {
  readonly x: number;
  readonly y: number;
}

export interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

type Matrix = readonly [number, number, number, number, number, number];

const MM = 25.4 / 72;

export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  (globalThis as { DOMMatrix?: unknown }).DOMMatrix ??= DOMMatrixShim;
  const pdfjs = await import('pdfjs-dist/legacy/build/pdf.mjs');
  const task = pdfjs.getDocument({ data: bytes.slice(), verbosity: 0, useSystemFonts: false });
  const document = await task.promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const operators = await page.getOperatorList();
    const content = await page.getTextContent();
    pages.push({
      box: page.view,
      lines: strokedLines(pdfjs.OPS as unknown as Record<string, number>, operators),
      text: content.items.map((item) => ('str' in item ? item.str : '')).join(' '),
    });
  }
  const preferences = (await document.getViewerPreferences()) as { PrintScaling?: unknown } | null;
  const config = await document.getOptionalContentConfig();
  const groups = [...(config as unknown as Iterable<[string, { name: string; visible: boolean }]>)].map(
    ([, group]) => group,
  );
  const read = {
    pages,
    printScaling: preferences?.PrintScaling,
    labels: await document.getPageLabels(),
    outline: (await document.getOutline()) ?? [],
    layers: groups.map(({ name }) => name),
    layersOff: groups.filter(({ visible }) => !visible).map(({ name }) => name),
  };
  await task.destroy();
  return read;
}

interface State {
  readonly matrix: Matrix;
  readonly clip: Box | undefined;
  readonly width: number;
}

function strokedLines(
  names: Record<string, number>,
  list: { readonly fnArray: readonly number[]; readonly argsArray: readonly unknown[] },
): ReadLine[] {
  const lines: ReadLine[] = [];
  const stack: State[] = [];
  let state: State = { matrix: [MM, 0, 0, MM, 0, 0], clip: undefined, width: 1 };
  let forms = 0;
  let clipNext = false;
  for (const [index, operator] of list.fnArray.entries()) {
    const args = list.argsArray[index] as never[];
    if (operator === names.save) stack.push(state);
    else if (operator === names.restore) state = stack.pop()!;
    else if (operator === names.transform)
      state = { ...state, matrix: times(state.matrix, args as unknown as Matrix) };
    else if (operator === names.setLineWidth) state = { ...state, width: args[0]! };
    else if (operator === names.paintFormXObjectBegin) {
      stack.push(state);
      forms += 1;
      const [matrix, box] = args as unknown as [Matrix | null, ArrayLike<number>];
      if (matrix !== null) state = { ...state, matrix: times(state.matrix, matrix) };
      state = { ...state, clip: meet(state.clip, boxOf(state.matrix, box)) };
    } else if (operator === names.paintFormXObjectEnd) {
      state = stack.pop()!;
      forms -= 1;
    } else if (operator === names.clip || operator === names.eoClip) clipNext = true;
    else if (operator === names.constructPath) {
      const [paint, paths, extent] = args as unknown as [
        number,
        [ArrayLike<number> | null],
        ArrayLike<number>,
      ];
      if (clipNext) state = { ...state, clip: meet(state.clip, boxOf(state.matrix, extent)) };
      clipNext = false;
      if (paint === names.stroke || paint === names.closeStroke || paint === names.fillStroke) {
        const drawn = paths[0] === null ? [] : segments(paths[0], state.matrix);
        for (const [from, to] of drawn) {
          lines.push({ from, to, width: state.width * MM, inForm: forms > 0, clip: state.clip });
        }
      }
    }
  }
  return lines;
}

/** Operators of a path as this version of the library codes them: 0 move, 1 line, 2 curve, 3 quadratic, 4 close. */
function segments(path: ArrayLike<number>, matrix: Matrix): [XY, XY][] {
  const found: [XY, XY][] = [];
  let start: XY = { x: 0, y: 0 };
  let at = start;
  for (let i = 0; i < path.length; ) {
    const code = path[i]!;
    const next = (offset: number) => apply(matrix, path[i + offset]!, path[i + offset + 1]!);
    if (code === 0) {
      start = next(1);
      at = start;
      i += 3;
    } else if (code === 1) {
      found.push([at, next(1)]);
      at = next(1);
      i += 3;
    } else if (code === 2) {
      const curve = [at, next(1), next(3), next(5)] as const;
      for (let part = 1; part <= PARTS; part++) {
        const to = bezier(curve, part / PARTS);
        found.push([at, to]);
        at = to;
      }
      i += 7;
    } else if (code === 4) {
      if (Math.hypot(at.x - start.x, at.y - start.y) > 1e-3) found.push([at, start]);
      at = start;
      i += 1;
    } else throw new Error(`a path operator that this reader does not know: ${code}`);
  }
  return found;
}

/** Of one cubic: chords lie within 0.01 mm on the curves of a gown. */
const PARTS = 64;

export function bezier([a, b, c, d]: readonly [XY, XY, XY, XY], t: number): XY {
  const s = 1 - t;
  const weigh = (p: number, q: number, r: number, u: number) =>
    s * s * s * p + 3 * s * s * t * q + 3 * s * t * t * r + t * t * t * u;
  return { x: weigh(a.x, b.x, c.x, d.x), y: weigh(a.y, b.y, c.y, d.y) };
}

function times([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix {
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

function apply([a, b, c, d, e, f]: Matrix, x: number, y: number): XY {
  return { x: a * x + c * y + e, y: b * x + d * y + f };
}

function boxOf(matrix: Matrix, corners: ArrayLike<number>): Box {
  const a = apply(matrix, corners[0]!, corners[1]!);
  const b = apply(matrix, corners[2]!, corners[3]!);
  return {
    left: Math.min(a.x, b.x),
    right: Math.max(a.x, b.x),
    bottom: Math.min(a.y, b.y),
    top: Math.max(a.y, b.y),
  };
}

function meet(a: Box | undefined, b: Box): Box {
  if (a === undefined) return b;
  return {
    left: Math.max(a.left, b.left),
    right: Math.min(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
    top: Math.min(a.top, b.top),
  };
}

/** The part of a line inside a box, or undefined. */
export function clipped(from: XY, to: XY, box: Box): [XY, XY] | undefined {
  let enter = 0;
  let leave = 1;
  for (const [start, change, low, high] of [
    [from.x, to.x - from.x, box.left, box.right],
    [from.y, to.y - from.y, box.bottom, box.top],
  ] as const) {
    if (change === 0) {
      if (start < low || start > high) return undefined;
      continue;
    }
    const a = (low - start) / change;
    const b = (high - start) / change;
    enter = Math.max(enter, Math.min(a, b));
    leave = Math.min(leave, Math.max(a, b));
  }
  if (enter >= leave) return undefined;
  const at = (t: number) => ({ x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t });
  return [at(enter), at(leave)];
}
