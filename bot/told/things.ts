import { lotKey } from '../../core/bench/codes.ts';
import type { Slot } from '../likeness/features.ts';
import { takePourFigures } from '../readers/batch-figures.ts';
import type { BenchReading } from '../readers/bench-reading.ts';
import { type BenchText, readBenchText } from '../readers/bench-text.ts';
import { countsPeople, isGroupNumber } from '../readers/group-number.ts';
import type { Item } from '../readers/item.ts';
import { letters } from '../readers/lexicon.ts';
import { houseCode } from '../readers/lot-shapes.ts';
import type { LotSaid } from '../readers/lots.ts';
import { perJar } from '../readers/per-jar.ts';
import { oncePerReading, type Reading } from '../reading.ts';
import type { Place } from '../understand.ts';
import { moneyIn, slotOf, stretchesIn, withoutClock } from './stretches.ts';

/** The things a message tells of, in their order, and what is told besides them of a pour. */
export interface Things {
  /** The message as it was typed, without the time of day. */
  readonly whole: string;
  readonly text: BenchText;
  readonly slots: readonly Slot[];
  /** Items that are no thing and have to be words of talk. */
  readonly loose: readonly Item[];
  /** ", bath 75 C, weighed out 371 g": told of a pour, and where. */
  readonly figures: string;
  readonly figuresAt: readonly Place[];
}

/** A code of our own scheme is a batch's, also where it is only going to be one. */
const kindOf = ({ kind, code }: LotSaid): 'batch' | 'lot' | 'new' =>
  kind === 'new' && houseCode.test(code) ? 'batch' : kind;

const ofLot = (said: LotSaid): Slot => slotOf(kindOf(said), said.code, said);

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

/** "24 Winter balms", "10 more Winter balm". */
const isOfName = (items: readonly Item[], at: number): boolean => {
  const [item, next, third] = items.slice(at, at + 3);
  const holds = items.some(({ letter }) => amount.test(letter));
  const name = /^(?:more|further|extra|another|new)$/.test(next?.word ?? '') ? third : next;
  return holds && item?.letter === letters.number && name?.letter === letters.recipe;
};

/** "18 x 15 ml", "12 of Winter balm", "6 of 26-KIVO" (codes are made into "_"): what is counted is not said. */
const isBareCount = (items: readonly Item[], at: number, text: string): boolean => {
  const [item, next, third] = items.slice(at, at + 3);
  if (
    next?.letter === letters.times &&
    (third?.letter === letters.recipe || amount.test(third?.letter ?? ''))
  )
    return true;
  // "Twenty 30 g pots".
  if (amount.test(next?.letter ?? '') && third?.letter === letters.container) return true;
  if (isOfName(items, at)) return true;
  return next?.letter === letters.of && third?.letter === letters.recipe
    ? true
    : /^(?: more| others?| further)? of (?:the |our |my |those |these )?_/i.test(
        text.slice(item?.to ?? 0, (item?.to ?? 0) + 24),
      );
};

const isCounting = ({ letter, fraction, value }: Item): boolean =>
  letter === letters.number && !fraction && value !== undefined;

/** A count without its containers: they stand elsewhere, or are tins. */
const bareCountAt = (items: readonly Item[], at: number, text: string): Run | undefined => {
  const item = items[at];
  if (!item) return undefined;
  const isSized = items[at + 2]?.letter === letters.container;
  const isCode = !isSized && (text.charAt(item.to + 4) === '_' || !/[Rgv]/.test(items[at + 2]?.letter ?? ''));
  const holders = items.find(({ letter }) => letter === letters.container)?.word ?? 'tins';
  const said =
    isSized || isOfName(items, at) ? `${item.value} ${holders}` : `${item.value}${isCode ? '' : ' tins'}`;
  return { slot: slotOf('count', said, item), length: 1 };
};

const countAt = (items: readonly Item[], at: number, text: string): Run | undefined => {
  const item = items[at];
  if (!item || !isCounting(item)) return undefined;
  let next = at + 1;
  while (next < at + 3 && (items[next]?.letter === letters.times || adjective.test(items[next]?.word ?? '')))
    next += 1;
  const holder = items[next];
  if (holder?.letter === letters.container) {
    const slot = slotOf('count', `${item.value} ${holder.word}`, { from: item.from, to: holder.to });
    return { slot, length: next + 1 - at };
  }
  return isBareCount(items, at, text) ? bareCountAt(items, at, text) : undefined;
};

/** "A tin of 26-KIVO", "one little jar", "Leo's pot of 26-KIVO", "that cracked pot of 26-KIVO". */
const oneBefore = /\b(?:an?|one|the last|another|a single|just one|only one)(?: [a-z]+)? $/i;
const oneOfBefore = /\b(?:that|this|the|my|his|her|\p{Lu}\p{L}+'s)(?: [a-z]+)? $/u;

const oneAt = (item: Item, text: string): Slot | undefined => {
  if (item.letter !== letters.container || /s$/.test(item.word)) return undefined;
  const said = text.slice(Math.max(0, item.from - 30), item.from);
  const isOf = /^ of (?:the )?_/.test(text.slice(item.to, item.to + 9));
  const before = oneBefore.exec(said) ?? (isOf ? oneOfBefore.exec(said) : null);
  return before
    ? slotOf('count', `1 ${item.word}`, { from: item.from - before[0].length, to: item.to })
    : undefined;
};

const isInside = ({ from, to }: Place, all: readonly Place[]): boolean =>
  all.some((place) => from < place.to && to > place.from);

/** What one item is a thing of, by itself. */
const thingOf = (item: Item, text: string, isKindOnly: boolean): Slot | undefined => {
  const said = text.slice(item.from, item.to);
  if (item.letter === letters.recipe && item.recipe) return slotOf('R', item.recipe, item);
  if (item.letter === letters.ingredient && !(item.generic && isKindOnly))
    return slotOf('i', said, item, { ingredients: item.ingredients ?? [] });
  return amount.test(item.letter) ? slotOf('g', said, item) : oneAt(item, text);
};

interface Scanned {
  readonly slots: readonly Slot[];
  readonly loose: readonly Item[];
}

/** "Run 2:", "pour no. 3": which one it was. */
const isNumbered = ({ letter, from, to }: Item, text: string): boolean =>
  letter === letters.number &&
  /\b(?:run|pour|batch|session|round|lesson|trial|mix)(?: (?:no\.?|number))? $/i.test(
    text.slice(Math.max(0, from - 20), from),
  ) &&
  !/^ (?:tins?|jars?|pots?|tubes?|sticks?|x|of)\b/i.test(text.slice(to, to + 8));

const scanned = (rest: Reading, taken: readonly Item[]): Scanned => {
  const slots: Slot[] = [];
  const loose: Item[] = [];
  const items = rest.items.filter(
    (item) =>
      !taken.includes(item) &&
      !countsPeople(item, rest.text) &&
      !isGroupNumber(item, rest.text) &&
      !isNumbered(item, rest.text),
  );
  // "The herb garden got 3 tins": only a kind of thing, and part of a name or talk.
  const isKindOnly = items.some(
    ({ letter, generic }) => letter === letters.container || (letter === letters.ingredient && !generic),
  );
  for (let at = 0; at < items.length; at += 1) {
    const item = items[at] as Item;
    const run = countAt(items, at, rest.text);
    const slot = run?.slot ?? thingOf(item, rest.text, isKindOnly);
    if (slot) slots.push(slot);
    else loose.push(item);
    at += (run?.length ?? 1) - 1;
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

const readThings = (message: Reading): Things | undefined => {
  const reading = perJar(withoutClock(message));
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
    whole: reading.text,
    text,
    slots: withoutTwice(slots, reading, bench.rest.text),
    loose: loose.filter((item) => !isInside(item, slots)),
    figures: figuresText(taken),
    figuresAt: taken.items,
  };
};

/** The things in a message, read once; undefined where it has none that a telling is about. */
export const thingsIn: (message: Reading) => Things | undefined = oncePerReading(readThings);
