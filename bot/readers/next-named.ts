import { oncePerReading } from '../reading.ts';
import { readBench } from './bench-reading.ts';

/** What a message names and nothing else: the same is asked of it as was asked before. */
export interface NextNamed {
  readonly lot?: string;
  readonly recipe?: string;
  readonly ingredient?: string;
}

/** Longest message that goes on with another name, in tokens. */
const mostTokens = 14;

const filler =
  '(?:and|or|but|ok|okay|now|then|so|also|too|please|what about|how about|what of|same for|same with|same of|the same|for|of|with|from|in|on|to|after|at|the|our|my|a|any|lot|batch|that|those|as well)';
const goesOn =
  /^\W*(?:and|or|but|also|what about|how about|what of|(?:the )?same|ok|then|now)\b|\b(?:too|also|as well)\W*$/i;
const onlyFiller = new RegExp(`^[\\W_]*(?:${filler}\\b[\\W_]*)*$`, 'i');

/** "And 26-VOKI?", "what about the mint balm", "the same for K12": one lot, batch, recipe or ingredient, and nothing else. */
export const nextNamed = oncePerReading((reading): NextNamed | undefined => {
  if (!reading.last || reading.tokens.length > mostTokens || !goesOn.test(reading.text)) return undefined;
  const { lots, days, rest } = readBench(reading);
  const names = rest.items.filter(({ letter }) => letter === 'R' || letter === 'i');
  const [lot, name] = [lots[0], names[0]];
  if (days.length > 0 || lots.length > 1 || names.length > 1 || lot?.others) return undefined;
  const bare = names.reduce(
    (text, { from, to }) => text.slice(0, from) + ' '.repeat(to - from) + text.slice(to),
    rest.text,
  );
  if (!onlyFiller.test(bare)) return undefined;
  if (lot) return { lot: lot.code };
  if (name?.recipe !== undefined) return { recipe: name.recipe };
  const [id, ...more] = name?.ingredients ?? [];
  return id !== undefined && more.length === 0 && !name?.generic ? { ingredient: id } : undefined;
});

/** How sure of itself: "and K12?" alone would be a look at the shelf. */
export const nextWeight = 3.2;
