import type { Chosen } from './chosen.ts';
import type { Reading } from './reading.ts';
import type { Topic } from './topic.ts';

/** Requests come before troubles, unless a topic is surer of its trouble than another of its request. */
const better = (a: Chosen, b: Chosen): Chosen => {
  if (a.claim.weight !== b.claim.weight) return a.claim.weight > b.claim.weight ? a : b;
  return a.claim.kind === 'request' || b.claim.kind === 'trouble' ? a : b;
};

/** The topic that claims a reading with most certainty; the earlier one in the list where two are as sure. */
export const surest = (reading: Reading, topics: readonly Topic[]): Chosen | undefined => {
  let best: Chosen | undefined;
  for (const topic of topics) {
    const claimed = topic.read(reading);
    if (claimed) best = best ? better(best, { topic, claim: claimed }) : { topic, claim: claimed };
  }
  return best;
};

export const isRequest = (chosen: Chosen | undefined): chosen is Chosen => chosen?.claim.kind === 'request';

/** A topic that takes most of a message for a name it does not know has not understood it either. */
const faintest = 0.3;
/** A recipe nobody saved may be a stretch of talk that stands where a name could. */
const faint = 0.9;

/** A trouble that says what is wrong is better than another look: only what nobody could make sense of gets one. */
export const isPuzzle = (chosen: Chosen | undefined): boolean =>
  chosen?.claim.kind !== 'request' &&
  (chosen === undefined ||
    chosen.claim.trouble.code === 'not-understood' ||
    chosen.claim.weight <= (chosen.claim.trouble.code === 'unknown-recipe' ? faint : faintest));

/** What a trouble says may come of words that a topic took for names, or of a name that means several things. */
export const isOpen = (chosen: Chosen | undefined): boolean =>
  isPuzzle(chosen) ||
  (chosen?.claim.kind === 'trouble' &&
    /^(?:unknown-recipe|unknown-ingredient|missing|bad-quantity)$/.test(chosen.claim.trouble.code));

/** As sure as a topic can be: its own words, and all accounted for. */
export const mostCertain = 3;

/** How sure a topic has to be of one sentence of several. */
export const sureAlone = 2.6;

export const writes = (chosen: Chosen): boolean =>
  chosen.claim.kind === 'request' && chosen.topic.wouldWrite(chosen.claim.request);
