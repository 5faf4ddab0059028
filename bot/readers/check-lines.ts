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

/** "Lip balm with yarrow and thyme: beeswax 20 %, …", "My vanilla balm" over a list: names in a heading are no lines. */
export const withoutHeadings = (items: readonly Item[]): readonly Item[] => {
  const end = items.findIndex(({ letter }) => letter === ':' || letter === '\n');
  const [head, rest] = [items.slice(0, Math.max(0, end)), items.slice(end + 1)];
  const says = items[end]?.letter === ':' || head.some(({ letter }) => /[wzB]/.test(letter));
  const heads = says && names(head) > 0 && names(rest) > 1 && !head.some(isAmount) && headsList(rest);
  return heads ? [...head.filter((item) => !isName(item)), ...items.slice(end)] : items;
};

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
  if (item?.letter !== 'n') return item !== undefined && (isName(item) || isAmount(item));
  const before = items.slice(0, at).findLast(({ letter }) => !joint.test(letter));
  const after = items.slice(at + 1).find(({ letter }) => !joint.test(letter));
  return [before, after].some((other) => other !== undefined && isName(other));
};

/** Words that ask for something else than a look, or tell how a line is. */
const asks = (word: string): boolean => cueWords.has(word) && !checkWords.has(word) && !talked.has(word);
const talked = new Set('pour class course people makers masterclass'.split(' '));

const withoutTalk = (part: readonly Item[]): readonly Item[] =>
  part.some(({ word }) => asks(word)) ? part : part.filter(({ letter }) => !/[wzZn]/.test(letter));

/** The words before and after a list name nothing and ask for nothing else: "for chapped-weather lip sticks". */
export const withoutTails = (items: readonly Item[]): readonly Item[] => {
  const from = items.findIndex((_, at) => isSubstance(items, at));
  const to = items.findLastIndex((_, at) => isSubstance(items, at)) + 1;
  if (from < 0) return items;
  return [...withoutTalk(items.slice(0, from)), ...items.slice(from, to), ...withoutTalk(items.slice(to))];
};

/** Words that make another thing of what they stand beside; a line with one of them is never read without it. */
const changing =
  /^(?:hydrogenated|saponified|emulsi\w+|hydroly[sz]\w+|ozonated|sul(?:ph|f)\w+|aqueous|diluted|whipped|soap|cream|lotion|butterfat|replacement|imitation|synthetic|not?|never|instead|minus|without|except|but|or)$/;

const isPassable = ({ letter, word }: Item, known: ReadonlySet<string>): boolean =>
  letter === 'w' && !known.has(word) && !changing.test(word);

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
    if (names(line) === 1 && line.some(isAmount))
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
