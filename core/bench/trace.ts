import { lotKey } from './codes.ts';
import type { Draw } from './events.ts';
import { sumG } from './exact.ts';
import { usersOfLots } from './lookups.ts';
import { type Batch, type Bench, type Gone, type Lot, tinsLeft, tinsOut } from './state.ts';

/** A lot on the way between what was asked about and the tins. */
export interface TracedLot {
  readonly lot: Lot;
  /** Grams of it that went the way that is traced. */
  readonly grams: number;
  /** Codes it came from, one step back: for an oil infused in the house. */
  readonly from: readonly string[];
}

export interface TracedBatch {
  readonly batch: Batch;
  /** Grams drawn from the lots that are traced. */
  readonly grams: number;
  /** The traced lots it drew from, as they are written in the book. */
  readonly from: readonly string[];
  readonly left: number;
  readonly out: number;
}

/** Somewhere containers went, from which batch. */
export interface TracedGone extends Gone {
  readonly lot: string;
}

export interface Trace {
  readonly kind: 'lot' | 'batch';
  readonly code: string;
  /** The lot asked about; missing for a batch. */
  readonly root?: Lot;
  /** For a lot: lots made from it. For a batch: every lot it came from, one step back after the other. */
  readonly lots: readonly TracedLot[];
  /** Batches that hold it, oldest first; for a batch that batch alone. */
  readonly batches: readonly TracedBatch[];
  readonly gone: readonly TracedGone[];
  readonly out: number;
  readonly left: number;
}

const drawsOfBatch = (batch: Batch): readonly Draw[] => batch.lines.flatMap(({ draws }) => draws);

const drawnFrom = (draws: readonly Draw[], keys: ReadonlySet<string>): readonly Draw[] =>
  draws.filter(({ lot }) => keys.has(lotKey(lot)));

const gramsIn = (draws: readonly Draw[]): number => sumG(draws.map(({ grams }) => grams));

const codesIn = (draws: readonly Draw[]): readonly string[] => [...new Set(draws.map(({ lot }) => lot))];

const traced = (batch: Batch, draws: readonly Draw[]): TracedBatch => ({
  batch,
  grams: gramsIn(draws),
  from: codesIn(draws),
  left: tinsLeft(batch),
  out: tinsOut(batch),
});

const byDay = (a: TracedBatch, b: TracedBatch): number => {
  const [first, second] = [a.batch, b.batch];
  if (first.madeOn !== second.madeOn) return first.madeOn < second.madeOn ? -1 : 1;
  return first.lot < second.lot ? -1 : 1;
};

const totals = (batches: readonly TracedBatch[]): Pick<Trace, 'batches' | 'gone' | 'out' | 'left'> => {
  const sorted = batches.toSorted(byDay);
  return {
    batches: sorted,
    gone: sorted.flatMap(({ batch }) => batch.gone.map((gone) => ({ ...gone, lot: batch.lot }))),
    out: sorted.reduce((sum, { out }) => sum + out, 0),
    left: sorted.reduce((sum, { left }) => sum + left, 0),
  };
};

/** Keys of the lots and batches that drew from a lot, themselves or through oils infused in the house. */
const reachedFrom = (bench: Bench, key: string) => {
  const users = usersOfLots.of(bench);
  const lots = new Set([key]);
  const batches = new Set<string>();
  // A set that grows while it is walked is walked to its new end.
  for (const from of lots)
    for (const item of users.get(from) ?? []) {
      const user = item.slice(item.indexOf(':') + 1);
      (item.startsWith('lot:') ? lots : batches).add(user);
    }
  return { lots, batches };
};

const madeFrom = (bench: Bench, keys: ReadonlySet<string>): readonly TracedLot[] =>
  [...keys]
    .slice(1)
    .flatMap((key) => bench.lots.get(key) ?? [])
    .map((lot) => {
      const from = drawnFrom(lot.draws ?? [], keys);
      return { lot, grams: gramsIn(from), from: codesIn(from) };
    });

const forward = (bench: Bench, lot: Lot): Trace => {
  const keys = reachedFrom(bench, lotKey(lot.lot));
  const batches = [...keys.batches]
    .flatMap((key) => bench.batches.get(key) ?? [])
    .map((batch) => traced(batch, drawnFrom(drawsOfBatch(batch), keys.lots)));
  return { kind: 'lot', code: lot.lot, root: lot, lots: madeFrom(bench, keys.lots), ...totals(batches) };
};

const backward = (bench: Bench, batch: Batch): Trace => {
  const lots: TracedLot[] = [];
  const seen = new Set<string>();
  const follow = (draws: readonly Draw[]): void => {
    for (const code of codesIn(draws)) {
      const lot = bench.lots.get(lotKey(code));
      if (!lot || seen.has(lotKey(code))) continue;
      seen.add(lotKey(code));
      const grams = gramsIn(draws.filter((draw) => lotKey(draw.lot) === lotKey(code)));
      lots.push({ lot, grams, from: codesIn(lot.draws ?? []) });
      follow(lot.draws ?? []);
    }
  };
  follow(drawsOfBatch(batch));
  return { kind: 'batch', code: batch.lot, lots, ...totals([traced(batch, drawsOfBatch(batch))]) };
};

/**
 * Follows a lot forward to the batches that hold it, through oils infused in the house, and to where the tins went; or a
 * batch back to every lot it came from. Undefined for a code the book does not have.
 */
export const traceOf = (bench: Bench, code: string): Trace | undefined => {
  const key = lotKey(code);
  const batch = bench.batches.get(key);
  if (batch) return backward(bench, batch);
  const lot = bench.lots.get(key);
  return lot && forward(bench, lot);
};

/** A place as it is compared: without "the", in lower case. Few places are named often, so each is made once. */
const placeKeys = (): ((to: string) => string) => {
  const keys = new Map<string, string>();
  return (to) => {
    const known = keys.get(to) ?? to.toLowerCase().replace(/^the\s+/, '');
    keys.set(to, known);
    return known;
  };
};

/** Who holds tins of the traced batches, each place with its count per batch; places not named come last. */
export const holdersOf = (
  trace: Pick<Trace, 'gone' | 'batches'>,
): readonly { readonly to?: string; readonly count: number; readonly lots: readonly string[] }[] => {
  const places = new Map<string, { to?: string; count: number; lots: Set<string> }>();
  const keyOf = placeKeys();
  const placeOf = (to: string | undefined) => {
    const key = to === undefined ? '' : keyOf(to);
    const place = places.get(key) ?? { ...(to ? { to } : {}), count: 0, lots: new Set<string>() };
    places.set(key, place);
    return place;
  };
  for (const { lot, to, how, count } of trace.gone) {
    if (how !== 'given' && how !== 'sold') continue;
    const place = placeOf(to);
    place.count += count;
    place.lots.add(lot);
  }
  for (const { batch } of trace.batches)
    for (const { from, count } of batch.back) placeOf(from).count -= count;
  return [...places.values()]
    .filter(({ count }) => count !== 0)
    .map(({ lots, ...place }) => ({ ...place, lots: [...lots] }))
    .toSorted((a, b) => Number(a.to === undefined) - Number(b.to === undefined) || b.count - a.count);
};

/** The place that has all there is of a batch outside the house, where one place alone has it and is named. */
export const onlyHolder = (batch: Batch): string | undefined => {
  const [only, second] = holdersOf(totals([traced(batch, [])]));
  return second ? undefined : only?.to;
};

/** Every batch with containers outside the house, oldest first. */
export const allOut = (bench: Bench): readonly TracedBatch[] =>
  [...bench.batches.values()]
    .filter((batch) => tinsOut(batch) > 0)
    .map((batch) => traced(batch, []))
    .toSorted(byDay);
