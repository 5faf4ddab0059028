import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { askWhich, echo } from './ask-back.ts';
import { isBackground } from './background-words.ts';
import { isBeside } from './beside.ts';
import {
  type Subject,
  subjectBefore,
  takeItem,
  takeOwnIngredients,
  takeRemembered,
  takeSubject,
} from './body.ts';
import type { Item } from './item.ts';
import { leftover } from './leftover.ts';
import { takeBareTemperature, takeTabled, takeTemperature, takeTemperatureAfterAt } from './melt-degrees.ts';
import { claimSeveral } from './melt-several.ts';
import {
  asksElse,
  asksElsewhere,
  asksForPlan,
  asksWhenIn,
  cues,
  meltWords,
  recipeCues,
  strongCues,
} from './melt-words.ts';
import { readPointed } from './pointed-name.ts';
import { type Board, boardOf, free, takeShape } from './target.ts';
import { wordSet } from './word-list.ts';

const missing = (text: string): Trouble => ({ code: 'missing', text });
const ofWhat = missing(
  'Of what? Name a recipe, write one out, or name one ingredient: "when does Fernlea hand balm melt", "melting point of beeswax".',
);

const unknownRecipe = (said: string): Trouble => ({
  code: 'unknown-recipe',
  text: `I know no recipe called "${echo(said)}". Ask "list recipes" to see what is saved, or write it out: "when does 20% beeswax, 80% olive oil melt".`,
});

const hottestC = 200;
const coldestC = -50;
const outside: Trouble = {
  code: 'out-of-range',
  text: 'I can tell what a balm does between -50 and 200 °C. For example "will Fernlea hand balm survive 35 C".',
};

/** "And the mint one?" after a recipe: a name that is several ingredients, and in one recipe's name. */
const takeHalfNamed = (own: Subject, reading: Reading): Subject => {
  const { ingredient } = own;
  if (!ingredient || (ingredient.ingredients?.length ?? 0) < 2 || !subjectBefore(reading)) return own;
  const [only, second] = reading.recipes.near(ingredient.word);
  if (!only || second) return own;
  return { recipe: only.name, assumed: [`I took "${ingredient.word}" as ${only.name}.`] };
};

/** "When does it melt?" after "what is candelilla wax". */
const thingBefore = ({ last, text }: Reading): Subject | undefined => {
  const id = last?.topic === 'ingredient' ? last.request.ingredient : undefined;
  if (typeof id !== 'string' || !/\b(?:it|that|this)\b|\bmelting (?:point|range)\b/i.test(text))
    return undefined;
  return { ingredient: { letter: 'i', word: id, ingredients: [id], from: 0, to: 0 }, assumed: [] };
};

const subjectOf = (board: Board, reading: Reading): Subject => {
  // "When does the peppermint go in?" after a recipe that has it.
  const spoken = subjectBefore(reading);
  if (spoken && asksWhenIn(reading.text))
    for (const item of free(board)) if (item.letter === 'i') takeItem(board, item);
  const own = takeHalfNamed(takeSubject(board), reading);
  if (own.recipe !== undefined || own.lines || own.ingredient || own.trouble) return own;
  const near = takeRemembered(board, reading, meltWords);
  if (near) return near;
  const before = subjectBefore(reading);
  return before ? { ...before, assumed: [] } : (thingBefore(reading) ?? own);
};

/** "Dark chart", "the graph in dark mode". */
export const darkChart = /\bdark(?:[- ](?:mode|theme|background))?\b/i;

const isDark = (reading: Reading): boolean =>
  darkChart.test(reading.text) && anyWord(reading, ['chart', 'graph', 'curve', 'picture', 'diagram', 'mode']);

/** "And the mint one too?" after "will it survive 35 C": the same heat for another recipe. */
const heatBefore = ({ last, text }: Reading): number | undefined => {
  const before = last?.topic === 'melt' ? last.request.survivesC : undefined;
  const again =
    /\b(?:and|too(?! \w)|also|as well|same|(?:what|how) about)\b/i.test(text) &&
    !/\bmelt|\bplan\b|\bpour|\bcar\b|\bpocket|\bpost\b|\bsummer|\bbeach|\bsun\b|\bfridge/i.test(text);
  return again && typeof before === 'number' ? before : undefined;
};

const requestOf = (subject: Subject, reading: Reading, survivesC: number | undefined) => ({
  ...defined({
    recipe: subject.recipe,
    lines: subject.recipe === undefined ? subject.lines : undefined,
    ingredient: subject.ingredient?.ingredients?.[0],
    survivesC: survivesC ?? (subject.ingredient ? undefined : heatBefore(reading)),
    ask: asksForPlan(reading.text, survivesC !== undefined) ? ('heat' as const) : undefined,
    dark: isDark(reading) || undefined,
  }),
});

const settle = (subject: Subject, reading: Reading, survivesC: number | undefined, weight: number): Claim => {
  const { ingredient, trouble, assumed } = subject;
  if (trouble) return refuse(trouble, weight);
  if (ingredient && ((ingredient.ingredients?.length ?? 0) !== 1 || ingredient.because)) {
    return refuse(askWhich(ingredient), weight);
  }
  if (subject.recipe === undefined && !subject.lines && !ingredient) return refuse(ofWhat, 0.9);
  if (survivesC !== undefined && (survivesC > hottestC || survivesC < coldestC))
    return refuse(outside, weight);
  const misspelt = ingredient?.misspelt
    ? [`I read "${ingredient.misspelt}" as ${ingredient.ingredients?.[0]}.`]
    : [];
  return claim(requestOf(subject, reading, survivesC), weight, [...assumed, ...misspelt]);
};

/** Talk at the edges is fine once it is clear what melts. */
const isClear = (subject: Subject): boolean =>
  subject.recipe !== undefined || subject.lines !== undefined || subject.ingredient !== undefined;

/** "And 38?" after "will it survive 35 C". */
const isBareHeat = (reading: Reading, { letter, from }: Item): boolean =>
  letter === 'n' &&
  ((reading.last?.request.survivesC !== undefined && !isBeside(reading, ({ word }) => meltWords.has(word))) ||
    /\bat $/i.test(reading.text.slice(Math.max(0, from - 4), from)));

const has = ({ items }: Reading, letters: RegExp): boolean => items.some((item) => letters.test(item.letter));

/** "Fernlea mint lip balm ok at 35 C?": a saved recipe and a temperature, and nothing to weigh. */
const hasDegrees = ({ items }: Reading): boolean =>
  items.some((item, at) => item.letter === 'n' && /^degrees?$/.test(items[at + 1]?.word ?? ''));

/** "What happens to 25 % beeswax, 75 % olive oil at 45 C": one written out, asked about. */
const isMixInHeat = (reading: Reading): boolean =>
  has(reading, /t/) &&
  reading.items.filter(({ letter }) => letter === 'i').length > 1 &&
  anyWord(reading, ['happen', 'happens', 'behave', 'behaves', 'fare', 'fares', 'ok', 'okay', 'fine']);

const isRecipeInHeat = (reading: Reading): boolean =>
  has(reading, /R/) && (has(reading, /t/) || hasDegrees(reading)) && !has(reading, /[gvcdp%M]/);

const follows = (reading: Reading): boolean =>
  reading.last?.topic === 'melt' &&
  reading.items.some((item) => /[tRi]/.test(item.letter) || isBareHeat(reading, item));

/** "At what temperature should it be poured?" asks; "poured 24 tins" tells, "I poured out 60 ml castor oil" too. */
const asksToPour = (reading: Reading): boolean =>
  reading.words.has('poured') &&
  (has(reading, /R/) || reading.items.filter(({ letter }) => letter === 'i').length !== 1) &&
  anyWord(reading, ['should', 'what', 'when', 'how']);

/** "A customer in Malta asks": beside a recipe and a temperature, a near miss of a name is talk. */
const takeNearMisses = (board: Board, reading: Reading): void => {
  if (!isRecipeInHeat(reading)) return;
  for (const [at, item] of board.items.entries()) if (item.misspelt) board.taken[at] = true;
};

/** Talk between the recipe and the temperature it is to stand: "taking it to Spain in August, 38 °C there". */
const mostTalk = 9;
const isTold = (blocking: readonly Item[], heat: number | undefined, { recipe }: Subject): boolean =>
  heat !== undefined &&
  recipe !== undefined &&
  blocking.length <= mostTalk &&
  blocking.every((item) => item.letter === 'w');

/** How surely it is about heat. */
const sureness = (reading: Reading, survivesC: number | undefined): number => {
  // A temperature beside a word of heat and a saved recipe is a question of heat, whatever talk is around it.
  const names = reading.items.filter(({ letter }) => letter === 'i').length;
  const named = (survivesC !== undefined || hasDegrees(reading)) && (has(reading, /R/) || names > 1);
  const strong =
    anyWord(reading, strongCues) ||
    (has(reading, /R/) && asksForPlan(reading.text, false)) ||
    (has(reading, /R/) && anyWord(reading, recipeCues)) ||
    follows(reading) ||
    named ||
    asksToPour(reading) ||
    asksWhenIn(reading.text);
  return strong ? 2.6 : 1.9;
};

/** "Without it setting in the jug": how it must not go, and nothing that is left out. */
const takeMishap = (board: Board, { text }: Reading): void => {
  const match = /\bwithout (?:it|them|this|that) \w+ing\b/i.exec(text);
  if (!match) return;
  const end = match.index + match[0].length;
  for (const [at, item] of board.items.entries())
    if (item.from >= match.index && item.to <= end) board.taken[at] = true;
};

const strongFrom = 2;
/** Surer than a puzzle, less sure than any request of another topic. */
const looseWeight = 1.5;
/** A wall of text is no question. */
const mostLoose = 40;

/** Nothing that could be another request: talk, whatever its words, around a clear question of heat. */
const isOnlyTalk = (blocking: readonly Item[], board: Board, { text }: Reading): boolean =>
  board.items.length <= mostLoose &&
  !/^\W*(?:did|has|have|who)\b/i.test(text) &&
  blocking.every(({ letter }) => /[wzZyS]/.test(letter)) &&
  !free(board).some(asksElsewhere);

/** "When will Harbour Lights balm melt": a recipe nobody saved. */
const unknownBalm = ({ items, taken }: Board, weight: number): Claim | undefined => {
  const end = items.findIndex(({ letter }, at) => letter === 'B' && items[at - 1]?.letter === 'w');
  let from = end;
  while (from > 0 && items[from - 1]?.letter === 'w' && !taken[from - 1]) from -= 1;
  const words = items.slice(from, end).map(({ word }) => word);
  const isName = words.length > 0 && !words.some((word) => meltWords.has(word) || isBackground(word));
  return isName && weight > strongFrom
    ? refuse(unknownRecipe([...words, items[end]?.word].join(' ')), 1)
    : undefined;
};

const namesHeat = (reading: Reading): boolean => anyWord(reading, cues) || asksWhenIn(reading.text);

/** What goes on from the message before: "same for murumuru". */
const goesOn = wordSet('same and for too also then about again as well what how likewise ditto question');

/** "Is the hand balm kosher" after a question of heat is another one: nothing in it but the balm is about heat. */
const onlyFollows = (reading: Reading, heat: number | undefined): boolean =>
  heat === undefined && follows(reading) && !namesHeat(reading) && !isRecipeInHeat(reading);

const asksOfHeat = (reading: Reading): boolean =>
  namesHeat(reading) ||
  (has(reading, /R/) && (anyWord(reading, recipeCues) || asksForPlan(reading.text, true))) ||
  follows(reading) ||
  isRecipeInHeat(reading) ||
  isMixInHeat(reading);

/** "Can't get hold of candelilla" holds nothing: beside one ingredient only melting itself is asked about. */
const isMeltingOf = ({ ingredient }: Subject, { text }: Reading): boolean =>
  !ingredient || /melt|liqu|runn|fluid|soft|solid|\bmp\b/i.test(text);

const read = (reading: Reading): Claim | undefined => {
  if (!asksOfHeat(reading) || asksElse(reading.text)) return undefined;
  const board = boardOf(reading.items);
  takeMishap(board, reading);
  takeNearMisses(board, reading);
  const survivesC = takeTemperature(board) ?? takeTemperatureAfterAt(board, reading);
  const weight = sureness(reading, survivesC);
  takeShape(board, /nc/); // "firm enough for a stick"
  const subject = subjectOf(board, reading);
  const bare = survivesC ?? takeBareTemperature(board, reading);
  takeOwnIngredients(board, reading, subject.recipe);
  if (bare === undefined) takeTabled(board, reading);
  const strong = weight > strongFrom && !onlyFollows(reading, bare);
  const blocking = leftover(board, meltWords, strong && isClear(subject)).blocking.filter(
    ({ word }) => strong || !goesOn.has(word),
  );
  if (blocking.length === 0 || isTold(blocking, bare, subject)) return settle(subject, reading, bare, weight);
  if (!isClear(subject)) return unknownBalm(board, weight);
  const talk = strong && isMeltingOf(subject, reading) && isOnlyTalk(blocking, board, reading);
  return talk ? settle(subject, reading, bare, looseWeight) : undefined;
};

/** What a message would mean as a question about heat. */
export const claimMelt = readPointed((reading) => claimSeveral(reading) ?? read(reading));
