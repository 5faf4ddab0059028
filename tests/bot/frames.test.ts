import { describe, expect, it } from 'vitest';
import { memoryKeeper } from '../../bot/book/keeper-memory.ts';
import { pipkin } from '../../bot/handle.ts';

// What stands around a message must not change what is written down of it: the same request with and without the talk.
// Checked against the bare message, so nothing here says that the bare message itself is read rightly; the stories do.

const member = { id: 'm', name: 'm', roles: [], manages: true };
const book = [
  'bought 500 g beeswax lot CH-41, best before 2029-01',
  'bought 900 g olive oil lot AP4, best before 2028-01',
  'save recipe Bay balm: 20 g beeswax, 80 g olive oil',
  'poured 40 tins of 20 g of Bay balm today',
  'gave 6 tins of 27-KUFE to Anna',
];

const told = [
  'poured 20 tins of 15 g of Bay balm today',
  'I bought 500 g of jojoba oil, lot JJ4, best before June 2028',
  '4 tins of 27-KUFE went to the school fair',
  'I gave Anna 3 tins of 27-KUFE',
  'two tins of 27-KUFE were broken',
  'lot CH-41 weighs 420 g now',
  'we threw away 30 g of AP4',
];

const before = [
  'Hi all, ',
  'Good morning! ',
  'Sorry to bother you again. ',
  'One more for the book: ',
  'And another one. ',
  'Quick update: ',
  'News from the kitchen: ',
  'It rained all day. ',
  'We had a lovely session. ',
  'Please note that ',
  'I would like to report that ',
  'Because the fair is on Saturday, ',
  'When I got home, ',
  'At half past nine ',
  'To my surprise, ',
  'By the way, ',
  "With Tom's help ",
];

const after = [
  '. Thank you for keeping count.',
  '. That is all for today.',
  '. See you on Thursday.',
  '. More tomorrow.',
  '. Could you write that down, please?',
  ', because the fair is on Saturday.',
  ', so we are ready for Sunday.',
  ', which was a relief.',
  ' at half past nine.',
  ' at long last.',
  ", with Tom's help.",
  ', as agreed.',
];

/** The request of a message, and not why or by what words. */
const requestOf = async (text: string): Promise<unknown> => {
  const house = pipkin({ keeper: memoryKeeper(), onFault: () => undefined });
  let at = Date.UTC(2027, 0, 5, 10);
  const say = (said: string) => {
    at += 60_000;
    return house.hear({ text: said, group: 'g', channel: 'c', member, at });
  };
  for (const line of book) await say(line);
  at += 3_600_000;
  const reply = await say(text);
  const { topic } = reply;
  const request = 'request' in reply ? reply.request : undefined;
  const { why: _why, on, ...rest } = (request ?? {}) as Record<string, unknown>;
  return { topic, request: { ...rest, ...(on === '2027-01-05' ? {} : { on }) } };
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

describe('talk around what is told', () => {
  it.each(told)('should leave it as it is: %j', async (bare) => {
    const plain = await requestOf(bare);
    expect(plain).toMatchObject({
      topic: /^(?:stock|lot|I bought|we threw)/.test(bare) ? 'stock' : expect.any(String),
    });
    for (const frame of before)
      expect([frame, await requestOf(`${frame}${/[.!]\s$/.test(frame) ? capital(bare) : bare}`)]).toEqual([
        frame,
        plain,
      ]);
    for (const frame of after)
      expect([frame, await requestOf(`${capital(bare)}${frame}`)]).toEqual([frame, plain]);
  });
});
