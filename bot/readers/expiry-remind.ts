import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, refuse } from '../reading.ts';
import { timeIn } from './clock-time.ts';
import { strangers } from './expiry-clauses.ts';
import { isAround, remindWords } from './expiry-words.ts';
import { unknownPlace, zoneIn } from './zones.ts';

const stopping =
  /\b(?:stop|cancel|end|disable|delete|remove|drop|quit)\b.{0,30}\bremind(?:ers?|ing)?\b|\bno (?:more|further|longer any) remind(?:ers?|ing)\b|\b(?:turn|switch|put)\b.{0,25}\bremind\w*\b.{0,15}\boff\b|\b(?:turn|switch) off\b.{0,25}\bremind\w*|\b(?:don't|dont|do not|never|stop) remind\b.{0,20}\b(?:any ?more|again|any longer|us|me)\b|\breminders? (?:off|stop)\b|\bwe (?:do not|don't|dont) (?:want|need)\b.{0,20}\bremind/i;

const showing =
  /\b(?:when|what time|how often|where)\b.{0,30}\bremind|\b(?:what|which|show|list|see|check|tell)\b.{0,25}\breminders?\b|\breminders? (?:settings?|set|status|on)\s*\??$|\b(?:is|are)\b.{0,25}\breminders?\b.{0,20}(?:\bon\b|\bset\b|\?)|^\W*(?:the |our |my )?reminders?\W*$/i;

const setting =
  /\b(?:remind (?:us|me|everyone|the group|all|at|daily|every)|(?:be|get|being) reminded|reminding|reminders?|(?:tell|warn|alert|notify|let|give) (?:us|me|everyone)\b.{0,60}\b(?:before|ahead|in advance)|lead (?:days?|times?)|daily (?:message|note|notice))\b/i;

const other: Trouble = {
  code: 'out-of-range',
  text: 'I remind once a day, on days when something is due. Say it like "remind us daily at 9 in Lisbon, 30 days ahead".',
};

const notDaily =
  /\b(?:weekly|monthly|hourly|yearly|fortnightly|twice|(?:every|each|on|once an?) (?:other day|hour|week|month|year|second|monday|tuesday|wednesday|thursday|friday|saturday|sunday|weekday|mondays|tuesdays|wednesdays|thursdays|fridays|saturdays|sundays)|weekdays|weekends|mondays|tuesdays|wednesdays|thursdays|fridays|saturdays|sundays|every \d+|every (?:two|three|four|five|six|seven))\b/i;

const tooFar: Trouble = {
  code: 'out-of-range',
  text: 'Lead days go from 0 (on the day itself) to 3650, at most ten of them: "remind us 30, 7 and 0 days ahead".',
};

const number = '(?:\\d{1,5}|an?|one|two|three|four|five|six|ten|on the day|the day itself)';
const unit = '(days?|weeks?|months?|fortnights?)';
const leadList = `${number}(?:(?:\\s*(?:,|and|&|\\/|\\+)\\s*)+${number})*`;
const leadAhead = new RegExp(
  `\\b(${leadList})[ -]*${unit}\\s*(?:ahead|before(?:hand)?|in advance|in front|early|earlier|prior|notice|lead)?(?: of (?:time|it))?(?:\\s*(?:,|and|&)\\s*(?:also )?(on the day|the day itself|0|zero))?`,
  'i',
);
const leadNamed =
  /\blead(?: time| days?)?\s*(?:to|of|is|=|:|are)?\s*((?:\d{1,5}(?:\s*(?:,|and|&|\/)\s*)*)+)(?:\s*days?)?/i;
const onTheDay = /\bon the (?:very |same )?day(?: itself)?\b/i;

const wordNumbers: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  ten: 10,
  'on the day': 0,
  'the day itself': 0,
  zero: 0,
};
const perUnit: Readonly<Record<string, number>> = { d: 1, w: 7, f: 14, m: 30 };

interface LeadSaid {
  readonly leadDays?: readonly number[];
  readonly trouble?: Trouble;
  readonly rest: string;
}

const numbersIn = (text: string): number[] =>
  (
    text
      .toLowerCase()
      .match(/\d+|on the day|the day itself|\b(?:an?|one|two|three|four|five|six|ten|zero)\b/g) ?? []
  ).map((each) => (Object.hasOwn(wordNumbers, each) ? (wordNumbers[each] ?? 0) : Number(each)));

/** "30 days ahead", "30, 7 and 0 days before", "two weeks in advance", "lead days 14, 3", "on the day". */
const readLead = (text: string): LeadSaid => {
  const match = leadNamed.exec(text) ?? leadAhead.exec(text) ?? onTheDay.exec(text);
  if (!match) return { rest: text };
  const rest = `${text.slice(0, match.index)} ${text.slice(match.index + match[0].length)}`;
  const each = perUnit[(match[2] ?? 'd').charAt(0).toLowerCase()] ?? 1;
  const said = match[1] === undefined ? [0] : numbersIn(match[1]).map((count) => count * each);
  const all = [...said, ...(match[3] === undefined ? [] : [0])];
  const leadDays = [...new Set(all)].sort((a, b) => b - a);
  if (leadDays.length === 0 || leadDays.length > 10 || leadDays.some((days) => days > 3650))
    return { trouble: tooFar, rest };
  return { leadDays, rest };
};

const cut = (text: string, place: { readonly from: number; readonly to: number } | undefined): string =>
  place ? `${text.slice(0, place.from)} , ${text.slice(place.to)}` : text;

/** A place nobody here knows: "in Atlantis". */
const strangePlace = (text: string): Trouble | undefined => {
  const said = /\b(?:in|zone|timezone)\s+(?:the\s+)?([\p{L}][\p{L}' -]{1,40})/iu.exec(text)?.[1];
  const [first] = said === undefined ? [] : strangers(said, (word) => isAround(remindWords, word));
  return first === undefined ? undefined : unknownPlace((said ?? '').trim());
};

/** "Half past seven would be better, remind us at 7:30": a time said twice is one; of two the last one counts, "not 8 but 9". */
const timesIn = (all: string): { readonly time: ReturnType<typeof timeIn>; readonly rest: string } => {
  const text = all.replace(
    /\b(?:instead of|rather than|not)\s+(?:at\s+)?\d[\d:.]*\s*(?:am|pm|o'clock)?/gi,
    ' ',
  );
  const first = timeIn(text);
  if (!first) return { time: undefined, rest: text };
  const rest = cut(text, first);
  const second = timeIn(rest);
  if (!second || second.trouble) return { time: first, rest };
  const same = second.hour === first.hour && second.minute === first.minute;
  const changed = /\b(?:instead|not|rather|from .{1,20} to)\b/i.test(text);
  return same || changed ? { time: second, rest: cut(rest, second) } : { time: first, rest };
};

const fields = (text: string): Claim | undefined => {
  const lead = readLead(text);
  const zone = zoneIn(lead.rest);
  const afterZone = cut(lead.rest, zone);
  const { time, rest } = timesIn(afterZone);
  const loose = strangers(rest, (word) => isAround(remindWords, word));
  const { leadDays } = lead;
  const wish = {
    action: 'set',
    ...defined({ hour: time?.hour, minute: time?.minute, zone: zone?.zone, leadDays }),
  };
  const daily = /\b(?:daily|every ?day|each day|every (?:morning|evening|night)|each morning)\b/i.test(text);
  const said = Object.keys(wish).length > 1 || daily || /\bhere\b|\bthis channel\b/i.test(text);
  if (loose.length > 0) {
    const place = said ? strangePlace(rest) : undefined;
    return place ? refuse(place, 2.6) : undefined;
  }
  const trouble = lead.trouble ?? time?.trouble ?? zone?.trouble;
  if (trouble) return refuse(trouble, 3, wish);
  if (said) return claim(wish, 3.1);
  return refuse(
    {
      code: 'missing',
      text: 'Remind you when? For example "remind us daily at 9 in Lisbon, 30 days ahead".',
    },
    2.5,
  );
};

/** What a sentence would mean to the reminder: to set, change, show or stop it. */
export const claimRemind = (said: string): Claim | undefined => {
  const clause = said.replace(/\bdaily (?:message|note|notice)\b/i, 'reminder');
  if (stopping.test(clause)) {
    const loose = strangers(
      clause,
      (word) =>
        isAround(remindWords, word) ||
        /^(?:stop|cancel|end|disable|delete|remove|drop|quit|no|more|further|longer|off|don't|dont|not|never|anymore|any|put)$/.test(
          word,
        ),
    );
    return loose.length === 0 ? claim({ action: 'stop' }, 3.1) : undefined;
  }
  if (!setting.test(clause) && !showing.test(clause)) return undefined;
  if (showing.test(clause)) {
    const loose = strangers(
      clause,
      (word) =>
        isAround(remindWords, word) ||
        /^(?:what|when|which|list|status|where|time|daily|see|check|often)$/.test(word),
    );
    return loose.length === 0 ? claim({ action: 'show' }, 3.1) : undefined;
  }
  if (notDaily.test(clause)) {
    const bare = clause.replace(notDaily, ' ');
    const loose = strangers(
      cut(bare, zoneIn(bare)),
      (word) => isAround(remindWords, word) || /^\d+$/.test(word),
    );
    return loose.length === 0 ? refuse(other, 2.8) : undefined;
  }
  return fields(clause);
};
