import { defined } from '../../core/defined.ts';
import type { InfusionWish } from '../../core/workshop/infused-lines.ts';
import { herbOf, isOil, readRatio } from './infuse-amounts.ts';
import { infuseVerbs } from './infuse-words.ts';
import type { Item } from './item.ts';

/** A recipe's oil that is infused for the workshop, with the items that say so. */
export interface InfusionRead {
  readonly infusion?: InfusionWish;
  /** It speaks of an infusion, and which herb is not clear. */
  readonly unclear?: true;
  readonly items: readonly Item[];
}

const none: InfusionRead = { items: [] };

const isInfusing = (item: Item): boolean =>
  item.letter === 'H' || infuseVerbs.includes(item.word) || item.infusedWith !== undefined;

/** Amounts beside the names: a recipe written out, which says itself what is infused. */
const isWritten = (items: readonly Item[]): boolean =>
  items.some(
    (item, at) => /[%p]/.test(item.letter) || (/[gv]/.test(item.letter) && items[at + 1]?.letter === 'i'),
  );

const isHerb = (item: Item): boolean => item.letter === 'i' && herbOf(item) !== undefined;

/** The ingredient of the oil in the same clause; "the oil" alone names none. */
const oilIn = (clause: readonly Item[], herb: Item | undefined): Item | undefined =>
  clause.find((item) => item.letter === 'i' && item !== herb && isOil(item));

const oilId = (oil: Item | undefined): string | undefined => {
  const [only, second] = oil?.generic ? [] : (oil?.ingredients ?? []);
  return second === undefined ? only : undefined;
};

const stops = /^[,;.\n(]$/;

/** From the comma before to the comma after the word of infusing. */
const clauseAround = (items: readonly Item[], at: number): readonly Item[] => {
  const from = items.findLastIndex((item, index) => index < at && stops.test(item.letter)) + 1;
  const end = items.findIndex((item, index) => index > at && stops.test(item.letter));
  return items.slice(from, end < 0 ? items.length : end);
};

const around =
  /^(?:dried|dry|herb|herbs|flowers?|petals?|steeped|first|ahead|beforehand|use|using|ratio|instead|was|were|been)$/;

/** "Hand balm with calendula-infused olive oil 1:8", "the olive oil infused with calendula". */
export const takeInfusion = (items: readonly Item[]): InfusionRead => {
  const at = items.findIndex(isInfusing);
  const verb = items[at];
  if (!verb || isWritten(items)) return none;
  const clause = clauseAround(items, at);
  const herbs = clause.filter(isHerb);
  const herb = herbs[0];
  const ratio = readRatio(items);
  const id = verb.infusedWith ?? (herb && herbOf(herb));
  if (id === undefined || herbs.length > 1 || ratio.bad) return { unclear: true, items: [] };
  const oil = oilIn(clause, herb);
  const own = clause.filter(
    (item) =>
      isInfusing(item) || item === herb || item === oil || around.test(item.word) || item.letter === '-',
  );
  return {
    infusion: { herb: id, ...defined({ oil: oilId(oil), ratio: ratio.ratio }) },
    items: [...own, ...ratio.items],
  };
};
