import { describe, expect, it } from 'vitest';
import type { Answer, Reply } from '../../bot/answer.ts';
import { substitute } from '../../bot/topics/substitute.ts';
import { swapTrouble } from '../../bot/words/swap-problems.ts';
import type { ReplaceProblem } from '../../core/substitute/replaced.ts';
import { answerOf, testHouse, troubleIn } from '../helpers/house.ts';

/** Says all in turn as one member, and gives the last reply. */
const saying = async (...texts: readonly string[]): Promise<Reply> => {
  const house = await testHouse();
  let reply = await house.say(texts[0] ?? '');
  for (const text of texts.slice(1)) reply = await house.say(text);
  expect(house.faults).toEqual([]);
  return reply;
};

const requestOf = async (...texts: readonly string[]): Promise<Record<string, unknown>> => {
  const reply = await saying(...texts);
  expect(reply.topic).toBe('substitute');
  if (!('request' in reply)) throw new Error(`no answer: ${JSON.stringify(reply)}`);
  return reply.request as Record<string, unknown>;
};

const answered = async (...texts: readonly string[]): Promise<Answer> => answerOf(await saying(...texts));

const textIn = (answer: Answer): string =>
  answer.blocks
    .flatMap((block) => {
      if (block.kind === 'list') return block.items;
      if (block.kind === 'table') return block.rows.map((row) => row.join(' '));
      return block.kind === 'chart' ? [] : [block.text];
    })
    .join('\n');

const hand = 'Fernlea hand balm';

describe('which goes out and which comes in', () => {
  it.each([
    ['swap A for B in R'],
    ['swap the A for B in R'],
    ['swap A with B in R'],
    ['swap A to B in R'],
    ['swap out the A for B in R'],
    ['swap in B for the A in R'],
    ['swap the A in R for B'],
    ['in R swap A for B'],
    ['R: swap A for B'],
    ['switch from A to B in R'],
    ['switch to B from A in R'],
    ['exchange A against B in R'],
    ['trade A for B in R'],
    ['change the A to B in R'],
    ['A -> B in R'],
    ['swap A → B in R'],
    ['replace A with B in R'],
    ['replace the A by B in R'],
    ['replace A in R with B'],
    ['can B replace A in R?'],
    ['B to replace the A in R'],
    ['A replaced with B in R'],
    ['R with the A swapped for B'],
    ['substitute B for A in R'],
    ['substitute A with B in R'],
    ['is B a good substitute for A in R?'],
    ['B as a replacement for A in R'],
    ['use B instead of A in R'],
    ['use B in R instead of A'],
    ['instead of A use B in R'],
    ['R with B instead of A'],
    ['B in place of A in R'],
    ['in R use B rather than A'],
    ['can I use B in lieu of A in R?'],
    ['take the A out of R and put in B'],
    ['leave out the A and use B in R'],
    ['put B in for the A in R'],
    ['how much B do I need in R instead of the A?'],
    ['what if I swap the A for B in R?'],
  ])('should be read: %s', async (shape) => {
    for (const [from, to, a, b] of [
      ['beeswax', 'candelilla-wax', 'beeswax', 'candelilla'],
      ['shea-butter', 'mango-butter', 'shea', 'mango butter'],
    ] as const) {
      const say = shape.replace(/\bA\b/, a).replace(/\bB\b/, b).replace(/\bR\b/, hand);
      expect(await requestOf(say)).toMatchObject({ recipe: hand, from, to });
    }
  });

  it('should turn "substitute" round where the recipe says so, and tell', async () => {
    const reply = await saying(`substitute shea for mango butter in ${hand}`);
    expect('request' in reply && reply.request).toMatchObject({ from: 'shea-butter', to: 'mango-butter' });
    expect(textIn(answerOf(reply))).toContain('shea butter as what goes out');
  });

  it('should take two swaps of one message in their order', async () => {
    expect(await requestOf(`swap beeswax for candelilla and shea for mango butter in ${hand}`)).toMatchObject(
      {
        earlier: [{ from: 'beeswax', to: 'candelilla-wax' }],
        from: 'shea-butter',
        to: 'mango-butter',
      },
    );
  });

  it.each([
    `don't swap the beeswax for candelilla in ${hand}`,
    `never replace beeswax with candelilla in ${hand}`,
    `I swapped beeswax for candelilla in ${hand}`,
    `we replaced the beeswax with candelilla in ${hand} last week`,
    `swap some of the beeswax for candelilla in ${hand}`,
    `why should I swap beeswax for candelilla in ${hand}`,
    `swap beeswax for moonwax in ${hand}`,
    `save recipe Vegan ${hand}: swap`,
    'swap places',
    'what can replace a smile?',
    'no more than 3 tins',
  ])('should not be taken for a swap: %s', async (say) => {
    troubleIn(await saying(say));
  });

  it('should show what would make a balm vegan to whoever asks whether it is', async () => {
    expect(await requestOf(`is ${hand} vegan?`)).toEqual({ recipe: hand, without: ['animal'] });
  });

  it('should leave a question about nuts to the look at a balm', async () => {
    expect((await saying('does Fernlea mint lip balm contain nuts?')).topic).toBe('check');
  });

  it.each([
    ['swap the wax for candelilla in R', 'beeswax'],
    ['swap the butter for mango butter in R', 'shea-butter'],
  ])('should know the only line meant: %s', async (shape, from) => {
    expect(await requestOf(shape.replace('R', hand))).toMatchObject({ from });
  });

  it('should ask which of two butters', async () => {
    const trouble = troubleIn(await saying('swap the butter for mango butter in Fernlea mint lip balm'));
    expect(trouble.text).toMatch(/cocoa butter or shea butter/);
  });
});

describe('what stands in for something', () => {
  it.each([
    ['what can I use instead of beeswax', { replaces: 'beeswax' }],
    ['alternatives to shea butter', { replaces: 'shea-butter' }],
    ['what could I swap for the shea in R', { replaces: 'shea-butter', recipe: hand }],
    ['what can beeswax be replaced with in R', { replaces: 'beeswax', recipe: hand }],
    ["I'm out of shea, what can I put in R?", { replaces: 'shea-butter', recipe: hand }],
    ['no beeswax left! what else works in R?', { replaces: 'beeswax', recipe: hand }],
    ['which wax can replace beeswax in R', { replaces: 'beeswax', recipe: hand }],
    ['a vegan alternative to beeswax', { replaces: 'beeswax', without: ['animal'] }],
    ['nut-free alternative to almond oil', { replaces: 'sweet-almond-oil', without: ['nuts'] }],
  ])('should be asked: %s', async (shape, means) => {
    expect(await requestOf(shape.replace('R', hand))).toMatchObject(means);
  });

  it('should answer best first, each with its why and its parts', async () => {
    const { figures } = await answered('what can replace almond oil in Fernlea mint lip balm');
    const candidates = figures.candidates as readonly Record<string, unknown>[];
    const scores = candidates.map(({ score }) => Number(score));
    expect(scores).toEqual(scores.toSorted((a, b) => b - a));
    for (const { why, parts } of candidates) {
      expect(String(why).length).toBeGreaterThan(5);
      expect(Object.keys(parts as object).length).toBeGreaterThan(2);
    }
  });

  it('should offer no nut to whoever wants none', async () => {
    const { figures } = await answered('what can replace almond oil in Fernlea mint lip balm without nuts');
    expect(JSON.stringify(figures.candidates)).not.toMatch(/macadamia|hazelnut|walnut|peanut|argan|marula/);
  });
});

describe('a swap answered', () => {
  it('should show the lines before and after, what changes, and the cautions', async () => {
    const answer = await answered(`swap beeswax for candelilla in ${hand}`);
    const { figures } = answer;
    expect(figures).toMatchObject({
      from: 'beeswax',
      to: 'candelilla-wax',
      vegan: { before: false, after: true },
      allergens: { before: ['bee'], after: [] },
      best_before_change_days: 0,
    });
    const lines = figures.lines as readonly { ingredient: string; percent: number }[];
    expect(lines.reduce((sum, { percent }) => sum + percent, 0)).toBeCloseTo(100, 3);
    expect(Math.abs(Number(figures.firmness_change_percent))).toBeLessThan(0.01);
    expect(textIn(answer)).toMatch(/Fully melted about \d °C lower/);
    const codes = answer.warnings.map(({ code }) => code);
    expect(codes).toEqual(expect.arrayContaining(['rough-estimate', 'hot-wax', 'local-rules']));
    expect(codes.at(-1)).toBe('local-rules');
  });

  it('should weigh the new lines out when it is asked to', async () => {
    const { figures } = await answered(`swap beeswax for candelilla in ${hand} and make 30 tins of 15 ml`);
    const lines = figures.lines as readonly { ingredient: string; grams: number }[];
    expect(figures).toMatchObject({ containers: 30, from: 'beeswax' });
    expect(lines.map(({ ingredient }) => ingredient)).toEqual(['candelilla-wax', 'shea-butter', 'olive-oil']);
    expect(lines.reduce((sum, { grams }) => sum + grams, 0)).toBeCloseTo(Number(figures.total_g), 6);
  });

  it('should keep the herb of an oil and say that it is steeped anew', async () => {
    const answer = await answered('nut-free 20% beeswax, 80% calendula infused almond oil');
    expect(JSON.stringify(answer.figures.lines)).toContain('"infused_with":"calendula"');
    expect(textIn(answer)).toContain('Steep the calendula anew');
  });

  it('should give the conflict of evidence on carnauba, not a number alone', async () => {
    expect(textIn(await answered(`swap beeswax for carnauba in ${hand}`))).toMatch(/evidence conflicts/);
  });

  it('should name what is a question for the allergic person', async () => {
    const answer = await answered('nut-free Fernlea mint lip balm');
    expect(answer.figures.ask).toEqual(['shea-butter']);
    expect(textIn(answer)).toMatch(/question for the allergic person: shea butter/);
  });

  it('should double what was written in grams', async () => {
    const { figures } = await answered(
      'swap beeswax for candelilla in 20 g beeswax, 80 g olive oil',
      'double',
    );
    expect(figures.total_g).toBe(200);
  });

  it('should offer next steps that are understood as they stand', async () => {
    const house = await testHouse();
    let tried = 0;
    for (const say of [
      `swap beeswax for candelilla in ${hand}`,
      'nut-free Fernlea mint lip balm',
      `make ${hand} vegan`,
      'unscented Fernlea mint lip balm',
      `what can replace shea butter in ${hand}`,
      'what can replace almond oil in Fernlea mint lip balm',
    ]) {
      for (const next of answerOf(await house.say(say)).next ?? []) {
        expect(next.say.length).toBeLessThanOrEqual(95);
        answerOf(await house.say(next.say, { channel: 'another' }));
        tried += 1;
      }
    }
    expect(tried).toBeGreaterThan(8);
  });

  it('should save what it offers to save', async () => {
    const house = await testHouse();
    const { next = [] } = answerOf(await house.say(`swap beeswax for candelilla in ${hand}`));
    const save = next.find(({ label }) => label.startsWith('Save'));
    const saved = answerOf(await house.say(save?.say ?? ''));
    expect(saved.figures.recipe).toMatchObject({
      name: `${hand} 2`,
      lines: [{ ingredient: 'candelilla-wax' }, { ingredient: 'shea-butter' }, { ingredient: 'olive-oil' }],
    });
  });
});

describe('going on from there', () => {
  const scaled = 'scale Fernlea mint lip balm to 24 tins of 15 g';

  it.each([
    [
      ['swap beeswax for candelilla in R', 'what about rice bran wax?'],
      { from: 'beeswax', to: 'rice-bran-wax' },
    ],
    [
      ['swap beeswax for candelilla in R', 'and make 30 tins of 15 ml'],
      { to: 'candelilla-wax', make: { count: 30 } },
    ],
    [['swap beeswax for candelilla in R', 'make it 500 g', 'double'], { make: { totalG: 1000 } }],
    [['swap beeswax for candelilla in R', 'and nut-free?'], { to: 'candelilla-wax', without: ['nuts'] }],
    [['swap beeswax for candelilla', 'R'], { recipe: hand, from: 'beeswax', to: 'candelilla-wax' }],
    [['what can replace beeswax in R', 'and vegan?'], { replaces: 'beeswax', without: ['animal'] }],
    [['what can replace beeswax in R', 'candelilla'], { from: 'beeswax', to: 'candelilla-wax' }],
    [['when does R melt', 'and with candelilla instead?'], { from: 'beeswax', to: 'candelilla-wax' }],
    [['show R', 'swap the shea for mango butter'], { recipe: hand, from: 'shea-butter', to: 'mango-butter' }],
    [[scaled, 'without the nut oil'], { without: ['nuts'], make: { count: 24 } }],
    [[scaled, 'without nuts or scent'], { without: ['nuts', 'scent'] }],
    [[scaled, 'make that vegan please'], { without: ['animal'] }],
    [[scaled, 'candelilla instead'], { from: 'beeswax', to: 'candelilla-wax' }],
    [[scaled, 'shea instead of cocoa'], { from: 'cocoa-butter', to: 'shea-butter' }],
  ])('should understand %j', async (says, means) => {
    expect(await requestOf(...says.map((say) => say.replace(/\bR\b/, hand)))).toMatchObject(means);
  });

  it('should ask what it shall replace when two lines do the same job', async () => {
    expect(troubleIn(await saying(scaled, 'mango butter instead')).text).toMatch(
      /cocoa butter or shea butter/,
    );
  });

  it('should go on changing the changed recipe', async () => {
    const { figures } = await answered(
      `swap beeswax for candelilla in ${hand}`,
      'swap the candelilla for sunflower wax',
    );
    expect(JSON.stringify(figures.lines)).toMatch(/sunflower-wax/);
    expect(JSON.stringify(figures.lines)).not.toMatch(/beeswax|candelilla/);
  });

  it('should come back to the original by swapping back', async () => {
    const { figures } = await answered(
      `swap beeswax for candelilla in ${hand}`,
      'swap the candelilla for beeswax',
    );
    const lines = figures.lines as readonly { ingredient: string; percent: number }[];
    const beeswax = lines.find(({ ingredient }) => ingredient === 'beeswax')?.percent ?? 0;
    expect(Math.abs(beeswax - 20)).toBeLessThan(0.3);
  });
});

describe('doing without', () => {
  it.each([
    ['nut-free R', ['nuts']],
    ['R free of nuts', ['nuts']],
    ['nut and coconut free R', ['nuts', 'coconut']],
    ['R without nuts or palm', ['nuts', 'palm']],
    ['R with no animal products', ['animal']],
    ['a plant-based R', ['animal']],
    ['fragrance-free R', ['scent']],
    ['R without essential oils', ['scent']],
    ['R for someone with a nut allergy', ['nuts']],
    ['leave the peppermint out of R', ['peppermint-essential-oil']],
    ['remove the peppermint from R', ['peppermint-essential-oil']],
    ['R minus the shea', ['shea-butter']],
    ['bee-free R', ['bee']],
    ['soy-free and vegan R', ['soy', 'animal']],
  ])('should be read: %s', async (shape, without) => {
    expect(await requestOf(shape.replace('R', 'Fernlea mint lip balm'))).toMatchObject({ without });
  });

  it('should say kindly that nothing is noted of stock and prices', async () => {
    expect(troubleIn(await saying(`cheapest version of ${hand}`)).text).toMatch(/No prices are noted yet/);
    expect(troubleIn(await saying(`${hand} with only what is in stock`)).text).toMatch(
      /No stock is recorded/,
    );
  });

  it('should leave the recipe alone when something cannot be replaced', async () => {
    const trouble = troubleIn(await saying('soy-free 30% soy wax, 70% olive oil'));
    expect(trouble).toMatchObject({ code: 'not-found' });
    expect(trouble.text).toContain('soy wax');
  });
});

describe('a swap that cannot be', () => {
  const failed = {
    from: 'beeswax',
    to: 'soy-wax',
    portions: [
      { ingredient: 'beeswax', percent: 20 },
      { ingredient: 'olive-oil', percent: 80 },
    ],
  };
  const figures = { firmness: 1, firmnessAt37: 1 };
  const problems: readonly ReplaceProblem[] = [
    { code: 'same-ingredient', ingredient: 'beeswax' },
    { code: 'different-jobs', from: 'beeswax', to: 'calendula' },
    { code: 'not-in-recipe', ingredient: 'lanolin' },
    { code: 'no-liquid-oil' },
    { code: 'does-not-melt-in', ingredient: 'mica' },
    { code: 'liquid-cannot-carry', ingredient: 'olive-oil', celsius: 25 },
    { code: 'wax-cannot-be-oil', ingredient: 'soy-wax' },
    { code: 'not-enough-oil', mostPercent: 70, lines: [], before: figures, after: figures },
    { code: 'no-melting-data', ingredients: ['soy-wax'] },
    { code: 'nothing-melts', leftOut: [] },
    { code: 'no-lines' },
    { code: 'bad-weight', ingredient: 'beeswax', weight: -1 },
    { code: 'unknown-ingredient', ingredient: 'moonwax' },
    { code: 'bad-temperature', celsius: 9000 },
  ];

  it.each(problems.map((problem) => [problem.code, problem] as const))(
    'should have words for %s',
    (_code, problem) => {
      const { text } = swapTrouble(problem, failed);
      expect(text).toMatch(/^.{30,400}$/);
      expect(text).not.toMatch(/undefined|NaN|\[object/);
    },
  );

  it('should say what would work', () => {
    const { text } = swapTrouble({ code: 'no-melting-data', ingredients: ['soy-wax'] }, failed);
    expect(text).toMatch(/1 of beeswax \(common practice\).*What would work: .*candelilla wax/);
  });
});

describe('the slash command', () => {
  it.each([
    [
      { recipe: hand, out: 'beeswax', into: 'candelilla' },
      { from: 'beeswax', to: 'candelilla-wax' },
    ],
    [{ recipe: hand, out: 'beeswax' }, { replaces: 'beeswax' }],
    [{ out: 'beeswax' }, { replaces: 'beeswax' }],
    [{ recipe: hand, without: 'animal products' }, { without: ['animal'] }],
    [{ recipe: '20 g beeswax, 80 g almond oil', without: 'nuts' }, { without: ['nuts'] }],
    [
      { recipe: hand, out: 'beeswax', into: 'candelilla', tins: 24, size: '15 ml' },
      { make: { count: 24, size: { amount: 15, unit: 'ml' } } },
    ],
    [
      { recipe: hand, without: 'nuts', tins: 24, size: '15 ml' },
      { without: ['nuts'], make: { count: 24 } },
    ],
  ])('should say %j in words that are understood', async (options, means) => {
    expect(await requestOf(substitute.slash.say(options))).toMatchObject(means);
  });
});

describe('the chart of a swap', () => {
  const drawnFor = async (text: string): Promise<boolean> =>
    ((await answered(text)).files ?? []).some(({ name }) => name === 'swap-chart.png');

  it.each([
    ['swap beeswax for candelilla in 20% beeswax, 80% olive oil', true],
    // Gram for gram, and far softer.
    ['swap cocoa butter for coconut oil in 60% cocoa butter, 20% beeswax, 20% olive oil', true],
    ['swap olive oil for castor oil in 20% beeswax, 80% olive oil', false],
    ['swap peppermint oil for spearmint oil in Fernlea mint lip balm', false],
  ])('should be there when what melts has changed: %j', async (text, there) => {
    expect(await drawnFor(text)).toBe(there);
  });
});
