import { defined } from '../../core/defined.ts';
import { datedFeaturesOf, type Features, featuresOf, type Slot } from '../likeness/features.ts';
import { isCalledOff, isToldOnly } from '../readers/called-off.ts';
import type { Item } from '../readers/item.ts';
import { pointedNames } from '../readers/pointed-name.ts';
import { holds, matters, sentencesIn } from '../readers/sentences.ts';
import type { Reading } from '../reading.ts';
import { blanked, readAgain } from '../understand.ts';
import { agreesWith, isIdle } from './agrees.ts';
import { uncovered } from './covered.ts';
import { filled } from './fit.ts';
import { type Form, isIn, shelfOf, type Use, withWishes } from './use.ts';
import { allUses } from './uses.ts';

/** A message read as a plain form that puts the things in it to the use its words name. */
export interface Gathered {
  readonly reading: Reading;
  readonly plain: string;
  /** The topic it goes on from, which has to read it. */
  readonly after?: string;
}

/** A longer message is a letter, in which much may be said. */
const mostCharacters = 1500;

interface Placed {
  readonly use: Use;
  readonly form: Form;
}

const byShelf = new Map<string, Placed[]>();
const uses = (): ReadonlyMap<string, readonly Placed[]> => {
  if (byShelf.size > 0) return byShelf;
  for (const use of allUses) {
    for (const form of use.forms) {
      const shelf = shelfOf(form.slots);
      const others = byShelf.get(shelf);
      if (others) others.push({ use, form });
      else byShelf.set(shelf, [{ use, form }]);
    }
  }
  return byShelf;
};

/** "Grams, please." */
const asksIn =
  /\b(?:grams?|ounces|pounds|ml|millilit(?:re|er)s|celsius|fahrenheit|drops|weights?|quantities|amounts|masses)\b/i;

/** The message without the sentences that hold nothing and ask nothing. */
const withoutAsides = (reading: Reading): Reading => {
  const { text } = reading;
  const sentences = sentencesIn(text);
  const kept = sentences.filter((sentence) => {
    const said = text.slice(sentence.from, sentence.to);
    return holds(reading, sentence) || matters.test(said) || asksIn.test(said) || /\?\s*$/.test(said);
  });
  if (kept.length === 0 || kept.length === sentences.length) return reading;
  const said = kept.map(({ from, to }) => text.slice(from, to));
  return readAgain(said.map((each) => `${each.trim()}${/\n\s*$/.test(each) ? '\n' : ' '}`).join(''), reading);
};

const degrees = /(\d)\s?degrees?\b(?!\s+(?:[cf]\b|celsius|centigrade|fahrenheit))/gi;
/** "Tins: 16" in a list. */
const countAfter = /\b(tins?|jars?|pots?|tubes?|sticks?) ?[:=] ?(\d{1,4})\b(?! ?(?:ml|g|oz|x)\b)/gi;
/** "In one tin go 30 ml". */
const inOne =
  /\b(?:(?:in|into) (?:one|a|every) (?:tin|jar|pot|tube|stick) (?:goes|go|fits?)|(?:one|a|every) (?:tin|jar|pot|tube|stick) (?:takes|holds|is for))\b/gi;
const oneOf =
  /(?<![\d€£$] ?)\b(?:an?|one) (?=(?:kilo(?:gram(?:me)?)?|kg|lit(?:re|er)|pound|ounce|pint)s? of (?:(?:the|our|my) )?(?:[\w-]+ ){0,3}(?:balm|salve)\b)/gi;
/** A telegram's full stops. */
const withStops = (text: string): string =>
  /[a-z]/.test(text) ? text : text.replace(/(?<=\S\s+\S+)\s+STOP\b/g, '.');

/** "A litre of olive oil" to work with, "a walnut allergy". */
const onePack = /\ban? (lit(?:re|er)|kilo|kg|pound|ounce)(?= of\b)/gi;
const someNut = /\b(?:walnut|hazelnut|almond|cashew|pecan|macadamia|brazil nut)s?(?= allerg)/gi;

/** "36 degrees" for 36 °C, "a kilo of hand balm" for 1 kg of it. */
const withFigures = (reading: Reading): Reading => {
  const text = withStops(reading.text)
    .replace(degrees, '$1 °C')
    .replace(/\bhalf (?:a )?grams?\b/gi, '0.5 g')
    .replace(countAfter, '$2 $1')
    .replace(inOne, 'each')
    .replace(oneOf, '1 ')
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

/** "I was given kokum butter. Put kokum butter in …": what is spoken of twice is one thing, the last time it is named. */
const isSameThing = (slot: Slot, later: Slot): boolean => {
  if (slot.kind === 'R' || slot.kind === 't') return later.kind === slot.kind && slot.text === later.text;
  const [id, second] = slot.ingredients ?? [];
  return (
    id !== undefined && second === undefined && later.ingredients?.length === 1 && later.ingredients[0] === id
  );
};

/** The things in a message that a use has to account for. */
export const thingsIn = ({ slots }: Features): readonly Slot[] =>
  slots.filter((slot, at) => !isIdle(slot) && !slots.slice(at + 1).some((later) => isSameThing(slot, later)));

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

/** Kinds of things that make no difference to some use. */
const sometimesIdle = ['region', 'size', 'tins', 'n', 'R', 'g'];

/** The things in a message, all of them first; then without one kind, or several, that may be idle. */
const choicesOf = (slots: readonly Slot[]): readonly (readonly Slot[])[] => {
  const choices = [slots];
  for (const kind of sometimesIdle) {
    if (!slots.some((slot) => slot.kind === kind)) continue;
    choices.push(...choices.map((some) => some.filter((slot) => slot.kind !== kind)));
  }
  return choices;
};

type Found = Pick<Gathered, 'plain' | 'after'>;

const formsFor = (reading: Reading, features: Features): Found[] => {
  const all = thingsIn(features);
  return choicesOf(all).flatMap((slots) => {
    const left = all.filter((slot) => !slots.includes(slot));
    return possibleUses(slots).flatMap(({ use, form }): Found[] => {
      if (!left.every(({ kind }) => use.idle.has(kind)) || lacking(use, reading, all).length > 0) return [];
      const plain = plainFor(form, reading.text, slots);
      return plain === undefined ? [] : [{ plain, ...defined({ after: use.after }) }];
    });
  });
};

/** The message as uses are looked for in it. */
export const forUses = (message: Reading): Reading =>
  withHoldersTogether(pointedNames(withoutAsides(pointedNames(withFigures(message)).reading)).reading);

/**
 * Plain forms that account for every thing in a message, however it is worded, where a word in it says what they are
 * to be put to; in the order the uses are listed.
 */
export const gathered = (message: Reading): readonly Gathered[] => {
  if (message.text.length > mostCharacters || isCalledOff(message.text) || isToldOnly(message.text))
    return [];
  const reading = forUses(message);
  const looks = [...featuresOf(reading), ...datedFeaturesOf(reading)];
  const plains = new Map(
    looks.flatMap((features) => formsFor(reading, features)).map((found) => [found.plain, found]),
  );
  return [...plains.values()].map((found) => ({ ...found, reading: readAgain(found.plain, reading) }));
};
