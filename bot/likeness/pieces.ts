import { ingredientById, isAroma } from '../../core/ingredients.ts';
import type { Item } from '../readers/item.ts';
import { letters } from '../readers/lexicon.ts';

/** What a saying leaves open, and a message fills: a recipe, an ingredient, an amount. */
export const slotKinds = [
  'R',
  'i',
  'herb',
  'oil',
  'wax',
  'butter',
  'aroma',
  'g',
  'v',
  '%',
  't',
  'r',
  'd',
  'n',
  'tins',
  'size',
  'region',
  'q',
  'lot',
  'date',
  // Only in what is told (bot/told): a batch, a new lot's code, several lots, a number of containers, a best before, money, a name.
  'batch',
  'new',
  'lots',
  'count',
  'best',
  'paid',
  'whom',
] as const;
export type SlotKind = (typeof slotKinds)[number];

const ingredientKinds = new Set<string>(['i', 'herb', 'oil', 'wax', 'butter', 'aroma'] satisfies SlotKind[]);

/** True for an ingredient, of whatever kind. */
export const isIngredientKind = (kind: string): boolean => ingredientKinds.has(kind);

/** What kind of slot an ingredient fills. */
export const slotKindOf = (id: string): SlotKind => {
  const found = ingredientById(id);
  if (!found) return 'i';
  if (isAroma(found)) return 'aroma';
  if (found.kind === 'liquid-oil') return 'oil';
  return found.kind === 'wax' || found.kind === 'butter' || found.kind === 'herb' ? found.kind : 'i';
};

const ingredientKind = ({ infusedWith, ingredients }: Item): SlotKind =>
  infusedWith ? 'oil' : slotKindOf(ingredients?.[0] ?? '');

const ofLetter: Readonly<Record<string, SlotKind>> = {
  R: 'R',
  g: 'g',
  v: 'v',
  '%': '%',
  t: 't',
  r: 'r',
  d: 'd',
  n: 'n',
};

const kindOf = (item: Item): SlotKind | undefined =>
  item.letter === letters.ingredient ? ingredientKind(item) : ofLetter[item.letter];

/** Stretches of items that are one thing: a written-out recipe, "24 tins of 15 ml", "15 ml tins". */
const stretches: readonly (readonly [SlotKind, RegExp])[] = [
  ['R', /(?:[g%vdpn]o?i|Qo?i|i[g%vdpQ])(?:[,A;T\n+-]{0,3}(?:[g%vdpn]o?i|Qo?i|i[g%vdpQ])){1,40}/g],
  ['tins', /nx?c[oe@]?[vg]|nx?[vg]c|n[ox][vg]/g],
  ['size', /[vg]c|c[oe@]?[vg]/g],
];

/** The letters of a message's items, one for each. */
export const shapeOf = (items: readonly Item[]): string =>
  items.map(({ letter }) => (letter.length === 1 ? letter : '?')).join('');

interface Stretch {
  readonly kind: SlotKind;
  readonly length: number;
}

/** Two amounts with their ingredients may be a recipe, or "40 g calendula and 200 g sunflower oil" to steep. */
const mostInPair = 9;
const isPair = (stretch: string): boolean =>
  stretch.length <= mostInPair && stretch.match(/i/g)?.length === 2;

const stretchesIn = (shape: string, pairsApart: boolean): ReadonlyMap<number, Stretch> => {
  const found = new Map<number, Stretch>();
  const taken = new Set<number>();
  const matches = stretches.flatMap(([kind, pattern]) =>
    [...shape.matchAll(pattern)].map(({ 0: match, index }) => ({ kind, match, index })),
  );
  for (const { kind, match, index } of matches) {
    const places = Array.from(match, (_, at) => index + at);
    if (places.some((place) => taken.has(place)) || (pairsApart && kind === 'R' && isPair(match))) continue;
    for (const place of places) taken.add(place);
    found.set(index, { kind, length: match.length });
  }
  return found;
};

/** How a message is looked at: a name that is only a kind ("oil") as a word, two lines as two things. */
export interface Look {
  readonly kindsAreWords: boolean;
  readonly pairsApart: boolean;
}

const looks: readonly Look[] = [
  { kindsAreWords: false, pairsApart: false },
  { kindsAreWords: true, pairsApart: false },
  { kindsAreWords: false, pairsApart: true },
  { kindsAreWords: true, pairsApart: true },
];

/** "Oil", "infused oil": a kind of thing more than a thing. */
const isKind = ({ generic, ingredients }: Item): boolean =>
  generic === true || ingredients?.[0] === 'infused-oil';

/** The looks that see a message differently. */
export const looksAt = (items: readonly Item[]): readonly Look[] => {
  const hasKinds = items.some(isKind);
  const shape = shapeOf(items);
  const hasPairs = stretches.some(
    ([kind, pattern]) => kind === 'R' && shape.match(pattern)?.some((match) => isPair(match)),
  );
  return looks.filter(
    ({ kindsAreWords, pairsApart }) => (hasKinds || !kindsAreWords) && (hasPairs || !pairsApart),
  );
};

/** "A kilo", "a tin", "one tin": a pack that a price goes by or the like, no amount. */
const isOne = ({ letter, word, value }: Item, next: Item | undefined): boolean =>
  /^[gvn]$/.test(letter) && value === 1 && (/^an?$/.test(word) || (word === 'one' && next?.letter === 'c'));

/** One thing of a message, or a word of it; `last` is the last item of a longer one. */
export interface Piece {
  readonly kind?: SlotKind;
  readonly item: Item;
  readonly last: Item;
}

/** A message as the things in it that could fill a slot and the words between them. */
export const piecesOf = (items: readonly Item[], look: Look): Piece[] => {
  const found = stretchesIn(shapeOf(items), look.pairsApart);
  const pieces: Piece[] = [];
  for (let at = 0; at < items.length; at += 1) {
    const item = items[at] as Item;
    const stretch = found.get(at);
    const isWord = (look.kindsAreWords && isKind(item)) || isOne(item, items[at + 1]);
    const kind = stretch?.kind ?? (isWord ? undefined : kindOf(item));
    at += (stretch?.length ?? 1) - 1;
    pieces.push({ ...(kind ? { kind } : {}), item, last: items[at] ?? item });
  }
  return pieces;
};
