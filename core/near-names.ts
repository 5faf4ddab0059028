import { everydayWords } from './data/everyday-words.ts';
import { slips, soundOf } from './edit-distance.ts';
import { exactName, isOtherThing, longestName } from './exact-names.ts';
import { nameWords, wordKey } from './name-key.ts';
import {
  type Entry,
  entriesAlike,
  entriesEnding,
  ownRun,
  runsFrom,
  type Split,
  soundAlike,
  type Typed,
  typedPhrase,
} from './name-parts.ts';

/** A name close to what was typed. `name` is the name's key, `distance` 0 for the very name, 1 for one slip. */
export interface NearName {
  readonly id: string;
  readonly ids: readonly string[];
  readonly name: string;
  readonly distance: number;
}

const apart = Number.POSITIVE_INFINITY;

/**
 * Slips allowed in a word of the name. Beside a shared word ("oil"): none up to 3 letters, one up to 5, two from 6 on.
 * A word that stands alone may be any English word, so it must be longer for the same slack.
 */
const allowedSlips = (word: string, alone: boolean): number => {
  const [one, two] = alone ? [5, 8] : [4, 6];
  return word.length >= two ? 2 : Number(word.length >= one);
};

/** A sound match may not stand for more than this many changed letters. */
const mostSoundEdits = 3;
/** People seldom get the first letter wrong; in a word this long one slip is let through all the same. */
const longWord = 6;

/** How far a typed word is from a name's word; infinite when it is too far to be that word. */
const wordDistance = (
  typed: string,
  typedSound: string,
  word: string,
  sound: string,
  alone: boolean,
): number => {
  if (typed === word) return 0;
  const difference = Math.abs(typed.length - word.length);
  if (difference > mostSoundEdits || word.length <= 3) return apart;
  if (typedSound === sound) return slips(typed, word, mostSoundEdits) <= mostSoundEdits ? soundAlike : apart;
  const startsApart = typedSound[0] !== sound[0];
  if (startsApart && (word.length < longWord || !typed.endsWith(word.slice(2)))) return apart;
  const allowed = startsApart ? 1 : allowedSlips(word, alone);
  if (difference > allowed) return apart;
  const edits = slips(typed, word, allowed);
  return edits <= allowed ? edits : apart;
};

/** Most slips in a whole name. */
const mostSlips = 2;

const wordsDistance = (typed: Split, entry: Entry): number => {
  let sum = 0;
  const alone = typed.tail === '' && typed.words.length === 1;
  for (let index = 0; index < entry.words.length && sum <= mostSlips; index += 1) {
    sum += wordDistance(
      typed.words[index] ?? '',
      typed.sounds[index] ?? '',
      entry.words[index] ?? '',
      entry.sounds[index] ?? '',
      alone,
    );
  }
  return sum <= mostSlips ? sum : apart;
};

/** Words run together or taken apart ("sweetalmond", "cal endula", "sheabuter") are compared as one run of letters. */
const runDistance = (
  typed: string,
  typedSound: string,
  run: string,
  sound: string,
  allowed: number,
): number => {
  if (run.length < longWord || run[0] !== typed[0] || Math.abs(run.length - typed.length) > allowed)
    return apart;
  if (sound === typedSound) return soundAlike;
  const edits = slips(typed, run, allowed);
  return edits <= allowed ? edits : apart;
};

/** Two slips are let through only in a run this long. */
const longRun = 8;
/** Letters a name must have besides its shared words to be found as part of a run. */
const ownLetters = 4;

/** A single short or everyday word is no slip of anything; only a name that sounds the same is let through. */
const tooPlain = ({ words, tail }: Split): boolean =>
  tail === '' && words.length === 1 && ((words[0]?.length ?? 0) < 5 || everydayWords.has(words[0] ?? ''));

const keep = (found: NearName[], { name, ids }: Entry, distance: number, most: number): void => {
  const id = ids[0];
  if (distance <= most && id !== undefined) found.push({ id, ids, name, distance });
};

const byWords = (typed: Typed, entries: readonly Entry[], most: number): NearName[] => {
  const found: NearName[] = [];
  const sound = soundOf(typed.run);
  const allowed = typed.run.length >= longRun ? 2 : 1;
  for (const entry of entries) {
    const distance =
      typed.words.length === entry.words.length
        ? wordsDistance(typed, entry)
        : runDistance(typed.run, sound, entry.run, entry.runSound, allowed);
    if (distance < apart) keep(found, entry, distance + typed.tailDistance, most);
  }
  return found;
};

/** Names that are the same but for their beginning. */
const otherStart = (typed: Typed): readonly Entry[] =>
  typed.run.length < longWord
    ? []
    : entriesEnding(typed.tail, typed.run).filter(({ words }) => words.length === typed.words.length);

const byRun = (typed: Typed): NearName[] => {
  const found: NearName[] = [];
  const sound = soundOf(typed.wholeRun);
  for (const { entry, sound: entrySound } of runsFrom(typed.wholeRun.charAt(0))) {
    if (entry.run.length < ownLetters) continue;
    keep(found, entry, runDistance(typed.wholeRun, sound, entry.wholeRun, entrySound, 1), 1);
  }
  return found;
};

const candidates = (typed: Typed): NearName[] => {
  const plain = tooPlain(typed);
  const most = plain ? soundAlike : mostSlips + soundAlike;
  const found = byWords(typed, entriesAlike(typed.tail, soundOf(typed.run)), most);
  if (found.length > 0 || plain) return found;
  const started = byWords(typed, otherStart(typed), most);
  return started.length > 0 ? started : byRun(typed);
};

const byDistance = (a: NearName, b: NearName): number =>
  a.distance - b.distance || a.name.length - b.name.length;

/** The best name of each ingredient (or set of ingredients), nearest first. */
const bestOfEach = (found: readonly NearName[]): NearName[] => {
  const best = new Map<string, NearName>();
  for (const name of [...found].sort(byDistance)) {
    const key = name.ids.join();
    if (!best.has(key)) best.set(key, name);
  }
  return [...best.values()];
};

/** Longest phrase that is looked at, in characters; no name is longer. */
const longestPhrase = 80;
const mostAnswers = 5;

/**
 * Names near to a phrase, best first, at most five; the very name comes alone with distance 0. The words that tell
 * an ingredient apart may be one slip off (4-5 letters) or two (6 and more), or sound the same; shared words (oil,
 * butter, wax …) must all be there, a slip off at most, and never make a match by themselves.
 */
export const nearNames = (text: string): readonly NearName[] => {
  if (text.length > longestPhrase) return [];
  const words = nameWords(text);
  if (words.length === 0 || words.length > longestName) return [];
  const key = words.map(wordKey).join(' ');
  if (isOtherThing(key)) return [];
  const exact = exactName(key);
  const first = exact?.[0];
  if (exact && first !== undefined) return [{ id: first, ids: exact, name: key, distance: 0 }];
  const typed = typedPhrase(text, key);
  return typed.words.length === 0 ? [] : bestOfEach(candidates(typed)).slice(0, mostAnswers);
};

/** How much nearer the first name must be than the second, in slips. */
const clearlyNearer = 1;

/** More than one slip is taken without asking only in a name with this many letters of its own. */
const ownLettersForTwo = 8;

/** The one near name that may be taken without asking: a single ingredient, clearly nearer than any other. */
export const clearName = (names: readonly NearName[]): NearName | undefined => {
  const [first, second] = names;
  if (!first || first.ids.length > 1) return undefined;
  if (second && second.distance - first.distance < clearlyNearer) return undefined;
  return first.distance < 2 || ownRun(first.name).length >= ownLettersForTwo ? first : undefined;
};
