import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { herbOf, isOil, readRatio } from './infuse-amounts.ts';
import { infuseVerbs } from './infuse-words.ts';
import type { Item } from './item.ts';
import { leftover } from './leftover.ts';
import { readScale } from './scale-reading.ts';
import { targetTrouble } from './scale-troubles.ts';
import { lastScale, said, type Wish } from './scale-wish.ts';
import { boardOf, free } from './target.ts';

/** A batch made with infused oil, as far as the message says it. */
export interface BatchRead {
  readonly batch: Wish;
  readonly herb?: Item;
  readonly oil?: Item;
  readonly ratio?: number;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
  readonly blocking: readonly Item[];
}

/** A word of infusing, or an oil named by its herb ("calendula infused oil"). */
const isInfusing = (item: Item): boolean =>
  item.letter === 'H' || infuseVerbs.includes(item.word) || item.infusedWith !== undefined;

const isAmountLetter = (item: Item | undefined): boolean =>
  item !== undefined && /[gvd%pn]/.test(item.letter);

/** "oil infused with …", "… infused in the olive oil": the oil that stands in the infusion's own clause. */
const clauseOil = (items: readonly Item[], at: number, herb: Item | undefined): Item | undefined => {
  const before = items[at - 1];
  if (before?.letter === 'i' && isOil(before) && !isAmountLetter(items[at - 2])) return before;
  const inside = items.findIndex(
    (item, index) => index > at && item.letter === 'i' && item !== herb && isOil(item),
  );
  const named = items[inside];
  return named && /[IW]/.test(items[inside - 1]?.letter ?? '') ? named : undefined;
};

interface Clause {
  readonly own: readonly Item[];
  readonly herb?: Item;
  readonly oil?: Item;
}

const clauseOf = (items: readonly Item[]): Clause | undefined => {
  const at = items.findIndex(isInfusing);
  if (at < 0) return undefined;
  const herbs = items.filter((item) => item.letter === 'i' && herbOf(item) !== undefined);
  const near = herbs.toSorted((a, b) => Math.abs(items.indexOf(a) - at) - Math.abs(items.indexOf(b) - at));
  const named = items[at]?.infusedWith;
  const herb = named === undefined ? near[0] : ({ ...items[at], ingredients: [named] } as Item);
  const oil = clauseOil(items, at, herb);
  const own = items.filter((item) => isInfusing(item) || item === herb || item === oil);
  return { own, ...defined({ herb, oil }) };
};

/** Words of the infusion around a scaling. */
const batchWords = new Set(
  'scale make making need how much many what do made using dried dry fresh oil herb ratio set aside weigh weigh-out out then whole chain amounts by weight made first some also'.split(
    ' ',
  ),
);

/** Reads "24 tins of 15 ml of R, oil infused 1:8 with calendula"; undefined when there is no batch in it. */
export const readBatch = (reading: Reading): BatchRead | undefined => {
  const clause = clauseOf(reading.items);
  if (!clause) return undefined;
  const ratio = readRatio(reading.items);
  const own = new Set([...clause.own, ...ratio.items]);
  const rest = reading.items.filter((item) => !own.has(item));
  const before = lastScale(reading);
  const read = readScale({ ...reading, items: rest });
  const body = read.recipe === undefined ? undefined : { recipe: read.recipe };
  const lines = read.lines.length > 1 ? { lines: read.lines } : undefined;
  const named = body ?? lines;
  if (!named && !before) return undefined;
  const batch: Wish = named ? { ...named, ...said(read) } : { ...before, ...said(read) };
  const trouble = ratio.bad ? undefined : (read.trouble ?? targetTrouble(batch));
  const { blocking } = leftover(boardOf(free(read.board)), batchWords, true);
  return {
    batch,
    assumed: [...read.assumed, ...(ratio.said ? [ratio.said] : [])],
    blocking,
    ...defined({ herb: clause.herb, oil: clause.oil, ratio: ratio.ratio, trouble }),
  };
};
