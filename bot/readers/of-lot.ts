import { lotKey } from '../../core/bench/codes.ts';
import type { Reading } from '../reading.ts';
import type { BenchReading } from './bench-reading.ts';

/** "25 g beeswax and 75 g of the olive oil OO1": a line of what was mixed, with the lot it came from. */
const isLine = ({ rest: { items } }: BenchReading, at: number): boolean => {
  const letters = items.map(({ letter }) => letter);
  return (
    !letters.includes('R') && /[gvpdtr%][oA]{0,2}$/.test(letters.slice(Math.max(0, at - 3), at).join(''))
  );
};

/** "With beeswax lot K12": which ingredient a lot is of may be said with it, before it, and is no line of a recipe. */
export const isOfLot = (
  { letter, ingredients = [], to }: BenchReading['rest']['items'][number],
  at: number,
  bench: BenchReading,
  { text, bench: book }: Reading,
): boolean =>
  letter === 'i' &&
  !isLine(bench, at) &&
  bench.lots.some(({ code, kind, from }) => {
    const held = kind === 'lot' ? book.lots.get(lotKey(code)) : undefined;
    return (
      held !== undefined &&
      ingredients.includes(held.ingredient) &&
      from >= to &&
      /^[\s(:]*$/.test(text.slice(to, from))
    );
  });
