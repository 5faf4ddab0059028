import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { whichLot } from './batch-meant.ts';
import type { BenchReading } from './bench-reading.ts';
import { asksOrPlans, type BenchText, longestNote } from './bench-text.ts';
import type { Item } from './item.ts';
import type { LotSaid } from './lots.ts';
import { type GramsRead, gramsRead, isAmount, nameRead } from './stock-amount.ts';
import { howMuchTaken, whichStock } from './stock-words.ts';

/** The lot on the shelf a message is about: one that is known, or a new code after the word "lot". */
export const lotMeant = ({ lots }: BenchReading): LotSaid | undefined => {
  const shelf = lots.filter(({ kind }) => kind !== 'batch');
  const [first, second] = shelf;
  return first && !second && lots.length === 1 ? first : undefined;
};

const dayIn = ({ days }: BenchReading): string | undefined => days.find(({ role }) => role === 'on')?.past;
const bestIn = ({ days }: BenchReading): string | undefined =>
  days.find(({ role }) => role === 'best-before')?.future;

const thing = ({ rest }: BenchReading): Item | undefined => {
  const names = rest.items.filter(({ letter }) => letter === 'i');
  return names.length === 1 ? names[0] : undefined;
};

/** What stands after a comma, "because", a dash or a colon: the reason in the maker's own words. */
const reasonIn = (text: string): string | undefined => {
  const match = /(?:[,;:]\s+|\s-\s|\bbecause\b\s*|\bsince\b\s*|\bas it\b)([^_]{3,})$/i.exec(text);
  const said = match?.[1]
    ?.replace(/_+/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/[\s.!]+$/, '')
    .trim()
    .slice(0, longestNote);
  return said && /\p{L}{3}/u.test(said) ? said : undefined;
};

const countCue =
  /\b(?:is|are|was|has|have|had|holds|actually|really|left|adjust|set|count(?:ed)?|weigh(?:ed|s)?|correct(?:ion)?|inventory)\b|[:=]/i;
const emptyCue =
  /\b(?:is empty|used up|all gone|is gone|finished|is out|run out|ran out|none left|empty now|emptied)\b/i;
const wasteCue =
  /\b(?:threw|thrown|throw|lost|binned|wasted|waste|discarded|spilled|spilt|chucked|poured away|tipped)\b/i;
const useCue = /\b(?:used|took|taken|use up|gave away)\b/i;

type Fields = Readonly<Record<string, unknown>>;

/** What is taken out of: a lot, or an ingredient from its oldest lots on. */
const targetOf = (bench: BenchReading): Fields | undefined => {
  const lot = lotMeant(bench);
  if (lot) return { lot: lot.code };
  const item = thing(bench);
  const named = item && nameRead(item);
  return named?.id === undefined ? undefined : { ingredient: named.id, ...defined({ herb: named.herb }) };
};

const amountOf = (reading: Reading, bench: BenchReading, fields: Fields) => {
  const [amount, second] = bench.rest.items.filter(isAmount);
  if (!amount || second) return undefined;
  const lot = lotMeant(bench);
  const known = lot && reading.bench.lots.get(lotKey(lot.code));
  const ingredient = known?.ingredient ?? (typeof fields.ingredient === 'string' ? fields.ingredient : '');
  return gramsRead(amount, ingredient, reading.settings.region);
};

const howTaken = ({ rest, lots }: BenchReading): 'wasted' | 'used' | undefined => {
  if (lots.some(({ kind }) => kind === 'batch') || rest.items.some(({ letter }) => /[Rc]/.test(letter)))
    return undefined;
  if (wasteCue.test(rest.text)) return 'wasted';
  return useCue.test(rest.text) ? 'used' : undefined;
};

const allOf = /\b(?:all|the rest|everything|what(?:'s| is) left|remaining)\b/i;

const takenClaim = (
  text: BenchText,
  how: string,
  fields: Fields,
  read: GramsRead | undefined,
): Claim | undefined => {
  const { bench, note } = text;
  const said = bench.rest.text;
  const all = allOf.test(said) || undefined;
  if (read?.grams === undefined && !all) return lotMeant(bench) ? refuse(howMuchTaken, 3.1) : undefined;
  const why = note ?? reasonIn(said);
  const again = /\banother\b/i.test(said) || undefined;
  const more = defined({ grams: read?.grams, all, on: dayIn(bench), why, again });
  return claim({ action: 'taken', how, ...fields, ...more }, 3.3, read?.assumed ? [read.assumed] : []);
};

/** "threw away 50 g of K12, rancid", "used 30 g beeswax for a test". */
const claimTaken = (reading: Reading, text: BenchText): Claim | undefined => {
  const { bench } = text;
  const how = howTaken(bench);
  if (!how) return undefined;
  const fields = targetOf(bench);
  if (!fields)
    return how === 'wasted' && bench.rest.items.some(isAmount) ? refuse(whichStock, 2.6) : undefined;
  const read = amountOf(reading, bench, fields);
  return read?.trouble ? refuse(read.trouble, 3.3) : takenClaim(text, how, fields, read);
};

/** "K12 is really 230 g", "K12 is empty". */
const claimCounted = (reading: Reading, { bench, note }: BenchText): Claim | undefined => {
  const lot = lotMeant(bench);
  const { text } = bench.rest;
  if (!lot) return undefined;
  const on = dayIn(bench);
  const why = note ?? reasonIn(text.replace(/^[^_]*_+\s*:/, ''));
  const amounts = bench.rest.items.filter(isAmount);
  if (emptyCue.test(text) && amounts.length === 0)
    return claim({ action: 'counted', lot: lot.code, grams: 0, ...defined({ on, why }) }, 3.3);
  const strangers = bench.rest.items.some(({ letter }) => /[RctM%]/.test(letter));
  if (amounts.length !== 1 || !countCue.test(text) || strangers) return undefined;
  const read = amountOf(reading, bench, {});
  if (read?.trouble) return refuse(read.trouble, 3.3);
  return read?.grams === undefined
    ? undefined
    : claim(
        { action: 'counted', lot: lot.code, grams: read.grams, ...defined({ on, why }) },
        3.3,
        read.assumed ? [read.assumed] : [],
      );
};

/** "opened K12 today". */
const claimOpened = ({ bench }: BenchText): Claim | undefined => {
  const lot = lotMeant(bench);
  const told = /\b(?:opened|open(?:ed)? since|broke the seal|started)\b/i.test(bench.rest.text);
  if (!lot || !told || bench.rest.items.some(({ letter }) => /[gvRcn%]/.test(letter))) return undefined;
  return claim({ action: 'opened', lot: lot.code, ...defined({ on: dayIn(bench) }) }, 3.3);
};

/** "K12 is best before 2027-04", "the date of K12 is wrong: no date". */
const claimDated = ({ bench, note }: BenchText): Claim | undefined => {
  const lot = lotMeant(bench);
  if (!lot || bench.rest.items.some(({ letter }) => /[gvRcn%]/.test(letter))) return undefined;
  const bestBefore = bestIn(bench);
  const none = /\b(?:has|with|there is|is) no (?:best before|date)\b|\bno best before\b/i.test(
    bench.rest.text,
  );
  if (bestBefore === undefined && !none) return undefined;
  return claim(
    { action: 'dated', lot: lot.code, ...defined({ bestBefore, why: note }) },
    3.3,
    assumedIn(bench),
  );
};

const assumedIn = ({ days }: BenchReading): string[] => days.flatMap(({ assumed }) => assumed ?? []);

/** "note on K12: smells nutty". */
const claimNote = (reading: Reading, { bench, note }: BenchText): Claim | undefined => {
  const lot = lotMeant(bench);
  if (lot?.kind !== 'lot') return undefined;
  const after = /\bnotes?\s+(?:on|for|about)\b/i.test(reading.text)
    ? reading.text.slice(lot.to).replace(/^[\s:,;-]+/, '')
    : '';
  const said = note ?? (after === '' ? undefined : after.slice(0, longestNote));
  const bare = bench.rest.items.every(({ letter }) => /[wbF,:;.-]/.test(letter));
  return said === undefined || (!bare && after === '')
    ? undefined
    : claim({ action: 'note', lot: lot.code, note: said }, 3.4);
};

/** What was done to one lot, or to the stock of one ingredient. */
export const claimLot = (reading: Reading, text: BenchText): Claim | undefined => {
  const unclear = text.bench.lots.find(({ others }) => others);
  if (unclear) return refuse(whichLot(unclear), 2);
  const noted = claimNote(reading, text);
  if (noted) return noted;
  if (asksOrPlans(text.bench.rest.text)) return undefined;
  const found =
    claimTaken(reading, text) ?? claimCounted(reading, text) ?? claimOpened(text) ?? claimDated(text);
  return found && text.bench.trouble ? refuse(text.bench.trouble, 3.3) : found;
};
