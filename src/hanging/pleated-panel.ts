import type { GownDraft } from '../draft/draft-gown.ts';
import type { Point } from '../geometry/curve.ts';
import { foldsAllAlong, type GoreFold, type GorePleating } from './gore-folds.ts';
import { depthsAcross, FINEST, steady } from './gown-panels.ts';
import type { Folded, Panel } from './sewn-cloth.ts';

/**
 * A gore with its pleats opened out flat, and how they lie folded. Every fold is a column, and so is its inner edge, in a
 * mesh of twice the stride too.
 *
 * ```
 *            outer edge                under 'last': the same from the other side
 *   gore ────────────┐  ply 2
 *          ┌─────────┘  ply 1          columns: gore, outer edge, inner edge, line, gore
 *          └──────────┬─ gore  ply 0
 *      inner edge    line
 * ```
 */
export function pleatedPanel(draft: GownDraft, gore: number, pleating: GorePleating, down: number): Panel {
  const columns =
    pleating.is === 'placed' ? placed(draft, gore, pleating.folds, down) : allAlong(draft, gore, pleating);
  const flat = flatOf(draft, gore, columns, down);
  const across = columns.length - 1;
  return {
    name: draft.gown.gores[gore]!.name,
    across,
    strips: [{ first: 0, down, flat }],
    folded: { ...foldedOf(columns, draft.gown.gores[gore]!.top), widens: pleating.is === 'filled' },
  };
}

/** A column of pleated cloth; lengths in mm. */
interface Column {
  /** Where its line lies: part of the way across the gore, and how far beyond that all the way down. */
  readonly share: number;
  readonly beside: number;
  /** What is let in on its line, and how far into it the column lies. */
  readonly into: number;
  readonly fold?: GoreFold;
  /** First row in which its fold is there. */
  readonly from: number;
  /** Along the top as it is sewn, of the gore's line; and from there to where it lies folded. */
  readonly along: number;
  readonly aside: number;
  readonly ply: number;
  /** It is pressed here; and one sees the fold. */
  readonly isFold: boolean;
  readonly isOuter: boolean;
  /** The cloth from here to the next column is the skirt's own and not a fold's. */
  readonly shows: boolean;
}

/** Even numbers of columns, so that every fold is there in a mesh twice as coarse. */
function columnsFor(width: number): number {
  return 2 * Math.max(1, Math.round(width / FINEST / 2));
}

/** Cloth narrower than this at the top is none, mm. */
const NONE = 1;
/** What lies over both plies of a fold. */
const ON_TOP = 2;

function placed(draft: GownDraft, gore: number, folds: readonly GoreFold[], down: number): Column[] {
  const frame = draft.frames[gore]!;
  const [top, hem] = [draft.waist, draft.hem].map((edge) =>
    frame.widthAt(edge.valueAt(edge.ways[gore]!)),
  ) as [number, number];
  const at = ({ share, beside }: Line): number => share * top + beside;
  const sorted = [...folds].sort(
    (a, b) => at(a) - at(b) || (a.under === b.under ? 0 : a.under === 'first' ? -1 : 1),
  );
  const plyAt = (line: Line): number =>
    sorted.some(({ share, beside, under, depth, begins }) => {
      const off = (at(line) - at({ share, beside })) * (under === 'first' ? -1 : 1);
      return begins === undefined && off > -NONE && off < depth;
    })
      ? ON_TOP
      : 0;
  const sewn = draft.gown.gores[gore]!.top;
  const own = (line: Line): Column => ({
    ...line,
    into: 0,
    from: 0,
    along: (sewn * at(line)) / top,
    aside: 0,
    ply: plyAt(line),
    isFold: false,
    isOuter: false,
    shows: true,
  });
  const columns: Column[] = [own({ share: 0, beside: 0 })];
  let last: Line = { share: 0, beside: 0 };
  const goTo = (line: Line): void => {
    if (at(line) - at(last) > NONE) {
      const count = columnsFor(hem * (line.share - last.share) + line.beside - last.beside);
      for (let i = 1; i <= count; i++) columns.push(own(between(last, line, i / count)));
    }
    last = line;
  };
  for (const fold of sorted) {
    const line = { share: fold.share, beside: fold.beside };
    goTo(line);
    const count = columnsFor(fold.depth);
    const from = fold.begins === undefined ? 0 : rowFrom(draft.lengths[gore]!, fold.begins, down);
    // Where two folds meet, the end of the one is the beginning of the other.
    const isMet = columns[columns.length - 1]!.fold !== undefined;
    if (!isMet) columns.pop();
    for (let i = isMet ? 1 : 0; i <= 2 * count; i++) {
      const into = (fold.depth * i) / count;
      const under = Math.min(into, 2 * fold.depth - into);
      const isFirst = fold.under === 'first';
      const ply = i / count;
      columns.push({
        ...own(line),
        fold,
        from,
        into,
        aside: isFirst ? -under : under,
        ply: isFirst ? ON_TOP - ply : ply,
        isFold: i === count || i === (isFirst ? 0 : 2 * count),
        isOuter: i === (isFirst ? 0 : 2 * count),
        shows: i === 2 * count,
      });
    }
  }
  goTo({ share: 1, beside: 0 });
  return columns;
}

type Line = Pick<GoreFold, 'share' | 'beside'>;

function between(a: Line, b: Line, part: number): Line {
  return { share: a.share + (b.share - a.share) * part, beside: a.beside + (b.beside - a.beside) * part };
}

/** The first row that is no more than so far above the hem. */
function rowFrom(length: number, above: number, down: number): number {
  return Math.min(down, Math.max(0, 2 * Math.ceil((down * (length - above)) / length / 2)));
}

function allAlong(
  draft: GownDraft,
  gore: number,
  { full, frontFirst }: Extract<GorePleating, { is: 'filled' }>,
): Column[] {
  const frame = draft.frames[gore]!;
  const hem = frame.widthAt(draft.hem.valueAt(draft.hem.ways[gore]!));
  const columns: Column[] = [];
  let last: Column | undefined;
  const goTo = (next: Column): void => {
    if (last === undefined || (next.share - last.share) * full.cut < NONE) columns.pop();
    else {
      const count = columnsFor(hem * (next.share - last.share));
      for (let i = 1; i < count; i++) columns.push(betweenColumns(last, next, i / count));
    }
    columns.push(next);
    last = next;
  };
  const knot = (share: number, along: number, aside: number, ply: number): Column => ({
    share,
    beside: 0,
    into: 0,
    from: 0,
    along,
    aside,
    ply,
    isFold: false,
    isOuter: false,
    shows: false,
  });
  goTo({ ...knot(0, 0, 0, 0), shows: true });
  for (const { under, cut, sewn } of foldsAllAlong(full, frontFirst)) {
    const depth = (cut[1] - cut[0]) * full.cut;
    const isFirst = under === 'first';
    goTo({ ...knot(cut[0], sewn, 0, isFirst ? ON_TOP : 0), isFold: isFirst, isOuter: isFirst });
    goTo({ ...knot(cut[1], sewn, isFirst ? -depth : depth, 1), isFold: true });
    goTo({
      ...knot(cut[2], sewn, 0, isFirst ? 0 : ON_TOP),
      isFold: !isFirst,
      isOuter: !isFirst,
      shows: true,
    });
  }
  goTo({ ...knot(1, full.sewn, 0, 0), shows: true });
  return columns;
}

function betweenColumns(a: Column, b: Column, part: number): Column {
  const mean = (of: (column: Column) => number): number => of(a) + (of(b) - of(a)) * part;
  return {
    ...a,
    share: mean(({ share }) => share),
    along: mean(({ along }) => along),
    aside: mean(({ aside }) => aside),
    ply: mean(({ ply }) => ply),
    isFold: false,
    isOuter: false,
  };
}

/** Every fold opened out square to its line, the gore beyond it moved on by what it takes. */
function flatOf(draft: GownDraft, gore: number, columns: readonly Column[], down: number): Float64Array {
  const frame = draft.frames[gore]!;
  const { waist, hem } = draft;
  const [top, bottom] = [waist, hem].map((edge) => {
    const width = frame.widthAt(edge.valueAt(edge.ways[gore]!));
    const shares = columns.map(({ share, beside }) => Math.min(1, Math.max(0, share + beside / width)));
    return depthsAcross(draft, gore, edge, shares);
  }) as [number[], number[]];
  const pointAt = (column: number, row: number): Point => {
    const { share, beside } = columns[column]!;
    const slant = top[column]! + ((bottom[column]! - top[column]!) * row) / down;
    return frame.pointAt(slant, share + beside / frame.widthAt(slant));
  };
  const flat = new Float64Array(2 * columns.length * (down + 1));
  let [movedX, movedY] = [0, 0];
  for (const [column, { fold, into, from, share }] of columns.entries()) {
    const [a, b] = [pointAt(column, 0), pointAt(column, down)];
    const long = Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2);
    // Square to the line, to the last side edge.
    const [x, y] = [(b.y - a.y) / long, (a.x - b.x) / long];
    const isWedge = from > 0;
    // What begins above the hem is let in beside the gore, which stays where it is.
    const out = fold === undefined ? 0 : isWedge && share === 0 ? into - 2 * fold.depth : into;
    for (let row = 0; row <= down; row++) {
      const point = pointAt(column, row);
      const let_ = row < from ? 0 : out;
      const at = 2 * (column * (down + 1) + row);
      flat[at] = steady(point.x + movedX + x * let_);
      flat[at + 1] = steady(point.y + movedY + y * let_);
    }
    if (fold !== undefined && !isWedge && into >= 2 * fold.depth) {
      movedX += x * into;
      movedY += y * into;
    }
  }
  return flat;
}

function foldedOf(columns: readonly Column[], sewn: number): Omit<Folded, 'widens'> {
  const stitched = columns.flatMap(({ fold, into }, end) => {
    if (fold === undefined || into < 2 * fold.depth || !(fold.stitchedDown > 0)) return [];
    const first = columns.findIndex((other) => other.fold === fold);
    return [
      { columns: [columns[first]!.into > 0 ? first - 1 : first, end] as const, down: fold.stitchedDown },
    ];
  });
  return {
    along: columns.map(({ along }) => along / sewn),
    aside: columns.map(({ aside }) => aside),
    plies: columns.map(({ ply }) => ply),
    from: columns.map(({ from }) => from),
    shows: columns.map(({ shows }) => shows),
    folds: columns.flatMap(({ isFold }, column) => (isFold ? [column] : [])),
    seen: columns.flatMap(({ isOuter, fold, from }, column) =>
      isOuter ? [{ column, from: fold === undefined ? 0 : from }] : [],
    ),
    stitched,
  };
}
