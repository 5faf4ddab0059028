import { describe, expect, it } from 'vitest';
import { textOf } from '../../bot/render/text.ts';
import { answerOf, anyone, testHouse, troubleIn } from '../helpers/house.ts';

const asked = async (say: string, more = {}) => {
  const house = await testHouse();
  const reply = await house.say(say, more);
  expect(house.faults).toEqual([]);
  return { reply, answer: answerOf(reply), text: textOf(reply, { width: 100 }) };
};

const messages = [
  'check Fernlea mint lip balm',
  'check 20 g beeswax, 79 g olive oil, 1 g lemongrass oil',
  'is comfrey safe on lips?',
  'is lavender oil safe on lips',
  'is 0.02% tagetes oil ok in a lip balm',
];

describe('every look at a recipe', () => {
  it.each(messages)('should certify nothing and point to local rules: %s', async (say) => {
    const { answer, text } = await asked(say);
    expect(answer.warnings.at(-1)?.code).toBe('local-rules');
    expect(text).toContain('no safety assessment');
    expect(`${answer.title} ${text}`).not.toMatch(/\b(?:is|are) (?:safe|legal|approved|certified)\b/i);
  });

  it.each(messages)('should offer next steps that fit a button and are understood: %s', async (say) => {
    const { answer } = await asked(say);
    for (const next of answer.next ?? []) {
      expect(next.say.length).toBeLessThanOrEqual(95);
      const house = await testHouse();
      await house.say(say);
      answerOf(await house.say(next.say));
    }
  });
});

describe('a limit that is passed', () => {
  it('should be told with its status, its source and the change that would clear it', async () => {
    const { answer } = await asked('check 20 g beeswax, 79 g olive oil, 1 g lemongrass oil', {
      at: Date.UTC(2027, 1, 1),
    });
    const [first] = answer.warnings;
    expect(first?.code).toBe('over-limit');
    expect(first?.text).toMatch(/Citral.*0\.85 %.*0\.11 %.*law, read.*2026\/909/s);
    expect(first?.text).toMatch(
      /0\.129 % lemongrass essential oil would be within it \(0\.129 g in this 100 g batch/,
    );
    expect(first?.text).toMatch(/2 drops instead of 23 to 45/);
    expect(answer.figures.verdict).toBe('not-ok');
  });

  const lateDay = { at: Date.UTC(2027, 1, 1) };

  it('should be met by the change that is offered, which still sums to 100 %', async () => {
    const house = await testHouse();
    const first = answerOf(
      await house.say('check 20 g beeswax, 79 g olive oil, 1 g lemongrass oil', lateDay),
    );
    const { figures } = answerOf(await house.say(first.next?.[0]?.say ?? '', lateDay));
    expect(figures).toMatchObject({ verdict: 'within', saved: false });
    const lines = figures.lines as { ingredient: string; percent: number }[];
    expect(lines.reduce((sum, { percent }) => sum + percent, 0)).toBeCloseTo(100, 9);
    expect(lines).toContainEqual({ ingredient: 'lemongrass-essential-oil', percent: 0.129 });
  });

  it('should be saved as a new version of a saved recipe, and the old one should stay', async () => {
    const house = await testHouse();
    await house.say(
      'save recipe Strong stick: 20% beeswax, 77% olive oil, 2% spearmint oil, 1% lemongrass oil',
    );
    await house.say('check Strong stick');
    const { figures } = answerOf(await house.say('apply it'));
    expect(figures).toMatchObject({ saved: true, verdict: 'within' });
    expect(answerOf(await house.say('check Strong stick')).figures.verdict).toBe('within');
    expect(answerOf(await house.say('show version 1 of Strong stick')).figures).toBeDefined();
    await house.say('only role Bench may write');
    await house.say('check Fernlea mint lip balm');
    const guest = { member: { ...anyone, manages: false } };
    await house.say('check Strong stick', guest);
    expect(troubleIn(await house.say('apply it', guest)).code).toBe('not-allowed');
  });

  it('should say when nothing can be changed so', async () => {
    const house = await testHouse();
    await house.say('check 25 g beeswax, 75 g olive oil');
    expect(troubleIn(await house.say('apply it')).code).toBe('not-found');
  });

  it('should say "about" and ask for the certificate where the limit is from memory', async () => {
    const { answer } = await asked('check 20 g beeswax, 79 g olive oil, 1 g clove bud oil');
    const [first] = answer.warnings;
    expect(first?.text).toMatch(/about 0\.45 %.*from memory/);
    expect(first?.text).toContain("supplier's certificate");
  });

  it('should list worst first', async () => {
    const { answer } = await asked(
      'check 20 g beeswax, 77 g olive oil, 2 g lavender oil, 1 g lemon verbena oil',
      {
        region: 'eu',
      },
    );
    expect(answer.warnings[0]?.code).toBe('prohibited');
    expect(answer.warnings.findIndex(({ code }) => code === 'aroma-too-high')).toBeGreaterThan(0);
    expect(answer.warnings.at(-2)?.code).toBe('pets');
  });
});

describe('the group', () => {
  it('should keep its region when a question names another', async () => {
    const house = await testHouse();
    const us = answerOf(await house.say('check Fernlea mint lip balm, region us'));
    expect(us.figures.region).toBe('us');
    expect(answerOf(await house.say('settings')).figures.region).toBe('eu');
  });

  it('should get the rules of the day it asks on', async () => {
    const before = await asked('is 0.12% citral ok in a lip balm', { at: Date.UTC(2026, 11, 31) });
    const after = await asked('is 0.12% citral ok in a lip balm', { at: Date.UTC(2027, 0, 1) });
    expect([before.answer.figures.verdict, after.answer.figures.verdict]).toEqual(['warn', 'not-ok']);
    expect(before.answer.warnings.map(({ code }) => code)).toContain('limit-coming');
  });
});

describe('the allergens to name', () => {
  it('should stand in the answer with the list they are from', async () => {
    const { text } = await asked('check Fernlea mint lip balm');
    expect(text.replace(/\s+/g, ' ')).toMatch(
      /Name on the label: Mentha Piperita Oil 0\.5 %, Menthol ~0\.275 %.*list of 81/,
    );
    const us = await asked('check Fernlea mint lip balm', { region: 'us' });
    expect(us.text.replace(/\s+/g, ' ')).toMatch(/No scent allergen has to be named/);
  });
});
