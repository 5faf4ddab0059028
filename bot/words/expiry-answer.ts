import { lotKey } from '../../core/bench/codes.ts';
import { plusDays } from '../../core/bench/days.ts';
import { dueBy } from '../../core/bench/due.ts';
import type { BenchEvent } from '../../core/bench/events.ts';
import { type Bench, tinsLeft } from '../../core/bench/state.ts';
import { benchOf } from '../../core/book.ts';
import { leadOf } from '../../core/remind/next.ts';
import { fail, ok } from '../../core/result.ts';
import type { Answer, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { ExpiryWish } from '../topics/expiry.ts';
import { dayText } from './day-text.ts';
import { findEither } from './find-lot.ts';
import { groupDay } from './group-day.ts';
import { plain } from './numbers.ts';
import { by } from './recipe-table.ts';
import { shortName } from './warnings.ts';

const usualLead = 30;

interface Item {
  readonly kind: 'lot' | 'batch';
  readonly key: string;
  readonly lot: string;
  readonly name: string;
  readonly left: number;
  readonly container?: string;
  readonly bestBefore?: string | undefined;
}

const itemOf = (bench: Bench, code: string): Item | Trouble => {
  const key = lotKey(code);
  const batch = bench.batches.get(key);
  if (batch) {
    const { lot, name, container, bestBefore } = batch;
    return { kind: 'batch', key, lot, name, container, left: tinsLeft(batch), bestBefore };
  }
  const lot = bench.lots.get(key);
  if (lot)
    return {
      kind: 'lot',
      key,
      lot: lot.lot,
      name: shortName(lot.ingredient),
      left: lot.leftG,
      bestBefore: lot.bestBefore,
    };
  const found = findEither(code, bench);
  return 'code' in found ? found : itemOf(bench, found.lot);
};

const codesFor = (wish: ExpiryWish, bench: Bench, today: string): readonly string[] => {
  if (!wish.all) return wish.lots ?? [];
  const lead = bench.reminder ? leadOf(bench.reminder) : usualLead;
  return dueBy(bench, today, plusDays(today, lead)).map(({ lot }) => lot);
};

/** Used up means that nothing is left: the book says so too, and not only the list. */
const emptied = ({ kind, lot, left }: Item, on: string): BenchEvent[] => {
  if (left <= 0) return [];
  if (kind === 'lot') return [{ kind: 'stock-taken', draws: [{ lot, grams: left }], how: 'used', on }];
  return [{ kind: 'tins-gone', lot, count: left, how: 'used', on }];
};

const eventsFor = (
  item: Item,
  answer: NonNullable<ExpiryWish['answer']>,
  until: string,
  on: string,
): BenchEvent[] => [
  ...(answer === 'used-up' ? emptied(item, on) : []),
  {
    kind: 'due-answered',
    item: `${item.kind}:${item.key}`,
    answer,
    ...(answer === 'again' ? { until } : {}),
    ...(item.bestBefore === undefined ? {} : { bestBefore: item.bestBefore }),
  },
];

const leftText = ({ kind, left, container = 'container' }: Item): string =>
  kind === 'lot' ? `${plain(left, 1)} g` : `${left} ${left === 1 ? container : `${container}s`}`;

const lineOf = (item: Item, answer: ExpiryWish['answer']): string => {
  const name = item.kind === 'lot' ? `${item.name}, lot ${item.lot}` : `${item.name}, ${item.lot}`;
  if (answer !== 'used-up') return item.left > 0 ? `${name}: ${leftText(item)} left` : name;
  return item.left > 0 ? `${name}: ${leftText(item)} taken out as used` : `${name}: nothing was left`;
};

const titles = (answer: ExpiryWish['answer'], until: string, items: readonly Item[]): string => {
  const which = items.length === 1 ? (items[0]?.lot ?? '') : `${items.length} of them`;
  if (answer === 'again') return `${which}: I ask again on ${dayText(until)}`;
  return answer === 'used-up' ? `${which}: used up` : `${which}: done`;
};

const remarkOf = (answer: ExpiryWish['answer'], items: readonly Item[]): string[] => {
  const some = items.some(({ left }) => left > 0);
  return answer === 'done' && some ? ['I do not ask about it again. What is left stays in the book.'] : [];
};

const nothingDue: Trouble = {
  code: 'not-found',
  text: 'Nothing is due just now. Ask "what expires this month" to see what comes.',
};

/** Records an answer to something due: done, used up, or asked about again. All of it, or nothing. */
export const answerDueItems = async (wish: ExpiryWish, tools: Tools): Promise<Answer | Trouble> => {
  const today = groupDay(tools);
  const { answer = 'done', until = plusDays(today, 7) } = wish;
  const changed = await tools.book.change<readonly Item[], Trouble>((state) => {
    const bench = benchOf(state);
    const items: Item[] = [];
    for (const code of codesFor(wish, bench, today)) {
      const item = itemOf(bench, code);
      if ('code' in item) return fail(item);
      items.push(item);
    }
    if (items.length === 0) return fail(nothingDue);
    return ok({ events: items.flatMap((item) => eventsFor(item, answer, until, today)), value: items });
  }, by(tools));
  if (!changed.ok) return changed.problem;
  const items = changed.value.value;
  return {
    title: titles(answer, until, items),
    blocks: [
      { kind: 'list', items: items.slice(0, 12).map((item) => lineOf(item, answer)) },
      ...remarkOf(answer, items).map((text) => ({ kind: 'text', text }) as const),
    ],
    figures: {
      answer,
      answered: items.map(({ kind, lot }) => ({ kind, lot })),
      until: answer === 'again' ? until : null,
    },
    warnings: [],
  };
};
