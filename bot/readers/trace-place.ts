import { latestBatches } from '../../core/bench/latest.ts';
import type { Bench } from '../../core/bench/state.ts';
import { placeKey } from '../../core/bench/trace.ts';
import { type Claim, claim, type Reading } from '../reading.ts';
import type { Place } from '../understand.ts';
import { readBench } from './bench-reading.ts';
import { wordsOf } from './word-list.ts';

/** Sure enough where nothing else is read in it, and no surer than a question that names a batch. */
const weight = 2.95;
/** Longest question of what a place has, in tokens. */
const mostTokens = 18;
/** Places are looked for among the latest batches. */
const mostBatches = 400;

const asks =
  /^\W*(?:(?:and|so|ok|but|then|please|now|hi|hello|pipkin)\b\W*)*(?:what|what's|which|how (?:many|much)|did|do|does|has|have|is|are|was|were|anything|any|show|list|tell|when did|everything|all)\b|\?\s*$/i;
const moves =
  /\b(?:get|gets|got|give|gave|given|have|has|had|hold|holds|take|took|taken|sell|sold|buy|bought|go|went|gone|at|with|receive|received|left|out|bring|brought|return|returned|back|still|send|sent|lent)\b/i;
/** "Is Anna at home" asks of no tins. */
const ofTins =
  /\b(?:what|which|how (?:many|much)|anything|any|some|tins?|jars?|pots?|sticks?|tubes?|batch(?:es)?|list|show|everything|hers|theirs|his)\b/i;
/** What was done with them, and when, is told of another topic. */
const elsewhere =
  /\b(?:expir\w*|best[- ]before|reminder?s?|reaction\w*|rash|cost|price|label|workshop|melt\w*|scale|design|poured|reacted|itch\w*|who|left over|undo|for the next|should|must|shall|will|can|could)\b/i;

const ownWords = new Set(
  wordsOf(`get gets got give gave given have has had hold holds take took taken sell sold buy bought go went gone receive received left out still bring brought
    return returned back send sent lent when much day days date tins jars many much far total altogether alone until now did does do was were is are
    to at with from by for in on of the our my her his their its not yet already ever how what which anything any all everything show list tell batch batches kind kinds us ours now of them far so today there salve salves balm balms lip yet and hand`),
);

/** Where containers went, by the name as it is compared: the longest first. */
const placesIn = (bench: Bench): readonly (readonly [string, string])[] => {
  const places = new Map<string, string>();
  let seen = 0;
  for (const { gone } of latestBatches(bench)) {
    for (const { to } of gone) if (to !== undefined) places.set(placeKey(to), to);
    seen += 1;
    if (seen === mostBatches) break;
  }
  return [...places].toSorted(([a], [b]) => b.length - a.length);
};

const isLetter = (sign: string): boolean => /[\p{L}\p{N}]/u.test(sign);

/** Where a name stands in a text as whole words. */
const standsAt = (text: string, name: string): number => {
  const at = text.indexOf(name);
  if (at < 0 || isLetter(text.charAt(at - 1)) || isLetter(text.charAt(at + name.length))) return -1;
  return at;
};

/** A place that containers went to, where a message names one. */
export const placeNamed = ({ text, bench }: Reading): (Place & { readonly name: string }) | undefined => {
  if (bench.batches.size === 0) return undefined;
  const lower = text.toLowerCase();
  const found = placesIn(bench).find(([key]) => key.length > 2 && standsAt(lower, key) >= 0);
  const from = found ? standsAt(lower, found[0]) : -1;
  return found && { name: found[1], from, to: from + found[0].length };
};

/** "What did Anna get", "how many has the harbour market": what went to one place. */
export const claimAtPlace = (reading: Reading): Claim | undefined => {
  const { text, tokens, bench: book } = reading;
  if (book.batches.size === 0 || tokens.length > mostTokens || !asks.test(text)) return undefined;
  if (!moves.test(text) || !ofTins.test(text) || elsewhere.test(text)) return undefined;
  const { lots, days, rest } = readBench(reading);
  if (lots.length > 0 || days.length > 0) return undefined;
  const lower = text.toLowerCase();
  const found = placesIn(book).find(([key]) => key.length > 2 && standsAt(lower, key) >= 0);
  if (!found) return undefined;
  const from = standsAt(lower, found[0]);
  const others = rest.items.filter((item) => item.to <= from || item.from >= from + found[0].length);
  const isTalk = others.every(
    ({ letter, word }) => !/[gvnit%dprH]/.test(letter) && (!/[wzZ]/.test(letter) || ownWords.has(word)),
  );
  return isTalk ? claim({ to: found[1] }, weight) : undefined;
};
