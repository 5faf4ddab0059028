import { describe, expect, it } from 'vitest';
import { chatReply } from '../../bot/render/discord.ts';
import { textOf } from '../../bot/render/text.ts';
import { answerOf, testHouse, troubleIn } from '../helpers/house.ts';

/** Says all in turn as one member, and gives the last reply. */
const saying = async (...texts: readonly string[]) => {
  const house = await testHouse();
  let reply = await house.say(texts[0] ?? '');
  for (const text of texts.slice(1)) reply = await house.say(text);
  expect(house.faults).toEqual([]);
  return reply;
};

const requestOf = async (...texts: readonly string[]) => {
  const reply = await saying(...texts);
  expect(reply.topic).toBe('design');
  if (!('request' in reply)) throw new Error(`no answer: ${JSON.stringify(reply)}`);
  return reply.request;
};

describe('wishes in plain words', () => {
  it.each([
    ['suggest a nut-free, palm-free, unscented balm', { without: ['nuts', 'palm', 'scent'] }],
    [
      'come up with a stick, no bee products, no wool and no coconut',
      { without: ['bee', 'wool', 'coconut'] },
    ],
    [
      'design a stick without shea, cocoa butter or mango butter',
      { without: ['shea-butter', 'cocoa-butter', 'mango-butter'] },
    ],
    ['invent a nut and coconut free balm', { without: ['nuts', 'coconut'] }],
    ['design a balm with shea, nut-free', { without: ['nuts'], with: [{ ingredient: 'shea-butter' }] }],
    [
      'suggest a stick with 20 % shea and cocoa butter',
      { with: [{ ingredient: 'shea-butter', percent: 20 }, { ingredient: 'cocoa-butter' }] },
    ],
    [
      'recommend a stick with shea 20 %, mango butter 10 %',
      {
        with: [
          { ingredient: 'shea-butter', percent: 20 },
          { ingredient: 'mango-butter', percent: 10 },
        ],
      },
    ],
    ['I need a lip balm that survives 100 F', { survivesC: 37.8, form: 'stick' }],
    ['design a stick for a jacket pocket', { survivesC: 37 }],
    ['suggest a plant-based salve that keeps two years', { vegan: true, shelfLifeMonths: 24, form: 'tin' }],
    ['design a balm in a squeeze tube, vegan', { form: 'tube', vegan: true }],
    [
      'recipe for a peppermint lip balm without coconut',
      { with: [{ ingredient: 'peppermint-essential-oil' }], without: ['coconut'] },
    ],
    ['design a salve with calendula oil', { with: [{ ingredient: 'calendula' }] }],
  ])('should be read: %s', async (say, means) => {
    expect(await requestOf(say)).toMatchObject(means);
  });

  it('should go on from the wishes before', async () => {
    const first = 'design a vegan stick with shea';
    expect(await requestOf(first, 'survive 40 C instead')).toMatchObject({ vegan: true, survivesC: 40 });
    expect(await requestOf(first, 'and without coconut?')).toMatchObject({
      vegan: true,
      without: ['coconut'],
    });
    expect(await requestOf(first, 'make it softer')).toMatchObject({ form: 'tin', vegan: true });
    expect(await requestOf(first, 'no shea please')).not.toHaveProperty('with');
    expect(await requestOf('design a stick', 'vegan please')).toMatchObject({ form: 'stick', vegan: true });
  });

  it.each([
    'scale Fernlea hand balm to 24 tins of 15 ml',
    'show Fernlea hand balm',
    'I need 24 tins of 15 ml of Fernlea hand balm',
    'save recipe Test: 20% beeswax, 30% shea butter, 50% olive oil',
    'what is candelilla wax',
    'will Fernlea hand balm survive 35 C',
  ])('should not be seen in: %s', async (say) => {
    expect((await saying(say)).topic).not.toBe('design');
  });

  it('should ask back about a name nobody knows, in or out', async () => {
    expect(troubleIn(await saying('design a stick with unobtanium')).code).toBe('unknown-ingredient');
    expect(troubleIn(await saying('design a stick with no glitter')).code).toBe('unknown-ingredient');
  });

  it('should ask for a wish where there is none', async () => {
    expect(troubleIn(await saying('design a balm'))).toMatchObject({ code: 'missing' });
  });
});

describe('the answer to wishes', () => {
  const say = 'vegan stick that survives 38 C, no nuts, with shea and mango';

  it('should carry the wishes, the first recipe with its forecast, and all proposals', async () => {
    const { figures } = answerOf(await saying(say));
    expect(figures).toMatchObject({
      form: 'stick',
      survives_c: 38,
      vegan: true,
      without: ['nuts'],
      with: ['shea-butter', 'mango-butter'],
      firmness: 'stick',
    });
    const [first] = figures.proposals as readonly Readonly<Record<string, unknown>>[];
    expect(first).toMatchObject({
      lines: figures.lines,
      softens_c: figures.softens_c,
      fully_melted_c: figures.fully_melted_c,
      firmness: 'stick',
    });
  });

  it('should say that shea is a question for people with a nut allergy, and end with the local rules', async () => {
    const { warnings } = answerOf(await saying(say));
    expect(warnings.find(({ code }) => code === 'nut-allergen')?.text).toMatch(/shea butter/i);
    expect(warnings.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['rough-estimate', 'hot-wax', 'flame-and-alcohol']),
    );
    expect(warnings.at(-1)?.code).toBe('local-rules');
  });

  it('should say which wish to relax and by how much', async () => {
    const reply = await saying('design a vegan stick that survives 60 C');
    expect(answerOf(reply).figures.relax).toEqual({ wish: 'survives_c', to: 49 });
    expect(textOf(reply, { width: 80 })).toMatch(/Relax the\s+hottest day to 49 °C/);
  });

  it('should give an answer even where nothing can be proposed', async () => {
    const { figures, warnings } = answerOf(await saying('design a tin balm without wax or butter'));
    expect(figures).toMatchObject({ lines: [], proposals: [], relax: { wish: 'without', to: ['butter'] } });
    expect(warnings.at(-1)?.code).toBe('local-rules');
  });

  it('should say kindly that there are no prices yet', async () => {
    const reply = await saying('design a cheap vegan stick, under 2 euro');
    expect(textOf(reply, { width: 80 })).toMatch(/No prices are noted, so I could not mind the cost/);
  });

  it('should offer a next step that works when it is said', async () => {
    const { next = [], figures } = answerOf(await saying('design a vegan stick'));
    expect(next.length).toBeGreaterThan(0);
    const scaled = await saying(next[0]?.say ?? '');
    const shares = (list: unknown) =>
      (list as { ingredient: string; percent: number }[]).map(({ ingredient, percent }) => [
        ingredient,
        percent,
      ]);
    expect(scaled.topic).toBe('scale');
    expect(shares(answerOf(scaled).figures.lines)).toEqual(shares(figures.lines));
  });

  it.each([say, 'design a peppermint stick without shea', 'design a vegan stick that survives 60 C'])(
    'should fit the screens: %s',
    async (words) => {
      const reply = await saying(words);
      for (const line of textOf(reply, { width: 40 }).split('\n'))
        expect(line.length).toBeLessThanOrEqual(40);
      for (const { text } of chatReply(reply).messages) expect(text.length).toBeLessThanOrEqual(2000);
      for (const { say: step } of answerOf(reply).next ?? []) expect(step.length).toBeLessThanOrEqual(95);
    },
  );
});
