import { type Asked, arrivals as arriving, roundTrips } from '../helpers/chat-stand-in/round-trips.ts';
import { StandIn } from '../helpers/chat-stand-in/stand-in.ts';
import { inFolder } from './books.ts';
import { startBot } from './bot-process.ts';
import { checkedAlike, commands } from './chat-commands.ts';
import { median, quantile } from './measure.ts';
import { below, type Found, type Row, rate, ratio, time } from './report.ts';

const perSecond = 200;
const blocks = 4;
const blockSeconds = 5;
const warmUps = 4000;
const aimMs = 20;

/**
 * Open loop: 200 a second, whether answers come or not, timed from the instant each was due to be asked until the
 * platform has the acknowledgement. Echo and /scale in turn, so that whatever else the machine does meets both.
 */
export const arrivals = (): Promise<Found> =>
  inFolder(async (folder) => {
    const standIn = await StandIn.start();
    const bot = await startBot(folder, standIn);
    for (const command of [commands.echo, commands.scale])
      await roundTrips(standIn, { n: warmUps, concurrency: 8, command: command as Asked });
    const unlike = await checkedAlike(standIn);
    const taken: Record<'echo' | 'scale', { ms: number[]; cpuMs: number }> = {
      echo: { ms: [], cpuMs: 0 },
      scale: { ms: [], cpuMs: 0 },
    };
    for (let at = 0; at < blocks; at += 1) {
      for (const name of ['echo', 'scale'] as const) {
        const before = await bot.usage();
        const n = perSecond * blockSeconds;
        taken[name].ms.push(...(await arriving(standIn, { n, perSecond, command: commands[name] })));
        taken[name].cpuMs += (await bot.usage()).cpuMs - before.cpuMs;
      }
    }
    const { faults } = await bot.usage();
    await bot.stop();
    await standIn.close();
    const p99 = (name: 'echo' | 'scale') => quantile(taken[name].ms, 0.99);
    const row = (measure: string, name: 'echo' | 'scale'): Row => ({
      measure,
      median: time(median(taken[name].ms)),
      p99: time(p99(name)),
      perSecond: rate(perSecond),
      baseline: `busy ${Math.round((100 * taken[name].cpuMs) / (blocks * blockSeconds * 1000))} % of a core, longest ${time(quantile(taken[name].ms, 1))}`,
    });
    return {
      rows: [
        row('acknowledged, 200 a second: /echo of as long a text', 'echo'),
        {
          ...row('… /scale, each for another number of tins', 'scale'),
          ratio: ratio(p99('scale'), p99('echo')),
          aim: below(p99('scale'), aimMs, 'p99 < 20 ms'),
        },
      ],
      faults: [...unlike, ...standIn.problems, ...(faults > 0 ? [`${faults} faults of the bot`] : [])],
    };
  });
