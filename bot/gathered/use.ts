import { featuresOfSaying, type Slot } from '../likeness/features.ts';
import { wordsOf } from '../readers/word-list.ts';

/** A plain form with all its slots, some of its optional parts taken and others left. */
export interface Form {
  readonly plain: string;
  readonly slots: readonly Slot[];
}

/** What things can be put to, and by which words that is known. */
export interface Use {
  readonly forms: readonly Form[];
  /** Of each of these a message has to have one. */
  readonly cues: readonly RegExp[];
  /** It has none of these. */
  readonly never: RegExp | undefined;
  /** Kinds of things that make no difference to it. */
  readonly idle: ReadonlySet<string>;
  /** The topic that has to have answered the message before. */
  readonly after: string | undefined;
  readonly wishes: readonly Wish[];
  /** Words that belong to it and do not name it. */
  readonly around: RegExp | undefined;
  /** Words of talk may stand anywhere: what it takes is told by so much that nothing else can be meant. */
  readonly amongTalk: boolean;
}

/** Text that stands in a plain form where a message has such a word; `mark` is how that is written in the form. */
export interface Wish {
  readonly mark: string;
  readonly words: RegExp;
  readonly said: string;
}

/** "heal*" is any word that begins so, "how_much" two words. */
const wordsIn = (list: string): RegExp =>
  new RegExp(
    `(?<![\\p{L}'])(?:${list
      .trim()
      .split(/\s+/)
      .map((word) => word.replaceAll('_', '[\\s-]+').replaceAll('*', "[\\p{L}']{0,12}"))
      .join('|')})(?!\\p{L}|'(?!s\\b))`,
    'giu',
  );

/** True where a text has one of the words. */
export const isIn = (words: RegExp, text: string): boolean => text.search(words) >= 0;

const optional = /\[([^\]]*)\]/;

/** "label for {R}[, {size}]" is "label for {R}" and "label for {R}, {size}". */
const withAndWithout = (plain: string): readonly string[] => {
  const part = optional.exec(plain);
  if (!part) return [plain];
  const [before, after] = [plain.slice(0, part.index), plain.slice(part.index + part[0].length)];
  return [`${before}${part[1] ?? ''}${after}`, `${before}${after}`].flatMap(withAndWithout);
};

const wish = /<([^:>]*):([^>]*)>/g;

const formsOf = (line: string): readonly Form[] =>
  withAndWithout(line).map((plain) => ({
    plain,
    slots: featuresOfSaying(plain.replace(wish, '')).slots,
  }));

const wishesIn = (block: string): readonly Wish[] => {
  const marks = new Map([...block.matchAll(wish)].map((match) => [match[0], match] as const));
  return [...marks].map(([mark, [, words = '', said = '']]) => ({ mark, words: wordsIn(words), said }));
};

/** The plain form with what a message wishes besides. */
export const withWishes = (plain: string, { wishes }: Use, text: string): string =>
  wishes.reduce(
    (form, { mark, words, said }) =>
      form.includes(mark) ? form.replaceAll(mark, () => (isIn(words, text) ? said : '')) : form,
    plain,
  );

/**
 * Reads a list of uses. Its first line names the kinds of things that make no difference to any of them (`~ region n`).
 * Then `=` begins a use with its plain form, where `[…]` may be left out and `<words: text>` stands for the text where a
 * message has one of the words; `?` names words of which it has to have one, `!` words it must not have; `@` names the
 * topic that it goes on from; `+` words that belong to it and do not name it;
 * `&` lets words of talk stand anywhere.
 */
export const usesIn = (list: string): readonly Use[] => {
  const blocks = list.trim().split(/\n\s*\n/);
  const idle = new Set(wordsOf(/^~(.*)$/m.exec(blocks[0] ?? '')?.[1] ?? ''));
  return blocks.slice(1).map((block) => {
    const lines = block.split('\n').map((line) => line.trim());
    const after = (sign: string): readonly string[] =>
      lines.filter((line) => line.startsWith(sign)).map((line) => line.slice(1));
    const never = after('!').join(' ');
    const around = after('+').join(' ');
    return {
      forms: after('=').flatMap((line) => formsOf(line.trim())),
      cues: after('?').map(wordsIn),
      never: never ? wordsIn(never) : undefined,
      idle,
      after: after('@')[0]?.trim(),
      wishes: wishesIn(block),
      around: around ? wordsIn(around) : undefined,
      amongTalk: lines.includes('&'),
    };
  });
};
