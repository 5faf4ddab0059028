import { nextCode } from '../../core/bench/fold.ts';
import { readBench } from '../readers/bench-reading.ts';
import { asksOrPlans } from '../readers/bench-text.ts';
import { type LotSaid, lotsIn } from '../readers/lots.ts';
import { oncePerReading, type Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import type { Part } from './several.ts';

/** More than this in one message is a list, and belongs on lines of its own. */
const mostParts = 8;
const mostTokens = 120;

/** What is told, in kinds that are written down apart from each other. */
type Kind = 'pour' | 'out' | 'opened' | 'bought' | 'counted' | 'noted';

const amount =
  '(?:\\d{1,4}|an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve|half a dozen|a dozen|both)';
const went =
  '(?:kept|sold|given|gave|went|gone|broke|broken|leaked|melted|cracked|spilled|spilt|dropped|lost|missing|binned|thrown|donated|returned|came back|back|used|is|are|for|to)';
const verbs: Readonly<Record<Kind, string>> = {
  pour: 'poured(?! (?:at|it)\\b)|made|filled(?! (?:about |only )?[\\d.,]+ ?k?g\\b)|cast',
  out: 'sold|gave(?! it\\b| off)|given|donated|sent|posted|handed|delivered|threw|thrown|binned|chucked|tossed|spilled|spilt|dropped|broke|lost|used|took(?! (?:a|an|half an|\\d+) (?:while|hour|minute|day))|kept|keep|keeping|put aside|set aside|put (?:one|two|\\d+)',
  opened: 'opened|started on|broke into',
  bought: 'bought|purchased|received|picked up|collected|restocked',
  counted: 'weighed (?:it|_+)|counted',
  noted: 'notes? on|noted',
};
const fillers =
  "(?:(?:and|then|also|but|plus|so|i|we|i've|we've|i have|we have|just|later|afterwards|after that|today|yesterday|this morning|this afternoon|this evening|finally|she|he|they|please|(?:on )?(?:mon|tues|wednes|thurs|fri|satur|sun)day[:,]?|(?:mon|tues?|wed|thu|fri|sat|sun)\\s?[:-]|(?:on )?\\d{1,2}(?:st|nd|rd|th)? (?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\\s?[:,-]?)\\s+)*";
const boundary = '(?:^|[.:;!,\\n]\\s*|\\s-\\s|\\s(?=(?:and|then|but|plus)\\s))';
const kinds = Object.keys(verbs) as Kind[];
const byVerb = new RegExp(
  `${boundary}\\s*${fillers}(?:${kinds.map((kind) => `(?<${kind}>${verbs[kind]})`).join('|')})\\b`,
  'gi',
);
const byCount = new RegExp(
  `${boundary}\\s*${fillers}(?<![\\d.,])${amount} (?:(?:of them|of those|of these|tins?|jars?|pots?|tubes?|sticks?|more|_+|of _+|were|was|got|have|has|already|just) ){0,4}${went}\\b`,
  'gi',
);
/** "W7 is down to 500 g", "S3 is empty": at the code, where nothing else begins. */
const byCode = new RegExp(
  `${boundary}\\s*${fillers}_+ (?:(?:is|are|was|has|now) )*(?<counted>weighs|holds|empty|finished|down to|really|used up|only|[\\d.,]+ ?k?g\\b)`,
  'gi',
);

interface Start {
  readonly at: number;
  readonly kind: Kind;
}

const isSplit = (match: RegExpMatchArray): Kind | undefined =>
  kinds.find((kind) => match.groups?.[kind] !== undefined);

/** Where each thing that is told begins, and what kind it is of. */
const startsIn = (text: string): readonly Start[] => {
  const found = [
    ...[...text.matchAll(byVerb)].map((match) => ({ at: match.index, kind: isSplit(match) ?? 'out' })),
    ...[...text.matchAll(byCount)].map(({ index }) => ({ at: index, kind: 'out' as const })),
    ...[...text.matchAll(byCode)].map(({ index }) => ({ at: index, kind: 'counted' as const })),
  ].toSorted((a, b) => a.at - b.at);
  return found.filter(({ at }, place) => place === 0 || at > (found[place - 1]?.at ?? 0) + 3);
};

const trimmed = (text: string): string =>
  text
    .replace(/^(?:[\s,;.&+!-]|\b(?:and|then|also|plus|but|so|later|afterwards|after that)\b)+/i, '')
    .replace(/[\s,;.!-]+$/, '');

interface Piece {
  readonly said: string;
  readonly kind: Kind;
}

const piecesIn = (reading: Reading): readonly Piece[] => {
  const { text } = reading;
  const plain = lotsIn(reading).reduce(
    (left, { from, to }) => left.slice(0, from) + '_'.repeat(to - from) + left.slice(to),
    text,
  );
  const starts = startsIn(plain);
  return starts.map(({ at, kind }, place) => ({
    kind,
    said: trimmed(text.slice(place === 0 ? 0 : at, starts[place + 1]?.at ?? text.length)),
  }));
};

const counted =
  /\b(?:\d{1,4}|an?(?= (?:tin|jar|pot|stick|tube)\b)|one|two|three|four|five|six|seven|eight|nine|ten|twelve|half a dozen|a dozen)\b(?: (?:more|other))?(?: (?:tins?|jars?|pots?|tubes?|sticks?)\b)?(?: of (?:them|those|these|it))?(?! ?(?:k?g\b|grams?\b|ml\b|l\b|oz\b|%))/i;
const weighed = /\b\d+(?:[.,]\d+)? ?(?:k?g|grams?|kilos?|ml|oz|lb)\b(?: of it)?/i;
const pointed = /\b(?:it|them|that one|those)\b(?: all)?/i;

/** A piece without a code, as it may be meant of the lot or batch that was told of before. */
const ofCode = (said: string, code: string): readonly string[] => {
  const weighedOf = weighed.test(said)
    ? [said.replace(weighed, (all) => `${all.replace(/ of it$/i, '')} of ${code}`)]
    : [];
  const countedOf = counted.test(said)
    ? [said.replace(counted, (all) => `${all.replace(/ of (?:them|those|these|it)$/i, '')} of ${code}`)]
    : [];
  const pointedAt = pointed.test(said) ? [said.replace(pointed, code)] : [];
  return [...pointedAt, ...weighedOf, ...countedOf, `${code}: ${said}`];
};

const lastCode = (said: readonly LotSaid[]): string | undefined => said.at(-1)?.code;

const partOf = (piece: Piece, code: string | undefined, reading: Reading): Part => {
  const own = lotsIn(readAgain(piece.said, reading));
  const free = own.length > 0 || piece.kind === 'pour' || piece.kind === 'bought' || code === undefined;
  const ways = free ? [piece.said] : ofCode(piece.said, code);
  return {
    ways: ways.map((plain) => ({
      plain,
      reading: readAgain(plain, reading),
      besides: [],
      verb: '',
      slots: [],
    })),
  };
};

/** The pieces with the codes that hold for them: a pour's own one, which it is going to get, or the last that was said. */
const withCodes = (pieces: readonly Piece[], reading: Reading): readonly Part[] => {
  const parts: Part[] = [];
  let code: string | undefined;
  for (const piece of pieces) {
    const part = partOf(piece, code, reading);
    const { lots, days, today } = readBench(readAgain(piece.said, reading));
    // Of two pours only the first one's code is known beforehand.
    const isFirst = piece.kind === 'pour' && !parts.some((each) => each.code !== undefined);
    const next = isFirst ? nextCode(reading.bench, days[0]?.past ?? today).code : undefined;
    code = piece.kind === 'pour' ? next : (lastCode(lots) ?? code);
    parts.push(next === undefined ? part : { ...part, code: next });
  }
  return parts;
};

/** What puts something right is no list of things that happened; and "last week" is no day of any of them. */
const putsRight =
  /\b(?:correct(?:ion|ed)?|mistakes?|wrong(?:ly)?|miscount\w*|recounted|undo|delete|remove|typo|i meant?|instead of|not \d+)\b|\b(?:last|earlier this|some time this) (?:week|month|year|weekend)\b|\bthe other day\b/i;

const isTold = ({ text, tokens }: Reading): boolean =>
  tokens.length <= mostTokens &&
  !text.includes('?') &&
  !/\bnotes?\s*:/i.test(text) &&
  !putsRight.test(text) &&
  !asksOrPlans(text);

const hasAmount =
  /\d ?(?:k?g|grams?|kilos?|ml|cl|l|lit\w+|oz|ounces?|lbs?|pounds?|x|bags?|bottles?|tubs?|packs?)\b|\b(?:kilo|litre|liter|pound|ounce|gram|kg|lb)s?\b/i;

const pieces = oncePerReading((reading): readonly Piece[] => {
  const found = isTold(reading) ? piecesIn(reading) : [];
  // "…, bought last Thursday": only when, of what is told before.
  if (found.some(({ kind, said }) => kind === 'bought' && !hasAmount.test(said))) return [];
  return found.length < 2 || found.length > mostParts ? [] : found;
});

/** Each thing that a message tells, one after the other, whichever reader knows it; none where it tells of fewer kinds. */
export const toldInTurn = (reading: Reading, leastKinds: number): readonly Part[] => {
  const found = pieces(reading);
  return new Set(found.map(({ kind }) => kind)).size < leastKinds ? [] : withCodes(found, reading);
};
