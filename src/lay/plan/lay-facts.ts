/** What one lay says is to be bought, mm: all that the papers take from the lays. */
export interface BoughtCloth {
  readonly cloth: string;
  /** What is cut from it. */
  readonly layers: readonly string[];
  /** Length of the lay, and the length to buy with every addition, in the shop's steps. */
  readonly length: number;
  readonly buy: number;
}
