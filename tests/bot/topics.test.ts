import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { chatReply } from '../../bot/render/discord.ts';
import { jsonLine } from '../../bot/render/json.ts';
import { textOf } from '../../bot/render/text.ts';
import { topics } from '../../bot/topics.ts';
import { benchHouse } from '../helpers/bench-house.ts';
import { answerOf, testHouse } from '../helpers/house.ts';

const folder = new URL('../../bot/topics/', import.meta.url);

describe('the list of topics', () => {
  it('should name every file in the folder, and only those', () => {
    const files = readdirSync(folder).map((file) => file.replace(/\.ts$/, ''));
    expect(files.toSorted()).toEqual(topics.map((topic) => topic.name).toSorted());
  });

  it('should describe each topic in a line that fits a slash command', () => {
    for (const { summary } of topics) expect(summary.length).toBeLessThanOrEqual(100);
  });
});

const examples = topics.flatMap((topic) =>
  topic.examples.map((example) => ({ topic: topic.name, ...example })),
);

describe('an example in help', () => {
  it.each(examples)('should work when pasted: $say', async ({ topic, say, means, bench }) => {
    const house = await (bench ? benchHouse() : testHouse());
    const reply = await house.say(say);
    answerOf(reply);
    expect(reply.topic).toBe(topic);
    expect('request' in reply && reply.request).toMatchObject(means);
    expect(house.faults).toEqual([]);
  });

  it('should be shown only where its recipe exists', async () => {
    const house = await testHouse();
    const here = textOf(await house.say('help scale'), { width: 80 });
    const there = textOf(await house.say('help scale', { group: 'empty' }), { width: 80 });
    expect(here).toContain('Fernlea hand balm');
    expect(there).not.toContain('Fernlea hand balm');
  });
});

describe('an example with codes', () => {
  it('should be shown with the codes of the group, and not where it has none', async () => {
    const here = textOf(await (await benchHouse()).say('help trace'), { width: 80 });
    const there = textOf(await (await testHouse()).say('help trace'), { width: 80 });
    expect(here).toMatch(/where did 26-[A-Z]{4} go/);
    expect(there).not.toContain('26-');
    expect(there).toContain('what is out of the house');
  });
});

describe('every answer', () => {
  it.each(examples)('should be well formed on all three surfaces: $say', async ({ say, bench }) => {
    const house = await (bench ? benchHouse() : testHouse());
    const reply = await house.say(say);
    const line = jsonLine(reply);
    expect(line).not.toMatch(/undefined|NaN|Infinity|\n/);
    expect(JSON.parse(line)).toMatchObject({ topic: expect.any(String), text: expect.any(String) });
    expect(textOf(reply, { width: 40 })).not.toMatch(/undefined|NaN/);
    for (const { text } of chatReply(reply).messages) expect(text.length).toBeLessThanOrEqual(2000);
  });

  it.each(examples.filter(({ topic }) => topic === 'scale'))(
    'should end with the local rules when something is made: $say',
    async ({ say }) => {
      const house = await testHouse();
      const codes = answerOf(await house.say(say)).warnings.map((warning) => warning.code);
      expect(codes).toEqual(expect.arrayContaining(['hot-wax', 'flame-and-alcohol', 'local-rules']));
      expect(codes.at(-1)).toBe('local-rules');
    },
  );
});
