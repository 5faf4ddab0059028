import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, refuse } from '../reading.ts';
import { isBackground } from './background-words.ts';
import { timeIn } from './clock-time.ts';
import { strangers } from './expiry-clauses.ts';
import { isAround, remindWords } from './expiry-words.ts';
import { smallNumbers, tensNumbers } from './number.ts';
import { unknownPlace, zoneIn } from './zones.ts';

const stopping =
  /^\W*enough (?:of )?(?:the |your |these |those )?remind|\breminders? (?:can|should|may|must|could) (?:stop|end|go)\b|\b(?:stop|cancel|end|disable|delete|remove|drop|quit|kill|scrap|ditch|mute|silence|pause|finish|enough of|done with)\b.{0,30}\bremind(?:ers?|ing)?\b|\bno (?:(?:more|further|longer any) )?remind(?:ers?|ing)\b|\b(?:turn|switch|put)\b.{0,25}\bremind\w*\b.{0,15}\boff\b(?! (?:to|until|till)\b)|\b(?:turn|switch) off\b.{0,25}\bremind\w*|\b(?:don't|dont|do not|never|stop) remind\b.{0,20}\b(?:any ?more|again|any longer|us|me)\b|\breminders? (?:off|stop)\b|\b(?:we|i) (?:do not|don't|dont|no longer) (?:want|need)\b.{0,20}\bremind|\b(?:do|manage|cope|live) without .{0,12}\bremind|\bno (?:more |further )?(?:need|use) (?:for|of) .{0,15}\bremind|\breminders?\b.{0,20}\b(?:no longer|not) (?:needed|required|wanted|necessary|useful)\b|\breminders?\b.{0,60}\b(?:stop|cancel|end) (?:them|it)\b|\breminders?\b.{0,80}\b(?:switch|turn|put) (?:them|it) off\b|\breminders?\b.{0,80}\b(?:switch|turn) off (?:them|it)\b|\breminders?\b.{0,40}\b(?:do not|don't|dont|no longer) need (?:them|it)\b/i;

const showing =
  /\b(?:do|did) (?:we|i) (?:still )?(?:get|have) (?:any |a |the |your |daily )*remind|\bdid you remind (?:us|me)\b|^\W*(?:is|are) there\b.{0,20}\bremind|\b(?:do you (?:still |ever |even )?remind|are you (?:still )?reminding)\b(?!.*\d)|\b(?:when|what time|how often|where)\b.{0,30}\bremind|\b(?:what|which|show|list|see|check|tell)\b.{0,25}\breminders?\b|\breminders? (?:settings?|set|status|on)\s*\??$|\b(?:is|are)\b.{0,25}\breminders?\b.{0,20}(?:\bon\b|\bset\b|\?)|^\W*(?:the |our |my )?reminders?\W*$|\bwhat\b.{0,25}\bremind(?:ed)?\b|\b(?:do|have) we (?:have |got |still have )?(?:any |a |the )?reminders?\b|\breminders?\b.{0,20}\b(?:running|switched|active|working)\b|\bwhat (?:do|does|did|would|will) (?:the |our |my |your )?reminders? (?:say|tell|show|hold|have)\b|\breminders? (?:for )?today\b/i;

const setting =
  /\bwarnings?\b.{0,20}\b(?:days?|weeks?|fortnight|months?) (?:before|ahead|in advance)\b|\b(?:(?:send|tell|give|show|message|wake|nudge|ping|write) (?:us|me|everyone)\b.{0,40}\b(?:(?:every|each) (?:day|morning|evening|night)|daily)|remind (?:\d|us|me|everyone|everybody|the (?:group|two|three|four|others|team|members)|both|each|all|at|daily|every)|(?:be|get|being) reminded|reminding|reminders?|(?:tell|warn|alert|notify|let|give|ping|nudge|message) (?:us|me|everyone)\b.{0,60}\b(?:before|ahead|in advance|beforehand|within)|lead (?:days?|times?)|daily (?:message|note|notice)s?|(?:days?|weeks?|fortnight) (?:ahead|before(?:hand)?|in advance)(?: (?:is|are|would be|will be))? (?:enough|plenty|fine|better|sufficient|will do)|(?:we|i)(?:'d)? (?:want|need|would like|like|wish) to (?:know|be told|hear)\b.{0,40}\b(?:days?|weeks?|fortnight) (?:ahead|before|in advance))\b/i;

/** "Turn the reminders back on". */
const resuming =
  /^\W*(?:(?:please|ok|now|and|can you|could you|pipkin)\b\W*)*(?:start|resume|restart|turn|switch|put) (?:back |on )*(?:the |our |my )?(?:daily )?remind(?:ers?|ing)(?: us| me)?(?: (?:again|back|on|up|please|now))*\W*$/i;

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
  `(?<![\\d.:])(?!(?<=\\bat )\\d{1,2}(?:[:.]\\d\\d)?\\s*(?:am|pm)?\\s*,)\\b(${leadList})[ -]*${unit}\\s*(?:ahead|before(?:hand)?|in advance|in front|early|earlier|prior|notice|lead)?(?: of (?:time|it))?(?:\\s*(?:,|and|&)\\s*(?:also )?(on the day|the day itself|0|zero))?`,
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
export const readLead = (text: string): LeadSaid => {
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

const withoutWord = (text: string, word: string): string => {
  const at = text.toLowerCase().indexOf(word);
  return at < 0 ? text : `${text.slice(0, at)} ${text.slice(at + word.length)}`;
};

/** "daily at 8 london": a place that nothing announces. */
const bareZone = (loose: readonly string[]): string | undefined => {
  const said = loose.join(' ');
  const zone = loose.length > 0 && loose.length <= 3 ? zoneIn(`in ${said}`) : undefined;
  return zone && !zone.trouble ? said : undefined;
};

const fields = (text: string): Claim | undefined => {
  const lead = readLead(text);
  const zone = zoneIn(lead.rest);
  const afterZone = cut(lead.rest, zone);
  const { time, rest } = timesIn(afterZone);
  const loose = strangers(rest, (word) => isAround(remindWords, word));
  const place = zone || /\bzone:/.test(text) ? undefined : bareZone(loose);
  if (place) return fields(`${loose.reduce(withoutWord, text)} zone: in ${place}`);
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

const spelled =
  /\b(?:(twenty|thirty|forty|fifty|sixty|ninety)(?:[ -](one|two|three|four|five|six|seven|eight|nine))?|(one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fourteen|fifteen))\b(?= (?:days?\b|weeks?\b|months?\b|o'clock\b|in the (?:morning|afternoon|evening)\b|am\b|pm\b|at night\b))/gi;

/** "Eight in the morning", "thirty days ahead". */
const withDigits = (text: string): string =>
  text.replace(spelled, (_all, ten?: string, one?: string, alone?: string) =>
    String(
      (ten ? (tensNumbers[ten.toLowerCase()] ?? 0) : 0) +
        (smallNumbers[(one ?? alone ?? '').toLowerCase()] ?? 0),
    ),
  );

/** The clause in the forms that its figures are looked for in. */
export const inPlainForms = (said: string): string =>
  withDigits(said)
    .replace(/\s-{1,2}\s|\s*(?:\/\/|\|)\s*/g, ', ')
    .replace(/, (?=(?:week|fortnight|month) (?:before|ahead|in advance))/i, ', 1 ')
    .replace(/\b(?:daily|morning) (?:message|note|notice)s?\b/i, 'reminder')
    .replace(/\bput\b(.{0,20}\breminders?) off (?:to|until|till)\b/i, 'set$1 to')
    .replace(/\b(?:postpone|delay|put off|put back)\b(.{0,20}\breminders?) (?:to|until|till)\b/i, 'set$1 to')
    .replace(/\breminders?:? (?:to )?(?=\d)/i, 'reminder at ')
    .replace(/\b(?:make|set|move|put|change) (?:it|that) (?:to )?(?=\d{1,2}\b(?! days?| weeks?))/i, 'at ')
    .replace(/\b(\d{1,4}) days? and (?=\d{1,4} days?\b)/i, '$1 and ')
    .replace(/(\d(?:[:.]\d\d)?\s?(?:am|pm|o'clock)?,?) ([a-z][a-z' -]{2,20}) time\b/i, '$1 in $2')
    .replace(
      /\b(?:about|of) (?:all |the )*(?:things?|stuff|what(?:ever)?|lots|everything|anything)\b[^,.;\d]{0,40}/i,
      ' ',
    )
    .replace(
      /\b(?:starting|beginning|from) (?=(?:\d{1,3}|an?|two|three|four|six) (?:days?|weeks?|months?)\b)/i,
      '',
    )
    .replace(/\bremember (?=(?:us|me)\b)/i, 'remind ')
    .replace(/\bremind (?=\d)/i, 'remind at ');

const claimWhole = (said: string): Claim | undefined => {
  const clause = inPlainForms(said);
  if (stopping.test(clause)) {
    const loose = strangers(
      clause,
      (word) =>
        isAround(remindWords, word) ||
        isBackground(word) ||
        /^(?:stop|cancel|end|disable|delete|remove|drop|quit|no|more|further|longer|off|don't|dont|not|never|anymore|any|put|may|might|all|these|those|don't|longer|since|kill|scrap|ditch|mute|silence|pause|manage|cope|live|without|done|required|needed|wanted|necessary|useful|finish|finished|enough|switch|turn|over|during|holiday|holidays|vacation|break|away|while|go|going|too|much|many|often|annoying|noisy|are|get|getting|them|it|now)$/.test(
          word,
        ),
    );
    return loose.length === 0 ? claim({ action: 'stop' }, 3.35) : undefined;
  }
  if (resuming.test(clause)) return claim({ action: 'set' }, 3.1);
  if (!setting.test(clause) && !showing.test(clause)) return undefined;
  if (showing.test(clause)) {
    const loose = strangers(
      clause,
      (word) =>
        isAround(remindWords, word) ||
        /^(?:what|when|which|list|status|where|time|daily|see|check|often|say|says|hold|have|has|did|say|your|todays?|today's|there|switched|running|still|have|got|active|working|of|being|been|stand|stands|standing|sent|coming|posted|due|go|out|many|next|will|come|comes|settings?)$/.test(
          word,
        ),
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

/** Talk at either end of a sentence: no figure in it, and nothing about reminding. */
const isTalkPart = (part: string): boolean =>
  zoneIn(`in ${part.trim()}`) === undefined &&
  !/\d|\bremind|\bno(?:t|ne)?\b|\bdon'?t\b|\b(?:in|zone|days?|weeks?|months?|daily|noon|midnight|o'clock)\b/i.test(
    part,
  );

/** "I am getting so forgetful, my dear, would you remind us …": the parts from the first to the last that matter. */
const withoutTalk = (said: string): string | undefined => {
  const parts = said.split(/,|:(?=\s)|\s-\s|;|\bbecause\b|\bso that\b/);
  const first = parts.findIndex((part) => !isTalkPart(part));
  const last = parts.findLastIndex((part) => !isTalkPart(part));
  return first < 0 || last - first === parts.length - 1 ? undefined : parts.slice(first, last + 1).join(',');
};

/** What a sentence would mean to the reminder: to set, change, show or stop it; talk around it is passed over. */
export const claimRemind = (said: string): Claim | undefined => {
  const whole = claimWhole(said);
  if (whole) return whole;
  const plain = withoutTalk(said);
  return plain === undefined ? undefined : claimWhole(plain);
};
