import { describe, expect, it } from 'vitest';
import { topics } from '../../bot/topics.ts';
import { benchOf } from '../../core/book.ts';
import { channelId, guildId, warden } from '../helpers/chat-stand-in/people.ts';
import { useChat } from '../helpers/chat-stand-in/use-chat.ts';
import { testHouse } from '../helpers/house.ts';
import { useHouse } from '../helpers/use-house.ts';

// Whatever is between the bot and the platform may say less than usual: everything is answered all the same.

const openChat = useChat();
const group = `guild:${guildId}`;
const keep = useHouse();

const open = async (manner: NonNullable<Parameters<typeof openChat>[0]>['manner']) => {
  const house = keep(await testHouse(group));
  const chat = await openChat({ pipkin: house.pipkin, topics, ...(manner ? { manner } : {}) });
  return { ...chat, house };
};

describe('events that say no more than they have to', () => {
  it('should be answered: command, suggestions, button, menu, form, message', async () => {
    const { standIn, log, house } = await open({ bare: true });
    const listed = await standIn.slash('recipe', { do: 'list' });
    expect(listed.text).toContain('Fernlea hand balm');
    expect(await standIn.autocomplete('scale', 'recipe', 'hand')).toContain('Fernlea hand balm');
    const [button] = listed.first.buttons;
    expect((await standIn.press(button?.id ?? '')).text).toContain('version 1');
    expect((await standIn.pick(button?.id ?? '')).text).toContain('version 1');
    const form = await standIn.slashSent('recipe', { do: 'save', name: 'Hall balm' }).formed();
    expect((await standIn.fillIn(form, { lines: '20 g beeswax\n80 g olive oil' })).text).toContain('Saved');
    expect((await standIn.slash('convert', { amount: '5 oz', to: 'g' }, { direct: true })).text).toContain(
      '141.7',
    );
    // Where it was asked is known all the same: what is said there next goes on from it.
    await standIn.slash('scale', { recipe: 'Fernlea hand balm', tins: 24, size: '15 g' });
    expect((await standIn.mention('and for 40 tins?')).text).toContain('40');
    await standIn.slash('expiry', { remind: 'daily at 9 in Lisbon, 30 days ahead' }, { member: warden });
    expect(benchOf((await house.keeper.open(group)).state).reminder?.channel).toBe(channelId);
    expect(log.faults).toEqual([]);
  });

  it.each([{ confirming: true }, { secretive: true }])('should be the same with %j', async (manner) => {
    const { standIn, log } = await open(manner);
    expect(standIn.commands.writes).toBe(1);
    expect((await standIn.slash('convert', { amount: '5 oz', to: 'g' })).text).toContain('141.7');
    const form = await standIn.slashSent('recipe', { do: 'save', name: 'Hall balm' }).formed();
    expect((await standIn.fillIn(form, { lines: '20 g beeswax\n80 g olive oil' })).text).toContain('Saved');
    expect(log.faults).toEqual([]);
  });
});
