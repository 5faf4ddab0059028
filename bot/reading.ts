import type { Bench } from '../core/bench/state.ts';
import type { Settings } from '../core/settings.ts';
import type { Alternatives, Made, Trouble } from './answer.ts';
import type { Item } from './readers/item.ts';
import type { RecipeNames } from './readers/recipe-names.ts';
import type { Token } from './readers/tokens.ts';

/** What the same member asked last in the same channel, if it was at most fifteen minutes ago. */
export interface Last {
  readonly topic: string;
  readonly request: Readonly<Record<string, unknown>>;
  /** Recipes the answer came to; only the one that was picked, when the message picks one. */
  readonly made?: readonly Made[];
  /** The batch or lot the answer told of: a pour has its code only then. */
  readonly lot?: string;
  /** It was answered, and not refused after all. */
  readonly done?: boolean;
  /** Ingredients the answer offered, by name, best first. */
  readonly offers?: readonly string[];
  /** Place, from 0, of the recipe the message picks: "the second one". */
  readonly picked?: number;
}

/** What the same member was asked back by the answer just before: the next message may be no more than the answer to that. */
export interface Asked {
  readonly topic: string | null;
  /** The message that was asked about. */
  readonly text: string;
  readonly open?: Alternatives;
}

/** A message after tidying and reading: every topic looks at this and says what the message would mean to it. */
export interface Reading {
  /** The message in plain characters, letter case kept. */
  readonly text: string;
  /** The same with slips in request words put right ("curency"); for topics that read the text itself. */
  readonly corrected: string;
  /** Sentences that were passed over as talk and are worth mentioning. */
  readonly aside: readonly string[];
  readonly tokens: readonly Token[];
  readonly items: readonly Item[];
  /** All words in lower case, chatter included: cues are looked for here. */
  readonly words: ReadonlySet<string>;
  readonly settings: Settings;
  readonly recipes: RecipeNames;
  /** What the group recorded at the bench: its lots and batches are names too. */
  readonly bench: Bench;
  /** When the message was written, epoch milliseconds: "today" is the group's own day at that instant. */
  readonly at: number;
  readonly last?: Last;
  /** A number in it was denied in the same breath and left out: "6, not 5". */
  readonly denies?: true;
  /** Names of files that came with the message. */
  readonly attached?: readonly string[];
}

/**
 * What a message would mean to a topic. `weight` says how sure the topic is: 3 when its own words are there and all is
 * accounted for, 2 when the shape fits without its words, 1 when something is missing. The highest request wins; a
 * trouble is told only when no topic has a request.
 */
export type Claim =
  | {
      readonly kind: 'request';
      readonly request: Readonly<Record<string, unknown>>;
      readonly weight: number;
      readonly assumed: readonly string[];
    }
  | {
      readonly kind: 'trouble';
      readonly trouble: Trouble;
      readonly weight: number;
      /** What was understood so far, so that the next message can supply the rest. */
      readonly soFar?: Readonly<Record<string, unknown>>;
    };

export const claim = (
  request: Readonly<Record<string, unknown>>,
  weight: number,
  assumed: readonly string[] = [],
): Claim => ({ kind: 'request', request, weight, assumed });

export const refuse = (
  trouble: Trouble,
  weight: number,
  soFar?: Readonly<Record<string, unknown>>,
): Claim => ({ kind: 'trouble', trouble, weight, ...(soFar ? { soFar } : {}) });

/** True when one of the words stands in the message, chatter and talk included. */
export const anyWord = (reading: Reading, words: readonly string[]): boolean =>
  words.some((word) => reading.words.has(word));

/** What is read off a message, worked out once however many topics want it; no longer than the message is held. */
export const oncePerReading = <T>(read: (reading: Reading) => T): ((reading: Reading) => T) => {
  const known = new WeakMap<Reading, { readonly value: T }>();
  return (reading) => {
    const before = known.get(reading);
    if (before) return before.value;
    const value = read(reading);
    known.set(reading, { value });
    return value;
  };
};
