import type { Layout } from './layout.ts';

interface Row {
  readonly top: number;
  /** Where the next item may begin across the strip. */
  right: number;
}

/**
 * Lays the items in rows, the longest first, each in the first row that has room for it (first fit by decreasing height:
 * E. Coffman and others, 1980). It is a poor packing but a sure one, which the search begins from.
 */
export function layInRows(layout: Layout): void {
  const gap = Math.max(0, layout.problem.gap);
  layout.length = Infinity;
  for (let item = 0; item < layout.count; item++) layout.put(item, 0, 0, 0);
  const order = Array.from({ length: layout.count }, (_, item) => item).sort(
    (a, b) => layout.halfHeight(b) - layout.halfHeight(a) || a - b,
  );
  const rows: Row[] = [];
  let bottom = 0;
  for (const item of order) {
    const row = rows.find((open) => putInRow(layout, item, open, gap));
    if (row !== undefined) continue;
    const opened: Row = { top: bottom, right: 0 };
    layout.put(item, 0, layout.halfWidth(item), bottom + layout.halfHeight(item));
    while (layout.y(item) - layout.halfHeight(item) < bottom) {
      layout.put(
        item,
        0,
        layout.x(item),
        layout.y(item) + (layout.problem.repeat?.down ?? layout.halfHeight(item)),
      );
    }
    opened.right = layout.x(item) + layout.halfWidth(item) + gap;
    bottom = layout.y(item) + layout.halfHeight(item) + gap;
    rows.push({ ...opened, top: layout.y(item) - layout.halfHeight(item) });
  }
  layout.length = layout.used();
}

/** Puts an item at the end of a row, on the pattern where there is one. Whether there was room. */
function putInRow(layout: Layout, item: number, row: Row, gap: number): boolean {
  const half = layout.halfWidth(item);
  const step = layout.problem.repeat?.across?.step ?? 0;
  let x = row.right + half;
  layout.put(item, 0, x, row.top + layout.halfHeight(item));
  if (layout.x(item) < x && step > 0) {
    x += step;
    layout.put(item, 0, x, row.top + layout.halfHeight(item));
  }
  const slack = layout.problem.width * 1e-12;
  if (layout.x(item) - half < row.right - slack) return false;
  row.right = layout.x(item) + half + gap;
  return true;
}
