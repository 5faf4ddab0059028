import { groupName, watchedThing } from '../../core/check/composition.ts';
import { isScent } from '../../core/check/other-findings.ts';
import { allergenRows } from '../../core/data/rules/allergens.ts';
import { groupedNames } from '../../core/data/rules/constituents.ts';
import { limitedSubstance } from '../../core/data/rules/links.ts';
import { watchedThings } from '../../core/data/rules/watched.ts';
import { ingredientById } from '../../core/ingredients.ts';
import type { Region } from '../../core/settings.ts';
import { withPlants, withWetThings } from './check-plants.ts';
import type { Item } from './item.ts';
import { regionBesides, regionSaid } from './region-said.ts';
import type { Board } from './target.ts';

/** Takes every item that touches a stretch of the text off the board. */
export const cover = (board: Board, from: number, to: number): void => {
  for (const [index, item] of board.items.entries())
    if (item.from < to && item.to > from) board.taken[index] = true;
};

const escaped = (name: string): string => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Longest first, so that "rose water" is not read as water. */
const anyOf = (names: readonly string[]): string =>
  [...new Set(names)]
    .toSorted((a, b) => b.length - a.length)
    .map(escaped)
    .join('|');

const variants = (name: string): readonly string[] => {
  if (name.endsWith(' oil')) return [name, name.replace(/ oil$/, ' essential oil')];
  return name.endsWith('rry') ? [name, name.replace(/y$/, 'ies')] : [name];
};

const idByName = new Map(
  watchedThings.flatMap(({ id, names }) => names.flatMap(variants).map((name) => [name, id] as const)),
);

/** "water bath", "water-free" and "milk chocolate" name no water or milk, cucumber seed oil no cucumber. */
const watchedPattern = new RegExp(
  `(?<![\\w-])(?<!(?:dried|dry|powdered) )(${anyOf([...idByName.keys()])})(?:s|es)?(?![\\w]|[- ](?:bath|free|based|proof|resistant|less|chocolate|content|(?:seed |kernel |stone |leaf )?(?:oil|butter|wax|flavou?r\\w*|powder)|leaf|leaves))`,
  'g',
);

/** An ingredient of the library whose name is longer keeps it: star anise is no anise. */
const isInsideName = (items: readonly Item[], from: number, to: number): boolean =>
  items.some(
    (item) =>
      /[iR]/.test(item.letter) &&
      item.from <= from &&
      item.to >= to &&
      (item.to - item.from > to - from || item.plant === true),
  );

const replaced = (items: readonly Item[], from: number, to: number, id: string): readonly Item[] => {
  const inside = items.filter((item) => item.from < to && item.to > from);
  const before = items.filter((item) => item.from < from && !inside.includes(item));
  const after = items.filter((item) => item.from >= from && !inside.includes(item));
  const named: Item = { letter: 'i', word: watchedThing(id)?.name ?? id, from, to, ingredients: [id] };
  return [...before, named, ...after];
};

/** Things the rules speak of that are no ingredients of the library, read as named lines. */
export const withWatched = (items: readonly Item[], text: string): readonly Item[] => {
  let list = withPlants(items, text);
  for (const match of text.toLowerCase().matchAll(watchedPattern)) {
    const id = idByName.get(match[1] ?? '');
    const to = match.index + match[0].length;
    if (id && !isInsideName(list, match.index, to)) list = replaced(list, match.index, to, id);
  }
  return withWetThings(joinedWet(list));
};

const isWater = ({ letter, ingredients }: Item): boolean =>
  letter === 'i' && ingredients?.length === 1 && watchedThing(ingredients[0] ?? '')?.kind === 'water';

/** "Cranberry juice", "cucumber hydrosol": two names of wet things side by side are one. */
const joinedWet = (items: readonly Item[]): readonly Item[] =>
  items.flatMap((item, at) => {
    const [before, next] = [items[at - 1], items[at + 1]];
    if (next && isWater(item) && isWater(next)) return [];
    return before && isWater(before) && isWater(item) ? [{ ...item, from: before.from }] : [item];
  });

const substances = [
  ...allergenRows.filter(({ kind }) => kind === 'allergen').map(({ name }) => name.toLowerCase()),
  ...Object.keys(groupedNames),
  ...Object.values(limitedSubstance).map((name) => name.toLowerCase()),
];
const substance = `(?:${anyOf(substances)})`;
const share = `\\d+(?:[.,]\\d+)?\\s*%`;
const one = `(?:${share}\\s*(?:of\\s+)?${substance}|${substance}\\s*(?:of\\s+|at\\s+|is\\s+|:\\s*)?${share})`;
const analysisPattern = new RegExp(
  `(?:\\bwith|\\bcontaining|\\bcontains|\\bhas|\\bholds|\\()\\s*(?:about\\s+)?${one}(?:\\s*(?:,|and|\\+|&)\\s*${one})*\\s*\\)?`,
  'gi',
);
const eachShare = new RegExp(one, 'gi');
const numberOf = (said: string): number =>
  Number((/\d+(?:[.,]\d+)?(?=\s*%)/.exec(said)?.[0] ?? '0').replace(',', '.'));
const substanceOf = (said: string): string => new RegExp(substance, 'i').exec(said)?.[0] ?? '';

export interface Analysed {
  readonly ingredient: string;
  readonly name: string;
  readonly percent: number;
}

/** "sweet orange oil with 95 % limonene": the supplier's figures, for the scent named before them. */
export const takeAnalyses = (board: Board, text: string): readonly Analysed[] => {
  const found: Analysed[] = [];
  for (const match of text.matchAll(analysisPattern)) {
    const before = board.items.filter(
      ({ letter, to, ingredients }) =>
        letter === 'i' && to <= match.index && ingredients?.length === 1 && isScent(ingredients[0] ?? ''),
    );
    const named = before.at(-1);
    const ingredient = named?.ingredients?.[0];
    if (!named || !ingredient) continue;
    // "My lavender oil has 38 % linalool, check …": named once for its analysis, and once more in the recipe.
    const again = board.items.some((item) => item !== named && item.ingredients?.[0] === ingredient);
    if (again) cover(board, named.from, named.to);
    for (const [said] of match[0].matchAll(eachShare))
      found.push({ ingredient, name: groupName(substanceOf(said)), percent: numberOf(said) });
    cover(board, match.index, match.index + match[0].length);
  }
  return found;
};

/** Takes what a pattern finds off the board and gives the match. */
export const takePattern = (board: Board, text: string, pattern: RegExp): RegExpExecArray | undefined => {
  const match = pattern.exec(text.toLowerCase());
  if (match) cover(board, match.index, match.index + match[0].length);
  return match ?? undefined;
};

/** "in the US", "region uk", "for Canada": whose rules are asked about, and where it says so. */
export const takeRegion = (board: Board, text: string): Region | undefined => {
  const said = regionSaid(text) ?? regionBesides(text);
  if (said) cover(board, said.from, said.to);
  return said?.region;
};

/** "made 2027-01-02": the day of first supply, which decides what law counts. */
export const takeDay = (board: Board, text: string): string | undefined =>
  takePattern(
    board,
    text,
    /\b(?:(?:first\s+)?(?:made|sold|supplied|placed|given out|poured|dated|on|from)\s+)*(20\d\d-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01]))\b/,
  )?.[1];

/** Names that may be a restricted plant; with its Latin name beside it, it is clear. */
const doubtfulPattern = /\b(?:(marigold|tagetes|bay)\b|(verbena)\b(?!\s+(?:absolute|(?:essential\s+)?oil)))/;
const settled = /calendula|pot marigold|officinalis|citriodora|laurus|bay laurel|sweet bay/;

export const doubtfulNames = (text: string): readonly string[] => {
  const plain = text.toLowerCase();
  const found = doubtfulPattern.exec(plain);
  const said = found?.[1] ?? found?.[2];
  return said && !settled.test(plain) ? [said] : [];
};

const isFresh = (item: Item, text: string): boolean =>
  /\bfresh/i.test(item.word) || /\bfresh(?:ly)?\s+(?:\w+\s+)?$/i.test(text.slice(0, item.from));

/** Herbs a message calls fresh. */
export const freshHerbs = (items: readonly Item[], text: string): readonly string[] =>
  items
    .filter((item) => item.letter === 'i' && isFresh(item, text))
    .flatMap(({ ingredients = [] }) => ingredients)
    .filter((id) => ingredientById(id)?.kind === 'herb');

/** "Olive oil infused with borage leaf": a watched plant that gave something to the oil, and is in no line. */
export const takeWatchedHerbs = (board: Board): readonly string[] => {
  const found: string[] = [];
  for (const [at, item] of board.items.entries()) {
    const id = item.letter === 'i' ? item.ingredients?.[0] : undefined;
    const before = board.items
      .slice(Math.max(0, at - 2), at)
      .map(({ letter }) => letter)
      .join('');
    if (id === undefined || watchedThing(id)?.kind !== 'plant' || !/H[WIo]?$/.test(before)) continue;
    found.push(id);
    for (let index = at - before.length + before.indexOf('H'); index <= at; index += 1)
      board.taken[index] = true;
  }
  return found;
};
