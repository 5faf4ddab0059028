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
] as const;
export type SlotKind = (typeof slotKinds)[number];

const kindOf = (item: Item): SlotKind => {
  const found = ingredientById(item.ingredients?.[0] ?? '');
  if (item.infusedWith) return 'oil';
  if (!found) return 'i';
  if (isAroma(found)) return 'aroma';
  if (found.kind === 'liquid-oil') return 'oil';
  return found.kind === 'wax' || found.kind === 'butter' || found.kind === 'herb' ? found.kind : 'i';
};

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

/** Stretches of items that are one thing: a written-out recipe, "24 tins of 15 ml", "15 ml tins". */
const stretches: readonly (readonly [SlotKind, RegExp])[] = [
  ['R', /(?:[g%vdpn]o?i|Qo?i|i[g%vdpQ])(?:[,A;\n+-]{0,3}(?:[g%vdpn]o?i|Qo?i|i[g%vdpQ])){1,40}/g],
  ['tins', /nx?c[oe@]?[vg]|nx?[vg]c/g],
  ['size', /[vg]c|c[oe@]?[vg]/g],
];

interface Stretch {
  readonly kind: SlotKind;
  readonly length: number;
}

const stretchesIn = (shape: string): ReadonlyMap<number, Stretch> => {
  const found = new Map<number, Stretch>();
  const taken = new Set<number>();
  for (const [kind, pattern] of stretches) {
    for (const { 0: match, index } of shape.matchAll(pattern)) {
      const places = Array.from(match, (_, at) => index + at);
      if (places.some((place) => taken.has(place))) continue;
      for (const place of places) taken.add(place);
      found.set(index, { kind, length: match.length });
    }
  }
  return found;
};

/** One thing of a message, or a word of it; `last` is the last item of a longer one. */
export interface Piece {
  readonly kind?: SlotKind;
  readonly item: Item;
  readonly last: Item;
}

/** A message as the things in it that could fill a slot and the words between them. */
export const piecesOf = (items: readonly Item[]): Piece[] => {
  const shape = items.map(({ letter }) => (letter.length === 1 ? letter : '?')).join('');
  const found = stretchesIn(shape);
  const pieces: Piece[] = [];
  for (let at = 0; at < items.length; at += 1) {
    const item = items[at] as Item;
    const stretch = found.get(at);
    const kind = stretch?.kind ?? (item.letter === letters.ingredient ? kindOf(item) : ofLetter[item.letter]);
    at += (stretch?.length ?? 1) - 1;
    pieces.push({ ...(kind ? { kind } : {}), item, last: items[at] ?? item });
  }
  return pieces;
};
