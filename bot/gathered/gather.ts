import { defined } from '../../core/defined.ts';
import { datedFeaturesOf, type Features, featuresOf, type Slot } from '../likeness/features.ts';
import { signatureOf } from '../likeness/sayings.ts';
import { isToldOnly } from '../readers/called-off.ts';
import type { Reading } from '../reading.ts';
import { blanked, readAgain } from '../understand.ts';
import { agreesWith, isIdle } from './agrees.ts';
import { uncovered } from './covered.ts';
import { filled } from './fit.ts';
import { forUses } from './plainer.ts';
import { type Form, isIn, type Use, usesIn, withWishes } from './use.ts';
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

/** The uses by the things they take; their lists are read when the first message wants them. */
const uses = (): ReadonlyMap<string, readonly Placed[]> => {
  if (byShelf.size > 0) return byShelf;
  for (const use of allUses.flatMap(usesIn)) {
    for (const form of use.forms) {
      const shelf = signatureOf(form);
      const others = byShelf.get(shelf);
      if (others) others.push({ use, form });
      else byShelf.set(shelf, [{ use, form }]);
    }
  }
  return byShelf;
};

/** What the things in a message could be put to, by their kinds alone; where more words have to name it first. */
export const possibleUses = (slots: readonly Slot[]): readonly Placed[] =>
  (uses().get(signatureOf({ slots })) ?? []).toSorted((a, b) => b.use.cues.length - a.use.cues.length);

/** "I was given kokum butter. Put kokum butter in …": what is spoken of twice is one thing, the last time it is named. */
const isSameThing = (slot: Slot, later: Slot): boolean => {
  if (slot.kind === 'R' || slot.kind === 't') return later.kind === slot.kind && slot.text === later.text;
  const [id, second] = slot.ingredients ?? [];
  return (
    id !== undefined && second === undefined && later.ingredients?.length === 1 && later.ingredients[0] === id
  );
};

/** "The herb and the oil to weigh", where both were named. */
const isKindOf = ({ text, kind }: Slot, other: Slot): boolean =>
  /^(?:oils?|wax|waxes|butters?|herbs?)$/i.test(text) && other.kind === kind && other.text !== text;

/** The things in a message that a use has to account for. */
export const thingsIn = ({ slots }: Features): readonly Slot[] =>
  slots.filter(
    (slot, at) =>
      !isIdle(slot) &&
      !slots.slice(at + 1).some((later) => isSameThing(slot, later)) &&
      !slots.slice(0, at).some((earlier) => isKindOf(slot, earlier)),
  );

/** What a use lacks to be what a message means: words that name it; where it has those, what it cannot account for. */
export const lacking = (use: Use, reading: Reading, slots: readonly Slot[]): readonly string[] => {
  const around = blanked(reading.text, slots);
  const unnamed = [
    ...use.cues.flatMap((cue, at) => (isIn(cue, around) ? [] : [`cue ${at}`])),
    ...(use.after && use.after !== reading.last?.topic ? [`after ${use.after}`] : []),
    ...(use.never && isIn(use.never, around) ? ['a word it must not have'] : []),
  ];
  return unnamed.length > 0 ? unnamed : uncovered(use, reading, slots);
};

export const plainFor = (
  { use, form: { plain, slots: open } }: Placed,
  text: string,
  slots: readonly Slot[],
): string | undefined =>
  filled(withWishes(plain, use, blanked(text, slots)), open, slots, text, agreesWith(plain, text));

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
  // A use has many forms, and lacks the same in all of them.
  const known = new Map<Use, boolean>();
  const isMeant = (use: Use): boolean => {
    const meant = known.get(use) ?? lacking(use, reading, all).length === 0;
    known.set(use, meant);
    return meant;
  };
  return choicesOf(all).flatMap((slots) => {
    const left = all.filter((slot) => !slots.includes(slot));
    return possibleUses(slots).flatMap(({ use, form }): Found[] => {
      if (!left.every(({ kind }) => use.idle.has(kind)) || !isMeant(use)) return [];
      const plain = plainFor({ use, form }, reading.text, slots);
      return plain === undefined ? [] : [{ plain, ...defined({ after: use.after }) }];
    });
  });
};

/**
 * Plain forms that account for every thing in a message, however it is worded, where a word in it says what they are
 * to be put to; in the order the uses are listed.
 */
export const gathered = (message: Reading): readonly Gathered[] => {
  if (message.text.length > mostCharacters || isToldOnly(message.text)) return [];
  const reading = forUses(message);
  const looks = [...featuresOf(reading), ...datedFeaturesOf(reading)];
  const plains = new Map(
    looks.flatMap((features) => formsFor(reading, features)).map((found) => [found.plain, found]),
  );
  return [...plains.values()].map((found) => ({ ...found, reading: readAgain(found.plain, reading) }));
};
