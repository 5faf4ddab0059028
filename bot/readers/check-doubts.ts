import { lightShares } from '../../core/check/other-findings.ts';
import { ingredientById } from '../../core/ingredients.ts';
import type { Item } from './item.ts';

/** Names with several meanings settled for a look at a balm, and what was assumed for it. */
export interface Settled {
  readonly items: readonly Item[];
  readonly assumed: readonly string[];
}

const isFresh = (item: Item, text: string): boolean =>
  /\bfresh/i.test(item.word) || /\bfresh(?:ly)?\s+(?:\w+\s+)?$/i.test(text.slice(0, item.from));

const kindOf = (id: string): string | undefined => ingredientById(id)?.kind;

/** Fresh mint is wet whichever mint it is: the first herb it can be stands for it. */
const freshHerb = (item: Item, text: string): string | undefined =>
  isFresh(item, text) ? item.ingredients?.find((id) => kindOf(id) === 'herb') : undefined;

const plantWords = /\b(?:dried|dry|strained|infus\w*|steep\w*|leaf|leaves|flowers?|petals?|herbs?|tea)\b/i;
/** A share of a balm over this is no scent: percent. */
const mostScent = 5;

/** A share that a scent may have, right before or after the name. */
const isScentShare = (items: readonly Item[], at: number): boolean => {
  const near = [...items.slice(Math.max(0, at - 2), at), ...items.slice(at + 1, at + 3)];
  return near.some(
    ({ letter, value = 0, unit }) =>
      letter === 'd' || unit === 'drop' || (letter === '%' && value > 0 && value <= mostScent),
  );
};

/** "0.5 % peppermint", "drops of lavender": in a balm only the oil is counted so. */
const oilByShare = (items: readonly Item[], at: number, text: string): string | undefined => {
  const ids = items[at]?.ingredients ?? [];
  const oils = ids.filter((id) => kindOf(id) === 'essential-oil');
  const herb = ids.some((id) => kindOf(id) === 'herb');
  const drops = /\bdrops?\b/i.test(text);
  return herb && oils.length === 1 && !plantWords.test(text) && (drops || isScentShare(items, at))
    ? oils[0]
    : undefined;
};

const sensitises = (id: string): boolean => lightShares([{ ingredient: id, percent: 1 }]).length > 0;

/** "Lemon oil" may be cold-pressed or distilled: the pressed one is looked at, because it is the stricter. */
const stricter = (item: Item): string | undefined => {
  const ids = item.ingredients ?? [];
  if (ids.length < 2 || !ids.every((id) => kindOf(id) === 'essential-oil')) return undefined;
  const [only, second] = ids.filter(sensitises);
  return second === undefined ? only : undefined;
};

const pressed = /\b(?:cold|expressed|pressed)\b/i;
const distilled = /\b(?:distilled|steam|fcf|furocoumarin|bergapten)\b/i;

/** "Bergamot oil cold-pressed": said beside the name, so that nothing has to be assumed. */
const saidBeside = (item: Item, text: string): string | undefined => {
  const ids = item.ingredients ?? [];
  const beside = text.slice(Math.max(0, item.from - 14), item.to + 24).split(/[,;\n]/);
  const own = beside.find((piece) => piece.toLowerCase().includes(item.word.split(' ')[0] ?? '')) ?? '';
  if (pressed.test(own)) return ids.find(sensitises);
  return distilled.test(own) ? ids.find((id) => !sensitises(id)) : undefined;
};

const nameOf = (id: string): string => ingredientById(id)?.name ?? id;

interface Choice {
  readonly id: string;
  readonly assumed?: string;
}

const scentChoice = (items: readonly Item[], at: number, text: string): Choice | undefined => {
  const item = items[at];
  if (item?.ingredients === undefined || item.ingredients.length < 2) return undefined;
  const strict = stricter(item);
  const said = strict && saidBeside(item, text);
  if (said) return { id: said };
  if (strict)
    return {
      id: strict,
      assumed: `I took "${item.word}" as ${nameOf(strict)}, the stricter reading: ${item.because ?? ''}.`,
    };
  const oil = oilByShare(items, at, text);
  return oil === undefined ? undefined : { id: oil, assumed: `I took "${item.word}" as ${nameOf(oil)}.` };
};

const choiceFor = (items: readonly Item[], at: number, text: string): Choice | undefined => {
  const item = items[at];
  if (item?.letter !== 'i') return undefined;
  const [only, ...more] = item.ingredients ?? [];
  // One meaning with a note about it is taken as that: the note is told with the answer.
  if (only !== undefined && more.length === 0) return item.because === undefined ? undefined : { id: only };
  const fresh = freshHerb(item, text);
  return fresh === undefined ? scentChoice(items, at, text) : { id: fresh };
};

/**
 * Settles names where the look at a balm leaves one reading: a share or drops mean the oil, fresh means the herb, and of two
 * oils that differ in light the stricter is taken and said so. Everything else stays open and is asked back about.
 */
export const settleDoubts = (items: readonly Item[], text: string): Settled => {
  const assumed: string[] = [];
  const settled = items.map((item, at) => {
    const choice = choiceFor(items, at, text);
    if (!choice) return item;
    if (choice.assumed) assumed.push(choice.assumed);
    const { because: _note, generic: _generic, ...plain } = item;
    return { ...plain, ingredients: [choice.id] };
  });
  return { items: settled, assumed };
};
