import { type LayFolds, layWords } from '../../diagnostics/lay-words.ts';
import type { LayItem } from './lay-items.ts';
import type { Fold } from './lay-plan.ts';

/** Pieces that are cut from one stretch of cloth with one fold. */
export interface Section {
  readonly fold: Fold;
  readonly items: readonly LayItem[];
}

/** A way to lay all that is cut from one cloth. */
export interface Way {
  readonly folds: LayFolds;
  readonly fold: Fold | 'sections';
  readonly sections: readonly Section[];
}

/**
 * The ways worth looking at, the least folded first: one fold throughout, and a change of fold somewhere on the way
 * round from the centre front, at the same gore in every layer. Pieces without a partner cannot be cut double; those on the fold need a fold along the
 * length, or are cut whole.
 */
export function waysOf(items: readonly LayItem[]): Way[] {
  const pairs = items.filter(({ kind }) => kind === 'pair');
  const foldable = items.filter(({ kind }) => kind !== 'single');
  const onFold = items.filter(({ kind }) => kind === 'on-fold');
  const singles = items.filter(({ kind }) => kind === 'single');
  const ways: Way[] = [way([{ fold: 'single', items }])];
  if (foldable.length > 0) {
    ways.push(
      way([
        { fold: 'lengthwise', items: foldable },
        { fold: 'single', items: singles },
      ]),
    );
  }
  if (pairs.length > 0) {
    const rest: Section[] = [
      { fold: 'single', items: singles },
      { fold: 'crosswise', items: pairs },
    ];
    ways.push(way([{ fold: 'lengthwise', items: onFold }, ...rest]));
    if (onFold.length > 0) ways.push(way([{ fold: 'single', items: [...onFold, ...singles] }, rest[1]!]));
  }
  const round = [...new Set(foldable.map(roundOf))];
  for (let first = 1; first < round.length; first++) {
    const inFront = new Set(round.slice(0, first));
    const front = foldable.filter((item) => inFront.has(roundOf(item)));
    const back = foldable.filter((item) => !inFront.has(roundOf(item)));
    ways.push(
      way([
        { fold: 'lengthwise', items: front },
        { fold: 'single', items: [...back, ...singles] },
      ]),
    );
    if (back.every(({ kind }) => kind === 'pair') && front.some(({ kind }) => kind === 'pair')) {
      const rest: Section = { fold: 'single', items: singles };
      ways.push(way([{ fold: 'lengthwise', items: front }, { fold: 'crosswise', items: back }, rest]));
    }
  }
  const told = ways.map(({ folds }) => layWords(folds));
  return ways.filter((_, i) => told.indexOf(told[i]!) === i);
}

/** What lies at one place on the way round, in whatever layer. */
function roundOf({ cut, part = '' }: LayItem): string {
  return `${cut.gore} ${part}`;
}

function way(sections: readonly Section[]): Way {
  const filled = sections.filter(({ items }) => items.length > 0);
  const folds = new Set(filled.map(({ fold }) => fold));
  return {
    sections: filled,
    fold: folds.size === 1 ? filled[0]!.fold : 'sections',
    folds: filled.map(({ fold, items }) => ({ fold, gores: goresOf(items) })),
  };
}

function goresOf(items: readonly LayItem[]): string[] {
  return [...new Set(items.map(({ cut }) => cut.gore))];
}
