import { pieceCalled } from '../../diagnostics/piece-name.ts';
import type { CutPiece } from '../../draft/piece.ts';
import type { PatternWords } from '../../words/english-pattern.ts';
import { NO_BREAK } from '../text/plain-text.ts';

/** What is printed on every piece of one gown. */
export interface PieceLabels {
  readonly gown: string;
  readonly client?: string;
  /** Spec format and short content hash, so that paper can be traced to its spec. */
  readonly trace: string;
  /** A length as the maker reads it, with its unit. */
  readonly length: (mm: number) => string;
  readonly words: PatternWords;
}

type PieceWords = PatternWords['piece'];

export interface LabelLine {
  readonly text: string;
  readonly bold: boolean;
}

/**
 * The lines of text on a piece, the most needed first. `sharing` are pieces that lie on it and differ at the hem only:
 * their layers are named here too, and every hem at its own cut line.
 */
export function pieceText(
  cutPiece: CutPiece,
  labels: PieceLabels,
  sharing: readonly CutPiece[] = [],
): LabelLine[] {
  const layers = [cutPiece, ...sharing].flatMap((piece) => piece.layers);
  const plain = (text: string): LabelLine => ({ text, bold: false });
  const { piece: words } = labels.words;
  const gown = labels.client === undefined ? labels.gown : `${labels.gown} · ${labels.client}`;
  return [
    { text: pieceName(cutPiece, labels.words), bold: true },
    plain(cutText(cutPiece, words)),
    ...remarksOf(cutPiece, labels).map(plain),
    ...sharing.flatMap((piece) => bustleOf(piece, labels)).map(plain),
    plain(words.layers(layers)),
    plain(shortened(gown)),
    plain(cutPiece.piece.bias ? words.bias : words.grain),
    plain(allowanceText(cutPiece, labels, sharing)),
    plain(labels.trace),
  ];
}

/** What the maker does with it beside its lines. */
export function remarksOf(
  { remarks = [] }: CutPiece,
  { length, words }: Pick<PieceLabels, 'length' | 'words'>,
): string[] {
  return remarks.flatMap((remark) => words.piece.remark(remark, length));
}

/** The one remark of a piece that lies on another which that one does not share. */
function bustleOf({ remarks = [], ...piece }: CutPiece, labels: PieceLabels): string[] {
  return remarksOf({ ...piece, remarks: remarks.filter(({ kind }) => kind === 'bustle') }, labels);
}

/** The gore's name, with the wearer's side where the two differ. */
export function pieceName(cutPiece: CutPiece, words: PatternWords): string {
  const { side } = cutPiece.piece;
  return side === undefined ? pieceTitle(cutPiece) : words.piece.onSide(pieceTitle(cutPiece), side);
}

/** A bodice's panel has the name of the gore below it, and is told apart from it. */
export function pieceTitle({ gore, piece }: Pick<CutPiece, 'gore' | 'piece'>): string {
  return pieceCalled(gore, piece.part);
}

function cutText({ piece }: CutPiece, words: PieceWords): string {
  switch (piece.cut) {
    case 'on-fold':
      return words.onFold;
    case 'pair':
      return words.pair;
    case 'single':
      return words.single(piece.copies ?? 1);
  }
}

function allowanceText(cutPiece: CutPiece, labels: PieceLabels, sharing: readonly CutPiece[]): string {
  const { piece: words } = labels.words;
  const { allowances } = cutPiece;
  const top = cutPiece.piece.edges[0]!;
  const seams = [cutPiece.piece.frontEdge, cutPiece.piece.backEdge].filter((edge) => edge !== 'fold');
  const alike = seams.length > 1 && new Set(seams.map((edge) => allowances[edge])).size === 1;
  const hems =
    sharing.length === 0
      ? [hemPart(cutPiece, cutPiece.piece.edges[2]!.name, labels)]
      : [cutPiece, ...sharing].map((piece) => hemPart(piece, words.hemOf(piece.layers), labels));
  const parts = [
    widthText(top.name, allowances[top.name], labels),
    ...(alike
      ? [widthText(words.seams, allowances[seams[0]!], labels)]
      : seams.map((edge) => widthText(edge, allowances[edge], labels))),
    ...hems,
  ];
  return words.allowances(parts);
}

function hemPart({ allowances, roughCut, piece }: CutPiece, name: string, labels: PieceLabels): string {
  const rough = roughCut > 0 ? labels.words.piece.rough(unbroken(labels.length(roughCut))) : '';
  return widthText(name, allowances[piece.edges[2]!.name], labels) + rough;
}

function widthText(edge: string, width: number | undefined, { length, words }: PieceLabels): string {
  return width === undefined || width === 0
    ? words.piece.none(edge)
    : `${edge}${NO_BREAK}${unbroken(length(width))}`;
}

function unbroken(text: string): string {
  return text.replaceAll(' ', NO_BREAK);
}

/** A name as long as a line or two on a piece can bear; the sheets and the papers carry it in full. */
function shortened(text: string): string {
  const characters = [...text];
  return characters.length <= LONGEST_NAME
    ? text
    : `${characters.slice(0, LONGEST_NAME).join('').trimEnd()}…`;
}

const LONGEST_NAME = 60;
