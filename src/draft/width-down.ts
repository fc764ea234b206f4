/** A width as it changes down the gore: mm, and mm per mm. */
export interface WidthDown {
  readonly valueAt: (s: number) => number;
  readonly slopeAt: (s: number) => number;
}
