import type { Item } from './item.ts';

/** A line of a recipe as it stands in the midst of talk: "20 % beeswax", "beeswax: 20 g". */
export interface Line {
  readonly amount: Item;
  readonly name: string;
  /** Where it begins and is over, its name included. */
  readonly from: number;
  readonly to: number;
}

/** Where a line ends: a sign, a dash with spaces round it, another line's "and" or "with". */
const boundary = /[,;:?!()\n]|\.(?=\s|$)|\s[-–—]\s|\s(?:and|with|plus|then)\s/g;

/** Words with which talk goes on right behind a name. */
export const talk =
  /(?<![\w'])(?:is|are|was|be|been|it|it's|its|it'll|that|that's|this|they|them|which|so|because|for|on|in|at|as|to|into|please|pls|thanks|ok|okay|all right|alright|right|fine|good|safe|would|will|could|can|may|do|does|should|i|we|my|the|how|what|any|if|yes|no|or|now|only|goes|there|lips?|balm|melted|together)(?![\w'])/i;

/** A whole of so much, and no line of it. */
const whole =
  /^(?:(?:of|my|our|the|an?|lip|whole|total)\s+)*(?:balms?|salves?|batch|sticks?|recipe|mix|total|whole|oil phase)\b/i;

export const lettered = /\p{L}/u;
const mostWords = 6;

const trimmed = (text: string): string =>
  text.replace(/^[\s:=*•·-]+(?:(?:of|the|a|an)\s+)*|^\s*(?:of|the|a|an)\s+/i, '').replace(/[\s:=-]+$/, '');

/** The name behind an amount, up to where talk goes on. */
const nameAfter = (text: string): string => {
  const plain = trimmed(text);
  const at = talk.exec(plain)?.index ?? plain.length;
  return trimmed(plain.slice(0, at));
};

/** The name before an amount, from where talk ends: what stands alone behind "I read" is no name. */
const nameBefore = (text: string): string => {
  let plain = text.replace(/(?:\s+(?:at|is|are|in|with))?[\s:=-]*$/i, '');
  const said = plain;
  for (let found = talk.exec(plain); found; found = talk.exec(plain))
    plain = plain.slice(found.index + found[0].length);
  return plain !== said && /^\s*\S+$/.test(plain) && /\b(?:i|we|you|they)\b/i.test(said)
    ? ''
    : trimmed(plain);
};

const boundsIn = (text: string, amounts: readonly Item[]): readonly Place[] => [
  { from: 0, to: 0 },
  ...[...text.matchAll(boundary)]
    .map((match) => ({ from: match.index, to: match.index + match[0].length }))
    .filter(({ from, to }) => !amounts.some((amount) => from < amount.to && to > amount.from)),
  { from: text.length, to: text.length },
];

export interface Place {
  readonly from: number;
  readonly to: number;
}

const isName = (name: string): boolean => lettered.test(name) && name.split(/\s+/).length <= mostWords;

/** "Ginger oil (the essential one)": which of the two oils is meant. */
const essentialAt = (text: string, at: number): string =>
  /^\s*\((?:the |an? )?essential(?: oil| one)?\)/i.exec(text.slice(at, at + 30))?.[0] ?? '';

/** The line of the amount at `at`; what stands before `since` belongs to lines before. */
const lineAt = (
  text: string,
  amounts: readonly Item[],
  at: number,
  bounds: readonly Place[],
  since: number,
): Line | 'whole' | undefined => {
  const amount = amounts[at] as Item;
  const end = Math.min(
    amounts[at + 1]?.from ?? text.length,
    bounds.find(({ from }) => from >= amount.to)?.from ?? text.length,
  );
  const behind = text.slice(amount.to, end);
  if (whole.test(behind.trim())) return 'whole';
  const after = nameAfter(behind);
  if (isName(after)) {
    const said = essentialAt(text, end);
    const oil = said ? after.replace(/\s+oil$/i, '').concat(' essential oil') : after;
    const to = said ? end + said.length : text.indexOf(after, amount.to) + after.length;
    return { amount, name: oil, from: amount.from, to };
  }
  const start = Math.max(since, bounds.findLast(({ to }) => to <= amount.from)?.to ?? 0);
  const before = nameBefore(text.slice(start, amount.from));
  return isName(before) ? { amount, name: before, from: start, to: amount.to } : undefined;
};

export const linesAt = (text: string, amounts: readonly Item[]): readonly (Line | 'whole' | undefined)[] => {
  const bounds = boundsIn(text, amounts);
  let since = 0;
  return amounts.map((amount, at) => {
    const line = lineAt(text, amounts, at, bounds, since);
    since = typeof line === 'object' ? line.to : amount.to;
    return line;
  });
};

/** What lines of a recipe are measured by. */
export const amountsIn = (items: readonly Item[]): readonly Item[] =>
  items.filter(({ letter, value }) => /[gvd%p]/.test(letter) && value !== undefined);

/** The lines that a text's amounts stand in, each with its name; those without one are left out. */
export const linesAmong = (text: string, amounts: readonly Item[]): readonly Line[] =>
  linesAt(text, amounts).filter((line): line is Line => typeof line === 'object');
