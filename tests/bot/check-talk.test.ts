import '../helpers/undrawn.ts';
import { describe, expect, it } from 'vitest';
import type { Region } from '../../core/settings.ts';
import rows from '../fixtures/check-talk.json' with { type: 'json' };
import { answerOf, testHouse } from '../helpers/house.ts';

/**
 * Recipes with faults and sound ones, in the words of many people. They were written from the rules and tables alone, by
 * people who had not seen the check; `why` names the row that each rests on. What counts is that row: recipes are invented.
 */
interface Row {
  readonly say: string;
  readonly before?: readonly string[];
  readonly region?: string;
  readonly now?: string;
  /** Codes that have to be among the warnings; "a|b": one of them. */
  readonly warnings: readonly string[];
  /** Codes that must not be. */
  readonly never: readonly string[];
  readonly why: string;
}

const usual = '2026-11-26T10:00:00Z';

describe('a recipe handed over in the words of a maker', () => {
  it.each((rows as readonly Row[]).map((row) => [row.say, row] as const))(
    'should get its warnings and no others: %j',
    async (_say, { say, before = [], region, now = usual, warnings, never, why }) => {
      const house = await testHouse();
      const more = { at: Date.parse(now), ...(region === undefined ? {} : { region: region as Region }) };
      for (const earlier of before) await house.say(earlier, more);
      const reply = await house.say(say, more);
      const codes = answerOf(reply).warnings.map(({ code }) => code);
      expect([reply.topic, house.faults]).toEqual(['check', []]);
      for (const wanted of warnings)
        expect(
          wanted.split('|').some((code) => codes.includes(code)),
          `${wanted}: ${why}`,
        ).toBe(true);
      expect(
        never.filter((code) => codes.includes(code)),
        why,
      ).toEqual([]);
    },
  );
});
