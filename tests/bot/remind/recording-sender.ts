import type { DailyMessage, Place, Sender, Sent } from '../../../bot/remind/sender.ts';

export interface Posted {
  readonly place: Place;
  readonly message: DailyMessage;
  readonly nonce: string;
}

/**
 * A channel that keeps what was posted. Like the chat platform it takes a nonce once for as long as it remembers it, and
 * what it took stands in the channel to be found again.
 */
export class Channel implements Sender {
  readonly posted: Posted[] = [];
  readonly toldOwner: { readonly group: string; readonly text: string }[] = [];
  /** What becomes of a message; a test may change it. */
  outcome: Sent = 'sent';
  ownerCanBeTold = true;
  /** Nonces older than a few minutes are forgotten by the platform. */
  remembersNonces = true;
  /** Whether older messages may be read; where they may not, nothing is found. */
  canLookBack = true;
  /** Called at each step; throwing there is a crash. */
  step: (what: 'before-send' | 'after-send' | 'before-look') => void = () => {};

  async send(place: Place, message: DailyMessage, nonce: string): Promise<Sent> {
    this.step('before-send');
    if (this.outcome !== 'sent') return this.outcome;
    const there = this.remembersNonces && this.posted.some((each) => each.nonce === nonce);
    if (!there) this.posted.push({ place, message, nonce });
    this.step('after-send');
    return 'sent';
  }

  async wasSent(place: Place, _message: DailyMessage, nonce: string): Promise<boolean | undefined> {
    this.step('before-look');
    if (!this.canLookBack) return undefined;
    return this.posted.some((each) => each.nonce === nonce && each.place.channel === place.channel);
  }

  async tellOwner(group: string, text: string): Promise<boolean> {
    this.toldOwner.push({ group, text });
    return this.ownerCanBeTold;
  }
}
