import { ingredientById } from '../../core/ingredients.ts';
import { type BenchReading, readBench } from '../readers/bench-reading.ts';
import { asksOrPlans } from '../readers/bench-text.ts';
import { nearHouseCode } from '../readers/lot-shapes.ts';
import { isAmount } from '../readers/stock-amount.ts';
import { bareCode, boughtCue, cameIn, goneElse, isElsewhere } from '../readers/stock-bought-cues.ts';
import { oncePerReading, type Reading } from '../reading.ts';
import { type Place, readAgain } from '../understand.ts';
import { type Columns, columnsIn, startsOf } from './purchase-columns.ts';
import { supplierIn } from './purchase-supplier.ts';
import { moneyIn, withoutClock } from './stretches.ts';
import type { Told } from './told.ts';

// A new code with an ingredient, an amount and a best before came in, whatever is said around them.

const madeHere =
  /\b(?:strain|(?<!\b(?:cold|own|home|freshly|hand)[- ])press|infus|steep|decant|filter|squeez|macerat)\w*\b(?! (?:oil|virgin|olive|sunflower))|\bready to\b/i;

const ahead =
  /\b(?:order\w*|want\w*|wish\w*|would|need\w*|should|will|shall|plan\w*|hop(?:e|ing)|may|might|maybe|perhaps|think|if|unless|undo|mistake|wrong)\b/i;
const denies = /n['’]t\b|\b(?:not|no|none|never|nothing)\b/i;
/** Somebody's own, or on its way. */
const notOurs =
  /\b(?:not|isn't|aren't|wasn't|never) (?:ours|mine|for (?:us|me))\b|\bbelongs? to\b|\bon (?:its|the) way\b|\b(?:arriv|com)ing (?:on|next|in)\b|\binstead of\b|\bfor (?:her|him|them)sel(?:f|ves)\b/i;

/** The last of the places that begins before a thing is whose it is. */
const ownerOf = ({ from }: Place, starts: readonly number[]): number =>
  Math.max(
    0,
    starts.findLastIndex((start) => start <= from),
  );

const eachOf = /^ ?(?:each|apiece|(?:a|per) (?:kilo|kg|bottle|bag|pack|tub|litre|100 g))\b/i;

const plainOf = (bench: BenchReading, columns: Columns): string | undefined => {
  const { rest, days, today } = bench;
  const starts = startsOf(columns);
  if (starts.some((start, at) => at > 0 && start <= (starts[at - 1] ?? 0))) return undefined;
  const best = days.filter(({ role, past }) => role === 'best-before' || past > today);
  const on = days.find((day) => !best.includes(day) && day.past <= today)?.past;
  const inOrder = best.length === starts.length;
  const forAll =
    best.length === 1 && /\b(?:both|all|each|every|same)\b/i.test(rest.text) ? best[0] : undefined;
  const paid = moneyIn(rest.text);
  const supplier = supplierIn(rest);
  const lines = columns.names.map((name, at) => {
    const own = inOrder ? best[at] : (forAll ?? best.find((day) => ownerOf(day, starts) === at));
    const price = paid.find((each) => ownerOf(each, starts) === at);
    return [
      `${columns.amounts[at]?.text} ${name.word}${columns.codes[at] ? ` lot ${columns.codes[at].text}` : ''}`,
      ...(own ? [`best before ${own.future}`] : []),
      ...(supplier === undefined ? [] : [`from ${supplier}`]),
      ...(price ? [`${price.text}${eachOf.exec(rest.text.slice(price.to))?.[0] ?? ''}`] : []),
    ].join(', ');
  });
  return `bought ${on ? `on ${on}: ` : ''}${lines.join('\n')}`;
};

/** "Can you add 300 g of mango butter? The lot is M4." */
const politeAsk =
  /(\b(?:can|could|would|will) you (?:(?:please|kindly|also) )*(?:add|book|put|note|enter|write|record|log|take|register)\b[^?]*)\?/gi;

/** "He didn't need it": what others do without is no plan of ours. */
const notNeeded =
  /\b(?:(?:that|which) )?(?:he|she|they) (?:(?:did not|didn't|no longer|don't|doesn't|do not) )?(?:need|want|use)(?:ed|s)?(?: (?:it|them|any ?more|more))?\b/gi;

/** "…, which is good until June" asks nothing. */
const whichIs = /[\s,]+which (?=(?:is|was|are|were|has|have|keeps?|expires?|must|should|can|may)\b)/gi;

/** "The abbey shop has let us have 2 kg". */
const letUsHave = /\b(?:(?:has|have|had) )?let (?:us|me) have\b/gi;

/** "… that I ordered in February": it is here now. */
const orderedThen =
  /\b(?:that|which) (?:i|we|he|she|they|(?:my|our|the) \p{L}+|\p{Lu}\p{L}+)(?: had| have|['’]d|['’]ve)? (?:ordered|wanted|asked for|needed|been waiting for)\b/giu;

/** "It may be used until June", "book it in under lot K12": nothing ahead, and nothing below a mark. */
const mayKeep =
  /\b(?:can|may|should|must|has to|have to|is to|are to|will|it'll|they'll|that'll) (?:still |all |both )?(?:be )?(?:used|use|kept|keep|last|stay good|eaten|fine|good|ok|okay|all right)?(?: up)?(?= ?_)/gi;
const bookedIn =
  /\b(?:under|as) (?=(?:the )?(?:lot |code |number )?_)|\bgave up(?= \d)|\b(?:please|can|could|would) (?:you )?(?:please )?(?:book|note|put|write|enter|add|record|log|store|save|take)\b/gi;

/** "The shea didn't come with the rest, …": a clause without an amount, a code or a date may say anything but what is still to come. */
const withoutAsides = ({ rest, lots, days }: BenchReading): string => {
  const stops = [...rest.text.matchAll(/[,.;!](?=\s)|\b(?:so|but)\b/gi)].map(({ index }) => index);
  const things = [...lots, ...days, ...rest.items.filter(isAmount)];
  const clauses = [...stops, rest.text.length].map((to, at) => ({ from: stops[at - 1] ?? 0, to }));
  const kept = clauses.filter((clause) => {
    const said = rest.text.slice(clause.from, clause.to);
    const isBare = !things.some(({ from, to }) => from < clause.to && to > clause.from);
    return !isBare || ahead.test(said) || (asksOrPlans(said) && !denies.test(said));
  });
  return kept
    .map(({ from, to }) => rest.text.slice(from, to))
    .join('')
    .replace(politeAsk, '$1.')
    .replace(mayKeep, '')
    .replace(letUsHave, 'gave us')
    .replace(whichIs, ' it ')
    .replace(orderedThen, '')
    .replace(notNeeded, '')
    .replace(bookedIn, '');
};

const noCode = /\b(?:no|without(?: an?| any)?|not have an?|hasn't (?:got )?an?) (?:lot|batch|code)\b/i;
/** "Please add it too." */
const addsIt =
  /\b(?:add|enter|book|write|put|note|record|log|take) (?:it|them|this|that|these)\b|\bnot (?:yet )?in the (?:book|list|stock)\b/i;

/** A date that is told and cannot be read is not left out in silence. */
const datedAnyhow =
  /\b(?:keeps?|best|bbe?|bbd|until|till?|use[- ]by|expir\w*|exp|good (?:to|until|till)|use (?:it )?(?:by|before))\b/i;
const noDate =
  /\b(?:no|without(?: an?| any)?|not have an?|hasn't (?:got )?an?) (?:best[- ]before|expiry|use[- ]by)(?: date)?\b/gi;

/** A new code with a date says enough; one of them alone only with a word that it came. */
const saysEnough = ({ rest, lots, days, today }: BenchReading): boolean => {
  const isDated = days.some(({ role, past }) => role === 'best-before' || past > today);
  const came = [boughtCue, cameIn, addsIt].some((cue) => cue.test(rest.text));
  const withoutNo = rest.text.replace(noDate, '');
  if (!isDated && datedAnyhow.test(withoutNo)) return false;
  if (withoutNo !== rest.text && lots.length > 0) return true;
  if (noCode.test(rest.text) && lots.length === 0) return true;
  return (isDated && (lots.length > 0 || bareCode.test(rest.text))) || (came && (isDated || lots.length > 0));
};

/** "Strained", "filtered": what is made in the house has a herb in it. */
const isMadeHere = ({ rest }: BenchReading): boolean =>
  madeHere.test(rest.text) &&
  rest.items.some(
    ({ ingredients, infusedWith }) =>
      infusedWith !== undefined || ingredients?.some((id) => ingredientById(id)?.kind === 'herb'),
  );

const isTold = (bench: BenchReading): boolean => {
  const { rest, lots, trouble } = bench;
  const text = withoutAsides(bench);
  return (
    !trouble &&
    lots.every(({ kind, cued, code }) => kind === 'new' && (cued || !nearHouseCode.test(code))) &&
    saysEnough(bench) &&
    !isMadeHere(bench) &&
    !rest.items.some(({ letter, upTo }) => letter === 'R' || upTo !== undefined) &&
    !/[?]/.test(text) &&
    !goneElse.test(text) &&
    !isElsewhere(text, false) &&
    !notOurs.test(rest.text)
  );
};

/** What looks like a code and was read as nothing is not left out in silence. */
const missesCode = ({ rest }: BenchReading, { codes }: Columns): boolean =>
  codes.length === 0 && /(?<![\p{L}\d])\p{Lu}{2,8}[-/]?\d{1,6}(?![\p{L}\d])/u.test(rest.text);

const marker = /(?<=^|[\s:;,.])\(?(\d{1,2})[.)]\s+(?=[\p{L}\d])/gu;

/** "1. … 2. … 3. …": numbers that only count what is listed. */
const withoutMarkers = (reading: Reading): Reading => {
  const found = [...reading.text.matchAll(marker)].filter(([, number], at) => Number(number) === at + 1);
  if (found.length < 2) return reading;
  let place = 0;
  const text = reading.text.replace(marker, (all, number) => {
    if (Number(number) !== place + 1) return all;
    place += 1;
    return place === 1 ? '' : '; ';
  });
  return readAgain(text, reading);
};

/**
 * Purchases told in any words: as many new codes as ingredients and amounts, and a best before among them. What is asked,
 * planned, hoped for or somebody else's is none.
 */
export const purchasesIn: (reading: Reading) => readonly Told[] = oncePerReading(
  (message): readonly Told[] => {
    if (!/\d/.test(message.text)) return [];
    const reading = withoutMarkers(withoutClock(message));
    const bench = readBench(reading);
    const columns = isTold(bench) ? columnsIn(bench) : undefined;
    const plain = columns && !missesCode(bench, columns) ? plainOf(bench, columns) : undefined;
    if (plain === undefined) return [];
    return [{ plain, reading: readAgain(plain, reading), besides: [], verb: 'bought', slots: [] }];
  },
);
