import { fork } from 'node:child_process';
import { once } from 'node:events';
import { setTimeout as sleep } from 'node:timers/promises';
import { closePictures } from '../../bot/pictures/picture.ts';
import { warmUp } from '../../bot/warm.ts';
import { now, testHouse } from '../helpers/house.ts';
import { type HoldUp, longestHoldUp } from './hold-up.ts';
import { median } from './measure.ts';
import { below, type Found, type Row, time } from './report.ts';

/** One answer's hold-ups in a process of its own. */
interface Held {
  readonly first: HoldUp;
  readonly later: readonly HoldUp[];
  readonly topic: string | null;
}

const prices =
  'olive oil 9 per kg, sunflower oil 4 per kg, beeswax 15 per kg, candelilla 20 per kg, shea 14 per kg, almond oil 11 per kg';
const laterAnswers = 5;
/** For the drawing thread's fonts. */
const settleMs = 500;

/** Says one message in a fresh process that has warmed up as the group chat does, then again some times. */
export const answerOnce = async (text: string): Promise<void> => {
  const house = await testHouse();
  await warmUp(now);
  await sleep(settleMs);
  await house.say(prices, { channel: 'stall' });
  let topic: string | null = null;
  const held = () =>
    longestHoldUp(async () => {
      const reply = await house.say(text);
      topic = 'answer' in reply ? reply.topic : null;
    });
  const first = await held();
  const later: HoldUp[] = [];
  for (let at = 0; at < laterAnswers; at++) later.push(await held());
  await closePictures();
  process.send?.({ first, later, topic } satisfies Held, () => process.disconnect());
};

const inFreshProcess = async (text: string): Promise<Held> => {
  const child = fork(process.argv[1] ?? '', ['answer-once', text]);
  let held: Held | undefined;
  child.on('message', (message) => {
    held = message as Held;
  });
  await once(child, 'exit');
  if (!held) throw new Error(`no figures for "${text}"`);
  return held;
};

const asked: readonly (readonly [what: string, topic: string, say: string])[] = [
  ['scale (to compare)', 'scale', 'scale Fernlea hand balm to 24 tins of 15 ml'],
  [
    'design',
    'design',
    'design a vegan lip balm stick that survives 38C, with shea and mango butter, no nuts',
  ],
  [
    'design that has to relax a wish',
    'design',
    'design a vegan tin that survives 46C, no wax, keeps 24 months',
  ],
  ['cheaper recipe', 'substitute', 'cheapest variant of Fernlea hand balm'],
  ['swap with its chart', 'substitute', 'swap beeswax for candelilla in Fernlea hand balm'],
  ['melt with its chart', 'melt', 'when does Fernlea hand balm melt'],
  ['label with its sheet', 'label', 'label for Fernlea hand balm'],
];

const processes = 3;
const mostMs = 50;

const rowOf = (measure: string, held: readonly HoldUp[]): Row => {
  const processor = held.map((one) => one.processor);
  return {
    measure: `main thread held up, ${measure}`,
    median: time(median(processor)),
    p99: time(Math.max(...processor)),
    baseline: `by the clock ${time(median(held.map((one) => one.clock)))}`,
    aim: below(median(processor), mostMs, '< 50 ms'),
  };
};

/** How long the first answer of its kind in a process, and later ones, keep everybody else waiting. */
export const firstAnswer = async (): Promise<Found> => {
  const rows: Row[] = [];
  const faults: string[] = [];
  for (const [what, topic, say] of asked) {
    const all: Held[] = [];
    for (let at = 0; at < processes; at++) all.push(await inFreshProcess(say));
    if (all.some((held) => held.topic !== topic)) faults.push(`"${say}" was not answered`);
    rows.push(
      rowOf(
        `first ${what}`,
        all.map(({ first }) => first),
      ),
      rowOf(
        `later ${what}`,
        all.flatMap(({ later }) => later),
      ),
    );
  }
  return { rows, faults };
};
