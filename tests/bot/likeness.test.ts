import '../helpers/undrawn.ts';
import { describe, expect, it } from 'vitest';
import { likely } from '../../bot/likeness/likely.ts';
import { sayingsIn, signatureOf } from '../../bot/likeness/sayings.ts';
import { pointedNames } from '../../bot/readers/pointed-name.ts';
import type { Last } from '../../bot/reading.ts';
import { allSayings } from '../../bot/sayings/all.ts';
import { understand } from '../../bot/understand.ts';
import { emptyBook } from '../../core/book.ts';
import { answerOf, now, testHouse, troubleIn } from '../helpers/house.ts';
import { figureFaults, type Phrase, phraseTables } from '../helpers/phrases.ts';

const sayings = allSayings.flatMap(sayingsIn);

describe('the sayings', () => {
  it('should each have the slots of the plain form they stand under', () => {
    const open = (text: string) => (text.match(/\{[^}]*\}/g) ?? []).toSorted().join(' ');
    let plain = '';
    for (const line of allSayings.join('\n').split('\n')) {
      if (line.startsWith('=')) plain = line;
      else if (/^[^@#\s]/.test(line)) expect(`${line}: ${open(line)}`).toBe(`${line}: ${open(plain)}`);
    }
    expect(sayings.length).toBeGreaterThan(5000);
  });

  it('should know every slot that is written in them', () => {
    for (const { features, plain } of sayings)
      expect([plain, features.slots.length]).toEqual([plain, (plain.match(/\{/g) ?? []).length]);
    expect(new Set(sayings.map(({ features }) => signatureOf(features))).size).toBeGreaterThan(20);
  });
});

describe('a message nobody understands', () => {
  it.each([
    ['on my radiator it reaches 38 C, does Fernlea hand balm cope up there', 'melt'],
    ['Fernlea mint lip balm, how soon does that one turn to liquid, I was asked', 'melt'],
  ])('should be read as a saying it is like, and say so: %s', async (say, topic) => {
    const reply = await (await testHouse()).say(say);
    expect(reply.topic).toBe(topic);
    answerOf(reply);
  });

  it('should be answered with what it may have meant', async () => {
    const text = troubleIn(await (await testHouse()).say('does the choir firm its bonfire at 38 C')).text;
    expect(text).toMatch(/Did you mean "[^"]*38 C/);
  });

  it('should not be taken for its opposite', async () => {
    const plains = (text: string) =>
      likely(understand(text, emptyBook, emptyBook.settings, undefined, now), 0.5).map(
        ({ assumed }) => assumed,
      );
    for (const text of plains('a stick without beeswax for the market'))
      expect(text).toMatch(/without|-free/);
    expect(plains('swap -20 g beeswax for candelilla')).toEqual([]);
  });
});

/** What likeness alone makes of a phrase, in a house where the earlier ones were said. */
const alone = async ({ say, before = [], region }: Phrase) => {
  const house = await testHouse();
  const more = region ? { region } : {};
  let last: Last | undefined;
  for (const earlier of before) {
    const reply = await house.say(earlier, more);
    if ('answer' in reply) last = { topic: reply.topic, request: {} };
  }
  const { state } = await house.keeper.open('local');
  const { reading } = pointedNames(understand(say, state, state.settings, last, now));
  const [first, second] = likely(reading, 0.6);
  const plain = first && !second ? /"(.*)"/s.exec(first.assumed)?.[1] : undefined;
  const whole = plain !== undefined && !plain.endsWith('…');
  return whole ? house.say(plain, more) : undefined;
};

describe('likeness alone, on phrases that were written apart from the sayings', () => {
  // What stands in the gathered tables was written beside sayings, and picked because other readings failed.
  const phrases = phraseTables()
    .filter(({ file }) => !file.startsWith('gathered'))
    .flatMap((table) => table.phrases)
    // Every other one: there are many thousands, and each is weighed against every saying.
    .filter((_phrase, at) => at % 2 === 0);

  it('should be right in nearly all it answers, and answer many', { timeout: 300_000 }, async () => {
    let answered = 0;
    const wrong: string[] = [];
    for (const phrase of phrases.filter(({ refuse }) => !refuse)) {
      const reply = await alone(phrase);
      if (!reply || !('answer' in reply)) continue;
      answered += 1;
      const faults =
        reply.topic === phrase.topic ? figureFaults(reply.answer.figures, phrase.figures) : [reply.topic];
      if (faults.length > 0) wrong.push(phrase.say);
    }
    expect(answered).toBeGreaterThan(200);
    expect(wrong.length / answered).toBeLessThan(0.03);
  });

  it('should answer next to nothing that has to be refused', { timeout: 300_000 }, async () => {
    const answered: string[] = [];
    const refused = phrases.filter(({ refuse }) => refuse);
    for (const phrase of refused) {
      const reply = await alone(phrase);
      if (reply && 'answer' in reply) answered.push(phrase.say);
    }
    expect(answered.length / refused.length).toBeLessThan(0.015);
  });
});
