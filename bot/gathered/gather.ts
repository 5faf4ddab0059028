import { datedFeaturesOf, type Features, featuresOf, type Slot } from '../likeness/features.ts';
import { isCalledOff, isToldOnly } from '../readers/called-off.ts';
import type { Item } from '../readers/item.ts';
import { pointedNames } from '../readers/pointed-name.ts';
import type { Reading } from '../reading.ts';
import { blanked, readAgain } from '../understand.ts';
import { agreesWith, isIdle } from './agrees.ts';
import { uncovered } from './covered.ts';
import { filled } from './fit.ts';
import { type Form, isIn, shelfOf, type Use, usesIn, withWishes } from './use.ts';
import { allUses } from './uses.ts';

/** A message read as a plain form that puts the things in it to the use its words name. */
export interface Gathered {
  readonly reading: Reading;
  readonly plain: string;
  /** The topic it goes on from, which has to read it. */
  readonly after?: string;
}

interface Placed {
  readonly use: Use;
  readonly form: Form;
}

const byShelf = new Map<string, Placed[]>();
const uses = (): ReadonlyMap<string, readonly Placed[]> => {
  if (byShelf.size > 0) return byShelf;
  for (const use of allUses.flatMap(usesIn)) {
    for (const form of use.forms) {
      const shelf = shelfOf(form.slots);
      const others = byShelf.get(shelf);
      if (others) others.push({ use, form });
      else byShelf.set(shelf, [{ use, form }]);
    }
  }
  return byShelf;
};

const ends = /[.!?]+(?=\s|$)|\n+/g;
const substance = /[RigvdptrcMLHSn%]/;
const matters =
  /\b(?:don'?t|cancel|stop|never ?mind|forget|scratch that|wait|not|nuts?|allerg\w{1,3}|vegans?|child|children|kids?|baby|pregnan\w{1,3})\b/i;

/** The message without the sentences that hold nothing and ask nothing. */
const withoutAsides = (reading: Reading): Reading => {
  const stops = [...reading.text.matchAll(ends)].map((match) => match.index + match[0].length);
  const bounds = [...stops, reading.text.length];
  const sentences = bounds.map((to, at) => ({ from: bounds[at - 1] ?? 0, to }));
  const kept = sentences.filter(({ from, to }) => {
    const said = reading.text.slice(from, to);
    const holds = reading.items.some(
      (item) => item.from >= from && item.to <= to && substance.test(item.letter),
    );
    return holds || matters.test(said) || /\?\s*$/.test(said);
  });
  if (kept.length === 0 || kept.length === sentences.filter(({ from, to }) => from < to).length)
    return reading;
  const said = kept.map(({ from, to }) => reading.text.slice(from, to));
  return readAgain(said.map((each) => `${each.trim()}${/\n\s*$/.test(each) ? '\n' : ' '}`).join(''), reading);
};

const ratioInWords =
  /\bone (?:part )?(?:to|in|of \w+ to) (three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty)\b(?: parts)?/gi;
const parts: Readonly<Record<string, number>> = {
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  twelve: 12,
  fifteen: 15,
  twenty: 20,
};
/** A telegram's full stops. */
const withStops = (text: string): string =>
  /[a-z]/.test(text) ? text : text.replace(/(?<=\S\s+\S+)\s+STOP\b/g, '.');

/** "A litre of olive oil" to work with, "a walnut allergy". */
const onePack = /\ban? (lit(?:re|er)|kilo|kg|pound|ounce)(?= of\b)/gi;
const someNut = /\b(?:walnut|hazelnut|almond|cashew|pecan|macadamia|brazil nut)s?(?= allerg)/gi;

const degrees = /(\d)\s?degrees?\b(?!\s+(?:[cf]\b|celsius|centigrade|fahrenheit))/gi;

/** "One to eight" for 1:8, "36 degrees" for 36 °C: what stands alone here is a share or a heat. */
const withFiguresInWords = (reading: Reading): Reading => {
  const text = withStops(reading.text)
    .replace(ratioInWords, (_, word: string) => `1:${parts[word.toLowerCase()]}`)
    .replace(degrees, '$1 °C')
    .replace(onePack, '1 $1')
    .replace(someNut, 'nut');
  return text === reading.text ? reading : readAgain(text, reading);
};

const holders = /^nR(c[oe@]?[vg]|[vg]c)/;
const apart = /nco(R)[@,:(]?([gv])(?!o?i)/;

/** "30 tins of hand balm at 15 g" is 30 tins of 15 g of it. */
const together = (reading: Reading, { index, 0: said }: RegExpExecArray): Reading => {
  const { items, text } = reading;
  const [count, holder, , name] = items.slice(index, index + 4);
  const size = items[index + said.length - 1];
  if (!count || !holder || !name?.recipe || !size) return reading;
  const held = `${text.slice(count.from, holder.to)} of ${text.slice(size.from, size.to)} of ${name.recipe}`;
  return readAgain(`${text.slice(0, count.from)}${held}${text.slice(size.to)}`, reading);
};

/** "24 15 ml hand balm tins" is 24 tins of 15 ml of it. */
const sizeFirst = (reading: Reading, at: number): Reading => {
  const { items, text } = reading;
  const [count, size, name, holder] = items.slice(at, at + 4);
  if (!count || !size || !name?.recipe || !holder) return reading;
  const said = (item: Item): string => text.slice(item.from, item.to);
  const tins = `${said(count)} ${said(holder)} of ${said(size)} of ${name.recipe}`;
  return readAgain(`${text.slice(0, count.from)}${tins}${text.slice(holder.to)}`, reading);
};

/** "24 hand balm tins of 15 ml" is 24 tins of 15 ml of hand balm. */
const withHoldersTogether = (reading: Reading): Reading => {
  const { items, text } = reading;
  const shape = items.map(({ letter }) => (letter.length === 1 ? letter : '?')).join('');
  const swapped = /n[vg]Rc/.exec(shape);
  if (swapped) return sizeFirst(reading, swapped.index);
  const split = apart.exec(shape);
  if (split) return together(reading, split);
  const at = shape.search(/nR(?:c[oe@]?[vg]|[vg]c)/);
  const [count, name, held] = [items[at], items[at + 1], items[at + 2]];
  if (!count || !name?.recipe || !held) return reading;
  const length = holders.exec(shape.slice(at))?.[1]?.length ?? 0;
  const to = items[at + 1 + length]?.to ?? held.to;
  const tins = `${text.slice(count.from, count.to)} ${text.slice(held.from, to)} of ${name.recipe}`;
  return readAgain(`${text.slice(0, count.from)}${tins}${text.slice(to)}`, reading);
};

/** What the things in a message could be put to, by their kinds alone; where more words have to name it first. */
export const possibleUses = (slots: readonly Slot[]): readonly Placed[] =>
  (uses().get(shelfOf(slots)) ?? []).toSorted((a, b) => b.use.cues.length - a.use.cues.length);

/** The things in a message that a use has to account for. */
export const thingsIn = ({ slots }: Features): readonly Slot[] => slots.filter((slot) => !isIdle(slot));

/** What a use lacks to be what a message means: words that name it, or that it can account for. */
export const lacking = (use: Use, reading: Reading, slots: readonly Slot[]): readonly string[] => {
  const around = blanked(reading.text, slots);
  return [
    ...use.cues.flatMap((cue, at) => (isIn(cue, around) ? [] : [`cue ${at}`])),
    ...(use.after && use.after !== reading.last?.topic ? [`after ${use.after}`] : []),
    ...(use.never && isIn(use.never, around) ? ['a word it must not have'] : []),
    ...uncovered(use, reading, slots),
  ];
};

export const plainFor = (
  { plain, slots: open }: Form,
  text: string,
  slots: readonly Slot[],
): string | undefined =>
  filled(withWishes(plain, blanked(text, slots)), open, slots, text, agreesWith(plain, text));

const formsFor = (reading: Reading, features: Features): Pick<Gathered, 'plain' | 'after'>[] => {
  const slots = thingsIn(features);
  return possibleUses(slots).flatMap(({ use, form }) => {
    if (lacking(use, reading, slots).length > 0) return [];
    const said = plainFor(form, reading.text, slots);
    return said === undefined ? [] : [{ plain: said, ...(use.after ? { after: use.after } : {}) }];
  });
};

/** The message as uses are looked for in it. */
export const forUses = (message: Reading): Reading =>
  withHoldersTogether(pointedNames(withFiguresInWords(withoutAsides(message))).reading);

/**
 * Plain forms that account for every thing in a message, however it is worded, where a word in it says what they are
 * to be put to; in the order the uses are listed.
 */
export const gathered = (message: Reading): readonly Gathered[] => {
  if (isCalledOff(message.text) || isToldOnly(message.text)) return [];
  const reading = forUses(message);
  const looks = [...featuresOf(reading), ...datedFeaturesOf(reading)];
  const plains = new Map(
    looks.flatMap((features) => formsFor(reading, features)).map((found) => [found.plain, found]),
  );
  return [...plains.values()].map((found) => ({ ...found, reading: readAgain(found.plain, reading) }));
};
