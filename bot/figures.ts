/** What may stand in an answer's figures: plain JSON, no undefined and no NaN. */
export type FigureValue =
  | string
  | number
  | boolean
  | null
  | readonly FigureValue[]
  | { readonly [key: string]: FigureValue };
