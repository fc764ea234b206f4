import type { Amount } from '../money/money.ts';

/** What is bought for one lay. */
export interface LayFigures {
  readonly cloth: string;
  /** What is cut from it. */
  readonly layers: readonly string[];
  /** Length of the lay, and the length to buy with every addition, mm. */
  readonly length: number;
  readonly buy: number;
  /** Absent where the cloth has no price. */
  readonly cost?: Amount;
}

/** A lay that is another one than it was; absent where a version has no such lay. */
export interface LayChange {
  readonly old?: LayFigures;
  readonly now?: LayFigures;
}

/** Lengths of lays that differ by less are the same lay, mm: less than anyone cuts off a bolt by. */
const SAME_LAY = 0.5;

/** Lays of the same layers are each other's, then those of the same cloth. */
export function layChanges(old: readonly LayFigures[], now: readonly LayFigures[]): LayChange[] {
  const was = new Map<LayFigures, LayFigures>();
  for (const figure of [layersOf, clothOf]) {
    for (const lay of now.filter((own) => !was.has(own))) {
      const taken = new Set(was.values());
      const match = old.find((own) => !taken.has(own) && figure(own) === figure(lay));
      if (match !== undefined) was.set(lay, match);
    }
  }
  const matched = new Set(was.values());
  return [
    ...now.flatMap((lay): LayChange[] => {
      const before = was.get(lay);
      if (before === undefined) return [{ now: lay }];
      return isSameLay(before, lay) ? [] : [{ old: before, now: lay }];
    }),
    ...old.filter((lay) => !matched.has(lay)).map((lay): LayChange => ({ old: lay })),
  ];
}

function layersOf({ layers }: LayFigures): string {
  return layers.join('/');
}

function clothOf({ cloth }: LayFigures): string {
  return cloth;
}

function isSameLay(a: LayFigures, b: LayFigures): boolean {
  return (
    a.cloth === b.cloth &&
    layersOf(a) === layersOf(b) &&
    Math.abs(a.length - b.length) < SAME_LAY &&
    Math.abs(a.buy - b.buy) < SAME_LAY &&
    a.cost?.minor === b.cost?.minor &&
    a.cost?.currency === b.cost?.currency
  );
}
