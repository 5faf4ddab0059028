import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pointedNames } from '../../bot/readers/pointed-name.ts';
import { toldIn } from '../../bot/told/told.ts';
import { toldUses } from '../../bot/told/uses.ts';
import { understand } from '../../bot/understand.ts';
import { answerOf, now, type TestHouse, testHouse } from '../helpers/house.ts';
import { phrasesIn } from '../helpers/phrases.ts';

const samples: Readonly<Record<string, string>> = {
  R: 'Fernlea hand balm',
  i: 'cocoa butter',
  g: '20 g',
  count: '2 tins',
  lot: 'K12',
  new: 'N7',
  lots: 'K12, O1',
  date: '2026-11-24',
  best: '2028-03-31',
  paid: '14.50',
  whom: 'the spring fair',
};

const filledIn = (plain: string, batch: string): string =>
  plain.replace(/\{([a-z]+)\}/gi, (place, kind: string) =>
    kind === 'batch' ? batch : (samples[kind] ?? place),
  );

/** A house with two lots on the shelf, and a batch of which some is out. */
const onBench = async (): Promise<TestHouse & { readonly batch: string }> => {
  const house = await testHouse();
  for (const told of [
    'bought 500 g beeswax lot K12 on 1 November, best before 2028-01',
    'bought 1 kg olive oil lot O1 on 1 November, best before 2027-09',
    'bought 500 g cocoa butter lot CB on 1 November, best before 2027-09',
  ])
    answerOf(await house.say(told));
  const poured = answerOf(await house.say('poured 24 tins of 15 ml of Fernlea hand balm on 10 November'));
  const batch = String(poured.figures.lot);
  answerOf(await house.say(`gave 6 tins of ${batch} to the spring fair on 12 November`));
  return { ...house, batch };
};

const seqOf = async ({ keeper }: TestHouse): Promise<number> => (await keeper.open('local')).state.seq;

describe('the uses of what is told', () => {
  const forms = toldUses().flatMap(({ forms: all }) => all.map(({ plain }) => plain));

  it('should be many, and leave no place empty', () => {
    expect(forms.length).toBeGreaterThan(50);
    for (const plain of forms) expect(filledIn(plain, '26-KUFE')).not.toMatch(/[{}<>[\]]/);
  });

  it.each(forms)('should each come to something that is written down: %s', async (plain) => {
    const house = await onBench();
    const before = await seqOf(house);
    answerOf(await house.say(filledIn(plain, house.batch)));
    expect(await seqOf(house)).toBeGreaterThan(before);
  });
});

const plainsOf = async (text: string): Promise<readonly string[]> => {
  const house = await onBench();
  const { state } = await house.keeper.open('local');
  const said = text.replaceAll('{a}', house.batch);
  const { reading } = pointedNames(understand(said, state, state.settings, undefined, now));
  return toldIn(reading).map(({ plain }) => plain.replaceAll(house.batch, '{a}'));
};

describe('a message that tells', () => {
  it.each([
    ['I make present of 6 tins of {a} to my sister', 'gave 6 tins of {a} to my sister'],
    ['The tea room has bought 4 tins of {a}', 'sold 4 tins of {a} to the tea room'],
    ['One of {a} stays with us as the retention sample', 'keep 1 of {a}'],
    ['Put the tub on the scale: K12 is really 240 g', 'K12 is really 240 g'],
    ['Sweet almond oil for the chamomile: 800 g bought, lot L2', 'bought 800 g Sweet almond oil lot L2'],
    [
      'First pour of the year is Fernlea hand balm: 10 tins, 20 g each',
      'poured 10 tins of 20 g of Fernlea hand balm',
    ],
    [
      'Nine tins of 20 g of Fernlea hand balm cast, they smell of apples',
      'poured 9 tins of 20 g of Fernlea hand balm, note: they smell of apples',
    ],
  ])('should be read by the things in it: %s', async (say, plain) => {
    expect((await plainsOf(say))[0]).toBe(plain);
  });

  it.each([
    ['it says that it was not so', 'not one of the 3 tins of {a} went in the bin'],
    ['it is still to be done', '3 tins of {a} will go in the bin'],
    ['it asks', 'did 3 tins of {a} go in the bin?'],
    ['it is doubted', 'I think maybe 3 tins of {a} went in the bin'],
    ['it is supposed', 'suppose that 3 tins of {a} went in the bin'],
    ['somebody else is said to say so', 'rumour has it that 3 tins of {a} went in the bin'],
    ['it happens again and again', '3 tins of {a} go in the bin every week'],
    ['it is not said exactly', '3-4 tins of {a} went in the bin'],
    ['a thing nobody knows is in it', '3 tins of {a} with lard went in the bin'],
    ['a number would be lost', '3 tins of {a} and 7 others went in the bin'],
    ['two things happened in it', '3 tins of {a} were sold and 2 jars went in the bin'],
  ])('should be left alone where %s', async (_why, say) => {
    expect(await plainsOf(say)).toEqual([]);
  });

  it('should be shown as it was read, and offered to be undone', async () => {
    const house = await onBench();
    const before = await seqOf(house);
    const answer = answerOf(await house.say(`I make present of 6 tins of ${house.batch} to my sister`));
    expect(JSON.stringify(answer.blocks)).toContain(`gave 6 tins of ${house.batch} to my sister`);
    expect(answer.next?.[0]?.say).toBe('undo');
    expect(answer.figures.left).toBe(12);
    answerOf(await house.say('undo'));
    expect(await seqOf(house)).toBeGreaterThan(before);
    expect(answerOf(await house.say(`batch ${house.batch}`)).figures.left).toBe(18);
  });
});

describe('a message that tells of nothing done', () => {
  const refused = phrasesIn(
    JSON.parse(readFileSync(new URL('../phrases/told-refused.json', import.meta.url), 'utf8')),
  );

  it('should be tried in many ways', () => {
    expect(refused.length).toBeGreaterThan(80);
  });

  it.each([
    'We will pour 24 tins of 15 ml of Fernlea hand balm tomorrow',
    'In spring we pour 24 tins of 15 ml of Fernlea hand balm',
    'Before we pour 10 tins of 20 g of Fernlea hand balm, warm the jug',
    'When 20 tins of 15 ml of Fernlea hand balm are poured, wipe the jug',
    '24 tins of 15 ml of Fernlea hand balm, what did they weigh',
    'The workshop has 12 people, they made Fernlea hand balm in 2 tins of 15 ml each',
    'A pour of 24 tins of Fernlea hand balm takes an hour',
    'Some of K12 was used for candles',
    'Can you keep one of {a}',
    'Is K12 open',
    'Who took the last of O1',
  ])('should write nothing, whatever is answered: %s', async (say) => {
    const house = await onBench();
    const before = await seqOf(house);
    await house.say(say.replaceAll('{a}', house.batch));
    expect(await seqOf(house)).toBe(before);
  });
});
