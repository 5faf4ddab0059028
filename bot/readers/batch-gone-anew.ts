import { lotKey } from '../../core/bench/codes.ts';
import type { Batch } from '../../core/bench/state.ts';
import { holdersOf, placeKey } from '../../core/bench/trace.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { type Part, partsOf } from './batch-gone-clauses.ts';
import type { How } from './batch-gone-verbs.ts';
import { type BenchReading, readBench } from './bench-reading.ts';
import { asksOrPlans } from './bench-text.ts';
import { smallNumbers } from './number.ts';

type Told = Part & { readonly how: How; readonly lot: string };

interface Holder {
  readonly to: string;
  readonly count: number;
}

const holders = (batch: Batch): readonly Holder[] =>
  holdersOf({ batches: [{ batch }] }).flatMap(({ to, count }) => (to === undefined ? [] : [{ to, count }]));

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

const bareName = (to: string): string => placeKey(to).replace(/^(?:my|our|an?|his|her|their) /, '');

/** "Ali came back with 2", of what my neighbour Ali had. */
const properName = (to: string): readonly string[] => /\p{Lu}\p{L}{2,}$/u.exec(to)?.slice(0, 1) ?? [];

const isNamed = ({ to }: Holder, text: string): boolean =>
  // "One cub's mum": of the cubs.
  [bareName(to).replace(/s$/, ''), ...properName(to)].some((name) =>
    new RegExp(`(?<![\\p{L}\\d])${escaped(name)}s?(?![\\p{L}\\d])`, 'iu').test(text),
  );

const isSame = (one: string, other: string): boolean => placeKey(one) === placeKey(other);

/** "2 came back", right after some went: from where they went. */
const pointedAt = ({ last }: Reading, { lot }: Told, all: readonly Holder[]): Holder | undefined => {
  const [part, second] = (last?.request.parts ?? []) as readonly { readonly to?: string }[];
  if (!part?.to || second || last?.topic !== 'batch' || last.request.action !== 'gone') return undefined;
  if (lotKey(String(last.request.lot)) !== lotKey(lot)) return undefined;
  return all.find(({ to }) => part?.to !== undefined && isSame(to, part.to));
};

/** Where something came back from is a place that has some, wherever in the message it is named. */
const fromHolder = (part: Told, reading: Reading): Told => {
  const batch = reading.bench.batches.get(lotKey(part.lot));
  if (part.how !== 'back' || !batch) return part;
  const all = holders(batch);
  if (part.to !== undefined && all.some(({ to }) => isSame(to, part.to ?? ''))) return part;
  const [found, second] = all.filter((each) => isNamed(each, reading.text));
  const meant =
    (second ? undefined : found) ?? (part.to === undefined ? pointedAt(reading, part, all) : undefined);
  return meant && meant.count >= (part.count ?? 1) ? { ...part, to: meant.to } : part;
};

const wrong =
  /\b(?:wrong|mistakes?|miscounted|correction|erratum|recounted|should (?:be|have been)|in fact|in truth|i see now)\b/i;

/** How many were told to have gone to a place: the one time that is denied now, else all that went there. */
const toldBefore = (batch: Batch, to: string, old: number | undefined): number | undefined => {
  const went = batch.gone.filter((each) => each.to !== undefined && isSame(each.to, to));
  if (went.length === 0) return undefined;
  return went.some(({ count }) => count === old) ? old : went.reduce((sum, { count }) => sum + count, 0);
};

/** "Only took 5, not 6": six were told to have gone there. */
const wentBefore = (part: Told, batch: Batch, old: number): boolean =>
  part.to !== undefined && toldBefore(batch, part.to, old) === old;

/** What was told before of the place, put right: the difference goes, or comes back. */
const asDifference = (part: Told, batch: Batch, old: number | undefined): Told => {
  const isOut = part.how === 'given' || part.how === 'sold';
  if (!isOut || part.count === undefined || part.to === undefined) return part;
  const had = toldBefore(batch, part.to, old);
  if (had === undefined || had === part.count) return part;
  return part.count < had
    ? { ...part, how: 'back', count: had - part.count }
    : { ...part, count: part.count - had };
};

/** The parts with where they came back from. */
export const withHolders = (parts: readonly Told[], reading: Reading): readonly Told[] =>
  parts.map((part) => fromHolder(part, reading));

const notSoMany =
  /,?\s*\b(?:and )?not (?:the )?(\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\b(?: tins?| jars?| pots?| tubes?| sticks?)?/gi;

const saidThen =
  /\b(?:i|we) (?:said|wrote|noted|put|told you|counted) (\d{1,3}|\w+)(?: tins?| jars?| pots?| tubes?| sticks?)? (?:for|to|at) ([^,.;:!?\d_]{2,40}?),? (?:but|and) (?:it|that|they|she|he) (?:was|were|is|got|had|took)(?: really| actually| only)? (\d{1,3}|\w+)(?: tins?| jars?| pots?| tubes?| sticks?)?(?= (?:of|from)\b|\W*$)/iu;
/** "I said ten for Beryl but it was eleven of 26-KIVO" */
const saidAnew = (message: Reading): Reading =>
  saidThen.test(message.text)
    ? readAgain(message.text.replace(saidThen, 'mistake: gave $2 $3'), message)
    : message;

const aboutWhom = /\b(?:about|with|for) (?:the |my |our )?([^,.;:!?_]{3,40}?)(?=[,.;:!?])/i;
/** "I was wrong about ward 3, it was 4 of it": who had some before. */
const atNamed = (part: Told, batch: Batch, text: string): Told => {
  if (part.to !== undefined) return part;
  const about = aboutWhom.exec(text)?.[1]?.toLowerCase();
  const [found, second] = holders(batch).filter(
    (each) => isNamed(each, text) || (about !== undefined && each.to.toLowerCase().includes(about)),
  );
  return found && !second ? { ...part, to: found.to, how: 'given' } : part;
};

const staysWritten: Trouble = {
  code: 'missing',
  text: 'What was thrown away, used or kept is put right in the message right after it ("no, only 1"), or by "undo", which takes the last entry back. Nothing was written down.',
};

interface Anew {
  readonly part: Told;
  readonly anew: Told;
  /** It never left the house, so that nothing can come back. */
  readonly inHouse: boolean;
}

const onlyBatch = (reading: Reading, { lots: [code, second] }: BenchReading): Batch | undefined =>
  code?.kind === 'batch' && !second ? reading.bench.batches.get(lotKey(code.code)) : undefined;

const anewIn = (message: Reading): Anew | undefined => {
  const { text } = message;
  const denied = new RegExp(notSoMany, 'i').exec(text);
  const saysWrong = wrong.test(text) || message.denies === true;
  if (!saysWrong && !denied) return undefined;
  const reading = readAgain(text.replace(notSoMany, ''), message);
  const bench = readBench(reading);
  const batch = onlyBatch(reading, bench);
  if (!batch || asksOrPlans(reading.text)) return undefined;
  const [told, other] = partsOf(bench, batch.lot);
  if (!told || other) return undefined;
  const part = atNamed(told, batch, reading.text);
  const word = denied?.[1]?.toLowerCase() ?? '';
  const old = smallNumbers[word] ?? Number(word);
  return saysWrong || wentBefore(part, batch, old)
    ? {
        part,
        anew: asDifference(part, batch, old),
        inHouse: saysWrong && denied !== null && /^(?:wasted|used|kept)$/.test(part.how),
      }
    : undefined;
};

/** "Got it wrong: 4 went to the cubs out of 26-KIVO, not 5": the difference goes, or comes back. */
export const claimWentAnew = (said: Reading): Claim | undefined => {
  const found = anewIn(saidAnew(said));
  if (found?.inHouse) return refuse(staysWritten, 3.6);
  if (!found || found.anew === found.part) return undefined;
  const { how, lot, count, to } = found.anew;
  const took = `I took ${found.part.count} as what went to ${to} in all.`;
  const action = how === 'back' ? { action: 'back' } : { action: 'gone', how };
  return claim({ ...action, lot, parts: [{ count, to }] }, 3.6, [took]);
};
