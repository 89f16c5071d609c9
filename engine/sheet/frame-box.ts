/** A box on paper, sides parallel to the sheet's edges; mm from the sheet's lower left. */
export interface PaperBox {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}
