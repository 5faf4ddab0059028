import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading } from '../reading.ts';
import type { BenchReading } from './bench-reading.ts';
import { asksOrPlans, longestNote } from './bench-text.ts';
import { containerWord } from './cost-prices.ts';
import { letters } from './lexicon.ts';
import { boardOf, type Size, sizeOf, takeContainers } from './target.ts';
import { wordsOf } from './word-list.ts';

/** Longest message that puts right what was just told, in tokens. */
const mostTokens = 24;

/** It says by itself that something told before was otherwise. */
export const putsRight =
  /^\W*(?:no|nope|sorry|oops|whoops|pardon|blast|damn|drat|argh|ugh|ouch|hm+|oh dear|my mistake|wait|actually|correction|hang on|hold on|rather|i mean|i meant|make (?:it|that))\b|\b(?:sorry|meant|miscounted|counted (?:wrong|again)|recounted|wrong|mistake|should (?:be|have been)|actually|really|(?:it|that|they|there|this|these|those) (?:was|were|is|are)|(?:was|were) only|only)\b/i;
const perTin =
  /\b(?:each|apiece|per (?:tin|jar|pot|stick|tube)|(?:tins?|jars?|pots?|sticks?|tubes?|they|ones|size) (?:(?:each|all|of|only|actually|really|are|were|is|was) )*(?:hold|holds|held|contain|contains|take|took|are|were|is|was|of))\b/i;

/** Words of such a message that tell of nothing else. */
const anewWords = new Set(
  wordsOf(`pardon blast damn drat argh ugh ouch hm hmm hmmm dear no nope sorry oops whoops wait actually correction correct hang on hold rather mean meant make made miscounted counted count wrong again recounted mistake should have been be
  was were is are it that they there this these those only really just the i we my our tins jars hold holds held contain take took each apiece per tin jar pot stick size ones one of in not
  poured pour filled typo slip check checked looked number day date yesterday today instead and but so had got has came out as to total all altogether exactly fact then well oh ah my bad`),
);

/** Figures, containers, and words that tell of nothing else. */
export const isAnew = ({ letter, word }: BenchReading['rest']['items'][number]): boolean =>
  /^[ncgvob,;.:!()\n-]$/.test(letter) ||
  letter === letters.each ||
  (anewWords.has(word) && letter !== letters.recipe && letter !== letters.ingredient);

/** The batch that was poured, or put right, just before in this channel. */
const justPoured = ({ last, bench }: Reading): string | undefined => {
  if (last?.topic !== 'batch' || !/^(?:pour|correct)$/.test(String(last.request.action))) return undefined;
  const lot = last.lot ?? last.request.lot;
  return typeof lot === 'string' && bench.batches.has(lotKey(lot)) ? lot : undefined;
};

/** What one container holds: "the tins hold 17 g", "17 g each". */
export const sizeAnew = ({ rest }: BenchReading, region: Reading['settings']['region']): Size | undefined => {
  const [amount, second] = rest.items.filter(({ letter }) => /[gv]/.test(letter));
  return amount && !second && perTin.test(rest.text) ? sizeOf(amount, region) : undefined;
};

/** A number by itself counts tins; with "each" and no unit it is more likely a price. */
const countAnew = ({ rest }: BenchReading): number | undefined => {
  const [number, second] = rest.items.filter(({ letter }) => letter === letters.number);
  const priced =
    !rest.items.some(({ letter }) => /[gv]/.test(letter)) &&
    ((perTin.test(rest.text) && !putsRight.test(rest.text)) || /\b(?:each|apiece|per)\b/i.test(rest.text));
  return second || priced || !Number.isInteger(number?.value) ? undefined : number?.value;
};

/** "And 40 sticks of 5 g": one more, and the one before as it was. */
const adds =
  /^\W*(?:(?:oh|ah|ok|so|then)\W+)*(?:and|also|plus|another|then)\b(?! (?:no|sorry|wait|actually|it was|they were|that was)\b)/i;

/** Whether the message puts right what was told before, and tells of nothing else. */
const isPutRight = ({ tokens }: Reading, { rest, lots }: BenchReading): boolean =>
  tokens.length <= mostTokens &&
  lots.length === 0 &&
  (putsRight.test(rest.text) || perTin.test(rest.text)) &&
  !/\?/.test(rest.text) &&
  !asksOrPlans(rest.text) &&
  !(adds.test(rest.text) && rest.items.some(({ letter }) => letter === letters.container)) &&
  rest.items.every(isAnew);

const changesIn = (bench: BenchReading, region: Reading['settings']['region']) => {
  const { rest, days } = bench;
  const { size, container } = takeContainers(boardOf(rest.items));
  return defined({
    count: countAnew(bench),
    size: sizeAnew(bench, region) ?? (size && sizeOf(size, region)),
    container: container === undefined ? undefined : containerWord(container),
    on: days.find(({ role }) => role === 'on')?.past,
  });
};

/** "Sorry, it was 9 tins", "the tins hold 17 g", "that was yesterday": right after a pour, of that pour. */
export const claimAnew = (reading: Reading, bench: BenchReading): Claim | undefined => {
  const lot = justPoured(reading);
  if (lot === undefined || !isPutRight(reading, bench)) return undefined;
  const changes = changesIn(bench, reading.settings.region);
  const amounts = bench.rest.items.filter(({ letter }) => /[gv]/.test(letter)).length;
  const told = Object.keys(changes).some((key) => key !== 'container');
  if (!told || amounts > (changes.size ? 1 : 0)) return undefined;
  const seen = reading.bench.batches.get(lotKey(lot))?.seq;
  const why = reading.text.trim().slice(0, longestNote);
  return claim({ action: 'correct', lot, why, ...changes, ...defined({ seen }) }, 3.45, [
    `I took ${lot}, which we spoke of.`,
  ]);
};
