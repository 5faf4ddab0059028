import { defined } from '../../core/defined.ts';
import { ingredientById } from '../../core/ingredients.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { askWhich, unknownIngredient } from './ask-back.ts';
import { isBackground } from './background-words.ts';
import type { Item } from './item.ts';
import { leftover } from './leftover.ts';
import { type Board, boardOf, take } from './target.ts';

/** What may be asked about in particular; that line then comes first. */
export const aspects = [
  'density',
  'melting',
  'iodine',
  'shelf-life',
  'allergen',
  'vegan',
  'use',
  'inci',
] as const;
export type Aspect = (typeof aspects)[number];

const aspectWords: Readonly<Record<Aspect, readonly string[]>> = {
  density: ['density', 'dense', 'heavy', 'gravity', 'densities'],
  melting: ['melting', 'melts', 'melt'],
  iodine: ['iodine'],
  'shelf-life': ['shelf', 'keep', 'keeps', 'rancid', 'expiry', 'expire', 'last', 'lasts', 'spoil'],
  allergen: ['allergen', 'allergens', 'allergy', 'allergies', 'allergic', 'nut', 'nuts', 'allergenic'],
  vegan: ['vegan', 'vegans'],
  use: ['use', 'used', 'uses', 'purpose'],
  inci: ['inci', 'label', 'latin', 'botanical'],
};

/** Words that make it a question about an ingredient. */
const asking =
  `what whats what's wat wats wot wut which tell info about means mean meaning define describe explain information details detail facts
  bout deal fact data sheet profile properties property ingredient look lookup up`.split(/\s+/);

export const ingredientWords = new Set([
  ...asking,
  ...Object.values(aspectWords).flat(),
  ...`point range value number name names life long how much does contain contains containing free of for substance stuff thing made
  from come comes plant based animal product kind short please figures figure specific source sources called proper correct
  same another other next not or designation entry listing spec specs temperature good do cause any include fat wax oil butter herb
  its official people count counts as suitable vegans heavy many months weeks years bag packet says read reads exactly something cupboard that's`.split(
    /\s+/,
  ),
]);
const followWords = new Set([...ingredientWords, 'instead']);

const aspectOf = (reading: Reading): Aspect | undefined =>
  aspects.find((aspect) => aspectWords[aspect].some((word) => reading.words.has(word)));

interface LastAsked {
  readonly ingredient?: string;
  readonly about?: Aspect;
}

const lastAsked = (reading: Reading): LastAsked | undefined =>
  reading.last?.topic === 'ingredient' ? reading.last.request : undefined;

/** "how long does it keep" is about shelf life; "how long does it take to melt" is not. */
const isUnsuited = (reading: Reading, about: Aspect | undefined): boolean =>
  reading.words.has('how') && reading.words.has('long') && about !== 'shelf-life';

/** No known name in the message: "and its density?", or a name nobody knows. */
const nameless = (reading: Reading, asks: boolean, about: Aspect | undefined): Claim | undefined => {
  const { blocking } = leftover(boardOf(reading.items), ingredientWords, false);
  const before = lastAsked(reading)?.ingredient;
  if (blocking.length === 0) return about && before ? claim({ ingredient: before, about }, 2) : undefined;
  const unknown = blocking.every((item) => item.letter === 'w') && blocking.length <= 4;
  const said = blocking.map((item) => item.word).join(' ');
  return asks && unknown ? refuse(unknownIngredient(said), about ? 1.2 : 0.6) : undefined;
};

/** Densities are given at 20 °C, so asking for them there asks for nothing more. */
const takeRoomTemperature = (board: Board): void => {
  for (const [index, item] of board.items.entries()) {
    if (item.letter === 't' && item.unit === 'C' && item.value === 20) take(board, index, index + 1);
  }
};

const namedClaim = (name: Item, weight: number, about: Aspect | undefined): Claim => {
  const [id, ...others] = name.ingredients ?? [];
  if (id === undefined || others.length > 0 || name.because) return refuse(askWhich(name), weight);
  const known = ingredientById(id)?.name ?? id;
  const assumed = name.misspelt ? [`I read "${name.misspelt}" as ${known}.`] : [];
  return claim({ ingredient: id, ...defined({ about }) }, weight, assumed);
};

const whatIsIt = /\bwhat(?:'s| is| are) (?:it|that|this|they)\b|\bwhen it's at home\b/i;

/** The question's own words taken away: is anything left that asks for more? */
const isPlain = (board: Board, name: Item, reading: Reading, about: Aspect | undefined): boolean => {
  const at = board.items.indexOf(name);
  take(board, at, at + 1);
  if (about === 'density') takeRoomTemperature(board);
  const expected = lastAsked(reading) ? followWords : ingredientWords;
  if (reading.words.has('instead') && expected === ingredientWords) return false;
  // "I saw cupuaçu butter at the wholesaler, what is it?": the question stands by itself, and the rest is talk.
  const { blocking } = leftover(board, expected, whatIsIt.test(reading.text));
  return blocking.every(
    ({ letter, word }) => (letter === 'Z' || /^labels?$/.test(word)) && whatIsIt.test(reading.text),
  );
};

/** "What is moonsilver wax?": a kind with a word before it that nobody knows is a name of its own. */
const strangeKind = (board: Board, name: Item): Claim | undefined => {
  const word = board.items[board.items.indexOf(name) - 1];
  if (!name.generic || word?.letter !== 'w' || name.from - word.to > 1) return undefined;
  const others = board.items.filter((item) => item !== name && item !== word);
  const isNew =
    !ingredientWords.has(word.word) && !isBackground(word.word) && !/(?:est|ing)$/.test(word.word);
  const plain = others.every((item) => ingredientWords.has(item.word) || /^[o?.!]$/.test(item.letter));
  return isNew && plain ? refuse(unknownIngredient(`${word.word} ${name.word}`), 1) : undefined;
};

/** What a message would mean as a question about one ingredient. */
export const claimIngredient = (reading: Reading): Claim | undefined => {
  const about = aspectOf(reading);
  const asks = about !== undefined || asking.some((word) => reading.words.has(word));
  const board = boardOf(reading.items);
  const [name, second] = board.items.filter((item) => item.letter === 'i');
  if (second || isUnsuited(reading, about)) return undefined;
  if (!name) return nameless(reading, asks, about);
  const strange = asks ? strangeKind(board, name) : undefined;
  if (strange) return strange;
  if (!isPlain(board, name, reading, about)) return undefined;
  if (asks) return namedClaim(name, 2.2, about);
  return namedClaim(name, 1.5, lastAsked(reading)?.about);
};
