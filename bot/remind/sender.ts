import type { Answer, NextStep } from '../answer.ts';

/** Where a daily message goes. */
export interface Place {
  readonly group: string;
  readonly channel: string;
}

/** A daily message: an answer nobody asked for just now, and rows of buttons, one row for each thing that is due. */
export interface DailyMessage {
  readonly answer: Answer;
  readonly rows: readonly (readonly NextStep[])[];
}

/** What became of a message. `later` is worth another try; the others are not before something is changed. */
export type Sent = 'sent' | 'later' | 'no-channel' | 'no-permission' | 'other';

/** How a front-end posts what nobody asked for. None of these rejects. */
export interface Sender {
  /**
   * Posts a message. The same `nonce` posts the same message at most once where the platform knows of nonces (and for as
   * long as it remembers them).
   */
  send(place: Place, message: DailyMessage, nonce: string): Promise<Sent>;
  /**
   * Whether such a message stands in the channel since an instant: after a crash that is all that can still be asked.
   * Undefined when it cannot be told.
   */
  wasSent(place: Place, message: DailyMessage, nonce: string, sinceMs: number): Promise<boolean | undefined>;
  /** Tells whoever owns the group, in plain words; false when that did not work either. */
  tellOwner(group: string, text: string, nonce: string): Promise<boolean>;
}
