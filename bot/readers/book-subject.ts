import { latestBatches } from '../../core/bench/latest.ts';
import type { Reading } from '../reading.ts';
import { lotsIn } from './lots.ts';

/** What a question about the past is about, and the words that say so. */
export interface Subject {
  readonly about: { readonly recipe?: string; readonly lot?: string; readonly reaction?: string };
  readonly said: string;
}

const lastPoured = /\b(?:last|latest|newest) (?:batch|pour)\b/i;

/** "Who bought the olive oil": the only lot of it. */
const onlyLotNamed = (reading: Reading): Subject | undefined => {
  if (reading.bench.lots.size === 0 || !/\b(?:who|when)\b/i.test(reading.text)) return undefined;
  const [item, second] = reading.items.filter(({ letter }) => letter === 'i');
  const [id, ...more] = item?.ingredients ?? [];
  if (!item || second || item.generic || id === undefined || more.length > 0) return undefined;
  const [lot, another] = [...reading.bench.lots.values()].filter(({ ingredient }) => ingredient === id);
  return lot && !another
    ? { about: { lot: lot.lot }, said: reading.text.slice(item.from, item.to) }
    : undefined;
};

/** A saved recipe, a lot or batch, or a reaction that the message names. */
export const subjectIn = (reading: Reading, text: string): Subject | undefined => {
  const lot = lotsIn(reading)[0];
  if (lot) return { about: { lot: lot.code }, said: reading.text.slice(lot.from, lot.to) };
  const latest = lastPoured.exec(text)?.[0];
  const [last] = latest === undefined ? [] : latestBatches(reading.bench);
  if (last && latest !== undefined) return { about: { lot: last.lot }, said: latest };
  const recipe = reading.items.find((item) => item.recipe !== undefined);
  if (recipe?.recipe !== undefined)
    return { about: { recipe: recipe.recipe }, said: reading.text.slice(recipe.from, recipe.to) };
  const of = onlyLotNamed(reading);
  if (of) return of;
  const [said] = /\bR ?\d{1,6}\b/.exec(text) ?? [];
  return said === undefined ? undefined : { about: { reaction: said.replace(/\s/g, '') }, said };
};
