import { ingredientById } from '../../core/ingredients.ts';
import { checkWords } from './check-words.ts';
import { cueWords } from './cues.ts';
import type { Item } from './item.ts';

/** A name that may be several things: each is judged. */
export interface Unclear {
  readonly said: string;
  readonly ids: readonly string[];
}

const isName = ({ letter }: Item): boolean => letter === 'i';
const isAmount = ({ letter }: Item): boolean => /[gvdp%n]/.test(letter);
const ends = /[,;\nA.]/;

const names = (items: readonly Item[]): number => items.filter(isName).length;

/** "… thyme: beeswax 20 %", "… thyme: 20 g beeswax" head a list; "beeswax: 20 g, oil: 30 g" is one. */
const headsList = (rest: readonly Item[]): boolean => {
  const first = rest.findIndex((item) => isName(item) || isAmount(item));
  const start = rest[first];
  if (!start || isName(start)) return start !== undefined;
  const line = rest.slice(first + 1);
  const end = line.findIndex(({ letter }) => ends.test(letter));
  return line.slice(0, end < 0 ? line.length : end).some(isName);
};

const breaks = /[:\n?.!]/;

/** Whether what stands before a break heads the list after it, and names things that are no lines. */
const isHeading = (items: readonly Item[], end: number): boolean => {
  const [head, rest] = [items.slice(0, end), items.slice(end + 1)];
  const says = items[end]?.letter !== '\n' || head.some(({ letter }) => /[wzB]/.test(letter));
  return says && names(head) > 0 && names(rest) > 1 && !head.some(isAmount) && headsList(rest);
};

/**
 * "Lip balm with yarrow and thyme: beeswax 20 %, …", "My vanilla balm" over a list, "Is the mint too much? 60 g beeswax, …":
 * names in a heading are no lines.
 */
export const withoutHeadings = (items: readonly Item[]): readonly Item[] => {
  const first = items.findIndex(isAmount);
  const before = first < 0 ? items.length : first;
  let end = before - 1;
  while (end > 0 && !(breaks.test(items[end]?.letter ?? '') && isHeading(items, end))) end -= 1;
  return end > 0 ? [...items.slice(0, end).filter((item) => !isName(item)), ...items.slice(end)] : items;
};

/** "Fernlea mint lip balm: 20 g beeswax, …": written out, and so looked at as it is written. */
export const withoutListName = (items: readonly Item[]): readonly Item[] => {
  const end = headingEnd(items);
  return end > 0 ? items.filter(({ letter }, at) => letter !== 'R' || at > end) : items;
};

/** Where the heading of a written-out list ends; -1 where a message is no such thing. */
const headingEnd = (items: readonly Item[]): number => {
  const first = items.findIndex(isAmount);
  const end = items.slice(0, Math.max(0, first)).findLastIndex(({ letter }) => breaks.test(letter));
  return end > 0 && names(items.slice(end)) > 1 && headsList(items.slice(end + 1)) ? end : -1;
};

/** "My mint lip balm: 20 g beeswax, …": a list with a heading. */
export const isHeadedList = (items: readonly Item[]): boolean => headingEnd(items) > 0;

const qualities =
  /^(?:furocoumarins?|bergaptene?|fcf|cold|pressed|expressed|steam|distilled|refined|unrefined|virgin|extra|organic|raw|natural|grated|pellets?|dried|filtered|deodorised|deodorized|anhydrous|local|yellow|white|pure|food|cosmetic|melted|chopped|powdered|ground)$/;

/** "Bergamot oil, furocoumarin-free 0.5 %", "beeswax, grated: 20 g": the comma cuts no line there. */
export const withoutInnerCommas = (items: readonly Item[]): readonly Item[] =>
  items.filter((item, at) => {
    if (item.letter !== ',' || !qualities.test(items[at + 1]?.word ?? '')) return true;
    const rest = items.slice(at + 1);
    const end = rest.findIndex(({ letter }) => ends.test(letter));
    return rest.slice(0, end < 0 ? rest.length : end).some(isName);
  });

const joint = /[-:=o]/;

/** A bare number counts where it stands right beside a name: "beeswax 20", "class of 8" is no line. */
const isSubstance = (items: readonly Item[], at: number): boolean => {
  const item = items[at];
  // "Olive oil to 100".
  if (item?.letter === 'n' && items[at - 1]?.letter === 'T' && items.slice(0, at - 1).some(isName))
    return true;
  if (item?.letter !== 'n') return item !== undefined && (isName(item) || isAmount(item));
  const before = items.slice(0, at).findLast(({ letter }) => !joint.test(letter));
  const after = items.slice(at + 1).find(({ letter }) => !joint.test(letter));
  return [before, after].some((other) => other !== undefined && isName(other));
};

/** Words that ask for something else than a look, or tell how a line is. */
const asks = (word: string): boolean => cueWords.has(word) && !checkWords.has(word) && !talked.has(word);
const talked = new Set(
  `pour class course people makers masterclass workshop workshops vegan euro euros pound pounds dollar dollars pence cents minute
  minutes hour hours day days week weeks month months year years degrees pm am`.split(/\s+/),
);

const isUnknownWord = (item: Item | undefined): boolean =>
  item?.letter === 'w' && !checkWords.has(item.word) && !talked.has(item.word);

/** "Goop 8" is a line of something unknown, and no talk. */
const isLineUnknown = (part: readonly Item[]): boolean =>
  part
    .filter(({ letter }) => !/[-:=]/.test(letter))
    .some(({ letter }, at, near) => letter === 'n' && [near[at - 1], near[at + 1]].some(isUnknownWord));

const withoutTalk = (part: readonly Item[], lines: boolean): readonly Item[] =>
  part.some(({ word }) => asks(word)) || (lines && isLineUnknown(part))
    ? part
    : part.filter(({ letter }) => !/[wzZnt]/.test(letter));

/** "… 1 % annatto for a bit of orange": what a list is for names no line of it. */
const withoutPurpose = (items: readonly Item[]): readonly Item[] => {
  const last = items.findLastIndex(isAmount);
  const at = items.findIndex(({ letter }, place) => letter === 'F' && place > last);
  const said = items.slice(at + 1);
  const isPurpose =
    at > 0 &&
    names(items.slice(last, at)) > 0 &&
    /^[owyZz]*i[Bc]*[.!?]?$/.test(said.map(({ letter }) => letter).join(''));
  return isPurpose ? items.slice(0, at) : items;
};

/** The words before and after a list name nothing and ask for nothing else: "for chapped-weather lip sticks". */
export const withoutTails = (all: readonly Item[]): readonly Item[] => {
  const items = withoutPurpose(all);
  const from = items.findIndex((_, at) => isSubstance(items, at));
  const to = items.findLastIndex((_, at) => isSubstance(items, at)) + 1;
  if (from < 0) return items;
  const list = items.slice(from, to);
  const bare = !list.some(({ letter }) => /[gvdp%]/.test(letter));
  return [...withoutTalk(items.slice(0, from), bare), ...list, ...withoutTalk(items.slice(to), true)];
};

/** Words that make another thing of what they stand beside; a line with one of them is never read without it. */
const changing =
  /^(?:hydrogenated|saponified|emulsi\w+|hydroly[sz]\w+|ozonated|sul(?:ph|f)\w+|aqueous|diluted|whipped|soap|cream|lotion|butterfat|replacement|imitation|synthetic|not?|never|instead|minus|without|except|but|or|clay|dough|flour|sugar|sauce|bread|cake|soup|starch)$/;

/** "Hot water": words of the pot that say how a line was when it was weighed. */
const ofThePot = /^(?:hot|warm|cool|cooled|soft|hard|firm|best|melted)$/;

const isPassable = ({ letter, word }: Item, known: ReadonlySet<string>): boolean =>
  (letter === 'w' && !known.has(word) && !changing.test(word)) || (letter === 'Z' && ofThePot.test(word));

const saysLittle = ({ word }: Item): boolean =>
  qualities.test(word) || /^(?:own|homemade|home-made|herb|herbal|garden|plant|flower)$/.test(word);

/** "Foxglove infused oil": what it is infused with is not known, and is the whole question. */
const isOfUnknownPlant = (line: readonly Item[], known: ReadonlySet<string>): boolean =>
  line.some(
    (item, at) =>
      item.ingredients?.[0] === 'infused-oil' &&
      item.infusedWith === undefined &&
      line.slice(0, at).some((before) => isPassable(before, known) && !saysLittle(before)),
  );

/** Most words beside the names of a list that are passed over. */
const mostPassed = 10;

/** Items without unknown words beside the names of a written-out list ("sparkly beeswax"), and those words. */
export const withoutRemarks = (
  items: readonly Item[],
  known: ReadonlySet<string>,
): { readonly items: readonly Item[]; readonly passed: readonly string[] } => {
  const passed: Item[] = [];
  let line: Item[] = [];
  const close = (): void => {
    if (names(line) === 1 && line.some(isAmount) && !isOfUnknownPlant(line, known))
      passed.push(...line.filter((item) => isPassable(item, known)));
    line = [];
  };
  for (const item of items) {
    if (ends.test(item.letter)) close();
    else line.push(item);
  }
  close();
  if (passed.length === 0 || passed.length > mostPassed) return { items, passed: [] };
  return { items: items.filter((item) => !passed.includes(item)), passed: passed.map(({ word }) => word) };
};

/** "12 tins", "for 6 people": how many it is for changes nothing of what is in it. */
export const withoutCounts = (items: readonly Item[]): readonly Item[] =>
  items.filter((item, at) => !(item.letter === 'n' && items[at + 1]?.letter === 'c'));

const isHerbId = (id: string): boolean => ingredientById(id)?.kind === 'herb';

/** The first meaning, a scent before a herb that is strained out, of each name that stays open, in a list; and what else it may be. */
export const withUnclear = (
  items: readonly Item[],
): { readonly items: readonly Item[]; readonly unclear: readonly Unclear[] } => {
  const unclear: Unclear[] = [];
  const settled = items.map((item) => {
    const ids = (item.ingredients ?? []).toSorted((a, b) => Number(isHerbId(a)) - Number(isHerbId(b)));
    if (item.letter !== 'i' || ids.length < 2 || item.generic) return item;
    unclear.push({ said: item.word, ids });
    const { because: _note, ...plain } = item;
    return { ...plain, ingredients: ids.slice(0, 1) };
  });
  return { items: settled, unclear };
};
