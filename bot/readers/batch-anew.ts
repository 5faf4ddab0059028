import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { isTaking } from './batch-gone-places.ts';
import { howIn } from './batch-gone-verbs.ts';
import type { BenchReading } from './bench-reading.ts';
import { asksOrPlans, longestNote, readBenchText } from './bench-text.ts';
import { containerWord } from './cost-prices.ts';
import { withoutDenied } from './denied.ts';
import type { Item } from './item.ts';
import { letters } from './lexicon.ts';
import { boardOf, type Size, sizeOf, takeContainers } from './target.ts';
import { wordsOf } from './word-list.ts';

/** Longest message that puts right what was just told, in tokens. */
const mostTokens = 24;

/** It says by itself that something told before was otherwise. */
export const putsRight =
  /^\W*(?:no|nope|nah|sorry|apologies|erratum|oops|whoops|pardon|blast|damn|drat|argh|ugh|ouch|hm+|oh dear|my mistake|wait|actually|correction|hang on|hold on|rather|i mean|i meant|make (?:it|that))\b|\b(?:sorry|meant|miscounted|counted (?:wrong|again)|recounted|wrong|mistake|should (?:be|have been)|actually|really|(?:it|that|they|there|this|these|those|the (?:lot|batch|date|price|code|amount|place|shop|best[- ]before)(?: number)?) (?:was|were|is|are)|(?:was|were) only|only)\b/i;
const perTin =
  /\b(?:each|apiece|per (?:tin|jar|pot|stick|tube)|(?:tins?|jars?|pots?|sticks?|tubes?|they|ones|size) (?:(?:each|all|of|only|actually|really|are|were|is|was) )*(?:hold|holds|held|contain|contains|take|took|are|were|is|was|of))\b/i;

/** Words of such a message that tell of nothing else. */
const anewWords = new Set(
  wordsOf(`it's that's they're please pardon blast damn drat argh ugh ouch hm hmm hmmm dear no nope nah erratum apologies sorry oops whoops wait actually correction correct hang on hold rather mean meant make made miscounted counted count wrong again recounted mistake should have been be
  was were is are it that they there this these those only really just the i we my our tins jars hold holds held contain take took each apiece per tin jar pot stick size ones one of in not
  poured pour filled with using lot lots forgot by typo slip check checked looked number day date yesterday today instead and but so had got has came out as to total all altogether exactly fact then well oh ah my bad`),
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
  (putsRight.test(rest.text) || perTin.test(rest.text) || ofLot.test(rest.text)) &&
  !/\?/.test(rest.text) &&
  !asksOrPlans(rest.text) &&
  !(adds.test(rest.text) && rest.items.some(({ letter }) => letter === letters.container)) &&
  rest.items.every(isAnew);

const ofLot = /\b(?:was|is|used|from|with|using) _/i;

const changesIn = (bench: BenchReading, region: Reading['settings']['region']) => {
  const { rest, days } = bench;
  const { size, container = rest.items.find(({ letter }) => letter === letters.container)?.word } =
    takeContainers(boardOf(rest.items));
  return defined({
    count: countAnew(bench),
    size: sizeAnew(bench, region) ?? (size && sizeOf(size, region)),
    container: container === undefined ? undefined : containerWord(container),
    on: days.find(({ role }) => role === 'on')?.past,
  });
};

/** "One spilled, so 9", "two broke, that makes 22 tins": what it comes to in the end. */
const soMany =
  /^[^?]*\b(?:so|that makes|which makes|leaving|leaves)\b (?:(?:it|that|there|they|we|i)(?:'s| (?:was|is|were|are|makes|have|got|had|only))? |(?:it |that )?(?:comes|came) (?:out )?(?:to|at) )?(?:(?:only|just|now|really|actually|left with|down to|in all) )*(?=(?:\d{1,3}|\w+teen|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|twenty)\b)/i;
export const soManyIn = (text: string): string | undefined => {
  const match = soMany.exec(text);
  const left = match ? text.slice(match[0].length) : '';
  return match &&
    /^[\w-]+(?: (?:tins?|jars?|pots?|tubes?|sticks?|left|in all|altogether|now|not \d+))*\W*$/i.test(left)
    ? `no, ${left.replace(/ (?:left|now)\b/gi, '')}`
    : undefined;
};

/** "No, of 20 g": after a pour an amount by itself is what a tin holds, where it can be. */
const sizeAlone = (bench: BenchReading, reading: Reading, lot: string): Size | undefined => {
  const [amount, second] = bench.rest.items.filter(({ letter }) => /[gvn]/.test(letter));
  const held = reading.bench.batches.get(lotKey(lot))?.size;
  const size =
    amount && !second && amount.letter !== 'n' ? sizeOf(amount, reading.settings.region) : undefined;
  return size && held && size.unit === held.unit && size.amount < 4 * held.amount ? size : undefined;
};

/** "With lot W7, I forgot to say". */
const lotsAnew = ({ lots, rest }: BenchReading): readonly string[] | undefined =>
  lots.length > 0 &&
  lots.every(({ kind }) => kind === 'lot') &&
  /\b(?:with|from|using|used|lots?)\b|\b(?:was|is|were|are) (?:from )?_/i.test(rest.text)
    ? lots.map(({ code }) => code)
    : undefined;

/** "The olive oil was O9": what a lot is of says nothing new. */
const withoutOwnNames = (bench: BenchReading, reading: Reading): BenchReading => {
  const held = bench.lots.flatMap(({ code }) => reading.bench.lots.get(lotKey(code))?.ingredient ?? []);
  const isOwn = ({ ingredients = [] }: Item): boolean => ingredients.some((id) => held.includes(id));
  return held.length === 0
    ? bench
    : { ...bench, rest: { ...bench.rest, items: bench.rest.items.filter((item) => !isOwn(item)) } };
};

const toAnother = (name: string, lot: string): Trouble => ({
  code: 'missing',
  text: `${lot} is in the book with what it was poured from. Say "undo", then tell the pour of ${name} anew.`,
});

/** "Sorry, Meadow salve": a batch stays what it was poured from. */
const ofAnother = ({ rest, lots, days }: BenchReading, reading: Reading, lot: string): Claim | undefined => {
  const [name, second] = rest.items.flatMap(({ recipe }) => recipe ?? []);
  if (name === undefined || second !== undefined || lots.length + days.length > 0) return undefined;
  const isOnly = rest.items.every((item) => isAnew(item) || item.recipe !== undefined);
  const isOther = name !== reading.bench.batches.get(lotKey(lot))?.name;
  return isOnly && isOther && putsRight.test(rest.text) ? refuse(toAnother(name, lot), 3.45) : undefined;
};

/** The message without what it denies, or with what it came to in the end. */
const meantAnew = (whole: Reading): { readonly reading: Reading; readonly denied: boolean } => {
  const way = howIn(whole.text, isTaking(whole.text));
  const total = way === undefined || way === 'wasted' ? soManyIn(whole.text) : undefined;
  return total === undefined ? withoutDenied(whole) : { reading: readAgain(total, whole), denied: false };
};

const allChanges = (reading: Reading, bench: BenchReading, lot: string) => {
  const made = changesIn(bench, reading.settings.region);
  return defined({ ...made, lots: lotsAnew(bench), size: made.size ?? sizeAlone(bench, reading, lot) });
};

/** "Sorry, it was 9 tins", "the tins hold 17 g", "that was yesterday": right after a pour, of that pour. */
export const claimAnew = (whole: Reading): Claim | undefined => {
  const lot = justPoured(whole);
  if (lot === undefined) return undefined;
  const { reading, denied } = meantAnew(whole);
  const bench = withoutOwnNames(readBenchText(reading).bench, reading);
  const other = ofAnother(bench, reading, lot);
  if (other) return other;
  if (!isPutRight(reading, lotsAnew(bench) ? { ...bench, lots: [] } : bench)) return undefined;
  const changes = allChanges(reading, bench, lot);
  const amounts = bench.rest.items.filter(({ letter }) => /[gv]/.test(letter)).length;
  const told = Object.keys(changes).some((key) => key !== 'container' || denied);
  if (!told || amounts > (changes.size ? 1 : 0)) return undefined;
  const seen = reading.bench.batches.get(lotKey(lot))?.seq;
  const why = whole.text.trim().slice(0, longestNote);
  return claim({ action: 'correct', lot, why, ...changes, ...defined({ seen }) }, 3.45, [
    `I took ${lot}, which we spoke of.`,
  ]);
};
