import type { Claim } from './reading.ts';
import type { Topic } from './topic.ts';

/** The topic that a message was given to, and what it means there. */
export interface Chosen {
  readonly topic: Topic;
  readonly claim: Claim;
  /** True where it will be written though nobody said it in words that are known: it is offered to be undone. */
  readonly told?: true;
  /** True where the message is only somewhat like a saying that means it. */
  readonly alike?: true;
  /** Further requests that the same message makes, to be answered with this one or not at all. */
  readonly also?: readonly Chosen[];
  /** The code that the pour among them has to get, since the others go by it. */
  readonly code?: string;
}

/** The same, with more that was taken for granted. */
export const withAssumed = (chosen: Chosen | undefined, more: readonly string[]): Chosen | undefined =>
  chosen?.claim.kind === 'request' && more.length > 0
    ? { ...chosen, claim: { ...chosen.claim, assumed: [...chosen.claim.assumed, ...more] } }
    : chosen;
