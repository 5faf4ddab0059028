import { describe, expect, it } from 'vitest';
import type { Answer } from '../../bot/answer.ts';
import { textOf } from '../../bot/render/text.ts';
import { ingredients } from '../../core/ingredients.ts';
import { blendOf } from '../../core/melt/blend.ts';
import { roughnessOf } from '../../core/melt/rough.ts';
import { treatmentOf } from '../../core/melt/treatment.ts';
import { worked } from '../core/melt/blends.ts';
import { answerOf, testHouse, troubleIn } from '../helpers/house.ts';

const house = await testHouse();

const answered = async (text: string): Promise<Answer> => answerOf(await house.say(text));
const shown = (answer: Answer): string =>
  textOf({ topic: 'melt', request: {}, answer }, { width: 400 }).replaceAll('\n', ' ');
const rough = ({ warnings }: Answer): string | undefined =>
  warnings.find(({ code }) => code === 'rough-estimate')?.text;

/** What the model knows too little about, by the library's ids. */
const because = (shares: Readonly<Record<string, number>>): readonly string[] =>
  roughnessOf(worked(blendOf(Object.entries(shares).map(([ingredient, weight]) => ({ ingredient, weight })))))
    .because;

describe('what the melting model has no row for', () => {
  const withoutFigures = ingredients.filter((found) => treatmentOf(found).kind === 'no-data');

  it('should be something', () => {
    expect(withoutFigures.length).toBeGreaterThan(5);
  });

  it.each(withoutFigures.map(({ id, name }) => [id, name] as const))(
    'should be refused by name: %s',
    async (id, name) => {
      const trouble = troubleIn(await house.say(`melt 20% ${id.replaceAll('-', ' ')}, 80% olive oil`));
      expect(trouble.code).toBe('missing');
      expect(trouble.text).toContain(name.replace(/ \([^)]*\)$/, ''));
    },
  );

  it('should be named together, with where to ask for their own ranges', async () => {
    const trouble = troubleIn(await house.say('melt 10% castor wax, 10% soy wax, 80% olive oil'));
    expect(trouble.text).toContain('castor wax and soy wax melt in oil');
    expect(trouble.text).toContain('"melting point of castor wax"');
  });

  it.each([
    ['water', 'mouldy'],
    ['aloe vera gel', 'mouldy'],
    ['glycerin', 'does not dissolve'],
    ['emulsifying wax', 'for creams'],
    ['lecithin', 'for creams'],
    ['petroleum jelly', 'no figures'],
    ['mineral oil', 'no figures'],
    ['aloe butter', 'mixture'],
  ])('should be told why: %s', async (name, why) => {
    for (const text of [
      `when does 10% ${name}, 20% beeswax, 70% olive oil melt`,
      `scale 10 g ${name}, 20 g beeswax, 70 g olive oil to 24 tins of 15 ml`,
      `swap olive oil for ${name} in Fernlea hand balm`,
    ]) {
      const trouble = troubleIn(await house.say(text));
      expect(trouble.code).toBe('unknown-ingredient');
      expect(trouble.text).toContain(name);
      expect(trouble.text).toContain(why);
    }
  });

  it('should be unknown without a reason where nobody can give one', async () => {
    const trouble = troubleIn(await house.say('melt 20% unobtainium, 80% olive oil'));
    expect(trouble.text).toContain('I do not know the ingredient "unobtainium"');
  });
});

describe('what is in a recipe and not in its forecast', () => {
  it.each([
    ['zinc oxide', 'zinc oxide (a powder)'],
    ['mica', 'mica (a powder)'],
    ['honey', 'honey (brings water)'],
  ])('should be said: %s', async (name, said) => {
    const text = shown(await answered(`melt 10% ${name}, 20% beeswax, 70% olive oil`));
    expect(text).toContain(`Left out of the forecast: ${said}. The figures are those of the other 90 %`);
  });

  it('should be said where it is nearly all of it, and that the figures are for the rest', async () => {
    const answer = await answered('melt 90% zinc oxide, 10% beeswax');
    expect(shown(answer)).toContain('those of the other 10 %; powder makes it stiffer');
    expect(rough(answer)).toContain('zinc oxide behaves');
  });

  it('should be said of what stands in for something else', async () => {
    const text = shown(await answered('melt 2% menthol crystals, 8% squalane, 20% beeswax, 70% olive oil'));
    expect(text).toContain('Taken as scent oil, which never sets: menthol crystals.');
    expect(text).toContain('Taken as a liquid that never sets: squalane.');
    const acids = shown(await answered('melt 40% sal butter, 40% cupuacu butter, 20% beeswax'));
    expect(acids).toContain('Reckoned from fatty acids: sal butter, cupuacu butter.');
  });

  it('should warn of what is wrong with the recipe, not only of its melting', async () => {
    const strong = await answered('melt 10% peppermint oil, 20% beeswax, 70% olive oil');
    expect(strong.warnings.map(({ code }) => code)).toContain('aroma-too-high');
    const wet = await answered('melt 5% honey, 20% beeswax, 75% olive oil');
    expect(wet.warnings.map(({ code }) => code)).toContain('brings-water');
  });

  it('should be said after a swap too', async () => {
    const answer = await answered('swap shea for mango butter in 20% beeswax, 20% zinc oxide, 60% shea');
    expect(shown(answer)).toContain('Left out of the forecast: zinc oxide (a powder)');
    expect(rough(answer)).toContain('zinc oxide');
  });
});

describe('a rough estimate', () => {
  it.each([
    [{ lanolin: 40, beeswax: 20, 'olive-oil': 40 }, ['lanolin']],
    [{ 'castor-oil': 70, beeswax: 30 }, ['castor-oil']],
    [{ 'peppermint-essential-oil': 8, beeswax: 22, 'olive-oil': 70 }, ['peppermint-essential-oil']],
    [{ 'zinc-oxide': 12, beeswax: 20, 'olive-oil': 68 }, ['zinc-oxide']],
    [{ 'menthol-crystals': 12, beeswax: 20, 'olive-oil': 68 }, ['menthol-crystals']],
    [{ beeswax: 20, 'shea-butter': 30, 'olive-oil': 50 }, []],
    [{ 'castor-oil': 30, beeswax: 20, 'olive-oil': 50 }, []],
    [{ 'zinc-oxide': 5, beeswax: 20, 'olive-oil': 75 }, []],
  ])('should name what makes it rough: %j', (shares, ids) => {
    expect(because(shares as Readonly<Record<string, number>>)).toEqual(ids);
  });

  it('should count what is weak together', () => {
    expect(because({ 'zinc-oxide': 6, lanolin: 6, beeswax: 20, 'olive-oil': 68 })).toEqual([
      'lanolin',
      'zinc-oxide',
    ]);
  });
});

/** Half the width in °C that measurements leave to "fully melted", by what carries the balm (published comparisons). */
const leastHalfC = { wax: 3, carnauba: 5, butter: 2 } as const;

describe('how precise a forecast claims to be', () => {
  it.each([
    ['20% beeswax, 80% olive oil', leastHalfC.wax],
    ['12% candelilla, 30% cocoa butter, 58% olive oil', leastHalfC.wax],
    ['10% carnauba, 90% olive oil', leastHalfC.carnauba],
    ['60% cocoa butter, 40% olive oil', leastHalfC.butter],
    ['100% coconut oil', leastHalfC.butter],
    ['100% beeswax', leastHalfC.wax],
    ['40% lanolin, 20% beeswax, 40% castor oil', leastHalfC.wax],
  ])('should be whole degrees and solids to 5 %%, with its own width: %s', async (recipe, half) => {
    const answer = await answered(`melt ${recipe}`);
    const text = shown(answer);
    expect(text).not.toMatch(/\d[.,]\d+ ?°/);
    for (const [, solids] of text.matchAll(/~(\d+)/g)) expect(Number(solids) % 5).toBe(0);
    const [, clear, low, high] = /melted at about (\d+) °C \((\d+) to (\d+)\)/.exec(text) ?? [];
    expect(Number(clear) - Number(low)).toBeGreaterThanOrEqual(half - 1);
    expect(Number(high) - Number(clear)).toBeGreaterThanOrEqual(half - 1);
    const [, soft, from, to] = /[Ss]oftens at about (\d+) °C \((-?\d+) to (\d+)\)/.exec(text) ?? [];
    expect(Number(soft) - Number(from)).toBeGreaterThanOrEqual(3);
    expect(Number(to) - Number(soft)).toBeGreaterThanOrEqual(3);
    const [, , least, most] = /firmness about ([\d.]+), ([\d.]+) to ([\d.]+);/.exec(text) ?? [];
    expect(Number(most) / Number(least)).toBeGreaterThan(1.4);
  });
});
