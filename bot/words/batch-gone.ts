import { lotKey } from '../../core/bench/codes.ts';
import type { BenchEvent } from '../../core/bench/events.ts';
import { afterBenchEvent } from '../../core/bench/fold.ts';
import { type Moved, type Place, type ReturnProblem, returnsOf } from '../../core/bench/returns.ts';
import { type Batch, type Bench, tinsLeft, tinsOut } from '../../core/bench/state.ts';
import { type BookState, benchOf } from '../../core/book.ts';
import { defined } from '../../core/defined.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Answer, Trouble, Warning } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { BatchWish } from '../topics/batch.ts';
import { batchFigures } from './batch-figures.ts';
import { countText, text } from './batch-text.ts';
import { dayText, dayTrouble, todayFor } from './bench-dates.ts';
import { toldInstead } from './bench-instead.ts';
import { writtenDown } from './bench-twice.ts';
import { findBatch } from './find-lot.ts';
import { by } from './recipe-table.ts';
import { localRules } from './warnings.ts';

type Part = NonNullable<BatchWish['parts']>[number];
type How = NonNullable<Part['how']>;
type Decision = Result<{ events: readonly BenchEvent[]; value: readonly Done[] }, Trouble>;

const tooMany = (batch: Batch, count: number, back: boolean): Trouble => {
  const have = back ? tinsOut(batch) : tinsLeft(batch);
  const where = back ? 'out of the house' : 'left';
  const are = have === 1 ? 'is' : 'are';
  const none = back
    ? `No ${batch.container} of ${batch.lot} is out of the house`
    : `No ${batch.container} of ${batch.lot} is left`;
  return {
    code: 'out-of-range',
    text: `${have <= 0 ? none : `Only ${countText(have, batch.container)} of ${batch.lot} ${are} ${where}`}, so not ${count}. Nothing was written down. If the count was wrong: "correct ${batch.lot}: it was ${batch.count + count - Math.max(0, have)} ${batch.container}s, counted again".`,
  };
};

/** What was written down of one batch: so many, which way, where to or from, on which day. */
interface Done extends Moved {
  readonly batch: Batch;
  readonly how: How;
  readonly on: string;
}

const eventFor = ({ batch, how, on, count, to }: Done): BenchEvent =>
  how === 'back'
    ? { kind: 'tins-back', lot: batch.lot, count, on, ...defined({ from: to }) }
    : { kind: 'tins-gone', lot: batch.lot, count, how, on, ...defined({ to }) };

const gone = (batch: Batch, parts: readonly Part[]): Result<readonly Moved[], Trouble> => {
  let left = tinsLeft(batch);
  const list: Moved[] = [];
  for (const { count, all, to } of parts) {
    const wanted = all ? left : (count ?? 1);
    if (wanted > left || wanted < 1) return fail(tooMany(batch, Math.max(1, wanted), false));
    left -= wanted;
    list.push({ count: wanted, ...defined({ to }) });
  }
  return ok(list);
};

const placeText = ({ to, count }: Place): string => `${to ?? 'a place not noted'} (${count})`;

const whichPlace = (
  batch: Batch,
  { said, places }: Extract<ReturnProblem, { code: 'which-place' }>,
): Trouble => {
  const named = places.find(({ to }) => to !== undefined)?.to ?? 'the fair';
  const why =
    said === undefined ? 'From which place' : `The book does not have so many at ${said}. From which place`;
  return {
    code: 'missing',
    text: `${why} did they come back? Of ${batch.lot} there are out: ${places.map(placeText).join(', ')}. Nothing was written down. Say it with the place: "2 ${batch.container}s of ${batch.lot} came back from ${named}".`,
  };
};

const back = (batch: Batch, parts: readonly Part[]): Result<readonly Moved[], Trouble> => {
  const found = returnsOf(batch, parts);
  if (found.ok) return found;
  const { problem } = found;
  return fail(problem.code === 'too-many' ? tooMany(batch, problem.count, true) : whichPlace(batch, problem));
};

/** Parts that follow one another and are of one batch, one way and one day. */
interface Stretch {
  readonly lot: string;
  readonly how: How;
  readonly on: string;
  readonly parts: Part[];
}

const stretchesOf = (wish: BatchWish, on: string): readonly Stretch[] => {
  const way: How = wish.action === 'back' ? 'back' : (wish.how ?? 'given');
  const list: Stretch[] = [];
  for (const part of wish.parts ?? []) {
    const own = { lot: part.lot ?? wish.lot ?? '', how: part.how ?? way, on: part.on ?? on };
    const last = list.at(-1);
    const same = last && last.lot === own.lot && last.how === own.how && last.on === own.on;
    if (same) last.parts.push(part);
    else list.push({ ...own, parts: [part] });
  }
  return list;
};

const doneIn = (bench: Bench, { lot, how, on, parts }: Stretch): Result<readonly Done[], Trouble> => {
  const batch = findBatch(lot, bench);
  if ('code' in batch) return fail(batch);
  if (on < batch.madeOn)
    return fail({
      code: 'out-of-range',
      text: `${batch.lot} was poured on ${dayText(batch.madeOn)}, after ${dayText(on)}. Which day was it?`,
    });
  const moved = (how === 'back' ? back : gone)(batch, parts);
  return moved.ok ? ok(moved.value.map((each) => ({ ...each, batch, how, on }))) : moved;
};

const decide = (start: Bench, wish: BatchWish, on: string): Decision => {
  let bench = start;
  const all: Done[] = [];
  for (const stretch of stretchesOf(wish, on)) {
    const done = doneIn(bench, stretch);
    if (!done.ok) return done;
    for (const each of done.value) bench = afterBenchEvent(bench, eventFor(each), 0);
    all.push(...done.value);
  }
  return ok({ events: all.map(eventFor), value: all });
};

const verbs = {
  given: 'Given out',
  sold: 'Sold',
  used: 'Used up',
  wasted: 'Thrown away',
  kept: 'Kept as a sample',
} as const;

const saidOf = ({ batch, how, count, to }: Done, several: boolean): string => {
  const verb = how === 'back' ? 'Back' : verbs[how];
  const where =
    to === undefined ? '' : `, ${how === 'back' ? 'from' : how === 'sold' ? 'at or to' : 'to'} ${to}`;
  const of = several ? ` of ${batch.lot}` : '';
  return `${verb}: ${countText(count, batch.container)}${of}${where}.`;
};

const keptText =
  'Keep it sealed, labelled and dark until a year after its best before (common practice). Open it only when a complaint comes.';

const pastDate = ({ batch, how, on }: Done): Warning[] =>
  batch.bestBefore < on && (how === 'given' || how === 'sold')
    ? [
        {
          code: 'past-date',
          text: `${batch.lot} was best before ${dayText(batch.bestBefore)}: ask for it back.`,
        },
      ]
    : [];

const leftText = (batch: Batch, several: boolean): string => {
  const left = tinsLeft(batch);
  const of = several ? ` of ${batch.lot}` : '';
  return `${left === 0 ? 'None' : left} of ${batch.count}${of} left in the house.`;
};

const once = (warnings: readonly Warning[]): readonly Warning[] =>
  warnings.filter((each, at) => warnings.findIndex(({ text: said }) => said === each.text) === at);

const answerFor = (done: readonly Done[], state: BookState): Answer => {
  const codes = [...new Set(done.map(({ batch }) => lotKey(batch.lot)))];
  const batches = codes.map((code) => benchOf(state).batches.get(code) as Batch);
  const [batch] = batches as [Batch];
  const several = batches.length > 1;
  const days = [...new Set(done.map(({ on }) => dayText(on)))];
  return {
    title: several ? batches.map(({ lot }) => lot).join(', ') : `${batch.lot}: ${batch.name}`,
    blocks: [
      ...done.map((each) => text(saidOf(each, several))),
      text(
        `${batches.map((each) => leftText(each, several)).join(' ')} Written down for ${days.join(' and ')}.`,
      ),
      ...(done.some(({ how }) => how === 'kept') ? [text(keptText)] : []),
    ],
    figures: {
      ...batchFigures(batch, state),
      ...(several ? { batches: batches.map((each) => batchFigures(each, state)) } : {}),
    },
    warnings: [...once(done.flatMap(pastDate)), localRules],
    next: batches.slice(0, 3).map(({ lot }) => ({ label: `Show ${lot}`, say: `batch ${lot}` })),
  };
};

/** Writes down containers that left the house or came back: all of the places named, or none. */
export const recordGone = async (wish: BatchWish, tools: Tools): Promise<Answer | Trouble> => {
  const today = todayFor(tools);
  const on = wish.on ?? today;
  const days = [on, ...(wish.parts ?? []).flatMap((part) => part.on ?? [])];
  const wrongDay = days.map((day) => dayTrouble(day, today)).find(Boolean);
  if (wrongDay) return wrongDay;
  const { again, instead, ...same } = wish;
  const write = (state: BookState): Decision => decide(benchOf(state), wish, on);
  return writtenDown(
    { tools, what: 'time', key: same, again: again ?? instead !== undefined },
    () =>
      instead
        ? toldInstead(
            { kinds: ['tins-gone', 'tins-back'], lot: instead === true ? wish.lot : instead },
            tools,
            write,
          )
        : tools.book.change(write, by(tools)),
    ({ value, state }) => answerFor(value, state),
  );
};
