import type { Reply } from '../../bot/answer.ts';
import type { Keeper } from '../../bot/book/keeper.ts';
import { memoryKeeper } from '../../bot/book/keeper-memory.ts';
import { writtenBy } from '../../bot/book/written-by.ts';
import { seedDemo } from '../../bot/demo.ts';
import { noFiles } from '../../bot/files/given.ts';
import { heldFiles } from '../../bot/files/held.ts';
import { type Pipkin, pipkin } from '../../bot/handle.ts';
import type { Heard, Member } from '../../bot/heard.ts';
import type { Tools } from '../../bot/topic.ts';

/** The day the tests take place: a Wednesday in the village hall. */
export const now = Date.UTC(2026, 10, 25, 9, 0, 0);

export const anyone: Member = {
  id: 'm1',
  name: 'a member',
  roles: [],
  manages: true,
};

export const heard = (text: string, more: Partial<Heard> = {}): Heard => ({
  text,
  group: 'local',
  channel: 'hall',
  member: anyone,
  at: now,
  ...more,
});

export interface TestHouse {
  readonly pipkin: Pipkin;
  readonly keeper: Keeper;
  /** Faults of the program met so far. A test that does not look for them should find none. */
  readonly faults: unknown[];
  say(text: string, more?: Partial<Heard>): Promise<Reply>;
}

/** A whole bot over a book in memory, with the demo recipes in it. */
export const testHouse = async (group = 'local'): Promise<TestHouse> => {
  const keeper = memoryKeeper();
  await seedDemo(await keeper.open(group), now);
  const faults: unknown[] = [];
  const house = pipkin({ keeper, onFault: (_id, fault) => faults.push(fault) });
  return {
    pipkin: house,
    keeper,
    faults,
    say: (text, more) => house.hear(heard(text, { group, ...more })),
  };
};

/** What a topic is given when it is run by itself over a house's book. */
export const toolsIn = async ({ keeper }: TestHouse, group = 'local'): Promise<Tools> => {
  const book = writtenBy(await keeper.open(group), anyone);
  const { settings } = book.state;
  const place = { channel: 'hall', files: noFiles, held: heldFiles(), openly: false };
  return { at: now, book, member: anyone, settings, ...place };
};

/** The answer of a reply, or a failure that says what came instead. */
export const answerOf = (reply: Reply) => {
  if ('answer' in reply) return reply.answer;
  throw new Error(`expected an answer, got ${reply.error.code}: ${reply.error.text}`);
};

/** The trouble of a reply, or a failure that says what was answered. */
export const troubleIn = (reply: Reply) => {
  if ('error' in reply) return reply.error;
  throw new Error(`expected a refusal, got an answer to ${reply.topic}: ${JSON.stringify(reply.request)}`);
};
