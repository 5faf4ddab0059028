import { wordsOf } from './word-list.ts';

/**
 * One letter for each kind of thing a message is made of. A message becomes a string of these letters, and topics
 * look for shapes in it with regular expressions, so that a phrase family is one line and not a parser.
 */
export const letters = {
  number: 'n',
  mass: 'g',
  volume: 'v',
  drops: 'd',
  percent: '%',
  part: 'p',
  temperature: 't',
  ratio: 'r',
  unit: 'u',
  ingredient: 'i',
  recipe: 'R',
  container: 'c',
  times: 'x',
  of: 'o',
  each: 'e',
  and: 'A',
  to: 'T',
  in: 'I',
  for: 'F',
  with: 'W',
  multiple: 'M',
  loss: 'L',
  none: 'N',
  rest: 'Q',
  strained: 'S',
  infused: 'H',
  my: 'y',
  batch: 'b',
  product: 'B',
  unknown: 'w',
  danger: 'z',
  past: 'Z',
} as const;

/** Words around a request that change nothing. */
const chatter = new Set(
  wordsOf(`
  the a an please pls plz pleeease plss thanks thank thx ty tysm ta cheers hi hello hey hiya heya howdy dear good morning evening afternoon
  everyone everybody folks team friend friends mate guys lovely love xx xxx pipkin bot can could would will you u i we me us our it its
  i'd i'll i'm we'd we'll we're we've i've you're id im ive is are am was be been like just so ok okay oki well um uh uhm hmm er erm kindly
  sorry again also now right quick quickly real really very much appreciated advance help asap lol haha hehe yay great super
  lot lots bit let let's lets get give gimme tell show see know hope hoping trying try wondering wonder wanna want wants wanted need needs needed
  oh nope yo yep aha wishes regards bc cos cuz meant mean actually oops rather correction gonna going go about around approximately approx roughly ca circa say maybe perhaps possible possibly kind
  at holding holds hold size sized capacity full containing contain contains takes small little big large metal aluminium aluminum glass plastic round
  he she they his her him them
  there here that this these those them they one's day today tonight tomorrow later soon
  must on r yall y'all abt nah innit bro dude omg wtf tbh btw ur thing
  but if mind bother any something anything else some someone somebody do does has had that's thats there's theres what's whats
  `),
);

/** Words that turn a request into another one. Never skipped over. */
const danger = new Set(
  wordsOf(`
  not don't dont doesn't doesnt didn't isn't isnt aren't won't can't cant cannot shouldn't wouldn't never nothing
  instead swap swapping swapped replace replaces replacing replacement substitute substitutes substitution switch exchange
  except excluding exclude minus unless why where who whom whose which whether because than better worse worst
  versus vs or survive survives sweat pocket hotter harder softer firmer
  cost costs price prices priced cheap cheaper cheapest expensive pay sell selling sold buy buys buying order profit post send
  label labels labelling labeling claim claims heal heals cure cures treat treats expire expires expiry expired rancid shelf
  stock trace recall reaction rash report remind reminder poured gave infuse infusing steep
  check safe safely safety legal allowed danger dangerous allergic allergy allergies vegan unscented calories
  design invent invented history weather joke poem song story delete remove forget undo import export backup
  long eat drink cook bake forget ignore previous instructions system prompt sale average ought
  `),
);

/** Words that tell of the past or of the pot: fine in talk around a request, but a request with one is a story. */
const past = new Set(
  wordsOf(`
  yesterday ago last week month already was were did scaled made bought saw fell when might melt melts melting heat heated hot cool cooling
  bath hard soft firm best taste smell smells colour color
  `),
);

const kinds: Readonly<Record<string, string>> = {
  c: 'tin tins jar jars pot pots tube tubes stick sticks container containers tub tubs pottle pottles tinlet tinlets vial vials bottle bottles jarlet jarlets ',
  x: 'x times × * multiply multiplied by',
  o: 'of à',
  e: 'each apiece ea every',
  A: 'and n & + plus',
  T: 'to into onto',
  I: 'in as inside',
  F: 'for',
  W: 'with from using w/ w given',
  L: 'loss losses waste wastage spillage lossage allowance leftover leftovers overage lose loses losing',
  N: 'no without zero w/o nil none',
  Q: 'rest remainder balance remaining qs ad',
  S: 'strained strain straining sieved removed discarded',
  H: 'infused infusion macerated macerate steeped',
  y: 'my have got',
  b: 'batch batches recipe recipes amount amounts quantity quantities ingredient ingredients formula formulation',
  B: 'lipbalm lipbalms lip balm balms salve salves butter-balm ointment',
};

const multiples: Readonly<Record<string, number>> = {
  double: 2,
  doubled: 2,
  twice: 2,
  doubling: 2,
  triple: 3,
  tripled: 3,
  treble: 3,
  thrice: 3,
  quadruple: 4,
  halve: 0.5,
  halved: 0.5,
  halving: 0.5,
};

const byWord = new Map<string, string>();
for (const [letter, words] of Object.entries(kinds))
  for (const word of wordsOf(words)) byWord.set(word, letter);
for (const word of Object.keys(multiples)) byWord.set(word, letters.multiple);
for (const word of danger) if (!byWord.has(word)) byWord.set(word, letters.danger);
for (const word of past) if (!byWord.has(word)) byWord.set(word, letters.past);

export const multipleOf = (word: string): number | undefined =>
  Object.hasOwn(multiples, word) ? multiples[word] : undefined;

/** The letter of a word that is no name, number or unit; undefined for chatter, which is left out altogether. */
export const letterOf = (word: string): string | undefined => {
  const letter = byWord.get(word);
  if (letter) return letter;
  return chatter.has(word) ? undefined : letters.unknown;
};

/** True for a word with a meaning of its own here, which is never taken for a misspelt other one. */
export const isKnownWord = (word: string): boolean => byWord.has(word) || chatter.has(word);

export const isChatter = (word: string): boolean => chatter.has(word);
