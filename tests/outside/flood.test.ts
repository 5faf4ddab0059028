// One member and then a whole server ask much faster than they may, of the bot with its usual pace: each command is answered once
// and in time all the same, most with a word about waiting; written messages are told so once and not each time.

import { afterAll, beforeAll, expect, test } from 'vitest';
import { Bot } from './bot.ts';
import { started } from './run.ts';
import { leaves, nameOf, slashData } from './slash.ts';
import { StandIn } from './stand-in.ts';
import { type Hand, Talk } from './talk.ts';

const standIn = new StandIn();
let bot: Bot;
let talk: Talk;

beforeAll(async () => {
  await standIn.listen();
  // How fast it is under such a load is measured in the bench; here every answer has to come, once.
  standIn.ledger.deadline = 30_000;
  bot = new Bot(standIn.token, standIn.apiUrl, '');
  talk = new Talk(standIn);
  await started(standIn, bot);
}, 60_000);

afterAll(async () => {
  await bot.stop();
  await standIn.close();
  bot.remove();
});

const hand = (index: number, within = 0): Hand => {
  const group = standIn.world.groups[within];
  const person = group?.people[index];
  if (!group || !person) throw new Error('nobody there');
  return { person, group, channel: group.channels[0]?.id ?? '' };
};

const texts = (): string[] =>
  standIn.ledger.asked.flatMap(({ messages }) => messages.map(({ content }) => content));

async function commandsAt(of: Hand, count: number): Promise<void> {
  const all = leaves(standIn.registered).filter(({ options }) =>
    options.every(({ required }) => required !== true),
  );
  const asked = Array.from({ length: count }, (_, at) => {
    const leaf = all[at % all.length];
    if (!leaf) throw new Error('no commands');
    return talk.ask(of, { type: 2, data: slashData(leaf, [], {}), label: `${nameOf(leaf)} ${at}` });
  });
  await Promise.all(asked);
}

test('eighty commands of one member at once', async () => {
  await commandsAt(hand(0), 80);
  expect(texts().some((text) => /wait|again in|second|too (fast|many)|moment/i.test(text))).toBe(true);
}, 90_000);

test('three hundred commands of five members at once, more than one server may ask', async () => {
  await Promise.all([0, 1, 2, 3, 4].map((index) => commandsAt(hand(index), 60)));
}, 90_000);

test('eighty requests for suggestions at once', async () => {
  const leaf = leaves(standIn.registered).find(({ options }) =>
    options.some(({ autocomplete }) => autocomplete === true),
  );
  const option = leaf?.options.find(({ autocomplete }) => autocomplete === true);
  if (!leaf || !option) throw new Error('nothing to complete');
  const data = slashData(leaf, [{ option, value: 'b', focused: true }], {});
  await Promise.all(
    Array.from({ length: 80 }, (_, at) => talk.ask(hand(1), { type: 4, data, label: `suggestions ${at}` })),
  );
});

test('forty written messages at once are answered or told once to wait', async () => {
  const said = Array.from({ length: 40 }, () => talk.say(hand(0, 1), '5 oz in g', {}, 'cannot be answered'));
  const answers = (await Promise.all(said)).flatMap(({ replies }) => replies);
  expect(answers.length).toBeGreaterThan(0);
  expect(answers.length).toBeLessThan(40);
});

test('nothing of all this was answered twice, late or not at all', () => {
  standIn.ledger.audit();
  expect(standIn.ledger.faults).toEqual([]);
  expect(bot.errors()).toEqual([]);
  expect(bot.isRunning).toBe(true);
});
