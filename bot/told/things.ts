import { lotKey } from '../../core/bench/codes.ts';
import type { Slot } from '../likeness/features.ts';
import type { SlotKind } from '../likeness/pieces.ts';
import { takePourFigures } from '../readers/batch-figures.ts';
import type { BenchReading } from '../readers/bench-reading.ts';
import { type BenchText, readBenchText } from '../readers/bench-text.ts';
import { countsPeople } from '../readers/group-number.ts';
import type { Item } from '../readers/item.ts';
import { letters } from '../readers/lexicon.ts';
import type { LotSaid } from '../readers/lots.ts';
import type { Reading } from '../reading.ts';
import { type Place, readAgain } from '../understand.ts';

/** The things a message tells of, in their order, and what is told besides them of a pour. */
export interface Things {
  readonly text: BenchText;
  readonly slots: readonly Slot[];
  /** Items that are no thing and have to be words of talk. */
  readonly loose: readonly Item[];
  /** ", bath 75 C, weighed out 371 g": told of a pour, and where. */
  readonly figures: string;
  readonly figuresAt: readonly Place[];
}

const slotOf = (kind: SlotKind, text: string, { from, to }: Place, more: Partial<Slot> = {}): Slot => ({
  kind,
  text,
  before: '',
  after: '',
  from,
  to,
  ...more,
});

const ofLot = (said: LotSaid): Slot =>
  slotOf(said.kind === 'batch' ? 'batch' : said.kind === 'lot' ? 'lot' : 'new', said.code, said);

/** A day ahead is a best before where something came in, and else no day that anything was done on. */
const daysOf = ({ days, today, rest }: BenchReading): readonly Slot[] | undefined => {
  const comesIn = rest.items.some(({ letter }) => letter === letters.ingredient);
  const isBest = days.map(({ role, past }) => role === 'best-before' || (comesIn && past > today));
  if (days.some(({ past }, at) => !isBest[at] && past > today)) return undefined;
  return days.map((day, at) =>
    isBest[at] ? slotOf('best', day.future, day) : slotOf('date', day.past, day),
  );
};

/** Words that may stand between a number and its containers: "two dented tins". */
const adjective =
  /^(?:dented|broken|full|whole|lovely|fine|nice|spare|unsold|open|opened|remaining|single|cracked|squashed|leaking|sticky|lost|extra|further|more|other|last|first|pretty|beautiful|fresh|new|white|black|golden|silver|labelled|finished|wee|mini|tiny|small|smallish|big|large|tall|round|square|amber|bent|damaged|spoilt|spoiled|dusty|heavy|complete|good|neat)$/;

const amount = /^[gv]$/;

interface Run {
  readonly slot: Slot;
  readonly length: number;
}

const countAt = (items: readonly Item[], at: number, text: string): Run | undefined => {
  const item = items[at];
  if (!item || item.letter !== letters.number || item.fraction || item.value === undefined) return undefined;
  let next = at + 1;
  while (next < at + 3 && (items[next]?.letter === 'x' || adjective.test(items[next]?.word ?? ''))) next += 1;
  const holder = items[next];
  // "18 x 15 ml".
  if (items[next - 1]?.letter === 'x' && amount.test(holder?.letter ?? ''))
    return { slot: slotOf('count', `${item.value} tins`, { from: item.from, to: item.to }), length: 1 };
  if (holder?.letter === letters.container)
    return {
      slot: slotOf('count', `${item.value} ${holder.word}`, { from: item.from, to: holder.to }),
      length: next + 1 - at,
    };
  // "6 of 26-KIVO": codes are made into "_".
  return /^(?: more| others?| further)? of (?:the |our |my |those |these )?_/i.test(
    text.slice(item.to, item.to + 24),
  )
    ? { slot: slotOf('count', String(item.value), item), length: 1 }
    : undefined;
};

/** "A tin of 26-KIVO", "one little jar". */
const oneBefore = /\b(?:an?|one|another|a single|just one|only one)(?: [a-z]+)? $/i;

const oneAt = (item: Item, text: string): Slot | undefined => {
  if (item.letter !== letters.container || /s$/.test(item.word)) return undefined;
  const before = oneBefore.exec(text.slice(Math.max(0, item.from - 30), item.from));
  return before
    ? slotOf('count', `1 ${item.word}`, { from: item.from - before[0].length, to: item.to })
    : undefined;
};

const allSaid =
  /\b(?:all(?: (?:that was|that is|that's) left)?(?: of)?|the (?:whole )?(?:rest|remainder)(?: of)?|the remaining|everything(?: left)?(?: of)?|the last of|(?:all )?what(?:'s| is| was) left(?: of)?|every last (?:one|bit|drop|gram)(?: of)?)(?: the)?(?= (?:_|(?:tins|jars|pots|tubes|sticks)\b))/gi;
const oneOf =
  /\b(?:one|another(?: one)?|a single one) of (?:the |our |my |those )?(?=_|(?:tins|jars|pots|tubes|sticks)\b)/gi;

const stretchesIn = (text: string, slots: readonly Slot[]): readonly Slot[] => {
  const isWeighed = slots.some(({ kind }) => kind === 'g');
  const found = [
    ...(isWeighed ? [] : [...text.matchAll(allSaid)]).map((match) =>
      slotOf('count', 'all', { from: match.index, to: match.index + match[0].length }),
    ),
    ...[...text.matchAll(oneOf)].map((match) =>
      slotOf('count', '1', { from: match.index, to: match.index + match[0].length }),
    ),
  ];
  return found.filter(({ from, to }) => !slots.some((slot) => slot.from < to && slot.to > from));
};

const coin =
  /(?:[€£$]\s?\d+(?:[.,]\d\d?)?|\d+(?:[.,]\d\d?)?\s?(?:€|£|\$|euros?\b|eur\b|pounds? sterling\b|quid\b|gbp\b|dollars?\b|usd\b)|(?<![\d.,])\d{1,4}[.,]\d\d(?![\d.,]| ?(?:k?g|ml|l|oz|lb|kg)\b))/gi;

const moneyIn = (text: string): readonly Slot[] =>
  [...text.matchAll(coin)].map((match) =>
    slotOf('paid', match[0], { from: match.index, to: match.index + match[0].length }),
  );

const isInside = ({ from, to }: Place, all: readonly Place[]): boolean =>
  all.some((place) => from < place.to && to > place.from);

const scanned = (rest: Reading, taken: readonly Item[]): { slots: Slot[]; loose: Item[] } => {
  const slots: Slot[] = [];
  const loose: Item[] = [];
  const items = rest.items.filter((item) => !taken.includes(item));
  // "The herb garden got 3 tins": only a kind of thing, and part of a name or talk.
  const isKindOnly = items.some(
    ({ letter, generic }) => letter === letters.container || (letter === letters.ingredient && !generic),
  );
  for (let at = 0; at < items.length; at += 1) {
    const item = items[at] as Item;
    const run = countAt(items, at, rest.text);
    const one = run ? undefined : oneAt(item, rest.text);
    if (run) {
      slots.push(run.slot);
      at += run.length - 1;
    } else if (one) slots.push(one);
    else if (item.letter === letters.recipe && item.recipe) slots.push(slotOf('R', item.recipe, item));
    else if (item.letter === letters.ingredient && !(item.generic && isKindOnly))
      slots.push(
        slotOf('i', rest.text.slice(item.from, item.to), item, { ingredients: item.ingredients ?? [] }),
      );
    else if (amount.test(item.letter)) slots.push(slotOf('g', rest.text.slice(item.from, item.to), item));
    else if (!countsPeople(item, rest.text)) loose.push(item);
  }
  return { slots, loose };
};

const isPourLike = ({ items }: Reading): boolean =>
  items.some(({ letter }) => letter === letters.recipe) &&
  items.some(({ letter }) => letter === letters.container);

const figuresText = ({ figures }: ReturnType<typeof takePourFigures>): string =>
  [
    figures.bathC === undefined ? '' : `, bath ${figures.bathC} C`,
    figures.pourC === undefined ? '' : `, poured at ${figures.pourC} C`,
    figures.weighedG === undefined ? '' : `, weighed out ${figures.weighedG} g`,
    figures.filledG === undefined ? '' : `, filled ${figures.filledG} g`,
  ].join('');

/** What is named twice is one thing; an ingredient beside a lot of it, or as what a purchase is for, is none. */
const withoutTwice = (slots: readonly Slot[], { bench }: Reading, text: string): readonly Slot[] => {
  const held = slots.flatMap(({ kind, text: code }) =>
    kind === 'lot' ? [bench.lots.get(lotKey(code))?.ingredient ?? ''] : [],
  );
  const poured = slots.flatMap(({ kind, text: code }) =>
    kind === 'batch' ? [bench.batches.get(lotKey(code))?.name ?? ''] : [],
  );
  return slots.filter((slot, at) => {
    if (slot.kind === 'i' && held.some((id) => slot.ingredients?.includes(id))) return false;
    if (slot.kind === 'R' && poured.includes(slot.text)) return false;
    const isPurpose = /\bfor (?:the|our|my|another|more|an?) $/i.test(
      text.slice(Math.max(0, slot.from - 12), slot.from),
    );
    if (slot.kind === 'i' && isPurpose && slots.some((other) => other !== slot && other.kind === 'i'))
      return false;
    return !slots
      .slice(0, at)
      .some((other) => other.kind === slot.kind && other.text === slot.text && slot.kind !== 'count');
  });
};

/** "From 18:00 to 19:00", "at 3 pm": no amounts of anything. */
const clock =
  /\b(?:(?:at|from|since|by|around|about|till|until|to) )?\d{1,2}(?:[:h]\d\d(?: ?(?:am|pm|h|hrs))?| ?(?:am|pm|o'clock))(?![\d.,%]| ?(?:k?g|ml|l|oz|euros?|eur|c|f|°)\b)/gi;
const withoutClock = (reading: Reading): Reading =>
  /\d(?:[:h]\d\d| ?(?:am|pm|o'clock)\b)/i.test(reading.text)
    ? readAgain(reading.text.replace(clock, ''), reading)
    : reading;

/** The things in a message; undefined where it has none that a telling is about. */
export const thingsIn = (message: Reading): Things | undefined => {
  const reading = withoutClock(message);
  const text = readBenchText(reading);
  const { bench } = text;
  if (
    bench.trouble ||
    text.pictures.length > 0 ||
    bench.rest.items.some(({ upTo }) => upTo !== undefined) ||
    bench.lots.some(({ others }) => others)
  )
    return undefined;
  const taken = isPourLike(bench.rest) ? takePourFigures(bench.rest) : { figures: {}, items: [] };
  const money = moneyIn(bench.rest.text);
  const { slots: found, loose } = scanned(bench.rest, taken.items);
  const own = found.filter((slot) => !isInside(slot, money));
  const days = daysOf(bench);
  if (!days) return undefined;
  const all = [...bench.lots.map(ofLot), ...days, ...own, ...money];
  const slots = [...all, ...stretchesIn(bench.rest.text, all)].toSorted((a, b) => a.from - b.from);
  return {
    text,
    slots: withoutTwice(slots, reading, bench.rest.text),
    loose: loose.filter((item) => !isInside(item, slots)),
    figures: figuresText(taken),
    figuresAt: taken.items,
  };
};
