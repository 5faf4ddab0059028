import { type Asked, type RoundTripSetup, roundTrips } from '../helpers/chat-stand-in/round-trips.ts';
import { StandIn } from '../helpers/chat-stand-in/stand-in.ts';
import { inFolder } from './books.ts';
import { type BotProcess, startBot } from './bot-process.ts';
import { checkedAlike, commands } from './chat-commands.ts';
import { median, quantile } from './measure.ts';
import { type Found, type Row, rate, ratio, time } from './report.ts';

const blocks = 16;
const each = 150;
/** The client's own path through the commands is compiled only after some thousands. */
const warmUps = 4000;

interface Ran {
  readonly latencies: number[];
  readonly elapsed: number[];
  readonly cpuMs: number[];
}

type Name = keyof typeof commands;

const block = async (
  standIn: StandIn,
  bot: BotProcess,
  run: Omit<RoundTripSetup, 'n'>,
  into: Ran,
): Promise<void> => {
  const before = await bot.usage();
  const { latencies, elapsedMs } = await roundTrips(standIn, { n: each, ...run });
  const after = await bot.usage();
  into.latencies.push(...latencies);
  into.elapsed.push(elapsedMs);
  into.cpuMs.push((after.cpuMs - before.cpuMs) / each);
};

type Compared = Readonly<Record<Name, Ran>>;

const ran = (): Ran => ({ latencies: [], elapsed: [], cpuMs: [] });

/** Blocks of the commands in turn, same client, same stand-in, same number under way. */
const compare = async (standIn: StandIn, bot: BotProcess, concurrency: number): Promise<Compared> => {
  const all: Compared = { echo: ran(), ready: ran(), again: ran(), scale: ran() };
  for (let at = 0; at < blocks; at++) {
    for (const name of Object.keys(all) as Name[])
      await block(standIn, bot, { concurrency, command: commands[name] }, all[name]);
  }
  return all;
};

const rows = ({ echo, ...others }: Compared, concurrency: number): Row[] => {
  const plain = (measure: string, { latencies, elapsed, cpuMs }: Ran): Row => ({
    measure,
    median: time(median(latencies)),
    p99: time(quantile(latencies, 0.99)),
    perSecond: rate((1000 * each) / median(elapsed)),
    baseline: `CPU of the bot ${time(median(cpuMs))}, ${ratio(median(cpuMs), median(echo.cpuMs))} × echo`,
  });
  const compared = (measure: string, run: Ran): Row => {
    const throughput = median(echo.elapsed) / median(run.elapsed);
    return { ...plain(measure, run), ratio: throughput.toFixed(2) };
  };
  const scale = compared('… /scale, each for another number of tins', others.scale);
  return [
    plain(`${concurrency} at a time: /echo of as long a text`, echo),
    { ...scale, aim: { text: '>= 0.7 of echo', met: Number(scale.ratio) >= 0.7 } },
    compared('… /scale, the same again and again', others.again),
    compared('… its answer, made beforehand', others.ready),
  ];
};

/**
 * Closed loop: round trips through the real client, gateway event in, HTTP answer out, a few always under way. The stand-in
 * runs in this process. The baseline is a command of the same client that does as many calls with as long a text.
 */
export const chat = (): Promise<Found> =>
  inFolder(async (folder) => {
    const standIn = await StandIn.start();
    const bot = await startBot(folder, standIn);
    for (const command of Object.values(commands))
      await roundTrips(standIn, { n: warmUps, concurrency: 8, command: command as Asked });
    const unlike = await checkedAlike(standIn);
    const one = rows(await compare(standIn, bot, 1), 1);
    const many = rows(await compare(standIn, bot, 8), 8);
    const { faults } = await bot.usage();
    await bot.stop();
    await standIn.close();
    return {
      rows: [...one, ...many],
      faults: [...unlike, ...standIn.problems, ...(faults > 0 ? [`${faults} faults of the bot`] : [])],
    };
  });
