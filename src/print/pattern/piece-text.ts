import type { CutPiece } from '../../draft/piece.ts';
import { NO_BREAK } from '../text/plain-text.ts';

/** What is printed on every piece of one gown. */
export interface PieceLabels {
  readonly gown: string;
  readonly client?: string;
  /** Spec format and short content hash, so that paper can be traced to its spec. */
  readonly trace: string;
  /** A length as the maker reads it, with its unit. */
  readonly length: (mm: number) => string;
}

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
  const gown = labels.client === undefined ? labels.gown : `${labels.gown} · ${labels.client}`;
  return [
    { text: pieceName(cutPiece), bold: true },
    plain(cutText(cutPiece)),
    ...(cutPiece.remarks ?? []).map(plain),
    plain(`${layers.length === 1 ? 'layer' : 'layers'}: ${layers.join(', ')}`),
    plain(shortened(gown)),
    plain('grain: along the arrows'),
    plain(allowanceText(cutPiece, labels.length, sharing)),
    plain(labels.trace),
  ];
}

/** What stands at the cut line of a hem where pieces that share their other edges have each their own. */
export function hemText({ layers }: CutPiece): string {
  return `${layers.join(', ')}: cut`;
}

/** The gore's name, with the wearer's side where the two differ. */
export function pieceName(cutPiece: CutPiece): string {
  const { side } = cutPiece.piece;
  return side === undefined ? pieceTitle(cutPiece) : `${pieceTitle(cutPiece)}, wearer’s ${side}`;
}

/** A bodice's panel has the name of the gore below it, and is told apart from it. */
export function pieceTitle({ gore, piece }: Pick<CutPiece, 'gore' | 'piece'>): string {
  return piece.part === 'bodice' ? `bodice ${gore}` : gore;
}

function cutText({ piece }: CutPiece): string {
  switch (piece.cut) {
    case 'on-fold':
      return 'cut 1 on fold';
    case 'pair':
      return 'cut 1 pair';
    case 'single':
      return `cut ${piece.copies ?? 1}`;
  }
}

function allowanceText(
  cutPiece: CutPiece,
  length: (mm: number) => string,
  sharing: readonly CutPiece[],
): string {
  const { allowances } = cutPiece;
  const top = cutPiece.piece.edges[0]!;
  const seams = [cutPiece.piece.frontEdge, cutPiece.piece.backEdge].filter((edge) => edge !== 'fold');
  const alike = seams.length > 1 && new Set(seams.map((edge) => allowances[edge])).size === 1;
  const hems =
    sharing.length === 0
      ? [hemPart(cutPiece, cutPiece.piece.edges[2]!.name, length)]
      : [cutPiece, ...sharing].map((piece) => hemPart(piece, `hem of ${piece.layers.join(', ')}`, length));
  const parts = [
    widthText(top.name, allowances[top.name], length),
    ...(alike
      ? [widthText('seams', allowances[seams[0]!], length)]
      : seams.map((edge) => widthText(edge, allowances[edge], length))),
    ...hems,
  ];
  return `allowances included: ${parts.join(', ')}`;
}

function hemPart(
  { allowances, roughCut, piece }: CutPiece,
  name: string,
  length: (mm: number) => string,
): string {
  const rough = roughCut > 0 ? ` and ${unbroken(length(roughCut))} rough-cut extra` : '';
  return widthText(name, allowances[piece.edges[2]!.name], length) + rough;
}

function widthText(edge: string, width: number | undefined, length: (mm: number) => string): string {
  return width === undefined || width === 0 ? `${edge} none` : `${edge}${NO_BREAK}${unbroken(length(width))}`;
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
