import type { RuleSourceId, RuleStatus } from '../data/rules/sources.ts';

interface Fact<V> {
  readonly value: V;
  readonly source: RuleSourceId;
  readonly how: RuleStatus;
}

const fact = <V>(value: V, source: RuleSourceId, how: RuleStatus): Fact<V> => ({ value, source, how });

/** Figures of the bench: cleaning, heat, burns and skin, each with where it comes from. */
export const hygiene = {
  /** Alcohol that disinfects best, percent by volume: stronger works worse because water helps. */
  alcoholPercent: fact([70, 80], 'ALCOHOL-PAGES', 'read'),
  /** Minutes a surface is kept wet with it. */
  wetMin: fact(3, 'ALCOHOL-PAGES', 'read'),
  /** Temperature in °C at which 70 % alcohol gives off vapour that lights. */
  alcoholFlashC: fact(17, 'GENERAL-M', 'memory'),
  /** Minutes under cool running water after a burn: pages give 10 to 20. */
  coolBurnMin: fact(20, 'FIRST-AID-PAGES', 'read-secondary'),
  /** Jump in °C that can break ordinary glass. */
  glassJumpC: fact(40, 'GLASS-PAGE', 'read-secondary'),
  /** Warm jars before pouring, °C. */
  warmJarsC: fact([35, 50], 'PRACTICE', 'practice'),
  /** Oven in which washed tools dry, °C. */
  dryOvenC: fact([60, 80], 'PRACTICE', 'practice'),
  /** Minutes between looks at the water bath. */
  lookAtBathMin: fact(10, 'PRACTICE', 'practice'),
  /** Minutes a smothered fire stays covered. */
  keepCoveredMin: fact(30, 'GENERAL-M', 'memory'),
  /** Hours a patch test stays on the inner forearm. */
  patchTestHours: fact([24, 48], 'PRACTICE', 'practice'),
  /** Nobody younger is given a scented balm. */
  noScentUnderYears: fact(3, 'GENERAL-M', 'memory'),
} as const;
