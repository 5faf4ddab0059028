import * as words from './batch-gone-words.ts';

/** Ways containers leave the house, are kept, or come back. */
export type How = 'given' | 'sold' | 'used' | 'wasted' | 'kept' | 'back';

const gap = '\\b.{0,60}\\b';

const pieceIn = (name: string): string => words.pieces[name] ?? name;

/** One entry of a list as an expression. */
const entryAs = (entry: string): string => {
  const not = [...entry.matchAll(/ -(\w+)/g)].map(([, word]) => word);
  const bare = entry
    .replace(/ -\w+/g, '')
    .replace(/^\^/, '')
    .replace(/[$:]$/, '')
    .replace(/\{([a-z][^}]*)\}/gi, (_all, name: string) => pieceIn(name))
    .replace(/\s*…\s*/g, gap);
  const from = entry.startsWith('^') ? '^\\W*' : bare.startsWith(words.pieces.order ?? '') ? '' : '\\b';
  const next = not.length > 0 ? `(?! (?:${not.join('|')})\\b)` : '';
  const to = entry.endsWith('$') ? '\\W*$' : entry.endsWith(':') ? '\\s*:' : '\\b';
  return `${from}(?:${bare})${to}${next}`;
};

const listAs = (list: string): RegExp =>
  new RegExp(
    list
      .split(/,\s/)
      .map((entry) => entry.replace(/\s+/g, ' ').trim())
      .filter((entry) => entry !== '')
      .map(entryAs)
      .join('|'),
    'iu',
  );

/** Most telling first: "2 broken ones came back" came back. */
const verbs: readonly (readonly [How, RegExp])[] = [
  ['given', listAs(words.givenAside)],
  ['kept', listAs(words.keptBack)],
  ['back', listAs(words.back)],
  ['kept', listAs(words.kept)],
  ['wasted', listAs(words.wasted)],
  ['sold', listAs(words.sold)],
  ['given', listAs(words.given)],
  ['wasted', listAs(words.spoilt)],
  ['used', listAs(words.used)],
  ['given', listAs(words.gone)],
];

/** Which way a stretch of text tells of; `taken` where somebody is said to have taken or bought some. */
export const howIn = (text: string, taken: boolean): How | undefined => {
  const found = verbs.find(([, pattern]) => pattern.test(text))?.[0];
  if (found !== undefined) return found;
  if (!taken) return undefined;
  return /\b(?:bought|purchased|buys)\b/i.test(text) ? 'sold' : 'given';
};
