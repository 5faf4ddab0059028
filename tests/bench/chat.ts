import { type RoundTripSetup, roundTrips } from '../helpers/chat-stand-in/round-trips.ts';
import { StandIn } from '../helpers/chat-stand-in/stand-in.ts';
import { inFolder } from './books.ts';
import { asked, type BotProcess, startBot } from './bot-process.ts';
import { median, quantile } from './measure.ts';
import { type Found, type Row, rate, ratio, time } from './report.ts';

const blocks = 16;
const each = 150;
/** The client's own path through both commands is compiled only after some thousands. */
const warmUps = 4000;

type Command = RoundTripSetup['command'];
const echo: Command = { name: 'echo', options: { text: 'scale Fernlea hand balm to 24 tins of 15 ml' } };
const ready: Command = { name: 'ready', options: { text: 'the same answer' } };
const scale: Command = { name: 'scale', options: asked };

interface Ran {
  readonly latencies: number[];
  readonly elapsed: number[];
  readonly cpuMs: number[];
}

const ran = (): Ran => ({ latencies: [], elapsed: [], cpuMs: [] });

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

const row = (measure: string, { latencies, elapsed }: Ran): Row => ({
  measure,
  median: time(median(latencies)),
  p99: time(quantile(latencies, 0.99)),
  perSecond: rate((1000 * each) / median(elapsed)),
});

interface Compared {
  readonly echoed: Ran;
  readonly made: Ran;
  readonly scaled: Ran;
}

/** Blocks of the commands in turn, same client, same stand-in, same number under way. */
const compare = async (standIn: StandIn, bot: BotProcess, concurrency: number): Promise<Compared> => {
  const all = { echoed: ran(), made: ran(), scaled: ran() };
  for (let at = 0; at < blocks; at++) {
    await block(standIn, bot, { concurrency, command: echo }, all.echoed);
    await block(standIn, bot, { concurrency, command: ready }, all.made);
    await block(standIn, bot, { concurrency, command: scale }, all.scaled);
  }
  return all;
};

const rows = ({ echoed, made, scaled }: Compared, concurrency: number): Row[] => {
  const throughput = (run: Ran) => median(echoed.elapsed) / median(run.elapsed);
  const at = `${concurrency} at a time`;
  const base = "the echo's throughput";
  const cpu = (run: Ran) => time(median(run.cpuMs));
  return [
    row(`chat round trip: /echo, ${at}`, echoed),
    {
      ...row('… the scale answer, made beforehand', made),
      ratio: throughput(made).toFixed(2),
      baseline: base,
    },
    {
      ...row(`chat round trip: /scale, ${at}`, scaled),
      ratio: throughput(scaled).toFixed(2),
      baseline: base,
      aim: { text: '>= 0.7', met: throughput(scaled) >= 0.7 },
    },
    {
      measure: '… CPU of the bot for one /scale',
      median: cpu(scaled),
      ratio: ratio(median(scaled.cpuMs), median(echoed.cpuMs)),
      baseline: `/echo ${cpu(echoed)}; made beforehand ${cpu(made)}`,
    },
  ];
};

/** Round trips through the real client: gateway event in, HTTP answer out. The stand-in runs in this process. */
export const chat = (): Promise<Found> =>
  inFolder(async (folder) => {
    const standIn = await StandIn.start();
    const bot = await startBot(folder, standIn);
    for (const command of [echo, ready, scale]) {
      await roundTrips(standIn, { n: warmUps, concurrency: 8, command });
    }
    const shown = await standIn.slash(scale.name, scale.options);
    if (!shown.text.includes('343.8')) throw new Error('the answer is not the gram table');
    const one = rows(await compare(standIn, bot, 1), 1);
    const many = rows(await compare(standIn, bot, 8), 8);
    const { faults } = await bot.usage();
    await bot.stop();
    await standIn.close();
    return {
      rows: [...one, ...many],
      faults: [...standIn.problems, ...(faults > 0 ? [`${faults} faults of the bot`] : [])],
    };
  });
