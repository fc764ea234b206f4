import type { GownDraft } from '../draft/draft-gown.ts';
import type { GoreFold } from './gore-folds.ts';
import { columnsFor, NONE, ON_TOP, type PleatColumn } from './pleat-column.ts';

/** Columns of a gore with pleats at places of their own: each fold from its line to its inner edge and back, plain cloth between. */
export function placedPleats(
  draft: GownDraft,
  gore: number,
  folds: readonly GoreFold[],
  down: number,
): PleatColumn[] {
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
  const own = (line: Line): PleatColumn => ({
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
  const columns: PleatColumn[] = [own({ share: 0, beside: 0 })];
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
