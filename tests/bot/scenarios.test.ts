import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { troubleCodes } from '../../bot/answer.ts';
import { answerOf, anyone, testHouse, troubleIn } from '../helpers/house.ts';

// Whole stories with dates. Their grams, days and counts are arithmetic, reckoned by hand from round weigh-outs and a
// calendar; they prove nothing about nature. The first three house codes of a year are 26-KUFE, 26-VOKI, 26-FIMO.

const step = z.strictObject({
  at: z.iso.datetime(),
  say: z.string(),
  member: z.string().optional(),
  figures: z.record(z.string(), z.unknown()).optional(),
  refuse: z.enum(troubleCodes).optional(),
});
const scenario = z.strictObject({ name: z.string(), steps: z.array(step).min(1) });

const scenarios = z
  .array(scenario)
  .parse(JSON.parse(readFileSync(new URL('../scenarios/bench.json', import.meta.url), 'utf8')));

const at = (value: unknown, path: string): unknown =>
  path
    .split('.')
    .reduce<unknown>((inner, key) => (inner as Record<string, unknown> | undefined)?.[key], value);

describe('stories of the bench', () => {
  it('should be at least 25', () => {
    expect(scenarios.length).toBeGreaterThanOrEqual(25);
  });

  it.each(scenarios)('should come out exactly: $name', async ({ steps }) => {
    const house = await testHouse();
    for (const { at: when, say, member = 'Ada', figures = {}, refuse } of steps) {
      const more = { at: Date.parse(when), member: { ...anyone, id: member, name: member } };
      const reply = await house.say(say, more);
      expect(house.faults).toEqual([]);
      if (refuse) expect(troubleIn(reply).code, say).toBe(refuse);
      else {
        const answer = answerOf(reply);
        const got = Object.fromEntries(Object.keys(figures).map((path) => [path, at(answer.figures, path)]));
        expect(got, say).toEqual(figures);
      }
    }
  });
});
