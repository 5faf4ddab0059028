import type { Trouble } from './answer.ts';
import { echo } from './readers/ask-back.ts';
import { letters } from './readers/lexicon.ts';
import type { Claim, Reading } from './reading.ts';
import type { Topic } from './topic.ts';

export interface Chosen {
  readonly topic: Topic;
  readonly claim: Claim;
}

const example = 'scale 20 g beeswax, 30 g shea butter, 50 g olive oil to 24 tins of 15 ml';

/** Requests come before troubles, unless a topic is surer of its trouble than another of its request. */
const better = (a: Chosen, b: Chosen): Chosen => {
  if (a.claim.weight !== b.claim.weight) return a.claim.weight > b.claim.weight ? a : b;
  return a.claim.kind === 'request' || b.claim.kind === 'trouble' ? a : b;
};

/** The topic that claims the message with most certainty; the earlier one in the list where two are as sure. */
export const choose = (reading: Reading, topics: readonly Topic[]): Chosen | undefined => {
  let best: Chosen | undefined;
  for (const topic of topics) {
    const claim = topic.read(reading);
    if (claim) best = best ? better(best, { topic, claim }) : { topic, claim };
  }
  return best;
};

/** What to say when no topic knows the message: what stood out in it, and one thing that works. */
export const notUnderstood = (reading: Reading): Trouble => {
  const said = reading.items
    .filter((item) => item.letter === letters.unknown || item.letter === letters.danger)
    .map((item) => item.word);
  const about = said.length > 0 ? ` I stumbled over "${echo(said.slice(0, 4).join(' '))}".` : '';
  const greeting = reading.items.length === 0 ? 'Hello! Ask me something' : 'I did not understand that';
  return {
    code: 'not-understood',
    text: `${greeting}.${about} Try for example "${example}", or "help".`,
  };
};
