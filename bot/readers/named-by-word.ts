import { nameKey } from '../../core/names.ts';
import { type Claim, oncePerReading, type Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { isBackground } from './background-words.ts';
import type { Item } from './item.ts';
import { letters } from './lexicon.ts';

const shortestWord = 4;
const mostTokens = 40;
const pointing = /\b(?:of|the|our|my|any|last|latest|more|pour|poured|for)\s+$/i;

/** "Any tidepool left", "the lamplight sticks": a word that points, or containers after it. */
const isPointed = ({ text, items }: Reading, item: Item): boolean =>
  isByItself(text, items, item) &&
  (pointing.test(text.slice(Math.max(0, item.from - 12), item.from)) ||
    items[items.indexOf(item) + 1]?.letter === letters.container ||
    item.to === text.replace(/[\s?!.]+$/, '').length);

const noun = /^[wBi]$/;

/** "Velvet cream" is not Velvet pot: another word that nobody knows right beside it makes it another name. */
const isByItself = (text: string, items: readonly Item[], item: Item): boolean => {
  const at = items.indexOf(item);
  const [before, after] = [items[at - 1], items[at + 1]];
  const glued = after !== undefined && noun.test(after.letter) && /^ $/.test(text.slice(item.to, after.from));
  const led =
    before !== undefined && noun.test(before.letter) && /^ $/.test(text.slice(before.to, item.from));
  return !glued && (!led || pointing.test(text.slice(Math.max(0, item.from - 12), item.from)));
};

/** The saved recipe whose name alone has this very word. */
const recipeOf = ({ recipes }: Reading, word: string): string | undefined => {
  const key = nameKey(word);
  const found = recipes.near(word).filter(({ name }) => nameKey(name).split(' ').includes(key));
  return found.length === 1 ? found[0]?.name : undefined;
};

interface Named {
  readonly reading: Reading;
  readonly assumed: string;
}

const named = oncePerReading((reading): Named | undefined => {
  const { items, text, tokens, recipes } = reading;
  if (tokens.length > mostTokens || items.some(({ letter }) => letter === letters.recipe)) return undefined;
  for (const item of items) {
    if (item.letter !== letters.unknown || item.word.length < shortestWord || isBackground(item.word))
      continue;
    if (!recipes.hasWord(item.word) || !isPointed(reading, item)) continue;
    const name = recipeOf(reading, item.word);
    if (name === undefined) continue;
    const plain = text.slice(0, item.from) + name + text.slice(item.to);
    return { reading: readAgain(plain, reading), assumed: `I took "${item.word}" as ${name}.` };
  }
  return undefined;
});

/** A topic that also knows a saved recipe by one word of its name: "how many tidepool tins are left". */
export const namedByWord =
  (read: (reading: Reading) => Claim | undefined) =>
  (reading: Reading): Claim | undefined => {
    const own = read(reading);
    if (own?.kind === 'request') return own;
    const other = named(reading);
    const made = other && read(other.reading);
    const writes = made?.kind === 'request' && /^(?:pour|correct)$/.test(String(made.request.action));
    return made?.kind === 'request' && !writes
      ? { ...made, assumed: [...made.assumed, other?.assumed ?? ''] }
      : own;
  };
