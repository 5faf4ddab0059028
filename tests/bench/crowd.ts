import { serverOf } from '../helpers/chat-stand-in/crowd.ts';
import { StandIn } from '../helpers/chat-stand-in/stand-in.ts';
import { inFolder, withStore, writeBook } from './books.ts';
import { below, type Found, megabytes, type Row, time } from './report.ts';
import { type Held, type Served, serve } from './served.ts';

const known = 10_000;
const active = 1000;
const atOnce = 8;
const aimBytes = 250 * 1024 * 1024;

/** A book of ten recipes for everybody, a hundred groups at a time so that they share the flushes. */
const fill = (folder: string): Promise<void> =>
  withStore(folder, async (store) => {
    for (let first = 0; first < known; first += 100) {
      const groups = Array.from({ length: 100 }, (_, more) => `guild:${serverOf(first + more).guild}`);
      await Promise.all(
        groups.map((group) => writeBook(store, group, { events: 12, recipes: 10, snapshotAt: 0 })),
      );
    }
  });

const scale = { name: 'scale', options: { recipe: 'Hall balm 3', tins: 24, size: '15 ml' } } as const;
const show = { name: 'recipe', options: { do: 'show', name: 'Hall balm 2' } } as const;
/** Draws a picture, on a thread of its own. */
const melt = { name: 'melt', options: { recipe: 'Hall balm 4' } } as const;

/** One group in ten asks for a picture too. */
const questionsOf = (at: number) => (at % 10 === 0 ? [scale, show, melt] : [scale, show]);

/** However long it takes: what is measured is memory. */
const patienceMs = 60_000;

/** One in ten of the groups that are known, spread over all of them, asks by a member of its own. */
const askAll = async (standIn: StandIn): Promise<void> => {
  let next = 0;
  const worker = async (): Promise<void> => {
    while (next < active) {
      const at = next;
      next += 1;
      const place = {
        server: serverOf(at * (known / active)),
        member: { id: String(920_000_000_000_000_000n + BigInt(at)), name: `maker-${at}` },
      };
      for (const { name, options } of questionsOf(at)) {
        const { text } = await standIn.slash(name, options, place);
        if (!text.includes('Hall balm')) throw new Error(`/${name}: ${text.slice(0, 200)}`);
      }
    }
  };
  await Promise.all(Array.from({ length: atOnce }, worker));
};

const shown = ({ own, files, store, peak }: Held): string =>
  `its own ${megabytes(own)}, pages of files ${megabytes(files)} (the store's ${megabytes(store)}), most ever ${megabytes(peak)}`;

const measured = async (bot: Served, standIn: StandIn, startedMs: number): Promise<Row[]> => {
  const idle = await bot.memory();
  await askAll(standIn);
  const busy = await bot.memory();
  const { heapUsed, external } = await bot.probe('collected');
  return [
    {
      measure: '10,000 servers known, none asked yet: resident',
      median: megabytes(idle.resident),
      baseline: `${shown(idle)}; in the chat after ${time(startedMs)}`,
    },
    {
      measure: '… and 1,000 of them active: resident',
      median: megabytes(busy.resident),
      baseline: shown(busy),
      aim: below(busy.resident, aimBytes, '< 250 MB'),
    },
    {
      measure: "… without pages of the store's file",
      median: megabytes(busy.resident - busy.store),
      baseline: 'the system takes them back when it needs them',
    },
    {
      measure: '… what the process holds itself',
      median: megabytes(busy.own),
      baseline: `heap after a full collection ${megabytes(heapUsed)}, outside it ${megabytes(external)}`,
      aim: below(busy.own, aimBytes, '< 250 MB'),
    },
  ];
};

/** Resident memory of the bot as `npm start` runs it, in 10,000 servers of which 1,000 ask. */
export const crowd = (): Promise<Found> =>
  inFolder(async (folder) => {
    await fill(folder);
    const standIn = await StandIn.start({ crowd: known, acknowledgeWithinMs: patienceMs, patienceMs });
    const start = performance.now();
    const bot = await serve(folder, standIn, 1000);
    const rows = await measured(bot, standIn, performance.now() - start);
    const code = await bot.stop();
    await standIn.close();
    return {
      rows,
      faults: [...standIn.problems, ...bot.complaints, ...(code === 0 ? [] : [`ended with ${code}`])],
    };
  });
