import type { Wearer } from '../../core/check/limits.ts';
import { takePattern } from './check-parts.ts';
import type { Board } from './target.ts';

/** Years up to which somebody is a child here, in figures and words. */
const few = '(?:[1-9]|1[0-2]|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)';
const years = `${few}(?:\\s*(?:(?:and a half|to|or|and|-|–)\\s*${few}?)\\s*)?(?:[-\\s]*(?:years?|yrs?|y/?o)(?:[-\\s]olds?)?)?`;
const months =
  '(?:\\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|eighteen)[-\\s]*months?(?:[-\\s]olds?)?';
const aged = `(?:\\s*[,(]?\\s*(?:(?:who|she|he|they)(?:'s|\\s+is|\\s+are|'re|\\s+(?:just\\s+)?turned)?\\s+|is\\s+|are\\s+)?(?:under|below|over|of|aged?|ages|from)?\\s*(?:about\\s+|only\\s+|just\\s+|nearly\\s+|almost\\s+|barely\\s+)?(?:${months}|${years})(?=\\s*(?:[,.;:!?)\\n]|$|\\s(?:and|on|so|who|with|for|is|or|but|her|his|their|lips?)\\b)))`;
const whose =
  '(?:(?:for|on|to|by)\\s+)?(?:(?:an?|my|our|the|his|her|their|your|some|two|three|small|young|little|tiny)\\s+)*';

const childWords =
  'children|childrens?|child|kids?|kiddies|toddlers?|tots?|little ones?|bairns?|youngsters?|pre-?schoolers?|schoolchildren|school ?kids?|pupils?|grandchild|grandchildren|grandkids?|godchild|godchildren|under[- ](?:twos?|threes|fours?|fives?|six(?:es)?|sevens?|eights?|tens?|twelves?|[1-9]s|1[0-2]s)|nursery|kindergarten|play ?group|primary school|minors';
const kin =
  'daughters?|sons?|niece|nephew|grandsons?|granddaughters?|godson|goddaughter|girls?|boys?|cousin|brother|sister|twins';
const inMonths = aged.replace(`|${years}`, '');

const babies = new RegExp(
  `\\b${whose}(?:(?:${months}\\s*)?(?:baby|babies|infants?|newborns?)\\b(?!\\s+(?:oil|blue|pink|powder|shampoo))${aged}?|${few}[-\\s]*months?[-\\s]olds?\\b|(?:${kin}|${childWords})${inMonths})`,
);
const children = new RegExp(
  `\\b${whose}(?:(?:${few}[-\\s]*(?:years?|yrs?)[-\\s]*olds?\\s*)?(?:${childWords})\\b${aged}?|${few}[-\\s]*(?:(?:years?|yrs?)[-\\s]olds?|y/?os?)\\b)`,
);
/** "For my daughter, she is five", "my grandson of two", "a little girl". */
const ownChild = new RegExp(
  `\\b${whose}(?:${kin})${aged}|\\b(?:little|small|young|tiny|wee)\\s+(?:${kin})\\b`,
);
/** "Aged 3 to 6", "age: 4", "ages 5 and up". */
const byAge = new RegExp(
  `\\b(?:aged|ages?)\\s*:?\\s*(?:between\\s+)?${years}(?:\\s+(?:and (?:up|over|under)|up|upwards))?\\b`,
);

const pregnant =
  /\b(?:for|by|on|in|during|while|when|if)?\s*(?:(?:an?|my|our|the|is|am|are|i'm|she's|someone|somebody|who)\s+)*(?:(?:pregnant|expecting)(?:\s+(?:wom[ae]n|friend|sister|daughter|wife|lady|ladies|mothers?|mums?|customers?|people|person|colleague|neighbou?r))?|pregnancy|mothers?-to-be|mums?-to-be)\b/;

/** Who a balm is for, where that changes what may be in it. */
export const takeWearer = (board: Board, text: string): Wearer | undefined => {
  if (takePattern(board, text, pregnant)) return 'pregnant';
  if (takePattern(board, text, babies)) return 'babies';
  const child = [ownChild, children, byAge].map((pattern) => takePattern(board, text, pattern));
  return child.some((found) => found !== undefined) ? 'children' : undefined;
};
