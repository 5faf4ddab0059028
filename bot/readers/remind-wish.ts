import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading } from '../reading.ts';
import { timeIn } from './clock-time.ts';
import { inPlainForms, readLead } from './expiry-remind.ts';
import { asksElse, shiftIn, withoutComplaint } from './expiry-remind-again.ts';
import { isAround, remindWords } from './expiry-words.ts';
import { lotsIn } from './lots.ts';
import { type ZoneSaid, zoneIn } from './zones.ts';

// What is wished of the daily reminder, by the hour, the place and the days in a message that speaks of it.

const daily = '(?:daily|(?:every|each|per) (?:single )?(?:day|morning|evening|night|afternoon))';
const tell =
  '(?:tell|message|warn|write|ping|text|let|ring|send|show|give|mail|remember|inform|notify|alert|wake|post)';
const us = '(?:us|me|everyone|everybody|the (?:group|circle|team|others))';
const news = '(?:messages?|notes?|notices?|lists?|mails?|digests?|heads[- ]up|warnings?|alerts?|reports?)';

/** Speaks of the reminder by its name. */
const named = new RegExp(
  `\\b(?:remind(?:ers?|ing|ed|s)?|nudg(?:es?|ing)|alerts?|${news} ${daily}|(?:daily|morning|evening|nightly) ${news})\\b`,
  'i',
);
/** Asks to be told something day by day, or days ahead. */
const told = new RegExp(
  [
    `\\b${tell} (?:to )?${us}\\b.{0,80}\\b${daily}\\b`,
    `\\b${daily}\\b.{0,80}\\b(?:${tell} (?:to )?${us}|you remember ${us})\\b`,
    `\\b(?:want|like|wish|love|prefer) to (?:hear|know|be told|learn|get|have)\\b.{0,80}\\b${daily}\\b`,
    `\\b(?:want|like|wish|love|need|have|get|send|expect)\\b.{0,24}\\b${news}\\b.{0,40}\\b${daily}\\b`,
    '\\bbe (?:told|warned|informed)\\b.{0,40}\\b(?:days?|weeks?|months?) (?:before|ahead|in advance)\\b',
    `\\b(?:lower|raise|shorten|lengthen|change|set|put) the lead\\b`,
    `\\bhow many (?:days|weeks) (?:ahead|before|in advance)\\b.{0,20}\\b${tell} ${us}\\b`,
    `\\b(?:no more|stop|enough)\\b.{0,14}\\bmessages?\\b`,
  ].join('|'),
  'i',
);

const stopWords =
  'suspend pause stop halt hold cancel kill silence mute cease drop scrap disable quit ditch end'.replaceAll(
    ' ',
    '|',
  );
const itsName = `(?:${named.source}|\\bmessages?\\b)`;
const stops = new RegExp(
  [
    `\\b(?:${stopWords}|no (?:more|longer|further)|no|enough|without)\\b.{0,24}${itsName}`,
    `${itsName}.{0,40}\\b(?:off|on hold|on pause|stop(?:ped)?|cease|no (?:longer|more)|not (?:needed|wanted|necessary|required))\\b`,
    `${itsName}\\W{1,3}(?:${stopWords})\\b`,
    `\\b(?:turn|switch|put) off\\b`,
    `\\b(?:don't|do not|dont|doesn't|does not|no longer|not) (?:want|need|wish|require|be|to be|send|bother)\\b`,
    `\\b(?:nobody|no one|no-one) (?:needs|wants|reads)\\b`,
  ].join('|'),
  'i',
);
const resumes =
  /\b(?:again|back(?! \d)|begin|anew|once more|re-?enable|recommence|resume|restart|start|re-?activate|on (?:again|please)|(?:turn|switch|put)(?: \w+){0,3} on)\b|\breminders? on\W*$/i;
const asks =
  /^\W*(?:(?:and|so|please|ok|pipkin|now|but)\b\W*)*(?:what|when|which|how|where|who|is|are|do|does|did|has|have|had|show|tell me|list|remind me (?:what|when))\b/i;
/** "Could the daily message be sent at noon?" */
const wishes = /\b(?:can|could|would|will|may) (?:you|we|i|the|it|that|someone)\b|\bplease\b/i;
/** What is only thought about, told by others or gone by, or of another day than every day. */
const elsewhere =
  /\bif (?!possible|that|you (?:can|could|would))|\b(?:whether|should (?:i|we)|might|maybe|perhaps|said|says|(?<!\bbe )told|weekly|monthly|hourly|twice|weekdays?|weekends?|(?:mon|tues|wednes|thurs|fri|satur|sun)days?|undo|pour(?:ed)?|bought|reminded (?:us|me)|(?:has |have )?(?:came|arrived|reached)|reminders? (?:comes|arrives|goes (?:out|off))(?!.{0,16}\btoo (?:early|late|soon)\b))\b/i;
/** "Remind me in two weeks" puts off what is due. */
const putsOff = /\b(?:remind|ask) (?:us|me)(?: again)? in\b/i;
const mostCharacters = 240;

/** Hours and days that no longer hold: "instead of 21 days", "not at 9", "from 30 to 7 days". */
const before = (text: string): string =>
  text
    .replace(
      /\b(?:instead of|rather than|in place of|,? ?\bnot)\s+(?:at )?\d[\d:.]*(?: (?:days?|weeks?|am|pm|o'clock))?/gi,
      ' ',
    )
    .replace(/\bfrom \d[\d:.]*(?: (?:days?|weeks?))? to (?=\d)/gi, 'to ')
    .replace(/\bthan \d[\d:.]*(?: (?:days?|weeks?))?(?: (?:before|ahead))?/gi, ' ');

/** "At 7.15, Dublin, a week ahead": a place between commas. */
const zoneBetween = (text: string): ZoneSaid | undefined => {
  for (const { 0: said, index } of text.matchAll(
    /(?<=(?:,|[ap]m|o'clock|\d)\s?)\p{L}[\p{L} /_-]{2,30}(?=[,.!?]|$)/gu,
  )) {
    const zone = zoneIn(`in ${said}`);
    if (zone && !zone.trouble) return { ...zone, from: index, to: index + said.length };
  }
  return undefined;
};

/** "8am berlin pls", "7 am New York": a place right after the hour. */
const afterTime = /(?<=\d(?:[.:]\d\d)? ?(?:am|pm|h|o'clock)? )(\p{L}{3,20}) ?(\p{L}{3,20})?/giu;
const zoneAfterTime = (text: string): ZoneSaid | undefined => {
  for (const { 0: both, 1: first = '', index } of text.matchAll(afterTime)) {
    for (const said of [both, first]) {
      const zone = zoneIn(`in ${said}`);
      if (zone && !zone.trouble) return { ...zone, from: index, to: index + said.length };
    }
  }
  return undefined;
};

/** "Remind Lisbon us at 9": a city that stands nowhere in particular. */
const isLost = (text: string): boolean =>
  (text.match(/\b\p{Lu}\p{L}{3,19}\b/gu) ?? []).some((word) => {
    const zone = isAround(remindWords, word.toLowerCase()) ? undefined : zoneIn(`in ${word}`);
    return zone !== undefined && !zone.trouble;
  });

const noPlace = /\bin (?!advance|time|the\b|an?\b|good|future|case|there|front|our|my|what|order|\d)\p{L}/iu;

type Wish = Readonly<Record<string, unknown>>;

/** The hour, the place and the days a text names; undefined where one of them makes no sense. */
const valuesIn = (said: string): Wish | undefined => {
  // "To us" names no country, and "Brussels time" does.
  const text = before(inPlainForms(withoutComplaint(said)))
    .replace(/\bb4\b/gi, 'before')
    .replace(/\b(?:to|for|with|at) us\b/gi, '')
    .replace(/\bin the (?:coming|next|following) (?=\d|an?\b|one|two|three|four|six)/gi, '')
    .replace(/\b(\p{Lu}\p{L}+(?: \p{Lu}\p{L}+)?)(?:'s)? time\b/u, 'in $1');
  const lead = readLead(text);
  const zone = zoneIn(lead.rest) ?? zoneBetween(lead.rest) ?? zoneAfterTime(lead.rest);
  const time = timeIn(zone ? `${lead.rest.slice(0, zone.from)} , ${lead.rest.slice(zone.to)}` : lead.rest);
  if (lead.trouble ?? zone?.trouble ?? time?.trouble) return undefined;
  if (!zone && (noPlace.test(lead.rest) || (time && isLost(lead.rest)))) return undefined;
  return defined({ hour: time?.hour, minute: time?.minute, zone: zone?.zone, leadDays: lead.leadDays });
};

/** "Thirty days is rather long, ten will do": of days too. */
const bareDays =
  /(?<![\d:.])\b(\d{1,3}|one|two|three|four|five|six|seven|ten|fourteen|twenty|thirty)(?= (?:will do|(?:is|are|would be) (?:enough|plenty|fine|better)|suffices?)\b)/i;
const ofDays = (text: string): string => (/\bdays\b/i.test(text) ? text.replace(bareDays, '$1 days') : text);

const setting = (said: string): Wish | undefined => {
  const text = ofDays(said);
  const values = valuesIn(text);
  return values && Object.keys(values).length > 0 ? { action: 'set', ...values } : undefined;
};

/** "It is too early, move it by two hours." */
const byHours = /\bby (?=(?:an?|one|two|three|half an|\d{1,2}) (?:hours?|minutes?)\b)/i;
const shifting = ({ text, bench }: Reading): Wish | undefined => {
  const way = /\btoo early\b|\blater\b|\bback\b/i.test(text) ? 'later' : 'earlier';
  const plain = byHours.test(text) ? text.replace(/\b(hours?|minutes?)\b/i, `$1 ${way}`) : text;
  const made = shiftIn(plain, bench.reminder);
  return made?.kind === 'request' ? made.request : undefined;
};

const tooMuch = /\btoo\b|\b(?:late|early|much|long|short)\b/i;
const noMore =
  /\b(?:do not|don't|dont|stop|no more|never)\b.{0,10}\b(?:send(?:ing)?|messages?|writ(?:e|ing)|tell(?:ing)?)\b/i;
const onAgain =
  /\b(?:start|resume|restart|switch|turn|put) (?:them|it|those|the reminders?)\b.{0,20}\b(?:again|back|on)\b/i;
const isSetTo = /\b(?:what time|when|which (?:time|zone|city)|what zone|how many days)\b.{0,40}\?/i;

/** "Nine's a bit late for me, half eight please", after the reminder was spoken of. */
const again = ({ text, last, items }: Reading): Wish | undefined => {
  if (last?.topic !== 'expiry' || !/^(?:set|show|stop)$/.test(String(last.request.action))) return undefined;
  if (text.length > 80) return undefined;
  if (onAgain.test(text)) return { action: 'set' };
  if (noMore.test(text)) return { action: 'stop' };
  if (isSetTo.test(text)) return { action: 'show' };
  if (text.includes('?') || asksElse.test(text) || items.some(({ letter }) => /[gv%Ri]/.test(letter)))
    return undefined;
  const pieces = text.split(/[,;.!](?!\d)/).filter((piece) => !tooMuch.test(piece));
  return setting(pieces.join(' , '));
};

/** A message that names a lot, a thing or an amount is about that. */
const isOfThings = (reading: Reading): boolean =>
  reading.items.some(({ letter }) => /[gv%Ri]/.test(letter)) ||
  lotsIn(reading).some(
    ({ code }) => reading.bench.lots.has(lotKey(code)) || reading.bench.batches.has(lotKey(code)),
  );

const isQuestion = (said: string): boolean =>
  asks.test(said)
    ? !/\bplease\b/i.test(said)
    : said.trim().endsWith('?') && !wishes.test(said) && !tag.test(said);
const tag = /,? (?:ok|okay|alright|all right|yes|fine|possible)\?\W*$/i;

const wishIn = (reading: Reading): Wish | undefined => {
  const { text, bench } = reading;
  const sentences = text.split(/(?<=[.!?])\s+(?=\p{Lu})/u);
  const about = sentences.find((each) => named.test(each) || told.test(each)) ?? text;
  if (isQuestion(about))
    return named.test(about) || /\bahead\b/i.test(about) ? { action: 'show' } : undefined;
  const set = shifting(reading) ?? setting(text);
  if (stops.test(about) && !set?.hour && !set?.leadDays) return { action: 'stop' };
  if (set) return set;
  return resumes.test(about) && named.test(about) && !bench.reminder ? { action: 'set' } : undefined;
};

/** What is wished of the daily reminder, whatever else the message says. */
export const remindWish = (reading: Reading): Claim | undefined => {
  const { text } = reading;
  const byName = named.test(text);
  const wish =
    byName || told.test(text)
      ? text.length > mostCharacters || elsewhere.test(text) || putsOff.test(text) || isOfThings(reading)
        ? undefined
        : wishIn(reading)
      : again(reading);
  return wish && claim(wish, byName ? 3.45 : 2.9);
};

/** "We talked about reminders at 9", "my phone reminds me at 7": told of, and not asked for. */
const toldOf =
  /\b(?:talked|spoke|spoken|(?:was|were|am|is) reminded|never wanted|had no|yesterday|last (?:week|month|year|night)|from (?:my|her|his) \p{L}+|(?:my|her|his) (?:phone|watch|calendar|mother|father|wife|husband|doctor|boss)|(?:wants|needs) a reminder|if you remind)\b/iu;
const asksFor =
  /\b(?:please|make|set|change|let|could|can|move|switch|put|stop|cancel|turn|start|send|would (?:like|prefer))\b/i;
export const isOnlyTold = (text: string): boolean => toldOf.test(text) && !asksFor.test(text);
