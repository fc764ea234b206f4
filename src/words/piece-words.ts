import type { EdgeChange, NewCloth, PieceChange } from '../compare/piece-change.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { Units } from '../diagnostics/units.ts';
import { edgeWords } from '../diagnostics/value-words.ts';

/** What happens to one piece, edge by edge: short sentences without a full stop. */
export function pieceWords(change: PieceChange, units: Units): string[] {
  if (change.newCloth !== undefined) return [NEW_CLOTH[change.newCloth]];
  const { x, y } = change.slid;
  const moved = Math.hypot(x, y) >= WORTH_SAYING;
  const edges = change.edges.flatMap((edge) => wordsOfEdge(edge, change, units));
  const onlyLines = change.verdict === 're-mark' && edges.length === 0;
  const lacks = change.edges.filter(({ left }) => left !== undefined);
  const nearlyAll =
    change.verdict === 'let-out' && lacks.every(({ left }) => left!.wanted - left!.least < WORTH_SAYING);
  return [
    ...(moved && change.verdict !== 'same'
      ? [`slide the new piece ${shiftWords(x, y, units)} on the old one, from waist on waist`]
      : []),
    ...(nearlyAll
      ? [`${lacks.map(({ edge }) => edge).join(', ')}: all but a hair of the allowance is left`]
      : []),
    ...(onlyLines ? ['the seam line moves; next to nothing comes off'] : edges),
    ...(change.marks.includes('notches') && change.verdict !== 're-cut'
      ? ['its notches move: mark them anew']
      : []),
    ...(change.marks.includes('folds') && change.verdict !== 're-cut'
      ? ['its folds lie elsewhere: mark them anew']
      : []),
  ];
}

/** Less than this is neither marked nor trimmed, mm; the figures in JSON are exact. */
const WORTH_SAYING = 0.5;

const NEW_CLOTH: Readonly<Record<NewCloth, string>> = {
  'piece-is-new': 'the old version has no such piece',
  'cloth-is-other': 'it is of another cloth now',
  'now-on-the-fold': 'it was cut as a pair and is one piece on the fold now',
  'thread-runs-otherwise': 'the straight thread runs another way across it now',
  'more-of-them': 'more of them are needed than were cut',
};

function wordsOfEdge(edge: EdgeChange, change: PieceChange, units: Units): string[] {
  const { verdict } = change;
  const { left, comesOff } = edge;
  const words: string[] = [];
  // Of a piece that is cut again only what it is cut again for matters.
  if (
    left !== undefined &&
    (verdict === 're-cut' ? edge.tooLittle === true : left.wanted - left.least >= WORTH_SAYING)
  )
    words.push(`${edge.edge}: ${leftWords(edge, left, change, units)}`);
  if (comesOff !== undefined && comesOff.most >= WORTH_SAYING && verdict !== 're-cut')
    words.push(`${edge.edge}: ${comesOffWords(edge, comesOff, change, units)}`);
  return words;
}

function leftWords(
  edge: EdgeChange,
  left: NonNullable<EdgeChange['left']>,
  change: PieceChange,
  units: Units,
): string {
  const at = placeWords(edge, left.at, change, units);
  if (edge.corner)
    return `a corner of the allowance is ${edgeWords(left.wanted - left.least, units)} short, ${at}`;
  if (left.least < 0)
    return `the seam line runs ${edgeWords(-left.least, units)} outside the cloth, most ${at}`;
  return `${edgeWords(left.least, units)} of ${edgeWords(left.wanted, units)} allowance left, least ${at}`;
}

function comesOffWords(
  edge: EdgeChange,
  { most, least, at }: NonNullable<EdgeChange['comesOff']>,
  change: PieceChange,
  units: Units,
): string {
  if (most - least < WORTH_SAYING) return `${edgeWords(most, units)} comes off all along`;
  const from = least < WORTH_SAYING ? 'up to' : `${edgeWords(least, units)} to`;
  return `${from} ${edgeWords(most, units)} comes off, most ${placeWords(edge, at, change, units)}`;
}

function placeWords({ from }: EdgeChange, at: number, { piece }: PieceChange, units: Units): string {
  if (from === undefined) return `${tapeText(at, units)} down from ${topName(piece)}`;
  return at < WORTH_SAYING ? `at ${edgeName(from)}` : `${tapeText(at, units)} from ${edgeName(from)}`;
}

/** What a piece's sides run down from. */
function topName({ piece }: PieceChange['piece']): string {
  if (piece.part === 'facing') return 'its inner edge';
  return piece.part === 'bodice' ? 'the upper edge' : piece.part === undefined ? 'the waist' : 'its top';
}

function edgeName(name: string): string {
  return name === 'fold' ? 'the fold' : name;
}

function shiftWords(x: number, y: number, units: Units): string {
  const parts = [
    ...(Math.abs(y) >= WORTH_SAYING ? [`${edgeWords(Math.abs(y), units)} ${y > 0 ? 'down' : 'up'}`] : []),
    ...(Math.abs(x) >= WORTH_SAYING
      ? [`${edgeWords(Math.abs(x), units)} to the ${x > 0 ? 'right' : 'left'}`]
      : []),
  ];
  return parts.length === 0 ? edgeWords(Math.hypot(x, y), units) : parts.join(' and ');
}
