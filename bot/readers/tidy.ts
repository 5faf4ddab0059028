import { entriesInSentences } from './entries.ts';
import { withoutFrame } from './framed.ts';
import { smallNumbers } from './number.ts';
import { withoutOpening } from './opening.ts';
import { withDaysInFigures } from './ordinal-days.ts';
import { withRatiosInFigures } from './ratio-in-words.ts';
import { withoutSideClauses } from './side-clauses.ts';
/** Longest message that is read, in characters: a pasted recipe of sixty lines fits with room to spare. */
export const maxMessageLength = 4000;

const vulgar: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅕': '1/5',
};
const vulgarSigns = new RegExp(`[${Object.keys(vulgar).join('')}]`, 'gu');
const plain = /^[\n\x20-\x7e]*$/;
/** "Nutfree", typed in one word. */
const runTogether =
  /\b(nuts?|palm|coconut|bees?|beeswax|lanolin|soya?|sesame|gluten|wheat|scent|fragrance|perfume)free\b/gi;
/** "Nutless", "palmless". */
const less = /\b(nut|palm|coconut|wax|beeswax|scent|soy)less\b/gi;
/** "Veganise it", "all plants, please", "never a nut": in words that every reader knows. */
const otherWords: readonly (readonly [RegExp, string])[] = [
  [/\bvegani[sz]ed?\b/gi, 'make vegan'],
  [/\b(?:all|only|purely)[ -]plants?(?:[ -](?:only|based))?\b(?! oils?\b)/gi, 'vegan'],
  [/\bnever (?:a |any )?(?=nuts?\b)/gi, 'no '],
  // "The lot number will be C7", "best before on it should be March".
  [
    /\b(best[- ]before|lot)(?: dates?| numbers?| no\.?| codes?)?(?: on (?:it|them|the (?:labels?|tins?)))? (?:should|shall|must|will|has to|ought to) (?:be|say|read)\b(?! (?:used|sold|finished|eaten|thrown|opened|taken|recalled|put|the first|first))/gi,
    '$1',
  ],
  [/\bused 4(?=\W*$)/gi, 'used for'],
  [/\bb['’]wax\b/gi, 'beeswax'],
  [/\b(?:sry|srry|soz)\b/gi, 'sorry'],
  // "Item 1: the group poured …".
  [/(^|[.;!\n]\s*)(?:agenda )?(?:item|point|task|ad) \d{1,2}\s*[:.)-]\s+/gi, '$1'],
  [/\bhalf[ -](marathons?|terms?|days?|moons?)\b/gi, 'short $1'],
  [/\bb\/b\b/gi, 'best before'],
  // "Note for yesterday: …", "yesterday's page: …".
  [
    /\b(?:late |missing )?(?:note|entry) for (yesterday|today|(?:mon|tues|wednes|thurs|fri|satur|sun)day)\s*:\s*/gi,
    '$1: ',
  ],
  [/^\s*(yesterday|today)'s (?:page|entry|entries|list|notes?)\s*:\s*/gi, '$1: '],
  [
    /\b(?:i |we )?(?:have )?miscounted(?: the (?:pour|batch|tins|jars|pots|sticks|tubes))?\s*[:,-]\s*(\S{2,20}) (?:came to|was|were|is|are) (?=\d)/gi,
    '$1 was really ',
  ],
  [/\bwhat (?:does|did|will) (?:that|this|it) leave (?:us |me )?(?=(?:of|in|from)\b)/gi, 'what is left '],
  [/\bwhat does (?:lot )?(\S{2,20}) stand at\b/gi, 'how much is left of $1'],
  [
    /\b(?:anything|something|what|what's|whats|which)(?: (?:is|are|has|have|dropped|fallen|gone|now)){0,3} (?:below|under|beneath) (?:its|their|the|our|a) (?:marks?|minimum|re-?order level|limit|levels?)\b/gi,
    'what is running low',
  ],
  // "Picked 2 tins of it up from the chemist again".
  [
    /\b(?:picked|collected|fetched) ((?:\d{1,3}|one|two|three|four|five|six) (?:tins?|jars?|pots?|tubes?|sticks?)(?: of \S{2,20})?) (?:up )?from ([^,.;\d]{2,40}) again\b/gi,
    'got $1 back from $2',
  ],
  [
    /,? (?:which|that|and it|it|they|and they) (?:should|must|has to|have to|needs? to|can|may) be used (?:up )?(?:by|before|until) (?=[^?]*$)/gi,
    ', best before ',
  ],
  [
    /[.;,]\s+(?:(?:please|so|and|we|i) )*(?:call|name|number) (?:it|this|that|the oil)(?: as)?(?: lot)? (?=[^\s.]*\d)/gi,
    ', lot ',
  ],
  [/^\s*what (?:remains|remained|is left|was left) of (\S{2,20}),? (?=[^?]*$)/gi, 'the rest of $1, '],
  [/\bscented with (?=\w)/gi, 'with '],
  [/\b(?:odou?rless|smells? of nothing|no aroma|non-?scented)\b/gi, 'unscented'],
];
const inCommonWords = (text: string): string =>
  otherWords.reduce((plainer, [said, meant]) => plainer.replace(said, meant), text);

/** "4 my gran": a figure typed for the word. */
const fourFor =
  /(?<!\b(?:and|plus|with|for|are|have|has|of|about|teach|be|only|just|x) |[&+,] )\b4 (?=(?:my|me|us|our|him|her|them|you|your|his|their|vegans?|everyone|kids|the)\b)/gi;

/** What phones make of words. In small letters only: "B4" may be a lot. */
const typed: Readonly<Record<string, string>> = {
  wot: 'what',
  wat: 'what',
  wots: "what's",
  wats: "what's",
  whts: "what's",
  hw: 'how',
  hows: "how's",
  yday: 'yesterday',
  yest: 'yesterday',
  ystrday: 'yesterday',
  '2day': 'today',
  '2nite': 'tonight',
  '2nyt': 'tonight',
  tonite: 'tonight',
  '2moro': 'tomorrow',
  tmrw: 'tomorrow',
  b4: 'before',
  bk: 'back',
  opnd: 'opened',
  recvd: 'received',
  bght: 'bought',
  shud: 'should',
};
const typedWords = new RegExp(`(?<!\\b(?:lot|batch|no) )\\b(?:${Object.keys(typed).join('|')})\\b(?!-)`, 'g');
/** "Rec'd", "ret'd", "del'd": as they stand in a notebook. */
const clipped: Readonly<Record<string, string>> = {
  rec: 'received',
  recv: 'received',
  ret: 'returned',
  del: 'delivered',
  op: 'opened',
};
const clippedWords = /\b(rec|recv|ret|del|op)'d\b/gi;
const spoken = (text: string): string =>
  text
    .replace(typedWords, (word) => typed[word] ?? word)
    .replace(clippedWords, (_, word: string) => clipped[word.toLowerCase()] ?? word);

/** "Plsss", "sooo": drawn out, and the same word. Lot codes have digits or capitals in them. */
const drawnOut = /\b(?=[a-z]{4,20}\b)[a-z]*?([a-z])\1{2,}[a-z]*\b/g;
const shortened = (text: string): string =>
  text.replace(drawnOut, (word) => word.replace(/([a-z])\1{2,}/g, '$1'));

/** "Dear Pipkin", "would you be a dear": nothing is dear here. */
const dearMe =
  /\b(?:(?:my|be a|such a|you|oh|oh my) dears?\b|dear(?=,? (?:pipkin|all|friends?|helper|bot|everyone|everybody|team|ladies|sir|madam)\b))/gi;

/** "A whole litre", "a full kilo". */
const wholeOne =
  /\b(a|one) (?:whole|full|entire) (?=(?:lit(?:re|er)|kilo(?:gram)?|kg|pound|gram|ounce|cup|tablespoon|teaspoon)s?\b)/gi;

/** "One level tablespoon": a spoon is level unless somebody says it is heaped. */
const levelSpoon =
  /\b(an?|one|two|three|four|half an?|\d{1,4}(?:[.,/]\d{1,3})?) (?:level|flat) (?=(?:tablespoon|teaspoon|cup)s?\b|tbsps?\b|tsps?\b)/gi;

/** Compatibility forms turned plain: full-width digits, ℃, ㎖. Fractions first, or 1½ would read as 11/2. */
const folded = (text: string): string =>
  text
    .replace(vulgarSigns, (sign) => ` ${vulgar[sign]}`)
    .normalize('NFKC')
    .replace(/\r\n?/g, '\n')
    .replace(/[‘’‛`´]/g, "'")
    .replace(/[“”„«»]/g, '"')
    .replace(/[‐‑‒–—―−]/g, '-')
    .replace(/[•·▪◦●‣]/g, '*')
    .replace(/[→⇒➜➔]/g, ' > ')
    .replace(/[←⇐]/g, ' < ')
    .replace(/\p{Extended_Pictographic}[\u{1F3FB}-\u{1F3FF}]?|\uFE0F|\u200D|[\u{1F1E6}-\u{1F1FF}]/gu, ' ')
    // Boxes to tick, dingbats and the like; the degree sign is of their kind but has a meaning here.
    .replace(/[^\P{So}°]/gu, ' ')
    // Control, zero-width and direction-changing characters say nothing and can hide something.
    .replace(/[^\P{C}\n\t]/gu, '');

/** "A pound and a half", "two cups and a half". */
const andAHalf =
  /\b(an?|one|two|three|four|five|six|\d{1,4}) (kilo(?:gram)?s?|kg|pounds?|lbs?|ounces?|oz|lit(?:re|er)s?|cups?|tablespoons?|teaspoons?|tbsp|tsp|dozen)(?: (?:and|&) (?:a half\b|half\b(?! (?:of|the|an?|kg|kilo|pound|cup)\b)))/gi;
const ones: Readonly<Record<string, number>> = { a: 1, an: 1, ...smallNumbers };
const inTenths = (_: string, count: string, unit: string): string => {
  const number = (ones[count.toLowerCase()] ?? Number(count)) + 0.5;
  return unit.toLowerCase() === 'dozen' ? String(number * 12) : `${number} ${unit}`;
};

/** A telegram: all in capitals, and STOP where a sentence ends. */
const telegram = (text: string): string =>
  /\bSTOP\b[\s\S]{1,2000}\bSTOP\b|\w\W+STOP\W*$/.test(text) && !/[a-z]/.test(text)
    ? text.replace(/\s+STOP\b/g, '.')
    : text;

/** "In fahrenheit 104". */
const unitFirst = /\b(fahrenheit|celsius) (\d{2,3})\b(?! ?(?:[cf°]|celsius|fahrenheit))/gi;

/** "To the nearest gram", "to the nearest tenth of a gram". */
const nearestGram = /\bnearest (?:(?:whole|full) )?(tenth of a |hundredth of a |half )?gram(?:me)?\b/gi;
const gramSteps: Readonly<Record<string, string>> = { tenth: '0.1', hundredth: '0.01', half: '0.5' };
const nearestStep = (_: string, part: string | undefined): string =>
  `nearest ${gramSteps[part?.split(' ')[0]?.toLowerCase() ?? ''] ?? '1'} g`;

/** "22 % w/w": by weight, as every share here. */
const byWeight = /(?<=(?:%|percent) ?)\(?\b(?:w\/w|m\/m|wt\/wt|by weight)(?=[\s,;):]|$)\)?/gi;

/** ".5 oz" is half an ounce and not five. */
const bareDecimal = /(?<![\w.)\]])\.(?=\d)/g;

/** No message needs wider gaps, and what looks for a gap's end would look for it from each of its blanks. */
const widest = 24;
const wideGaps = new RegExp(`\\s{${widest + 1},}`, 'g');
const narrowed = (text: string): string =>
  text.replace(wideGaps, (gap) => (gap.includes('\n') ? '\n\n' : ' '.repeat(widest)));

/**
 * Brings a message to plain characters without changing what it says: no emoji, mentions or look-alike signs.
 * Letter case stays, because a recipe's name keeps it.
 */
export const tidy = (text: string): string => {
  const bare = text.includes('<')
    ? text
        .replace(/<(?:[@#][!&]?|a?:\w+:)\d+>/g, ' ')
        .replace(/<\/?(?:li|ul|ol|p|br|div|tr|table)\b[^<>]{0,80}>/gi, '\n')
    : text;
  const signs = telegram(plain.test(bare) ? bare : folded(bare));
  const short =
    signs.includes('q') || signs.includes('Q') ? signs.replace(/\bq\.?\s?s\.?(?=[\s,;)]|$)/gi, 'qs') : signs;
  const dotted = narrowed(short.includes('..') ? short.replace(/\.{2,}/g, ' ') : short);
  const plainEnd = /\b(?:no|not)\W{0,9}$/i.test(dotted)
    ? dotted.replace(/[\s,:-]{0,9}\b(?:yes or no|or not)[\s?!.]{0,9}$/i, '?')
    : dotted;
  // "Forget that, olive oil is 7 per litre": only what follows is meant.
  const meant = /^\W*(?:no,? )?(?:forget|scratch|ignore)/i.test(plainEnd)
    ? plainEnd.replace(
        /^\W*(?:no,? )?(?:forget|scratch|ignore) (?:that|it|the last one)\s*[,.:;-]\s*(?=\S)/i,
        '',
      )
    : plainEnd;
  const opened = withDaysInFigures(
    withoutOpening(withoutSideClauses(withoutFrame(entriesInSentences(meant)))),
  );
  const whole = opened.includes('.') ? opened.replace(bareDecimal, '0.') : opened;
  const spelt = shortened(
    spoken(inCommonWords(whole))
      .replace(runTogether, '$1-free')
      .replace(less, '$1-free')
      .replace(fourFor, 'for ')
      .replace(levelSpoon, '$1 ')
      .replace(byWeight, '')
      .replace(nearestGram, nearestStep)
      .replace(unitFirst, '$2 $1')
      .replace(andAHalf, inTenths)
      .replace(wholeOne, '$1 '),
  ).replace(dearMe, ' ');
  const shared = withRatiosInFigures(spelt);
  return shared.includes('\r') || shared.includes('`')
    ? narrowed(shared.replace(/\r\n?/g, '\n').replace(/`+/g, ' '))
    : shared;
};
