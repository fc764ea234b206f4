import type { ClothState } from '../compare/cloth-state.ts';
import type { Comparison } from '../compare/compare.ts';
import type { LayChange, LayFigures } from '../compare/lay-changes.ts';
import type { PieceChange, Verdict } from '../compare/piece-change.ts';
import type { SpecChange } from '../compare/spec-changes.ts';
import { inWords } from '../diagnostics/in-words.ts';
import { pieceCalled } from '../diagnostics/piece-name.ts';
import { safeText } from '../diagnostics/safe-text.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { Units } from '../diagnostics/units.ts';
import { differenceWords, valueWords } from '../diagnostics/value-words.ts';
import { moneyText } from '../money/money.ts';
import { pieceWords } from './piece-words.ts';

/** A comparison as the maker reads it: what changed, then what to do, piece by piece. */
export function comparisonText(comparison: Comparison): string {
  const { old, now } = comparison;
  const units = now.spec.units;
  const sections = [
    section(
      'The spec',
      comparison.spec.flatMap((change) => specLines(change, units)),
    ),
    ...pieceSections(comparison),
    section(
      'Lays and cloth to buy',
      comparison.lays.map((change) => layLine(change, units)),
    ),
    section('Price', priceLines(comparison)),
    section('Sheets to print again', sheetLines(comparison)),
    section('New findings', comparison.findings.added.map(findingLine)),
    section(
      'Findings with other figures',
      comparison.findings.changed.map(({ now: finding }) => findingLine(finding)),
    ),
    section('Findings that are gone', comparison.findings.gone.map(findingLine)),
  ].filter((text) => text !== '');
  const title = `${safeText(now.spec.gown)}: from ${safeText(old.name)} (${old.content}) to ${safeText(now.name)} (${now.content})\n`;
  if (comparison.spec.length === 0 && sections.length <= 1)
    return `${title}\nBoth say the same: nothing changes.\n`;
  return [title, ...sections].join('\n');
}

function section(title: string, lines: readonly string[]): string {
  return lines.length === 0 ? '' : `${title}\n${lines.map((line) => `  ${safeText(line)}\n`).join('')}`;
}

function specLines({ path, old, now }: SpecChange, units: Units): string[] {
  if ((now ?? old)!.kind === 'notes') return [`${path}: the note ${noteWords(old, now)}`];
  // The items of a list that comes or goes as a whole are told by their own lines.
  if ((old ?? now)!.kind === 'order' && (old === undefined || now === undefined)) return [];
  if (old === undefined) return [`${path}: ${valueWords(now!, units)}, new`];
  if (now === undefined) return [`${path}: ${valueWords(old, units)}, taken out`];
  const difference = differenceWords(old, now, units);
  const change = `${valueWords(old, units)} → ${valueWords(now, units)}`;
  return [`${path}: ${change}${difference === '' ? '' : `, ${difference}`}`];
}

function noteWords(old: SpecChange['old'], now: SpecChange['now']): string {
  if (old === undefined) return 'is new; no measure changes by it';
  return `${now === undefined ? 'is gone' : 'reads differently'}; no measure changes by it`;
}

/** Layers of one state together: what lies on the table, what was cut from elsewhere, what is not cut yet. */
function pieceSections({ pieces, cloth, old, now }: Comparison): string[] {
  const units = now.spec.units;
  const keys = [...new Set([...cloth.values()].map(stateKey))];
  const sections = keys.map((key) => {
    const layers = [...cloth].filter(([, state]) => stateKey(state) === key).map(([layer]) => layer);
    const changes = pieces.changes.filter(({ layer }) => layers.includes(layer));
    const state = cloth.get(layers[0]!)!;
    const title = `${stateTitle(state, old.name)}: ${layers.join(', ')}`;
    return section(title, stateLines(state, changes, units));
  });
  const dropped = pieces.dropped.map((piece) => `${piece.layer}: ${pieceName(piece)}`);
  return [...sections, section('Not needed any more', dropped)];
}

function stateKey(state: ClothState): string {
  return typeof state === 'string' ? state : state.cutFrom;
}

function stateTitle(state: ClothState, oldName: string): string {
  if (typeof state === 'object' && state.found !== undefined)
    return `Cloth on the table, cut from ${state.found} (${state.cutFrom})`;
  if (typeof state === 'object')
    return `Cut from another version (${state.cutFrom}), compared with ${oldName} all the same`;
  return {
    'cut-from-old': 'Cloth on the table',
    'cut-from-new': 'Cut from the new version already',
    'not-cut': 'Not cut yet',
    'not-recorded': `If it was cut from ${oldName}`,
  }[state];
}

function stateLines(state: ClothState, changes: readonly PieceChange[], units: Units): string[] {
  if (state === 'cut-from-new') return ['nothing to do'];
  if (state === 'not-cut') return notCutLines(changes);
  return VERDICTS.flatMap(([verdict, title]) => {
    const own = changes.filter((change) => change.verdict === verdict);
    if (own.length === 0) return [];
    const lines = alikeTogether(own, units);
    if (verdict === 'same' && lines.length === 1 && lines[0]!.words.length === 0)
      return [`${title}: ${lines[0]!.names}`];
    return [
      `${title}:`,
      ...lines.flatMap(({ names, words }) => [`  ${names}`, ...words.map((line) => `    ${line}`)]),
    ];
  });
}

const VERDICTS: readonly (readonly [Verdict, string])[] = [
  ['re-cut', 'cut again'],
  ['let-out', 'let out within the allowances'],
  ['re-mark', 'mark anew and trim; the cloth is enough'],
  ['same', 'as they are'],
];

function notCutLines(changes: readonly PieceChange[]): string[] {
  const changed = changes.filter(({ verdict, marks }) => verdict !== 'same' || marks.length > 0);
  if (changed.length === 0) return ['no piece changes'];
  return [`cut by the new lines: ${[...new Set(changed.map(pieceName))].join(', ')}`];
}

/** Pieces of which the same is to be said, in one line with their layers. */
function alikeTogether(changes: readonly PieceChange[], units: Units): { names: string; words: string[] }[] {
  const layersOf = new Map<string, { change: PieceChange; words: string[]; layers: string[] }>();
  for (const change of changes) {
    const words = pieceWords(change, units);
    const key = JSON.stringify([pieceName(change), words]);
    const known = layersOf.get(key);
    if (known === undefined) layersOf.set(key, { change, words, layers: [change.layer] });
    else known.layers.push(change.layer);
  }
  const together = new Map<string, { names: string[]; words: string[]; layers: string[] }>();
  for (const { change, words, layers } of layersOf.values()) {
    const key = JSON.stringify([layers, words]);
    const known = together.get(key);
    if (known === undefined) together.set(key, { names: [pieceName(change)], words, layers });
    else known.names.push(pieceName(change));
  }
  return [...together.values()].map(({ names, words, layers }) => ({
    names: `${names.join(', ')} (${layers.join(', ')})`,
    words,
  }));
}

function pieceName({ gore, part, side }: Pick<PieceChange, 'gore' | 'part' | 'side'>): string {
  const name = pieceCalled(gore, part);
  return side === undefined ? name : `${name} ${side}`;
}

function layLine({ old, now }: LayChange, units: Units): string {
  const layers = inWords((now ?? old)!.layers);
  const figure = (lay: LayFigures): string => {
    const cost = lay.cost === undefined ? '' : `, ${moneyText(lay.cost)}`;
    return `lay ${tapeText(lay.length, units)}, buy ${tapeText(lay.buy, units)} of ${lay.cloth}${cost}`;
  };
  if (old === undefined) return `${layers}: ${figure(now!)}, new`;
  if (now === undefined) return `${layers}: no lay any more (was ${figure(old)})`;
  const before = inWords(old.layers);
  return `${layers}: ${figure(old)}${before === layers ? '' : ` for ${before}`} → ${figure(now)}`;
}

function sheetLines({ sheets }: Comparison): string[] {
  if (sheets === undefined || (sheets.again.length === 0 && sheets.gone.length === 0)) return [];
  const { again, gone, count } = sheets;
  const all = `all ${count}: the pieces lie elsewhere on them`;
  return [
    ...(again.length === 0
      ? []
      : [again.length === count ? all : `${again.length} of ${count}: ${again.join(', ')}`]),
    ...(gone.length === 0 ? [] : [`not used any more: ${gone.join(', ')}`]),
    ...(again.length < count ? ['`draft --since` prints them so that they go with the old ones'] : []),
  ];
}

function priceLines({ old, now }: Comparison): string[] {
  const say = (version: typeof old) =>
    version.price === undefined ? 'none given' : moneyText(version.price);
  return say(old) === say(now) ? [] : [`${say(old)} → ${say(now)}`];
}

function findingLine({ level, code, message }: Comparison['findings']['added'][number]): string {
  return `${level}[${code}]: ${message}`;
}
