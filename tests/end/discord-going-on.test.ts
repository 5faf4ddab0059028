import { setTimeout as sleep } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { topics } from '../../bot/topics.ts';
import { benchHouse } from '../helpers/bench-house.ts';
import type { Exchange } from '../helpers/chat-stand-in/exchange.ts';
import { annexe, annexId, guildId, hazel, wren } from '../helpers/chat-stand-in/people.ts';
import { useChat } from '../helpers/chat-stand-in/use-chat.ts';
import { now } from '../helpers/house.ts';
import { recipeSaved } from '../helpers/recipes-saved.ts';
import { useHouse } from '../helpers/use-house.ts';

// What can be done next (buttons, menus), how a new group is welcomed, and what happens when too much is asked.

const openChat = useChat();
const group = `guild:${guildId}`;
const keep = useHouse();

const open = async (more: Omit<NonNullable<Parameters<typeof openChat>[0]>, 'pipkin' | 'topics'> = {}) => {
  const made = keep(await benchHouse(group));
  return { ...(await openChat({ pipkin: made.pipkin, topics, ...more })), house: made };
};

describe('next steps', () => {
  it('should change the count, record the pour, print labels or ask for a swap', async () => {
    const { standIn, house } = await open();
    const asked = { recipe: 'Fernlea hand balm', tins: 24, size: '15 ml' };
    const { first } = await standIn.slash('scale', asked);
    expect(first.buttons.map(({ label }) => label)).toEqual([
      '48 tins',
      '12 tins',
      'Record this pour',
      'Labels',
      'Swap beeswax',
    ]);
    const [, , record, labels, swap] = first.buttons.map(({ id }) => id);
    expect((await standIn.press(labels ?? '')).first.files.map(({ name }) => name)).toEqual(['labels.pdf']);
    expect((await standIn.press(swap ?? '')).text).toContain('candelilla');
    const before = (await house.keeper.open(group)).state.seq;
    const form = await standIn.pressSent(record ?? '').formed();
    expect(form.fields.slice(0, 2).map(({ value }) => value)).toEqual([
      'Fernlea hand balm',
      '24 tins of 15 ml',
    ]);
    expect((await house.keeper.open(group)).state.seq).toBe(before);
    expect((await standIn.fillIn(form, { lots: 'K12' })).text).toContain('Fernlea hand balm');
    expect((await house.keeper.open(group)).state.seq).toBeGreaterThan(before);
  });

  it('should put a recipe into the form to be changed', async () => {
    const { standIn } = await open();
    const { first } = await standIn.slash('recipe', { do: 'show', name: 'Fernlea hand balm' });
    const change = first.buttons.find(({ label }) => label === 'Change it');
    const form = await standIn.pressSent(change?.id ?? '').formed();
    const lines = form.fields[1]?.value ?? '';
    expect(lines).toContain('beeswax');
    const changed = await standIn.fillIn(form, {
      lines: lines.replace('50 % olive oil', '49 % olive oil\n1 % vitamin e'),
    });
    expect(changed.text).toContain('vitamin E');
    expect((await standIn.mention('versions of Fernlea hand balm')).text).toContain('2 versions');
  });

  it('should be buttons for a few recipes, and a menu for many', async () => {
    const { standIn, house } = await open();
    const few = await standIn.slash('recipe', { do: 'list' });
    expect(few.first.buttons.map(({ label }) => label)).toEqual([
      'Fernlea hand balm',
      'Fernlea mint lip balm',
    ]);
    expect(few.first.options).toEqual([]);
    const book = await house.keeper.open(group);
    for (let at = 0; at < 40; at += 1)
      await book.record(recipeSaved(`r${at}`, `Hall balm ${at}`), { who: 'm1', at: now });
    const many = await standIn.slash('recipe', { do: 'list' });
    const [last] = many.shown.slice(-1);
    expect(last?.options).toHaveLength(25);
    const picked = await standIn.pick(last?.options.find(({ label }) => label === 'Hall balm 11')?.id ?? '');
    expect(picked.text).toContain('Hall balm 11, version 1');
  });

  it('should lead through all of a long menu, part by part, also over a restart and by words', async () => {
    const { standIn, house, restart } = await open();
    const book = await house.keeper.open(group);
    for (let at = 0; at < 58; at += 1)
      await book.record(recipeSaved(`r${at}`, `Hall balm ${at}`), { who: 'm1', at: now });
    const menuOf = ({ shown }: Exchange) => shown.at(-1)?.options ?? [];
    const first = menuOf(await standIn.mention('list recipes'));
    const parts = [first];
    expect(first.at(-1)?.label).toBe('More: 25 to 48 of 60');
    await restart();
    for (let turn = 0; turn < 3; turn += 1)
      parts.push(menuOf(await standIn.pick(parts.at(-1)?.at(-1)?.id ?? '')));
    expect(parts.map((part) => part.length)).toEqual([25, 25, 13, 25]);
    expect(parts[3]).toEqual(first);
    const names = parts.slice(0, 3).flatMap((part) => part.slice(0, -1).map(({ label }) => label));
    expect(new Set(names).size).toBe(60);
    const late = parts[2]?.at(0)?.id ?? '';
    expect((await standIn.pick(late)).text).toContain(`${parts[2]?.at(0)?.label}, version 1`);
    // Made up: no more than the words in it, from the beginning where there are not so many.
    expect(menuOf(await standIn.pick('more1:9999:list recipes'))).toEqual(first);
    expect((await standIn.pick('more1:3:5 oz in g')).text).toContain('141.7');
  });

  it('should offer lots and batches', async () => {
    const { standIn } = await open();
    const stock = await standIn.mention('stock');
    expect(stock.first.buttons.map(({ label }) => label.split(' ')[0])).toEqual(
      expect.arrayContaining(['K12', 'G7', 'C2']),
    );
    const batches = await standIn.mention('list batches');
    const kivo = batches.first.buttons.find(({ label }) => label.startsWith('26-KIVO'));
    expect((await standIn.press(kivo?.id ?? '')).text).toContain('26-KIVO');
  });
});

describe('a group the bot comes to', () => {
  const arrived = { t: 'GUILD_CREATE', d: annexe };

  it('should be welcomed once, with three things to try that work, also over a restart', async () => {
    const { standIn, restart, log } = await open();
    standIn.raw(arrived);
    await sleep(200);
    expect(standIn.unasked).toHaveLength(1);
    const [{ channel, shown } = { channel: '', shown: undefined }] = standIn.unasked;
    expect(channel).toBe(annexe.channels[0]?.id);
    expect(shown?.content).toContain('Hello, I am Pipkin');
    expect(shown?.content).toContain('cosmetic rules');
    expect(shown?.buttons).toHaveLength(3);
    for (const { id } of shown?.buttons ?? []) {
      const { first } = await standIn.press(id, { annexe: true });
      expect(first.aside, first.content).toBe(false);
    }
    standIn.raw({ t: 'GUILD_DELETE', d: { id: annexId } });
    standIn.raw(arrived);
    await restart();
    standIn.raw({ t: 'GUILD_DELETE', d: { id: annexId } });
    standIn.raw(arrived);
    await sleep(200);
    expect(standIn.unasked).toHaveLength(1);
    expect(log.faults).toEqual([]);
  });

  it('should be left alone where the bot may write nowhere', async () => {
    const { standIn, log } = await open();
    const roles = annexe.roles.map((role) => ({ ...role, permissions: '0' }));
    standIn.raw({ t: 'GUILD_CREATE', d: { ...annexe, roles } });
    await sleep(150);
    expect(standIn.unasked).toEqual([]);
    expect(log.faults).toEqual([]);
  });
});

describe('asking too much', () => {
  const limits = { member: { burst: 3, perMinute: 60 } };

  it('should be told kindly and to the member alone, each time for a command', async () => {
    const { standIn } = await open({ limits });
    const all = [];
    for (let at = 0; at < 6; at += 1) all.push(await standIn.press('say1:5 oz in g', { member: wren }));
    expect(all.slice(0, 3).map(({ first }) => first.aside)).toEqual([false, false, false]);
    for (const { first } of all.slice(3)) {
      expect(first.aside).toBe(true);
      expect(first.content).toMatch(/^That was a lot at once\. I will gladly go on in \d seconds?/);
    }
    expect((await standIn.press('say1:5 oz in g', { member: hazel })).first.aside).toBe(false);
  });

  it('should be told once for messages, and go on after a while', async () => {
    const { standIn } = await open({ limits });
    for (let at = 0; at < 3; at += 1) await standIn.mention('5 oz in g');
    expect((await standIn.mention('5 oz in g')).text).toContain('That was a lot at once');
    const silent = standIn.write({ text: '<@900000000000000001> 5 oz in g' });
    await sleep(1200);
    expect(silent.shown).toEqual([]);
    expect((await standIn.mention('5 oz in g')).text).toContain('141');
  });
});
