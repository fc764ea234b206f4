import type { Block } from '../page/page-blocks.ts';
import type { PaperInput } from './paper-input.ts';

/** What each layer is joined with, and the closure's figures. */
export function joinBlocks(input: PaperInput): Block[] {
  const { words, gown } = input;
  const { jobSheet: text } = words;
  const closure = closureRows(input);
  return [
    { kind: 'heading', level: 2, text: text.joins },
    {
      kind: 'table',
      heads: text.joinHeads,
      rows: [...gown.layers].reverse().map((layer) => joinRow(input, layer.name)),
    },
    { kind: 'heading', level: 2, text: text.closure },
    { kind: 'table', heads: ['', ''], rows: closure, shares: [2, 5] },
  ];
}

/** The flounce that is a layer's hem: it has no other. */
export function flounceAtHem({ flounces }: PaperInput['gown'], layer: string): string | undefined {
  return flounces.find(({ sewnTo, aboveHem }) => sewnTo.name === layer && aboveHem === 0)?.name;
}

export function joinRow({ words, workroom, gown }: PaperInput, layer: string): string[] {
  const { jobSheet: text } = words;
  const group = workroom.waist.groups.find((own) => own.layers.includes(layer))?.layers ?? [layer];
  const others = (layers: readonly string[]): string[] => layers.filter((name) => name !== layer);
  const joined = (layers: readonly string[]): string =>
    others(layers).length === 0 ? text.alone : text.withLayers(others(layers));
  const { closure } = workroom;
  const hem = workroom.hems.find((own) => own.layer === layer);
  return [
    layer,
    joined(group),
    closure === undefined
      ? text.free
      : closure.felled.includes(layer)
        ? text.felledLast
        : joined(closure.takes),
    hem === undefined
      ? ''
      : hem.partner === undefined
        ? (flounceAtHem(gown, layer) ?? words.finishes[hem.finish])
        : text.baggedTo(hem.partner),
  ];
}

function closureRows({ words, workroom, gown }: PaperInput): string[][] {
  const { closureRows: text, length, list } = words;
  const { closure, waist } = workroom;
  const rows: string[][] = [];
  if (closure !== undefined) {
    rows.push([text.kind[closure.kind], text.side(closure.at, closure.side)]);
    if (closure.kind === 'zip') rows.push([text.starts, length(closure.starts)]);
    if (closure.stops !== undefined) rows.push([text.stops, length(closure.stops)]);
    if (closure.zip !== undefined) {
      const by = closure.zip.shortenBy > 0 ? length(closure.zip.shortenBy) : undefined;
      rows.push([text.zip, text.zipText(length(closure.zip.stock), by)]);
    }
    if (closure.passage !== undefined)
      rows.push([text.passes, text.passesText(length(closure.passage.passes))]);
    for (const { entry, girth, room } of closure.passage?.against ?? []) {
      rows.push([text.against[entry], text.room(length(girth), length(Math.abs(room)), room >= 0)]);
    }
    rows.push([text.takes, list(closure.takes)]);
    if (closure.felled.length > 0) rows.push([text.felled, list(closure.felled)]);
    if (gown.waist === undefined) rows.push([text.beside, text.besideText[closure.beside]]);
    if (closure.beside !== 'sewn' || closure.finish !== undefined) {
      rows.push([
        text.finish,
        closure.finish === undefined ? text.notDecided : text.finishText[closure.finish],
      ]);
    }
  }
  const { wrap } = gown;
  if (wrap !== undefined) {
    rows.push([text.wrap, text.wrapText(wrap.at, wrap.over)]);
    rows.push([text.overlap, text.overlapText(length(wrap.overlap), length(wrap.overlapAtHem))]);
    rows.push([text.edges, wrap.edges], [text.held, wrap.fastened]);
  }
  for (const { layers, plies } of waist.groups) {
    rows.push([text.plies(layers), text.pliesText(plies.together, plies.atCrossings)]);
  }
  if (waist.clearance !== undefined && waist.bonesEnd !== undefined) {
    rows.push([
      text.bones,
      text.bonesText(length(Math.max(0, waist.clearance)), length(waist.bonesEnd), length(waist.secondRow)),
    ]);
  }
  return rows;
}
