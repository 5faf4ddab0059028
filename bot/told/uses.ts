import { type Use, usesIn } from '../gathered/use.ts';
import { batch } from './uses/batch.ts';
import { stock } from './uses/stock.ts';

/** What is told with the things in a message, in the order in which it is tried. */
export const toldLists: readonly string[] = [batch, stock];

let read: readonly Use[] | undefined;

/** The uses of all lists, read when the first message wants them. */
export const toldUses = (): readonly Use[] => {
  read ??= toldLists.flatMap((list) => usesIn(`~\n\n${list}`));
  return read;
};
