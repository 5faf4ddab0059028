import { fork } from 'node:child_process';
import { once } from 'node:events';
import { StandIn } from '../helpers/chat-stand-in/stand-in.ts';
import { inFolder, withStore, writeBook } from './books.ts';
import { startBot } from './bot-process.ts';
import { groups } from './open-many.ts';
import { below, type Found, megabytes, ratio } from './report.ts';

const aimBytes = 150 * 1024 * 1024;

const inProcess = async (...args: string[]): Promise<number> => {
  const child = fork(process.argv[1] ?? '', args);
  const [rss] = await once(child, 'message');
  await once(child, 'exit');
  return rss;
};

/** Resident memory with 1,000 groups open, ten recipes in each. */
export const memory = (): Promise<Found> =>
  inFolder(async (folder) => {
    await withStore(folder, async (store) => {
      for (const group of groups) await writeBook(store, group, { events: 12, recipes: 10, snapshotAt: 0 });
    });
    const bare = await inProcess('open-none');
    const plain = await inProcess('open-many', folder);
    const standIn = await StandIn.start();
    const bot = await startBot(folder, standIn);
    const { rss: chatting } = await bot.usage(groups);
    await bot.stop();
    await standIn.close();
    const row = (measure: string, rss: number) => ({
      measure,
      median: megabytes(rss),
      ratio: ratio(rss, bare),
      baseline: 'bare Node',
      aim: below(rss, aimBytes, '< 150 MB'),
    });
    return {
      rows: [
        { measure: 'resident memory: bare Node', median: megabytes(bare) },
        row('resident memory: 1,000 groups open', plain),
        row('… with the chat client connected', chatting),
      ],
      faults: standIn.problems,
    };
  });
