import type { Wearer } from '../../core/check/limits.ts';
import type { Reading } from '../reading.ts';
import { takeDay, takeRegion, withWatched } from './check-parts.ts';
import { takeWearer } from './check-wearer.ts';
import type { Item } from './item.ts';
import { boardOf } from './target.ts';

/** A line of a recipe as it stands in the midst of talk: "20 % beeswax", "beeswax: 20 g". */
interface Line {
  readonly amount: Item;
  readonly name: string;
  /** Where it begins and is over, its name included. */
  readonly from: number;
  readonly to: number;
}

/** Where a line ends: a sign, a dash with spaces round it, another line's "and" or "with". */
const boundary = /[,;:?!()\n]|\.(?=\s|$)|\s[-–—]\s|\s(?:and|with|plus|then)\s/g;

/** Words with which talk goes on right behind a name. */
const talk =
  /(?<![\w'])(?:is|are|was|be|been|it|it's|its|it'll|that|that's|this|they|them|which|so|because|for|on|in|at|as|to|into|please|pls|thanks|ok|okay|all right|alright|right|fine|good|safe|would|will|could|can|may|do|does|should|i|we|my|the|how|what|any|if|yes|no|or|now|only|goes|there|lips?|balm|melted|together)(?![\w'])/i;

/** A whole of so much, and no line of it. */
const whole =
  /^(?:(?:of|my|our|the|an?|lip|whole|total)\s+)*(?:balms?|salves?|batch|sticks?|recipe|mix|total|whole|oil phase)\b/i;

const lettered = /\p{L}/u;
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

interface Place {
  readonly from: number;
  readonly to: number;
}

const isName = (name: string): boolean => lettered.test(name) && name.split(/\s+/).length <= mostWords;

/** "Ginger oil (the essential one)": which of the two oils is meant. */
const essential = (text: string, at: number): boolean =>
  /^\s*\((?:the |an? )?essential(?: oil| one)?\)/i.test(text.slice(at, at + 30));

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
    const oil = essential(text, end) ? after.replace(/\s+oil$/i, '').concat(' essential oil') : after;
    return { amount, name: oil, from: amount.from, to: text.indexOf(after, amount.to) + after.length };
  }
  const start = Math.max(since, bounds.findLast(({ to }) => to <= amount.from)?.to ?? 0);
  const before = nameBefore(text.slice(start, amount.from));
  return isName(before) ? { amount, name: before, from: start, to: amount.to } : undefined;
};

const linesAt = (text: string, amounts: readonly Item[]): readonly (Line | 'whole' | undefined)[] => {
  const bounds = boundsIn(text, amounts);
  let since = 0;
  return amounts.map((amount, at) => {
    const line = lineAt(text, amounts, at, bounds, since);
    since = typeof line === 'object' ? line.to : amount.to;
    return line;
  });
};

/** The lines that a text's amounts stand in, each with its name; those without one are left out. */
export const linesAmong = (text: string, amounts: readonly Item[]): readonly Line[] =>
  linesAt(text, amounts).filter((line): line is Line => typeof line === 'object');

/** "Only 0.1 g now. … 0.1 g sweet fennel oil": spoken of before it stands in its line. */
const isSpokenOf = (amount: Item, lines: readonly Line[]): boolean =>
  lines.some((line) => line.amount.value === amount.value && line.amount.unit === amount.unit);

/** What else a message with a recipe in it may ask for. */
const otherwise =
  /\b(?:scale|tins? of|pots? of|jars? of|sticks? of|melting point|when does|how (?:much|many|long|hot|warm|hard|soft)|price|cost|label|swap|replace|instead of|save|plot|chart|curve|temperature|crayons?|candles?|eat|infusions?|infuse|macerat\w*|vegan version|weigh out|design|expire|best before|poured|sold|workshop|survive|cheaper|substitute|double (?:it|the|this|that)|halve|lot)\b/i;
const asksForLook =
  /\blips?\b|\b(?:check|look|ok|okay|fine|safe|all ?right|good(?! (?:morning|afternoon|evening|day))|wrong|allowed|yes or no|against (?:it|that|this)|warn|too much|over the top|give away|does (?:this|it|that) work)\b/i;

/** "Is that safe on lips?", "have I got this right for lips?": a look, whatever else the words around it would make. */
const asksOnLips =
  /\b(?:safe|ok|okay|fine|right|good|suitable|allowed|use)\b[^.?!\n]{0,20}\b(?:on|for) (?:the |my |our )?lips\b[^.!\n]{0,20}\?|\b(?:check|look at) (?:it|this|that)\b|\b(?:ok|okay|fine|all ?right|safe|good) to (?:give|sell|use|hand|share|make|pour)\b|\blips?\b[^\n]{0,200}\b(?:ok|okay|fine|right|alright|good|safe)\s*\?\s*$/i;

/** True where a recipe that stands in talk is surely to be looked at. */
export const surelyToLookAt = ({ text }: Reading): boolean => asksOnLips.test(text);

const shareOf = ({ letter, value }: Item): number => (letter === '%' ? (value ?? 0) : Number.NaN);

/** Shares that make a whole, or amounts that can be weighed or counted. */
const isWhole = (lines: readonly Line[]): boolean => {
  const shares = lines.map(({ amount }) => shareOf(amount));
  if (shares.every(Number.isNaN)) return true;
  const sum = shares.reduce((total, share) => total + (Number.isNaN(share) ? 0 : share), 0);
  return sum > 98 && sum < 101;
};

const vague =
  /\b(?:pinch|dash|splash|dollop|drizzle|squeeze|touch|handful|spoonful|(?:a )?(?:bit|few|little) (?:of|drops)|some|to 100|the rest|topped up)\b/i;

/** "… and a splash of milk": something among the lines that has no amount, so that the list would not be all of it. */
const hasMore = ({ text, items }: Reading, lines: readonly Line[]): boolean => {
  const from = Math.min(...lines.map((line) => line.from));
  const last = Math.max(...lines.map((line) => line.to));
  const to = last + text.slice(last).search(/[.?!;\n(]|$/);
  const isLine = (place: Place): boolean =>
    lines.some((line) => place.from < line.to && place.to > line.from);
  const names = withWatched(items, text).filter(({ letter }) => letter === 'i');
  return (
    vague.test(text.slice(from, to)) ||
    names.some((item) => item.from >= from && item.to <= to && !isLine(item))
  );
};

const leastLines = 2;
const mostItems = 120;

/**
 * "I have lemon verbena oil left over, can it go in? 20 % beeswax, 79.7 % olive oil, 0.3 % …, all for lips": the lines of a
 * recipe that is handed over to be looked at in the midst of talk, one beside the other as a list. Undefined where an
 * amount has no name, the shares are no whole, or the message asks for something else.
 */
export const listInTalk = (reading: Reading): string | undefined => {
  const { text, items } = reading;
  if (items.length > mostItems || otherwise.test(text) || !asksForLook.test(text)) return undefined;
  if (items.some(({ letter }, at) => letter === 'R' || (letter === 'n' && items[at + 1]?.letter === 'c')))
    return undefined;
  const amounts = items.filter(({ letter, value }) => /[gvd%p]/.test(letter) && value !== undefined);
  const read = linesAt(text, amounts);
  const lines = read.filter((line): line is Line => line !== undefined && line !== 'whole');
  const nameless = amounts.filter((_amount, at) => read[at] === undefined);
  if (!nameless.every((amount) => isSpokenOf(amount, lines))) return undefined;
  if (lines.length < leastLines || !isWhole(lines) || hasMore(reading, lines)) return undefined;
  return lines.map(({ amount, name }) => `${text.slice(amount.from, amount.to)} ${name}`).join(', ');
};

const forWhom: Readonly<Record<Wearer, string>> = {
  anyone: '',
  pregnant: ' for someone pregnant',
  babies: ' for babies',
  children: ' for children',
};

/** The same as a plain wish for a look, with whom it is for, where and since when. */
export const lookInTalk = (reading: Reading): string | undefined => {
  const list = listInTalk(reading);
  if (list === undefined) return undefined;
  const board = boardOf(reading.items);
  const wearer = takeWearer(board, reading.text);
  const region = takeRegion(board, reading.text);
  const day = takeDay(board, reading.text);
  return `check ${list}${wearer ? forWhom[wearer] : ''}${region ? ` in ${region}` : ''}${day ? ` on ${day}` : ''}`;
};
