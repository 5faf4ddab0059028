import { lotKey } from './codes.ts';
import type { Draw } from './event-fields.ts';
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
  /** For an oil infused in the house: every lot it was made from, one step back after the other. */
  readonly sources?: readonly TracedLot[];
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
  if (a.batch.madeOn !== b.batch.madeOn) return a.batch.madeOn < b.batch.madeOn ? -1 : 1;
  return a.batch.lot < b.batch.lot ? -1 : 1;
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

/** Every lot that some draws came from, through oils infused in the house. */
const wayBack = (bench: Bench, draws: readonly Draw[]): readonly TracedLot[] => {
  const lots: TracedLot[] = [];
  const seen = new Set<string>();
  const follow = (drawn: readonly Draw[]): void => {
    for (const code of codesIn(drawn)) {
      const lot = bench.lots.get(lotKey(code));
      if (!lot || seen.has(lotKey(code))) continue;
      seen.add(lotKey(code));
      const grams = gramsIn(drawn.filter((draw) => lotKey(draw.lot) === lotKey(code)));
      lots.push({ lot, grams, from: codesIn(lot.draws ?? []) });
      follow(lot.draws ?? []);
    }
  };
  follow(draws);
  return lots;
};

const forward = (bench: Bench, lot: Lot): Trace => {
  const keys = reachedFrom(bench, lotKey(lot.lot));
  const batches = [...keys.batches]
    .flatMap((key) => bench.batches.get(key) ?? [])
    .map((batch) => traced(batch, drawnFrom(drawsOfBatch(batch), keys.lots)));
  const sources = lot.draws ? { sources: wayBack(bench, lot.draws) } : {};
  const lots = madeFrom(bench, keys.lots);
  return { kind: 'lot', code: lot.lot, root: lot, lots, ...sources, ...totals(batches) };
};

const backward = (bench: Bench, batch: Batch): Trace => {
  const draws = drawsOfBatch(batch);
  return { kind: 'batch', code: batch.lot, lots: wayBack(bench, draws), ...totals([traced(batch, draws)]) };
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

/** A place as it is compared: without "the", in lower case. */
export const placeKey = (to: string): string => to.toLowerCase().replace(/^the\s+/, '');

/** The same for a long list: few places are named often, so each is made once. */
const placeKeys = (): ((to: string) => string) => {
  const keys = new Map<string, string>();
  return (to) => {
    const known = keys.get(to) ?? placeKey(to);
    keys.set(to, known);
    return known;
  };
};

interface HeldAt {
  readonly to?: string;
  count: number;
  readonly lots: Set<string>;
}

/** Tins outside the house by place. */
const placesOf = (batches: readonly Pick<TracedBatch, 'batch'>[]): Iterable<HeldAt> => {
  const places = new Map<string, HeldAt>();
  const keyOf = placeKeys();
  const placeOf = (to: string | undefined): HeldAt => {
    const key = to === undefined ? '' : keyOf(to);
    const place = places.get(key) ?? { ...(to ? { to } : {}), count: 0, lots: new Set<string>() };
    places.set(key, place);
    return place;
  };
  for (const { batch } of batches)
    for (const { to, how, count } of batch.gone) {
      if (how !== 'given' && how !== 'sold') continue;
      const place = placeOf(to);
      place.count += count;
      place.lots.add(batch.lot);
    }
  for (const { batch } of batches) for (const { from, count } of batch.back) placeOf(from).count -= count;
  return places.values();
};

/**
 * Somebody may bring back what was given to somebody else. It is taken off where it must have been: off what went to no
 * named place, then off the places that hold most.
 */
const settled = (places: readonly HeldAt[]): readonly HeldAt[] => {
  const holding = places.filter(({ count }) => count > 0);
  let owed = -places.reduce((sum, { count }) => sum + Math.min(0, count), 0);
  if (owed === 0) return holding;
  const inTurn = holding.toSorted(
    (a, b) => Number(b.to === undefined) - Number(a.to === undefined) || b.count - a.count,
  );
  for (const place of inTurn) {
    const off = Math.min(owed, place.count);
    place.count -= off;
    owed -= off;
  }
  return holding.filter(({ count }) => count > 0);
};

/** Who holds tins of the traced batches, each place with its count and its batches; a place not named comes last. */
export const holdersOf = ({
  batches,
}: {
  readonly batches: readonly Pick<TracedBatch, 'batch'>[];
}): readonly { readonly to?: string; readonly count: number; readonly lots: readonly string[] }[] =>
  settled([...placesOf(batches)])
    .map(({ lots, ...place }) => ({ ...place, lots: [...lots] }))
    .toSorted((a, b) => Number(a.to === undefined) - Number(b.to === undefined) || b.count - a.count);

/** Every batch with containers outside the house, oldest first. */
export const allOut = (bench: Bench): readonly TracedBatch[] => {
  const all: TracedBatch[] = [];
  for (const batch of bench.batches.values()) {
    const out = tinsOut(batch);
    if (out > 0) all.push({ batch, grams: 0, from: [], left: tinsLeft(batch), out });
  }
  return all.sort(byDay);
};
