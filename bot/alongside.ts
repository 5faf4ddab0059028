import { forgettingIndex } from './book/forgetting.ts';
import type { Alongside } from './book/keeper-book.ts';
import { waitingAlongside } from './remind/index-key.ts';

/** Every index key that goes with a change of a book; `noticed` hears of reminders, see `waitingAlongside`. */
export const everyIndex = (noticed?: Parameters<typeof waitingAlongside>[0]): Alongside => {
  const waiting = waitingAlongside(noticed);
  return (change) => [...waiting(change), ...forgettingIndex(change)];
};
