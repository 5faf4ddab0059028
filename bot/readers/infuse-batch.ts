import { defined } from '../../core/defined.ts';
import { ingredientById, isFat, isHerb as isHerbRow } from '../../core/ingredients.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { withoutUnits } from './in-ounces.ts';
import { herbOf, isOil, readRatio } from './infuse-amounts.ts';
import { type MixRead, readHerbs } from './infuse-mix.ts';
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
  readonly herbs: MixRead;
  readonly oil?: Item;
  readonly ratio?: number;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
  readonly blocking: readonly Item[];
}

/** A word of infusing, or an oil named by its herb ("calendula infused oil"). */
const isInfusing = (item: Item): boolean =>
  item.letter === 'H' ||
  infuseVerbs.includes(item.word) ||
  item.infusedWith !== undefined ||
  item.ingredients?.[0] === 'infused-oil';

const isAmountLetter = (item: Item | undefined): boolean =>
  item !== undefined && /[gvd%pn]/.test(item.letter);

/** "oil infused with …", "… infused in the olive oil": the oil that stands in the infusion's own clause. */
const clauseOil = (items: readonly Item[], at: number, herb: Item | undefined): Item | undefined => {
  const skipped = /^(?:should|must|shall|is|was|were|be|been|to|gets?|that|which)$/.test(
    items[at - 1]?.word ?? '',
  )
    ? 2
    : 1;
  const before = items[at - skipped];
  if (before?.letter === 'i' && isOil(before) && !isAmountLetter(items[at - skipped - 1])) return before;
  const inside = items.findIndex(
    (item, index) => index > at && item.letter === 'i' && item !== herb && isOil(item),
  );
  const named = items[inside];
  return named && /[IWH]/.test(items[inside - 1]?.letter ?? '') ? named : undefined;
};

interface Clause {
  readonly own: readonly Item[];
  readonly herbs: readonly Item[];
  readonly oil?: Item;
}

const isHerb = (item: Item | undefined): boolean => item?.letter === 'i' && herbOf(item) !== undefined;

/** "Calendula and chamomile": herbs joined to this one, with what joins them. */
const joinedHerbs = (items: readonly Item[], herb: Item): readonly Item[] => {
  const run: Item[] = [herb];
  for (const step of [1, -1] as const) {
    let at = items.indexOf(herb) + step;
    for (; at >= 0 && at < items.length; at += step) {
      const item = items[at];
      if (!item || !(isHerb(item) || /[A,goe]/.test(item.letter) || drying.test(item.word))) break;
    }
    run.push(...items.slice(Math.min(at, items.indexOf(herb)) + 1, Math.max(at, items.indexOf(herb))));
  }
  const first = items.findIndex((item) => run.includes(item) && (isHerb(item) || item.letter === 'g'));
  const last = items.findLastIndex((item) => run.includes(item) && (isHerb(item) || item.letter === 'e'));
  return items.slice(first, last + 1);
};

const drying = /^(?:dried|dry)$/;

const clauseOf = (items: readonly Item[], melt: boolean): Clause | undefined => {
  const verb = items.findIndex(isInfusing);
  const at = verb < 0 && melt ? items.findIndex(isHerb) : verb;
  if (at < 0) return undefined;
  const herbs = items.filter(isHerb);
  const near = herbs.toSorted((a, b) => Math.abs(items.indexOf(a) - at) - Math.abs(items.indexOf(b) - at));
  const named = items[at]?.infusedWith;
  const [nearest] = near;
  const said =
    named === undefined
      ? nearest
        ? joinedHerbs(items, nearest)
        : []
      : [{ ...items[at], ingredients: [named], infusedWith: undefined } as unknown as Item];
  const oil = melt ? undefined : clauseOil(items, at, nearest);
  const own = items.filter(
    (item, place) =>
      isInfusing(item) || said.includes(item) || item === oil || isSaidAgain(items, place, said, named),
  );
  return { own, herbs: said, ...defined({ oil }) };
};

/** "… how much calendula do I weigh?", "what's the herb and oil": what the infusion is of, named once more. */
const isSaidAgain = (
  items: readonly Item[],
  at: number,
  herbs: readonly Item[],
  named: string | undefined,
): boolean => {
  const item = items[at];
  if (item?.letter !== 'i' || isAmountLetter(items[at - 1]) || isAmountLetter(items[at + 1])) return false;
  if (item.generic && isOil(item)) return true;
  const herb = herbOf(item);
  return herb !== undefined && (herb === named || herbs.some((each) => herbOf(each) === herb));
};

/** Words of the infusion around a scaling. */
const batchWords = new Set(
  'scale make making need how much many what do made using dried dry fresh oil herb ratio set aside weigh weigh-out out then whole chain amounts by weight made first some also put pour pouring poured should must be was tell use so whats fill filling straight directly right strain strained straining melted melt molten mass pot into and add stir cloth through them it'.split(
    ' ',
  ),
);

/** Herbs in oils alone are an infusion; a wax or a butter makes a balm of them. */
const isBalm = (lines: readonly RecipeLine[]): boolean =>
  lines.length > 1 &&
  lines.some(({ ingredient }) => {
    const found = ingredientById(ingredient);
    return found !== undefined && !isHerbRow(found) && !(isFat(found) && /^liquid/.test(found.form));
  });

/** Reads "24 tins of 15 ml of R, oil infused 1:8 with calendula"; undefined when there is no batch in it. */
export const readBatch = (reading: Reading, melt: boolean): BatchRead | undefined => {
  const clause = clauseOf(reading.items, melt);
  if (!clause) return undefined;
  const ratio = readRatio(reading.items);
  const own = new Set([...clause.own, ...ratio.items]);
  const rest = reading.items.filter((item) => !own.has(item));
  const last = lastScale(reading);
  const before = last && withoutUnits(last);
  const read = readScale({ ...reading, items: rest });
  const body = read.recipe === undefined ? undefined : { recipe: read.recipe };
  const lines = isBalm(read.lines) ? { lines: read.lines } : undefined;
  const named = body ?? lines;
  if (!named && !before) return undefined;
  const batch: Wish = named ? { ...named, ...said(read) } : { ...before, ...said(read) };
  const trouble = ratio.bad ? undefined : (read.trouble ?? targetTrouble(batch));
  const { blocking } = leftover(boardOf(free(read.board)), batchWords, true);
  return {
    batch,
    assumed: [...read.assumed, ...(ratio.said ? [ratio.said] : [])],
    blocking,
    herbs: readHerbs(reading, clause.herbs),
    ...defined({ oil: clause.oil, ratio: ratio.ratio, trouble }),
  };
};
