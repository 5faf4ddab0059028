import { describe, expect, it } from 'vitest';
import { textOf } from '../../bot/render/text.ts';
import { answerOf, testHouse, troubleIn } from '../helpers/house.ts';

const asked = async (say: string, more = {}) => {
  const house = await testHouse();
  const reply = await house.say(say, more);
  expect(house.faults).toEqual([]);
  return { answer: answerOf(reply), text: textOf(reply, { width: 100 }) };
};

describe('a wording', () => {
  it('should get a verdict, the reason in its region and what to say instead', async () => {
    const { answer, text } = await asked('can I say it heals cracked lips', { region: 'us' });
    expect(answer.figures).toMatchObject({
      verdict: 'medicinal',
      say_instead: 'Softens dry-feeling lips',
      region: 'us',
    });
    expect(String(answer.figures.why)).toContain('makes it a drug');
    expect(text).toContain('Say instead: "Softens dry-feeling lips"');
    expect(answer.warnings.map(({ code }) => code)).toEqual(['local-rules']);
  });

  it('should be said to read as cosmetic, never to be lawful', async () => {
    for (const say of [
      'can I say softens dry lips',
      'can I say it heals cracked lips',
      'can I say 100 % natural',
    ]) {
      const { text } = await asked(say);
      expect(text).not.toMatch(/\b(?:legal|lawful|allowed|permitted|approved)\b(?!")/i);
    }
    expect((await asked('can I say softens dry lips')).answer.title).toContain('reads as a cosmetic claim');
  });

  it('should be better left out where no wording keeps it', async () => {
    const { text, answer } = await asked('can I say it treats eczema');
    expect(text).toContain('Better leave it out.');
    expect(answer.figures.say_instead).toBe('leave out');
  });

  it('should be told to be a careful guess where nothing was seen', async () => {
    const { text, answer } = await asked('can I say it restores lips');
    expect(answer.figures.unsure).toBe(true);
    expect(text).toContain('I am not sure');
  });

  it('should be asked about locally where regions differ and this one was not seen', async () => {
    const { text } = await asked('can I say relieves chapped lips', { region: 'au' });
    expect(text).toContain('ask locally');
  });

  it('should keep letters case and quotes as they were said', async () => {
    const { answer } = await asked('may I write "Winter Softness" on the lid');
    expect(answer.title).toContain('"Winter Softness"');
  });

  it('should not be run together with other things that are sold or put in', async () => {
    const house = await testHouse();
    const reply = await house.say('can I put honey in my lip balm');
    expect(reply.topic).toBe('check');
  });

  it('should have a limit of length', async () => {
    const house = await testHouse();
    expect(troubleIn(await house.say(`can I say "${'soft '.repeat(200)}"`)).code).toBe('too-long');
  });
});

describe("the maker's own health", () => {
  it.each(['my lips are bleeding, what should I do?', 'I have eczema, what can I do?'])(
    'should be sent to those who know: %s',
    async (say) => {
      const house = await testHouse();
      expect(troubleIn(await house.say(say)).text).toMatch(/pharmacist or a doctor/);
    },
  );
});

describe('a wall of text', () => {
  it.each([
    ['claim: x', ' ,please'],
    ['claim: a', '?!., '],
    ['can I say on the ', 'on the my our '],
    ["can I say '", "x' '"],
    ['is ', 'is '],
    ['check with ', '5 % limonene, '],
    ['can i say', '  '],
  ])(
    'should be read without looking twice at every letter: %j and %j again and again',
    async (start, again) => {
      const house = await testHouse();
      const from = performance.now();
      await house.say((start + again.repeat(4000 / again.length)).slice(0, 3990));
      expect(performance.now() - from).toBeLessThan(3000);
      expect(house.faults).toEqual([]);
    },
  );
});
