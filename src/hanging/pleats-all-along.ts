import type { GownDraft } from '../draft/draft-gown.ts';
import { foldsAllAlong, type GorePleating } from './gore-folds.ts';
import { columnsFor, NONE, ON_TOP, type PleatColumn } from './pleat-column.ts';

/** Columns of a gore whose top is pleated all along: a column at every fold's three edges, others between. */
export function pleatsAllAlong(
  draft: GownDraft,
  gore: number,
  { full, frontFirst }: Extract<GorePleating, { is: 'filled' }>,
): PleatColumn[] {
  const frame = draft.frames[gore]!;
  const hem = frame.widthAt(draft.hem.valueAt(draft.hem.ways[gore]!));
  const columns: PleatColumn[] = [];
  let last: PleatColumn | undefined;
  const goTo = (next: PleatColumn): void => {
    if (last === undefined || (next.share - last.share) * full.cut < NONE) columns.pop();
    else {
      const count = columnsFor(hem * (next.share - last.share));
      for (let i = 1; i < count; i++) columns.push(betweenColumns(last, next, i / count));
    }
    columns.push(next);
    last = next;
  };
  const knot = (share: number, along: number, aside: number, ply: number): PleatColumn => ({
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

function betweenColumns(a: PleatColumn, b: PleatColumn, part: number): PleatColumn {
  const mean = (of: (column: PleatColumn) => number): number => of(a) + (of(b) - of(a)) * part;
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
