import fc from 'fast-check';
import { jsonLine } from '../../bot/render/json.ts';
import { type TestHouse, testHouse } from '../helpers/house.ts';
import { mutated } from '../helpers/mutations.ts';
import { phraseTables } from '../helpers/phrases.ts';
import { median, timed } from './measure.ts';
import { below, type Found, megabytes, ratio, spread, time } from './report.ts';

const count = 20_000;
const aimMs = 100;

const heap = (): number => {
  globalThis.gc?.();
  return process.memoryUsage().heapUsed;
};

interface Heard {
  readonly times: number[];
  readonly slowest: { readonly at: number; readonly ms: number };
  readonly answered: number;
  readonly bad: readonly string[];
  readonly grownBytes: number;
}

/** All of them, each with its one JSON line, and the heap's growth once a tenth has warmed everything up. */
const hearAll = async (house: TestHouse, messages: readonly string[]): Promise<Heard> => {
  const times: number[] = [];
  const bad: string[] = [];
  let answered = 0;
  let slowest = { at: 0, ms: 0 };
  let warmHeap = 0;
  for (const [at, message] of messages.entries()) {
    const start = performance.now();
    const reply = await house.say(message);
    const line = jsonLine(reply, []);
    const ms = performance.now() - start;
    times.push(ms);
    if (ms > slowest.ms) slowest = { at, ms };
    if ('answer' in reply) answered += 1;
    if (house.faults.length > bad.length)
      bad.push(`message ${at} ${JSON.stringify(message)}: ${house.faults.at(-1)}`);
    JSON.parse(line);
    if (at + 1 === messages.length / 10) warmHeap = heap();
  }
  return { times, slowest, answered, bad, grownBytes: heap() - warmHeap };
};

/** Messages of the phrase tables with slips in them, one after the other to one group in one process. */
export const mutations = async (): Promise<Found> => {
  const seed = Number(process.env.BENCH_SEED ?? Date.now() % 1_000_000);
  const texts = phraseTables(new URL('../../../tests/phrases/', import.meta.url)).flatMap(({ phrases }) =>
    phrases.flatMap(({ say, before = [] }) => [say, ...before]),
  );
  const messages = fc.sample(mutated(texts), { seed, numRuns: count });
  const house = await testHouse();
  const { times, slowest, answered, bad, grownBytes } = await hearAll(house, messages);
  const worst = messages[slowest.at] ?? '';
  const again = await timed(5, () => house.say(worst));
  const { state } = await house.keeper.open('local');
  return {
    rows: [
      { measure: `${count.toLocaleString('en')} mutated messages + JSON lines`, ...spread(times) },
      {
        measure: '… the slowest of them',
        median: time(slowest.ms),
        ratio: ratio(slowest.ms, median(times)),
        baseline: 'their median',
        aim: below(slowest.ms, aimMs, '< 100 ms'),
      },
      { measure: '… the same one, asked five times more', median: time(median(again)) },
      { measure: '… heap growth over the last nine tenths', median: megabytes(grownBytes) },
    ],
    notes: [
      `Mutations: seed ${seed}; ${answered} answered, ${count - answered} refused, ${bad.length} faults; ` +
        `${state.seq} events and ${Object.keys(state.recipes).length} recipes in the book at the end; ` +
        `the slowest is number ${slowest.at}, ${worst.length} characters.`,
    ],
    faults: bad,
  };
};
