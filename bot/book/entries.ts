import type { BookEntry, BookEvent } from '../../core/book.ts';
import type { By } from './keeper.ts';

const longestName = 100;

/** The entries that events become after entry `seq`: those of one request know the first of them. */
export const entriesAfter = (
  seq: number,
  group: string,
  events: readonly BookEvent[],
  by: By,
): readonly BookEntry[] => {
  const at = new Date(by.at).toISOString();
  const name = by.name?.trim().slice(0, longestName);
  const about = { v: 1 as const, group, at, who: by.who, ...(name ? { name } : {}) };
  return events.map((event, index) => ({
    ...about,
    seq: seq + 1 + index,
    ...(index > 0 ? { first: seq + 1 } : {}),
    event,
  }));
};
