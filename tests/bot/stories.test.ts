import '../helpers/undrawn.ts';
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { memoryKeeper } from '../../bot/book/keeper-memory.ts';
import { pipkin } from '../../bot/handle.ts';
import { textOf } from '../../bot/render/text.ts';
import { anyone, heard, troubleIn } from '../helpers/house.ts';
import { codeGiven, type Story, story, storyFaults } from '../helpers/stories.ts';

// Stories written by somebody who had not read the program, from the vocabulary, the rules of shelf lives and hygiene, and
// the help texts alone (stories-spoken and stories-asked are of who wrote the reader). Every gram, day and count was reckoned by hand beforehand
// (weigh-out = net / 0.97 up to the step, shared by largest remainder; days off a calendar). They are arithmetic and prove
// nothing about nature.

const folder = new URL('../scenarios/', import.meta.url);
const tables = readdirSync(folder).filter((name) => name.startsWith('stories-'));

const tell = async ({ name, steps }: Story): Promise<void> => {
  const faults: unknown[] = [];
  const house = pipkin({ keeper: memoryKeeper(), onFault: (_id, fault) => faults.push(fault) });
  const codes = new Map<string, string>();
  const filled = (text: string): string => text.replace(/\{(\w+)\}/g, (_, key) => codes.get(key) ?? '?');
  for (const { text, now, member = 'me', topic, as, refuse, expect: wanted } of steps) {
    const said = filled(text);
    const who = { ...anyone, id: member, name: member };
    const reply = await house.hear(heard(said, { group: name, at: Date.parse(now), member: who }));
    expect(faults).toEqual([]);
    if (refuse) {
      expect(troubleIn(reply).code, said).toBe(refuse);
      continue;
    }
    expect([reply.topic, 'error' in reply ? reply.error : undefined], said).toEqual([topic, undefined]);
    if (!('answer' in reply)) continue;
    const { figures } = reply.answer;
    if (as) codes.set(as, codeGiven(figures));
    const exact = JSON.parse(filled(JSON.stringify(wanted))) as typeof wanted;
    expect(storyFaults(figures, textOf(reply, { width: 80 }), exact), said).toEqual([]);
  }
};

describe.each(tables)('%s', (table) => {
  const stories = z.array(story).parse(JSON.parse(readFileSync(new URL(table, folder), 'utf8')));

  it.each(stories)('should come out exactly: $name', tell);
});
