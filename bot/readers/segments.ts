import { defined } from '../../core/defined.ts';
import { ingredientById } from '../../core/ingredients.ts';
import type { Trouble } from '../answer.ts';
import { unknownIngredient } from './ask-back.ts';
import { amountRank, isAmount, isName } from './cut.ts';
import type { Item } from './item.ts';
import { isCarrying } from './spelling.ts';

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
  /** What a totals line says: "Total 100 g". */
  readonly total?: Item;
}

/** Words that say how an ingredient looks or was bought; they change no sum. */
const qualities = new Set(
  `organic refined unrefined raw virgin extra pure natural white yellow grated pellets pellet pastilles beads granules chopped chips flakes
  cold pressed food cosmetic grade dried dry fresh powder powdered ground crushed quality local homemade own homegrown finely coarsely roughly shredded shaved garden solid liquid
  deodorised deodorized unbleached bleached filtered golden whole petals petal flowers flower heads buds leaf leaves herb infused
  out off each level heaped packed rounded scant drop drops worth`.split(/\s+/),
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

/** "20 g (20 %) beeswax": one thing said twice; the mass counts. */
const bestAmount = (amounts: readonly Item[]): Item | undefined =>
  [...amounts].sort((a, b) => amountRank.indexOf(a.letter) - amountRank.indexOf(b.letter))[0];

const isHerb = (item: Item): boolean =>
  item.ingredients?.some((id) => ingredientById(id)?.kind === 'herb') ?? false;

/** "calendula infused olive oil", "olive oil infused with calendula": the oil is the line, the herb its note. */
const splitInfused = (segment: readonly Item[]): { names: Item[]; infusedWith?: Item } => {
  const names = segment.filter(isName);
  if (names.length !== 2 || !segment.some((item) => item.letter === 'H')) return { names };
  const herb = names.find(isHerb);
  const oil = names.find((item) => item !== herb);
  return herb && oil ? { names: [oil], infusedWith: herb } : { names };
};

const isTopUp = (segment: readonly Item[]): boolean => {
  const words = segment.map((item) => item.word);
  return words.includes('up') && (words.includes('top') || words.includes('fill') || words.includes('make'));
};

/** What "olive oil to 100", "… q.s.", "the rest …" fills up to: 0 when no figure was given. */
const restOf = (segment: readonly Item[], amounts: readonly Item[]): { total: number } | undefined => {
  const target = amounts.length === 1 ? amounts[0] : undefined;
  const before = target && segment[segment.indexOf(target) - 1];
  const toTarget = before?.letter === 'T' || before?.letter === 'Q' || before?.word === 'up';
  if (target && toTarget && 'gn%'.includes(target.letter)) {
    return { total: target.letter === '%' ? 0 : (target.value ?? 0) };
  }
  if (amounts.length > 0) return undefined;
  return segment.some((item) => item.letter === 'Q') || isTopUp(segment) ? { total: 0 } : undefined;
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

/** A word before a colon is a label ("Target:"), a single letter a column of a table. */
const isLabel = (segment: readonly Item[], item: Item): boolean =>
  item.letter === 'w' && (item.word.length === 1 || segment[segment.indexOf(item) + 1]?.letter === ':');

const isQuiet = (segment: readonly Item[], item: Item): boolean =>
  !/[wzZg%vdpntirR]/.test(item.letter) || quietWords.has(item.word) || isLabel(segment, item);

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
  return { drafts: [rest ? { ...draft, rest: rest.total } : draft], loose: rest ? [] : spare(amounts, best) };
};

/** Names and amounts in a row without commas: each name with the nearest amount on the side where they stand. */
const inARow = (segment: readonly Item[], names: readonly Item[], amounts: readonly Item[]): Segment => {
  const first = segment.find((item) => isName(item) || isAmount(item));
  const before = first !== undefined && isAmount(first);
  const used = new Set<Item>();
  const drafts = names.map((name) => {
    const sides = amounts.filter(
      (item) => !used.has(item) && (before ? item.from < name.from : item.from > name.from),
    );
    const amount = before ? sides.at(-1) : sides[0];
    if (amount) used.add(amount);
    return draftOf(segment, name, amount);
  });
  return { drafts, loose: amounts.filter((item) => !used.has(item)) };
};

/** "80 g olive oil infused with 20 g calendula": the oil is one line, the herb, weighed and strained out, another. */
const steeped = (
  segment: readonly Item[],
  names: readonly Item[],
  amounts: readonly Item[],
): Segment | undefined => {
  const herb = names.find(isHerb);
  if (names.length !== 2 || amounts.length !== 2 || !herb || !segment.some((item) => item.letter === 'H'))
    return undefined;
  const { drafts, loose } = inARow(segment, names, amounts);
  return {
    drafts: drafts.map((draft) =>
      draft.name === herb ? { ...draft, strained: true } : { ...draft, strained: false, infusedWith: herb },
    ),
    loose,
  };
};

/** Reads one segment: a name and its amount in either order, or several pairs in a row. */
export const readSegment = (segment: readonly Item[]): Segment => {
  const amounts = segment.filter(isAmount);
  const both = steeped(segment, segment.filter(isName), amounts);
  const { names, infusedWith } = splitInfused(segment);
  const loose = segment.filter((item) => !isAmount(item) && !isName(item) && !isQuiet(segment, item));
  const [name, second] = names;
  if (!name) return withoutName(segment, amounts, loose);
  const read =
    both ?? (second ? inARow(segment, names, amounts) : oneName(segment, name, amounts, infusedWith));
  return { ...read, loose: [...loose, ...read.loose] };
};

/** 100 % alone on a line is the sum of the ones above it. */
const isWhole = (amounts: readonly Item[]): boolean =>
  amounts.length === 1 && amounts[0]?.letter === '%' && Math.abs((amounts[0].value ?? 0) - 100) < 1;

const withoutName = (segment: readonly Item[], amounts: readonly Item[], loose: readonly Item[]): Segment => {
  const sums = segment.some((item) => totalWords.has(item.word) || item.letter === '=') || isWhole(amounts);
  if (sums) return { drafts: [], loose, ...defined({ total: bestAmount(amounts) }) };
  const unknown = loose.filter((item) => item.letter === 'w' && !isCarrying(item.word));
  const left = { drafts: [], loose: [...amounts, ...loose] };
  if (amounts.length === 0 || unknown.length === 0) return left;
  return { ...left, trouble: unknownIngredient(unknown.map((item) => item.word).join(' ')) };
};
