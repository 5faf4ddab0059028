import { ingredientById } from '../../core/ingredients.ts';
import { oncePerReading, type Reading } from '../reading.ts';
import { type Place, readAgain } from '../understand.ts';
import { lotsIn } from './lots.ts';

export interface HeldNames {
  readonly reading: Reading;
  readonly assumed: readonly string[];
}

const plainName = (id: string): string => (ingredientById(id)?.name ?? id).replace(/ \([^)]*\)$/, '');

/** "30 g of soy": of the things a name can mean, the only one that the shelf ever had. */
export const withHeldNames = oncePerReading((reading: Reading): HeldNames => {
  const { text, items, bench } = reading;
  if (bench.lots.size === 0) return { reading, assumed: [] };
  const isInCode = ({ from, to }: Place): boolean =>
    lotsIn(reading).some((code) => code.from < to && code.to > from);
  const open = items.filter(
    (item) => item.letter === 'i' && !item.generic && (item.ingredients?.length ?? 0) > 1 && !isInCode(item),
  );
  if (open.length === 0) return { reading, assumed: [] };
  const shelf = new Set([...bench.lots.values()].map(({ ingredient }) => ingredient));
  let plain = text;
  const assumed: string[] = [];
  for (const { from, to, ingredients = [] } of open.toReversed()) {
    const [only, other] = ingredients.filter((id) => shelf.has(id));
    if (only === undefined || other !== undefined) continue;
    plain = plain.slice(0, from) + plainName(only) + plain.slice(to);
    assumed.push(`I took "${text.slice(from, to)}" as ${plainName(only)}, which is on the shelf.`);
  }
  return assumed.length === 0 ? { reading, assumed } : { reading: readAgain(plain, reading), assumed };
});
