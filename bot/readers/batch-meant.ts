import { lotKey } from '../../core/bench/codes.ts';
import { latestBatches } from '../../core/bench/latest.ts';
import type { Batch, Bench } from '../../core/bench/state.ts';
import { nameKey } from '../../core/names.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { orList } from './ask-back.ts';
import type { BenchReading } from './bench-reading.ts';
import type { LotSaid } from './lots.ts';

/** The batch or lot a message is about, or why that cannot be told. Nothing of both when none is named. */
export interface Meant {
  readonly lot?: string;
  readonly said?: LotSaid;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

/** A word that two years have: asked back about, never guessed. */
export const whichLot = ({ others = [] }: LotSaid): Trouble => ({
  code: 'missing',
  text: `Which one: ${orList(others)}? Say the whole code.`,
});

const asMeant = (said: LotSaid): Meant =>
  said.others ? { said, assumed: [], trouble: whichLot(said) } : { said, lot: said.code, assumed: [] };

/** Most codes offered when it is not clear which batch is meant. */
const mostOffered = 4;

/** The last batches that fit, the latest last. */
const latest = (bench: Bench, fits: (batch: Batch) => boolean): readonly Batch[] => {
  const found: Batch[] = [];
  for (const batch of latestBatches(bench)) {
    if (fits(batch)) found.unshift(batch);
    if (found.length === mostOffered) break;
  }
  return found;
};

const lastWords =
  /\b(?:last|latest|newest|most recent)\s+(?:batch|pour|one)\b|\bbatch we (?:just|last)\b|\b(?:this|that|the) batch\b/i;

/** "Show me the batch", after one was spoken of. */
const thatBatch = /\b(?:this|that|the) batch\b/i;
const latestWords = /\b(?:last|latest|newest|most recent)\b/i;

const ofRecipe = (reading: Reading, bench: Bench): Meant => {
  const names = [...new Set(reading.items.flatMap(({ recipe }) => recipe ?? []))];
  const [name, second] = names;
  const asksLast = lastWords.test(reading.text);
  if (second !== undefined || (name === undefined && !asksLast)) return { assumed: [] };
  const key = name === undefined ? undefined : nameKey(name);
  const found = latest(bench, (batch) => key === undefined || nameKey(batch.name) === key);
  const last = found.at(-1);
  if (!last) return { assumed: [] };
  if (found.length > 1 && !asksLast) {
    const codes = found.map(({ lot, madeOn }) => `${lot} (${madeOn})`);
    return {
      assumed: [],
      trouble: { code: 'missing', text: `Which batch of ${last.name}: ${orList(codes)}? Say its code.` },
    };
  }
  return { lot: last.lot, assumed: [`I took ${last.lot}, ${last.name} of ${last.madeOn}.`] };
};

/** The batch spoken of before in this channel: "it", or no name at all. */
const before = (reading: Reading): string | undefined => {
  const { last } = reading;
  const lot = last?.lot ?? last?.request.lot;
  return typeof lot === 'string' && reading.bench.batches.has(lotKey(lot)) ? lot : undefined;
};

/**
 * Which batch a message is about: the code it names, the last one of a recipe it names, or, with `orBefore`, the one
 * spoken of before. A code that is no batch comes back all the same: whether there is one is for the answer to say.
 */
export const batchMeant = (reading: Reading, bench: BenchReading, orBefore = false): Meant => {
  const batches = bench.lots.filter(({ kind }) => kind === 'batch');
  const [said] = batches.length > 0 ? batches : bench.lots;
  if (said) return asMeant(said);
  const spoken =
    thatBatch.test(reading.text) && !latestWords.test(reading.text) ? before(reading) : undefined;
  if (spoken !== undefined && !bench.rest.items.some(({ recipe }) => recipe !== undefined))
    return { lot: spoken, assumed: [`I took ${spoken}, which we spoke of.`] };
  const named = ofRecipe(bench.rest, reading.bench);
  if (named.lot !== undefined || named.trouble) return named;
  const lot = orBefore ? before(reading) : undefined;
  return lot === undefined ? { assumed: [] } : { lot, assumed: [`I took ${lot}, which we spoke of.`] };
};
