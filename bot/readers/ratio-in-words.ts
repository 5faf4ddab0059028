import { smallNumbers } from './number.ts';

/** Shares that herbs are steeped at, and that somebody would say in words. */
const parts = [
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'twelve',
  'fifteen',
  'twenty',
];
const numbers: Readonly<Record<string, number>> = { ...smallNumbers, twenty: 20 };

/** What "one to six" may count instead: "one to six weeks", "one to three tins". */
const counted =
  '(?:more|or|tins?|jars?|pots?|tubes?|sticks?|bottles?|people|persons?|seconds?|minutes?|hours?|days?|weeks?|months?|years?|grams?|g|kg|kilos?|ml|l|lit(?:re|er)s?|drops?|percent|per cent|spoons?|cups?|tablespoons?|teaspoons?|batch(?:es)?|degrees)';
const inWords = new RegExp(
  `\\bone (?:part )?(?:to|of \\w+ to) (${parts.join('|')})\\b(?: parts(?! ))?(?!\\s*(?:%|°|${counted}\\b))`,
  'gi',
);

/** "At one to eight" as 1:8: the shares of herb and oil. */
export const withRatiosInFigures = (text: string): string =>
  text.replace(inWords, (_, word: string) => `1:${numbers[word.toLowerCase()]}`);
