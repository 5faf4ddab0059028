import { type BookState, benchOf } from '../core/book.ts';
import type { Settings } from '../core/settings.ts';
import { partTalk } from './readers/asides.ts';
import { withCoinsJoined, withPoundsOfMoney } from './readers/coins.ts';
import { cueWords } from './readers/cues.ts';
import { withExclusions } from './readers/exclusions.ts';
import { withHouseOils } from './readers/house-oil.ts';
import { nameReader } from './readers/ingredient-names.ts';
import { readItems } from './readers/items.ts';
import { keysIn } from './readers/name-keys.ts';
import { withNumbersCorrected } from './readers/number-corrected.ts';
import { picked } from './readers/picked.ts';
import { recipeNames } from './readers/recipe-names.ts';
import { corrected } from './readers/spelling.ts';
import { tidy } from './readers/tidy.ts';
import { type Token, tokens } from './readers/tokens.ts';
import type { Last, Reading } from './reading.ts';

/** The message with slips in its carrying words put right; names are left alone. */
const correctedText = (text: string, list: readonly Token[]): string => {
  let plain = text;
  for (const token of [...list].reverse()) {
    const word = token.kind === 'word' ? corrected(token.word) : token.word;
    if (word !== token.word) plain = plain.slice(0, token.from) + word + plain.slice(token.to);
  }
  return plain;
};

type Around = Pick<Reading, 'settings' | 'recipes' | 'bench' | 'at' | 'last'>;

const readPlain = (typed: string, around: Around): Reading => {
  const { settings, recipes, bench, at, last } = around;
  // A name that would say something else says nothing to the readers; `choose` puts it back into what they make of it.
  const plain = recipes.veils.veiled(typed);
  const list = tokens(plain);
  const { keys, places } = keysIn(list);
  const plainItems = withExclusions(readItems(list, nameReader({ list, keys, places, recipes })));
  const all = bench.lots.size === 0 ? plainItems : withHouseOils(plainItems, bench, []);
  const { items, aside } = partTalk(all, cueWords, plain, recipes.hasWord);
  return {
    text: plain,
    corrected: correctedText(plain, list),
    tokens: list,
    items,
    aside,
    words: new Set([
      ...list.filter((token) => token.kind === 'word').map((token) => token.word),
      ...all.map((item) => item.word),
    ]),
    settings,
    recipes,
    bench,
    at,
    ...(last ? { last } : {}),
  };
};

/** Reads a message for a group: plain characters, tokens, items, with the group's recipe names known. */
export const understand = (
  text: string,
  state: BookState,
  settings: Settings,
  before: Last | undefined,
  at: number,
): Reading => {
  const typed = tidy(text);
  const meant = withNumbersCorrected(typed);
  const { text: plain, last } = picked(withPoundsOfMoney(withCoinsJoined(meant)), before);
  const denies = meant !== typed && /\bnot\b/i.test(typed) && !/\bnot\b/i.test(meant);
  const reading = readPlain(plain, {
    settings,
    recipes: recipeNames(state),
    bench: benchOf(state),
    at,
    ...(last ? { last } : {}),
  });
  return denies ? { ...reading, denies } : reading;
};

/** Another text in place of a message, read in the same group, at the same time, after the same messages. */
export const readAgain = (text: string, reading: Reading): Reading => readPlain(tidy(text), reading);

/** A stretch of a message's text. */
export interface Place {
  readonly from: number;
  readonly to: number;
}

/** The text with stretches of it made into signs that say nothing; everything else keeps its place. */
export const blanked = (text: string, places: readonly Place[]): string =>
  places.reduce(
    (plain, { from, to }) => plain.slice(0, from) + '_'.repeat(Math.max(0, to - from)) + plain.slice(to),
    text,
  );

/**
 * The same message read again without some stretches of it, so that a lot code or a date is not taken for an amount
 * ("lot K 12 g", "lot K12 500 g"). Places in the text stay the same.
 */
export const readingWithout = (reading: Reading, places: readonly Place[]): Reading =>
  places.length === 0 ? reading : readPlain(blanked(reading.text, places), reading);
