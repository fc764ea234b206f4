import type { Block } from '../page/page-blocks.ts';
import type { PaperInput } from './paper-input.ts';
import { type DrawnViews, viewsDrawing } from './views-drawing.ts';

/** Which rows: as she walks in it, the others (its train drawn up), or all. */
export type ViewsShown = 'first' | 'others' | 'all';

/** The gown from all sides as it hangs. */
export function viewsBlock(
  { words, views }: PaperInput,
  room: { readonly width: number; readonly height: number },
  shown: ViewsShown = 'all',
): Block[] {
  if (views === undefined) return [];
  const all = views.rows;
  const rows = shown === 'all' ? all : shown === 'first' ? all.slice(0, 1) : all.slice(1);
  const drawn = { ...views, rows };
  return rows.length === 0
    ? []
    : [{ kind: 'figure', drawing: viewsDrawing(drawn, room), caption: viewsCaption(drawn, words) }];
}

/** What is drawn, how its lines are to be read, and what is left out. */
export function viewsCaption(
  { rows, under = [], layer, notHung, isBodiceDrafted }: DrawnViews,
  words: PaperInput['words'],
): string {
  const { hung } = words;
  const shown = rows.flat().map(({ view }) => view);
  const tiers = shown.filter((view) => under.includes(view));
  return [
    ...(tiers.length < shown.length ? [hung.drawn(layer)] : []),
    ...(tiers.length > 0 ? [hung.tiers] : []),
    ...(shown.some((view) => view.opening.length > 0) ? [words.opening] : []),
    ...(shown.some((view) => view.edging.length > 0) ? [hung.edging] : []),
    hung.figure(isBodiceDrafted),
    ...(notHung.length === 0 ? [] : [hung.without(words.list(notHung))]),
  ].join(' ');
}
