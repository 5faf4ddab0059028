import { judgeClaim } from '../../core/claim/claim.ts';
import { asking, onAPlace, place, saying, sayingNouns } from './wording-words.ts';

const onPlace = `(?:\\s*,?\\s*${onAPlace})`;

/** "Can I say", "may we write", "am I allowed to claim", "is it ok to call it". */
const mayI = new RegExp(
  `\\b(?:(?:${asking})\\s+(?:${saying})|(?:what|how) about (?:saying|writing|calling|claiming)|how (?:do|can|should) (?:i|we) (?:word|phrase|say|put) (?:it )?(?:that|:))(?![a-z])`,
  'i',
);
const between = new RegExp(
  `^\\s*(?:${onAPlace}\\s*)?(?:that\\s+|:\\s*|it as\\s+|this as\\s+|them as\\s+|it's\\s+|it is\\s+|the words?\\s+|the phrase\\s+|the line\\s+|the hashtags?\\s+|something like\\s+|it an?\\s+)?`,
  'i',
);
/** One piece of talk at the end; taken off again and again, so that no pattern has to repeat a choice. */
const tailPiece = new RegExp(
  `(?:,?\\s${onAPlace}|,?\\s(?:please|pls|thanks|thank you|cheers|ta)|\\sor not|\\sas a (?:claim|slogan)|(?:^|[,.;:?!-]\\s|\\s)(?:is|would|are) (?:it|that|this|these|they)(?: be)?(?: all)? (?:ok|okay|fine|allowed|alright|right|legal|permitted|acceptable|medicinal|a problem)|[,.;:?!-]\\s(?:ok|okay|fine|allowed|alright|legal|any problems?|or not|yes or no|right)|(?:[,.;:?!-]\\s|\\s)(?:can|may|could|should|must|shall|do) (?:i|we)(?: (?:say|use|write|print|keep|post|share|publish|change|put|leave|do|call|claim)(?: (?:that|it|this|these|them|so|it that|it like that))?)?|[,.;:?!-]\\s(?:what do you think|any thoughts|thoughts)|[?!.,;:-])$`,
  'i',
);
/** A piece is not longer than this, so only the end has to be looked at. */
const longestPiece = 60;

const withoutTail = (said: string): string => {
  let rest = said.trim();
  for (let pieces = 0; pieces < 8; pieces += 1) {
    const end = rest.slice(-longestPiece);
    const shorter = rest.slice(0, rest.length - end.length) + end.replace(tailPiece, '').trimEnd();
    if (shorter === rest) break;
    rest = shorter;
  }
  return rest;
};

/** "claim: …", "check the wording …", "is this claim ok: …". */
const named =
  /\b(?:is (?:this|the) (?:claim|wording|slogan|tagline|label text) (?:ok|okay|fine|allowed|alright)(?: in [a-z ]+)?|(?:check|judge|look at|review|what about|how about|is) (?:this|the|my|our|that) (?:claim|wording|slogan|tagline|label text|label wording|sentence)|^\W*claims?(?!\s+(?:my|your|our|his|her|the|a)\s)|\bwording|\bslogan|\btagline|^\W*(?:please )?(?:reword|rephrase))\s*(?:ok|okay|please|pls)?\s*[:"'-]*\s*/i;

/** "Label text: …", "does this read as cosmetic: …", "here is my product description: …". */
const headed = new RegExp(
  `^([^":]{0,90}\\b(?:${sayingNouns})\\b[^":]{0,40}):\\s*(\\S[^]{3,600})$|^([^":]{0,40}\\b(?:print|say|write|put)\\b[^":]{0,20}):\\s*(\\S[^]{3,600})$`,
  'i',
);

/** "is X ok on a label", "is X an ok claim". */
const okOn = new RegExp(
  `\\b(?:is|are|would|does)\\s+(.{2,200}?)\\s+(?:(?:be\\s+)?(?:ok|okay|fine|allowed|legal|alright|all right|acceptable|permitted)(?:\\s+to\\s+(?:say|write|claim|print|put|use))?${onPlace}|(?:ok|okay|fine|allowed|legal|alright)\\s+to\\s+(?:say|write|claim|print)|(?:an?\\s+)?(?:ok|okay|allowed|medicinal|legal|cosmetic|medical|fine)\\s+(?:as\\s+)?(?:a\\s+)?claim)`,
  'i',
);

/** The words in quotes, every pair of them where there are several. */
export const quoted = (text: string): string | undefined => {
  const pairs = [...text.matchAll(/"([^"]{2,})"/g)].map((found) => found[1]?.trim() ?? '');
  if (pairs.length > 0) return pairs.join(' … ');
  return /(?:^|[\s(:])'([^']{2,}(?:'[a-z]{1,2}(?![a-z])[^']*)*)'(?![a-z])/i.exec(text)?.[1]?.trim();
};

export const trimmed = (said: string): string =>
  withoutTail(
    said
      .trim()
      .replace(between, '')
      .replace(/^instead of\s+/i, ''),
  )
    .replace(/^["':]+|["']+$/g, '')
    .trim();

/** "call it a healing balm": what it is called. "say it heals": a sentence. */
const called = /\b(?:call|calls|calling|advertise|market|sell|describe)$/i;
const callee = /^\s*(?:it|this|them|(?:the|my|our) (?:balm|lip balm|tins?))\s+(?:as\s+)?(?:an?\s+)?/i;

const afterMatch = (text: string, match: RegExpExecArray): string => {
  const rest = text.slice(match.index + match[0].length);
  return trimmed(called.test(match[0]) ? rest.replace(callee, '') : rest);
};

/** "Is organic lip balm allowed as a name", "is the word cure allowed". */
const asName =
  /^\W*(?:is|are|would)\s+(?:the (?:words?|name|term|phrase)\s+)?(.{2,120}?)\s+(?:ok|okay|fine|allowed|legal|alright|permitted|a problem|forbidden|banned|illegal|prohibited|wrong)(?:\s+(?:as|for|in|on)\s+(?:a|an|the|my|our)\s+(?:name|title|label|slogan|brand|product name|tagline))?[\s?!.]*$/i;
/** "The word hypoallergenic, may I use it?" */
const wordAsked =
  /\bthe (?:words?|term|phrase|expression|line|slogan)\s+(.{2,80}?)\s*[,;:.-]?\s*(?:may|can|could|should|am|are) (?:i|we)(?: allowed to)? (?:use|say|print|write|put|keep)\b/i;
const namesWords =
  /\bthe (?:words?|name|term|phrase)\b|\bas (?:a|an|the|my|our) (?:name|title|slogan|brand|product name|tagline)\b/i;

/** "Our shop page: …", "on our website it says …", "a customer wrote that … can I post that". */
const onPage = new RegExp(
  `\\b(?:my|our|the|this)\\s+(?:\\w+\\s+)?(?:${place}|stall|website|sign)(?:\\s+(?:on|at|in) (?:the|our|my) \\w+)?(?:\\s+it)?(?:\\s+(?:now |currently )?(?:says?|reads?|states?|claims?|promises)(?: that)?\\s*:?|\\s*:)\\s*(.{2,400})$`,
  'i',
);
const praised =
  /\b(?:customer|client|buyer|friend|reviewer|tester|neighbour|aunt|somebody|someone)s?\b.{0,30}\b(?:wrote|writes|says?|said|told us|told me|posted|claims?)\s+(?:that\s+)?(.{4,300}?)[,.;]?\s*(?:can|may|could|should)\s+(?:i|we)\s+(?:post|share|use|repeat|repost|print|quote|put|publish)\b/i;
/** "I told people it is good for eczema, may I write that?" */
const ownTelling =
  /\b(?:i|we) (?:always |often |usually )?(?:told|tell) (?:people|them|customers|buyers|everyone|friends|(?:my|our|the) \w{2,12}) (?:that )?(.{4,300}?)[,.;]?\s*(?:can|may|could|should) (?:i|we) (?:write|say|print|post|put|use|keep)\b/i;
/** "We write on the leaflet that it nourishes the skin, fine?" */
const onOurs = new RegExp(
  `\\b(?:i|we) (?:also )?(?:write|wrote|print|say|put|state|have) (?:on|in|at) (?:the|our|my|a) (?:\\w+ )?${place} that (.{4,300}?)[,.;]?\\s*(?:(?:is (?:that|this|it) )?(?:fine|ok|okay|allowed|alright|legal)|(?:can|may|could|should) (?:i|we))\\b`,
  'i',
);
/** "For the leaflet I wrote that lavender is antiseptic. Can I say that?" */
const wroteThat =
  /\b(?:i|we)(?:'ve| have| had)? (?:write|wrote|written|print|printed|said|say|put|state|stated|claim|claimed|posted)\s*(?:that\b|:)\s*(.{4,300}?)[,.;!]?\s+(?:(?:can|may|could|should) (?:i|we)|(?:is|would) (?:that|this|it))\b[^.]{0,40}$/i;
/** "Edible lip balm - can I call it that?" */
const calledThat =
  /^\W*([^\d.?!]{2,100}?)\s*[-–—,:;?]\s*(?:can|may|could|should|am|are) (?:i|we)(?: allowed to)? (?:call|say|write|claim|print|name)(?: (?:it|them|this|(?:my|our|the) (?:balm|salve|stick)s?))? (?:that|so|like that|this)\b[^.]{0,30}$/i;
const review =
  /\b(?:review|comment|testimonial|feedback|message)s?\s+(?:saying|that (?:says|said|reads)|which says|with)\s*:?\s*(.{4,300})$/i;

/** Asks whether something may stand: the end of a message, mostly. */
const permission =
  /\b(?:ok|okay|allowed|legal|illegal|fine|permitted|alright|all right|problem|pass|passes|acceptable|changing|change|reword|forbidden|banned|wrong|trouble|right|better)\b|\b(?:can|may|could|should|must|shall|might) (?:i|we|it|you|they|the|our|my)\b|\b(?:sounds?|reads?) (?:like|as|too)\b/i;

const otherAsking = (text: string): string | undefined => {
  const named = namesWords.test(text) ? asName.exec(text)?.[1] : undefined;
  const page = onPage.exec(text)?.[1];
  const onOne =
    page !== undefined &&
    (/\bpage|bio|label|sign|poster|leaflet|says?|reads?/i.test(text) ? page : undefined);
  const said =
    wroteThat.exec(text)?.[1] ??
    wordAsked.exec(text)?.[1] ??
    named ??
    praised.exec(text)?.[1] ??
    ownTelling.exec(text)?.[1] ??
    onOurs.exec(text)?.[1] ??
    review.exec(text)?.[1] ??
    calledThat.exec(text)?.[1] ??
    (onOne || undefined);
  return said === undefined ? undefined : trimmed(said);
};

const promises = (said: string): boolean => judgeClaim(said, 'us').matches.length > 0;

/** "#healing #lipbalm ok?": hashtags that are asked about. */
const inTags = (text: string): string | undefined => {
  const tags = text.match(/#[\p{L}\p{N}_]{3,60}/gu) ?? [];
  if (tags.length === 0) return undefined;
  const asks = permission.test(text) || /\bhashtags?\b|\?/i.test(text);
  return asks || tags.some(promises) ? tags.slice(0, 30).join(' ') : undefined;
};

/** 'is "heals" allowed', 'does "detox" count as medicinal': words in quotes that are asked about. */
const inQuotes = (text: string): string | undefined => {
  const said = quoted(text);
  if (said === undefined) return undefined;
  const around = text.replace(said, '');
  if (
    /\b(?:medicinal|cosmetic|medicine|medical|drugs?|claims?|label|labels|reword|rephrase|wording)\b/i.test(
      around,
    )
  )
    return said;
  const asks =
    (!/\p{L}/u.test(around) && around.includes('?')) ||
    permission.test(around) ||
    /^\W*(?:and |or )?(?:what|how) about\b/i.test(around);
  // Several words in quotes are a sentence; one may be a name.
  const sentence = /\s\w+\s/.test(said) && !/\d/.test(said);
  return asks && (sentence || promises(said)) ? said : undefined;
};

/** "Put honey in it", "sell it": something done, unless it is words or a place for words. */
const isAction = /\b(?:put|print|sell|market|mention|keep|use|putting|printing)$/i;
const labelPlace = new RegExp(
  `\\b(?:on|in|to)\\s+(?:the|my|our|a|its|your|an)?\\s*${place}\\b|\\b(?:the|my|our)\\s+${place}\\s+(?:to\\s+)?(?:mention|print|put)\\b`,
  'i',
);
const onIt =
  /\b(?:put|print)\s+(.{2,60}?)\s+on (?:it|them|(?:my|our|the|a) (?:\w{1,12} )?(?:balms?|salves?|tins?|sticks?))\b/i;
const isOnLabel = (text: string): boolean => {
  // "Put SPF 10 on it": words that promise something are no lid.
  const said = onIt.exec(text)?.[1];
  if (said !== undefined && promises(said)) return true;
  const where = labelPlace.exec(text)?.[0];
  return quoted(text) !== undefined || (where !== undefined && !/balm$/i.test(where));
};

/** "Sell it as a remedy": presented as something. */
const isSoldAs = /\b(?:sell|market|print)\s+(?:it|this|them|(?:the|my|our)\s+\w+(?:\s+balm)?)\s+as\b/i;

const underHead = (text: string): string | undefined => {
  const found = headed.exec(text);
  const said = found?.[2] ?? found?.[4];
  return said === undefined ? undefined : (quoted(text) ?? trimmed(said));
};

const byVerb = (text: string, asked: RegExpExecArray): string | undefined => {
  const done =
    isAction.test(asked[0]) &&
    !isOnLabel(text) &&
    !isSoldAs.test(text) &&
    !(/\bprint$/i.test(asked[0]) && promises(afterMatch(text, asked)));
  return done ? underHead(text) : (quoted(text) ?? afterMatch(text, asked));
};

/** The wording a message asks about, the empty string when it asks about one without saying it. */
export const wordingIn = (text: string): string | undefined => {
  const asked = mayI.exec(text) ?? named.exec(text);
  const sure = inTags(text) ?? (asked ? undefined : underHead(text));
  if (sure !== undefined) return sure;
  const other = otherAsking(text);
  if (other !== undefined) return quoted(text) ?? other;
  if (asked) return byVerb(text, asked);
  const inOk = okOn.exec(text)?.[1];
  return inOk === undefined ? inQuotes(text) : (quoted(text) ?? trimmed(inOk));
};
