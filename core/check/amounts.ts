import { type Analysis, sharesOf } from './composition.ts';

/** A line of what is in the tin, percent by weight of the whole. */
export interface CheckLine {
  readonly ingredient: string;
  readonly percent: number;
  readonly infusedWith?: string;
  readonly fresh?: boolean;
}

/** How much of a substance the balm holds, percent of the balm, summed over everything that brings it. */
export interface Amount {
  readonly name: string;
  /** By the high end of each range; this is what limits are compared with. */
  readonly percent: number;
  readonly lowPercent: number;
  /** False when any of it rests on figures from memory. */
  readonly certain: boolean;
  readonly from: readonly string[];
}

/** Percent without floating-point noise: 0.285 + 0.004 is 0.289. */
export const tidy = (percent: number): number => Number(percent.toFixed(9));

/** Sums every known substance over all lines. */
export const amountsOf = (lines: readonly CheckLine[], analyses: readonly Analysis[]): readonly Amount[] => {
  const byName = new Map<string, Amount>();
  for (const line of lines) {
    for (const share of sharesOf(line.ingredient, analyses)) {
      const before = byName.get(share.name);
      byName.set(share.name, {
        name: share.name,
        percent: tidy((before?.percent ?? 0) + (line.percent * share.high) / 100),
        lowPercent: tidy((before?.lowPercent ?? 0) + (line.percent * share.low) / 100),
        certain: (before?.certain ?? true) && share.certain,
        from: [...new Set([...(before?.from ?? []), line.ingredient])],
      });
    }
  }
  return [...byName.values()].toSorted((a, b) => b.percent - a.percent || a.name.localeCompare(b.name));
};
