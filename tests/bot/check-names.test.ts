import { describe, expect, it } from 'vitest';
import { ingredients } from '../../core/ingredients.ts';
import { testHouse } from '../helpers/house.ts';

type House = Awaited<ReturnType<typeof testHouse>>;

/** Codes of the answer, or the code of the error, so that a refusal is never taken for a clean recipe. */
const told = async (house: House, say: string): Promise<readonly string[]> => {
  const reply = await house.say(say);
  return 'error' in reply ? [`refused: ${reply.error.code}`] : reply.answer.warnings.map(({ code }) => code);
};

const list = (text: string): readonly string[] =>
  text
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');

/** Names for which an expectation does not hold: the failures, name by name. */
const failing = async (
  names: readonly string[],
  say: (name: string) => string,
  holds: (codes: readonly string[]) => boolean,
): Promise<readonly string[]> => {
  const house = await testHouse();
  const bad: string[] = [];
  for (const name of names) if (!holds(await told(house, say(name)))) bad.push(name);
  expect(house.faults).toEqual([]);
  return bad;
};

const has =
  (...wanted: readonly string[]) =>
  (codes: readonly string[]): boolean =>
    wanted.every((code) => codes.includes(code));
const alarms = [
  'over-limit',
  'prohibited',
  'not-for-lips',
  'aroma-too-high',
  'light-sensitising',
  'brings-water',
  'dose-over-usual',
];
const isQuiet = (codes: readonly string[]): boolean =>
  codes.length > 0 && !codes.some((code) => alarms.includes(code) || code.startsWith('refused'));

/** Cautions on water (common practice, no source: an oil and wax balm keeps because nothing in it is wet). */
const wet =
  list(`buttermilk, fresh buttermilk, kefir, double cream, sour cream, goat's milk, tinned coconut milk, oat milk, yoghurt, whey,
  cornflower water, rice water, rainwater, cucumber hydrosol, orange blossom water, melted snow, cold green tea, strong black tea, espresso,
  cranberry juice, freshly squeezed lemon juice, birch sap, raw honey, lavender honey, honeycomb, royal jelly, maple syrup, treacle, strawberry jam,
  vodka, beer, red wine, cider vinegar, tincture of benzoin, calendula in vodka, rosemary in glycerine, vanilla extract, peppermint extract,
  aloe vera gel, glycerine, hand cream, mashed banana, ripe avocado, grated carrot, egg yolk, sliced lemon, orange zest, calendula (fresh),
  mint straight from the garden, fresh parsley, grated ginger`);

/** Read in the allergen flags of the fact tables. */
const nuts = list(
  'peanut butter, ground almonds, almond milk, hazelnut milk, filbert oil, Arachis Hypogaea Oil',
);
const foods = list('soy milk, tahini, gingelly oil, wheat flour, soy lecithin');

describe('a check by whatever name a thing goes', () => {
  it('should tell of water in whatever is wet', async () => {
    expect(
      await failing(wet, (name) => `check 20% beeswax, 74% olive oil, 6% ${name}`, has('brings-water')),
    ).toEqual([]);
  });

  it('should tell of nuts and of food allergens', async () => {
    const say = (name: string): string => `check 20% candelilla wax, 60% olive oil, 20% ${name}`;
    expect(await failing(nuts, say, has('nut-allergen'))).toEqual([]);
    expect(await failing(foods, say, has('food-allergen'))).toEqual([]);
  });

  it('should count an essential oil by its Latin name as scent (common practice, no source: 0.5 to 1 %)', async () => {
    const latin = ingredients
      .filter(({ kind }) => kind === 'essential-oil')
      .map(({ origin = '' }) => origin.replace(/ (?:\/|var\.).*$/, '').replace(/\s*\([^)]*\)/g, ''))
      .filter((name) => /^[A-Z][a-z]+ (?:x )?[a-z]+$/.test(name));
    expect(latin.length).toBeGreaterThan(20);
    for (const form of ['oil', 'essential oil'])
      expect(
        await failing(
          [...new Set(latin)],
          (name) => `check 20% beeswax, 76% olive oil, 4% ${name} ${form}`,
          (codes) => codes.includes('aroma-too-high'),
        ),
      ).toEqual([]);
  });

  it('should raise no alarm for an oil, butter or wax by any of its names', async () => {
    const plain = ingredients
      .filter(({ kind, lips }) => /^(?:liquid-oil|butter|wax)$/.test(kind) && lips === 'ok')
      .flatMap(({ name, names, inci }) => [name, inci, ...names.slice(0, 2)])
      .filter((name) => !/^(?:borage|vegetable oil|soy|rice bran|jojoba wax)$/i.test(name));
    expect(plain.length).toBeGreaterThan(150);
    expect(await failing(plain, (name) => `check 20% beeswax, 50% olive oil, 30% ${name}`, isQuiet)).toEqual(
      [],
    );
  });

  it.each([
    // Annex III of Regulation (EC) 1223/2009 and the IFRA Standards, 49th Amendment, Category 1; all read.
    ['isoeugenol', 0.02],
    ['estragole', 0.012],
    ['cinnamyl alcohol', 0.22],
    ['verbena absolute', 0.12],
    ['tagetes oil', 0.01],
    ['retinol', 0.3],
    ['Peru balsam oil', 0.4],
  ])('should tell %s over %d %% from as much or less', async (name, limit) => {
    const house = await testHouse();
    const say = (share: number): string =>
      `check 20% beeswax, ${Number((80 - share).toFixed(6))}% olive oil, ${Number(share.toFixed(6))}% ${name}`;
    expect(await told(house, say(limit * 1.05))).toContain('over-limit');
    const under = await told(house, say(name === 'isoeugenol' ? 0.0189 : limit * 0.97));
    expect(under).not.toContain('over-limit');
    expect(under.some((code) => code.startsWith('refused'))).toBe(false);
  });
});

describe('a list that is handed over to be checked', () => {
  const oils = '22 g beeswax, 70 g hazelnut oil, 8 g goat milk';
  const lines = '- beeswax 22 %\n- hazelnut oil 70 %\n- goat milk 8 %';

  it.each([
    'Is this one sound for lips? LIST',
    'Give me a verdict on this lip balm: LIST',
    'Before I melt anything, check LIST. Goes on lips.',
    'Does anything in here not belong in a lip balm?\nLIST',
    'LIST – would you put that on your lips?',
    'If I melt LIST, is that a safe lip balm?',
    'Would it be ok to sell LIST as lip balm in the EU?',
    'check LIST, a vegetarian lip balm for my grandchild of two',
    'check this vegan lip stick\nLIST',
    'Review my lip balm: LIST',
    'check my mint lip balm, is the mint too much? LIST',
    'Run your rules over this: LIST',
  ])('should be looked at however it is asked: %s', async (say) => {
    const house = await testHouse();
    for (const each of [oils, lines])
      expect(await told(house, say.replace('LIST', each))).toEqual(
        expect.arrayContaining(['nut-allergen', 'brings-water']),
      );
  });

  it.each([
    'check for lips: beeswax 22, olive oil 70, goop 8',
    'check for lips\nbeeswax 22\nolive oil 70\ngoop 8',
    'check 22 g beeswax, 70 g olive oil, some goop',
    'check 22 % beeswax, 78 % olive oil, goop 8',
    'check 22 g beeswax, 78 g lilac infused oil',
  ])('should never lose a line that nobody knows: %s', async (say) => {
    const house = await testHouse();
    expect((await told(house, say)).some((code) => code.startsWith('refused'))).toBe(true);
  });

  it.each([
    ['a pinch of cinnamon powder', 'not-for-lips'],
    ['some rose water', 'brings-water'],
    ['a little milk', 'brings-water'],
    ['one egg yolk', 'brings-water'],
    ['a handful of fresh mint', 'brings-water'],
    ['10 g oil infused with calendula and arnica', 'not-for-lips'],
    ['10 g almond oil (infused with comfrey leaf)', 'not-for-lips'],
    ['5 g foxglove infused oil', 'not-for-lips'],
  ])('should count %s', async (line, code) => {
    const house = await testHouse();
    expect(await told(house, `check 20 g beeswax, 70 g olive oil, ${line}`)).toContain(code);
  });

  it.each([
    'for my grandchild of two',
    'for my son who is 6',
    'for under-fives',
    'for ages 3 to 5',
    'for a girl of 4',
    'for my six-month-old',
    'for toddlers aged 2',
    'for a little boy',
  ])(
    'should know a child: %s (meadowsweet is not for children: fact table of herbs, memory)',
    async (whom) => {
      const house = await testHouse();
      const say = `check 20% beeswax, 80% meadowsweet infused oil, ${whom}`;
      expect(await told(house, say)).toContain('not-for-children');
    },
  );

  it('should find in a saved recipe what was doubtful when it was saved', async () => {
    const house = await testHouse();
    await house.say('save recipe Hedge salve: 20% beeswax, 40% olive oil, 40% marigold infused oil');
    expect(await told(house, 'check Hedge salve')).toEqual(
      expect.arrayContaining(['wrong-species', 'daisy-family']),
    );
  });
});
