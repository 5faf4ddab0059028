import type { Wearer } from '../../core/check/limits.ts';
import type { Reading } from '../reading.ts';
import { takeDay, takeRegion, withWatched } from './check-parts.ts';
import { takeWearer } from './check-wearer.ts';
import type { Item } from './item.ts';
import { amountsIn, type Line, lettered, linesAt, type Place, talk } from './list-lines.ts';
import { boardOf } from './target.ts';

/** "Only 0.1 g now. … 0.1 g sweet fennel oil": spoken of before it stands in its line. */
const isSpokenOf = (amount: Item, lines: readonly Line[]): boolean =>
  lines.some((line) => line.amount.value === amount.value && line.amount.unit === amount.unit);

/** What else a message with a recipe in it may ask for. */
const otherwise =
  /\b(?:scale|tins? of|pots? of|jars? of|sticks? of|melting point|when does|how (?:much|many|long|hot|warm|hard|soft)|price|cost|label|swap|replace|instead of|save|plot|chart|curve|temperature|crayons?|candles?|eat|infusions?|infuse|macerat\w*|vegan version|weigh out|design|expire|best before|poured|sold|workshop|survive|cheaper|substitute|double (?:it|the|this|that)|halve|lot)\b/i;
/** "Check …" says what is wanted, whatever else is told. */
const commanded =
  /^\W*(?:(?:please|pls|hi|hello|hey|pipkin|can|could|would|will|you|now|so|ok)\W+){0,4}check\b/i;
const asksForLook =
  /\blips?\b|\b(?:check|look|ok|okay|fine|safe|all ?right|good(?! (?:morning|afternoon|evening|day))|wrong|allowed|yes or no|against (?:it|that|this)|warn|too much|over the top|give away|does (?:this|it|that) work)\b/i;

/** "Is that safe on lips?", "have I got this right for lips?": a look, whatever else the words around it would make. */
const asksOnLips =
  /\b(?:safe|ok|okay|fine|right|good|suitable|allowed|use)\b[^.?!\n]{0,20}\b(?:on|for) (?:the |my |our )?lips\b[^.!\n]{0,20}\?|\b(?:check|look at) (?:it|this|that)\b|\b(?:have|take) a look\b|\bif (?:it|this|that)(?:'s| is) (?:ok|okay|fine|safe|right|all ?right|good)\b|\bcheck for (?:the |my |our )?lips\b|\b(?:ok|okay|fine|all ?right|safe|good) to (?:give|sell|use|hand|share|make|pour)\b|\blips?\b[^\n]{0,200}\b(?:ok|okay|fine|right|alright|good|safe)\s*\?\s*$/i;

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

/** What stands beside the lines in their sentence, part by part. */
const besides = (text: string, lines: readonly Line[], from: number, to: number): readonly string[] => {
  let rest = '';
  let at = from;
  for (const line of lines.toSorted((a, b) => a.from - b.from)) {
    rest += `${text.slice(at, Math.max(at, line.from))},`;
    at = Math.max(at, line.to);
  }
  return `${rest}${text.slice(at, to)}`
    .split(/[,\n]|\s(?:and|plus|with)\s|\s[-–—]\s/)
    .map((part) => part.trim());
};

const fewWords = 3;
/** "… with a hint of aniseed", "for my aunt who likes mint": what it is like, where the lines are a whole already. */
const likeness =
  /\b(?:hint|smell\w*|tastes?|flavou?r\w*|scent\w*|likes?|loves?|hates?|not|no|without|called|it's|mint)\b/i;
const region =
  /^(?:the )?(?:us|usa|uk|gb|eu|europe|canada|australia|ireland|britain|england|scotland|wales|germany|france)$/i;

/** "Goop", "and a thickener": a word or two among the lines that may be one more of them. */
const mayBeLine = (part: string): boolean =>
  lettered.test(part) &&
  part.split(/\s+/).length <= fewWords &&
  !talk.test(part) &&
  !asksForLook.test(part) &&
  !region.test(part);

/** "… and a splash of milk", "…, goop 8": something among the lines that has no amount, so that the list would not be all of it. */
const hasMore = ({ text, items }: Reading, lines: readonly Line[]): boolean => {
  const from = Math.min(...lines.map((line) => line.from));
  const last = Math.max(...lines.map((line) => line.to));
  const to = last + text.slice(last).search(/[.?!;:\n(]|$/);
  const start = from - (/[^.?!;:\n(]*$/.exec(text.slice(0, from))?.[0].length ?? 0);
  const isLine = (place: Place): boolean =>
    lines.some((line) => place.from < line.to && place.to > line.from);
  const isAmong = (item: Item, since: number): boolean =>
    item.from >= since && item.to <= to && !isLine(item);
  return (
    vague.test(text.slice(from, to)) ||
    withWatched(items, text).some(
      (item) => item.letter === 'i' && isAmong(item, from) && !isLikened(text, item, lines),
    ) ||
    items.some(
      (item) => item.letter === 'n' && !item.fraction && /^\d/.test(item.word) && isAmong(item, start),
    ) ||
    besides(text, lines, from, to).some(mayBeLine)
  );
};

const isLikened = (text: string, item: Item, lines: readonly Line[]): boolean => {
  const part = /[^,;\n]*$/.exec(text.slice(0, item.to))?.[0] ?? '';
  return (
    lines.every(({ amount }) => amount.letter === '%') &&
    likeness.test(part) &&
    !/^\s*(?:and|plus)\b/i.test(part)
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
  const plain = commanded.test(text);
  if (items.length > mostItems || !asksForLook.test(text) || (!plain && otherwise.test(text)))
    return undefined;
  if (!plain && items.some(({ letter }) => letter === 'R')) return undefined;
  if (items.some(({ letter }, at) => letter === 'n' && items[at + 1]?.letter === 'c')) return undefined;
  const amounts = amountsIn(items);
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

/** "Is 0.3 % rosemary extract ok in a lip balm? Not the smelly oil, the thick stuff.": one share is asked about, and talk follows. */
const shareInTalk = ({ text, items }: Reading): string | undefined => {
  const amounts = items.filter(({ letter }) => /[gvdpn%]/.test(letter));
  const [first = '', ...more] = text.split(/(?<=\?)\s+/);
  const asks = amounts.length === 1 && amounts[0]?.letter === '%' && /\blip ?balms?\b|\blips\b/i.test(first);
  return asks && first.includes('%') && more.length > 0 ? first : undefined;
};

/** The same as a plain wish for a look, with whom it is for, where and since when. */
export const lookInTalk = (reading: Reading): string | undefined => {
  const list = listInTalk(reading);
  if (list === undefined) return shareInTalk(reading);
  const board = boardOf(reading.items);
  const wearer = takeWearer(board, reading.text);
  const where = takeRegion(board, reading.text);
  const day = takeDay(board, reading.text);
  return `check ${list}${wearer ? forWhom[wearer] : ''}${where ? ` in ${where}` : ''}${day ? ` on ${day}` : ''}`;
};
