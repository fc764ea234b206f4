/**
 * Hours that making takes, from quick to slow: common practice with no source, of a practised hand on a machine, hems
 * and edging by hand. An estimate says so, and a maker's own hours take their place.
 */
export interface UsualWork {
  /** Hours a metre sewn. */
  readonly perMetre: {
    readonly seams: string;
    readonly waist: string;
    readonly hems: string;
    readonly edging: string;
  };
  /** Hours for the whole, whatever its size. */
  readonly tasks: {
    readonly 'toile-and-fittings': string;
    readonly 'cutting-and-marking': string;
    readonly closure: string;
  };
}

export const QUICK: UsualWork = {
  perMetre: { seams: '0.2', waist: '1.5', hems: '0.4', edging: '0.4' },
  tasks: { 'toile-and-fittings': '7', 'cutting-and-marking': '3', closure: '2' },
};

export const SLOW: UsualWork = {
  perMetre: { seams: '0.35', waist: '3', hems: '0.8', edging: '0.8' },
  tasks: { 'toile-and-fittings': '12', 'cutting-and-marking': '6', closure: '4' },
};

/** Widths that cloth is sold in, mm: the narrower, the usual and the wide one of the published list. */
export const USUAL_WIDTHS: readonly number[] = [1120, 1400, 1500];
