import { describe, expect, it } from 'vitest';
import { Fuzz, type Fuzzed } from '../../helpers/strangers/fuzz.ts';

// Strangers do whatever can be done, at random but from seeds: words, commands, buttons and forms that are real, damaged or
// another group's, files, suggestions; now and then nothing can be written, or the platform refuses. FUZZ_ROUNDS=100000
// makes the long run of it, FUZZ_SEED another one. Every so many rounds it begins anew with other groups.

const rounds = Number(process.env.FUZZ_ROUNDS ?? 1200);
const seed = Number(process.env.FUZZ_SEED ?? 1);
const perRun = 2500;

const runs = Array.from({ length: Math.ceil(rounds / perRun) }, (_, at) => ({
  seed: seed + at,
  rounds: Math.min(perRun, rounds - at * perRun),
}));

/** The lists by their lengths, so that a long run tells how it stands. */
const counted = (found: Fuzzed): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(found).map(([name, value]) => [name, Array.isArray(value) ? value.length : value]),
  );

describe('strangers who try whatever they like', () => {
  it.each(runs)(
    'should break nothing, and be shown nothing that a bot without other groups would not show: seed $seed',
    async (run) => {
      const started = performance.now();
      const found = await Fuzz.run(run);
      const seconds = Math.round((performance.now() - started) / 1000);
      process.stderr.write(`strangers, seed ${run.seed}: ${JSON.stringify(counted(found))}, ${seconds} s\n`);
      const { leaks, differences, amiss, told, faults, problems } = found;
      for (const [what, list] of Object.entries({ leaks, differences, amiss, told, faults, problems }))
        expect({ [what]: list.slice(0, 5) }).toEqual({ [what]: [] });
      // The search has to find, in their own groups, what it looks for in others.
      expect(found.shownAtHome).toBeGreaterThanOrEqual(Math.ceil(found.secrets * 0.9));
      expect(found.compared).toBeGreaterThan(run.rounds / 3);
      expect(found.logLines).toBeGreaterThan(0);
    },
    3_600_000,
  );
});
