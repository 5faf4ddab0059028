import { afterEach, describe, expect, it, vi } from 'vitest';
import { inOrder } from '../../bot/in-order.ts';
import { topics } from '../../bot/topics.ts';
import { inTurns } from '../../bot/turns.ts';
import { warmReading } from '../../bot/warm.ts';
import { finish, type Work } from '../../core/work.ts';
import { answerOf, now, testHouse } from '../helpers/house.ts';

afterEach(() => {
  vi.restoreAllMocks();
});

function* counting(to: number): Work<number> {
  let sum = 0;
  for (let step = 1; step <= to; step += 1) {
    yield;
    sum += step;
  }
  return sum;
}

function* failing(): Work<number> {
  yield;
  throw new Error('no such thing');
}

/** A clock on which each look takes this many milliseconds. */
const clockOf = (ms: number): void => {
  let at = 0;
  vi.spyOn(performance, 'now').mockImplementation(() => {
    at += ms;
    return at;
  });
};

/** How often others had their turn while the work went on. */
const turnsOfOthers = async (work: Promise<unknown>): Promise<number> => {
  let turns = 0;
  let going = true;
  const other = (): void => {
    if (!going) return;
    turns += 1;
    setImmediate(other);
  };
  setImmediate(other);
  await work;
  going = false;
  return turns;
};

describe('work in turns', () => {
  it('should come to the same as in one go', async () => {
    expect(finish(counting(100))).toBe(5050);
    expect(await inTurns(counting(100))).toBe(5050);
  });

  it('should let others have their turn when it takes long', async () => {
    clockOf(5);
    expect(await turnsOfOthers(inTurns(counting(100)))).toBeGreaterThan(40);
  });

  it('should go on without a stop when it is quick', async () => {
    clockOf(0);
    expect(await turnsOfOthers(inTurns(counting(100)))).toBe(0);
  });

  it('should fail as the work fails', async () => {
    await expect(inTurns(failing())).rejects.toThrow('no such thing');
    expect(() => finish(failing())).toThrow('no such thing');
  });
});

describe('what is asked in one conversation', () => {
  it('should be done in the order it comes, though the first takes longer', async () => {
    const queue = inOrder();
    const done: string[] = [];
    const lasting = (turns: number, name: string) => async () => {
      for (let turn = 0; turn < turns; turn += 1) await new Promise((next) => setImmediate(next));
      done.push(name);
    };
    await Promise.all([
      queue('a', lasting(5, 'slow')),
      queue('a', lasting(0, 'quick')),
      queue('b', lasting(1, 'elsewhere')),
    ]);
    expect(done).toEqual(['elsewhere', 'slow', 'quick']);
  });

  it('should go on after one that failed', async () => {
    const queue = inOrder();
    const first = queue('a', () => Promise.reject(new Error('no')));
    const second = queue('a', () => Promise.resolve('yes'));
    await expect(first).rejects.toThrow('no');
    expect(await second).toBe('yes');
  });

  it('should find the proposals of a design that is still being looked for', async () => {
    const house = await testHouse();
    const [designed, weighed] = await Promise.all([
      house.say('design a vegan stick that survives 36 C'),
      house.say('24 tins of 15 ml of the second'),
    ]);
    const [, second] = answerOf(designed).made ?? [];
    expect(second).toBeDefined();
    expect(weighed).toMatchObject({ topic: 'scale', request: { lines: second?.lines } });
  });

  it('should let another member be answered while a design is being looked for', async () => {
    clockOf(5);
    const house = await testHouse();
    const order: string[] = [];
    const note = (name: string) => () => order.push(name);
    await Promise.all([
      house.say('design a vegan stick that survives 36 C').then(note('design')),
      house.say('5 oz in g', { channel: 'kitchen' }).then(note('ounces')),
    ]);
    expect(order).toEqual(['ounces', 'design']);
  });
});

describe('what is done before the first message', () => {
  it('should read an example of every topic without a fault', async () => {
    expect(topics.length).toBeGreaterThan(15);
    await expect(warmReading(now)).resolves.toBeUndefined();
  });
});
