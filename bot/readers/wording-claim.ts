import { judgeClaim } from '../../core/claim/claim.ts';
import { defined } from '../../core/defined.ts';
import type { Region } from '../../core/settings.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { regionSaid } from './region-said.ts';

/** Longest wording that is judged at once, in characters. */
export const maxWording = 600;

const place =
  '(?:label|tin|tins|lid|jar|jars|tube|box|packaging|website|web page|page|shop|shop page|listing|leaflet|poster|flyer|card|stall|sign|instagram|bio|post|product|sticker|stickers|balm)';
const onAPlace = `(?:on|in|for|to)\\s+(?:the|my|our|a|its|your|an)?\\s*(?:lip balm\\s+)?${place}`;
const onPlace = `(?:\\s*,?\\s*${onAPlace})`;

const asking = [
  '(?:can|could|may|might|should|must|do|shall)\\s+(?:i|we|you|they|a maker|(?:the|my|our)\\s+\\w+|it)(?:\\s+(?:please|also|still|legally|just))?',
  "(?:am i|are we|is one|i'm)\\s+(?:allowed|permitted|able|free)\\s+to",
  "(?:is it|would it be|it's|is that)\\s+(?:ok|okay|fine|legal|allowed|alright|all right|permitted|safe|possible)\\s+(?:to|if (?:i|we))",
  "(?:i'd like|want|i would like|we would like|hoping|planning|going)\\s+to",
  '(?:if|when)\\s+(?:i|we)(?:\\s+just)?',
].join('|');
const saying =
  'say|says|write|writes|claim|claims|call|calls|put|print|state|advertise|market|sell|describe|promise|mention|hashtag|tag|tell (?:people|customers|buyers|them)|use the (?:words?|phrase|claim|line|slogan)';

/** "Can I say", "may we write", "am I allowed to claim", "is it ok to call it". */
const mayI = new RegExp(
  `\\b(?:(?:${asking})\\s+(?:${saying})|(?:what|how) about (?:saying|writing|calling|claiming)|how (?:do|can|should) (?:i|we) (?:word|phrase|say|put) (?:it )?(?:that|:))\\b`,
  'i',
);
const between = new RegExp(
  `^\\s*(?:${onAPlace}\\s*)?(?:that\\s+|:\\s*|it as\\s+|this as\\s+|them as\\s+|it's\\s+|it is\\s+|the words?\\s+|the phrase\\s+|the line\\s+|something like\\s+|it an?\\s+)?`,
  'i',
);
/** One piece of talk at the end; taken off again and again, so that no pattern has to repeat a choice. */
const tailPiece = new RegExp(
  `(?:,?\\s${onAPlace}|,?\\s(?:please|pls|thanks|thank you|cheers|ta)|\\sor not|\\sas a (?:claim|slogan)|[?!.,])$`,
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
  /\b(?:is (?:this|the) (?:claim|wording|slogan|tagline|label text) (?:ok|okay|fine|allowed|alright)(?: in [a-z ]+)?|(?:check|judge|look at|review|what about|how about|is) (?:this|the|my|our|that) (?:claim|wording|slogan|tagline|label text|label wording|sentence)|^\W*claims?(?!\s+(?:my|your|our|his|her|the|a)\s)|\bwording|\bslogan|\btagline)\s*(?:ok|okay)?\s*[:"'-]*\s*/i;

/** "is X ok on a label", "is X an ok claim". */
const okOn = new RegExp(
  `\\b(?:is|are|would|does)\\s+(.{2,200}?)\\s+(?:(?:be\\s+)?(?:ok|okay|fine|allowed|legal|alright|all right|acceptable|permitted)(?:\\s+to\\s+(?:say|write|claim|print|put|use))?${onPlace}|(?:ok|okay|fine|allowed|legal|alright)\\s+to\\s+(?:say|write|claim|print)|(?:an?\\s+)?(?:ok|okay|allowed|medicinal|legal|cosmetic|medical|fine)\\s+(?:as\\s+)?(?:a\\s+)?claim)`,
  'i',
);

const quoted = (text: string): string | undefined =>
  (/"([^"]{2,})"/.exec(text) ??
    /(?:^|[\s(:])'([^']{2,}(?:'[a-z]{1,2}[^']*)*)'(?![a-z])/i.exec(text))?.[1]?.trim();

const trimmed = (said: string): string =>
  withoutTail(said.trim().replace(between, ''))
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
  /^\W*(?:is|are|would)\s+(?:the (?:words?|name|term|phrase)\s+)?(.{2,120}?)\s+(?:ok|okay|fine|allowed|legal|alright|permitted|a problem)(?:\s+(?:as|for|in)\s+(?:a|an|the|my|our)\s+(?:name|title|label|slogan|brand|product name|tagline))?[\s?!.]*$/i;
const namesWords =
  /\bthe (?:words?|name|term|phrase)\b|\bas (?:a|an|the|my|our) (?:name|title|slogan|brand|product name|tagline)\b/i;

/** "Our shop page: …", "a customer wrote that … can I post that". */
const onPage =
  /^\W*(?:my|our|the|this)\s+(?:shop ?page|shop|page|label|leaflet|listing|website|flyer|poster|bio|post|sign)(?:\s+(?:says?|reads?))?\s*:\s*(.{2,400}?)(?:\s*[-–,?]\s*(?:is (?:that|this) )?(?:ok|okay|fine|allowed|alright|legal)[\s?!.]*)?$/i;
const praised =
  /\b(?:customer|client|buyer|friend|reviewer|tester)s?\b.{0,30}\b(?:wrote|writes|says?|said|told us|posted|claims?)\s+(?:that\s+)?(.{4,300}?)[,.;]?\s*(?:can|may|could|should)\s+(?:i|we)\s+(?:post|share|use|repeat|print|quote|put)\b/i;

const otherAsking = (text: string): string | undefined => {
  const named = namesWords.test(text) ? asName.exec(text)?.[1] : undefined;
  const said = named ?? onPage.exec(text)?.[1] ?? praised.exec(text)?.[1];
  return said === undefined ? undefined : trimmed(said);
};

/** 'is "heals" allowed', 'does "detox" count as medicinal': words in quotes that are asked about. */
const inQuotes = (text: string): string | undefined => {
  const said = quoted(text);
  if (said === undefined) return undefined;
  const around = text.replace(said, '');
  if (/\b(?:medicinal|cosmetic|claims?|label|labels)\b/i.test(around)) return said;
  const asks =
    /\b(?:ok|okay|allowed|legal|fine|permitted|alright|problem|pass|passes|acceptable|changing|change|reword)\b/i.test(
      around,
    ) || /^\W*(?:and |or )?(?:what|how) about\b/i.test(around);
  // Several words in quotes are a sentence; one may be a name.
  const sentence = /\s\w+\s/.test(said) && !/\d/.test(said);
  return asks && (sentence || judgeClaim(said, 'us').matches.length > 0) ? said : undefined;
};

/** "Put honey in it", "sell it": something done, unless it is words or a place for words. */
const isAction = /\b(?:put|print|sell|market|mention)$/i;
const labelPlace = new RegExp(`\\b(?:on|in|to)\\s+(?:the|my|our|a|its|your|an)?\\s*${place}\\b`, 'i');
const onIt = /\bput\s+(.{2,60}?)\s+on (?:it|them)\b/i;
const isOnLabel = (text: string): boolean => {
  // "Put SPF 10 on it": words that promise something are no lid.
  const said = onIt.exec(text)?.[1];
  if (said !== undefined && judgeClaim(said, 'us').matches.length > 0) return true;
  const where = labelPlace.exec(text)?.[0];
  return quoted(text) !== undefined || (where !== undefined && !/balm$/i.test(where));
};

/** "Sell it as a remedy": presented as something. */
const isSoldAs = /\b(?:sell|market|print)\s+(?:it|this|them|(?:the|my|our)\s+\w+(?:\s+balm)?)\s+as\b/i;

/** The wording a message asks about, the empty string when it asks about one without saying it. */
const wordingIn = (text: string): string | undefined => {
  const asked = mayI.exec(text) ?? named.exec(text);
  const inOk = asked ? undefined : okOn.exec(text)?.[1];
  const other = otherAsking(text);
  if (other !== undefined) return quoted(text) ?? other;
  if (!asked && inOk === undefined) return inQuotes(text);
  if (asked && isAction.test(asked[0]) && !isOnLabel(text) && !isSoldAs.test(text)) return undefined;
  return quoted(text) ?? (asked ? afterMatch(text, asked) : trimmed(inOk ?? ''));
};

const followUp =
  /^(?:and|or|what about|how about|and what about|then|so|ok and|what if (?:i|we) (?:say|write))\b\s*/i;

const followed = (text: string): string | undefined => {
  const inQuotes = quoted(text);
  if (inQuotes) return inQuotes;
  const match = followUp.exec(text);
  return match ? trimmed(text.slice(match[0].length)).replace(/\s+instead$/i, '') : undefined;
};

const missing: Trouble = {
  code: 'missing',
  text: 'Which wording? Say it as it would stand on the label, for example: can I say "heals cracked lips".',
};

const tooLong: Trouble = {
  code: 'too-long',
  text: `That is more than I judge at once (${maxWording} characters). Send one sentence, for example: can I say "softens dry lips".`,
};

const health: Trouble = {
  code: 'not-understood',
  text: 'I cannot help with health: please ask a pharmacist or a doctor, and for swelling of the tongue or hard breathing call the emergency number. I can look at a wording, for example: can I say "softens dry lips".',
};

/** The maker's own lips are no claim. */
const ownHealth =
  /\b(?:my|our|his|her)\s+(?:(?:own|little|dry)\s+)*(?:lips?|mouth|skin|face|child|son|daughter|baby|kid|husband|wife)\b.{0,40}\b(?:is|are|has|have|hurts?|got|keeps?|feels?|gets?)\b|\bi(?:'ve| have| get| got| suffer)\b/i;
const asksAdvice =
  /\bwhat (?:should|can|do) (?:i|we)\b|\bshould i see\b|\bwhat to do\b|\bcan you help\b|\bhelp me\b/i;

const isOwnHealth = (text: string): boolean =>
  ownHealth.test(text) && asksAdvice.test(text) && judgeClaim(text, 'us').matches.length > 0;

/** What the balm does in the heat is a forecast, not a label. */
const forecast =
  /\b(?:survives?|melting)\b|\bmelts?\b(?! (?:into|onto|on) (?:the |your |my )?(?:lips?|skin)\b)/i;

/** Nothing that would stand on a label. */
const noWording =
  /^(?:hello|hi|sorry|something|nothing|anything|no|yes|a joke|what|that|this|it|so|to|more)$/i;

const settle = (wording: string, region: Region | undefined, weight: number): Claim | undefined => {
  if (forecast.test(wording)) return undefined;
  if (wording.length < 2) return refuse(missing, 1.5);
  if (wording.length > maxWording) return refuse(tooLong, weight);
  if (noWording.test(wording)) return undefined;
  return claim({ wording, ...defined({ region }) }, weight);
};

const withoutRegion = (text: string): { readonly text: string; readonly region?: Region } => {
  const said = regionSaid(text);
  if (!said) return { text };
  // Inside quotes it belongs to the wording.
  const quotesBefore = text.slice(0, said.from).split('"').length - 1;
  if (quotesBefore % 2 === 1) return { text };
  return {
    text: `${text.slice(0, said.from)}${text.slice(said.to)}`.replace(/^[\s,:]+/, ''),
    region: said.region,
  };
};

/** "In what order do I write the ingredients", "how do I write the net weight": asks how a label is made. */
const labelMaking =
  /\b(?:what|which|legal|right|falling|descending) order\b|\bhow (?:do|should|must|can) (?:i|we) (?:write|put|state|print) (?:the |my |a )?(?:net|ingredients?|inci|lot|best before|weight)\b/i;
/** "Write me a poem", "say hello to everyone": something done for people, not words on a tin. */
const forPeople =
  /\b(?:write|tell|say|show|print|sell)\s+(?:me|us|you|him|her)\b|\bsay (?:(?:a|some|the) (?:prayer|word|words|few words)|hello|hi|thanks|thank you|sorry|goodbye)\b/i;

const isNoWording = (text: string): boolean =>
  (labelMaking.test(text) || forPeople.test(text)) && quoted(text) === undefined;

/** What a message would mean as a question about a wording on a label. */
export const claimWording = (reading: Reading): Claim | undefined => {
  if (isNoWording(reading.text)) return undefined;
  const { text, region } = withoutRegion(reading.text.replace(/\s+/g, ' ').trim());
  const wording = wordingIn(text);
  if (wording !== undefined) return settle(wording, region, region ? 3.3 : 2.95);
  if (isOwnHealth(text)) return refuse(health, 2);
  if (reading.last?.topic !== 'claim') return undefined;
  const more = followed(text);
  if (more) return settle(more, region, quoted(text) === undefined ? 2.2 : 2.9);
  const before = reading.last.request.wording;
  return region && typeof before === 'string' && text.trim().length < 24
    ? claim({ wording: before, region }, 2.2)
    : undefined;
};
