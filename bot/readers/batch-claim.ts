import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { claimAnew } from './batch-anew.ts';
import { claimCorrect } from './batch-correct.ts';
import { claimGone } from './batch-gone.ts';
import { claimWentAnew } from './batch-gone-anew.ts';
import { claimLook } from './batch-look.ts';
import { claimMadeBy, claimWhyDate } from './batch-made-of.ts';
import { batchMeant } from './batch-meant.ts';
import { claimOfOnly } from './batch-of-only.ts';
import { claimPour } from './batch-pour.ts';
import { claimPourRest } from './batch-pour-before.ts';
import { doesNow, mayGoOn } from './batch-pour-told.ts';
import { batchCues, listWords, showWords, whichBatch } from './batch-words.ts';
import type { BenchReading } from './bench-reading.ts';
import { asksOrPlans, type BenchText, longestNote, readBenchText } from './bench-text.ts';
import { periodIn } from './book-when.ts';
import { leftover } from './leftover.ts';
import { lotsIn } from './lots.ts';
import { nextNamed, nextWeight } from './next-named.ts';
import { perJar } from './per-jar.ts';
import { boardOf } from './target.ts';
import { claimGoneInstead } from './told-instead.ts';

const noteCue =
  /\b(?:notes?|comments?|remarks?|jot(?: (?:it |this )?down)?|write(?: (?:it |this )?down)?)\s+(?:on|for|about|to(?! (?:us|me|everyone|everybody|them|him|her)\b)|against|under|with|beside)\b|\b(?:jot|write|note|put)(?: (?:it|this|that))? down (?:with|by|beside) _|^\W*(?:for|on|about|to|with|under) _+\W*(?:please )?(?:write|jot|note|put|add|remember)\b|\bremember (?:about|for|with|of) _|\b(?:add|put|make)\b.{0,20}\bnote\b|\b(?:add|write|put)\b.{0,12}\b(?:to|on|for|under) _+\W*that\b|_\W.{3,120},\s*please note\W*$|^\W*(?:please |also )?(?:notes?|remark)\W+_+|_\W*(?:please\s+)?note\b(?!\s+(?:(?:that|it|this|down|please|thanks|thank you|for us|for me)\s*)*\W*$)|\b(?:picture|photo|pic|image)s?\s+(?:of|for|on)\b/i;

const takesBack =
  /\b(?:strike|delete|remove|undo|cancel|erase|scrap|scratch|take back) (?:my |the |that |our )?(?:last |latest )?(?:note|remark)\b/i;

/** "For 26-KIVO: the lids came from Dora": no number, and no question. */
const isAbout = ({ rest }: BenchReading): boolean =>
  /^\W*(?:for|on|re|about|regarding|concerning) (?:batch )?_+\s*[:-]\s*\p{L}/iu.test(rest.text) &&
  !rest.items.some(({ letter }) => /[ngv%t]/.test(letter)) &&
  !asksOrPlans(rest.text);

/** "Please note that 26-KIVO took longer to set": nothing that went, and no look. */
const isNoteThat = ({ rest }: BenchReading): boolean =>
  /^\W*(?:(?:please|pls|also|and|can you|could you)\W+)*(?:note|write down|record|add|remember|put down)(?: down)? that (?:batch )?_+ \p{L}/iu.test(
    rest.text,
  ) &&
  !rest.items.some(({ letter }) => /[ngv%t]/.test(letter)) &&
  !/\b(?:looks?|smells?|feels?|is|are|has|have|was|were|sold|gone|finished|used|binned|lost|kept|thrown)\b/i.test(
    rest.text,
  );

const tellsNote = (reading: Reading, { bench, note }: BenchText): boolean =>
  !takesBack.test(reading.text) &&
  (noteCue.test(bench.rest.text) ||
    isAbout(bench) ||
    isNoteThat(bench) ||
    (note !== undefined && isBare(bench)));

/** "note on 26-KIVO: set a little grainy", "picture of 26-KIVO: https://…" */
const claimNote = (reading: Reading, text: BenchText): Claim | undefined => {
  if (!tellsNote(reading, text)) return undefined;
  const meant = batchMeant(reading, text.bench, true);
  if (meant.lot === undefined || meant.said?.kind === 'lot') return undefined;
  if (meant.trouble) return refuse(meant.trouble, 3.3);
  const after = reading.text.slice(meant.said?.to ?? 0);
  const free = text.pictures
    .reduce((left, url) => left.replace(url, ''), after)
    .replace(/^[\s:,;-]+|[\s:,;-]+$/g, '')
    .replace(
      /^(?:please\s+)?(?:(?:note|write|jot|put|add|remember)(?: (?:it|this))?(?: down)?\b[\s:,]*)?(?:(?:that|saying)\s+)?/i,
      '',
    )
    .replace(/,?\s*(?:please )?note(?: that| it)?\W*$/i, '');
  const note = text.note ?? (free === '' ? undefined : free.slice(0, longestNote));
  if (note === undefined && text.pictures.length === 0)
    return refuse(
      {
        code: 'missing',
        text: `What shall I note? For example "note on ${meant.lot}: set a little grainy".`,
      },
      3.2,
    );
  return claim(
    {
      action: 'note',
      lot: meant.lot,
      ...defined({ note, pictures: text.pictures.length > 0 ? text.pictures : undefined }),
    },
    3.5,
    meant.assumed,
  );
};

/** Nothing but a code beside the note. */
const isBare = ({ rest, lots }: BenchReading): boolean =>
  lots.length === 1 &&
  rest.items.every(
    ({ letter, word }) => /[,;.:bFITyc-]/.test(letter) || /^(?:on|about|add|this)$/.test(word),
  );

const only = (bench: BenchReading, words: ReadonlySet<string>): boolean => {
  const items = bench.rest.items.filter(({ letter }) => letter !== 'R');
  return leftover(boardOf(items), words, false).blocking.length === 0;
};

const listed =
  /\bbatches\b|\b(?:every|each|all) (?:batch|pour)\b|\bhow (?:often|many times)\b.{0,40}\b(?:pour|poured|make|made)\b|\bwhen (?:did|was|were|have)\b.{0,40}\b(?:pour|poured)\b|\bbatch overview\b|\bpours\b|\bwhat (?:all )?(?:did|have|had) we (?:all )?(?:pour|poured|make|made)\b|\bbatch (?:list|book|record)s?\b|\bquality looks?\b|\blooks? (?:is |are )?due\b|\bdue looks?\b/i;

/** "What was poured in March", "did we pour any in March": with days these are a list too. */
const listedThen =
  /\b(?:what|which|everything|all|list|show|anything|how (?:much|many))\b[^.?!]{0,40}\b(?:poured|made|pour|make)\b|^\W*(?:did|have) (?:we|i|you|they) (?:pour|poured|make|made)\b|\bpoured\b[^.?!]{0,20}\blist\b/i;

/** The words of a period, "April's" too. */
const wordsSaid = (said: string): readonly string[] =>
  said
    .toLowerCase()
    .split(/[\W\d]+/)
    .flatMap((word) => [word, `${word}'s`]);

const claimList = (reading: Reading, { bench }: BenchText): Claim | undefined => {
  const { text } = bench.rest;
  const then = listedThen.test(text);
  const period = then || listed.test(text) ? periodIn(reading) : undefined;
  const isListed = listed.test(text) || (then && period !== undefined);
  const others = bench.days.some(({ role, said }) => role !== 'on' || !period?.said.includes(said));
  const around = period ? [...listWords, ...wordsSaid(period.said)] : listWords;
  if (!isListed || bench.lots.length > 0 || others || !only(bench, new Set(around))) return undefined;
  const names = [...new Set(bench.rest.items.flatMap(({ recipe }) => recipe ?? []))];
  if (names.length > 1) return undefined;
  const which = /\blooks?\b|\bcheck/i.test(text)
    ? 'looks'
    : /\b(?:open|left|still)\b/i.test(text)
      ? 'open'
      : undefined;
  const days = defined({ from: period?.from, to: period?.to });
  return claim({ action: 'list', ...defined({ recipe: names[0], which }), ...days }, 3.1);
};

/** "How many hand balm tins are left": of its only batch, or of all of them. */
const claimLeft = (reading: Reading, { bench }: BenchText): Claim | undefined => {
  const names = [...new Set(bench.rest.items.flatMap(({ recipe }) => recipe ?? []))];
  const asks =
    /\bhow many\b|\b(?:any(?:thing)?|tins|jars|pots|tubes|sticks)\b.{0,40}\b(?:left|remaining)\b/i.test(
      bench.rest.text,
    );
  if (!asks || names.length !== 1 || bench.lots.length > 0 || bench.days.length > 0) return undefined;
  const meant = batchMeant(reading, bench);
  if ((meant.lot ?? meant.trouble) === undefined) return undefined;
  const around = bench.rest.items.filter(({ letter }) => !/[Rc?]/.test(letter));
  if (leftover(boardOf(around), showWords, false).blocking.length > 0) return undefined;
  return meant.lot === undefined
    ? claim({ action: 'list', recipe: names[0] }, 3)
    : claim({ action: 'show', lot: meant.lot }, 3, meant.assumed);
};

/** "And the mint balm?", after a look at a batch. */
const claimNext = (reading: Reading, { bench }: BenchText): Claim | undefined => {
  const { last } = reading;
  const looked = last?.topic === 'batch' && /^(?:show|list)$/.test(String(last.request.action));
  if (!looked || nextNamed(reading)?.recipe === undefined) return undefined;
  const meant = batchMeant(reading, bench);
  if (meant.trouble) return refuse(meant.trouble, nextWeight);
  return meant.lot === undefined
    ? undefined
    : claim({ action: 'show', lot: meant.lot }, nextWeight, meant.assumed);
};

const claimShow = (reading: Reading, { bench }: BenchText): Claim | undefined => {
  const meant = batchMeant(reading, bench);
  const batch = meant.said && meant.said.kind !== 'lot';
  const named = meant.lot !== undefined && meant.said?.kind !== 'lot' && /\bbatch\b/i.test(reading.text);
  const codes = new Set(bench.lots.map(({ code }) => lotKey(code)));
  if ((!batch && !named) || codes.size > 1 || bench.days.length > 0 || !only(bench, showWords))
    return undefined;
  if (meant.trouble) return refuse(meant.trouble, 3);
  // A new code of nobody's: only "batch" makes it one of ours.
  if (
    meant.said?.kind === 'new' &&
    !/^(?:batch|\d{2}-)/i.test(reading.text.slice(meant.said.from, meant.said.to))
  )
    return undefined;
  const lot = meant.lot ?? '';
  const seen = reading.bench.batches.get(lotKey(lot))?.seq;
  if (/\b(?:everyone|everybody|people|names)\b/i.test(bench.rest.text)) return undefined;
  const asksWhere = /\b(?:out|away|gone|given|gave|sold|sell|give)\b/i.test(bench.rest.text);
  return claim({ action: 'show', lot, ...defined({ seen }) }, asksWhere ? 2.75 : 3, meant.assumed);
};

/** A message of a few words with a code in it may be about a batch without any other word. */
const shortTokens = 8;
/** One with a batch's own code may be longer. */
const mostTokens = 80;

/** "6 tins of Winter balm to the tea room", "how many are left": no batch is named, and no verb. */
const namesTins = ({ items, words, tokens, bench }: Reading): boolean =>
  tokens.length <= mostTokens &&
  bench.batches.size > 0 &&
  ['to', 'many', 'left', 'yesterday', 'ago', 'last', 'done'].some((word) => words.has(word)) &&
  items.some(({ letter }) => letter === 'R') &&
  items.some(({ letter }) => letter === 'c');

const concerns = (reading: Reading): boolean =>
  anyWord(reading, batchCues) ||
  namesTins(reading) ||
  mayGoOn(reading) ||
  (doesNow.test(reading.text) && lotsIn(reading).length > 0) ||
  (reading.last?.topic === 'batch' &&
    /^(?:pour|correct|gone|back|show)$/.test(String(reading.last.request.action))) ||
  (reading.tokens.length <= mostTokens &&
    reading.bench.batches.size > 0 &&
    lotsIn(reading).some(({ kind }) => kind !== 'lot' || reading.tokens.length <= shortTokens));

/** "26-KIVO is cracked on top": without a number it is what somebody saw. */
const goneOrLook = (reading: Reading, bench: BenchReading): Claim | undefined => {
  const gone = claimGone(reading, bench);
  return gone?.kind === 'request' ? gone : (claimLook(reading, bench) ?? gone);
};

const withEach = (reading: Reading): Reading =>
  /\b(?:poured|filled|made)\b/i.test(reading.text) ? perJar(reading) : reading;

/** What a message would mean to the book of batches. */
export const claimBatch = (heard: Reading): Claim | undefined => {
  const reading = withEach(heard);
  const instead = claimGoneInstead(reading);
  if (instead) return instead;
  if (!concerns(reading)) return undefined;
  const text = readBenchText(reading);
  return (
    claimNext(reading, text) ??
    claimMadeBy(reading, text.bench) ??
    claimWhyDate(reading, text.bench) ??
    claimWentAnew(reading) ??
    claimCorrect(reading) ??
    claimAnew(reading) ??
    claimNote(reading, text) ??
    claimPour(reading) ??
    goneOrLook(reading, text.bench) ??
    claimList(reading, text) ??
    claimLeft(reading, text) ??
    claimShow(reading, text) ??
    claimOfOnly(reading) ??
    noBatchSaid(reading, text) ??
    claimPourRest(reading)
  );
};

/** "gave 6 tins to the fair": of which batch? */
const noBatchSaid = (reading: Reading, { bench }: BenchText): Claim | undefined => {
  const gives =
    /\b(?:gave|donated|handed out)\b/i.test(reading.text) &&
    bench.rest.items.some(({ letter }) => letter === 'c');
  if (!gives || asksOrPlans(reading.text) || bench.lots.length > 0) return undefined;
  return refuse(whichBatch, 2.6);
};
