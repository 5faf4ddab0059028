import { sharedWords } from './data/spellings.ts';
import { slips, soundOf } from './edit-distance.ts';
import { allNames, ambiguousName } from './exact-names.ts';
import { nameWords, wordKey } from './name-key.ts';

/** A phrase in two parts: the words that tell it apart, and the shared words ("seed oil") it ends in. */
export interface Split {
  readonly words: readonly string[];
  readonly sounds: readonly string[];
  readonly tail: string;
}

export interface Entry extends Split {
  readonly name: string;
  readonly ids: readonly string[];
  /** The words that tell it apart, and the whole name, as one run of letters. */
  readonly run: string;
  readonly runSound: string;
  readonly wholeRun: string;
}

export interface Typed extends Split {
  readonly run: string;
  readonly wholeRun: string;
  /** 0, or {@link soundAlike} when a shared word had to be put right. */
  readonly tailDistance: number;
}

/** Sound alike but spelled or spaced differently: nearer than any slip, not as near as the very name. */
export const soundAlike = 0.5;
const sharedSounds = new Map([...sharedWords].map((word) => [soundOf(word), word]));

/** The shared word this is, or clearly was meant to be: first letter right and one slip, or the same by sound. */
const sharedWord = (word: string): string | undefined => {
  if (sharedWords.has(word)) return word;
  const bySound = sharedSounds.get(soundOf(word));
  if (bySound !== undefined || word.length < 3) return bySound;
  for (const shared of sharedWords) {
    const allowed = shared.length > 7 ? 2 : 1;
    if (shared[0] === word[0] && slips(word, shared, allowed) <= allowed) return shared;
  }
  return undefined;
};

const exactlyShared = (word: string): string | undefined => (sharedWords.has(word) ? word : undefined);

const split = (all: readonly string[], shared: (word: string) => string | undefined): Split => {
  const words = [...all];
  const tail: string[] = [];
  for (let last = words.at(-1); last !== undefined; last = words.at(-1)) {
    const word = shared(last);
    if (word === undefined) break;
    tail.unshift(word);
    words.pop();
  }
  return { words, sounds: words.map(soundOf), tail: tail.join(' ') };
};

/** "wacks" is a spelling of "wax" and must not lose its s as a plural would. */
const typedWords = (text: string): string[] =>
  nameWords(text).flatMap((word) => sharedSounds.get(soundOf(word)) ?? wordKey(word).split(' '));

/** A typed phrase in its parts; `key` is its name key. */
export const typedPhrase = (text: string, key: string): Typed => {
  const words = typedWords(text);
  const parts = split(words, sharedWord);
  const tailDistance =
    key === parts.tail || key.endsWith(` ${parts.tail}`) || parts.tail === '' ? 0 : soundAlike;
  return {
    ...parts,
    run: parts.words.join(''),
    wholeRun: words.join(''),
    tailDistance,
  };
};

/** The letters a name has besides its shared words: "almond" of "almond oil". */
export const ownRun = (name: string): string => split(name.split(' '), exactlyShared).words.join('');

const buildEntries = (): Entry[] => {
  const all: Entry[] = [];
  for (const [name, ids] of allNames()) {
    const parts = split(name.split(' '), exactlyShared);
    // Names like "seed oil" or "plant butter", which only ask which one, are near to everything.
    if (parts.words.length === 0 || ambiguousName(name)?.alone) continue;
    const [run, runSound] = [parts.words.join(''), parts.sounds.join('')];
    all.push({
      ...parts,
      name,
      ids,
      run,
      runSound,
      wholeRun: name.replaceAll(' ', ''),
    });
  }
  return all;
};

/** The runs are compared by their start, so only names that begin alike are looked at. */
export interface Run {
  readonly entry: Entry;
  readonly sound: string;
}

const listed = <K, V>(pairs: Iterable<readonly [K, V]>): ReadonlyMap<K, readonly V[]> => {
  const map = new Map<K, V[]>();
  for (const [key, value] of pairs) {
    const list = map.get(key);
    if (list) list.push(value);
    else map.set(key, [value]);
  }
  return map;
};

let all: readonly Entry[] | undefined;
let byTailAndEnd: ReadonlyMap<string, readonly Entry[]> | undefined;
let byTailAndSound: ReadonlyMap<string, readonly Entry[]> | undefined;
let byStart: ReadonlyMap<string, readonly Run[]> | undefined;

const allEntries = (): readonly Entry[] => {
  all ??= buildEntries();
  return all;
};

/** Names with these shared words whose letters, but for the first two, are how a typed run of letters ends. */
export const entriesEnding = (tail: string, run: string): readonly Entry[] => {
  byTailAndEnd ??= listed(
    allEntries().map((entry) => [`${entry.run.slice(2)} ${entry.tail}`, entry] as const),
  );
  const ends = byTailAndEnd;
  return Array.from({ length: run.length }, (_, at) => ends.get(`${run.slice(at)} ${tail}`) ?? []).flat();
};

/** Those among them that begin with the same sound as a typed run of letters. */
export const entriesAlike = (tail: string, sound: string): readonly Entry[] => {
  byTailAndSound ??= listed(
    allEntries().map((entry) => [`${entry.runSound.charAt(0)} ${entry.tail}`, entry] as const),
  );
  return byTailAndSound.get(`${sound.charAt(0)} ${tail}`) ?? [];
};

/** Names that begin with this letter, as runs of letters. */
export const runsFrom = (letter: string): readonly Run[] => {
  byStart ??= listed(
    allEntries().map(
      (entry) => [entry.wholeRun.charAt(0), { entry, sound: soundOf(entry.wholeRun) }] as const,
    ),
  );
  return byStart.get(letter) ?? [];
};
