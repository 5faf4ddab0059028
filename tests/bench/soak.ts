import { setTimeout as sleep } from 'node:timers/promises';
import type { Filled, Place } from '../helpers/chat-stand-in/asked.ts';
import { serverOf } from '../helpers/chat-stand-in/crowd.ts';
import { StandIn } from '../helpers/chat-stand-in/stand-in.ts';
import { inFolder, withStore, writeBook } from './books.ts';
import { drift, judged, type Sample } from './drift.ts';
import { type Served, serve } from './served.ts';

// The bot as `npm start` runs it, under a steady load of everything that members do, for as long as is said. It is asked for
// its memory every few seconds, right after a full collection; the line through these must not rise.

const servers = 200;
/** So many that what is kept of each for a while is full before the measuring begins. */
const members = 600;
const workers = 4;
const perSecond = 40;
const sampleMs = 5000;
/** However slow the machine: what is measured is memory, and that every answer comes. */
const patienceMs = 60_000;

interface Asking {
  readonly name: string;
  readonly options: Filled;
}

const sizes = [10, 15, 20, 30, 50];

/** What is asked in turn; a save in forty, as books grow slowly. */
const asking = (at: number): Asking => {
  const recipe = `Hall balm ${at % 10}`;
  if (at % 40 === 0)
    return {
      name: 'recipe',
      options: { do: 'save', name: recipe, lines: '20% beeswax, 30% shea butter, 50% olive oil' },
    };
  const kinds: readonly Asking[] = [
    { name: 'scale', options: { recipe, tins: 1 + (at % 97), size: `${sizes[at % sizes.length]} ml` } },
    { name: 'recipe', options: { do: 'show', name: recipe } },
    { name: 'scale', options: { recipe, total: `${100 + (at % 900)} g` } },
    { name: 'convert', options: { amount: `${1 + (at % 50)} oz`, to: 'g' } },
    { name: 'help', options: {} },
  ];
  return kinds[at % kinds.length] as Asking;
};

/** A member of one of the servers; one in a hundred was never there before. */
const placeOf = (at: number): Place => {
  const who = at % 100 === 0 ? members + at : (at * 7) % members;
  const member = { id: String(920_000_000_000_000_000n + BigInt(who)), name: `maker-${who}` };
  return { server: serverOf(who % servers), member };
};

const askOnce = async (standIn: StandIn, at: number): Promise<void> => {
  const place = placeOf(at);
  // Suggestions, and words in a channel and directly, between the commands.
  if (at % 10 === 3) await standIn.autocomplete('scale', 'recipe', 'hall', place);
  else if (at % 10 === 6) await standIn.mention(`${1 + (at % 30)} oz in g`, place);
  else if (at % 10 === 9)
    await standIn.direct(`scale 20 g beeswax, 80 g olive oil to ${1 + (at % 60)} tins of 15 ml`, place);
  else {
    const { name, options } = asking(at);
    await standIn.slash(name, options, place);
  }
};

/** A few at a time, each so often that together they keep the rate; a slow machine gets less and no avalanche. */
const load = (
  standIn: StandIn,
  until: () => boolean,
): { readonly asked: () => number; readonly done: Promise<void> } => {
  let at = 0;
  const worker = async (): Promise<void> => {
    while (!until()) {
      const due = performance.now() + (1000 * workers) / perSecond;
      at += 1;
      await askOnce(standIn, at);
      await sleep(Math.max(0, due - performance.now()));
    }
  };
  return {
    asked: () => at,
    done: Promise.all(Array.from({ length: workers }, worker)).then(() => undefined),
  };
};

const sampled = async (bot: Served, standIn: StandIn, minutes: number): Promise<Sample[]> => {
  const start = performance.now();
  const minute = (): number => (performance.now() - start) / 60_000;
  const { asked, done } = load(standIn, () => minute() >= minutes);
  const samples: Sample[] = [];
  const watching = async (): Promise<void> => {
    while (minute() < minutes) {
      await sleep(sampleMs);
      const { heapUsed, rss } = await bot.probe('collected');
      samples.push({ minute: minute(), asked: asked(), heapUsed, rss });
    }
  };
  await Promise.all([done, watching()]);
  return samples;
};

const filled = (folder: string): Promise<void> =>
  withStore(folder, async (store) => {
    const groups = Array.from({ length: servers }, (_, at) => `guild:${serverOf(at).guild}`);
    await Promise.all(
      groups.map((group) => writeBook(store, group, { events: 12, recipes: 10, snapshotAt: 0 })),
    );
  });

/** Runs it for so many minutes and prints what was measured; the exit code says whether memory stayed flat and nothing failed. */
export const soak = (minutes: number): Promise<void> =>
  inFolder(async (folder) => {
    await filled(folder);
    const standIn = await StandIn.start({ crowd: servers, acknowledgeWithinMs: patienceMs, patienceMs });
    const bot = await serve(folder, standIn, 10_000);
    const samples = await sampled(bot, standIn, minutes);
    const code = await bot.stop();
    await standIn.close();
    const problems = [...standIn.problems, ...bot.complaints, ...(code === 0 ? [] : [`ended with ${code}`])];
    const { lines, flat } = judged(drift(samples));
    for (const line of lines) console.log(line);
    for (const problem of problems.slice(0, 20)) console.log(`FAULT ${problem}`);
    if (!flat || problems.length > 0) process.exitCode = 1;
  });
