import type { Item } from './item.ts';
import { furtherShapes, shapes } from './substitute-shapes.ts';
import { type Board, take } from './target.ts';

/** What a message says about one thing in the place of another, before the names are settled. */
export type Phrase =
  | {
      readonly kind: 'swap';
      readonly from: Item;
      readonly to: Item;
      /** "Substitute B for A" is often said the other way round: the recipe tells. */
      readonly eitherWay?: true;
    }
  /** What can stand in for it? */
  | { readonly kind: 'what'; readonly what: Item }
  /** A name that comes in, with nothing said about what goes out. */
  | { readonly kind: 'lone'; readonly to: Item }
  /** A name to leave out, with nothing in its place. */
  | { readonly kind: 'gone'; readonly gone: Item }
  /** Words where a name should be. */
  | { readonly kind: 'strange'; readonly words: string }
  /** Only some of it. */
  | { readonly kind: 'partly' };

const letters: Readonly<Record<string, string>> = {
  s: 'swap swaps swapped swapping swop exchange exchanged exchanging switch switched switching trade trading change changed changing',
  r: 'replace replaces replaced replacing',
  u: 'substitute substituted substituting sub subbing',
  a: 'substitutes substitution substitutions alternative alternatives replacement replacements equivalent equivalents stand',
  L: 'take taking leave leaving',
  M: 'remove removing omit drop skip',
  P: 'put putting add adding use used',
  O: 'out',
  f: 'for against',
  X: 'without',
  n: "can't cannot cant don't dont haven't havent couldn't couldnt",
  x: 'not',
  b: 'by through',
  B: 'becomes become becoming became were',
  h: 'have got plenty lots',
  k: 'only',
  l: 'gone finished',
  t: 'try trying tried',
};
const letterByWord = new Map(
  Object.entries(letters).flatMap(([letter, words]) => words.split(' ').map((word) => [word, letter])),
);

/** How a thing was bought or how much of it is meant: all of it, unless a number stands there. */
const silent = new Set(
  `all whole entire dried fresh refined unrefined virgin organic raw natural pure pellets yellow white some more other another good better best
  nice vegan suitable possible similar any of-the my have got which what`.split(/\s+/),
);

interface Sign {
  readonly letter: string;
  /** First and last place on the board: "in place of" is one sign. */
  readonly from: number;
  readonly to: number;
}

const amount = /[gvd%pnrM]/;

const letterOf = ({ letter, word }: Item): string => {
  if (letter === 'i' || letter === 'R') return letter;
  const known = letterByWord.get(word);
  if (known) return known;
  if (amount.test(letter)) return '#';
  return /[TWIAoN,w>.;!]/.test(letter) ? letter : '?';
};

/** "instead of", "in place of", "in lieu of", "rather than": one sign `d`; "instead" on its own is `D`. */
const insteadAt = (board: Board, at: number): Sign | undefined => {
  const word = (offset: number): string =>
    board.taken[at + offset] ? '' : (board.items[at + offset]?.word ?? '');
  if (word(0) === 'instead')
    return word(1) === 'of' ? { letter: 'd', from: at, to: at + 1 } : { letter: 'D', from: at, to: at };
  if (word(0) === 'than' || word(0) === 'besides') return { letter: 'd', from: at, to: at };
  if (/^tak(?:es?|ing)$/.test(word(0)) && word(1) === 'place' && word(2) === 'of')
    return { letter: 'd', from: at, to: at + 2 };
  if (word(0) !== 'in' || word(2) !== 'of') return undefined;
  return ['place', 'lieu', 'stead'].includes(word(1)) ? { letter: 'd', from: at, to: at + 2 } : undefined;
};

/** "Swap beeswax 4 candelilla", as people type it: a bare 4 between two names. */
const isFour = ({ items }: Board, at: number): boolean => {
  const [item, before, after] = [items[at], items[at - 1], items[at + 1]];
  return item?.letter === 'n' && item.value === 4 && before?.letter === 'i' && after?.letter === 'i';
};

const signsOf = (board: Board): readonly Sign[] => {
  const signs: Sign[] = [];
  for (let at = 0; at < board.items.length; at += 1) {
    const item = board.items[at];
    if (!item || board.taken[at] || item.letter === '\n' || item.letter === '-' || silent.has(item.word))
      continue;
    const letter = isFour(board, at) ? 'f' : letterOf(item);
    const sign = insteadAt(board, at) ?? { letter, from: at, to: at };
    signs.push(sign);
    at = sign.to;
  }
  return signs;
};

/** Words that no one takes for the name of an ingredient. */
const notNames = new Set(
  `else something anything what which it that this one work works use good free`.split(' '),
);

const itemAt = (board: Board, signs: readonly Sign[], group: readonly [number, number] | undefined) =>
  group ? board.items[signs[group[0]]?.from ?? -1] : undefined;

const wordsAt = (board: Board, signs: readonly Sign[], [from, to]: readonly [number, number]): string => {
  const items = signs.slice(from, to).flatMap((sign) => board.items.slice(sign.from, sign.to + 1));
  const words = items.map((item) => item.word);
  return words.some((word) => notNames.has(word)) ? '' : words.join(' ');
};

type Groups = Readonly<Record<string, readonly [number, number] | undefined>>;
type At = (...names: readonly string[]) => Item | undefined;

const swapOf = (at: At): Phrase | undefined => {
  const [from, to] = [at('from'), at('to')];
  if (from && to) return { kind: 'swap', from, to };
  const [other, by] = [at('from2'), at('to2')];
  return other && by ? { kind: 'swap', from: other, to: by, eitherWay: true } : undefined;
};

const oneOf = (at: At, asks: boolean): Phrase | undefined => {
  const what = at('what', 'out') ?? (asks ? at('open', 'lack', 'lack2', 'lack3') : undefined);
  if (what) return { kind: 'what', what };
  const kind = at('kind');
  if (kind) return kind.generic ? { kind: 'what', what: kind } : undefined;
  const gone = at('gone', 'gone2', 'gone3');
  if (gone) return { kind: 'gone', gone };
  const to = at('lone', 'lone2', 'lone3', 'open');
  return to ? { kind: 'lone', to } : undefined;
};

const phraseOf = (
  board: Board,
  signs: readonly Sign[],
  groups: Groups,
  asks: boolean,
): Phrase | undefined => {
  if (groups.part) return { kind: 'partly' };
  if (groups.strange) {
    const words = wordsAt(board, signs, groups.strange);
    return words ? { kind: 'strange', words } : undefined;
  }
  const at: At = (...names) => {
    const name = names.find((each) => groups[each]);
    return name === undefined ? undefined : itemAt(board, signs, groups[name]);
  };
  return swapOf(at) ?? oneOf(at, asks);
};

/** Takes what was matched off the board; a recipe's name, or its lines, in the middle of it stay. */
const takeSigns = (
  board: Board,
  signs: readonly Sign[],
  range: readonly [number, number],
  lines: readonly [number, number] | undefined,
): void => {
  for (const [at, { from, to, letter }] of signs.entries()) {
    const isLine = lines && at >= lines[0] && at < lines[1];
    if (at >= range[0] && at < range[1] && letter !== 'R' && !isLine) take(board, from, to + 1);
  }
};

const takeShapes = (board: Board, list: readonly RegExp[], asks: boolean): Phrase | undefined => {
  const signs = signsOf(board);
  const text = signs.map(({ letter }) => letter).join('');
  for (const shape of list) {
    const match = shape.exec(text);
    const groups = match?.indices?.groups;
    const phrase = match && groups ? phraseOf(board, signs, groups, asks) : undefined;
    if (!match || !groups || !phrase) continue;
    takeSigns(board, signs, [match.index, match.index + match[0].length], groups.lines);
    return phrase;
  }
  return undefined;
};

/**
 * Finds what the message says about replacing something and takes it off the board.
 * @param asks true when the message asks what or which: "what can I swap for A" against "swap it for B".
 */
export const takePhrase = (board: Board, asks: boolean): Phrase | undefined =>
  takeShapes(board, shapes, asks);

/** Further swaps of the same message, in their order; anything but a swap stays on the board. */
export const takeFurther = (board: Board): readonly Extract<Phrase, { kind: 'swap' }>[] => {
  const found: Extract<Phrase, { kind: 'swap' }>[] = [];
  for (;;) {
    const before = [...board.taken];
    const phrase = takeShapes(board, furtherShapes, false);
    if (phrase?.kind !== 'swap') {
      board.taken.splice(0, board.taken.length, ...before);
      return found;
    }
    found.push(phrase);
  }
};
