import type { Place } from '../understand.ts';
import type { BenchReading } from './bench-reading.ts';
import { longestNote } from './bench-text.ts';
import type { Item } from './item.ts';

/** The day something was done, ISO. */
export const dayIn = ({ days }: Pick<BenchReading, 'days'>): string | undefined =>
  days.find(({ role }) => role === 'on')?.past;

/** "…, threw 20 g of it away": what was done, and not why. */
const isNoReason =
  /\d ?(?:k?g|grams?|ml|oz)\b|^(?:(?:i|we|so|and|had to)\s+)*(?:threw|thrown|throw|binned|bin|chucked|tossed|got rid|poured)\b[^,;]{0,24}$/i;

/** What stands after a comma, "because", a dash or a colon: the reason in the maker's own words. */
export const reasonIn = (text: string): string | undefined => {
  const match = /(?:[,;:]\s+|\s-\s|\bbecause\b\s*|\bsince\b\s*|\bas it\b)([^_]{3,})$/i.exec(text);
  const said = match?.[1]
    ?.replace(/_+/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/[\s.!]+$/, '')
    .trim()
    .slice(0, longestNote);
  return said && /\p{L}{3}/u.test(said) && !isNoReason.test(said) ? said : undefined;
};

/** How much of a lot there is. */
export const countCue =
  /\b(?:is|are|was|were|now|down to|has|have(?! to\b)|had(?! to\b)|holds|should be|should have been|only|actually|really|left|adjust|set|change(?= .{1,60}\bto \d)|count(?:ed)?|counts?|weigh(?:ed|s)?|correct(?:ion)?|inventory|stocktake|stock-take|says?|said|reads?|shows?|showed|scales?|checked|(?:came|comes) to(?= \d)|found|stock-?taking|recount(?:ed)?|re-?weigh(?:ed|ing)?|balance|weighing|in the (?:tub|jar|bag|bottle|bucket|can|canister)|stands at)\b|_\W{0,2}[:=]|\b(?:count|stock|weight|balance|status)\W{0,2}[:=]/i;
/** "20 g less than the book says" is no count. */
export const relative =
  /\b(?:less|(?<!once )more|fewer|short|over|under|too (?:much|little|many)|missing|difference|extra|loss(?:es)?|off)\b/i;
/** That a lot was opened. */
export const openCue =
  /\bseal\b[^.;]{0,24}\b(?:broken|broke|removed|gone)\b|\b(?:first )?opening of (?:the |our |lot )?_+ (?:was|took|on|is)\b|\bopening of (?:the |our |lot )?_+\W{1,4}_|_\W*(?:is |are |was |were |now |has been |have been )*open(?:ed)?\b|\b(?:opened|open(?:ed)? since|broke the seal|(?:took|taken|take) (?:the )?(?:lid|cap|top|seal|cork) off|brok(?:e|en) into|tapped|(?:broke|cracked|cut|tore|ripped|popped|broken|torn) (?:it )?open|unsealed|unscrewed|broached|started|began|begun|begin|in use|on the go|is (?:now |already )?open)\b/i;

/** What the scale says now, where other amounts are told besides: "two bottles, 205 and 200 g, so it is really 405 g". */
const saysNow =
  /\b(?:(?:weighed|counted|measured) (?:the (?:rest|remainder)|it|what (?:is|was|'s) left)(?: again)?\W*|(?:is|are|was|were) (?:really|now|only|down to)|(?:weighs?|weighed)(?: in)?(?: at| as)?|(?:now )?(?:has|contains)(?: now)?|holds|there(?:'s| is| are)|left|left with|says?|said|reads?|shows?|showed|comes? to|came to|stands at|down to)\s*(?:(?:only|just|now|exactly|at|in)\s*)*$/i;
const isLeft =
  /^ (?:of (?:it|them|_+) )?(?:(?:is|are|was|were|still) )*(?:left|remain(?:s|ing)?|still there|on the (?:kitchen )?(?:scales?|balance))\b/i;

/** "There's 410 g left in the tub": what there is, and not what went. */
export const isWhatIs = ({ from, to }: Place, text: string): boolean =>
  saysNow.test(text.slice(Math.max(0, from - 40), from)) || isLeft.test(text.slice(to, to + 30));

/** "About a cupful", "half a cup": no amount that anybody weighed. */
export const isVague = ({ letter, from }: Item, text: string): boolean =>
  letter !== 'g' ||
  /\b(?:about|around|roughly|some|maybe|perhaps|approximately|nearly|almost) $/i.test(
    text.slice(Math.max(0, from - 16), from),
  );
