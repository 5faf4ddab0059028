// One run from beginning to end: start, furnish, drive in bad weather, start the bot anew in the middle, join a server, and look
// through everything that was said.

import { setTimeout as pause } from 'node:timers/promises';
import { Bot } from './bot.ts';
import { type Bounds, Drive } from './drive.ts';
import type { Said } from './ledger.ts';
import { StandIn } from './stand-in.ts';
import { until } from './talk.ts';
import { Chance } from './values.ts';
import { type Plan, Weather } from './weather.ts';

export type Run = {
  readonly standIn: StandIn;
  readonly bot: Bot;
  readonly drive: Drive;
  readonly weather: Weather;
  readonly exits: { readonly code: number | null; readonly ms: number }[];
  readonly exported: { readonly [place: string]: string };
  readonly welcomes: number;
};

export async function started(standIn: StandIn, bot: Bot): Promise<void> {
  const before = standIn.ledger.of('identify');
  bot.start();
  const isUp = await until(
    () =>
      standIn.ledger.of('identify') > before && standIn.gateway.isConnected && standIn.registered.length > 0,
    30_000,
  );
  if (!isUp) throw new Error(`the bot did not come up: ${bot.log.join('\n').slice(0, 2000)}`);
  await pause(400);
}

/** The book of a place, as it is given to whoever asks for it. */
async function exported({
  standIn,
  drive,
}: Pick<Run, 'standIn' | 'drive'>): Promise<{ [place: string]: string }> {
  const books: { [place: string]: string } = {};
  for (const hand of drive.hands()) {
    const place = hand.group?.id ?? hand.person.id;
    if (place in books) continue;
    const said: Said = await drive.steps.talk.say(hand, 'export');
    await until(() => filesOf(said).length > 0, 5000);
    const [file] = filesOf(said);
    books[place] = file ? (standIn.messages.file(file)?.data.toString('utf8') ?? '') : '';
  }
  return books;
}

const filesOf = ({ replies }: Said): string[] =>
  replies.flatMap(({ attachments }) => (attachments as { id: string }[]).map(({ id }) => id));

export async function run(seed: number, bounds: Bounds, plan: Plan): Promise<Run> {
  const standIn = new StandIn();
  await standIn.listen();
  const bot = new Bot(standIn.token, standIn.apiUrl);
  const chance = new Chance(seed);
  const drive = new Drive(standIn, chance, bounds);
  const weather = new Weather(standIn, drive.steps.talk, chance, plan);
  const exits: Run['exits'] = [];
  try {
    await started(standIn, bot);
    await drive.furnish();
    const blowing = weather.run();
    const halfway = anew({ standIn, bot, drive, weather, exits }, bounds.steps / 2);
    await drive.run(() => weather.isDone && exits.length > 0);
    weather.stop();
    await Promise.all([blowing, halfway]);
    await until(() => standIn.gateway.isConnected, 60_000);
    await pause(2500);
    const books = await exported({ standIn, drive });
    const atLate = new Set(standIn.world.late.channels.map(({ id }) => id));
    const welcomes = standIn.ledger.unasked.filter((one) => atLate.has(one.channel_id)).length;
    for (const one of standIn.ledger.unasked.filter(({ channel_id: at }) => !atLate.has(at))) {
      standIn.ledger.fault('unasked', one.content.slice(0, 200));
    }
    standIn.ledger.audit();
    if (!bot.isRunning) standIn.ledger.fault('gone', 'the process has ended');
    exits.push(await bot.stop());
    return { standIn, bot, drive, weather, exits, exported: books, welcomes };
  } finally {
    weather.stop();
    await bot.stop();
    await standIn.close();
    bot.remove();
  }
}

/** Half way through: a server is joined, the bot is ended and started again, and what it said before is pressed after. */
async function anew(
  { standIn, bot, drive, weather, exits }: Pick<Run, 'standIn' | 'bot' | 'drive' | 'weather' | 'exits'>,
  half: number,
): Promise<void> {
  await until(() => drive.done >= half, 3_600_000);
  await weather.calm(async () => {
    standIn.gateway.join(standIn.world.late.id);
    await pause(500);
    await drive.hold(async () => {
      await pause(standIn.gateway.untilIdentify);
      exits.push(await bot.stop());
      await started(standIn, bot);
    });
  });
}
