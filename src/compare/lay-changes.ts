import type { Amount } from '../money/money.ts';

/** What is bought for one layer. */
export interface LayFigures {
  readonly layer: string;
  readonly cloth: string;
  /** Length of the lay, and the length to buy with every addition, mm. */
  readonly length: number;
  readonly buy: number;
  /** Absent where the cloth has no price. */
  readonly cost?: Amount;
}

/** A layer whose lay is another one; absent where a version has no such layer. */
export interface LayChange {
  readonly layer: string;
  readonly old?: LayFigures;
  readonly now?: LayFigures;
}

/** Lengths of lays that differ by less are the same lay, mm: less than anyone cuts off a bolt by. */
const SAME_LAY = 0.5;

export function layChanges(old: readonly LayFigures[], now: readonly LayFigures[]): LayChange[] {
  const layers = [...new Set([...now, ...old].map(({ layer }) => layer))];
  return layers.flatMap((layer): LayChange[] => {
    const was = old.find((lay) => lay.layer === layer);
    const is = now.find((lay) => lay.layer === layer);
    if (was !== undefined && is !== undefined && isSameLay(was, is)) return [];
    return [{ layer, ...(was === undefined ? {} : { old: was }), ...(is === undefined ? {} : { now: is }) }];
  });
}

function isSameLay(a: LayFigures, b: LayFigures): boolean {
  return (
    a.cloth === b.cloth &&
    Math.abs(a.length - b.length) < SAME_LAY &&
    Math.abs(a.buy - b.buy) < SAME_LAY &&
    a.cost?.minor === b.cost?.minor &&
    a.cost?.currency === b.cost?.currency
  );
}
