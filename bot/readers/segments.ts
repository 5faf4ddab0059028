import { defined } from '../../core/defined.ts';
import { ingredientById } from '../../core/ingredients.ts';
import type { Trouble } from '../answer.ts';
import { unknownIngredient } from './ask-back.ts';
import type { Item } from './item.ts';

/** One line in the making: a name with its amount, not yet settled. */
export interface Draft {
  readonly name: Item;
  readonly amount?: Item;
  readonly rest?: number;
  readonly strained: boolean;
  readonly infusedWith?: Item;
  readonly fresh: boolean;
}

/** What stands between two commas or line breaks. */
export interface Segment {
  readonly drafts: readonly Draft[];
  readonly loose: readonly Item[];
  readonly trouble?: Trouble;
}

const separators = new Set([',', ';', '\n', 'A', '.']);
const amountRank = 'gvdp%n';
export const isAmount = (item: Item): boolean => amountRank.includes(item.letter);

/** Words that say how an ingredient looks or was bought; they change no sum. */
const qualities = new Set(
  `organic refined unrefined raw virgin extra pure natural white yellow grated pellets pellet pastilles beads granules chopped chips flakes
  cold pressed food cosmetic grade dried dry fresh powder powdered ground crushed quality local homemade solid liquid
  deodorised deodorized unbleached bleached filtered golden whole petals petal flowers flower heads buds leaf leaves herb infused
  each level heaped packed rounded scant drop drops worth`.split(/\s+/),
);
const totalWords = new Set([
  'total',
  'sum',
  'totals',
  'makes',
  'altogether',
  'together',
  'overall',
  'gesamt',
  'yield',
  'yields',
]);

/** "… 25 % rest castor oil": the rest is a line of its own, comma or not. */
const startsRest = (segment: readonly Item[], item: Item): boolean =>
  item.letter === 'Q' && segment.some((each) => each.letter === 'i') && segment.some(isAmount);

const isNameOnly = (segment: readonly Item[]): boolean =>
  segment.some((item) => item.letter === 'i') &&
  !segment.some((item) => isAmount(item) || item.letter === 'Q');
const isAmountOnly = (segment: readonly Item[]): boolean => segment.every(isAmount);

/** "Beeswax, 20 g" on a line: the comma stands between a name and its amount, not between two lines. */
const rejoined = (segments: readonly Item[][]): Item[][] => {
  const list: Item[][] = [];
  const names = segments.filter(isNameOnly).length;
  const paired = names > 0 && segments.filter(isAmountOnly).length === names;
  for (const segment of segments) {
    const last = list.at(-1);
    if (paired && last && isAmountOnly(segment) && isNameOnly(last)) last.push(...segment);
    else list.push(segment);
  }
  return list;
};

/** Cuts items at commas, line breaks and "and"s. */
export const segmentsOf = (items: readonly Item[]): Item[][] => {
  const list: Item[][] = [[]];
  for (const item of items) {
    if (separators.has(item.letter)) list.push([]);
    else if (startsRest(list.at(-1) ?? [], item)) list.push([item]);
    else list.at(-1)?.push(item);
  }
  return rejoined(list.filter((segment) => segment.length > 0));
};

/** "20 g (20 %) beeswax": one thing said twice; the mass counts. */
const bestAmount = (amounts: readonly Item[]): Item | undefined =>
  [...amounts].sort((a, b) => amountRank.indexOf(a.letter) - amountRank.indexOf(b.letter))[0];

const isHerb = (item: Item): boolean =>
  item.ingredients?.some((id) => ingredientById(id)?.kind === 'herb') ?? false;

/** "calendula infused olive oil", "olive oil infused with calendula": the oil is the line, the herb its note. */
const splitInfused = (segment: readonly Item[]): { names: Item[]; infusedWith?: Item } => {
  const names = segment.filter((item) => item.letter === 'i');
  if (names.length !== 2 || !segment.some((item) => item.letter === 'H')) return { names };
  const herb = names.find(isHerb);
  const oil = names.find((item) => item !== herb);
  return herb && oil ? { names: [oil], infusedWith: herb } : { names };
};

/** What "olive oil to 100", "… q.s.", "the rest …" fills up to: 0 when no figure was given. */
const restOf = (segment: readonly Item[], amounts: readonly Item[]): { total: number } | undefined => {
  const target = amounts.length === 1 ? amounts[0] : undefined;
  const before = target && segment[segment.indexOf(target) - 1];
  const toTarget = before?.letter === 'T' || before?.letter === 'Q' || before?.word === 'up';
  if (target && toTarget && 'gn%'.includes(target.letter)) {
    return { total: target.value ?? 0 };
  }
  if (amounts.length > 0) return undefined;
  return segment.some((item) => item.letter === 'Q') || isTopUp(segment) ? { total: 0 } : undefined;
};

const isTopUp = (segment: readonly Item[]): boolean => {
  const words = segment.map((item) => item.word);
  return words.includes('up') && (words.includes('top') || words.includes('fill') || words.includes('make'));
};

export const draftOf = (
  segment: readonly Item[],
  name: Item,
  amount: Item | undefined,
  infusedWith?: Item,
): Draft => ({
  name,
  ...defined({ amount, infusedWith }),
  strained: segment.some((item) => item.letter === 'S'),
  fresh: segment.some((item) => item.word === 'fresh' || item.word === 'freshly'),
});

const quietWords = new Set([...qualities, ...totalWords, 'up', 'top', 'fill', 'make']);

const isQuiet = (item: Item): boolean => !/[wzg%vdpntirR]/.test(item.letter) || quietWords.has(item.word);

/** Amounts of a kind that the line has already: "80 g olive oil 500 g" says something else with its second one. */
const spare = (amounts: readonly Item[], best: Item | undefined): Item[] =>
  amounts.filter((item) => item !== best && item.letter === best?.letter);

const oneName = (
  segment: readonly Item[],
  name: Item,
  amounts: readonly Item[],
  infusedWith?: Item,
): Segment => {
  const rest = restOf(segment, amounts);
  const best = rest ? undefined : bestAmount(amounts);
  const draft = draftOf(segment, name, best, infusedWith);
  return {
    drafts: [rest ? { ...draft, rest: rest.total } : draft],
    loose: rest ? [] : spare(amounts, best),
  };
};

/** Reads one segment: a name and its amount in either order, or several pairs in a row. */
export const readSegment = (segment: readonly Item[]): Segment => {
  const amounts = segment.filter(isAmount);
  const { names, infusedWith } = splitInfused(segment);
  const loose = segment.filter((item) => !isAmount(item) && item.letter !== 'i' && !isQuiet(item));
  const [name, second] = names;
  if (!name) return withoutName(segment, amounts, loose);
  if (!second) {
    const one = oneName(segment, name, amounts, infusedWith);
    return { ...one, loose: [...loose, ...one.loose] };
  }
  if (amounts.length !== names.length && amounts.length > 0) {
    return { drafts: [], loose: segment.filter((item) => !isQuiet(item)) };
  }
  return {
    drafts: names.map((each, index) => draftOf(segment, each, amounts[index])),
    loose,
  };
};

const withoutName = (segment: readonly Item[], amounts: readonly Item[], loose: readonly Item[]): Segment => {
  if (segment.some((item) => totalWords.has(item.word) || item.letter === '=')) return { drafts: [], loose };
  const unknown = loose.filter((item) => item.letter === 'w');
  const left = { drafts: [], loose: [...amounts, ...loose] };
  if (amounts.length === 0 || unknown.length === 0) return left;
  return {
    ...left,
    trouble: unknownIngredient(unknown.map((item) => item.word).join(' ')),
  };
};
