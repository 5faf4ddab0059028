import type { Token } from './tokens.ts';

/** "lot no. K12", "batch: 26-KIVO": where the words before a code end, and whether several codes may follow. */
export interface LotCue {
  readonly next: number;
  readonly many: boolean;
  readonly word: string;
}

const cueWords = new Set(['lot', 'lots', 'batch', 'batches', 'charge', 'code']);
const numberWords = new Set([
  'no',
  'nr',
  'number',
  'code',
  'num',
  'nos',
  'codes',
  'called',
  'is',
  'printed',
  'stamped',
  'reads',
  'marked',
  'as',
  'says',
]);
const signs = new Set(['.', ':', '#', '=', '"', '-']);

/** "Lot no 3", but the lot of "lot NO3" is called so. */
const isNumberWord = (list: readonly Token[], at: number): boolean =>
  numberWords.has(list[at]?.word ?? '') &&
  !(
    /^\p{Lu}+$/u.test(list[at]?.text ?? '') &&
    list[at + 1]?.kind === 'number' &&
    list[at + 1]?.glued === true
  );

const packWords =
  /^(?:label|lid|tin|tub|jar|bag|bottle|pack|packet|box|can|sack|sticker|tag|block|carton|it|them|oil|wax|butter|parcel|container)$/;
/** "Lot number on the tin is LA204": past where it stands. */
const pastPack = (list: readonly Token[], at: number): number => {
  if (!/^(?:on|of)$/.test(list[at]?.word ?? '')) return at;
  const pack = /^(?:the|this|that|its|our|my)$/.test(list[at + 1]?.word ?? '') ? at + 2 : at + 1;
  const says = list[pack + 1];
  return packWords.test(list[pack]?.word ?? '') &&
    /^(?:is|was|says|reads|:|=)$/.test(says?.word || says?.text || '')
    ? pack + 2
    : at;
};

/** The words that announce a code, from token `at` on; "which batches is K12 in" announces none. */
export const lotCue = (list: readonly Token[], at: number): LotCue | undefined => {
  const word = list[at]?.word ?? '';
  if (!cueWords.has(word)) return undefined;
  const asks = /^(?:which|what)$/.test(list[at - 1]?.word ?? '');
  let next = at + 1;
  while (
    (isNumberWord(list, next) && !(asks && list[next]?.word === 'is')) ||
    signs.has(list[next]?.text ?? '')
  )
    next += 1;
  return { next: pastPack(list, next), many: word.endsWith('s'), word };
};

const joins = /^[-/._#]$/;
const mostCodeTokens = 12;

/** The end of a code written in one piece from token `at` on: letters, digits and the signs glued between them. */
export const pieceEnd = (list: readonly Token[], at: number): number => {
  const isPart = (token: Token | undefined): boolean => token?.kind === 'word' || token?.kind === 'number';
  if (!isPart(list[at])) return at;
  let next = at + 1;
  while (next < at + mostCodeTokens && list[next]?.glued) {
    if (isPart(list[next])) next += 1;
    else if (joins.test(list[next]?.text ?? '') && list[next + 1]?.glued && isPart(list[next + 1])) next += 2;
    else break;
  }
  return next;
};

/** Two digits, a hyphen and two or three of the house's syllables: a code of our own scheme. */
export const houseCode = /^\d{2}-(?:[bdfgklmrsvzj][aeiou]){2,3}$/i;
/** Written like one, in capitals, but with a letter wrong: "26-KUFF" is a code that the book does not have. */
export const nearHouseCode = /^\d{2}-[A-Z]{4,6}$/;
/** The speakable part of such a code alone. */
export const houseWord = /^(?:[bdfgklmrsvzj][aeiou]){2,3}$/i;

/** Written like a code: with a digit in it, or all in capitals. */
export const looksLikeCode = (text: string): boolean =>
  /\d/.test(text) || (/^\p{Lu}[\p{Lu}\-/._#]*$/u.test(text) && text.length <= 12);

/** Letters and then digits, in one piece: what a supplier's code often looks like. */
export const plainCode = /^(?:[a-z]{1,4}-?\d{1,6}|\p{Lu}{1,4}-?\d{1,6}\p{L}?)$/iu;
const lotVerb =
  /(?:\b(?:trace|recall|track|withdraw|opened|done with|finished with|where(?: is| did| has|'s| are)?|who (?:has|got)|used|about|call (?:it|this|them|the oil)|called(?: it| them| this)?|name it|named(?: it)?|(?:marked|labelled|labeled|numbered|tagged|wrote|written|put)(?: it| them| as)?)|\b(?:threw|throw|thrown|binned|wasted|spilled|spilt|dumped|tossed|gave|sold|kept|lost|left|much)\b[^,;.\n]{0,40}\bof)\s+(?:the\s+)?$/i;
const makes = /\b(?:pour\w*|save|scale|label\w*|costs?|recipe|bought|made|make)\b/i;

/** A code that nothing but a verb announces: "trace ZZ9", "threw away 5 g of ZZ9". */
export const isAfterLotVerb = (before: string, text: string): boolean =>
  lotVerb.test(before.slice(-80)) && !makes.test(text);
