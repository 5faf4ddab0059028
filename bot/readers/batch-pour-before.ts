import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Last, type Reading, refuse } from '../reading.ts';
import { howManyPoured, pourWords, whatPoured } from './batch-words.ts';
import { asksOrPlans, readBenchText } from './bench-text.ts';
import { letters } from './lexicon.ts';
import { readScale } from './scale-reading.ts';

export type Wish = Readonly<Record<string, unknown>>;

/** What was spoken of just now that a pour can be of: a scaling, a shown recipe, a pour that lacked something. */
const wishBefore = ({ topic, request }: Last): Wish | undefined => {
  if (topic === 'scale') return request;
  if (topic === 'batch') return request.action === 'pour' ? request : undefined;
  if (topic === 'cost') return (request.batch ?? undefined) as Wish | undefined;
  const shown = topic === 'recipe' && /^(?:show|save|restore)$/.test(String(request.action));
  return shown ? { recipe: request.name } : undefined;
};

const hasLines = (lines: unknown): boolean => Array.isArray(lines) && lines.length > 0;

/** A recipe spoken of just now, with how much of it, where this message names none. */
export const bodyBefore = ({ last }: Reading): { readonly wish: Wish; readonly said: string } | undefined => {
  const before = last && wishBefore(last);
  if (!before) return undefined;
  const { recipe, lines, count, size, totalG, lossPercent, stepG } = before;
  const target = defined({ count, size, totalG, lossPercent, stepG });
  if (typeof recipe === 'string') return { wish: { recipe, ...target }, said: recipe };
  return hasLines(lines) ? { wish: { lines, ...target }, said: 'the recipe' } : undefined;
};

const hasBody = ({ recipe, lines }: Wish): boolean => typeof recipe === 'string' || hasLines(lines);

const stillMissing = (wish: Wish) => {
  if (!hasBody(wish)) return whatPoured;
  return wish.count === undefined ? howManyPoured : undefined;
};

/** Longest message that only fills a gap, in tokens. */
const mostTokens = 40;

const pourOpen = ({ last, tokens }: Reading): Wish | undefined =>
  last?.topic === 'batch' &&
  last.request.action === 'pour' &&
  stillMissing(last.request) &&
  tokens.length <= mostTokens
    ? last.request
    : undefined;

/** Nothing but a count, a size or a recipe: "trace ZZ9" and "save recipe …" have a meaning of their own. */
const isGapFiller = ({ text, items }: Reading): boolean =>
  !asksOrPlans(text) &&
  items.every((item, at) => {
    if (item.letter === letters.unknown || item.letter === letters.past)
      return gapWords.has(item.word) || pourWords.has(item.word);
    if (item.letter === letters.number) return !/\p{L}$/u.test(text.slice(0, item.from));
    return (
      /^[ncgvixRQ%po@eAFTIWB,;.:!+\n()-]$/.test(item.letter) || (at === 0 && item.letter === letters.none)
    );
  });

const gapWords = new Set(
  'sorry forgot think count counted exactly altogether total number all right yes well maybe roughly nearly'.split(
    ' ',
  ),
);

/** "24 tins", after a pour that lacked them. */
export const claimPourRest = (reading: Reading): Claim | undefined => {
  const open = pourOpen(reading);
  if (!open) return undefined;
  const { bench } = readBenchText(reading);
  const { last: _last, ...bare } = bench.rest;
  if (bench.lots.length > 0 || !isGapFiller(bare)) return undefined;
  const read = readScale(bare);
  const [number, second] = bare.items.filter(({ letter }) => letter === 'n');
  const count = read.target.count ?? (second ? undefined : number?.value);
  const body = defined({ recipe: read.recipe, lines: read.lines.length > 0 ? read.lines : undefined });
  if (count === undefined && Object.keys(body).length === 0) return undefined;
  const wish: Wish = { ...open, ...body, ...defined({ count, size: read.target.size }) };
  const still = stillMissing(wish);
  return still ? refuse(still, 3, wish) : claim(wish, 3, read.assumed);
};
