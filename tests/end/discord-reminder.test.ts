import { afterEach, describe, expect, it } from 'vitest';
import { isChatGroup } from '../../bot/discord/daily-sender.ts';
import { openHouse } from '../../bot/house.ts';
import { logTo } from '../../bot/log.ts';
import { topics } from '../../bot/topics.ts';
import { type BookEvent, benchOf } from '../../core/book.ts';
import { freshFolder } from '../helpers/book.ts';
import {
  channelId,
  directChannelId,
  guild,
  guildId,
  hazel,
  warden,
} from '../helpers/chat-stand-in/people.ts';
import { useChat } from '../helpers/chat-stand-in/use-chat.ts';

// The whole bot with the real client and a store on disk: the daily message is posted, answered by its buttons, and comes
// once whatever is restarted. The clock of the reminders is the test's own.

const openChat = useChat();
const group = `guild:${guildId}`;
const nine = Date.UTC(2026, 10, 26, 9);
const dayMs = 86_400_000;
const quiet = logTo(() => {}, 'silent', Date.now);

type House = Awaited<ReturnType<typeof openHouse>>;
let house: House | undefined;

afterEach(async () => {
  await house?.close();
  house = undefined;
});

const lot = (code: string, bestBefore: string): BookEvent => ({
  kind: 'lot-bought',
  lot: code,
  ingredient: 'beeswax',
  grams: 480,
  on: '2026-01-10',
  bestBefore,
});

const batch: BookEvent = {
  kind: 'batch-poured',
  lot: '26-KIVO',
  name: 'Winter balm',
  lines: [{ ingredient: 'beeswax', grams: 10, draws: [] }],
  count: 6,
  container: 'tin',
  madeOn: '2026-01-10',
  bestBefore: '2026-12-02',
  because: { kind: 'said' },
  weighedG: 90,
};

/** Enters the chat over a store; `again` does it once more, as a new process would. */
const open = async (time: { now: number }) => {
  const url = await freshFolder();
  const enter = async (): Promise<House> => openHouse(url, quiet, 'silent');
  house = await enter();
  const book = await house.keeper.open(group);
  await book.record([lot('K12', '2026-12-20'), batch], { who: 'wren', at: nine - 5 * dayMs });
  // Through a name that changes hands at a restart.
  const pipkin = {
    hear: (heard: Parameters<House['pipkin']['hear']>[0]) => (house as House).pipkin.hear(heard),
    complete: async () => [],
  };
  const chat = await openChat({
    pipkin,
    topics,
    remind: (sender) => (house as House).remind({ sender, owns: isChatGroup, clock: () => time.now }),
  });
  const restart = async (): Promise<void> => {
    await chat.running.stop();
    await house?.close();
    house = await enter();
    await chat.restart();
  };
  return { ...chat, restart, bench: async () => benchOf((await (house as House).keeper.open(group)).state) };
};

const until = async (enough: () => boolean | Promise<boolean>, what: string): Promise<void> => {
  for (let tries = 0; tries < 250; tries += 1) {
    if (await enough()) return;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  throw new Error(`no ${what} within 5 s`);
};

describe('the daily message in the group chat', () => {
  it('should be posted once with a row of buttons for each thing, and be answered by them after a restart', async () => {
    const time = { now: nine };
    const { standIn, restart, bench } = await open(time);
    const when = 'daily at 9 in Lisbon, 30, 7 and 0 days ahead';
    const set = await standIn.slash('expiry', { remind: when }, { member: warden });
    expect(set.text).toContain('Reminder set: daily at 9:00 in Lisbon');
    // Set on a day of its own by the platform's clock; the day that counts is the test's.
    const book = await (house as House).keeper.open(group);
    const reminder = benchOf(book.state).reminder;
    expect(reminder).toMatchObject({
      hour: 9,
      zone: 'Europe/Lisbon',
      leadDays: [30, 7, 0],
      channel: channelId,
    });
    await book.record({ kind: 'reminder-stopped' }, { who: 'warden', at: nine });
    const { from: _from, ...again } = reminder as NonNullable<typeof reminder>;
    await book.record({ kind: 'reminder-set', ...again, from: '2026-11-26' }, { who: 'warden', at: nine });
    await restart();
    await until(() => standIn.unasked.length > 0, 'daily message');
    const [first] = standIn.unasked;
    expect(first?.channel).toBe(channelId);
    expect(first?.shown.content).toBe(
      [
        '**Best before: Thursday 26 November**',
        'New:',
        '- Winter balm, 26-KIVO: 2 Dec 2026 (in 6 days), 6 tins left',
        '- beeswax, lot K12: 20 Dec 2026 (in 24 days), 480 g left',
        '-# Assumed: I ask every day until each of them is answered.',
      ].join('\n'),
    );
    expect(first?.rows).toEqual([3, 3]);
    expect(first?.shown.buttons.map(({ label }) => label)).toEqual([
      '26-KIVO done',
      '26-KIVO used up',
      '26-KIVO in a week',
      'K12 done',
      'K12 used up',
      'K12 in a week',
    ]);
    await until(async () => (await bench()).told?.day === '2026-11-26', 'record of it');
    await restart();
    const pressed = await standIn.press(first?.shown.buttons[1]?.id ?? '', { member: hazel });
    expect(pressed.text).toContain('26-KIVO');
    const { batches } = await bench();
    expect(batches.get('26KIVO')?.gone).toMatchObject([{ count: 6, how: 'used' }]);
    expect(standIn.unasked).toHaveLength(1);
    time.now = nine + dayMs;
    await restart();
    await until(() => standIn.unasked.length > 1, 'next message');
    expect(standIn.unasked[1]?.shown.content).toContain('Still open:\n- beeswax, lot K12');
    expect(standIn.unasked[1]?.shown.content).not.toContain('KIVO');
    expect(standIn.unasked[1]?.nonce).not.toBe(first?.nonce);
  });

  const reminding: BookEvent = {
    kind: 'reminder-set',
    hour: 9,
    minute: 0,
    zone: 'Europe/Lisbon',
    leadDays: [30],
    channel: channelId,
    from: '2026-11-26',
  };

  it('should not come twice when the record of it was lost', async () => {
    const { standIn, restart, bench } = await open({ now: nine });
    const by = { who: 'warden', at: nine };
    await (await (house as House).keeper.open(group)).record(reminding, by);
    await restart();
    await until(async () => (await bench()).told !== undefined, 'record of it');
    // As after a crash right after sending: begun, and a nonce the platform no longer knows.
    const book = await (house as House).keeper.open(group);
    await book.forget();
    const begun: BookEvent = {
      kind: 'reminder-begun',
      day: '2026-11-26',
      nonce: 'long-forgotten',
      at: new Date(nine).toISOString(),
    };
    await book.record([lot('K12', '2026-12-20'), batch, reminding, begun], by);
    await restart();
    await until(async () => (await bench()).told !== undefined, 'record of it');
    expect(standIn.unasked).toHaveLength(1);
  });

  it.each([
    ['gone', 'the channel it goes to is gone'],
    ['silent', 'I may not write in the channel it goes to'],
  ] as const)('should be told to the owner once when the channel is %s, and kept', async (how, why) => {
    const time = { now: nine };
    const { standIn, restart, bench } = await open(time);
    await (await (house as House).keeper.open(group)).record(reminding, { who: 'warden', at: nine });
    standIn.withheld[how].add(channelId);
    await restart();
    await until(async () => (await bench()).reminder?.failedDay === '2026-11-26', 'record of the failure');
    time.now = nine + dayMs;
    await restart();
    await until(async () => (await bench()).reminder?.failedDay === '2026-11-27', 'record of the failure');
    expect(standIn.unasked.map(({ channel }) => channel)).toEqual([
      directChannelId({ id: guild.owner_id, name: 'owner' }),
    ]);
    expect(standIn.unasked[0]?.shown.content).toContain(why);
    expect((await bench()).reminder).toMatchObject({ hour: 9, toldOwner: true });
  });

  it('should be set and stopped only by those who manage the group', async () => {
    const { standIn, bench } = await open({ now: nine });
    const refused = await standIn.mention('remind us daily at 9 in Lisbon', { member: hazel });
    expect(refused.text).toContain('Only those who manage this group');
    expect((await bench()).reminder).toBeUndefined();
    const slash = await standIn.slash('expiry', { remind: 'daily at 21:30 in Lisbon' }, { member: warden });
    expect(slash.text).toContain('daily at 21:30 in Lisbon');
    expect((await standIn.mention('stop reminders', { member: hazel })).text).toContain(
      'Only those who manage',
    );
    expect((await standIn.slash('expiry', { stop: true }, { member: warden })).text).toContain(
      'Reminders stopped',
    );
  });
});
