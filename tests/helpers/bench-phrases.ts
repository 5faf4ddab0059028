import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Reply } from '../../bot/answer.ts';
import { benchHouse } from './bench-house.ts';
import { answerOf, troubleIn } from './house.ts';
import { figureFaults, type Phrase, phrasesIn } from './phrases.ts';

const checkRefused = (reply: Reply, { code }: Phrase): void => {
  const trouble = troubleIn(reply);
  expect(trouble.text.length).toBeGreaterThan(20);
  if (code) expect(trouble.code).toBe(code);
};

const checkAnswered = (reply: Reply, { topic, figures, warnings = [] }: Phrase): void => {
  expect(reply.topic).toBe(topic);
  const answer = answerOf(reply);
  expect(figureFaults(answer.figures, figures)).toEqual([]);
  for (const code of warnings) expect(answer.warnings.map((each) => each.code)).toContain(code);
};

/** Says each phrase of a table to a group that has lots and batches on its bench. */
export const describeBenchPhrases = (what: string, table: URL): void => {
  const phrases = phrasesIn(JSON.parse(readFileSync(table, 'utf8')));
  describe(what, () => {
    it.each(phrases.map((phrase) => [phrase.say, phrase] as const))('%s', async (_, phrase) => {
      const house = await benchHouse();
      for (const before of phrase.before ?? []) answerOf(await house.say(before));
      const reply = await house.say(phrase.say);
      if (phrase.refuse) checkRefused(reply, phrase);
      else checkAnswered(reply, phrase);
      expect(house.faults).toEqual([]);
    });
  });
};
