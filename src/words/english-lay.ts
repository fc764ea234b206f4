import { layWords } from '../diagnostics/lay-words.ts';
import { tapeNumber } from '../diagnostics/tape-text.ts';
import type { Units } from '../diagnostics/units.ts';
import type { LayHandling, LayPlan } from '../lay/plan/lay-plan.ts';
import { layRemarks } from './lay-remarks.ts';

/** What a lay says, bound to the units of its spec. */
export function englishLay(units: Units) {
  return {
    /** A length as the maker reads it, without its unit: `38`. */
    number: (mm: number): string => tapeNumber(mm, units).replace(/\.0$/, ''),
    unit: units as string,
    remarks: (plan: LayPlan): string[] => layRemarks(plan, units),
    ...ENGLISH_LAY,
  };
}

export const ENGLISH_LAY = {
  way: layWords,
  handling: ({ pieces, double, upperTurned }: LayHandling): string =>
    [
      `${pieces} ${pieces === 1 ? 'piece' : 'pieces'} to mark`,
      ...(double === 0 ? [] : double === pieces ? ['all cut double'] : [`${double} cut double`]),
      ...(upperTurned ? ['upper layer cut off and turned round'] : []),
    ].join(', '),
  tooWide: (gore: string, width: string, usable: string): string =>
    `${gore} takes ${width}, there are ${usable}`,
  cuttingOrder: (byLayer: readonly string[]): string => `In cutting order, ${byLayer.join('; ')}.`,
  topsThisWay: 'tops this way',
  topsEitherWay: 'tops either way',
  folds: { single: 'single', lengthwise: 'folded lengthwise', crosswise: 'folded crosswise' },
  fold: 'fold',
  cutHere: 'cut here',
  spare: (across: string, along: string, unit: string): string => `spare ${across} × ${along} ${unit}`,
  part: (part: string): string => `part ${part}`,
  /** How a piece lies: which face up, and what else is not as it is drawn. */
  lies: (face: string, mirrored: boolean, headDown: boolean, bias = false): string =>
    [
      `face ${face}`,
      ...(mirrored ? ['mirrored'] : []),
      ...(headDown ? ['head down'] : []),
      ...(bias ? ['on the bias'] : []),
    ].join(', '),
  cutShort: ' CUT SHORT',
  caption: (
    layers: string,
    cloth: string,
    width: string,
    way: string,
    length: string,
    buy: string,
    used: number,
  ): string =>
    `${layers} from ${cloth}, ${width} wide, ${way}; lay ${length}, buy ${buy}, ${Math.round(used * 100)} % used.`,
};

export type LayWords = ReturnType<typeof englishLay>;
