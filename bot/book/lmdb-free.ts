import { broken, type LmdbFile } from './lmdb-file.ts';

/** Pages that nothing uses: `count` of them from `page` on. */
export interface Run {
  readonly page: number;
  readonly count: number;
}

/** Pages in one record of the free list: a count, then pages; a negative number makes the next one a run. */
export const freeRuns = (bytes: Buffer): Run[] => {
  const words = Number(bytes.readBigInt64LE(0));
  if (words < 0 || (words + 1) * 8 > bytes.length) broken('its list of free pages is wrong');
  const runs: Run[] = [];
  for (let at = 1; at <= words; at++) {
    const word = Number(bytes.readBigInt64LE(at * 8));
    if (word > 0) runs.push({ page: word, count: 1 });
    if (word < 0 && at < words) {
      at += 1;
      runs.push({ page: Number(bytes.readBigInt64LE(at * 8)), count: -word });
    }
  }
  return runs;
};

/**
 * Checks that no free page is in use, and that pages missing at the end of the file are free. Marks them in
 * `used`.
 */
export const checkFree = (file: LmdbFile, used: Uint8Array, runs: readonly Run[]): void => {
  for (const { page, count } of runs) {
    if (page < 2 || page + count - 1 > file.meta.lastPage) broken('its list of free pages is wrong');
    for (let each = page; each < page + count; each++) {
      if (used[each]) broken('a page is both free and in use');
      used[each] = 1;
    }
  }
  // Pages at the end that are not there must at least be known as free.
  for (let page = file.pages; page <= file.meta.lastPage; page++) {
    if (!used[page]) broken('it has been cut short');
  }
};
