import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Scalar, SpecValue } from '../diagnostics/value-words.ts';
import { amountText } from '../money/money.ts';
import type { ClothState } from './cloth-state.ts';
import type { Comparison } from './compare.ts';
import type { GownVersion } from './gown-version.ts';
import type { LayFigures } from './lay-changes.ts';
import type { EdgeChange, PieceChange } from './piece-change.ts';

/** A comparison as a script reads it: lengths in mm, angles in degrees, shares as fractions, money as text. */
export function comparisonJson(comparison: Comparison): object {
  const { old, now, pieces, findings, sheets } = comparison;
  return {
    old: versionJson(old),
    new: versionJson(now),
    spec: comparison.spec.map(({ path, old: was, now: is }) => ({
      path,
      kind: kindForScripts((is ?? was)!),
      old: was === undefined ? null : valueJson(was),
      new: is === undefined ? null : valueJson(is),
    })),
    pieces: pieces.changes.map((change) => ({
      ...pieceJson(change),
      cloth: clothJson(comparison.cloth.get(change.layer)),
    })),
    dropped: pieces.dropped,
    lays: comparison.lays.map(({ old: was, now: is }) => ({
      cloth: (is ?? was)!.cloth,
      layers: (is ?? was)!.layers,
      ...((is ?? was)!.layers.length === 1 ? { layer: (is ?? was)!.layers[0] } : {}),
      old: layJson(was),
      new: layJson(is),
    })),
    sheets: sheets === undefined ? [] : sheets.again,
    sheetsGone: sheets?.gone ?? [],
    sheetCount: sheets?.count ?? null,
    price: { old: priceJson(old), new: priceJson(now) },
    findings: {
      new: findings.added.map(findingJson),
      gone: findings.gone.map(findingJson),
      changed: findings.changed.map(({ old: was, now: is }) => ({ ...findingJson(is), was: was.message })),
    },
  };
}

/** Scripts know fewer kinds than the shape of a spec does. */
function kindForScripts({ kind }: SpecValue): string {
  return SAID_TO_SCRIPTS[kind] ?? kind;
}

const SAID_TO_SCRIPTS: Readonly<Partial<Record<SpecValue['kind'], string>>> = {
  money: 'decimal',
  hours: 'decimal',
  count: 'number',
  times: 'number',
  date: 'text',
  notes: 'note',
};

function findingJson({ code, level, message }: Diagnostic): object {
  return { code, level, message };
}

function versionJson({ name, content, spec }: GownVersion): object {
  return { name, gown: spec.gown, content };
}

function valueJson({ kind, value }: SpecValue): unknown {
  const one = (scalar: Scalar): Scalar => {
    if (typeof scalar !== 'number') return scalar;
    return Number((kind === 'angle' ? (scalar * 180) / Math.PI : scalar).toFixed(6));
  };
  return Array.isArray(value) ? (value as readonly Scalar[]).map(one) : one(value as Scalar);
}

function pieceJson({
  gore,
  part,
  layer,
  side,
  verdict,
  newCloth,
  shift,
  marks,
  amount,
  edges,
}: PieceChange): object {
  return {
    gore,
    ...(part === undefined ? {} : { part }),
    layer,
    ...(side === undefined ? {} : { side }),
    verdict,
    mm: rounded(amount),
    ...(newCloth === undefined ? {} : { reason: newCloth }),
    shift: { x: rounded(shift.x), y: rounded(shift.y) },
    marks,
    edges: edges.map(edgeJson),
  };
}

function edgeJson({ edge, from, comesOff, left, corner }: EdgeChange): object {
  return {
    edge,
    ...(from === undefined ? {} : { from }),
    ...(comesOff === undefined ? {} : { comesOff: roundedAll(comesOff) }),
    ...(left === undefined ? {} : { left: roundedAll(left) }),
    ...(corner === undefined ? {} : { corner }),
  };
}

function clothJson(state: ClothState | undefined): string {
  return typeof state === 'object' ? `cut-from-${state.cutFrom}` : (state ?? 'not-recorded');
}

function layJson(lay: LayFigures | undefined): object | null {
  if (lay === undefined) return null;
  const { cloth, layers, length, buy, cost } = lay;
  return {
    cloth,
    layers,
    length: rounded(length),
    buy: rounded(buy),
    cost: cost === undefined ? null : amountText(cost),
  };
}

function priceJson({ price }: GownVersion): object | null {
  return price === undefined ? null : { amount: amountText(price), currency: price.currency ?? null };
}

/** To a hundredth of a millimetre: finer is only how curves were fitted. */
function rounded(value: number): number {
  const result = Math.round(value * 100) / 100;
  return result === 0 ? 0 : result;
}

function roundedAll<T extends Readonly<Record<string, number>>>(figures: T): T {
  return Object.fromEntries(Object.entries(figures).map(([key, value]) => [key, rounded(value)])) as T;
}
