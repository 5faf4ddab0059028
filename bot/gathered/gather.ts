import { datedFeaturesOf, type Features, featuresOf, type Slot } from '../likeness/features.ts';
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
const substance = /[RigvdptrcuMLHS%]/;
const matters =
  /\b(?:don'?t|cancel|stop|never ?mind|forget|scratch that|wait|not|nuts?|allerg\w{1,3}|vegans?|child|children|kids?|baby|pregnan\w{1,3})\b/i;

/** "Grams, please." */
const asksIn =
  /\b(?:grams?|ounces|pounds|ml|millilit(?:re|er)s|celsius|fahrenheit|drops|weights?|quantities|amounts|masses)\b/i;

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
    return holds || matters.test(said) || asksIn.test(said) || /\?\s*$/.test(said);
  });
  if (kept.length === 0 || kept.length === sentences.filter(({ from, to }) => from < to).length)
    return reading;
  return readAgain(kept.map(({ from, to }) => reading.text.slice(from, to).trim()).join(' '), reading);
};

const ratioInWords = /\bone to (three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty)\b/gi;
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
const degrees = /(\d)\s?degrees?\b(?!\s+(?:[cf]\b|celsius|centigrade|fahrenheit))/gi;

/** "Tins: 16" in a list. */
const countAfter = /\b(tins?|jars?|pots?|tubes?|sticks?) ?[:=] ?(\d{1,4})\b(?! ?(?:ml|g|oz|x)\b)/gi;
/** "In one tin go 30 ml". */
const inOne =
  /\b(?:(?:in|into) (?:one|a|every) (?:tin|jar|pot|tube|stick) (?:goes|go|fits?)|(?:one|a|every) (?:tin|jar|pot|tube|stick) (?:takes|holds|is for))\b/gi;
const oneOf =
  /(?<![\d€£$] ?)\b(?:an?|one) (?=(?:kilo(?:gram(?:me)?)?|kg|lit(?:re|er)|pound|ounce|pint)s? of (?:(?:the|our|my) )?(?:[\w-]+ ){0,3}(?:balm|salve)\b)/gi;

/** "One to eight" for 1:8, "36 degrees" for 36 °C: what stands alone here is a share or a heat. */
const withFiguresInWords = (reading: Reading): Reading => {
  const text = reading.text
    .replace(ratioInWords, (_, word: string) => `1:${parts[word.toLowerCase()]}`)
    .replace(degrees, '$1 °C')
    .replace(/\bhalf (?:a )?grams?\b/gi, '0.5 g')
    .replace(countAfter, '$2 $1')
    .replace(inOne, 'each')
    .replace(oneOf, '1 ');
  return text === reading.text ? reading : readAgain(text, reading);
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

const formsFor = (reading: Reading, features: Features): string[] => {
  const slots = thingsIn(features);
  return possibleUses(slots).flatMap(({ use, form }) => {
    if (lacking(use, reading, slots).length > 0) return [];
    const said = plainFor(form, reading.text, slots);
    return said === undefined ? [] : [said];
  });
};

/** The message as uses are looked for in it. */
export const forUses = (message: Reading): Reading =>
  pointedNames(withFiguresInWords(withoutAsides(message))).reading;

/**
 * Plain forms that account for every thing in a message, however it is worded, where a word in it says what they are
 * to be put to; in the order the uses are listed.
 */
export const gathered = (message: Reading): readonly Gathered[] => {
  const reading = forUses(message);
  const looks = [...featuresOf(reading), ...datedFeaturesOf(reading)];
  const plains = new Set(looks.flatMap((features) => formsFor(reading, features)));
  return [...plains].map((plain) => ({ reading: readAgain(plain, reading), plain }));
};
