/** What one layer's lay says is to be bought, mm: all that the papers take from the lays. */
export interface BoughtCloth {
  readonly layer: string;
  readonly cloth: string;
  /** Length of the lay, and the length to buy with every addition, in the shop's steps. */
  readonly length: number;
  readonly buy: number;
}
