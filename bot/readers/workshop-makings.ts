import { defined } from '../../core/defined.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import type { InfusionWish } from '../../core/workshop/infused-lines.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { takeOwnIngredients, takeRecipe } from './body.ts';
import { containerWord } from './cost-prices.ts';
import type { Item } from './item.ts';
import { leftover } from './leftover.ts';
import { readScale } from './scale-reading.ts';
import { whichRecipe } from './scale-troubles.ts';
import {
  type Board,
  boardOf,
  free,
  type Size,
  sizeOf,
  takeContainers,
  takeLoss,
  takeStep,
} from './target.ts';
import { takeInfusion } from './workshop-infusion.ts';
import { infusionApart, unknownMaking, workshopWords } from './workshop-words.ts';

/** What everybody makes, as far as it is said. */
export interface MakingRead {
  readonly recipe?: string;
  readonly lines?: readonly RecipeLine[];
  readonly each?: number;
  readonly size?: Size;
  readonly container?: string;
  readonly infusion?: InfusionWish;
}

export interface MakingsRead {
  readonly makings: readonly MakingRead[];
  readonly assumed: readonly string[];
  readonly lossPercent?: number;
  readonly stepG?: number;
  readonly trouble?: Trouble;
  readonly blocking: readonly Item[];
  readonly aside: readonly string[];
  /** An oil that is infused, for whatever is made. */
  readonly infusion?: InfusionWish;
  /** A number that stands alone, nobody knows of what. */
  readonly lone?: number;
}

const has = (items: readonly Item[], letters: RegExp): boolean =>
  items.some((item) => letters.test(item.letter));

/** A segment starts another thing to make when it names again what the one before has already. */
const clashes = (making: readonly Item[], segment: readonly Item[]): boolean =>
  (has(making, /R/) && has(segment, /R/)) ||
  (has(making, /c/) && has(segment, /c/)) ||
  (has(making, /[gv]/) && has(segment, /[gv]/));

const segmentsOf = (items: readonly Item[]): Item[][] => {
  const segments: Item[][] = [[]];
  for (const item of items) {
    if (/^[A,;.\n]$/.test(item.letter)) segments.push([]);
    else segments.at(-1)?.push(item);
  }
  return segments.filter((segment) => segment.length > 0);
};

/** Items of each thing to make. */
const groupsOf = (items: readonly Item[]): Item[][] => {
  const groups: Item[][] = [];
  for (const segment of segmentsOf(items)) {
    const last = groups.at(-1);
    if (last && !clashes(last, segment)) last.push(...segment);
    else groups.push([...segment]);
  }
  return groups;
};

/** "12 people x 2 tins x 15 ml": a times sign between two things that stand for themselves. */
const withoutTimes = (items: readonly Item[]): Item[] =>
  items.filter((item, at) => {
    if (item.letter !== 'x' && item.letter !== '*') return true;
    const [before, next] = [items[at - 1]?.letter, items[at + 1]?.letter];
    return before === 'n' && next !== undefined && /[gvc]/.test(next);
  });

/** Words of a group that could name a recipe: "lip balm" in "one lip balm stick of 5 g". */
const saidName = (items: readonly Item[]): { readonly said: string; readonly telling: boolean } => {
  const loose = items.filter(
    (item) => /[wBZ]/.test(item.letter) && (item.letter === 'B' || !workshopWords.has(item.word)),
  );
  return {
    said: loose.map((item) => item.word).join(' '),
    telling: loose.some((item) => item.letter !== 'B'),
  };
};

interface Named {
  readonly recipe?: string;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

const nearRecipe = (reading: Reading, items: readonly Item[]): Named => {
  const { said, telling } = saidName(items);
  if (said === '') return { assumed: [] };
  const [only, second, ...more] = reading.recipes.near(said);
  if (only && second) {
    const names = [only, second, ...more].slice(0, 4).map((recipe) => recipe.name);
    return { assumed: [], trouble: whichRecipe(names) };
  }
  if (only) return { recipe: only.name, assumed: [`I took "${said}" as ${only.name}.`] };
  return telling ? { assumed: [], trouble: unknownMaking(said) } : { assumed: [] };
};

interface GroupRead {
  readonly making: MakingRead;
  readonly board: Board;
  readonly named: Named;
}

const readGroup = (reading: Reading, items: readonly Item[]): GroupRead => {
  const board = boardOf(items);
  const { count, size, container } = takeContainers(board);
  const lone = loneSize(board, size);
  const recipe = takeRecipe(board);
  const named = recipe === undefined ? nearRecipe(reading, items) : { assumed: [] };
  if (named.recipe !== undefined) {
    for (const [at, item] of board.items.entries()) if (/[wBZ]/.test(item.letter)) board.taken[at] = true;
  }
  const holds = size ?? lone;
  const word = container ?? items.find((item) => item.letter === 'c')?.word;
  return {
    making: defined({
      recipe: recipe ?? named.recipe,
      each: count?.value,
      size: holds && sizeOf(holds, reading.settings.region),
      container: word === undefined ? undefined : containerWord(word),
    }),
    board,
    named,
  };
};

/** "2 tins each, 15 ml": the one amount that nothing else claims is what a container holds. */
const loneSize = (board: Board, size: Item | undefined): Item | undefined => {
  if (size) return undefined;
  const amounts = free(board).filter((item) => item.letter === 'g' || item.letter === 'v');
  const [amount] = amounts;
  if (!amount || amounts.length > 1) return undefined;
  board.taken[board.items.indexOf(amount)] = true;
  return amount;
};

/** One recipe takes the count and size of the one before where it says none: "… of A and B". */
const filledUp = (makings: readonly MakingRead[]): MakingRead[] => {
  const whole: MakingRead[] = [];
  for (const making of makings) {
    const before = whole.at(-1);
    const bare = making.each === undefined && making.size === undefined && making.container === undefined;
    whole.push(
      before && bare
        ? { ...defined({ each: before.each, size: before.size, container: before.container }), ...making }
        : making,
    );
  }
  return whole;
};

const isEmpty = (making: MakingRead): boolean => Object.keys(making).length === 0;

/** A recipe written out: everything is one thing to make. */
const writtenOut = (reading: Reading, items: readonly Item[]): MakingsRead => {
  const { last: _last, ...bare } = reading;
  const read = readScale({ ...bare, items });
  const { count, size } = read.target;
  const container = items.find((item) => item.letter === 'c')?.word;
  const rest = leftover(read.board, workshopWords, true);
  const lines = read.lines.length > 0 ? read.lines : undefined;
  return {
    makings: [
      defined({
        recipe: read.recipe,
        lines,
        each: count,
        size,
        container: container === undefined ? undefined : containerWord(container),
      }),
    ],
    assumed: read.assumed,
    blocking: rest.blocking,
    aside: rest.aside,
    ...defined({ trouble: read.trouble }),
  };
};

const takeLone = (boards: readonly Board[]): number | undefined => {
  const numbers = boards.flatMap((board) =>
    free(board)
      .filter((item) => item.letter === 'n')
      .map((item) => ({ board, item })),
  );
  const [only] = numbers;
  if (!only || numbers.length > 1) return undefined;
  only.board.taken[only.board.items.indexOf(only.item)] = true;
  return only.item.value;
};

const saved = (reading: Reading, items: readonly Item[]): MakingsRead => {
  const groups = groupsOf(items).map((group) => readGroup(reading, group));
  for (const { board, making } of groups) takeOwnIngredients(board, reading, making.recipe);
  const lone = takeLone(groups.map(({ board }) => board));
  const rest = groups.map(({ board }) => leftover(board, workshopWords, true));
  const troubles = groups.flatMap(({ named }) => named.trouble ?? []);
  return {
    makings: filledUp(groups.map(({ making }) => making).filter((making) => !isEmpty(making))),
    assumed: groups.flatMap(({ named }) => named.assumed),
    blocking: rest.flatMap(({ blocking }) => blocking),
    aside: rest.flatMap(({ aside }) => aside),
    ...defined({ trouble: troubles[0], lone }),
  };
};

/** Said once, it is meant for everything that is made here. */
const withHerb = (makings: readonly MakingRead[], infusion: InfusionWish): readonly MakingRead[] =>
  makings.map((making) => ({ ...making, infusion }));

/** Reads what everybody makes off the items that nothing else has claimed. */
export const readMakings = (reading: Reading, items: readonly Item[]): MakingsRead => {
  const infused = takeInfusion(items);
  const board = boardOf(withoutTimes(items.filter((item) => !infused.items.includes(item))));
  const stepG = takeStep(board);
  const lossPercent = takeLoss(board);
  const rest = free(board);
  const named = rest.some((item) => item.letter === 'R');
  const read = !named && has(rest, /i/) ? writtenOut(reading, rest) : saved(reading, rest);
  const trouble = infused.unclear ? infusionApart : read.trouble;
  return {
    ...read,
    makings: infused.infusion ? withHerb(read.makings, infused.infusion) : read.makings,
    ...defined({ stepG, lossPercent, infusion: infused.infusion, trouble }),
  };
};
