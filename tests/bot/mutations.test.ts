import '../helpers/undrawn.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Reply, troubleCodes } from '../../bot/answer.ts';
import { jsonLine } from '../../bot/render/json.ts';
import { textOf } from '../../bot/render/text.ts';
import { type TestHouse, testHouse } from '../helpers/house.ts';
import { mutated } from '../helpers/mutations.ts';
import { phraseTables } from '../helpers/phrases.ts';

const texts = phraseTables().flatMap(({ phrases }) =>
  phrases.flatMap(({ say, before = [] }) => [say, ...before]),
);

const everyNumber = (value: unknown): number[] => {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(everyNumber) : [];
};

const answerKeys = ['topic', 'request', 'figures', 'warnings', 'text', 'files'];

const garbled = /\b(?:undefined|NaN|Infinity)\b|\[object |^\s*at .+:\d+:\d+/gm;

/** What every reply has to be, whatever was said. `read` is its JSON line read back. */
const wellFormed = (reply: Reply, message: string): void => {
  const line = jsonLine(reply, []);
  expect(line).not.toMatch(/[\n\r]/);
  const read = JSON.parse(line);
  const text: string = read.error?.text ?? read.text;
  expect(text.trim()).not.toBe('');
  // A word of the message may be said back: it is the maker's own.
  expect((text.match(garbled) ?? []).filter((words) => !message.includes(words))).toEqual([]);
  if ('error' in reply) {
    expect(Object.keys(read)).toEqual(['topic', 'error']);
    expect(troubleCodes).toContain(reply.error.code);
    return;
  }
  expect(Object.keys(read)).toEqual(answerKeys);
  // JSON has no NaN: it would have become null, so the figures are looked at before they were written.
  expect(everyNumber(reply.answer.figures).every(Number.isFinite)).toBe(true);
  for (const width of [40, 80]) expect(textOf(reply, { width, next: true })).not.toBe('');
};

/** Says it in a house; nothing may go wrong, and a refusal may leave nothing in the book. */
const heardWell = async (house: TestHouse, message: string): Promise<Reply> => {
  const book = await house.keeper.open('local');
  const before = book.state;
  const reply = await house.say(message);
  expect(house.faults).toEqual([]);
  wellFormed(reply, message);
  if ('error' in reply) expect(book.state).toBe(before);
  return reply;
};

describe('messages with slips in them', () => {
  // A fixed seed, so that a failure comes again; the bench draws new ones every time.
  const seed = 20_261_125;

  it('should get one well-formed reply each, and change nothing where refused', {
    timeout: 180_000,
  }, async () => {
    const house = await testHouse();
    let refused = 0;
    const messages = fc.sample(mutated(texts), { seed, numRuns: 2000 });
    for (const [at, message] of messages.entries()) {
      try {
        if ('error' in (await heardWell(house, message))) refused += 1;
      } catch (fault) {
        throw new Error(`seed ${seed}, message ${at}: ${JSON.stringify(message)}`, { cause: fault });
      }
    }
    // Slips leave some messages sound and spoil others; were it all of one kind, nothing would have been shown.
    expect(refused).toBeGreaterThan(400);
    expect(messages.length - refused).toBeGreaterThan(200);
  });

  it('should never change the book by a question', { timeout: 60_000 }, async () => {
    const asking = phraseTables()
      .filter(({ file }) => /^(?:scale|convert|ingredient|help)/.test(file))
      .flatMap(({ phrases }) => phrases.map(({ say }) => say));
    const house = await testHouse();
    const book = await house.keeper.open('local');
    for (const message of fc.sample(mutated(asking), { seed, numRuns: 600 })) {
      const before = book.state;
      const reply = await house.say(message);
      const writes = 'answer' in reply && ['recipe', 'settings'].includes(reply.topic);
      if (!writes) expect(book.state, message).toBe(before);
    }
  });
});

describe('any text at all', () => {
  it('should get one well-formed reply', { timeout: 60_000 }, async () => {
    const house = await testHouse();
    const anything = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 300 }),
      fc.string({ unit: 'binary', maxLength: 300 }),
      fc
        .array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 200 })
        .map((units) => String.fromCharCode(...units)),
      fc
        .tuple(
          fc.constantFrom('scale ', 'save recipe ', 'what is ', '5 oz in ', 'region '),
          fc.string({ unit: 'grapheme' }),
        )
        .map((parts) => parts.join('')),
      fc.string({ unit: 'grapheme-ascii', minLength: 3900, maxLength: 4100 }),
    );
    await fc.assert(
      fc.asyncProperty(anything, async (message) => {
        await heardWell(house, message);
      }),
      { numRuns: 500 },
    );
  });
});
