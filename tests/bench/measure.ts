// Times are milliseconds throughout; only the report turns them into what reads best.

/** Times of single runs. */
export type Times = readonly number[];

/** The value that `share` of the times stay at or below. */
export const quantile = (times: Times, share: number): number => {
  const sorted = times.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
};

export const median = (times: Times): number => quantile(times, 0.5);

/** Runs `work` `count` times, one after the other, and gives each its time. */
export const timed = async (count: number, work: (at: number) => unknown): Promise<number[]> => {
  const times: number[] = [];
  for (let at = 0; at < count; at++) {
    const start = performance.now();
    await work(at);
    times.push(performance.now() - start);
  }
  return times;
};

/**
 * CPU time of one run: user and system time of all the process's threads (collector and compiler too), as the median
 * over `batches` batches of `size` runs. Unlike the clock it does not count waiting for a core.
 */
export const cpuTimes = async (
  { batches, size }: { readonly batches: number; readonly size: number },
  work: (at: number) => unknown,
): Promise<number[]> => {
  const times: number[] = [];
  for (let batch = 0; batch < batches; batch++) {
    const start = process.cpuUsage();
    for (let at = 0; at < size; at++) await work(batch * size + at);
    const { user, system } = process.cpuUsage(start);
    times.push((user + system) / 1000 / size);
  }
  return times;
};

/** Runs two kinds of work in turn, block by block, so that whatever else the machine does meets both alike. */
export const alternating = async (
  blocks: number,
  first: (block: number) => Promise<Times>,
  second: (block: number) => Promise<Times>,
): Promise<{ readonly first: Times; readonly second: Times }> => {
  const of = { first: [] as number[], second: [] as number[] };
  for (let block = 0; block < blocks; block++) {
    of.first.push(...(await first(block)));
    of.second.push(...(await second(block)));
  }
  return of;
};
