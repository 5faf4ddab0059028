import { describe, expect, it } from 'vitest';
import { topics } from '../../bot/topics.ts';
import { benchHouse } from '../helpers/bench-house.ts';
import { guildId, hazel, warden, wren } from '../helpers/chat-stand-in/people.ts';
import { useChat } from '../helpers/chat-stand-in/use-chat.ts';
import { useHouse } from '../helpers/use-house.ts';

// What is for one member alone (prices, reactions, settings) is shown to that member alone, whichever way it is asked.

const openChat = useChat();
const keep = useHouse();

const open = async () => {
  const house = keep(await benchHouse(`guild:${guildId}`));
  await house.say('bought 250 g shea butter lot S9, 7.35');
  await house.say('report: itchy rash behind the ear after 26-BAFO, contact: the lady with the red hat');
  return openChat({ pipkin: house.pipkin, topics });
};

const personal = [
  ['lot S9', '7.35'],
  ['prices', '7.35'],
  ['stock with prices', '7.35'],
  ['list reactions', 'rash'],
  ['show R1', 'rash'],
  ['settings', 'Region'],
] as const;

describe('an answer for one member alone', () => {
  it.each(personal)(
    'should be shown so for a button, a menu and a form that says "%s"',
    async (say, secret) => {
      const { standIn } = await open();
      for (const exchange of [await standIn.press(`say1:${say}`), await standIn.pick(`say1:${say}`)]) {
        expect(exchange.text.toLowerCase()).toContain(secret.toLowerCase());
        expect(exchange.shown.map(({ aside }) => aside)).not.toContain(false);
      }
    },
  );

  it.each(personal)('should go to them directly when "%s" is asked for in a channel', async (say, secret) => {
    const { standIn } = await open();
    const exchange = await standIn.mention(say, { member: wren });
    expect(exchange.text).toBe('That answer is for you alone, so I have sent it to you directly.');
    const sent = standIn.writtenTo(wren);
    expect(
      sent
        .map(({ content }) => content)
        .join()
        .toLowerCase(),
    ).toContain(secret.toLowerCase());
    // In a direct message they would be for the member's own book.
    expect(sent.flatMap(({ buttons, options }) => [...buttons, ...options])).toEqual([]);
    expect(standIn.writtenTo(hazel)).toEqual([]);
  });

  it.each(personal)(
    'should not be shown at all when they take no direct messages: "%s"',
    async (say, secret) => {
      const { standIn } = await open();
      standIn.withheld.directs = true;
      const exchange = await standIn.mention(say);
      expect(exchange.text).toContain('I may not write to you directly. Ask with /');
      expect(exchange.text.toLowerCase()).not.toContain(secret.toLowerCase());
    },
  );

  it('should be shown so for the commands that ask for it', async () => {
    const { standIn } = await open();
    for (const [name, options] of [
      ['stock', { do: 'show', lot: 'S9' }],
      ['reaction', {}],
      ['settings', {}],
    ] as const) {
      const exchange = await standIn.slash(name, options);
      expect(
        exchange.shown.map(({ aside }) => aside),
        name,
      ).toEqual(exchange.shown.map(() => true));
    }
  });

  it('should be an answer like any other in a direct message', async () => {
    const { standIn } = await open();
    const exchange = await standIn.direct('settings');
    expect(exchange.text).toContain('region');
    expect(exchange.text).not.toContain('for you alone');
  });

  it('should leave public what the group learns from', async () => {
    const { standIn } = await open();
    for (const say of ['stock', 'list batches', 'list recipes', 'show Fernlea hand balm'])
      expect((await standIn.mention(say)).first.aside).toBe(false);
    expect((await standIn.slash('stock', { do: 'show' }, { member: warden })).first.aside).toBe(false);
  });
});
