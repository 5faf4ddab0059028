import { describe, expect, it } from 'vitest';
import { readName } from '../../bot/discord/context-menu.ts';
import { topics } from '../../bot/topics.ts';
import { benchOf } from '../../core/book.ts';
import { guildId, hazel, warden, wren } from '../helpers/chat-stand-in/people.ts';
import { useChat } from '../helpers/chat-stand-in/use-chat.ts';
import { testHouse } from '../helpers/house.ts';
import { useHouse } from '../helpers/use-house.ts';

// The bot as it is, with all its topics and the real client. Forms become the words of a plain message.

const openChat = useChat();
const group = `guild:${guildId}`;
const keep = useHouse();

const open = async () => {
  const house = keep(await testHouse(group));
  const chat = await openChat({ pipkin: house.pipkin, topics });
  const { keeper } = house;
  return { ...chat, state: async () => (await keeper.open(group)).state };
};

describe('a form', () => {
  it('should be shown for a recipe without lines, with the name in it, and save its lines as they are', async () => {
    const { standIn, state } = await open();
    const form = await standIn.slashSent('recipe', { do: 'save', name: 'Hall balm' }).formed();
    expect(form.fields.map(({ name, value, required, long }) => [name, value, required, long])).toEqual([
      ['name', 'Hall balm', true, false],
      ['lines', '', true, true],
    ]);
    const saved = await standIn.fillIn(form, { lines: '20 g beeswax\n30 g shea butter\n50 g olive oil' });
    expect(saved.text).toContain('Saved: Hall balm');
    expect(saved.first.aside).toBe(false);
    const { recipes } = await state();
    const found = Object.values(recipes).find(({ name }) => name === 'Hall balm');
    expect(found?.lines.map(({ ingredient }) => ingredient)).toEqual(['beeswax', 'shea-butter', 'olive-oil']);
  });

  it('should give back what was typed when it cannot be read', async () => {
    const { standIn, state, restart } = await open();
    const form = await standIn.slashSent('recipe', { do: 'save' }).formed();
    const lines = `20 g beeswax\n30 g frobnicate\n50 g olive oil`;
    const refused = await standIn.fillIn(form, { name: 'Hall balm', lines });
    expect(refused.first.aside).toBe(true);
    expect(refused.text).toContain('frobnicate');
    const [again] = refused.first.buttons;
    expect(again?.label).toBe('Put it right');
    // Too long for the button's id, so it is kept for the group, also over a restart.
    await restart();
    const before = await standIn.pressSent(again?.id ?? '').formed();
    expect(before.fields.map(({ value }) => value)).toEqual(['Hall balm', lines]);
    const put = lines.replace('frobnicate', 'shea butter');
    expect((await standIn.fillIn(before, { lines: put })).text).toContain('Saved: Hall balm');
    expect(Object.values((await state()).recipes).map(({ name }) => name)).toContain('Hall balm');
  });

  it('should write down a pour with its lots and note', async () => {
    const { standIn, state } = await open();
    const form = await standIn.slashSent('batch', { do: 'poured', recipe: 'Fernlea hand balm' }).formed();
    expect(form.fields[0]).toMatchObject({ name: 'recipe', value: 'Fernlea hand balm' });
    const poured = await standIn.fillIn(form, {
      make: '12 tins of 15 ml',
      on: 'yesterday',
      say: 'set slowly,\na bit soft',
    });
    expect(poured.text).toContain('Fernlea hand balm');
    const [batch] = [...benchOf(await state()).batches.values()];
    expect(batch).toMatchObject({ name: 'Fernlea hand balm', count: 12 });
    expect(batch?.notes.map((note) => (typeof note === 'string' ? note : note.text)).join()).toContain(
      'set slowly, a bit soft',
    );
  });

  it('should write down a purchase, and show its price to the buyer alone', async () => {
    const { standIn, state } = await open();
    const form = await standIn.slashSent('stock', { do: 'bought', ingredient: 'beeswax' }).formed();
    const bought = await standIn.fillIn(form, {
      amount: '500 g',
      lot: 'K12',
      best_before: '2027-03',
      price: '14.50',
    });
    expect(bought.first.aside).toBe(true);
    expect(benchOf(await state()).lots.get('K12')).toMatchObject({
      ingredient: 'beeswax',
      gotG: 500,
      bestBefore: '2027-03-31',
    });
  });

  it('should mean no more than its words: roles are asked for as ever', async () => {
    const { standIn, state } = await open();
    await standIn.slash('settings', { writers: 'Bench' }, { member: warden });
    const lines = '20 g beeswax\n80 g olive oil';
    const refused = await standIn.sendForm('form1:recipe:', { name: 'Forged', lines }, { member: hazel });
    expect(refused.text).toContain('Bench');
    expect(Object.values((await state()).recipes).map(({ name }) => name)).not.toContain('Forged');
    const saved = await standIn.sendForm('form1:recipe:', { name: 'Forged', lines }, { member: wren });
    expect(saved.text).toContain('Saved: Forged');
  });

  it('should turn away a form that is none of its own', async () => {
    const { standIn } = await open();
    for (const id of ['form1:nothing:', 'form0:recipe:', 'say1:list recipes', '__proto__'])
      expect((await standIn.sendForm(id, { name: 'x' })).first).toMatchObject({ aside: true });
    const old = await standIn.sendForm('form1:nothing:', { name: 'x' });
    expect(old.text).toContain('no longer of use');
  });
});

describe('the command on a message', () => {
  const text = '**Hall salve**\n```\n20 g beeswax\n30 g shea butter\n50 g olive oil\n```';
  const lines = '20 g beeswax\n30 g shea butter\n50 g olive oil';

  it('should show what it found, to be put right, and show, scale or save it', async () => {
    const { standIn, state } = await open();
    const form = await standIn.onMessage({ name: readName, text }).formed();
    expect(form.fields[0]?.value).toBe(`**Hall salve**\n${lines}`);
    const shown = await standIn.fillIn(form, { lines });
    for (const grams of ['20.0', '30.0', '50.0', '100.0']) expect(shown.text).toContain(grams);
    const scaled = await standIn.fillIn(form, { lines, make: '24 tins of 15 g' });
    // 24 x 15 g is 360 g; 360 / 0.97 = 371.134 g, so 371.2 g at a step of 0.1 g.
    expect(scaled.text).toContain('371.2');
    expect(Object.values((await state()).recipes)).toHaveLength(2);
    const saved = await standIn.fillIn(form, { lines, name: 'Hall salve' });
    expect(saved.text).toContain('Saved: Hall salve');
  });

  it('should read a small text file with it, and leave out one that is large or of another kind', async () => {
    const { standIn } = await open();
    const bytes = (said: string) => new TextEncoder().encode(said);
    const attachments = [
      standIn.attach('hall.png', bytes('no recipe')),
      standIn.attach('hall.txt', bytes(lines)),
    ];
    const form = await standIn.onMessage({ name: readName, text: 'as promised', attachments }).formed();
    expect(form.fields[0]?.value).toBe(`as promised\n${lines}`);
    const large = [standIn.attach('hall.txt', bytes('x\n'.repeat(10_000)))];
    const nothing = await standIn.onMessage({ name: readName, text: '', attachments: large }).until(1);
    expect(nothing.text).toContain('no words');
  });

  it('should say so when there is nothing to read', async () => {
    const { standIn } = await open();
    const nothing = await standIn.onMessage({ name: readName, text: '```\n```' }).until(1);
    expect(nothing.first.aside).toBe(true);
    expect(nothing.text).toContain('no words');
    const unknown = await standIn.onMessage({ name: 'Brew it', text }).until(1);
    expect(unknown.text).toContain('I do not know that command');
  });
});
