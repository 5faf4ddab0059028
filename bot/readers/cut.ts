import type { Item } from './item.ts';

const separators = new Set([',', ';', '\n', 'A', '.']);
/** Letters of amounts, the most telling first. */
export const amountRank = 'gvdp%n';
export const isAmount = (item: Item): boolean => amountRank.includes(item.letter);

/** "… 25 % rest castor oil": the rest is a line of its own, comma or not. */
const startsRest = (segment: readonly Item[], item: Item): boolean =>
  item.letter === 'Q' && segment.some(isName) && segment.some(isAmount);

export const isName = (item: Item): boolean => item.letter === 'i';

const isNameOnly = (segment: readonly Item[]): boolean =>
  segment.some(isName) && !segment.some((item) => isAmount(item) || item.letter === 'Q');
const isAmountOnly = (segment: readonly Item[]): boolean => segment.every(isAmount);

/** "Beeswax, 20 g" on a line: the comma stands between a name and its amount, not between two lines. */
const rejoined = (segments: readonly Item[][]): Item[][] => {
  const list: Item[][] = [];
  const names = segments.filter(isNameOnly).length;
  const paired = names > 0 && segments.filter(isAmountOnly).length === names;
  for (const segment of segments) {
    const last = list.at(-1);
    if (paired && last && isAmountOnly(segment) && isNameOnly(last)) last.push(...segment);
    else list.push(segment);
  }
  return list;
};

/** Inside brackets commas separate nothing and unknown words are remarks: "Beeswax (yellow, pellets)". */
const withoutRemarks = (items: readonly Item[]): { items: Item[]; bracketed: ReadonlySet<Item> } => {
  const kept: Item[] = [];
  const bracketed = new Set<Item>();
  let depth = 0;
  for (const item of items) {
    if (item.letter === '(') depth += 1;
    else if (item.letter === ')') depth = Math.max(0, depth - 1);
    else if (depth === 0) kept.push(item);
    else if (!separators.has(item.letter) && !/[wZ]/.test(item.letter)) {
      kept.push(item);
      bracketed.add(item);
    }
  }
  return { items: kept, bracketed };
};

const isHeadless = (name: Item, names: readonly Item[], bracketed: ReadonlySet<Item>): boolean => {
  const better = names.some((other) => other !== name && !other.generic && !bracketed.has(other));
  return better && (name.generic === true || bracketed.has(name));
};

/** "Beeswax (Cera Flava)", "Wax: beeswax", a label name beside the common one: one thing named twice. */
const namesOnce = (segment: readonly Item[], bracketed: ReadonlySet<Item>): Item[] => {
  const names = segment.filter(isName);
  const seen = new Set<string>();
  return segment.filter((item) => {
    if (!isName(item)) return true;
    const id = item.ingredients?.length === 1 ? (item.ingredients[0] ?? '') : '';
    const again = id !== '' && seen.has(id);
    seen.add(id);
    return !again && !isHeadless(item, names, bracketed);
  });
};

/** Cuts items at commas, line breaks and "and"s; remarks in brackets and names said twice are left out. */
export const segmentsOf = (all: readonly Item[]): Item[][] => {
  const { items, bracketed } = withoutRemarks(all);
  const list: Item[][] = [[]];
  for (const item of items) {
    if (separators.has(item.letter)) list.push([]);
    else if (startsRest(list.at(-1) ?? [], item)) list.push([item]);
    else list.at(-1)?.push(item);
  }
  const segments = rejoined(list.filter((segment) => segment.length > 0)).map((segment) =>
    namesOnce(segment, bracketed),
  );
  // "Balm (100 g):" and "(makes about 100 g)" give no line an amount.
  return segments.map((segment) =>
    segment.some(isName) ? segment : segment.filter((item) => !bracketed.has(item) || !isAmount(item)),
  );
};
