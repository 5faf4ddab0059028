import { describe, expect, it } from 'vitest';
import type { Region } from '../../core/settings.ts';
import clean from '../fixtures/check-clean.json' with { type: 'json' };
import faults from '../fixtures/check-faults.json' with { type: 'json' };
import { answerOf, testHouse } from '../helpers/house.ts';

/**
 * Recipes with a fault and recipes without one. They were written from the rules alone, before the check was read; each fault
 * names what it rests on. What counts is the rule: the recipes themselves are invented.
 */
interface Row {
  readonly say: string;
  readonly region?: string;
  readonly now?: string;
  readonly codes?: readonly string[];
  /** Limits, told by a pattern of their name, that have to come out as passed. */
  readonly limits?: readonly string[];
  /** A pattern that some warning's text has to fit. */
  readonly text?: string;
  readonly source?: string;
}

/** Warnings that say something is wrong with a balm, rather than what to tell about it. */
const alarms = new Set(
  `aroma-too-high not-for-lips light-sensitising brings-water wrong-species nut-allergen over-limit dose-over-usual
  limit-coming prohibited not-for-children`.split(/\s+/),
);

const look = async ({ say, region, now = '2026-11-26' }: Row) => {
  const house = await testHouse();
  const reply = await house.say(say, {
    at: Date.parse(`${now}T10:00:00Z`),
    ...(region === undefined ? {} : { region: region as Region }),
  });
  const { figures, warnings } = answerOf(reply);
  expect(reply.topic).toBe('check');
  expect(house.faults).toEqual([]);
  const limits = figures.limits as readonly { what: string; ok: boolean }[];
  return {
    warnings,
    passed: limits.filter(({ ok }) => !ok).map(({ what }) => what),
    verdict: figures.verdict,
  };
};

describe('recipes with a fault', () => {
  it('should be at least sixty, each with its source', () => {
    expect(faults.length).toBeGreaterThanOrEqual(60);
    expect(faults.every(({ source }) => source.length > 5)).toBe(true);
  });

  it.each((faults as readonly Row[]).map((row) => [row.say, row.source, row] as const))(
    'should be found: %s (%s)',
    async (_say, _source, row) => {
      const { warnings, passed } = await look(row);
      const codes = warnings.map(({ code }) => code);
      expect(codes).toEqual(expect.arrayContaining([...(row.codes ?? [])]));
      for (const limit of row.limits ?? [])
        expect(
          passed.some((what) => new RegExp(limit, 'i').test(what)),
          `${limit} in ${passed}`,
        ).toBe(true);
      if (row.text) expect(warnings.map(({ text }) => text).join(' ')).toMatch(new RegExp(row.text, 'i'));
    },
  );
});

describe('recipes without a fault', () => {
  it('should be at least forty', () => {
    expect(clean.length).toBeGreaterThanOrEqual(40);
  });

  it.each((clean as readonly Row[]).map((row) => [`${row.say} ${row.region ?? ''}`, row] as const))(
    'should raise no alarm: %s',
    async (_say, row) => {
      const { warnings, passed, verdict } = await look(row);
      expect(warnings.filter(({ code }) => alarms.has(code))).toEqual([]);
      expect(passed).toEqual([]);
      expect(verdict).toBe('within');
    },
  );
});
