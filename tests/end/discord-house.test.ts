import { describe, expect, it } from 'vitest';
import { topics } from '../../bot/topics.ts';
import type { Exchange, Shown } from '../helpers/chat-stand-in/exchange.ts';
import { channelId, directChannelId, guildId, hazel, warden, wren } from '../helpers/chat-stand-in/people.ts';
import { useChat } from '../helpers/chat-stand-in/use-chat.ts';
import { testHouse } from '../helpers/house.ts';
import { useHouse } from '../helpers/use-house.ts';

// The bot as it is, with all its topics and the real client, in the village hall's chat. Its book has the demo recipes.
const openChat = useChat();
const keep = useHouse();

const open = async () => {
  const house = keep(await testHouse(`guild:${guildId}`));
  const chat = await openChat({ pipkin: house.pipkin, topics });
  return { ...chat, keeper: house.keeper };
};

const codeLines = (text: string): string[] =>
  [...text.matchAll(/```\n([\s\S]*?)\n```/g)].flatMap(([, inside = '']) => inside.split('\n'));

/** What any message in the chat must be: short enough, narrow enough for a phone, ringing for nobody. */
const sound = ({ content, buttons }: Shown): void => {
  expect(content.length).toBeGreaterThan(0);
  expect(content.length).toBeLessThanOrEqual(2000);
  for (const line of codeLines(content)) expect([...line].length, line).toBeLessThanOrEqual(40);
  expect(content).not.toMatch(/@everyone|@here|<@[!&]?\d+>/);
  expect(new Set(buttons.map(({ id }) => id)).size).toBe(buttons.length);
};

/** All that was shown, after a look at each message. */
const seen = ({ shown }: Exchange): string => {
  for (const message of shown) sound(message);
  return shown.map(({ content }) => content).join('\n');
};

const fernlea = { recipe: 'Fernlea hand balm', tins: 24, size: '15 g' };

describe('the bot in the group chat', () => {
  it('should scale a saved recipe by command', async () => {
    const { standIn } = await open();
    const text = seen(await standIn.slash('scale', fernlea));
    // 24 x 15 g is 360 g; 360 / 0.97 = 371.134 g, so 371.2 g at a step of 0.1 g, shared 20 : 30 : 50.
    for (const figure of ['74.2', '111.4', '185.6', '371.2'])
      expect(codeLines(text).join('\n')).toContain(figure);
    expect(text).toContain('Hot wax burns');
    expect(text).toContain('cosmetic rules');
  });

  it('should scale a recipe written out in a mention', async () => {
    const { standIn } = await open();
    const asked = 'hi! scale 20 g beeswax, 30 g shea butter, 50 g olive oil to 24 tins of 15 g please 🙏';
    const exchange = await standIn.mention(asked);
    expect(seen(exchange)).toContain('371.2');
    expect(exchange.first.replyTo).toBe(exchange.id);
  });

  it('should answer the button for another count, and a follow-up in words', async () => {
    const { standIn } = await open();
    const { buttons } = (await standIn.slash('scale', fernlea)).first;
    const more = buttons.find(({ label }) => label === '48 tins');
    expect(more).toBeDefined();
    // 48 x 15 / 0.97 = 742.268 g, so 742.3 g.
    expect(seen(await standIn.press(more?.id ?? ''))).toContain('742.3');
    // 40 x 15 / 0.97 = 618.557 g, so 618.6 g.
    expect(seen(await standIn.mention('and for 40 tins?'))).toContain('618.6');
  });

  it('should keep one member’s follow-up from another', async () => {
    const { standIn } = await open();
    await standIn.mention('scale Fernlea hand balm to 24 tins of 15 g', { member: wren });
    const exchange = await standIn.mention('and for 40 tins?', { member: hazel });
    expect(seen(exchange)).not.toContain('618.6');
  });

  it('should save a recipe by command and offer it from then on', async () => {
    const { standIn, keeper } = await open();
    const lines = '25 g beeswax, 25 g cocoa butter, 50 g olive oil';
    expect(await standIn.autocomplete('scale', 'recipe', 'wint')).toEqual([]);
    const saved = await standIn.slash('recipe', { do: 'save', name: 'Winter Salve', lines });
    expect(seen(saved)).toContain('Winter Salve');
    const { state } = await keeper.open(`guild:${guildId}`);
    expect(Object.values(state.recipes).map(({ name }) => name)).toContain('Winter Salve');
    expect(await standIn.autocomplete('scale', 'recipe', 'wint')).toEqual(['Winter Salve']);
    expect(await standIn.autocomplete('recipe', 'name', 'salve')).toEqual(['Winter Salve']);
    // 10 x 20 / 0.97 = 206.186 g, so 206.2 g.
    const scaled = await standIn.slash('scale', { recipe: 'Winter Salve', tins: 10, size: '20 g' });
    expect(seen(scaled)).toContain('206.2');
  });

  it('should keep a direct message’s book apart from the group’s', async () => {
    const { standIn, keeper } = await open();
    const unknown = await standIn.direct('scale Fernlea hand balm to 24 tins of 15 g');
    expect(seen(unknown)).not.toContain('371.2');
    await standIn.direct('save recipe Own balm: 20 g beeswax, 80 g olive oil');
    expect(seen(await standIn.direct('scale Own balm to 100 g'))).toContain('100.0');
    const own = await keeper.open(`dm:${hazel.id}`);
    expect(Object.values(own.state.recipes).map(({ name }) => name)).toEqual(['Own balm']);
    expect(directChannelId(hazel)).not.toBe(channelId);
    expect(await standIn.autocomplete('scale', 'recipe', 'own')).toEqual([]);
    expect(await standIn.autocomplete('scale', 'recipe', 'own', { direct: true })).toEqual(['Own balm']);
    const elsewhere = await standIn.direct('list recipes', { member: wren });
    expect(seen(elsewhere)).not.toContain('Own balm');
  });

  it('should change settings only for those who manage the server', async () => {
    const { standIn, keeper } = await open();
    const book = await keeper.open(`guild:${guildId}`);
    const refused = await standIn.slash('settings', { region: 'us' }, { member: hazel });
    expect(refused.first.aside).toBe(true);
    expect(seen(refused)).toMatch(/only those who manage/i);
    expect(seen(await standIn.mention('region us', { member: hazel }))).toMatch(/only those who manage/i);
    expect(book.state.settings.region).toBe('eu');
    await standIn.slash('settings', { region: 'us' }, { member: warden });
    expect(book.state.settings.region).toBe('us');
  });

  it('should let only the writers’ role save once it is set', async () => {
    const { standIn, keeper } = await open();
    const save = { do: 'save', name: 'Role balm', lines: '20 g beeswax, 80 g olive oil' };
    await standIn.slash('settings', { writers: 'Bench' }, { member: warden });
    expect(seen(await standIn.slash('recipe', save, { member: hazel }))).toContain('Bench');
    const book = await keeper.open(`guild:${guildId}`);
    const names = () => Object.values(book.state.recipes).map(({ name }) => name);
    expect(names()).not.toContain('Role balm');
    expect(seen(await standIn.slash('recipe', save, { member: wren }))).toContain('Role balm');
    expect(names()).toContain('Role balm');
  });

  it('should give help whose examples work when they are sent back', async () => {
    const { standIn } = await open();
    const text = seen(await standIn.slash('help'));
    for (const { name } of topics) expect(text).toContain(name);
    const { buttons } = (await standIn.slash('help', { topic: 'scale' })).first;
    expect(buttons.length).toBeGreaterThan(0);
    for (const { id } of buttons) expect(codeLines(seen(await standIn.press(id))).length).toBeGreaterThan(3);
  });

  it('should keep every kind of answer inside the limits and ring for nobody', async () => {
    const { standIn } = await open();
    const asked = [
      'what is castor oil',
      'what is candellila wax',
      'scale 2 tbsp beeswax, 1/4 cup coconut oil, 10 drops tea tree oil to 20 tins of 15 ml',
      'scale 60 g olive oil, 20 g beeswax, 10 g dried calendula strained out, 20 g shea butter to 10 tins of 30 ml',
      'scale Fernlea mint lip balm to 2 tins of 5 ml',
      '30 drops of peppermint oil in ml',
      'list recipes',
      'show Fernlea mint lip balm',
      'versions of Fernlea mint lip balm',
      'settings',
      'save recipe @everyone <@900000000000000203>: 20 g beeswax, 80 g olive oil',
      'scale 20 g @everyone fat, 80 g olive oil to 10 tins of 15 g',
      'sing me something',
    ];
    for (const text of asked) seen(await standIn.mention(text));
    for (const { name, slash } of topics) {
      for (const kind of Object.keys(slash.complete ?? {})) {
        const offered = await standIn.autocomplete(name, kind, 'b');
        expect(offered.length).toBeLessThanOrEqual(25);
      }
    }
  });
});
