import { defined } from '../../core/defined.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { type BenchText, readBenchText } from './bench-text.ts';
import { leftover } from './leftover.ts';
import { lotsIn } from './lots.ts';
import { nameRead } from './stock-amount.ts';
import { claimBought } from './stock-bought.ts';
import { claimInfused } from './stock-infused.ts';
import { claimLot, lotMeant } from './stock-lot.ts';
import { claimLow } from './stock-low.ts';
import { listWords, stockCues } from './stock-words.ts';
import { boardOf } from './target.ts';

const stockWord = /\b(?:stock|stocks|inventory|on the shelf|in the cupboard)\b/i;
const leftWord =
  /\bhow (?:much|many)\b.*\b(?:left|have|got|remain(?:s|ing)?|there)\b|\b(?:do|have) we (?:still )?(?:have|got) (?:any|enough|some)?\b|\bis there any\b.*\bleft\b|\bany\b.*\bleft\b/i;
const lowWord =
  /\b(?:running|run|getting) (?:low|short|out)\b|\bwhat(?:'s| is) low\b|\blow (?:on|in) stock\b|\b(?:low|short) (?:on|of) (?:any|some)thing\b|\blow[- ]stock\b|\bwhat (?:do we )?need to (?:re)?(?:buy|order|stock)\b/i;

const isPlain = ({ bench }: BenchText): boolean => {
  const items = bench.rest.items.filter(({ letter }) => letter !== 'i' && letter !== '?');
  return leftover(boardOf(items), listWords, false).blocking.length === 0;
};

const whichOf = (said: string): 'low' | 'expired' | undefined => {
  if (lowWord.test(said)) return 'low';
  return /\b(?:expired|past (?:its|their|the) date|out of date)\b/i.test(said) ? 'expired' : undefined;
};

const asksList = ({ bench }: BenchText): boolean => {
  const { text, items } = bench.rest;
  if (bench.days.length > 0 || bench.lots.length > 0) return false;
  if (items.some(({ letter }) => /[gvnRct%]/.test(letter))) return false;
  return [lowWord, stockWord, leftWord].some((word) => word.test(text));
};

/** "stock", "stock of shea", "how much beeswax do we have left", "running low". */
const claimList = (text: BenchText): Claim | undefined => {
  if (!asksList(text) || !isPlain(text)) return undefined;
  const { rest } = text.bench;
  const which = whichOf(rest.text);
  const [name, second] = rest.items.filter(({ letter }) => letter === 'i');
  // "how much do I have left" of nothing in particular is no question about the shelf.
  if (second || (!name && which === undefined && !stockWord.test(rest.text))) return undefined;
  const named = name && nameRead(name);
  if (named?.trouble) return refuse(named.trouble, 2.9);
  const prices = /\bprices?|cost\b/i.test(rest.text) || undefined;
  const request = { action: 'list', ...defined({ ingredient: named?.id, herb: named?.herb, which, prices }) };
  return claim(request, 3.1, named?.assumed ? [named.assumed] : []);
};

/** "lot K12", "how much of K12 is left". */
const claimShow = (text: BenchText): Claim | undefined => {
  const lot = lotMeant(text.bench);
  if (!lot || text.bench.days.length > 0 || !isPlain(text)) return undefined;
  if (text.bench.rest.items.some(({ letter }) => /[gvnRct%]/.test(letter))) return undefined;
  return lot.kind === 'lot' || lot.cued
    ? claim({ action: 'show', lot: lot.code }, lot.kind === 'lot' ? 2.9 : 2)
    : undefined;
};

const shortTokens = 8;

const concerns = (reading: Reading): boolean =>
  anyWord(reading, stockCues) ||
  (reading.tokens.length <= shortTokens && reading.bench.lots.size > 0 && lotsIn(reading).length > 0);

/** What a message would mean to the stock. */
export const claimStock = (reading: Reading): Claim | undefined => {
  if (!concerns(reading)) return undefined;
  const text = readBenchText(reading);
  return (
    claimInfused(reading, text) ??
    claimBought(reading) ??
    claimLow(reading, text.bench) ??
    claimLot(reading, text) ??
    claimList(text) ??
    claimShow(text)
  );
};
