import { describe, expect, it } from 'vitest';
import type { Answer } from '../../bot/answer.ts';
import { textOf } from '../../bot/render/text.ts';
import { shortagesOf } from '../../core/bench/cover.ts';
import type { BenchEvent } from '../../core/bench/events.ts';
import { benchOf } from '../../core/book.ts';
import { answerOf, now, testHouse } from '../helpers/house.ts';
import { lotOf } from '../helpers/reading.ts';

/** A house with these grams on the shelf, one lot each. */
const shelved = async (shelf: Readonly<Record<string, number>>, more: readonly BenchEvent[] = []) => {
  const house = await testHouse();
  const book = await house.keeper.open('local');
  const lots = Object.entries(shelf).map(([id, grams], at) => lotOf(`Z${at}`, id, grams));
  await book.record([...lots, ...more], { who: 'm1', at: now });
  return { house, bench: benchOf(book.state) };
};

const shown = (answer: Answer): string =>
  textOf({ topic: 'substitute', request: {}, answer }, { width: 400 }).replaceAll('\n', ' ');

const asked = async (shelf: Readonly<Record<string, number>>, text: string): Promise<Answer> =>
  answerOf(await (await shelved(shelf)).house.say(text));

const idsOf = ({ figures }: Answer): readonly string[] =>
  (figures.lines as readonly { ingredient: string }[]).map(({ ingredient }) => ingredient);

const mint = 'Fernlea mint lip balm';
const hand = 'Fernlea hand balm';

describe('candidates in stock for a batch', () => {
  const text = `swap almond oil for something in stock in ${mint}, 24 tins of 15 ml`;

  it('should say of which there is enough, and put that first', async () => {
    // 49.5 % of some 345 g are about 170 g: an apricot kernel oil more alike, of which there are 5 g, does not do.
    const answer = await asked({ 'apricot-kernel-oil': 5, 'jojoba-oil': 1000 }, text);
    expect(answer.figures.stock).toMatchObject([
      { ingredient: 'apricot-kernel-oil', have_g: 5, enough: false },
      { ingredient: 'jojoba-oil', have_g: 1000, enough: true },
    ]);
    const [first] = answer.figures.candidates as readonly { ingredient: string }[];
    expect(first?.ingredient).toBe('jojoba-oil');
    expect(shown(answer)).toMatch(/apricot kernel oil takes 1\d\d(?:\.\d)? g and only 5 g are in stock/);
  });

  it('should take what the weigh-out takes', async () => {
    const { house } = await shelved({ 'jojoba-oil': 1000 });
    const answer = answerOf(await house.say(text));
    const [{ needed_g: needed = 0 } = {}] = answer.figures.stock as readonly { needed_g?: number }[];
    const swapped = answerOf(await house.say(`swap almond oil for jojoba in ${mint}, 24 tins of 15 ml`));
    const line = (swapped.figures.lines as readonly { ingredient: string; grams: number }[]).find(
      ({ ingredient }) => ingredient === 'jojoba-oil',
    );
    expect(needed).toBeCloseTo(line?.grams ?? Number.NaN, 6);
  });

  it('should say so when nothing is enough', async () => {
    const answer = await asked({ 'jojoba-oil': 100, 'sunflower-oil': 20 }, text);
    expect(shown(answer)).toContain('Nothing in stock is enough for that batch');
  });

  it('should say how much there is where no batch was said', async () => {
    const answer = await asked(
      { 'jojoba-oil': 5, 'sunflower-oil': 1000 },
      `what can replace almond oil in ${mint} from stock`,
    );
    expect(shown(answer)).toContain('In stock: sunflower oil 1000 g, jojoba oil 5 g.');
  });
});

describe('a recipe from stock, for a batch', () => {
  const all = { beeswax: 1000, 'shea-butter': 1000 };
  const text = `${hand} only with what is in stock, 24 tins of 15 ml`;

  it('should go past what is too little', async () => {
    const answer = await asked({ ...all, 'olive-oil': 20, 'sunflower-oil': 1000 }, text);
    expect(idsOf(answer)).toEqual(['beeswax', 'shea-butter', 'sunflower-oil']);
    expect(answer.figures.short).toEqual([]);
    expect(shown(answer)).toMatch(/Olive oil is in stock, but 20 g are too little: it would take 171\.9 g/);
  });

  it('should keep the recipe where there is enough', async () => {
    const answer = await asked({ ...all, 'olive-oil': 172, 'sunflower-oil': 1000 }, text);
    expect(idsOf(answer)).toEqual(['beeswax', 'shea-butter', 'olive-oil']);
    expect(answer.figures.short).toEqual([]);
    expect(shown(answer)).toContain('each ingredient is on the shelf');
  });

  it('should say what is short where nothing else is enough', async () => {
    const answer = await asked({ ...all, 'olive-oil': 20, 'sunflower-oil': 30 }, text);
    expect(answer.figures.short).toMatchObject([{ ingredient: 'olive-oil', have_g: 20, enough: false }]);
    expect(shown(answer)).toContain('Not enough in stock for that: olive oil, 20 g of the 171.9 g it takes.');
  });

  it('should ask of a named swap only what comes in, and tell what else is missing', async () => {
    const answer = await asked(
      { 'jojoba-oil': 5 },
      `swap olive oil for jojoba from stock in ${hand} and make 24 tins of 15 ml`,
    );
    expect(idsOf(answer)).toContain('jojoba-oil');
    const short = answer.figures.short as readonly { ingredient: string; have_g: number }[];
    expect(short.map(({ ingredient, have_g }) => [ingredient, have_g])).toEqual([
      ['beeswax', 0],
      ['shea-butter', 0],
      ['jojoba-oil', 5],
    ]);
  });
});

describe('what the shelf is short of', () => {
  const on = '2026-11-25';
  const bought = { kind: 'lot-bought', on: '2026-01-01' } as const;
  const infused = (grams: number): BenchEvent => ({
    ...bought,
    lot: 'I1',
    ingredient: 'olive-oil',
    herbs: ['calendula'],
    grams,
  });

  it('should count each gram once, over lots and lines', async () => {
    const { bench } = await shelved({ 'olive-oil': 100 }, [lotOf('L2', 'olive-oil', 50)]);
    const line = (grams: number) => ({ ingredient: 'olive-oil', grams });
    expect(shortagesOf(bench, [line(150)], on)).toEqual([]);
    expect(shortagesOf(bench, [line(100), line(60)], on)).toMatchObject([
      { ingredient: 'olive-oil', neededG: 60, haveG: 50 },
    ]);
  });

  it('should let an infused oil be steeped anew from the plain one, and not the other way round', async () => {
    const { bench } = await shelved({ 'olive-oil': 40 }, [infused(100)]);
    const steeped = { ingredient: 'olive-oil', infusedWith: 'calendula', grams: 140 };
    expect(shortagesOf(bench, [steeped], on)).toEqual([]);
    expect(shortagesOf(bench, [{ ...steeped, grams: 150 }], on)).toMatchObject([{ haveG: 140 }]);
    expect(shortagesOf(bench, [{ ingredient: 'olive-oil', grams: 60 }], on)).toMatchObject([{ haveG: 40 }]);
  });

  it('should not count what is past its date', async () => {
    const stale = { lot: 'O1', ingredient: 'jojoba-oil', grams: 500, bestBefore: '2026-11-24' };
    const old: BenchEvent = { ...bought, ...stale };
    const { bench } = await shelved({}, [old]);
    expect(shortagesOf(bench, [{ ingredient: 'jojoba-oil', grams: 10 }], on)).toMatchObject([{ haveG: 0 }]);
  });
});
