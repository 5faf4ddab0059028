import { defined } from '../../core/defined.ts';
import type { Reading } from '../reading.ts';
import { mlOfItem, percentsIn } from './bench-dilute.ts';
import { sizeOf } from './target.ts';

type Was = Readonly<Record<string, unknown>>;

/** Words a follow-up at the bench may be made of, besides its figures. */
const plainWords =
  /^(?:what|how|about|from|for|and|or|to|of|with|in|now|same|then|instead|make|it|made|only|if|degrees?|tins?|jars?|one|holds?|weighs?|ok|okay|fine|alcohol|ethanol)$/;

/** One strength alone is the weaker one only where it is said so, or is none that is bought. */
const strengthAgain = (percents: readonly number[], text: string): Was => {
  const [one, two] = percents.toSorted((a, b) => b - a);
  if (one === undefined) return {};
  if (two !== undefined) return { fromPercent: one, toPercent: two };
  const weaker = /\bto\s+\d/i.test(text) || (!/\bfrom\b/i.test(text) && one <= 80);
  return weaker ? { toPercent: one } : { fromPercent: one };
};

const alcoholAgain = (reading: Reading, was: Was): Was | undefined => {
  const percents = percentsIn(reading.items).map((item) => item.value ?? 0);
  const size = mlOfItem(
    reading.items.find((item) => item.letter === 'v'),
    reading,
  );
  if (percents.length > 2 || (percents.length === 0 && size === undefined)) return undefined;
  const said = strengthAgain(percents, reading.text);
  if (size === undefined) return { alcohol: { ...was, ...said } };
  const amount = /\bhave\b|\bgot\b/i.test(reading.text) ? { haveMl: size } : { makeMl: size };
  return {
    alcohol: { ...defined({ fromPercent: was.fromPercent, toPercent: was.toPercent }), ...said, ...amount },
  };
};

const fillAgain = ({ items, settings }: Reading, was: Was): Was | undefined => {
  const grams = items.filter((item) => item.letter === 'g' && item.value !== undefined);
  const [only] = grams;
  if (grams.length !== 1 || !only) return undefined;
  const amount = sizeOf(only, settings.region)?.amount;
  const named = items[items.indexOf(only) + 1]?.letter === 'c';
  // "And a 30 g tin?" asks of another tin; "and 13.2 g?" of another weight in the same one.
  return { fill: named ? { ...was, declaredG: amount } : { ...was, weighed: [amount] } };
};

/** "And for 250 ml?", "what about from 90 %?": the last request at the bench with other figures. */
export const benchAgain = (reading: Reading): Was | undefined => {
  const { last, items } = reading;
  if (last?.topic !== 'bench' || items.length > 12) return undefined;
  if (items.some((item) => /[wzZiR]/.test(item.letter) && !plainWords.test(item.word))) return undefined;
  const { alcohol, fill } = last.request;
  if (alcohol) return alcoholAgain(reading, alcohol as Was);
  return fill ? fillAgain(reading, fill as Was) : undefined;
};
