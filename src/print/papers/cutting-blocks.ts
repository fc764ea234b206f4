import type { CutPiece } from '../../draft/piece.ts';
import { boundsOfCurves } from '../../geometry/bounds.ts';
import type { Curve } from '../../geometry/curve.ts';
import type { Block } from '../page/page-blocks.ts';
import { pieceTitle } from '../pattern/piece-text.ts';
import { howCut } from './measure-blocks.ts';
import type { PaperInput } from './paper-input.ts';

/** The cutting list and the lays. */
export function cuttingBlocks(input: PaperInput): Block[] {
  const { words, lays } = input;
  const { jobSheet: text } = words;
  return [
    { kind: 'heading', level: 2, text: text.cutting },
    {
      kind: 'table',
      tick: true,
      caption: text.cuttingCaption,
      heads: text.cuttingHeads,
      rows: input.cutPieces.map((piece) => cuttingRow(piece, words)),
    },
    ...(lays.length === 0 ? [] : [{ kind: 'heading', level: 2, text: text.lays } as const]),
    ...lays.flatMap((lay): Block[] => [
      { kind: 'heading', level: 3, text: lay.name },
      lay.drawing === undefined
        ? { kind: 'paragraph', text: lay.caption }
        : { kind: 'figure', drawing: lay.drawing, maxHeight: 110, caption: lay.caption },
    ]),
  ];
}

function cuttingRow(cut: CutPiece, words: PaperInput['words']): string[] {
  const box = boundsOfCurves(cut.cutEdges.flatMap((edge): readonly Curve[] => edge.curves));
  return [
    pieceTitle(cut),
    words.list(cut.layers),
    [howCut(cut.piece, words), ...(cut.remarks ?? []).flatMap(words.remark)].join('; '),
    `${words.number(box.right - box.left)} × ${words.number(box.bottom - box.top)}`,
    allowanceText(cut, words),
  ];
}

/** `waist 1.5, sides 1.5, hem 1.5 + 2.0 rough`. */
function allowanceText(cut: CutPiece, words: PaperInput['words']): string {
  const { jobSheet: text } = words;
  const number = (width: number) => (width === 0 ? '0' : words.number(width));
  const { frontEdge, backEdge } = cut.piece;
  const sides = [frontEdge, backEdge].filter((edge) => edge !== 'fold');
  const widths = sides.map((edge) => cut.allowances[edge] ?? 0);
  const alike = widths.every((width) => Math.abs(width - widths[0]!) < 0.01);
  const others = cut.piece.edges
    .map((edge) => edge.name)
    .filter((name) => name !== 'fold' && !sides.includes(name));
  const [top, ...rest] = others.map((name) => allowanceOf(cut, name, words));
  const bySide = alike
    ? sides.length === 0
      ? []
      : [text.allowance(text.sides, number(widths[0]!))]
    : sides.map((edge, i) => text.allowance(words.station(edge), number(widths[i]!)));
  return [top ?? '', ...bySide, ...rest].filter((part) => part !== '').join(', ');
}

function allowanceOf(cut: CutPiece, edge: string, words: PaperInput['words']): string {
  const width = cut.allowances[edge] ?? 0;
  const own = words.jobSheet.allowance(words.station(edge), width === 0 ? '0' : words.number(width));
  return edge === 'hem' && cut.roughCut > 0
    ? `${own} ${words.jobSheet.rough(words.number(cut.roughCut))}`
    : own;
}
