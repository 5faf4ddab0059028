import { describe, expect, it } from 'vitest';
import { textOf } from '../../bot/render/text.ts';
import { answerOf, now, testHouse } from '../helpers/house.ts';
import { pixelsOf } from '../helpers/png-pixels.ts';
import { readPdf } from '../helpers/read-pdf.ts';

const twelve = 'workshop for 12 people, 2 tins of 15 ml each, Fernlea hand balm, start 14:00';
const both =
  'workshop for 12 people, 2 tins of 15 ml of Fernlea hand balm and 1 stick of 5 g of Fernlea mint lip balm each';

const asked = async (text: string, more = {}) => {
  const house = await testHouse();
  const reply = await house.say(text, more);
  expect(house.faults).toEqual([]);
  return { reply, answer: answerOf(reply), house };
};

const fileOf = (answer: Awaited<ReturnType<typeof asked>>['answer'], type: string): Uint8Array => {
  const found = answer.files?.find((file) => file.type === type);
  if (!found) throw new Error(`no ${type}`);
  return found.bytes;
};

type Lines = readonly { readonly grams: number; readonly kits_g: number; readonly spare_g: number }[];

describe('a workshop in figures', () => {
  it('should have lines that sum to their totals, to the step', async () => {
    const { figures } = (await asked(twelve)).answer;
    const tenths = (value: unknown): number => Math.round(Number(value) * 10);
    const lines = figures.lines as Lines;
    const sum = (of: (line: Lines[number]) => number): number =>
      lines.reduce((all, line) => all + tenths(of(line)), 0);
    expect(sum(({ grams }) => grams)).toBe(tenths(figures.total_g));
    expect(sum(({ kits_g }) => kits_g) + sum(({ spare_g }) => spare_g)).toBe(tenths(figures.total_g));
    const person = figures.per_person as { lines: readonly { grams: number }[]; total_g: number };
    expect(person.lines.reduce((all, { grams }) => all + tenths(grams), 0)).toBe(tenths(person.total_g));
    expect(tenths(person.total_g) * 12).toBe(sum(({ kits_g }) => kits_g));
  });

  it('should give each step of the day its clock time, in order', async () => {
    const { figures } = (await asked(twelve)).answer;
    const day = figures.timeline as readonly { at_min: number; step: string; clock?: string }[];
    expect(day.find(({ step }) => step === 'welcome')).toMatchObject({ at_min: 0, clock: '14:00' });
    expect(day.map(({ at_min }) => at_min)).toEqual(
      day.map(({ at_min }) => at_min).toSorted((a, b) => a - b),
    );
    for (const step of ['set-up', 'weigh', 'melt', 'pour', 'set', 'label', 'clean']) {
      expect(day.map((entry) => entry.step)).toContain(step);
    }
  });

  it('should put alcohol away before any bath is on', async () => {
    const { figures } = (await asked(twelve)).answer;
    const day = figures.timeline as readonly {
      at_min: number;
      minutes: number;
      step: string;
      text: string;
    }[];
    const setUp = day.find(({ step }) => step === 'set-up');
    const baths = day.find(({ step }) => step === 'warm-baths');
    expect((setUp?.at_min ?? 0) + (setUp?.minutes ?? 0)).toBeLessThan(
      baths?.at_min ?? Number.NEGATIVE_INFINITY,
    );
    expect(setUp?.text).toContain('put it away');
    expect(baths?.text).toContain('Alcohol dry, closed and away?');
  });
});

describe('what is bought', () => {
  it('should be whole packs where the group noted its packs, containers too', async () => {
    const house = await testHouse();
    await house.say('beeswax 50 g 4.50, tins cost 6 for 24');
    const { figures } = answerOf(await house.say(twelve));
    const shopping = figures.shopping as readonly {
      ingredient: string;
      grams_to_buy: number;
      packs?: number;
    }[];
    expect(figures.containers_to_buy).toMatchObject([{ container: 'tin', need: 27, to_buy: 48, pack: 24 }]);
    expect(shopping.find(({ ingredient }) => ingredient === 'beeswax')).toMatchObject({
      packs: 2,
      grams_to_buy: 100,
    });
  });

  it('should be net of what is on the shelf and not past its date', async () => {
    const house = await testHouse();
    const book = await house.keeper.open('local');
    const lot = { kind: 'lot-bought', on: '2026-10-01' } as const;
    const by = { who: 'm1', at: now };
    await book.record({ ...lot, lot: 'K1', ingredient: 'beeswax', grams: 60, bestBefore: '2027-10-01' }, by);
    await book.record(
      { ...lot, lot: 'K2', ingredient: 'olive-oil', grams: 500, bestBefore: '2026-11-24' },
      by,
    );
    await book.record({ ...lot, lot: 'K3', ingredient: 'shea-butter', grams: 1000 }, by);
    const { figures } = answerOf(await house.say(twelve));
    expect(figures.shopping).toMatchObject([
      { ingredient: 'beeswax', need_g: 75.3, stock_g: 60, grams_to_buy: 16 },
      { ingredient: 'shea-butter', stock_g: 1000, grams_to_buy: 0 },
      { ingredient: 'olive-oil', stock_g: 0, grams_to_buy: 191 },
    ]);
  });
});

describe('the handout', () => {
  it('should be one page that says every line of the kit, read back by another library', async () => {
    const { answer } = await asked(both);
    const pages = await readPdf(fileOf(answer, 'application/pdf'));
    expect(pages).toHaveLength(1);
    const said = pages[0]?.texts.map(({ text }) => text).join(' ') ?? '';
    for (const words of [
      'beeswax',
      'shea butter',
      'olive oil',
      'cocoa butter',
      'sweet almond oil',
      '28.7 g',
      '5.2 g',
    ])
      expect(said).toContain(words);
    for (const words of [
      'peppermint essential oil',
      'never water',
      '20 minutes',
      'put it away',
      'Patch test',
      'nuts',
    ])
      expect(said).toContain(words === 'put it away' ? 'bottle closed and away' : words);
  });

  it.each([
    ['eu', 210, 297],
    ['us', 215.9, 279.4],
    ['ca', 215.9, 279.4],
    ['au', 210, 297],
  ] as const)('should be printed on the paper of region %s', async (region, width, height) => {
    const { answer } = await asked(twelve, { region });
    const [page] = await readPdf(fileOf(answer, 'application/pdf'));
    expect(page?.widthMm).toBeCloseTo(width, 1);
    expect(page?.heightMm).toBeCloseTo(height, 1);
  });

  it('should keep all its texts on the paper and apart', async () => {
    const { answer } = await asked(both);
    const [page] = await readPdf(fileOf(answer, 'application/pdf'));
    const texts = page?.texts ?? [];
    expect(texts.length).toBeGreaterThan(40);
    for (const { x, y, width } of texts) {
      expect(x).toBeGreaterThan(10);
      expect(x + width).toBeLessThan((page?.widthMm ?? 0) - 10);
      expect(y).toBeLessThan((page?.heightMm ?? 0) - 10);
    }
    const clashes = texts.flatMap((a, at) =>
      texts
        .slice(at + 1)
        .filter((b) => Math.abs(a.y - b.y) < 1 && a.x < b.x + b.width - 0.1 && b.x < a.x + a.width - 0.1)
        .map((b) => `${a.text} / ${b.text}`),
    );
    expect(clashes).toEqual([]);
  });

  it('should leave blanks to be filled in by hand, and invent nothing', async () => {
    const { answer } = await asked(twelve);
    const [page] = await readPdf(fileOf(answer, 'application/pdf'));
    expect(page?.texts.map(({ text }) => text).join(' ')).toMatch(/Name: _+/);
  });

  it('should shrink its type rather than leave a line out', async () => {
    const oils =
      'olive oil,sunflower oil,castor oil,jojoba oil,coconut oil,shea butter,cocoa butter,mango butter,sweet almond oil,apricot kernel oil,avocado oil,grapeseed oil,hemp seed oil,argan oil,rosehip oil,macadamia oil,sesame oil,babassu oil,lanolin,candelilla wax,carnauba wax,kokum butter,cupuacu butter,walnut oil';
    const lines = ['20 g beeswax', ...oils.split(',').map((oil) => `20 g ${oil}`)].join(', ');
    const { answer } = await asked(`workshop for 12 people, 2 tins of 60 ml each, ${lines}`);
    expect(answer.figures.people).toBe(12);
    const pages = await readPdf(fileOf(answer, 'application/pdf'));
    expect(pages).toHaveLength(1);
    const said = pages[0]?.texts.map(({ text }) => text).join(' ') ?? '';
    for (const oil of oils.split(',')) expect(said).toContain(oil);
  });
});

describe('the picture of the day', () => {
  it('should be a PNG as wide as a phone likes it', async () => {
    const { answer } = await asked(twelve);
    const { width, height } = pixelsOf(fileOf(answer, 'image/png'));
    expect(width).toBe(1080);
    expect(height).toBeGreaterThan(600);
  });
});

describe('safety', () => {
  it('should name what somebody is allergic to and where it is', async () => {
    const { answer } = await asked(
      'workshop for 12 people, one is allergic to nuts, 2 tins of 15 g each, Fernlea mint lip balm',
    );
    expect(answer.warnings[0]).toMatchObject({
      code: 'allergy-in-the-room',
      text: expect.stringContaining('sweet almond oil on the bench'),
    });
  });

  it('should keep scents out of single kits and say who weighs them', async () => {
    const { answer, reply } = await asked(both);
    const text = textOf(reply, { width: 200 });
    expect(text).toContain('whoever leads weighs 0.3 g for everybody');
    expect(
      (answer.figures.per_person as { lines: readonly { ingredient: string }[] }).lines,
    ).not.toContainEqual(expect.objectContaining({ ingredient: 'peppermint-essential-oil' }));
  });

  it('should say when the balm does not set in the room', async () => {
    const soft = 'workshop for 12 people, 2 tins of 15 ml each, 8% beeswax, 92% olive oil';
    const codes = async (room: string) =>
      (await asked(`${soft}, the hall is at ${room}`)).answer.warnings.map(({ code }) => code);
    expect(await codes('44 C')).toContain('does-not-set');
    expect(await codes('20 C')).not.toContain('does-not-set');
  });

  it('should give a warm room more time to set', async () => {
    const length = async (room: string) =>
      (await asked(`${twelve}, the hall is at ${room}`)).answer.figures.length_min as number;
    expect(await length('35 C')).toBeGreaterThan(await length('20 C'));
  });

  it('should ask about shea too when somebody is allergic to nuts', async () => {
    const { answer } = await asked(`${twelve}, one is allergic to nuts`);
    expect(answer.warnings[0]?.text).toContain('Ask about shea butter too');
  });

  it('should end with the local rules, and have the cautions of heat, fire, alcohol and skin', async () => {
    const codes = (await asked(twelve)).answer.warnings.map(({ code }) => code);
    expect(codes).toEqual(
      expect.arrayContaining([
        'hot-wax',
        'flame-and-alcohol',
        'bath-dry',
        'patch-test',
        'ask-about-allergies',
      ]),
    );
    expect(codes.at(-1)).toBe('local-rules');
  });
});
