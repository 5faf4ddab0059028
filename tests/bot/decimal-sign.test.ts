import { describe, expect, it } from 'vitest';
import { textOf } from '../../bot/render/text.ts';
import { answerOf, type TestHouse, testHouse } from '../helpers/house.ts';

// How numbers are written is a group's choice. A comma must never change what is meant when an answer is said back.

const texts = async (house: TestHouse, say: string): Promise<string> =>
  textOf(await house.say(say), { width: 80, next: true });

const withCommas = async (): Promise<TestHouse> => {
  const house = await testHouse();
  await house.say('decimal comma');
  return house;
};

const asked = 'scale 20.5 g beeswax, 30 g shea butter, 49.5 g olive oil to 24 tins of 15 ml';

describe('a group that writes decimal commas', () => {
  it('should see commas wherever it reads numbers, and the same figures as with points', async () => {
    const points = await testHouse();
    const commas = await withCommas();
    const [before, after] = [await points.say(asked), await commas.say(asked)];
    expect(answerOf(after).figures).toEqual(answerOf(before).figures);
    const shown = textOf(after, { width: 80 });
    expect(shown.replaceAll(/(\d),(\d)/g, '$1.$2')).toBe(textOf(before, { width: 80 }));
    expect(shown).not.toMatch(/\d\.\d/);
    expect(shown).toMatch(/beeswax\s+20,5/);
  });

  it('should read its own table when it is said back, to the last digit', async () => {
    const house = await withCommas();
    await house.say('scale reads 0.001 g');
    const first = await house.say('scale 17 g beeswax, 83 g olive oil to 72.617 g');
    const rows = textOf(first, { width: 80 }).matchAll(/^(beeswax|olive oil)\s+\d+\s+(\S+)$/gm);
    const lines = [...rows].map(([, name, grams]) => `${grams} g ${name}`);
    // 17 % of 72.617 g is 12.34489 g.
    expect(lines).toEqual(['12,345 g beeswax', '60,272 g olive oil']);
    const again = answerOf(await house.say(`scale ${lines.join(', ')} to 72,617 g`));
    expect(again.figures.total_g).toBe(72.617);
    expect(again.figures.lines).toMatchObject([{ grams: 12.345 }, { grams: 60.272 }]);
  });

  it('should read 12,345 as thousands only where points are written', async () => {
    const value = async (house: TestHouse) => answerOf(await house.say('12,345 g in kg')).figures.value;
    expect(await value(await testHouse())).toBeCloseTo(12.345, 9);
    expect(await value(await withCommas())).toBeCloseTo(0.012345, 9);
  });

  it('should be told how a point was read that may have been meant for thousands', async () => {
    const house = await withCommas();
    expect(await texts(house, '1.250 g in kg')).toMatch(
      /read as a decimal sign: 1,25\. For thousands\s+write 1250\./,
    );
    expect(await texts(house, '1,250 g in kg')).not.toContain('thousands');
    expect(await texts(await testHouse(), '1.250 g in kg')).not.toContain('thousands');
  });

  it('should find names and codes by what it is shown, and have files and buttons unchanged', async () => {
    const house = await withCommas();
    await house.say('save recipe Balm 2.5: 20.5 g beeswax, 79.5 g olive oil');
    await house.say('bought 500 g beeswax lot K1.5, 14.50');
    for (const said of ['show Balm 2,5', 'show recipe "Balm 2.5"'])
      expect(await texts(house, said)).toContain('Balm 2.5, version 1');
    const shown = await texts(house, 'show Balm 2.5');
    expect(shown).toContain('Balm 2.5');
    expect(shown).toMatch(/beeswax\s+20,5/);
    expect(await texts(house, 'list recipes')).toContain('Balm 2.5');
    expect(await texts(house, 'lot K1.5')).toMatch(/Lot K1\.5[\s\S]*14,50/);
    const { files = [] } = answerOf(await house.say('export as csv'));
    const all = files.map(({ bytes }) => new TextDecoder().decode(bytes)).join('\n');
    expect(all).toContain('20.5');
    expect(all).not.toMatch(/\d,5\b.*beeswax|20,5/);
    const { next = [] } = answerOf(await house.say('show Balm 2.5'));
    expect(JSON.stringify(next)).toContain('20.5 g beeswax');
  });

  it('should have refusals in commas, and law as it is written', async () => {
    const house = await withCommas();
    expect(await texts(house, 'scale reads 0,02 g')).toContain('0,01 g or 0,001 g');
    await house.say('region us');
    const label = await texts(house, 'label for Fernlea hand balm, 12 g');
    expect(label).not.toMatch(/CFR \d+,\d/);
  });

  it('should go back to points, and keep both over what is recorded', async () => {
    const house = await withCommas();
    expect(await texts(house, '5 oz in g')).toContain('141,7 g');
    await house.say('numbers with a point');
    expect(await texts(house, '5 oz in g')).toContain('141.7 g');
    await house.say('undo');
    expect(await texts(house, '5 oz in g')).toContain('141,7 g');
    expect(await texts(house, 'history')).toContain('decimal sign comma');
  });
});
