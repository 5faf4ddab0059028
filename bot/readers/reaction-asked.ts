import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading } from '../reading.ts';
import type { BenchReading } from './bench-reading.ts';
import { leftover } from './leftover.ts';
import { nextNamed, nextWeight } from './next-named.ts';
import { signs, signWords } from './reaction-words.ts';
import { boardOf } from './target.ts';
import { wordsOf } from './word-list.ts';

const listWords = new Set(
  wordsOf(`other more further else been log book far up on record reaction reactions list show any all which see open for of to with on about are there were the batch lot tin tins do we have had
    ever so far yet tell anyone anybody someone somebody customer customers reacted react complained complaint complaints please us me give get our your latest last recent old written down known what is how many much number count did was has been people's reported noted recorded got anybody anyone against any past until now open closed status
    lately recently skin problem problems trouble troubles bad who whose whom from after caused cause bother bothered anything nothing people happened happen happening made make give gave somebody's anybody's batches balm balms salve salves from it already so`),
);

/** What it is asked about: a batch, or the batches of one recipe. */
const aboutOf = ({ lots, rest }: BenchReading): { readonly lot?: string; readonly recipe?: string } => {
  const [lot] = lots;
  const recipe = rest.items.find((item) => item.recipe !== undefined)?.recipe;
  return defined({ lot: lot?.code, recipe: lot ? undefined : recipe });
};

/** Only where nothing else is asked: "what is the saponification reaction of beeswax with lye" is no question of ours. */
export const listClaim = (reading: Reading, bench: BenchReading): Claim | undefined => {
  const items = bench.rest.items.filter(
    ({ letter, recipe }) => letter !== 'R' || recipe === undefined || reading.bench.batches.size === 0,
  );
  if (leftover(boardOf(items), listWords, false).blocking.length > 0) return undefined;
  return claim({ action: 'list', ...aboutOf(bench) }, 3);
};

/** "Did anyone else get itchy from 26-KIVO?" */
const asksOfOthers =
  /^\W*(?:(?:so|and|but|ok)\b\W*)?(?:(?:has|have|had|did|does|is|was|were) (?:any(?:one|body|thing)?|some(?:one|body)|others|other people|there|_)|who|which|what|any|show|list)\b/i;
/** What happened, and not what may: "who can get a rash from lavender". */
const mayBe = /\b(?:can|could|may|might|would|will|should|if|does|do)\b/i;
const told =
  /\b(?:reacted|reactions?|complain(?:ed|ts?)|reported|trouble with|problems? with|bother(?:ed)?|upset)\b/i;
const signList = new Set(signWords);

/** Without a batch: nothing else may be named. */
const ofAll = (reading: Reading, bench: BenchReading): Claim | undefined => {
  const { rest } = bench;
  if (mayBe.test(rest.text) || reading.bench.batches.size === 0) return undefined;
  const items = rest.items.filter(({ word, recipe }) => !signList.has(word) && recipe === undefined);
  if (leftover(boardOf(items), listWords, false).blocking.length > 0) return undefined;
  return claim({ action: 'list', ...aboutOf(bench) }, 2.9);
};

export const othersToo = (reading: Reading, bench: BenchReading): Claim | undefined => {
  const [lot, second] = bench.lots;
  const { text } = bench.rest;
  if (second || !asksOfOthers.test(text) || !(signs.test(text) || told.test(text) || /\breact/i.test(text)))
    return undefined;
  return lot ? claim({ action: 'list', lot: lot.code }, 3) : ofAll(reading, bench);
};

/** "And for 26-VOKI?", after reactions were looked up. */
export const listedAgain = (reading: Reading): Claim | undefined => {
  const { last } = reading;
  if (last?.topic !== 'reaction' || !/^(?:list|show)$/.test(String(last.request.action))) return undefined;
  const { lot, recipe } = nextNamed(reading) ?? {};
  return (lot ?? recipe) === undefined
    ? undefined
    : claim({ action: 'list', ...defined({ lot, recipe }) }, nextWeight);
};
