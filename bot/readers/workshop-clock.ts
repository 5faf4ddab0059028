import { readDuration } from './duration.ts';
import { smallNumbers } from './number.ts';
import { tokens } from './tokens.ts';
import { overlaps, type Span } from './workshop-spans.ts';

/** When a workshop takes place, as far as the message says. */
export interface WhenRead {
  /** "14:00". */
  readonly start?: string;
  readonly minutes?: number;
  readonly day?: string;
  readonly assumed: readonly string[];
  readonly spans: readonly Span[];
}

const months =
  'jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?';

const days: readonly RegExp[] = [
  /\b\d{4}-\d{2}-\d{2}\b/,
  new RegExp(`\\b\\d{1,2}(?:st|nd|rd|th)?\\s+(?:of\\s+)?(?:${months})\\b(?:\\s+\\d{4}\\b)?`, 'i'),
  new RegExp(`\\b(?:${months})\\s+\\d{1,2}(?:st|nd|rd|th)?\\b(?:,?\\s+\\d{4}\\b)?`, 'i'),
  /\b(?:(?:this|next|coming)\s+)?(?:mon|tues|wednes|thurs|fri|satur|sun)days?\b/i,
  /\b(?:tomorrow|tonight|today)\b/i,
];
/** "Next month" is no day: nothing to put on a handout. */
const vague =
  /\b(?:(?:next|this|coming|in a|the) (?:week(?:end)?|month|summer|spring|autumn|winter|term|year)|in (?:two|three|four|a few|\d) (?:weeks|months))\b/i;

/** All days said, and the words before them that only carry them. */
const daySpans = (text: string): { readonly day?: string; readonly spans: Span[] } => {
  const spans: Span[] = [];
  for (const shape of days) {
    const found = shape.exec(text);
    const span = found && { from: found.index, to: found.index + found[0].length };
    if (!found || !span || spans.some((other) => overlaps(other, span))) continue;
    spans.push(span);
  }
  const loose = vague.exec(text);
  const over = loose ? [{ from: loose.index, to: loose.index + loose[0].length }] : [];
  const said = spans.toSorted((a, b) => a.from - b.from).map(({ from, to }) => text.slice(from, to));
  return said.length > 0 ? { day: said.join(' ').slice(0, 40), spans: [...spans, ...over] } : { spans: over };
};

const clock = String.raw`(\d{1,2})(?:\s?[:.h]\s?([0-5]\d|[6-9]\d))?\s*(am|pm|a\.m\.?|p\.m\.?|o'?clock|h|uhr)?`;
/** What makes a number after "at" something else than an hour. */
const noUnit = String.raw`(?![\d.,:%/-]*\d|\s*(?:%|°|x\b|×|(?:c|f|ml|l|cl|g|gr|kg|oz|lb|per|degrees?|grams?|people|makers|participants|tins?|jars?|pots?|sticks?|tubes?|each)\b))`;

const shapes: readonly RegExp[] = [
  new RegExp(
    String.raw`\b(?:start(?:s|ing|ed)?|begin(?:s|ning)?|kick(?:s|ing)?\s+off|arriv\w{1,4}|doors)(?:\s+time)?\s*(?:at|from|is|:|=)?\s*${clock}${noUnit}`,
    'i',
  ),
  /\b(?:at\s+|from\s+)?(\d{1,2})\s?[:h]\s?([0-5]\d)\b\s*(am|pm|a\.m\.?|p\.m\.?)?/i,
  /\b(?:at\s+|from\s+)?(\d{1,2})(?:\s?[.]\s?([0-5]\d))?\s*(am|pm|a\.m\.?|p\.m\.?|o'clock)(?![a-z])/i,
  new RegExp(String.raw`\b(?:at|from)\s+${clock}${noUnit}`, 'i'),
];

/** Hours in words, as the reader of numbers knows them, with those that have a name. */
const hourWords: Readonly<Record<string, number>> = {
  ...Object.fromEntries(Object.entries(smallNumbers).filter(([, value]) => value <= 12)),
  noon: 12,
  midday: 12,
};
const part = '(half past|quarter past|quarter to)';
const wordShape = new RegExp(
  String.raw`\b(?:(?:start(?:s|ing)?\s+(?:at\s+)?|at\s+|from\s+)(?:${part}\s+)?|${part}\s+)(${Object.keys(hourWords).join('|')}|\d{1,2})\b\s*(am|pm|a\.m\.?|p\.m\.?|o'clock)?(?!\s+(?:tins?|jars?|pots?|sticks?|people|makers|hot|kits?))`,
  'i',
);

interface Time {
  readonly hour: number;
  readonly minute: number;
  readonly half?: 'am' | 'pm';
  readonly written: string;
}

const halfOf = (said: string | undefined): 'am' | 'pm' | undefined => {
  const letter = said?.charAt(0).toLowerCase();
  if (!/^[ap]\.?m/i.test(said ?? '')) return undefined;
  return letter === 'a' ? 'am' : 'pm';
};

const timeOf = (hour: string, minute: string | undefined, half: string | undefined): Time => {
  const said = halfOf(half);
  return { hour: Number(hour), minute: Number(minute ?? 0), written: hour, ...(said ? { half: said } : {}) };
};

const past: Readonly<Record<string, number>> = { 'half past': 30, 'quarter past': 15, 'quarter to': -15 };

interface Found {
  readonly time: Time;
  readonly span: Span;
}

/** "1:10" after "infused" is a ratio. */
const isRatio = (text: string, at: number): boolean =>
  /(?:infus\w{0,4}|steep\w{0,3}|ratio|macerat\w{0,3}|\d)[\s\w]{0,20}$/i.test(
    text.slice(Math.max(0, at - 30), at),
  ) && /(?:infus|steep|ratio|macerat)/i.test(text.slice(Math.max(0, at - 30), at));

/** What is called the start counts before any other time; of the others the one that is said first. */
const inFigures = (text: string): Found | undefined => {
  const [named, ...others] = shapes.map((shape) => shape.exec(text));
  const times = others
    .filter((found) => found !== null && !isRatio(text, found.index))
    .toSorted((a, b) => (a?.index ?? 0) - (b?.index ?? 0));
  const found = named ?? times[0];
  if (!found) return undefined;
  return {
    time: timeOf(found[1] ?? '', found[2], found[3]),
    span: { from: found.index, to: found.index + found[0].length },
  };
};

const inWords = (text: string): Found | undefined => {
  const found = wordShape.exec(text);
  const word = found?.[3]?.toLowerCase() ?? '';
  const part = found?.[1] ?? found?.[2];
  const hour = Object.hasOwn(hourWords, word) ? hourWords[word] : Number(word);
  if (!found || hour === undefined || !Number.isFinite(hour)) return undefined;
  if (!part && /^\d/.test(word)) return undefined;
  const offset = past[part?.toLowerCase() ?? ''] ?? 0;
  const minutes = hour * 60 + offset;
  const time = timeOf(String(Math.floor(minutes / 60)), String(minutes % 60), found[4]);
  const isNoon = word === 'noon' || word === 'midday';
  return {
    time: isNoon ? { ...time, half: 'pm' } : time,
    span: { from: found.index, to: found.index + found[0].length },
  };
};

/** Hours that are taken for the afternoon where nothing says otherwise. */
const afternoon = { from: 1, to: 7 } as const;

interface Settled {
  readonly hour: number;
  readonly guessed: boolean;
}

const settledHour = ({ hour, half, written }: Time, text: string): Settled => {
  const morning = /\bmorning\b/i.test(text);
  if (half === 'pm') return { hour: hour < 12 ? hour + 12 : hour, guessed: false };
  if (half === 'am') return { hour: hour === 12 ? 0 : hour, guessed: false };
  const evening = /\b(?:evening|afternoon|tonight)\b/i.test(text) && hour < 12;
  if (evening) return { hour: hour + 12, guessed: false };
  const early = hour >= afternoon.from && hour <= afternoon.to && !written.startsWith('0') && !morning;
  return early ? { hour: hour + 12, guessed: true } : { hour, guessed: false };
};

const two = (value: number): string => String(value).padStart(2, '0');

const endShape =
  /^\s*(?:-|to|till|until)\s*(\d{1,2})(?:\s?[:.h]\s?([0-5]\d))?\s*(am|pm|a\.m\.?|p\.m\.?|o'?clock|h\b)?(?!\d|\s*(?:ml|g|people|makers|tins?)\b)/i;

/** "10 to 12:30": how long there is, with the stretch it takes. */
const untilEnd = (text: string, start: number, from: number): { minutes?: number; to: number } => {
  const found = endShape.exec(text.slice(from, from + 30));
  if (!found) return { to: from };
  const { hour, half, minute } = timeOf(found[1] ?? '', found[2], found[3]);
  const base = half === 'pm' && hour < 12 ? hour + 12 : hour;
  const end = base * 60 + minute;
  const later = end <= start && end + 720 > start ? end + 720 : end;
  return later > start ? { minutes: later - start, to: from + found[0].length } : { to: from };
};

const durationIn = (text: string, spans: readonly Span[]): { minutes: number; span: Span } | undefined => {
  const found = readDuration(tokens(text));
  if (!found || spans.some((other) => overlaps(other, found))) return undefined;
  return { minutes: Math.round(found.minutes), span: { from: found.from, to: found.to } };
};

/** Start, day and length of a workshop in a message's text. */
export const readWhen = (text: string): WhenRead => {
  const { day, spans } = daySpans(text);
  // A day's own figures are no hours: they are blanked, places staying as they are.
  let rest = text;
  for (const { from, to } of spans) rest = rest.slice(0, from) + ' '.repeat(to - from) + rest.slice(to);
  const found = inFigures(rest) ?? inWords(rest);
  const base = { ...(day === undefined ? {} : { day }) };
  if (!found) {
    const duration = durationIn(rest, spans);
    return {
      ...base,
      ...(duration ? { minutes: duration.minutes } : {}),
      assumed: [],
      spans: duration ? [...spans, duration.span] : spans,
    };
  }
  return { ...base, ...withTime(rest, found, spans) };
};

const withTime = (text: string, { time, span }: Found, spans: readonly Span[]): WhenRead => {
  const { hour, guessed } = settledHour(time, text);
  const start = `${two(hour)}:${two(time.minute)}`;
  const end = untilEnd(text, hour * 60 + time.minute, span.to);
  const all = [...spans, { from: span.from, to: end.to }];
  const duration = end.minutes === undefined ? durationIn(text, all) : undefined;
  const minutes = end.minutes ?? duration?.minutes;
  return {
    start,
    ...(minutes === undefined ? {} : { minutes }),
    assumed: guessed
      ? [`I took ${time.hour}${time.minute ? `:${two(time.minute)}` : " o'clock"} as ${start}.`]
      : [],
    spans: duration ? [...all, duration.span] : all,
  };
};
