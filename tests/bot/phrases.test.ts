import '../helpers/undrawn.ts';
import { describe, expect, it } from 'vitest';
import { answerOf, testHouse, troubleIn } from '../helpers/house.ts';
import { figureFaults, type Phrase, phraseTables } from '../helpers/phrases.ts';

const replyTo = async ({ say, before = [], region }: Phrase) => {
  const house = await testHouse();
  const more = region ? { region } : {};
  for (const earlier of before) await house.say(earlier, more);
  const reply = await house.say(say, more);
  expect(house.faults).toEqual([]);
  return reply;
};

const checkAnswer = async (phrase: Phrase) => {
  const reply = await replyTo(phrase);
  const answer = answerOf(reply);
  expect(reply.topic).toBe(phrase.topic);
  expect(figureFaults(answer.figures, phrase.figures)).toEqual([]);
  const codes = answer.warnings.map((warning) => warning.code);
  for (const code of phrase.warnings ?? []) expect(codes).toContain(code);
};

const checkRefusal = async (phrase: Phrase) => {
  const trouble = troubleIn(await replyTo(phrase));
  if (phrase.code) expect([phrase.code].flat()).toContain(trouble.code);
  expect(trouble.text.length).toBeGreaterThan(10);
};

const tables = phraseTables();

describe('phrase tables', () => {
  const all = tables.flatMap((table) => table.phrases);

  it('should hold at least 300 phrases, 60 of them to be refused', () => {
    expect(all.length).toBeGreaterThanOrEqual(300);
    expect(all.filter((phrase) => phrase.refuse).length).toBeGreaterThanOrEqual(60);
  });
});

describe.each(tables)('$file', ({ phrases }) => {
  it.each(phrases.map((phrase) => [phrase.say, phrase] as const))('should read %j', async (_say, phrase) => {
    await (phrase.refuse ? checkRefusal(phrase) : checkAnswer(phrase));
  });
});
