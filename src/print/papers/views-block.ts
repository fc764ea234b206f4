import type { Block } from '../page/page-blocks.ts';
import { frontAndBack } from './gown-drawing.ts';
import type { PaperInput } from './paper-input.ts';
import { type DrawnViews, viewsDrawing } from './views-drawing.ts';

/** The gown from all sides as it hangs; where it was not hung, from the front and the back as cones. */
export function viewsBlock(
  input: PaperInput,
  room: { readonly width: number; readonly height: number },
): Block {
  const { words, silhouette, views } = input;
  return views === undefined
    ? {
        kind: 'figure',
        drawing: frontAndBack(silhouette, { ...words.views, number: words.number }, room.width, room.height),
        caption: drawingCaption(input),
      }
    : { kind: 'figure', drawing: viewsDrawing(views, room), caption: viewsCaption(views, words) };
}

/** What is drawn, how its lines are to be read, and what is left out. */
export function viewsCaption(
  { rows, layer, notHung, isBodiceDrafted }: DrawnViews,
  words: PaperInput['words'],
): string {
  const { hung } = words;
  const shown = rows.flat().map(({ view }) => view);
  return [
    hung.drawn(layer),
    ...(shown.some((view) => view.opening.length > 0) ? [words.bold] : []),
    ...(shown.some((view) => view.edging.length > 0) ? [hung.edging] : []),
    hung.figure(isBodiceDrafted),
    ...(notHung.length === 0 ? [] : [hung.without(words.list(notHung))]),
  ].join(' ');
}

/** What the drawing's figures are, and how its lines are to be read. */
export function drawingCaption({ words, silhouette, gown }: PaperInput): string {
  const opens = [silhouette.front, silhouette.back].some((view) => view.opening !== undefined);
  const sentences = [
    `${words.jobSheet.lengthsCaption(gown.waist !== undefined)}.`,
    ...(opens ? [words.bold] : []),
    ...(silhouette.inFolds ? [words.inFolds] : []),
  ];
  return sentences.join(' ');
}
