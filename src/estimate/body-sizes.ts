/** A woman's girths by the standard's sizes, mm. */
export interface BodySize {
  readonly bust: number;
  readonly waist: number;
  readonly hip: number;
}

/** EN 13402-3, women, by bust girth in cm (from memory: buy the standard before you rely on it). */
const WOMEN: readonly (readonly [bust: number, waist: number, hip: number])[] = [
  [76, 60, 84],
  [80, 64, 88],
  [84, 68, 92],
  [88, 72, 96],
  [92, 76, 100],
  [96, 80, 104],
  [100, 84, 108],
  [104, 88, 112],
  [110, 94.5, 117],
  [116, 101, 122],
];

export const BUST_GIRTHS: readonly number[] = WOMEN.map(([bust]) => bust);

/** The size that is named by this bust girth in cm, as the standard names it; undefined where it has none. */
export function bodySize(bust: number): BodySize | undefined {
  const size = WOMEN.find(([own]) => own === bust);
  if (size === undefined) return undefined;
  const [, waist, hip] = size;
  return { bust: bust * 10, waist: waist * 10, hip: hip * 10 };
}
