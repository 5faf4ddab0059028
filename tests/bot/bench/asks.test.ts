import '../../helpers/undrawn.ts';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { memoryKeeper } from '../../../bot/book/keeper-memory.ts';
import { type Pipkin, pipkin } from '../../../bot/handle.ts';
import { answerOf, anyone, heard, troubleIn } from '../../helpers/house.ts';

// What makers may ask of a bench book, and how they put right what they told, each group under the one request it means.
// Written by who wrote the readers: the table shows that what is read stays read, and not how much of new wording is.

const group = z.strictObject({
  topic: z.string().optional(),
  means: z.record(z.string(), z.unknown()).optional(),
  refuse: z.literal(true).optional(),
  /** " >> " stands between messages of one conversation, of which the last is meant. */
  say: z.array(z.string()).min(1),
});

const groups = z
  .array(group)
  .parse(JSON.parse(readFileSync(new URL('./asks.json', import.meta.url), 'utf8')));

/** What the Circle wrote down in half a year, by whom and when. `{0}` is the first batch poured, and so on. */
const told: readonly (readonly [string, string, string])[] = [
  ['hazel', '2027-01-10', 'save recipe Quarry balm: 25 g beeswax, 25 g cocoa butter, 50 g jojoba oil'],
  ['hazel', '2027-01-10', 'save recipe Gerda pot: 20 g beeswax, 30 g shea butter, 50 g olive oil'],
  [
    'hazel',
    '2027-01-10',
    'save recipe Rose lip balm: 22 g beeswax, 28 g mango butter, 50 g sweet almond oil',
  ],
  ['hazel', '2027-01-11', 'bought 800 g beeswax lot QB1, best before 2029-06'],
  ['tom', '2027-01-12', 'bought 700 g cocoa butter lot QC1, best before 2028-02-29'],
  ['tom', '2027-01-12', 'bought 900 g jojoba oil lot QJ1, best before 2028-01-31'],
  ['hazel', '2027-02-01', 'bought 500 g beeswax lot QB2, best before 2029-12-31'],
  ['hazel', '2027-02-02', 'bought 700 g shea butter lot GE2, best before 2027-06-30'],
  ['tom', '2027-02-02', 'bought 1 kg olive oil lot GE4, best before 2027-07-14'],
  ['tom', '2027-02-03', 'bought 600 g sweet almond oil lot CO-13, best before 2027-05-31'],
  ['tom', '2027-02-03', 'bought 400 g mango butter lot SA5, best before 2027-12-31'],
  ['tom', '2027-02-03', 'bought 300 g dried calendula lot KM1, best before 2028-09'],
  ['hazel', '2027-03-04', 'poured 24 tins of 20 g of Quarry balm with lots QB1, QC1, QJ1'],
  ['tom', '2027-03-20', 'poured 10 jars of 30 g of Gerda pot with lots QB1, GE2, GE4'],
  ['hazel', '2027-04-02', 'poured 12 tins of 15 g of Rose lip balm with lots QB2, SA5, CO-13'],
  ['tom', '2027-05-05', 'poured 9 tins of 20 g of Quarry balm with lots QB2, QC1, QJ1'],
  ['hazel', '2027-05-10', 'gave 6 tins of {0} to the spring fair'],
  ['tom', '2027-05-11', 'sold 3 jars of {1} to the farm shop'],
  ['tom', '2027-05-12', 'report: rash after {0}'],
  ['hazel', '2027-05-13', 'warn me below 400 g beeswax'],
  ['hazel', '2027-05-14', 'remind us daily at 7 in London, 30 days ahead'],
];
const now = Date.parse('2027-06-10T10:00:00Z');

interface House {
  readonly bot: Pipkin;
  readonly codes: readonly string[];
  readonly faults: readonly unknown[];
  /** How much is written in the book. */
  entries(): Promise<number>;
}

const filled = (text: string, codes: readonly string[]): string =>
  text.replace(/\{(\d)\}/g, (place, at: string) => codes[Number(at)] ?? place);

const member = (id: string) => ({ ...anyone, id, name: id });

const benchBook = async (): Promise<House> => {
  const faults: unknown[] = [];
  const keeper = memoryKeeper();
  const bot = pipkin({ keeper, onFault: (_id, fault) => faults.push(fault) });
  const codes: string[] = [];
  for (const [who, day, text] of told) {
    const at = Date.parse(`${day}T10:00:00Z`);
    const reply = await bot.hear(heard(filled(text, codes), { at, channel: 'bench', member: member(who) }));
    const { lot } = answerOf(reply).figures;
    if (text.startsWith('poured')) codes.push(String(lot));
  }
  const { group: name } = heard('');
  return { bot, codes, faults, entries: async () => (await keeper.open(name)).state.seq };
};

const writing =
  /^(?:settings|expiry (?:set|stop)|book undo|stock (?!list|show)|batch (?!list|show)|reaction (?!list|show))/;

let shared: Promise<House> | undefined;

/** Questions share a book, since nothing is written by asking; each of the others gets its own. */
const houseFor = (title: string): Promise<House> => {
  if (writing.test(title)) return benchBook();
  shared ??= benchBook();
  return shared;
};

let channels = 0;

const lastReply = async ({ bot, codes, entries }: House, dialogue: string) => {
  channels += 1;
  const messages = dialogue.split(' >> ').map((text) => filled(text, codes));
  const last = messages.pop() ?? '';
  const say = (text: string, at: number) =>
    bot.hear(heard(text, { at, channel: `channel ${channels}`, member: member('hazel') }));
  for (const [at, text] of messages.entries()) await say(text, now + at * 1000);
  const before = await entries();
  const reply = await say(last, now + messages.length * 1000);
  return { reply, wrote: (await entries()) !== before };
};

/** A dialogue may write before its last message, and then has a book of its own. */
const isTold = (say: string, title: string): boolean => say.includes(' >> ') || writing.test(title);

describe.each(
  groups.map(({ say, topic = 'refused', means = {}, refuse }) => ({
    title: `${topic} ${String(means.action ?? '')} ${JSON.stringify(means)}`,
    topic,
    means,
    refuse,
    say,
  })),
)('$title', ({ title, topic, means, refuse, say }) => {
  it.each(say)('%s', async (dialogue) => {
    const house = isTold(dialogue, title) ? await benchBook() : await houseFor(title);
    const { reply, wrote } = await lastReply(house, dialogue);
    expect(house.faults).toEqual([]);
    if (refuse) {
      expect(troubleIn(reply).text.length).toBeGreaterThan(20);
      expect(wrote).toBe(false);
      return;
    }
    answerOf(reply);
    const asked = ('answer' in reply ? reply.request : {}) as Readonly<Record<string, unknown>>;
    const { seen: _seen, ...request } = asked;
    expect([reply.topic, JSON.parse(JSON.stringify(request))]).toEqual([
      topic,
      JSON.parse(filled(JSON.stringify(means), house.codes)),
    ]);
    if (!writing.test(title)) expect(wrote).toBe(false);
  });
});
