import { defined } from '../../core/defined.ts';
import { convertTemperature } from '../../core/units.ts';
import type { Trouble } from '../answer.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { askWhich } from './ask-back.ts';
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
import { readPointed } from './pointed-name.ts';
import { type Board, boardOf, free, takeShape } from './target.ts';

/** Words that ask what heat does. */
const strongCues =
  `melt melts melting melted melty molten survive survives surviving soft soften softens softening firm firmness slump slumps
  forecast chart pour pouring hold holds liquid runny car pocket handbag purse dashboard heatwave grainy graininess grain heating waterbath
  bain-marie boiler cooling mp sag sags sagging droop droops bain marie squishy squidgy mushy windowsill solids`.split(
    /\s+/,
  );
const cues = [
  ...strongCues,
  ...`temperature temperatures temp add put take takes softer firmer hardness hard heat bath solid solids sweat sun hot warm summer set sets
  stiff order cool cools cope copes bear stand sunny sunshine radiator poured degrees`.split(/\s+/),
];

/** Words around such a question that ask for nothing more. */
export const meltWords: ReadonlySet<string> = new Set([
  ...cues,
  ...`what whats what's when how which point temperature temperatures range degree degrees will would does stay stays staying fully completely
  many temp temps becomes become turns turn reach clear liquid purse state behaviour behavior wont won't doesn't mustn't should may even add go
  poured all plan purse for guide jacket trouser coat bag handbag at up down out to in of holiday heatwave day hold holds keep keeps its shape stand stands
  withstand take parked left inside dashboard beach room show curve graph picture diagram print see give tell happens happen it's should
  water jug need needs start starts begin begins long-time percent texture body can climate weather still enough and too over under above below
  before after goes go first last order put pot pan double instructions method safely gently properly quickly slowly fridge freezer overnight
  which or was were has have leave leaving post posted posting send sending mail mailed parcel van delivery ship shipping courier fat content against dose
  mine properly really off onto sunny windowsill radiator scent scents aroma aromas fragrance essential wax oil butter january february march april may june july
  august september october november december winter spring autumn abroad festival spain ok fine alright starts normal
  dark mode theme background light ingredients ingredient everything things doesn't dont don't not it'll so that while them cope come comes into if is are be get gets around c hard`.split(
    /\s+/,
  ),
]);

const missing = (text: string): Trouble => ({ code: 'missing', text });
const ofWhat = missing(
  'Of what? Name a recipe, write one out, or name one ingredient: "when does Fernlea hand balm melt", "melting point of beeswax".',
);

const hottestC = 200;
const coldestC = -50;
const outside: Trouble = {
  code: 'out-of-range',
  text: 'I can tell what a balm does between -50 and 200 °C. For example "will Fernlea hand balm survive 35 C".',
};

const celsiusOf = (item: Item | undefined): number | undefined => {
  if (item?.value === undefined) return undefined;
  return item.unit === 'F' ? convertTemperature(item.value, 'F', 'C') : item.value;
};

/** "Can I melt shea at 30": a bare number after "at", with nothing of it to weigh. */
const takeTemperatureAfterAt = (board: Board, reading: Reading): number | undefined => {
  const [item, second] = free(board).filter((each) => each.letter === 'n');
  if (!item || second || !/\bat (?:about |around )?$/i.test(reading.text.slice(0, item.from)))
    return undefined;
  const unit = reading.settings.region === 'us' ? 'F' : 'C';
  return celsiusOf({ ...takeItem(board, item), unit });
};

const takeTemperature = (board: Board): number | undefined => {
  const items = free(board).filter((each) => each.letter === 't');
  const [item] = items;
  // "It may reach 35 C. Will it survive 35 C?" says one temperature twice.
  if (!item || items.some((other) => celsiusOf(other) !== celsiusOf(item))) return undefined;
  for (const each of items) takeItem(board, each);
  return celsiusOf(item);
};

/** "will it survive 35", "35 degrees": a bare number where heat is asked about is in °C, in the US in °F. */
const takeBareTemperature = (board: Board, reading: Reading): number | undefined => {
  if (
    reading.last?.request.survivesC === undefined &&
    !['survive', 'survives', 'surviving', 'stand', 'withstand', 'hold', 'at', 'degree', 'degrees'].some(
      (word) => reading.words.has(word),
    )
  )
    return undefined;
  const [item, second] = free(board).filter((each) => each.letter === 'n');
  if (!item || second) return undefined;
  const unit = reading.settings.region === 'us' ? 'F' : 'C';
  return celsiusOf({ ...takeItem(board, item), unit });
};

const wantsHeatPlan = (reading: Reading): boolean =>
  reading.words.has('heat') || reading.words.has('bath') || anyWord(reading, ['pour', 'pouring']);

/** "And the mint one?" after a recipe: a name that is several ingredients, and in one recipe's name. */
const takeHalfNamed = (own: Subject, reading: Reading): Subject => {
  const { ingredient } = own;
  if (!ingredient || (ingredient.ingredients?.length ?? 0) < 2 || !subjectBefore(reading)) return own;
  const [only, second] = reading.recipes.near(ingredient.word);
  if (!only || second) return own;
  return { recipe: only.name, assumed: [`I took "${ingredient.word}" as ${only.name}.`] };
};

const subjectOf = (board: Board, reading: Reading): Subject => {
  const own = takeHalfNamed(takeSubject(board), reading);
  if (own.recipe !== undefined || own.lines || own.ingredient || own.trouble) return own;
  const near = takeRemembered(board, reading, meltWords);
  if (near) return near;
  const before = subjectBefore(reading);
  return before ? { ...before, assumed: [] } : own;
};

/** "Dark chart", "the graph in dark mode". */
export const darkChart = /\bdark(?:[- ](?:mode|theme|background))?\b/i;

const isDark = (reading: Reading): boolean =>
  darkChart.test(reading.text) && anyWord(reading, ['chart', 'graph', 'curve', 'picture', 'diagram', 'mode']);

const requestOf = (subject: Subject, reading: Reading, survivesC: number | undefined) => ({
  ...defined({
    recipe: subject.recipe,
    lines: subject.recipe === undefined ? subject.lines : undefined,
    ingredient: subject.ingredient?.ingredients?.[0],
    survivesC,
    ask: wantsHeatPlan(reading) ? ('heat' as const) : undefined,
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
const isBareHeat = ({ last }: Reading, { letter }: Item): boolean =>
  letter === 'n' && last?.request.survivesC !== undefined;

const has = ({ items }: Reading, letters: RegExp): boolean => items.some((item) => letters.test(item.letter));

/** "Fernlea mint lip balm ok at 35 C?": a saved recipe and a temperature, and nothing to weigh. */
const hasDegrees = ({ items }: Reading): boolean =>
  items.some((item, at) => item.letter === 'n' && /^degrees?$/.test(items[at + 1]?.word ?? ''));

const isRecipeInHeat = (reading: Reading): boolean =>
  has(reading, /R/) && (has(reading, /t/) || hasDegrees(reading)) && !has(reading, /[gvcdp%M]/);

const follows = (reading: Reading): boolean =>
  reading.last?.topic === 'melt' &&
  reading.items.some((item) => /[tRi]/.test(item.letter) || isBareHeat(reading, item));

/** "At what temperature should it be poured?" asks; "poured 24 tins" tells. */
const asksToPour = (reading: Reading): boolean =>
  reading.words.has('poured') && anyWord(reading, ['should', 'what', 'when', 'how']);

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
  const named = (survivesC !== undefined || hasDegrees(reading)) && has(reading, /R/);
  const strong = anyWord(reading, strongCues) || follows(reading) || named || asksToPour(reading);
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

/** "How much is 4 tbsp of beeswax in grams, melted or not?" asks for an amount. */
const asksAmount = ({ text }: Reading): boolean =>
  /\bin (?:grams?|g|kilos?|kg|ounces?|oz|ml|millilitres?|spoons?)\b/i.test(text);

const strongFrom = 2;

/** "When should the scent go in for …?" */
const asksWhenIn = (reading: Reading): boolean => /\bwhen\b.{0,30}\b(?:go|goes) in\b/i.test(reading.text);

const read = (reading: Reading): Claim | undefined => {
  if (!anyWord(reading, cues) && !asksWhenIn(reading) && !follows(reading) && !isRecipeInHeat(reading))
    return undefined;
  if (asksAmount(reading)) return undefined;
  const board = boardOf(reading.items);
  takeMishap(board, reading);
  takeNearMisses(board, reading);
  const survivesC = takeTemperature(board) ?? takeTemperatureAfterAt(board, reading);
  const weight = sureness(reading, survivesC);
  takeShape(board, /nc/); // "firm enough for a stick"
  const subject = subjectOf(board, reading);
  const bare = survivesC ?? takeBareTemperature(board, reading);
  takeOwnIngredients(board, reading, subject.recipe);
  const { blocking } = leftover(board, meltWords, weight > strongFrom && isClear(subject));
  if (blocking.length > 0 && !isTold(blocking, bare, subject)) return undefined;
  return settle(subject, reading, bare, weight);
};

/** What a message would mean as a question about heat. */
export const claimMelt = readPointed(read);
