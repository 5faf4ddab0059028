import type { WithoutKind } from '../../core/substitute/without.ts';
import type { Item } from './item.ts';
import { type Board, take } from './target.ts';

/** What a message wants left out: kinds, and names that have to be settled against the recipe. */
export interface Withouts {
  readonly kinds: readonly WithoutKind[];
  readonly names: readonly Item[];
}

const kindWords: Readonly<Record<WithoutKind, string>> = {
  nuts: 'tree nuts|tree nut|tree-nut|tree-nuts|nut oils|nut oil|nuts|nut|nut product|nut products',
  peanut: 'peanuts|peanut|peanut oil|groundnut',
  animal: 'animal products|animal product|animal ingredients|animal fats|animal fat|animals|animal',
  bee: 'bee products|bee product|bees|bee',
  wool: 'wool|wool products',
  palm: 'palm oil|palm oils|palm',
  coconut: 'coconut oil|coconut oils|coconuts|coconut',
  scent:
    'essential oils|essential oil|fragrances|fragrance|scents|scent|scented oils|perfumes|perfume|aroma|aromas|flavours|flavour|flavoring|flavouring|smell',
  soy: 'soy|soya|soy products|soybean',
  sesame: 'sesame|sesame oil',
  wheat: 'wheat|gluten',
  mineral: 'mineral wax|mineral waxes|mineral oil|petroleum|petrochemicals|paraffin wax',
};
const kindByPhrase = new Map(
  Object.entries(kindWords).flatMap(([kind, phrases]) =>
    phrases.split('|').map((phrase) => [phrase, kind as WithoutKind] as const),
  ),
);

/** Words that are a wish by themselves. */
const whole: Readonly<Record<string, WithoutKind>> = {
  vegan: 'animal',
  vegans: 'animal',
  unscented: 'scent',
  scentless: 'scent',
  unperfumed: 'scent',
  nutfree: 'nuts',
};

interface Found {
  readonly next: number;
  readonly kind?: WithoutKind;
  readonly name?: Item;
}

const wordAt = (board: Board, at: number): string => {
  const item = board.items[at];
  return item && !board.taken[at] ? item.word : '';
};

/** The kind whose words start at `at`, longest first; the items between hyphens count as one word after the other. */
const kindAt = (board: Board, at: number): Found | undefined => {
  for (const length of [3, 2, 1]) {
    const words = Array.from({ length }, (_, offset) => wordAt(board, at + offset));
    const kind = words.includes('') ? undefined : kindByPhrase.get(words.join(' ').replace(/ - /g, '-'));
    if (kind) return { kind, next: at + length };
  }
  const item = board.items[at];
  if (!item || board.taken[at] || item.letter !== 'i') return undefined;
  return { next: at + 1, ...(/\bnut\b/.test(item.word) ? { kind: 'nuts' } : { name: item }) };
};

const skipSigns = (board: Board, at: number, shape: RegExp): number => {
  let next = at;
  while (next < board.items.length && !board.taken[next] && shape.test(board.items[next]?.word ?? ''))
    next += 1;
  return next;
};

const leadsOut = new Set('minus excluding exclude except avoiding avoid remove omit skip drop'.split(' '));

/** "Can't have nuts", "doesn't eat animal products". */
const negated = new Set(
  `can't cannot cant don't dont doesn't doesnt won't mustn't not isn't isnt aren't`.split(' '),
);
const afterHave = (board: Board, at: number): number =>
  skipSigns(
    board,
    at + 1,
    /^(have|eat|use|allow|permit|accept|contain|like|tolerate|take|stand|touch|want|do|any|the|with|an?|from|made|of)$/,
  );

/** Where a list of things to leave out starts after `at`; undefined when none does. */
const listStart = (board: Board, at: number): number | undefined => {
  const item = board.items[at];
  if (!item || board.taken[at]) return undefined;
  if (negated.has(item.word)) return kindAt(board, afterHave(board, at))?.kind && afterHave(board, at);
  if ((item.letter === 'N' && item.word !== 'zero') || leadsOut.has(item.word))
    return skipSigns(board, at + 1, /^(any|the|added|all|every)$/);
  const second = wordAt(board, at + 1);
  if (item.word === 'free' && (second === 'of' || second === 'from')) return at + 2;
  return item.word === 'allergic' && second === 'to' ? at + 2 : undefined;
};

/** Between two things of one list: "without nuts, palm or coconut". A new line of a recipe is not part of it. */
const joins = /^(,|and|&|or|nor|also|no|without|\/)$/;

const takeList = (board: Board, at: number): Found[] => {
  const list: Found[] = [];
  let from = listStart(board, at);
  let end = at;
  while (from !== undefined) {
    const found = kindAt(board, from);
    if (!found) break;
    list.push(found);
    end = found.next;
    const joined = skipSigns(board, found.next, joins);
    from = joined > found.next ? joined : undefined;
  }
  if (list.length > 0) take(board, at, end);
  return list;
};

const afterwards = new Set(['free', 'allergy', 'allergies', 'allergic', 'intolerance', 'intolerant']);

/** "nut-free", "palm free", "nut allergy", "nut and coconut free". */
const takeFree = (board: Board, at: number): Found[] => {
  const found = kindAt(board, at);
  if (!found) return [];
  const next = skipSigns(board, found.next, /^-$/);
  if (afterwards.has(wordAt(board, next))) {
    take(board, at, next + 1);
    return [found];
  }
  const joined = found.kind ? skipSigns(board, found.next, /^(and|&|or)$/) : found.next;
  const more = joined > found.next ? takeFree(board, joined) : [];
  if (more.length > 0) take(board, at, found.next);
  return more.length > 0 ? [found, ...more] : [];
};

const takeWhole = (board: Board, at: number): Found[] => {
  const word = wordAt(board, at);
  if (word === 'plant' || word === 'vegetable') {
    const next = skipSigns(board, at + 1, /^-$/);
    if (!/^(?:based|alternatives?|substitutes?|replacements?|version)$/.test(wordAt(board, next))) return [];
    if (wordAt(board, next) !== 'based') {
      take(board, at, at + 1);
      return [{ kind: 'animal', next: at + 1 }];
    }
    take(board, at, next + 1);
    return [{ kind: 'animal', next: next + 1 }];
  }
  const kind = Object.hasOwn(whole, word) ? whole[word] : undefined;
  if (!kind) return [];
  take(board, at, at + 1);
  return [{ kind, next: at + 1 }];
};

const taking = new Set(['take', 'leave', 'keep', 'taking', 'leaving']);

/** "Take the smell out", "leave out the scent": a kind beside the word out. */
const takeOut = (board: Board, at: number): Found[] => {
  if (!taking.has(wordAt(board, at))) return [];
  const before = wordAt(board, at + 1) === 'out';
  const found = kindAt(board, before ? at + 2 : at + 1);
  if (!found?.kind || (!before && wordAt(board, found.next) !== 'out')) return [];
  take(board, at, before ? found.next : found.next + 1);
  return [found];
};

/** "…, can you do it without them": says again what was said to be left out. */
const takeAgain = (board: Board): void => {
  for (const [at, item] of board.items.entries()) {
    const next = board.items[at + 1];
    if (item.letter === 'N' && !board.taken[at] && (!next || /[,.;?!\n]/.test(next.letter)))
      take(board, at, at + 1);
  }
};

/** Takes everything off the board that says what to leave out. */
export const takeWithouts = (board: Board): Withouts => {
  const found: Found[] = [];
  for (let at = 0; at < board.items.length; at += 1) {
    if (board.taken[at]) continue;
    for (const taken of [takeOut, takeList, takeWhole, takeFree]) {
      const list = taken(board, at);
      found.push(...list);
      if (list.length > 0) break;
    }
  }
  if (found.length > 0) takeAgain(board);
  return {
    kinds: [...new Set(found.flatMap(({ kind }) => (kind ? [kind] : [])))],
    names: found.flatMap(({ name }) => (name ? [name] : [])),
  };
};
