import { lotKey } from '../../core/bench/codes.ts';
import { daysBetween } from '../../core/bench/days.ts';
import { type Due, type DueAsked, type DueFound, dueIn, dueOf } from '../../core/bench/due.ts';
import type { Bench } from '../../core/bench/state.ts';
import { benchOf } from '../../core/book.ts';
import { leadOf } from '../../core/remind/next.ts';
import { type Stretch, stretchOf } from '../../core/remind/periods.ts';
import type { Answer, Block, Trouble, Warning } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { ExpiryWish } from '../topics/expiry.ts';
import { dayText } from './day-text.ts';
import { dueFigures, dueLine, dueSteps } from './due-line.ts';
import { findEither } from './find-lot.ts';
import { groupDay } from './group-day.ts';
import { localRules, shortName } from './warnings.ts';

const usualLead = 30;
const farOff = '9999-12-31';
/** Lines of one answer; more than that are counted. */
const mostListed = 40;

const stretchFor = (wish: ExpiryWish, bench: Bench, today: string): Stretch => {
  if (wish.until !== undefined || wish.from !== undefined)
    return {
      until: wish.until ?? farOff,
      ...(wish.from === undefined ? { from: today } : { from: wish.from }),
    };
  if (wish.period === undefined || wish.period === 'soon')
    return (
      stretchOf(`days-${bench.reminder ? leadOf(bench.reminder) : usualLead}`, today) ?? { until: farOff }
    );
  return stretchOf(wish.period, today) ?? { until: farOff };
};

const periodNames: Readonly<Record<string, string>> = {
  today: 'today',
  tomorrow: 'tomorrow',
  weekend: 'this weekend',
  'this-week': 'this week',
  'next-week': 'next week',
  'this-month': 'this month',
  'next-month': 'next month',
  'this-year': 'this year',
  'next-year': 'next year',
};

const aboutText = ({ ingredient, recipe, lots, kind }: ExpiryWish): string => {
  if (lots) return lots.join(', ');
  if (ingredient !== undefined) return shortName(ingredient);
  if (recipe !== undefined) return recipe;
  return kind === undefined ? '' : kind === 'lot' ? 'lots' : 'batches';
};

const whenText = ({ period }: ExpiryWish, { from, until }: Stretch, today: string): string => {
  if (period !== undefined && Object.hasOwn(periodNames, period)) return periodNames[period] ?? '';
  if (until === farOff) return '';
  if (from === until) return `on ${dayText(until)}`;
  return from === undefined || from === today
    ? `up to ${dayText(until)}`
    : `${dayText(from)} to ${dayText(until)}`;
};

const titleOf = (wish: ExpiryWish, stretch: Stretch, today: string): string => {
  const about = aboutText(wish);
  if (wish.period === 'overdue') return about === '' ? 'Out of date' : `Out of date: ${about}`;
  const parts = [about === '' ? '' : `: ${about}`, whenText(wish, stretch, today)];
  return `Best before${parts[0]}${parts[1] === '' ? '' : `${about === '' ? ' ' : ', '}${parts[1]}`}`;
};

/** What a question is narrowed down to: an ingredient's lots, a recipe's batches, or one kind. */
const narrowed = ({ kind, ingredient, recipe }: ExpiryWish): Pick<DueAsked, 'kind' | 'fits'> | undefined => {
  if (ingredient !== undefined && (recipe !== undefined || kind === 'batch')) return undefined;
  if (ingredient !== undefined) return { kind: 'lot', fits: (what) => what === ingredient };
  if (recipe === undefined) return { kind };
  const name = recipe.toLowerCase();
  return kind === 'lot' ? undefined : { kind: 'batch', fits: (what) => what.toLowerCase() === name };
};

const outOfDate: Warning = {
  code: 'out-of-date',
  text: 'Past its date: do not use it or give it out. What smells rancid, has changed colour or grown anything goes into the bin.',
};

const whyNotDue = (code: string, bench: Bench): string | undefined => {
  const lot = bench.lots.get(lotKey(code));
  if (lot && lot.leftG <= 0) return `Lot ${lot.lot} is used up.`;
  if (lot && lot.bestBefore === undefined) return `Lot ${lot.lot} has no best-before date.`;
  const until = lot?.bestBefore ?? bench.batches.get(lotKey(code))?.bestBefore;
  return until === undefined ? undefined : `${code}: best before ${dayText(until)}.`;
};

/** Lots and batches asked about by name that are not in the list, and why. */
const notDue = (lots: readonly string[], found: readonly Due[], bench: Bench): string[] =>
  lots
    .filter((code) => !found.some(({ lot }) => lotKey(lot) === lotKey(code)))
    .flatMap((code) => whyNotDue(code, bench) ?? []);

const noted = (due: Due): string => {
  const until = due.answer?.answer === 'again' ? due.answer.until : undefined;
  return until === undefined ? dueLine(due) : `${dueLine(due)}; asked about again on ${dayText(until)}`;
};

const textBlock = (text: string): Block => ({ kind: 'text', text });

/** Lots and batches asked about by name; those that are done are told too. */
const namedIn = (lots: readonly string[], bench: Bench, today: string, stretch: Stretch): DueFound => {
  const { from = '', until } = stretch;
  const keys = [...new Set(lots.map(lotKey))];
  const all = keys
    .flatMap((key) => [dueOf(bench, 'lot', key, today) ?? [], dueOf(bench, 'batch', key, today) ?? []])
    .flat()
    .toSorted((a, b) => a.daysLeft - b.daysLeft || (a.item < b.item ? -1 : 1));
  const due = all.filter(({ bestBefore }) => bestBefore >= from && bestBefore <= until);
  const older = all.filter(
    ({ bestBefore, answer }) => bestBefore < from && bestBefore < today && answer?.answer !== 'done',
  );
  return { due, count: due.length, older: older.length, done: 0 };
};

const listFor = (wish: ExpiryWish, bench: Bench, today: string, stretch: Stretch): DueFound => {
  if (wish.lots) return namedIn(wish.lots, bench, today, stretch);
  const about = narrowed(wish);
  // Lots of a recipe, batches of an ingredient: there is no such thing.
  if (!about) return { due: [], count: 0, older: 0, done: 0 };
  return dueIn(bench, { on: today, ...stretch, ...about, most: mostListed });
};

const remarks = ({ due, count, older, done }: DueFound, wish: ExpiryWish, bench: Bench): Block[] => [
  ...(count > due.length ? [textBlock(`And ${count - due.length} more; ask for a shorter stretch.`)] : []),
  ...notDue(wish.lots ?? [], due, bench).map(textBlock),
  ...(done > 0 ? [textBlock(`Left out: ${done} you are done with.`)] : []),
  ...(older > 0 ? [textBlock(`Out of date before that: ${older}. Ask "what is out of date".`)] : []),
];

const nothing = (listed: DueFound, wish: ExpiryWish): Block[] =>
  listed.due.length > 0 || wish.lots
    ? []
    : [textBlock(wish.period === 'overdue' ? 'Nothing is out of date.' : 'Nothing.')];

/** Lots and batches with something left whose date falls into the stretch asked about, soonest first. */
export const listDue = (wish: ExpiryWish, tools: Tools): Answer | Trouble => {
  const bench = benchOf(tools.book.state);
  for (const code of wish.lots ?? []) {
    const found = findEither(code, bench);
    if ('code' in found) return found;
  }
  const today = groupDay(tools);
  const stretch = stretchFor(wish, bench, today);
  const listed = listFor(wish, bench, today, stretch);
  const shown = listed.due;
  const isOld = shown.some(({ daysLeft }) => daysLeft < 0);
  const [first] = shown;
  return {
    title: titleOf(wish, stretch, today),
    blocks: [
      ...(shown.length > 0 ? [{ kind: 'list', items: shown.map(noted) } as const] : nothing(listed, wish)),
      ...remarks(listed, wish, bench),
    ],
    figures: {
      due: dueFigures(shown),
      count: listed.count,
      from: stretch.from ?? null,
      until: stretch.until === farOff ? null : stretch.until,
      days: stretch.until === farOff ? null : daysBetween(today, stretch.until),
      out_of_date_before: listed.older,
    },
    warnings: isOld ? [outOfDate, localRules] : [],
    ...(first ? { next: dueSteps(first) } : {}),
  };
};
