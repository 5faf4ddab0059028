import '../helpers/undrawn.ts';
import { describe, expect, it } from 'vitest';
import type { Answer } from '../../bot/answer.ts';
import { memoryKeeper } from '../../bot/book/keeper-memory.ts';
import { pipkin } from '../../bot/handle.ts';
import { anyone, heard } from '../helpers/house.ts';

// Makers call their recipes what they like. Whatever the words of a name would ask for by themselves, the recipe is saved,
// poured, counted and found under it. Every count is plain addition.

const names = [
  'Gold label balm',
  'Class of 2027',
  'Poured gold',
  'Body butter',
  'Stock balm',
  'Label maker balm',
  'Workshop balm',
  'Sold out stick',
  'Report card balm',
  'Trace of rose',
  'Undo stick',
  'Vegan balm',
  'May balm',
  'Good Friday balm',
  'Test batch',
  'Dry hands',
  'Eczema salve',
  'Binned balm',
  "Price's balm",
  'Number 7 balm',
  'Came back balm',
  'Half and half',
  'Nut butter balm',
  'Reminder balm',
  'Return of the balm',
  '24 hour balm',
  'Last of the summer balm',
];

const at = Date.UTC(2027, 0, 5, 10);

const houseFor = () => {
  const house = pipkin({ keeper: memoryKeeper(), onFault: (_id, fault) => expect.fail(String(fault)) });
  let minutes = 0;
  return async (text: string): Promise<{ topic: string | null; answer: Answer }> => {
    minutes += 1;
    const reply = await house.hear(heard(text, { group: 'hall', at: at + minutes * 60_000, member: anyone }));
    if (!('answer' in reply)) throw new Error(`${text}: ${reply.error.text}`);
    return { topic: reply.topic, answer: reply.answer };
  };
};

describe('a recipe whose name says something else', () => {
  it.each(names)('should be known by it in every topic: %s', async (name) => {
    const say = houseFor();
    await say('bought 2 kg beeswax lot W1, best before 2029-06');
    await say('bought 3 kg olive oil lot O1, best before 2028-12');
    const told = async (text: string, topic: string, figures: Readonly<Record<string, unknown>>) => {
      const said = await say(text);
      expect([said.topic, said.answer.figures], text).toMatchObject([topic, figures]);
      return said.answer;
    };
    await told(`save recipe ${name}: 20 g beeswax, 80 g olive oil`, 'recipe', {
      recipe: { name, version: 1 },
    });
    await told(`poured 24 tins of 15 ml of ${name} today`, 'batch', { containers: 24, recipe: name });
    await told(`how many tins of ${name} are left?`, 'batch', { left: 24 });
    await told(`gave 6 tins of ${name} to the school`, 'batch', { left: 18 });
    await told(`sold 2 of the ${name} at the market`, 'batch', { left: 16 });
    await told(`where did the ${name} go?`, 'trace', { containers_out: 8, containers_left: 16 });
    await told(`show ${name}`, 'recipe', { recipe: { name } });
    await told(`scale ${name} to 500 g`, 'scale', { total_g: 500 });
    await told(`made 10 jars of 30 g of ${name} yesterday`, 'batch', {
      containers: 10,
      made_on: '2027-01-04',
    });
    await told(`cost of ${name} for 24 tins of 15 ml`, 'cost', {});
    await told(`check ${name}`, 'check', { verdict: 'within' });
    const label = await told(`label for ${name}, 12 g`, 'label', { net_g: 12 });
    expect(JSON.stringify(label)).toContain(JSON.stringify(name).slice(1, -1));
    await told(`rename ${name} to Winter hands`, 'recipe', {});
    await told('show Winter hands', 'recipe', { recipe: { name: 'Winter hands' } });
  });
});
