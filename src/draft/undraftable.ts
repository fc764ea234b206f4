/** Why a gown cannot be drafted from its measures, and at which gore. */
export interface Undraftable {
  readonly gore?: string;
  readonly reason:
    | 'waist-does-not-settle'
    | 'narrows-to-nothing'
    | 'widens-too-fast'
    | 'hem-does-not-settle'
    | 'hem-above-waist'
    | 'at-no-place';
  /** Slant distance at which the gore has no width left. */
  readonly at?: number;
}
