import { ingredientById, isFat } from '../../core/ingredients.ts';
import type { Reading } from '../reading.ts';
import type { Item } from './item.ts';

/** What an amount of an infusion is of: the herb, the oil that goes in, or the oil that is left after straining. */
export type Role = 'herb' | 'oilIn' | 'oilOut';

/** The several herbs a name may stand for: "mint leaves". */
export const herbsOf = (item: Item): readonly string[] =>
  (item.ingredients ?? []).filter((id) => ingredientById(id)?.kind === 'herb');

/** The herb a name stands for here: "lavender" beside oil is the flower, not the essential oil. */
export const herbOf = (item: Item): string | undefined => {
  const herbs = herbsOf(item);
  return herbs.length === 1 ? herbs[0] : undefined;
};

const isInfusedOil = (item: Item): boolean => item.ingredients?.[0] === 'infused-oil';

export const isOil = (item: Item): boolean =>
  !isInfusedOil(item) &&
  (item.ingredients ?? []).some((id) => {
    const found = ingredientById(id);
    return found !== undefined && isFat(found);
  });

export const isAmountItem = (item: Item): boolean => item.letter === 'g' || item.letter === 'v';

/** Letters that may stand between an amount and the name it belongs to. */
const between = /^[oy(:=@"-]$/;
const qualities = new Set(
  'dried dry organic fresh freshly whole crushed chopped crumbled finished strained final carrier base picked wilted'.split(
    ' ',
  ),
);

const passes = (item: Item): boolean => between.test(item.letter) || qualities.has(item.word);

/** "100 g of herb": any herb, told by its kind. */
export const isHerbWord = (item: Item | undefined): boolean =>
  item?.letter === 'w' && /^(?:herbs?|flowers?|petals?|plants?|leaves|blossoms?)$/.test(item.word);

/** "300 g infused sunflower oil": the participle belongs to the name after it. A row's end belongs to nothing. */
const isStopAt = (item: Item, step: 1 | -1): boolean => {
  if (step === 1 && item.letter === 'H') return false;
  return !passes(item) || (step === 1 && /^[\n.;]$/.test(item.letter));
};

/** The name, and its place, that stands next to an amount on one side. */
const neighbour = (items: readonly Item[], from: number, step: 1 | -1): number | undefined => {
  for (let at = from + step; at >= 0 && at < items.length; at += step) {
    const item = items[at];
    if (!item) return undefined;
    if (item.letter === 'i' || isHerbWord(item)) return at;
    if (isStopAt(item, step)) return undefined;
  }
  return undefined;
};

const isH = (item: Item | undefined): boolean => item?.letter === 'H' || item?.letter === 'S';

/** True for "calendula-infused olive oil", "infused olive oil", "olive oil infused with calendula". */
const saysInfused = (items: readonly Item[], at: number): boolean => {
  const skip = items[at + 1]?.letter === '-' ? 2 : 1;
  return isH(items[at - 1]) || isH(items[at + skip]);
};

/** "Lavender infused jojoba", "calendula-infused olive oil": the herb's name is said of the oil. */
const givesOil = (items: readonly Item[], at: number): boolean =>
  (isH(items[at + 1]) || isH(items[at + 2])) &&
  items.slice(at + 1, at + 4).some((each) => each.letter === 'i' && isOil(each));

const roleAt = (items: readonly Item[], at: number | undefined): Role | undefined => {
  const item = at === undefined ? undefined : items[at];
  if (!item || at === undefined) return undefined;
  if (isHerbWord(item)) return 'herb';
  if (isInfusedOil(item)) return 'oilOut';
  if (herbOf(item) && !isOil(item)) return givesOil(items, at) ? 'oilOut' : 'herb';
  if (!isOil(item)) return undefined;
  return saysInfused(items, at) ? 'oilOut' : 'oilIn';
};

const outBefore =
  /\b(?:get|getting|got|gave|left(?: with)?|end(?:ed|ing)? up with|yield(?:s|ed|ing)?|obtain|make(?!\s+(?:it|that)\b)|making|produce|came to|comes to|finish(?:ed)? with|straining(?:\W+\w+){0,2}|(?:i|we|she|he|they) (?:have )?(?:strained|pressed|squeezed|filtered)|out(?!\s+of))\b(?:\W+\w+){0,2}\W*$/i;
const outAfter =
  /^[^,;.?!\n\d]{0,30}?\b(?:out\b|came out|after strain|when strained|strained|finished|at the end|left over|left\b(?! with))/i;

/** "I have 500 g sunflower oil left": what is in the cupboard did not come out of anything. */
const inCupboard = /\b(?:have|has|'ve(?: got)?|got|there(?:'s| is| are))\s+(?:\w+\s+){0,2}$/i;
const leftOnly = /^[^,;\n\d]{0,30}?\bleft\b(?!\s+(?:over|after))/i;

/** True for an amount that is told as what comes out: "to end up with 300 g", "260 g out of …". */
export const comesOut = (reading: Reading, item: Item): boolean => {
  const before = reading.text.slice(Math.max(0, item.from - 40), item.from);
  const after = reading.text.slice(item.to, item.to + 50);
  if (inCupboard.test(before) && leftOnly.test(after)) return false;
  return outBefore.test(before) || outAfter.test(after);
};

const namesFirst = (items: readonly Item[]): boolean => {
  // "My infused oil: 50 g arnica": a heading.
  const isHeading = (item: Item, at: number): boolean => isInfusedOil(item) && items[at + 1]?.letter === ':';
  const first = items.find(
    (item, at) => (item.letter === 'i' && !isHeading(item, at)) || isHerbWord(item) || isAmountItem(item),
  );
  // "How much …" before the amounts turns the order round; after them it only asks.
  const how = items.findIndex((item) => item.word === 'how');
  const asked = how >= 0 && how < items.findLastIndex(isAmountItem);
  return first !== undefined && !isAmountItem(first) && !asked;
};

/** What the question asks for: "how much oil …". */
export const askedRole = (items: readonly Item[]): Role | undefined => {
  const how = items.findIndex((item) => item.word === 'how');
  if (how < 0) return undefined;
  const at = items.findIndex((item, index) => index > how && (item.letter === 'i' || isHerbWord(item)));
  if (at < 0 || at > how + 3) return undefined;
  return items[at]?.generic ? 'oilIn' : roleAt(items, at);
};

/** A lone amount is of whatever is not asked for. */
const loneRole = (asked: Role | undefined): Role => {
  if (asked === 'herb') return 'oilIn';
  return asked === 'oilIn' ? 'herb' : 'oilOut';
};

/** "Infuse 20 g in 160 g olive oil": what goes into an amount of oil is the herb. */
const goesIntoOil = (items: readonly Item[], at: number): boolean => {
  const [joint, amount, ...after] = items.slice(at + 1, at + 6);
  if (items[at]?.letter !== 'g' || !joint || !/[IT]/.test(joint.letter) || !amount || !isAmountItem(amount))
    return false;
  const name = after.find(({ letter }) => !/[oyH]/.test(letter));
  return name !== undefined && isOil(name);
};

const nameAt = (items: readonly Item[], at: number): Role | undefined =>
  items[at]?.letter === 'i' ? roleAt(items, at) : undefined;

/** "My comfrey is dry. 60 g of it, …" and "calendula, 50 g, olive oil": of what was named right before. */
const pointedRole = (reading: Reading, items: readonly Item[], at: number): Role | undefined => {
  const item = items[at];
  const ofThem = /^\s*of (?:them|it|these|those|this|that)\b/i.test(reading.text.slice(item?.to ?? 0));
  const named = items.slice(0, at).findLastIndex(({ letter }) => letter === 'i');
  if (ofThem) return nameAt(items, named);
  const alone = items[at - 1]?.letter === ',' && /^[,.;\n?]?$/.test(items[at + 1]?.letter ?? '');
  const beside = !items.slice(named + 1, at).some(isAmountItem);
  return alone && named >= 0 && beside ? nameAt(items, named) : undefined;
};

export interface RoleRead {
  readonly role: Role;
  /** False when the name beside the amount says it; true when it was inferred and has to be said. */
  readonly inferred: boolean;
}

const haveDry =
  /\bdr(?:y|ied)\b[\s,;]{1,3}(?:(?:and|i|we|she|he)\s){0,3}(?:have|has|got|own)\s(?:(?:about|some)\s)?$/i;

/** "Infusion of plantain in olive oil, I have 45 g": of the herb, where nothing else is said of it. */
const isOwned = ({ text }: Reading, items: readonly Item[], at: number): boolean => {
  const { from = 0, letter } = items[at] ?? {};
  const has = /\b(?:i|we)(?: have|'ve)(?: got)?(?: about| only| around)? $/i.test(
    text.slice(Math.max(0, from - 24), from),
  );
  const isLast = !items.slice(at + 1).some((each) => each.letter === 'i' || /^[og]$/.test(each.letter));
  return (
    letter === 'g' && has && isLast && items.some((each) => nameAt(items, items.indexOf(each)) === 'herb')
  );
};

/** "22 g once it was dry", "plant: rosemary. mass: 55 g. oil: …": of the herb named before. */
const isDried = ({ text }: Reading, items: readonly Item[], at: number): boolean => {
  const { from = 0, to = 0 } = items[at] ?? {};
  const named = items.slice(0, at).findLastIndex(({ letter }) => letter === 'i');
  const isHerb = nameAt(items, named) === 'herb';
  const owned = haveDry.test(text.slice(Math.max(0, from - 40), from));
  if (items[at]?.letter === 'g' && owned && (isHerb || items[named]?.infusedWith)) return true;
  if (items[at]?.letter !== 'g' || !isHerb) return false;
  const dry =
    /^\s+(?:(?:when|once|after|now|all|it|they|was|were|is|are|had|having|being)\s+){0,4}(?:dry|dried|drying)\b/i;
  // "Thyme (dried), 25 g": nothing but how it is between.
  const beside = items
    .slice(named + 1, at)
    .every((each) => /^[,(:)-]$/.test(each.letter) || qualities.has(each.word));
  const ends = /^[\n.;]?$/.test(items[at + 1]?.letter ?? '');
  const row = /\b(?:mass|weight|amount|quantity|herb|plant)\s*[:=]\s*$/i;
  return (
    (beside && ends) ||
    dry.test(text.slice(to, to + 40)) ||
    row.test(text.slice(Math.max(0, from - 20), from))
  );
};

/** What an amount is of, by the name beside it, by what is said about it, or by what is asked for. */
export const roleOf = (reading: Reading, items: readonly Item[], at: number): RoleRead => {
  const item = items[at];
  const sides = namesFirst(items) ? ([-1, 1] as const) : ([1, -1] as const);
  const found = sides
    .map((step) => roleAt(items, neighbour(items, at, step)))
    .find((role) => role !== undefined);
  const out = item !== undefined && comesOut(reading, item);
  if (
    isHerbWord(items[at + 1]) ||
    goesIntoOil(items, at) ||
    isDried(reading, items, at) ||
    isOwned(reading, items, at)
  )
    return { role: 'herb', inferred: false };
  if (found === 'herb' && !(out && /\bout of\b/i.test(reading.text.slice(item.to, item.to + 12)))) {
    return { role: 'herb', inferred: false };
  }
  if (out) return { role: 'oilOut', inferred: false };
  const said = found ?? pointedRole(reading, items, at);
  if (said) return { role: said, inferred: false };
  return { role: loneRole(askedRole(items)), inferred: true };
};

export interface RatioRead {
  readonly ratio?: number;
  readonly items: readonly Item[];
  readonly bad?: true;
  readonly said?: string;
}

const twoParts = (a: number, b: number): Pick<RatioRead, 'ratio' | 'said'> => {
  const ratio = Math.max(a, b) / Math.min(a, b);
  return a > b ? { ratio, said: `I took ${a}:${b} as ${a} parts of oil to ${b} of herb.` } : { ratio };
};

const isOilAfter = (items: readonly Item[], part: Item): boolean => {
  const next = items
    .slice(items.indexOf(part) + 1, items.indexOf(part) + 4)
    .find(({ letter }) => letter === 'i');
  return next !== undefined && !next.generic && isOil(next);
};

const isHerbAfter = (items: readonly Item[], part: Item): boolean => {
  const next = items[items.indexOf(part) + 1];
  return next?.letter === 'i' && herbOf(next) !== undefined;
};

const partsRatio = (items: readonly Item[]): RatioRead | undefined => {
  const parts = items.filter((item) => item.letter === 'p' && item.value);
  const [a, b, c] = parts;
  if (!a?.value || !b?.value || c) return undefined;
  // "2 parts olive oil and 1 part sunflower oil" blends two oils, "2 parts calendula and 1 part lavender" two herbs.
  if (isOilAfter(items, a) && isOilAfter(items, b)) return undefined;
  if (isHerbAfter(items, a) && isHerbAfter(items, b)) return undefined;
  return { ...twoParts(a.value, b.value), items: parts };
};

const plainNumber = (item: Item | undefined): item is Item =>
  item?.letter === 'n' && item.value !== undefined;
/** "One part to ten": the unit said with the first of the two only. */
const firstOfRatio = (item: Item | undefined): boolean =>
  item !== undefined && /[np]/.test(item.letter) && item.value !== undefined;

/** "1 to 8", "one in eight". */
const spokenRatio = (items: readonly Item[]): RatioRead | undefined => {
  for (const [at, item] of items.entries()) {
    if (!firstOfRatio(item) || !item.value || item.value > 3) continue;
    if (item.upTo !== undefined) return { ...twoParts(item.value, item.upTo), items: [item] };
    const joint = items[at + 1];
    const second = items[at + 2];
    if ((joint?.letter === 'T' || joint?.letter === 'I') && plainNumber(second) && second.value) {
      return { ...twoParts(item.value, second.value), items: [item, joint, second] };
    }
  }
  return undefined;
};

/** "Ratio 1/7": a fraction only where a ratio is spoken of. */
const slashRatio = (items: readonly Item[]): RatioRead | undefined => {
  const at = items.findIndex(
    ({ letter, value = 0 }, index) =>
      letter === 'n' && value > 0 && value <= 0.5 && /^ratio/.test(items[index - 1]?.word ?? ''),
  );
  const item = items[at];
  return item?.value ? { ratio: Number((1 / item.value).toFixed(6)), items: [item] } : undefined;
};

/** Herb to oil by weight, as the message says it: "1:8", "1 to 8", "1 part … 8 parts", "10 %". */
export const readRatio = (items: readonly Item[]): RatioRead => {
  const said = items.find((item) => item.letter === 'r');
  if (said) {
    const [a, b, ...more] = said.ratio ?? [];
    if (!a || !b || more.length > 0) return { items: [said], bad: true };
    return { ...twoParts(a, b), items: [said] };
  }
  const spoken = partsRatio(items) ?? slashRatio(items) ?? spokenRatio(items);
  if (spoken) return spoken;
  const [percent, second] = items.filter((item) => item.letter === '%');
  if (!percent?.value || second) return { items: [] };
  return {
    ratio: 100 / percent.value,
    items: [percent],
    said: `I took ${percent.value} % as that much herb to the weight of the oil.`,
  };
};
