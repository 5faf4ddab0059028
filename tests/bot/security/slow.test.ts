import { describe, expect, it } from 'vitest';
import type { Keeper } from '../../../bot/book/keeper.ts';
import { pipkin } from '../../../bot/handle.ts';
import { maxMessageLength } from '../../../bot/readers/tidy.ts';
import { topics } from '../../../bot/topics.ts';
import { understand } from '../../../bot/understand.ts';
import { emptyBook } from '../../../core/book.ts';
import { heard, now } from '../../helpers/house.ts';

// What a message may cost: every topic's reader, and with them every regular expression they hold, sees repetitions made
// to be slow. No clock is read: the processor time of a text is compared with that of one half as long.

const cpuMs = (work: () => void): number => {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
};

/** Reads the text as every topic does, past the cap on its length. */
const readByAll = (text: string): void => {
  const reading = understand(text, emptyBook, emptyBook.settings, undefined, now);
  for (const topic of topics) topic.read({ ...reading, attached: [] });
};

/** The least of some runs: what else the machine does only ever adds. */
const least = (text: string, runs: number): number =>
  Math.min(...Array.from({ length: runs }, () => cpuMs(() => readByAll(text))));

interface Shape {
  readonly before?: string;
  readonly again: string;
  readonly after?: string;
}

const textOf = ({ before = '', again, after = '' }: Shape, length: number): string =>
  before +
  again.repeat(Math.ceil(length / again.length)).slice(0, length - before.length - after.length) +
  after;

const recipe = textOf(
  { before: 'scale ', again: '20 g beeswax, 30 g shea butter, 50 g olive oil, ' },
  maxMessageLength,
);

/** Twice the text may take four times as long, which the cap keeps short, and some more for the noise; not eight times. */
const mostGrowth = 6;

const growth = (shape: Shape, length: number): number => {
  const usual = least(recipe, 2);
  let found = Number.POSITIVE_INFINITY;
  // A text that is read in no time has no growth worth measuring. Measured again only when it looks bad.
  for (let tries = 0; tries < 4 && found > mostGrowth; tries++) {
    const half = least(textOf(shape, length / 2), 2);
    found = Math.min(found, least(textOf(shape, length), 2) / Math.max(half, usual / 2));
  }
  return found;
};

/** A text may cost so many times what a pasted recipe as long as may be does. */
const mostTimes = 10;

const timesUsual = (shape: Shape): number => {
  let found = Number.POSITIVE_INFINITY;
  for (let tries = 0; tries < 4 && found > mostTimes; tries++)
    found = Math.min(found, least(textOf(shape, maxMessageLength), 2) / least(recipe, 2));
  return found;
};

const pieces = [
  'a', '1', '1 ', '1,', '1.', '1/', '-', '(', ')', '"', "'", '\n', ' ', '\t', ' \n', 'a-', 'a.', '1-1', '1x1', '|', '€1 ', '½', '🙂', '<@1>', '&',
  'of ', 'no ', 'and ', 'to ', 'for ', 'in ', 'on ', 'at ', 'lot ', 'lot K12 ', '26-KIVO ', '2027-03 ', '9:00 ', 'monday ', 'beeswax ', 'bees wacks ',
  '2 tins of ', '24 x 15 ml ', '20 g beeswax, ', '1% ', '1:8 ', '12 for 100 ', 'without ', 'in stock ', 'swap ', 'bought ', 'poured ', 'note: ', 'maker "',
  '__proto__ ', 'constructor: ', '{"a":', '[', '\ufdfa',
]; // biome-ignore format: a list of signs and words

const openings: readonly Shape[] = [
  { before: 'limit for met', again: ' of', after: 'hyl salicylate on lips' },
  { before: 'label for Fernlea mint lip ', again: ' \n', after: 'balm, 12 g' },
  { before: 'how much infused oil', again: ' ', after: 'will 40 g calendula give' },
  { before: 'poured 24 tins of 15 ml', again: ' and', after: ' of Hall balm today' },
  { before: 'bought 500', again: ' g', after: ' olive oil lot O1, best before 2027-03' },
  { before: 'save recipe', again: ' a', after: ': 20 g beeswax, 80 g olive oil' },
  { before: 'what can replace', again: ' oil', after: ' in Hall balm' },
  { before: 'vegan stick that survives', again: ' 1', after: ' C, no nuts' },
  { before: 'can I say it', again: ' heals', after: '?' },
  { again: "'ll be 14 of us in the end, t", after: '?' },
  { before: 'remind us daily at', again: ' 9', after: ' in Lisbon' },
  { before: 'workshop for 12 people', again: ', 2 tins', after: ' of 15 ml each, Hall balm' },
  { before: 'who changed', again: ' "', after: ' in March' },
];

describe('texts made to be slow', () => {
  it('should not be read at all when they are longer than the cap', async () => {
    const keeper: Keeper = { open: () => Promise.reject(new Error('opened')), close: async () => {} };
    const faults: unknown[] = [];
    const { hear } = pipkin({ keeper, onFault: (_, fault) => faults.push(fault) });
    for (const again of ['a', ' ', '20 g beeswax, ']) {
      const reply = await hear(heard(textOf({ again }, 100_000)));
      expect('error' in reply && reply.error.code).toBe('too-long');
    }
    expect(faults).toEqual([]);
  });

  it.each(pieces.map((again) => [again]))(
    'should cost no more than the square of their length: %j',
    (again) => {
      expect(growth({ again }, maxMessageLength)).toBeLessThan(mostGrowth);
    },
  );

  it.each(openings.map((shape) => [shape.before, shape] as const))(
    'should cost little more than a recipe as long within "%s…"',
    (_, shape) => {
      expect(timesUsual(shape)).toBeLessThan(mostTimes);
      expect(growth(shape, maxMessageLength)).toBeLessThan(mostGrowth);
    },
  );

  it.each([' ', '\n', 'a', '1 ', '-', '(', '"', ', ', 'of ', 'beeswax ', '20 g beeswax, ', 'lot K12 '])(
    'should not hang a reader that is given 100 kB of them: %j',
    (again) => {
      expect(growth({ again }, 100_000)).toBeLessThan(mostGrowth);
    },
  );

  it('should notice a reader that is slow', () => {
    const slow = (text: string): number => cpuMs(() => void /^(?:\w+\s?)*$/.test(text));
    const text = (length: number): string => `${'a'.repeat(length)}!`;
    // Twice as long is far more than eight times as slow.
    expect(slow(text(22)) / Math.max(slow(text(11)), 0.01)).toBeGreaterThan(mostGrowth);
  });
});
