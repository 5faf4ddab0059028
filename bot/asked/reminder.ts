import { defined } from '../../core/defined.ts';
import { timeIn } from '../readers/clock-time.ts';
import { readLead } from '../readers/expiry-remind.ts';
import { type ZoneSaid, zoneIn } from '../readers/zones.ts';
import type { Reading } from '../reading.ts';
import type { Wish } from './facets.ts';

const reminders =
  /\b(?:tell|message|warn|write|ping|text|let|ring|call|send)\b.{0,60}\b(?:daily|(?:every|each) (?:day|morning|evening|night))\b|\b(?:daily|(?:every|each) (?:day|morning|evening|night))\b.{0,60}\b(?:tell|message|warn|write|ping|text|let|ring|call|send)\b|\b(?:remind(?:ers?|ing|ed|s)?|daily (?:message|note|notice)s?|nudg(?:es?|ing)|alerts?|(?:no more|stop|enough)\b.{0,14}\bmessages?)\b/i;
const stops =
  /\b(?:suspend|pause|stop|halt|hold|end|cancel|kill|silence|mute|cease|drop|scrap|disable|quit|off|no (?:more|longer|further)|(?:don't|do not|dont|doesn't|does not|no longer) (?:want|need|wish)|enough)\b/i;
const shows =
  /^\W*(?:(?:and|so|please|ok|pipkin|now)\b\W*)*(?:what|when|which|how|where|is|are|do|does|did|have|has|show|tell|list|remind me (?:what|when))\b|\?\s*$/i;
const wishes =
  /^\W*(?:(?:and|so|please|ok|pipkin|now|actually|hello|hi)\b\W*)*(?:can|could|would|will|may) (?:you|we|i)\b|\bplease\b/i;
/** What is only thought about, said by others, or of another day than every day. */
const elsewhere =
  /\b(?:if|whether|should|might|maybe|perhaps|said|says|told|weekly|monthly|weekdays?|weekends?|mondays?|tuesdays?|wednesdays?|thursdays?|fridays?|saturdays?|sundays?|undo|pour(?:ed)?|bought)\b/i;
const mostCharacters = 240;

const expiry = (request: Readonly<Record<string, unknown>>): Wish => ({ topic: 'expiry', request });

/** "At 7.15, Dublin, a week ahead": a place between commas. */
const zoneBetween = (text: string): ZoneSaid | undefined => {
  for (const { 0: said, index } of text.matchAll(/(?<=,\s?)\p{L}[\p{L} /_-]{2,30}(?=[,.!?]|$)/gu)) {
    const zone = zoneIn(`in ${said}`);
    if (zone && !zone.trouble) return { ...zone, from: index, to: index + said.length };
  }
  return undefined;
};

const setting = (said: string): Wish | undefined => {
  // "To us" names no country, and "Brussels time" does.
  const text = said
    .replace(/\b(?:to|for|with|at) us\b/gi, '')
    .replace(/\b(\p{Lu}\p{L}+(?: \p{Lu}\p{L}+)?)(?:'s)? time\b/u, 'in $1');
  const lead = readLead(text);
  const zone = zoneIn(lead.rest) ?? zoneBetween(lead.rest);
  const time = timeIn(zone ? `${lead.rest.slice(0, zone.from)} , ${lead.rest.slice(zone.to)}` : lead.rest);
  if (lead.trouble ?? zone?.trouble ?? time?.trouble) return undefined;
  if (!zone && /\bin (?!advance|time|the\b|an?\b|good)\p{L}/iu.test(lead.rest)) return undefined;
  const wish = defined({ hour: time?.hour, minute: time?.minute, zone: zone?.zone, leadDays: lead.leadDays });
  return Object.keys(wish).length === 0 ? undefined : expiry({ action: 'set', ...wish });
};

/** "Nine's a bit late for me, half eight please", after the reminder was spoken of. */
const tooMuch = /\btoo\b|\b(?:late|early|much|long|short)\b/i;
const onAgain =
  /\b(?:start|resume|restart|switch|turn|put) (?:them|it|those|the reminders?)\b.{0,20}\b(?:again|back|on)\b/i;
const noMore =
  /\b(?:do not|don't|dont|stop|no more|never)\b.{0,10}\b(?:send(?:ing)?|messages?|writ(?:e|ing)|tell(?:ing)?)\b/i;
const isSetTo = /\b(?:what time|when|which (?:time|zone|city)|what zone|how many days)\b.{0,40}\?/i;
const again = ({ text, last, items }: Reading): Wish | undefined => {
  if (last?.topic !== 'expiry' || !/^(?:set|show|stop)$/.test(String(last.request.action))) return undefined;
  if (text.length <= 80 && onAgain.test(text)) return expiry({ action: 'set' });
  if (text.length <= 80 && noMore.test(text)) return expiry({ action: 'stop' });
  if (text.length <= 80 && isSetTo.test(text)) return expiry({ action: 'show' });
  if (text.length > 80 || text.includes('?') || items.some(({ letter }) => /[gv%Ri]/.test(letter)))
    return undefined;
  const pieces = text.split(/[,;.!](?!\d)/).filter((piece) => !tooMuch.test(piece));
  return setting(pieces.join(' , '));
};

/** What is wished of the daily reminder, by the hour, the place and the days in a message that speaks of it, whatever else it says. */
export const reminderWish = (reading: Reading): Wish | undefined => {
  const { text, items } = reading;
  if (!reminders.test(text)) return again(reading);
  if (text.length > mostCharacters || elsewhere.test(text)) return undefined;
  if (items.some(({ letter }) => /[gv%R]/.test(letter))) return undefined;
  if (/^\W*remind me\W+(?:who|what|when|where|until|how|which)\b/i.test(text)) return undefined;
  const isAsked = shows.test(text) && !wishes.test(text);
  if (isAsked) return /\b(?:remind|nudg|daily|alert)/i.test(text) ? expiry({ action: 'show' }) : undefined;
  return stops.test(text) ? expiry({ action: 'stop' }) : setting(text);
};
