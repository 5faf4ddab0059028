import { endOfMonth } from '../../core/bench/days.ts';

const months = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');
const monthName =
  '(jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)';

/** A day or a month as it stands on papers and tins; for use inside larger patterns, without groups of its own. */
export const datePattern = `(?:20\\d\\d-\\d{1,2}(?:-\\d{1,2})?|\\d{1,2}\\/20\\d\\d|(?:\\d{1,2}(?:st|nd|rd|th)?\\s+(?:of\\s+)?)?${monthName.replace(
  '(',
  '(?:',
)}\\.?,?\\s+20\\d\\d)`;

const two = (value: string): string => value.padStart(2, '0');

const isDay = (day: string): boolean => {
  const at = new Date(`${day}T00:00:00Z`);
  return !Number.isNaN(at.getTime()) && at.toISOString().startsWith(day);
};

const ofParts = (year: string, month: string, day: string | undefined): string | undefined => {
  const number = Number(month);
  if (number < 1 || number > 12) return undefined;
  if (day === undefined) return endOfMonth(`${year}-${two(month)}`);
  const whole = `${year}-${two(month)}-${two(day)}`;
  return isDay(whole) ? whole : undefined;
};

const named = new RegExp(`^(?:(\\d{1,2})(?:st|nd|rd|th)?\\s+(?:of\\s+)?)?${monthName}\\.?,?\\s+(20\\d\\d)$`);

/** The ISO day that is written; a month alone is its last day. Undefined for a day that does not exist. */
export const dayWritten = (said: string): string | undefined => {
  const plain = said.trim().toLowerCase();
  const iso = /^(20\d\d)-(\d{1,2})(?:-(\d{1,2}))?$/.exec(plain);
  if (iso) return ofParts(iso[1] ?? '', iso[2] ?? '', iso[3]);
  const slashed = /^(\d{1,2})\/(20\d\d)$/.exec(plain);
  if (slashed) return ofParts(slashed[2] ?? '', slashed[1] ?? '', undefined);
  const words = named.exec(plain);
  if (!words) return undefined;
  const month = months.indexOf((words[2] ?? '').slice(0, 3)) + 1;
  return ofParts(words[3] ?? '', String(month), words[1]);
};
