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
import { type Board, boardOf, free, takeShape } from './target.ts';

/** Words that ask what heat does. */
const strongCues =
  `melt melts melting melted melty molten survive survives surviving soft soften softens softening firm firmness slump slumps
  forecast chart pour pouring hold holds liquid runny car pocket handbag purse dashboard heatwave grainy graininess grain heating waterbath
  bain-marie boiler cooling`.split(/\s+/);
const cues = [
  ...strongCues,
  ...`temperature temperatures temp add put take takes softer firmer hardness hard heat bath solid solids sweat sun hot warm summer set sets
  stiff order cool cools cope copes bear stand`.split(/\s+/),
];

/** Words around such a question that ask for nothing more. */
export const meltWords = new Set([
  ...cues,
  ...`what whats what's when how which point temperature temperatures range degree degrees will would does stay stays staying fully completely
  many temp temps becomes become turns turn reach clear liquid purse state behaviour behavior wont won't doesn't mustn't should may even add go
  poured all plan purse for guide jacket trouser coat bag handbag at up down out to in of holiday heatwave day hold holds keep keeps its shape stand stands
  withstand take parked left inside dashboard beach room show curve graph picture diagram print see give tell happens happen it's should
  water jug need needs start starts begin begins long-time percent texture body can climate weather still enough and too over under above below
  before after goes go first last order put pot pan double instructions method safely gently properly quickly slowly fridge freezer overnight
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

/** What a message would mean as a question about heat. */
export const claimMelt = (reading: Reading): Claim | undefined => {
  const follows =
    reading.last?.topic === 'melt' &&
    reading.items.some((item) => /[tRi]/.test(item.letter) || isBareHeat(reading, item));
  if (!anyWord(reading, cues) && !follows) return undefined;
  const board = boardOf(reading.items);
  const survivesC = takeTemperature(board);
  // A temperature beside a word of heat and a saved recipe is a question of heat, whatever talk is around it.
  const named = survivesC !== undefined && reading.items.some((item) => item.letter === 'R');
  const strong = anyWord(reading, strongCues) || follows || named;
  takeShape(board, /nc/); // "firm enough for a stick"
  const subject = subjectOf(board, reading);
  const bare = survivesC ?? takeBareTemperature(board, reading);
  takeOwnIngredients(board, reading, subject.recipe);
  const { blocking } = leftover(board, meltWords, strong && isClear(subject));
  if (blocking.length > 0) return undefined;
  return settle(subject, reading, bare, strong ? 2.6 : 1.9);
};
