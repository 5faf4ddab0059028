import { lightShares } from '../../core/check/other-findings.ts';
import { ingredientById } from '../../core/ingredients.ts';
import { gramsIn, isMassUnit } from '../../core/units.ts';
import type { Unclear } from './check-lines.ts';
import type { Item } from './item.ts';

/** Names with several meanings settled for a look at a balm, and what was assumed for it. */
export interface Settled {
  readonly items: readonly Item[];
  readonly assumed: readonly string[];
  /** Plants that oils of the list are steeped with. */
  readonly infused?: readonly string[];
  /** Names that stay open, of which each meaning is judged. */
  readonly unclear?: readonly Unclear[];
}

const isFresh = (item: Item, text: string): boolean =>
  /\bfresh/i.test(item.word) || /\bfresh(?:ly)?\s+(?:\w+\s+)?$/i.test(text.slice(0, item.from));

const kindOf = (id: string): string | undefined => ingredientById(id)?.kind;

/** Fresh mint is wet whichever mint it is: the first herb it can be stands for it. */
const freshHerb = (item: Item, text: string): string | undefined =>
  isFresh(item, text) ? item.ingredients?.find((id) => kindOf(id) === 'herb') : undefined;

const plantWords =
  /\b(?:dried|dry|strained|infus\w*|steep\w*|leaf|leaves|flowers?|petals?|herbs?|tea|powder(?:ed)?|ground|grated|crushed|chopped|roots?|bark|sticks?|seeds?|sprigs?|stems?)\b/i;
/** A share of a balm over this is no scent: percent. */
const mostScent = 5;

const separator = /[,;\nA]/;

/** Where the line of a list begins and ends that an item stands in. */
const lineAround = (items: readonly Item[], at: number): readonly [number, number] => {
  let [from, to] = [at, at + 1];
  while (from > 0 && !separator.test(items[from - 1]?.letter ?? '\n')) from -= 1;
  while (to < items.length && !separator.test(items[to]?.letter ?? '\n')) to += 1;
  return [from, to];
};

const textOfLine = (items: readonly Item[], at: number, text: string): string => {
  const [from, to] = lineAround(items, at);
  return text.slice(items[from]?.from ?? 0, items[to - 1]?.to ?? text.length);
};

const isWeight = ({ letter }: Item): boolean => /[g%p]/.test(letter);
const weightIn = ({ value = 0, unit = 'g', letter }: Item): number =>
  letter === 'g' && isMassUnit(unit) ? value * gramsIn(unit) : value;

/** The share of the whole that a line of a list has, percent; undefined where amounts are of more than one kind. */
const shareOfLine = (items: readonly Item[], at: number): number | undefined => {
  const [from, to] = lineAround(items, at);
  const own = items.slice(from, to).filter(isWeight);
  const all = items.filter(isWeight);
  const [only] = own;
  if (!only || own.length > 1 || all.some(({ letter }) => letter !== only.letter)) return undefined;
  if (only.letter === '%') return only.value;
  const total = all.reduce((sum, item) => sum + weightIn(item), 0);
  return all.length > 1 && total > 0 ? (100 * weightIn(only)) / total : undefined;
};

/** A share that a scent may have, right before or after the name, or reckoned from the other lines. */
const isScentShare = (items: readonly Item[], at: number): boolean => {
  const share = shareOfLine(items, at);
  if (share !== undefined) return share > 0 && share <= mostScent;
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
  const line = textOfLine(items, at, text);
  const drops = /\bdrops?\b/i.test(line);
  return herb && oils.length === 1 && !plantWords.test(line) && (drops || isScentShare(items, at))
    ? oils[0]
    : undefined;
};

/** "12 g lavender" in 100 g: nobody puts so much of the oil into a balm. */
const herbByShare = (items: readonly Item[], at: number): string | undefined => {
  const herbs = (items[at]?.ingredients ?? []).filter((id) => kindOf(id) === 'herb');
  return herbs.length === 1 && (shareOfLine(items, at) ?? 0) > mostScent ? herbs[0] : undefined;
};

/** "Ground melissa", "powdered rose": said of the herb, and never of its oil. */
const herbByForm = (items: readonly Item[], at: number, text: string): string | undefined => {
  const line = textOfLine(items, at, text);
  const herbs = (items[at]?.ingredients ?? []).filter((id) => kindOf(id) === 'herb');
  return herbs.length === 1 && plantWords.test(line) && !/\boils?\b/i.test(line) ? herbs[0] : undefined;
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
const distilled = /\b(?:distilled|steam|fcf|furocoumarins?|bergaptene?)\b/i;

/** "Bergamot oil cold-pressed": said beside the name, so that nothing has to be assumed. */
const saidBeside = (item: Item, text: string): string | undefined => {
  const ids = item.ingredients ?? [];
  // "Bergamot oil, furocoumarin-free": the comma cuts nothing there.
  const near = text.slice(Math.max(0, item.from - 14), item.to + 24);
  const beside = near
    .replace(/,(?=\s*(?:furo|berga|fcf|cold|expressed|distilled|steam))/i, ' ')
    .split(/[,;\n]/);
  const own = beside.find((piece) => piece.toLowerCase().includes(item.word.split(' ')[0] ?? '')) ?? '';
  if (pressed.test(own)) return ids.find(sensitises);
  return distilled.test(own) ? ids.find((id) => !sensitises(id)) : undefined;
};

/** Names with what was said beside them settled: "lemon oil, distilled" is no question. */
export const saidBesides = (items: readonly Item[], text: string): readonly Item[] =>
  items.map((item) => {
    const id = item.letter === 'i' && stricter(item) !== undefined ? saidBeside(item, text) : undefined;
    if (id === undefined) return item;
    const { because: _because, generic: _generic, ...plain } = item;
    return { ...plain, ingredients: [id] };
  });

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
  const only = oilByShare(items, at, text) ?? herbByShare(items, at) ?? herbByForm(items, at, text);
  return only === undefined ? undefined : { id: only, assumed: `I took "${item.word}" as ${nameOf(only)}.` };
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
