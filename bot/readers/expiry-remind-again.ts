import type { Reminder } from '../../core/bench/state.ts';
import { type Claim, claim, type Reading } from '../reading.ts';
import { claimRemind } from './expiry-remind.ts';
import { smallNumbers } from './number.ts';

/** Longest message that goes on from the reminder, in characters. */
const longest = 90;

const said =
  "(?:(?:at )?(?:\\d{1,3}(?:[:.]\\d\\d)?|half past \\w+|[a-z]+(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))?)(?: ?(?:am|pm|o'clock|days?|weeks?|months?))*(?: ahead| before| in the morning| in the evening)*)";
const tooMuch =
  "(?: ?'s| is| are| was| were| seems?| comes?| sounds?| would be)?(?: (?:a|much|far|bit|little|way|just|rather|really|quite|still|ever|so|by|too))* (?:too (?:early|late|long|short|soon|much|many|far|often)|(?:a (?:bit|little)|rather|quite|very) (?:much|early|late|long|short|soon|far|many)|much)(?: for (?:us|me|everyone|everybody))?";
/** "7 is too early for us", ", 30 is a bit much": what is wrong now says nothing of what is wanted. */
const complaint = new RegExp(
  `(?:^|(?<=[.!?,;:–-]\\s)|(?<=\\b(?:no|because|as|since|cos|hmm|well|but)\\s))\\W*(?:no |because |as |since |cos |but |well )*${said}${tooMuch}\\b[\\s.,!;:–-]*`,
  'gi',
);

/** A message without what is wrong with the reminder as it stands. */
export const withoutComplaint = (text: string): string => text.replace(complaint, ' ').trim();

/** What was only asked back about waits for its answer, and is not gone on from. */
const spokeOf = ({ last }: Reading): boolean =>
  last?.topic === 'expiry' && last.done === true && /^(?:set|show|stop)$/.test(String(last.request.action));

/** What asks for something else, or names a year, though it has a number in it. */
export const asksElse =
  /\b(?:what|which|who|where|how|expires?|due|goes|going off|tins?|jars?|pots?|grams?|lots?|batch(?:es)?|undo|poured|bought|gave|sold|opened|recipe)\b|\b20\d\d\b/i;

const fillers =
  /\b(?:hm+|ok(?:ay)?|oh|ah|um+|well|only|just|no|nope|wait|sorry|have|having|let's|lets|put off|off|back|instead|also|too|as well|again|try|go for|say|do|it's|by|(?:is|are|would be|will be) (?:enough|plenty|fine|better|sufficient|ok)|will do)\b|,? (?:and )?not \p{L}+\W*$|\bput (?:it|that|them) (?:off|back)?/giu;

const shifted =
  /\b(an?|one|two|three|half an|\d) (hours?|minutes?)(?: and a half)? (later|earlier|sooner|after that|before that)\b|\b(\d{1,2}) minutes (later|earlier)\b/i;

/** "Put off the reminder by an hour." */
const putOff =
  /\b(?:put (?:off|back)|postpone|delay|push)\b.{0,30}?\b(?:back |off )?by ((?:an?|one|two|three|half an|\d{1,2}) (?:hours?|minutes?))\b/i;

/** "An hour later": by the clock of the reminder that stands. */
export const shiftIn = (text: string, reminder: Reminder | undefined): Claim | undefined => {
  const match = shifted.exec(text.replace(putOff, '$1 later'));
  if (!match || !reminder) return undefined;
  const [, count = '', unit = '', way = '', minutes, other = way] = match;
  const word = count.toLowerCase();
  const number = /^an?$/.test(word) ? 1 : (smallNumbers[word] ?? Number(word));
  const each = /^half/.test(word) ? 30 : number * (/^h/i.test(unit) ? 60 : 1);
  const by = minutes === undefined ? each : Number(minutes);
  const sign = /^(?:earlier|sooner|before)/i.test(other) ? -1 : 1;
  const at = reminder.hour * 60 + reminder.minute + sign * by;
  if (!Number.isInteger(at) || at < 0 || at >= 24 * 60) return undefined;
  return claim({ action: 'set', hour: Math.floor(at / 60), minute: at % 60 }, 3.1);
};

const additional = /\b(?:too|as well|on top|besides)\W*$|\balso\b|^\W*and\b/i;

/** "And a week ahead too": beside the days that stand. */
const besides = (made: Claim, text: string, reminder: Reminder | undefined): Claim => {
  if (made.kind !== 'request' || !reminder || !additional.test(text) || /\binstead\b/i.test(text))
    return made;
  const { leadDays, hour } = made.request;
  if (!Array.isArray(leadDays) || hour !== undefined) return made;
  const days = [...new Set([...reminder.leadDays, ...(leadDays as number[])])].sort((a, b) => b - a);
  return { ...made, request: { ...made.request, leadDays: days } };
};

const dayPart = /\b(?:to |in )?(?:the )?(morning|evening|afternoon),? (?:at )?(\d{1,2})(?: o'clock)?\b/gi;

const onAgain =
  /^\W*(?:(?:ok|please|and|now|no|actually|can you|could you|well)\b\W*)*(?:(?:turn|switch|put|set|bring|start) (?:it|them|the reminders?|that)(?: (?:back|on|again|up|please|now))+|(?:start|resume|restart) (?:it|them|the reminders?)(?: (?:again|please|now))*)\W*$/i;

/** "Make it 8", "7 days ahead, 30 is a bit much", "an hour later", "in London", right after the reminder was spoken of. */
export const claimRemindAgain = (reading: Reading): Claim | undefined => {
  const { text } = reading;
  if (!spokeOf(reading) || text.length > longest || asksElse.test(text)) return undefined;
  if (onAgain.test(text)) return claim({ action: 'set' }, 3.1);
  if (reading.last?.request.action === 'stop') return undefined;
  const { reminder } = reading.bench;
  const shift = shiftIn(text, reminder);
  if (shift) return shift;
  const wanted = withoutComplaint(text).replace(dayPart, '$2 in the $1');
  const wish = wanted.replace(fillers, ' ').replace(/\s+/g, ' ').trim();
  if (wish === '' || /\bremind/i.test(wish)) return undefined;
  const made = claimRemind(`reminder ${wish.replace(/^to\b/i, 'at').replace(/^[\s,.;:!-]+/, '')}`);
  return made?.kind === 'request' && made.request.action === 'set'
    ? besides(made, wanted, reminder)
    : undefined;
};
