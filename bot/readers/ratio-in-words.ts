const parts: Readonly<Record<string, number>> = {
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  twelve: 12,
  fifteen: 15,
  twenty: 20,
};

/** What "one to six" may count instead: "one to six weeks", "one to three tins". */
const counted =
  '(?:more|or|tins?|jars?|pots?|tubes?|sticks?|bottles?|people|persons?|seconds?|minutes?|hours?|days?|weeks?|months?|years?|grams?|g|kg|kilos?|ml|l|lit(?:re|er)s?|drops?|percent|per cent|spoons?|cups?|tablespoons?|teaspoons?|batch(?:es)?|degrees)';
const inWords = new RegExp(
  `\\bone (?:part )?(?:to|of \\w+ to) (${Object.keys(parts).join('|')})\\b(?: parts(?! ))?(?!\\s*(?:%|°|${counted}\\b))`,
  'gi',
);

/** "At one to eight" as 1:8: the shares of herb and oil. */
export const withRatiosInFigures = (text: string): string =>
  text.replace(inWords, (_, word: string) => `1:${parts[word.toLowerCase()]}`);
