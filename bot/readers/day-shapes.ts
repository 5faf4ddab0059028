import { endOfMonth, plusDays, plusMonths } from '../../core/bench/days.ts';
import type { Region } from '../../core/settings.ts';
import {
  type DayRead,
  dated,
  dayOfMonth,
  exact,
  fourDigits,
  monthOf,
  monthOnly,
  type NoDay,
  two,
  yearless,
} from './day-calendar.ts';
import { inWords } from './day-words.ts';

/** Where a date stands: the day the message was written, the group's region, and the text on either side. */
export interface DayPlace {
  readonly today: string;
  readonly region: Region;
  readonly before: string;
  readonly after: string;
}

export interface DayShape {
  readonly pattern: RegExp;
  read(groups: readonly (string | undefined)[], place: DayPlace): DayRead | NoDay | undefined;
}

const monthNames =
  'jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?';
const weekdays =
  'mon(?:day)?|tue(?:s(?:day)?)?|wed(?:nesday)?|thu(?:r(?:s(?:day)?)?)?|fri(?:day)?|sat(?:urday)?|sun(?:day)?';
export const wholeWeekdays = 'monday|tuesday|wednesday|thursday|friday|saturday|sunday';
/** "24 may be enough", "3 mar the top": without a year, such a word is a month where "on" or an ending says so. */
const isVerb = (month: string, { before, after }: DayPlace): boolean =>
  /^(?:may|mar)$/.test(month) &&
  !/\b(?:on|before|by|until|till|since|of|dated)(?: the)? *$/i.test(before) &&
  !/^ *(?:[,;.!?:)\n]|$)/.test(after);

/** 5/4/2027: the day comes first, but in the United States the month does; dots are day first everywhere. */
const numeric: DayShape['read'] = ([first = '', sign = '', second = '', year = ''], { region }) => {
  const [a, b, inYear] = [Number(first), Number(second), fourDigits(year)];
  if (sign !== '.' && a <= 12 && b > 12) return dated(inYear, a, b);
  if (a > 12 || sign === '.') return dated(inYear, b, a);
  const monthFirst = region === 'us';
  const read = monthFirst ? dated(inYear, a, b) : dated(inYear, b, a);
  if (!read || 'bad' in read || a === b) return read;
  const order = monthFirst ? 'month first, as in the US' : 'day first';
  return { ...read, assumed: `I read ${first}${sign}${second}${sign}${year} ${order}: ${read.past}.` };
};

/** "For Saturday's market", "for tomorrow's class": when the market is, and not when anything was done. */
const isForEvent = ({ before, after }: DayPlace): boolean =>
  /\bfor (?:the |our |my )?$/i.test(before) && /^'s? [a-z]/i.test(after);

const spoken: DayShape['read'] = ([said = ''], place) => {
  if (isForEvent(place)) return undefined;
  const { today } = place;
  const day = inWords(said, today);
  return day === undefined ? undefined : exact(day);
};

/** "At the Saturday market" says which market, and not which day. */
const namesEvent = ({ before, after }: DayPlace): boolean =>
  /\b(?:the|our|a|my|at|every|each)\s*$/i.test(before) &&
  /^(?:'s)? (?:market|fair|fete|class|club|group|stall|lesson|worksh|session|school|team|sale|crowd|course|bazaar)/i.test(
    after,
  );

/** "on Saturday": the last one up to today, and the next one from today on. */
const weekday: DayShape['read'] = ([, which = '', name = ''], place) => {
  const { today } = place;
  if (isForEvent(place) || (which === '' && namesEvent(place))) return undefined;
  const near = inWords(name, today);
  if (near === undefined) return undefined;
  const past = near > today ? plusDays(near, -7) : near;
  const before = past === today ? plusDays(past, -7) : past;
  const future = past === today ? past : plusDays(past, 7);
  if (which.startsWith('last')) return exact(before);
  if (which.startsWith('next')) return exact(plusDays(past, 7));
  return { past, future };
};

const numberWords = 'a an one two three four five six seven eight nine ten eleven twelve'.split(' ');
const counted = (word: string): number => {
  const at = numberWords.indexOf(word.toLowerCase());
  return at < 0 ? Number(word) : Math.max(1, at - 1);
};

const longestSpan: Readonly<Record<string, number>> = { d: 4000, f: 500, w: 500, m: 240, y: 20 };

/** "3 weeks ago", "in 18 months": months and years by the calendar, so that 31 August and six is the end of February. */
const span =
  (sign: 1 | -1): DayShape['read'] =>
  ([, number = '', unit = ''], { today }) => {
    const kind = unit.charAt(0).toLowerCase();
    const count = counted(number) * sign;
    if (Math.abs(count) > (longestSpan[kind] ?? 0)) return undefined;
    if (kind === 'm') return exact(plusMonths(today, count));
    if (kind === 'y') return exact(plusMonths(today, 12 * count));
    return exact(plusDays(today, count * (kind === 'w' ? 7 : kind === 'f' ? 14 : 1)));
  };

const count = '(\\d{1,4}|an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)';
const units = '(days?|weeks?|months?|years?|fortnights?)';
const notInNumber = '(?<![\\d.,/:-])';
const noMore = '(?![\\d])(?![.,/:]\\d)';

/** What an entry in a diary goes on with after its day. */
const entryVerb =
  '(?:poured|made|filled|sold|gave|bought|got|kept|threw|binned|opened|used|lost|took|sent|returned|strained|weighed|came|one|two|three|four|five|six)\\b';

/** The ways dates are written, most telling first. What one of them took is gone for the next. */
export const dayShapes: readonly DayShape[] = [
  {
    pattern: /(?<![\d.,/-])(\d{4})([-/.])(\d{1,2})\2(\d{1,2})(?![\d])(?![-/.]\d)/g,
    read: ([, year, , month, day]) => dated(Number(year), Number(month), Number(day)),
  },
  {
    pattern: /(?<![\d.,/-])(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})(?![\d])(?![-/.]\d)/g,
    read: ([, ...groups], place) => numeric(groups, place),
  },
  {
    pattern: /(?<![\d.,/-])(\d{4})[-/](0?[1-9]|1[0-2])(?![\d])(?![-/.]\d)/g,
    read: ([, year, month]) => monthOnly(Number(year), Number(month)),
  },
  {
    pattern: /(?<![\d.,/-])(0?[1-9]|1[0-2])[-/.](20\d{2})(?![\d])(?![-/.]\d)/g,
    read: ([, month, year]) => monthOnly(Number(year), Number(month)),
  },
  {
    pattern: new RegExp(
      `${notInNumber}\\b(\\d{1,2})(?:st|nd|rd|th)?[ -]{0,2}(?:of )?(${monthNames})\\b\\.?(?:,? {0,2}(\\d{4})\\b|-(\\d{4})\\b| '(\\d{2})\\b)?`,
      'gi',
    ),
    read: ([, day, month = '', ...inYear], place) => {
      const year = inYear.find((each) => each !== undefined);
      if (year !== undefined) return dated(fourDigits(year), monthOf(month), Number(day));
      return isVerb(month, place) ? undefined : yearless(monthOf(month), Number(day), place.today);
    },
  },
  {
    pattern: new RegExp(
      `\\b(${monthNames})\\.? (\\d{1,2})(?:st|nd|rd|th)?${noMore}(?:,? {0,2}(\\d{4})\\b)?`,
      'gi',
    ),
    read: ([, month = '', day, year], place) => {
      if (year !== undefined) return dated(Number(year), monthOf(month), Number(day));
      return isVerb(month, place) ? undefined : yearless(monthOf(month), Number(day), place.today);
    },
  },
  {
    pattern: new RegExp(`\\b(?:the )?(?:end of )?(${monthNames})\\.?,? {0,2}(\\d{4})\\b`, 'gi'),
    read: ([, month = '', year]) => monthOnly(Number(year), monthOf(month)),
  },
  {
    pattern: new RegExp(`\\b(20\\d{2}),? {0,2}(${monthNames})\\b(?! \\d)`, 'gi'),
    read: ([, year, month = '']) => monthOnly(Number(year), monthOf(month)),
  },
  { pattern: /\bthe day (?:before yesterday|after tomorrow)\b/gi, read: spoken },
  { pattern: new RegExp(`\\b${count} ${units} ago\\b`, 'gi'), read: span(-1) },
  { pattern: new RegExp(`\\bin ${count} ${units}\\b(?: time)?`, 'gi'), read: span(1) },
  { pattern: new RegExp(`\\b${count} ${units} from (?:now|today)\\b`, 'gi'), read: span(1) },
  {
    pattern:
      /\b(?:(?:yesterday|today|tomorrow)(?: (?:morning|afternoon|evening|night))?|tonight|last night|this (?:morning|afternoon|evening))\b/gi,
    read: spoken,
  },
  { pattern: new RegExp(`\\b(last|this past|next|this|on) (${weekdays})\\b`, 'gi'), read: weekday },
  { pattern: new RegExp(`\\b()(${wholeWeekdays})\\b`, 'gi'), read: weekday },
  // "3/2: poured", "3.2. sold 4": as in a diary.
  {
    pattern: new RegExp(
      `(?<=^|\\n\\s{0,3})(\\d{1,2})([./])(\\d{1,2})(?:\\.(?=\\s)|(?=\\s?[:,-]|\\s+(?:${entryVerb})))`,
      'gi',
    ),
    read: ([, first, sign, second], { today, region }) =>
      region === 'us' && sign === '/'
        ? yearless(Number(first), Number(second), today)
        : yearless(Number(second), Number(first), today),
  },
  {
    pattern: /\bon the (\d{1,2})(?:st|nd|rd|th)\b(?! of)/gi,
    read: ([, day], { today }) => dayOfMonth(Number(day), today),
  },
  {
    // "Opened 22/11", "since 3/2".
    pattern:
      /(?<=\b(?:on|since|opened|bought|received|arrived|delivered|collected|strained|weighed|counted) )(\d{1,2})\/(\d{1,2})(?![\d/])(?= *(?:[.,;:!)\n]|$))/gi,
    read: ([, first, second], { today, region }) =>
      region === 'us'
        ? yearless(Number(first), Number(second), today)
        : yearless(Number(second), Number(first), today),
  },
  {
    pattern: /\bon (\d{1,2})\.(\d{1,2})\.(?!\d)/g,
    read: ([, day, month], { today }) => yearless(Number(month), Number(day), today),
  },
];

/** Only after "best before": months and years too short to be told from other figures elsewhere. */
export const bestBeforeShapes: readonly DayShape[] = [
  {
    // "bb 0629", as it is stamped on packs.
    pattern: /(?<![\d.,/-])(0[1-9]|1[0-2])([2-4]\d)(?![\d.,/-])(?! ?(?:kg|g|ml|l|gr|grams?|oz|lbs?)\b)/g,
    read: ([, month, year = '']) => monthOnly(fourDigits(year), Number(month)),
  },
  {
    pattern: /(?<![\d.,/-])(0?[1-9]|1[0-2])[/](\d{2})(?![\d])(?![-/.]\d)/g,
    read: ([, month, year = '']) => monthOnly(fourDigits(year), Number(month)),
  },
  {
    pattern: /(?<![\d.,/-])(0?[1-9]|1[0-2]) (20\d{2})(?![\d])(?![-/.]\d)/g,
    read: ([, month, year]) => monthOnly(Number(year), Number(month)),
  },
  {
    pattern: /(?<![\d.,/-])(?:the )?(?:end of )?(20\d{2})(?![\d])(?![-/.,]\d)/g,
    read: ([, year]) => exact(`${year}-12-31`, { whole: 'year' }),
  },
  {
    pattern: new RegExp(`\\b(?:the )?(?:end of )?(next|this) (${monthNames})\\b`, 'gi'),
    read: ([, which = '', month = ''], { today }) => {
      const year = Number(today.slice(0, 4));
      const end = endOfMonth(
        `${which.toLowerCase() === 'next' && monthOf(month) <= Number(today.slice(5, 7)) ? year + 1 : year}-${two(monthOf(month))}`,
      );
      return exact(end, { whole: 'month' });
    },
  },
  {
    pattern: new RegExp(`\\b(?:the )?(?:end of )?(${monthNames})\\b`, 'gi'),
    read: ([, month = ''], { today }) => {
      const end = (year: number) => endOfMonth(`${year}-${two(monthOf(month))}`);
      const year = Number(today.slice(0, 4));
      const future = end(year) >= today ? end(year) : end(year + 1);
      return { past: future, future, whole: 'month' };
    },
  },
];
