import { afterAll, describe, expect, it } from 'vitest';
import { closePapers } from '../../bot/papers/paper.ts';
import { textOf } from '../../bot/render/text.ts';
import { answerOf, now, testHouse, troubleIn } from '../helpers/house.ts';
import { readPdf } from '../helpers/read-pdf.ts';

afterAll(closePapers);

const mint = 'label for Fernlea mint lip balm, 12 g';

const answerTo = async (...said: readonly string[]) => {
  const house = await testHouse();
  let reply = await house.say(said[0] ?? '');
  for (const next of said.slice(1)) reply = await house.say(next);
  expect(house.faults).toEqual([]);
  return answerOf(reply);
};

const wordsOn = async (...said: readonly string[]): Promise<string> => {
  const { files = [] } = await answerTo(...said);
  const pages = await readPdf(files[0]?.bytes ?? new Uint8Array());
  return pages
    .flatMap(({ texts }) => texts.map(({ text }) => text))
    .join(' ')
    .replace(/ +/g, ' ');
};

describe('a label', () => {
  it('should come with a PDF of the same words, names never broken by the order', async () => {
    const { figures, files = [] } = await answerTo(`${mint}, region us, round 60 mm, 1 label`);
    expect(files).toMatchObject([{ name: 'labels.pdf', type: 'application/pdf' }]);
    const words = await wordsOn(`${mint}, region us, round 60 mm, 1 label`);
    for (const name of figures.inci as string[]) expect(words).toContain(name);
    expect(words).toContain('Net Wt. 0.42 oz (12 g)');
    expect(words).toContain('Name, street, city, state, ZIP:');
    expect(words).toContain('Report reactions to:');
  });

  it('should leave maker, contact and lot blank and say so, and invent none', async () => {
    const { figures } = await answerTo(mint);
    expect(figures).toMatchObject({ maker: null, contact: null, lot: null });
    const missing = figures.missing as { what: string }[];
    expect(missing.map(({ what }) => what)).toEqual(['maker', 'lot', 'member-language']);
  });

  it('should print both languages in Canada, and the maker’s own words as they were given', async () => {
    const words = await wordsOn(`${mint}, in Canada, maker "Fernlea Makers, Fernlea", round 70 mm, 1 label`);
    expect(words).toContain('Lip balm / Baume à lèvres');
    expect(words).toContain('Ingredients / Ingrédients:');
    expect(words).toContain('Tenir hors de portée des enfants de moins de 3 ans.');
    expect(words).toContain('Fernlea Makers, Fernlea');
  });

  it('should print a date where it is asked for by law, and elsewhere only when it is given', async () => {
    expect((await answerTo(mint)).figures.best_before_printed).toMatch(/^best used before the end of/);
    expect((await answerTo(`${mint}, region us`)).figures.best_before_printed).toBeNull();
    expect((await answerTo(`${mint}, region us, best before 2027-05-17`)).figures.best_before_printed).toBe(
      'Best before 04/2027',
    );
  });

  it('should draw the open jar in place of a date when it keeps for more than 30 months', async () => {
    const words = await wordsOn(`${mint}, keeps 31 months, round 60 mm, 1 label`);
    expect(words).toContain('12M');
    expect(words).not.toContain('best used before');
  });

  it('should obey the day: the EU list before and after 1 August 2026', async () => {
    const at = (day: string) => Date.parse(`${day}T09:00:00Z`);
    const house = await testHouse();
    const list = async (day: string) =>
      answerOf(await house.say(mint, { at: at(day) })).figures.allergen_list;
    expect(await list('2026-07-31')).toBe('old');
    expect(await list('2026-08-01')).toBe('full');
  });

  it('should say that the EU rules are the strictest only where nobody said whose to take', async () => {
    const said = textOf({ topic: 'label', request: {}, answer: await answerTo(mint) }, { width: 200 });
    expect(said).toContain('the strictest');
    const eu = await answerTo(`${mint}, region eu`);
    expect(textOf({ topic: 'label', request: {}, answer: eu }, { width: 200 })).not.toContain('strictest');
    const house = await testHouse();
    await house.say('region eu');
    expect(textOf(await house.say(mint), { width: 200 })).not.toContain('strictest');
  });

  it('should say once that a label alone makes nothing legal', async () => {
    const house = await testHouse();
    const text = textOf(await house.say(mint), { width: 200 });
    expect(text.match(/label alone/gi)).toHaveLength(1);
  });

  it('should ask for the check of a recipe that is over a limit, and mind a promise in the name', async () => {
    const { warnings } = await answerTo(
      'label for 20% beeswax, 79% olive oil, 1% lemongrass oil, 12 g, called "Healing lip balm"',
    );
    const codes = warnings.map(({ code }) => code);
    expect(codes).toEqual(expect.arrayContaining(['check-first', 'claim-in-name', 'local-rules']));
  });

  it('should say what was left out and what would hold it', async () => {
    const { warnings, figures } = await answerTo(`${mint}, round 25 mm`);
    const left = warnings.find(({ code }) => code === 'text-does-not-fit');
    expect(left?.text).toMatch(/\d+ mm across would hold it/);
    expect(figures.sheet).toMatchObject({ left_out: true });
  });

  it('should take a larger lid by itself only where no size was asked for', async () => {
    const free = await answerTo(`${mint}, in Canada`);
    expect(free.figures.sheet).toMatchObject({ left_out: false });
    const forty = await answerTo(`${mint}, in Canada, round 40 mm`);
    expect(forty.figures.sheet).toMatchObject({ left_out: true });
  });

  it('should be the same file for the same words at the same instant', async () => {
    const [one, two] = [await answerTo(mint), await answerTo(mint)];
    expect(one.files?.[0]?.bytes).toEqual(two.files?.[0]?.bytes);
  });

  it('should refuse a date before the day of making', async () => {
    const house = await testHouse();
    expect(troubleIn(await house.say(`${mint}, best before 2026-05-01`)).code).toBe('out-of-range');
  });
});

describe('labels of a poured batch', () => {
  const poured = async () => {
    const house = await testHouse();
    const book = await house.keeper.open('local');
    await book.record(
      {
        kind: 'batch-poured',
        lot: '26-KIVO',
        name: 'Fernlea mint lip balm',
        lines: [
          { ingredient: 'beeswax', grams: 60, draws: [] },
          { ingredient: 'sunflower-oil', grams: 238.5, draws: [] },
          { ingredient: 'peppermint-essential-oil', grams: 1.5, draws: [] },
        ],
        count: 24,
        container: 'tin',
        size: { amount: 12, unit: 'g' },
        madeOn: '2026-11-20',
        bestBefore: '2027-05-31',
        because: { kind: 'house', months: 6, why: 'usual' },
        weighedG: 300,
      },
      { who: 'm1', at: now },
    );
    return house;
  };

  it.each(['labels for batch 26-KIVO', 'print labels for batch 26 kivo', 'labels for lot 26-KIVO'])(
    'should take recipe, lot, dates, fill and tins from the record: %s',
    async (said) => {
      const house = await poured();
      expect(answerOf(await house.say(said)).figures).toMatchObject({
        lot: '26-KIVO',
        made_on: '2026-11-20',
        best_before: '2027-05-31',
        best_before_printed: 'best used before the end of 05/2027',
        net_g: 12,
        sheet: { tins: 24 },
      });
    },
  );

  it('should know of no other group’s batch', async () => {
    const house = await poured();
    expect(troubleIn(await house.say('labels for batch 26-KIVO', { group: 'other' })).code).toBe('not-found');
  });
});
