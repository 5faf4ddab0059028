import type { Trouble } from '../answer.ts';
import { echo } from './ask-back.ts';

export interface TimeSaid {
  readonly hour?: number;
  readonly minute?: number;
  readonly trouble?: Trouble;
  readonly from: number;
  readonly to: number;
}

const words = 'zero one two three four five six seven eight nine ten eleven twelve'.split(' ');
const minuteWords: Readonly<Record<string, number>> = {
  quarter: 15,
  half: 30,
  five: 5,
  ten: 10,
  twenty: 20,
  'twenty five': 25,
  'twenty-five': 25,
};

const numberOf = (said: string): number => {
  const at = words.indexOf(said.toLowerCase());
  return at >= 0 ? at : Number(said);
};

const noSuchTime = (said: string): Trouble => ({
  code: 'out-of-range',
  text: `There is no time of day "${echo(said.trim())}". Say it like "at 9", "at 9pm" or "at 21:30".`,
});

type Half = 'am' | 'pm' | undefined;

const half = (said: string | undefined): Half => {
  if (said === undefined) return undefined;
  return /^p|afternoon|evening|night/i.test(said.trim()) ? 'pm' : 'am';
};

interface TimeOfDay {
  readonly hour: number;
  readonly minute: number;
}

/** "9 pm" is 21; "14 am" contradicts itself, "21:30 in the evening" only says it twice. */
const inHalf = (hour: number, part: 'am' | 'pm'): number | undefined => {
  if (hour > 12 || hour === 0) return (part === 'pm') === hour > 12 ? hour : undefined;
  return (hour % 12) + (part === 'pm' ? 12 : 0);
};

/** The time of day of an hour as said, or undefined when there is none: "14 am", 25:00, 9:75. */
const timeOf = (said: number, minute: number, part: Half): TimeOfDay | undefined => {
  const whole = Number.isInteger(said) && said >= 0 && minute >= 0 && minute <= 59;
  if (!whole || said > 24 || (said === 24 && minute > 0)) return undefined;
  const hour = part === undefined ? said % 24 : inHalf(said % 24, part);
  return hour === undefined ? undefined : { hour, minute };
};

const twelve = 'one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve';
const ampm = '(a\\.?m\\b\\.?|p\\.?m\\b\\.?|in the (?:morning|afternoon|evening)|at night|of the morning)';
const lead = '(?:\\b(?:at|to|by|around|about|from|for|is|=)\\s*)?';
const notUnit =
  '(?!\\s*(?:days?|weeks?|months?|d\\b|%|g\\b|kg\\b|ml\\b|oz\\b|tins?|jars?|st\\b|nd\\b|rd\\b|th\\b|[.,/:-]?\\d))';

interface Shape {
  readonly pattern: RegExp;
  read(groups: readonly (string | undefined)[]): TimeOfDay | undefined;
}

const spoken = (minutes: string, direction: string, hour: string, part: Half) => {
  const size = Object.hasOwn(minuteWords, minutes.toLowerCase())
    ? (minuteWords[minutes.toLowerCase()] ?? 0)
    : Number(minutes);
  const base = timeOf(numberOf(hour), 0, part);
  if (!base || size < 0 || size > 59) return undefined;
  if (/past|after/i.test(direction)) return { hour: base.hour, minute: size };
  return size === 0 ? base : { hour: (base.hour + 23) % 24, minute: 60 - size };
};

const shapes: readonly Shape[] = [
  {
    pattern: new RegExp(
      `${lead}\\b(half|quarter|twenty[ -]five|twenty|ten|five|\\d{1,2})(?: minutes)? (past|after|to|before) (\\d{1,2}|${twelve})\\b(?:\\s*o'?clock)?(?:\\s*${ampm})?`,
      'i',
    ),
    read: ([, minutes = '', direction = '', hour = '', part]) => spoken(minutes, direction, hour, half(part)),
  },
  {
    pattern: new RegExp(`${lead}\\bhalf (\\d{1,2}|${twelve})\\b(?:\\s*${ampm})?`, 'i'),
    // "Half eight" is half past eight in Britain and half past seven in German: asked back about.
    read: () => undefined,
  },
  {
    pattern: new RegExp(
      `${lead}(?<![\\d.,:/])(\\d{1,2})\\s?[:.h]\\s?(\\d{2})(?![\\d/:]|\\.\\d|\\s*(?:%|g\\b|kg\\b|ml\\b|days?))(?:\\s*(?:h|hrs?|hours|uhr|o'?clock)\\b)?(?:\\s*${ampm})?`,
      'i',
    ),
    read: ([, hour, minute, part]) => timeOf(Number(hour), Number(minute), half(part)),
  },
  {
    pattern: new RegExp(`${lead}(?<![\\d.,:/])(\\d{1,2}|${twelve})\\s?(?:o'?clock\\s*)?${ampm}`, 'i'),
    read: ([, hour = '', part]) => timeOf(numberOf(hour), 0, half(part)),
  },
  {
    pattern: new RegExp(`${lead}(?<![\\d.,:/])(\\d{1,2}|${twelve})\\s?(?:h|hrs?|uhr|o'?clock)\\b`, 'i'),
    read: ([, hour = '']) => timeOf(numberOf(hour), 0, undefined),
  },
  {
    pattern: /\b(?:at|to|by|around)\s+(\d{2})(\d{2})\b(?:\s*(?:hours|hrs|h)\b)?(?!\s*days?)/i,
    read: ([, hour, minute]) => timeOf(Number(hour), Number(minute), undefined),
  },
  {
    pattern: new RegExp(`${lead}\\b(?:12 )?(noon|midday|midnight)\\b`, 'i'),
    read: ([, name]) => ({ hour: /midnight/i.test(name ?? '') ? 0 : 12, minute: 0 }),
  },
  {
    pattern: new RegExp(`\\b(?:at|to|around|by|for|is|=)\\s*(\\d{1,4}|${twelve})\\b${notUnit}`, 'i'),
    read: ([, hour = '']) => timeOf(numberOf(hour), 0, undefined),
  },
];

/** "every evening at 9": the part of the day stands before the hour. */
const evening = /\b(?:every|each|in the|of an?)\s+(evening|afternoon|night)\b|\bnightly\b/i;
const morning = /\b(?:every|each|in the)\s+morning\b/i;

const asked = (said: string): Trouble => ({
  code: 'missing',
  text: `"${echo(said.trim())}" is read in two ways. Say "half past eight", or "8:30".`,
});

/** The time of day a message names: "at 9", "9pm", "21:30", "half past eight", "noon". */
export const timeIn = (text: string): TimeSaid | undefined => {
  for (const { pattern, read } of shapes) {
    const match = pattern.exec(text);
    if (!match) continue;
    const place = { from: match.index, to: match.index + match[0].length };
    const time = read(match);
    if (!time)
      return {
        trouble: /^\D*half \w+\W*$/i.test(match[0]) ? asked(match[0]) : noSuchTime(match[0]),
        ...place,
      };
    const late = time.hour >= 1 && time.hour < 12 && evening.test(text) && !morning.test(text);
    return { hour: time.hour + (late ? 12 : 0), minute: time.minute, ...place };
  }
  return undefined;
};
