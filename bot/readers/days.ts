import { localDay } from '../../core/bench/days.ts';
import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import { oncePerReading, type Reading } from '../reading.ts';
import { blanked, type Place, readingWithout } from '../understand.ts';
import type { DayRead } from './day-calendar.ts';
import { bestBeforeShapes, type DayShape, dayShapes } from './day-shapes.ts';
import { lotsIn } from './lots.ts';

/** A date in a message. `from`/`to` are places in the tidied text, words such as "best before" or "on" included. */
export interface DaySaid extends DayRead {
  readonly role: 'best-before' | 'on';
  readonly from: number;
  readonly to: number;
  readonly said: string;
}

export interface DaysRead {
  readonly days: readonly DaySaid[];
  /** A date that does not exist. */
  readonly trouble?: Trouble;
}

/** The group's own day at the instant of the message; UTC until a zone is set. */
export const todayOf = ({ at, settings }: Pick<Reading, 'at' | 'settings'>): string =>
  localDay(at, settings.zone ?? 'UTC');

const longestCue = 60;
const bestBeforeCue =
  /(?:\bbest[- ]before(?:[- ]end)?|\bbest by|\bbbe?\b|\bb\.b\.(?:e\.)?|\bb\/b|\bbbd\b|\buse[- ]by|\b(?:be|is|are) used by|\buse(?:d)? (?:it |them |this )?(?:up )?(?:before|by)|\bfinish(?:ed)? by|\bsell[- ]by|\bexp(?:iry|ires?|iring|iration)?\b\.?|\b(?:good|keeps?|ok|okay|fine|lasts?) (?:until|till|to|through|thru|for use until)|\buntil|\btill|\btil|\bends|\bend(?: date)?|\bkeeps|\blasts|\buse (?:it )?up by|\beat by)(?: date)?(?:[ :=_-]|\b(?:is|was|on|in|the|end|of|to|now|should|be|really|actually|not)\b)*$/i;
const dayCue = /\b(?:on|dated|since)(?: the)?\s*$/i;

const cueBefore = (before: string): { readonly role: DaySaid['role']; readonly length: number } => {
  const best = bestBeforeCue.exec(before);
  if (best) return { role: 'best-before', length: best[0].length };
  return { role: 'on', length: dayCue.exec(before)?.[0].length ?? 0 };
};

/** Amounts, counts of containers, and names ("Sunday balm"): nothing inside them is a date. */
const amountsIn = (reading: Reading): Place[] =>
  reading.items.filter(
    ({ letter }, at) =>
      /[gvdt%prR]/.test(letter) || (letter === 'n' && /^x?B*c/.test(lettersAfter(reading, at))),
  );

const lettersAfter = ({ items }: Reading, at: number): string =>
  items
    .slice(at + 1, at + 4)
    .map(({ letter }) => letter)
    .join('');

const noSuchDay = (said: string): Trouble => ({
  code: 'bad-quantity',
  text: `There is no ${said}. Write a day that exists, for example "14 May 2027" or 2027-05-14.`,
});

interface Search {
  text: string;
  readonly whole: string;
  readonly reading: Reading;
  readonly today: string;
  readonly days: DaySaid[];
  trouble?: Trouble;
}

const found = (search: Search, match: RegExpMatchArray, shape: DayShape, onlyBestBefore: boolean): void => {
  const at = match.index ?? 0;
  const [said] = match;
  const before = search.whole.slice(Math.max(0, at - longestCue), at);
  const { role, length } = cueBefore(before);
  if (onlyBestBefore && role !== 'best-before') return;
  const after = search.whole.slice(at + said.length, at + said.length + 12);
  const { region } = search.reading.settings;
  const read = shape.read(match, { today: search.today, region, before, after });
  if (!read) return;
  const place = { from: at - length, to: at + said.length };
  search.text = blanked(search.text, [{ from: at, to: place.to }]);
  if ('bad' in read) search.trouble ??= noSuchDay(read.bad);
  else search.days.push({ ...read, ...place, role, said });
};

const searched = (reading: Reading): DaysRead => {
  const lots = lotsIn(reading);
  const bare = readingWithout(reading, lots);
  const whole = blanked(bare.text, amountsIn(bare));
  const search: Search = { text: whole, whole, reading, today: todayOf(reading), days: [] };
  for (const shape of dayShapes)
    for (const match of search.text.matchAll(shape.pattern)) found(search, match, shape, false);
  if (bestBeforeWord.test(whole))
    for (const shape of bestBeforeShapes)
      for (const match of search.text.matchAll(shape.pattern)) found(search, match, shape, true);
  return { days: search.days.sort((a, b) => a.from - b.from), ...defined({ trouble: search.trouble }) };
};

const bestBeforeWord = /\b(?:best|bbe?|bbd|b\.b|b\/b|use|sell|exp|good|keeps?|until|till?|ends?|lasts|fine)/i;

/**
 * The dates of a message, in their order, in the group's zone and from the message's own instant. Lot codes and amounts
 * are read first and never taken for dates. A date without a year stands for two days, the last such and the next one:
 * what was done lies behind, a best before ahead.
 */
export const daysIn: (reading: Reading) => DaysRead = oncePerReading(searched);
