import type { CutPiece } from '../draft/piece.ts';

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

/** The lines of text on a piece, the most needed first. */
export function pieceText(cutPiece: CutPiece, labels: PieceLabels): LabelLine[] {
  const { piece, layers } = cutPiece;
  const plain = (text: string): LabelLine => ({ text, bold: false });
  const gown = labels.client === undefined ? labels.gown : `${labels.gown} · ${labels.client}`;
  return [
    { text: pieceName(cutPiece), bold: true },
    plain(cutText(cutPiece)),
    plain(`${layers.length === 1 ? 'layer' : 'layers'}: ${layers.join(', ')}`),
    plain(shortened(gown)),
    plain('grain: along the arrows'),
    plain(allowanceText(cutPiece, piece.frontEdge, piece.backEdge, labels.length)),
    plain(labels.trace),
  ];
}

/** The gore's name, with the wearer's side where the two differ. */
export function pieceName({ gore, piece }: CutPiece): string {
  return piece.side === undefined ? gore : `${gore}, wearer’s ${piece.side}`;
}

function cutText({ piece }: CutPiece): string {
  switch (piece.cut) {
    case 'on-fold':
      return 'cut 1 on fold';
    case 'pair':
      return 'cut 1 pair';
    case 'single':
      return 'cut 1';
  }
}

function allowanceText(
  { allowances, roughCut }: CutPiece,
  frontEdge: string,
  backEdge: string,
  length: (mm: number) => string,
): string {
  const seams = [frontEdge, backEdge].filter((edge) => edge !== 'fold' && allowances[edge] !== undefined);
  const alike = new Set(seams.map((edge) => allowances[edge])).size === 1;
  const named: [string, number][] = [
    ['waist', allowances.waist ?? 0],
    ...(alike && seams.length > 1
      ? [['seams', allowances[seams[0]!]!] as [string, number]]
      : seams.map((edge): [string, number] => [edge, allowances[edge]!])),
    ['hem', allowances.hem ?? 0],
  ];
  const parts = named.map(([edge, width]) => (width === 0 ? `${edge} none` : `${edge} ${length(width)}`));
  const rough = roughCut > 0 ? `; rough-cut extra below the hem ${length(roughCut)}` : '';
  return `allowances included: ${parts.join(', ')}${rough}`;
}

/** A name as long as a line or two on a piece can bear; the sheets and the papers carry it in full. */
function shortened(text: string): string {
  const characters = [...text];
  return characters.length <= LONGEST_NAME
    ? text
    : `${characters.slice(0, LONGEST_NAME).join('').trimEnd()}…`;
}

const LONGEST_NAME = 60;
