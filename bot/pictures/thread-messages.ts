export interface DrawRequest {
  readonly id: number;
  readonly svg: string;
}

export type DrawAnswer =
  | { readonly id: number; readonly png: Uint8Array }
  | { readonly id: number; readonly fault: 'no-font' | 'not-drawn'; readonly told: string };
