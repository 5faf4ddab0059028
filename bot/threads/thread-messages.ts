export interface ThreadRequest<Order> {
  readonly id: number;
  readonly order: Order;
}

export type ThreadAnswer =
  | { readonly id: number; readonly made: Uint8Array }
  | { readonly id: number; readonly fault: 'no-font' | 'not-drawn'; readonly told: string };
