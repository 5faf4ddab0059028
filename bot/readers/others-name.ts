import { nameKey } from '../../core/names.ts';
import type { Reading } from '../reading.ts';
import type { Item } from './item.ts';
import { letters } from './lexicon.ts';

/**
 * "The Sea Mist balm": what is no word of a recipe's name but near one, behind a word that is in none, is another's name.
 * @param first the first item of what was said.
 * @param name the saved recipe that is near.
 */
export const isOthersName = (
  reading: Reading,
  first: Item | undefined,
  said: string,
  name: string,
): boolean => {
  const last = reading.items[reading.items.findIndex(({ from }) => from === first?.from) - 1];
  if (!first || last?.letter !== letters.unknown || first.from - last.to !== 1) return false;
  const words = nameKey(name).split(' ');
  const isExact = nameKey(said)
    .split(' ')
    .every((word) => words.includes(word));
  return !isExact && [last, first].every(({ from }) => /[A-Z]/.test(reading.text.charAt(from)));
};
