import '../helpers/undrawn.ts';
import { describe, expect, it } from 'vitest';
import { gathered } from '../../bot/gathered/gather.ts';
import { usesIn, withWishes } from '../../bot/gathered/use.ts';
import { allUses } from '../../bot/gathered/uses.ts';
import { pointedNames } from '../../bot/readers/pointed-name.ts';
import { understand } from '../../bot/understand.ts';
import { answerOf, now, testHouse, troubleIn } from '../helpers/house.ts';

const samples: Readonly<Record<string, string>> = {
  R: 'Fernlea hand balm',
  i: 'shea butter',
  i1: 'shea butter',
  i2: 'mango butter',
  i3: 'lanolin',
  d: '6 drops',
  d1: '6 drops',
  herb: 'calendula',
  herb1: 'calendula',
  herb2: 'chamomile',
  oil: 'olive oil',
  aroma: 'lavender essential oil',
  g: '300 g',
  g1: '40 g',
  g2: '300 g',
  v: '200 ml',
  '%': '1 %',
  t: '35 C',
  r: '1:8',
  n: '12',
  n1: '12',
  n2: '2',
  tins: '24 tins of 15 ml',
  size: '15 ml',
  region: 'the US',
  q: 'soothes dry lips',
  lot: 'C7',
  date: '1 July 2027',
};

/** Forms that make sense of other things than these. */
const others: readonly (readonly [RegExp, Readonly<Record<string, string>>])[] = [
  // Only what is written out says by itself how much it is.
  [/^cost of \{R\}$/, { R: '100 g beeswax, 300 g olive oil' }],
  [/^(?:double|triple|half of|\{n\} times) /, { R: 'Fernlea mint lip balm' }],
  [/^infuse \{R\}/, { R: '40 g calendula and 20 g chamomile' }],
  [/^(?:infuse|how much) \{aroma\}/, { aroma: 'lavender' }],
  [/strained \{aroma\}/, { aroma: 'lavender oil' }],
  [/to the nearest/, { g: '1 g', g2: '1 g', tins: '24 tins of 15 ml' }],
  [/^(?:sell|what margin)|at \{n1?\}/, { n: '6', n1: '6' }],
  [/mm/, { n: '40', n1: '15', n2: '48' }],
];

const filledIn = (plain: string): string => {
  const other = others.find(([form]) => form.test(plain))?.[1] ?? {};
  return plain.replace(
    /\{([a-zA-Z%]{1,8}\d?)\}/g,
    (place, slot: string) => other[slot] ?? samples[slot] ?? place,
  );
};

/** What has to be asked before a form that goes on from it. */
const earlier: Readonly<Record<string, string>> = {
  claim: 'can I say "heals cracked lips"',
  infuse: 'infuse 40 g dried calendula in sunflower oil',
  check: 'is 2 % peppermint oil ok in a lip balm',
  label: 'print labels for Fernlea hand balm, 12 tins of 15 ml',
  workshop: 'workshop for 12 people, 2 tins of 15 ml each, Fernlea hand balm',
  cost: 'cost of Fernlea hand balm for 24 tins of 15 ml',
  scale: 'scale Fernlea hand balm to 24 tins of 15 ml',
  convert: '5 oz in g',
  melt: 'will Fernlea hand balm survive 35 C',
  substitute: 'swap beeswax for candelilla in Fernlea hand balm',
  design: 'vegan stick that survives 38 C',
};

describe('the uses', () => {
  const forms = allUses
    .flatMap(usesIn)
    .flatMap((use) =>
      use.forms.map(({ plain }) => ({ plain: filledIn(withWishes(plain, use, '')), after: use.after })),
    );

  it('should be many, and leave no place empty', () => {
    expect(forms.length).toBeGreaterThan(100);
    for (const { plain, after } of forms) {
      expect(plain).not.toMatch(/[{}<>[\]]/);
      expect([undefined, ...Object.keys(earlier)]).toContain(after);
    }
  });

  it.each(forms)('should each come to something a topic answers: $plain', async ({ plain, after }) => {
    const house = await testHouse();
    for (const told of ['shea costs 18 per kg', 'tins are 0.35 each', 'bought 500 g beeswax lot C7'])
      answerOf(await house.say(told));
    const poured = answerOf(await house.say('poured 24 tins of 15 ml of Fernlea hand balm today'));
    if (after !== undefined) answerOf(await house.say(earlier[after] ?? ''));
    const answers = await house.say(plain);
    // What is asked of a lot on the shelf and of a batch is not the same.
    answerOf(
      'answer' in answers ? answers : await house.say(plain.replace('C7', String(poured.figures.lot))),
    );
  });
});

/** The plain forms that what is in a message comes to. */
const plainsOf = async (text: string): Promise<readonly string[]> => {
  const { state } = await (await testHouse()).keeper.open('local');
  const { reading } = pointedNames(understand(text, state, state.settings, undefined, now));
  return gathered(reading).map(({ plain }) => plain);
};

describe('a message nobody understands', () => {
  it.each([
    [
      'The dried thyme weighs 18 g and the sunflower oil 144 g. How much will I get back?',
      '18 g thyme in 144 g sunflower oil',
    ],
    ['Herb: chamomile, dried, 35 g. Oil: jojoba, 350 g. Thanks!', 'infuse 35 g chamomile in 350 g jojoba'],
    [
      'I fancy 80 g of dried nettle at one to ten in sunflower oil, on the windowsill',
      'infuse 80 g nettle in sunflower oil at 1:10 cold',
    ],
    [
      'Swimmers at our lake lie about in 34 degrees. Does the hand balm stay a solid thing?',
      'will Fernlea hand balm survive 34 °C',
    ],
    [
      'I do not care for olive oil in the hand balm. Put jojoba in instead',
      'swap olive oil for jojoba in Fernlea hand balm',
    ],
  ])('should be read by what is in it: %s', async (say, plain) => {
    expect((await plainsOf(say))[0]).toContain(plain);
  });

  it.each([
    ['what turns it round is not accounted for', 'the hand balm should not go to 24 tins of 15 ml'],
    ['a thing nobody knows stands in it', 'check the hand balm with lard, is it all right'],
    ['an amount would be lost', 'is 2 % peppermint oil with 3 % lavender oil allowed by my aunt in 40 g'],
    ['it tells of what happened', 'did somebody melt the hand balm yesterday'],
  ])('should be left alone where %s', async (_why, say) => {
    expect(await plainsOf(say)).toEqual([]);
  });

  it('should be told how it was read', async () => {
    const answer = answerOf(
      await (await testHouse()).say(
        'The dried thyme weighs 18 g and the sunflower oil 144 g. How much will I get back?',
      ),
    );
    expect(JSON.stringify(answer)).toContain('I read that as');
  });

  it('should write nothing: what is gathered is a guess', async () => {
    const house = await testHouse();
    troubleIn(await house.say('my aunt fetched those 24 tins of 15 ml of hand balm, lovely thing'));
  });
});
