import { defined } from '../defined.ts';
import type { PouredLine } from './batch-events.ts';
import { isUnwanted, lotCode, lotKey } from './codes.ts';
import type { Draw } from './event-fields.ts';
import type { BenchEvent, BenchEventOf } from './events.ts';
import { exactG, minusG, plusG } from './exact.ts';
import { followLookups } from './lookups.ts';
import type { Batch, Bench, Lot, Reaction } from './state.ts';
import { touchedBy } from './touched.ts';

type Effect<K extends BenchEvent['kind']> = (bench: Bench, event: BenchEventOf<K>, seq: number) => Bench;

const withLot = (bench: Bench, code: string, change: (lot: Lot) => Lot): Bench => {
  const key = lotKey(code);
  const lot = bench.lots.get(key);
  return lot ? { ...bench, lots: bench.lots.set(key, change(lot)) } : bench;
};

const withBatch = (bench: Bench, code: string, seq: number, change: (batch: Batch) => Batch): Bench => {
  const key = lotKey(code);
  const batch = bench.batches.get(key);
  return batch ? { ...bench, batches: bench.batches.set(key, { ...change(batch), seq }) } : bench;
};

/** Takes what was drawn out of its lots. More than is left leaves nothing: a lot never goes below zero. */
const drawn = (bench: Bench, draws: readonly Draw[], sign: 1 | -1 = 1): Bench =>
  draws.reduce(
    (all, { lot, grams }) =>
      withLot(all, lot, (before) => ({
        ...before,
        leftG: sign === 1 ? Math.max(0, minusG(before.leftG, grams)) : plusG(before.leftG, grams),
      })),
    bench,
  );

const drawsOf = (lines: readonly PouredLine[]): readonly Draw[] => lines.flatMap(({ draws }) => draws);

const bought: Effect<'lot-bought'> = (bench, event) => {
  const { kind: _kind, lot, grams, note, ...about } = event;
  const key = lotKey(lot);
  const before = bench.lots.get(key);
  const notes = [...(before?.notes ?? []), ...(note ? [note] : [])];
  const after: Lot = before
    ? { ...before, ...about, gotG: plusG(before.gotG, grams), leftG: plusG(before.leftG, grams), notes }
    : { lot, ...about, gotG: exactG(grams), leftG: exactG(grams), notes };
  return { ...bench, lots: bench.lots.set(key, after), made: bench.made + madeBy(bench, lot, event.on) };
};

/** 1 when the code is the next of the house's own, so that it is not given twice. */
const madeBy = (bench: Bench, code: string, on: string): number => {
  const key = lotKey(code);
  return nextCode(bench, on).tried.findIndex((each) => lotKey(each) === key) + 1;
};

/** The house's next lot code for a day, with those it passed over because they are taken or unwanted. */
export const nextCode = (
  bench: Bench,
  on: string,
): { readonly code: string; readonly tried: readonly string[] } => {
  const tried: string[] = [];
  for (let count = bench.made; ; count += 1) {
    const code = lotCode(on, count);
    tried.push(code);
    const key = lotKey(code);
    if (!isUnwanted(code) && !bench.lots.has(key) && !bench.batches.has(key)) return { code, tried };
  }
};

const infused: Effect<'oil-infused'> = (bench, event) => {
  const { kind: _kind, lot, grams, note, short: _short, ...about } = event;
  const after: Lot = { lot, ...about, gotG: exactG(grams), leftG: exactG(grams), notes: note ? [note] : [] };
  const made = bench.made + madeBy(bench, lot, event.on);
  const next = drawn(bench, event.draws);
  return { ...next, lots: next.lots.set(lotKey(lot), after), made };
};

const poured: Effect<'batch-poured'> = (bench, event, seq) => {
  const { kind: _kind, note, pictures = [], ...about } = event;
  const on = event.madeOn;
  const batch: Batch = {
    ...about,
    notes: [...(note ? [{ on, text: note }] : []), ...pictures.map((picture) => ({ on, picture }))],
    gone: [],
    back: [],
    looks: [],
    corrected: [],
    seq,
  };
  const made = bench.made + madeBy(bench, event.lot, event.madeOn);
  const next = drawn(bench, drawsOf(event.lines));
  return { ...next, batches: next.batches.set(lotKey(event.lot), batch), made };
};

const corrected: Effect<'batch-corrected'> = (bench, event, seq) => {
  const before = bench.batches.get(lotKey(event.lot));
  if (!before) return bench;
  const { lines } = event.changes;
  const back = lines ? drawn(bench, drawsOf(before.lines), -1) : bench;
  const next = lines ? drawn(back, drawsOf(lines)) : back;
  return withBatch(next, event.lot, seq, (batch) => ({
    ...batch,
    ...(event.changes as Partial<Batch>),
    corrected: [...batch.corrected, event.why],
  }));
};

const noted: Effect<'reaction-noted'> = (bench, { kind: _kind, ...event }) => ({
  ...bench,
  reactions: bench.reactions.set(event.id, { ...event, followed: [], closed: false }),
});

const followed: Effect<'reaction-followed'> = (bench, { kind: _kind, id, ...event }) => {
  const before = bench.reactions.get(id);
  if (!before) return bench;
  const { contact, lot, serious, closed } = event;
  const { contact: known, ...rest } = before;
  const now = contact === undefined ? known : (contact ?? undefined);
  // The contact stands in one place only, so that taking it away leaves none behind.
  const { contact: _said, ...step } = event;
  const after: Reaction = {
    ...rest,
    ...(now === undefined ? {} : { contact: now }),
    ...(serious === undefined ? {} : { serious }),
    ...(lot === undefined ? {} : { lot }),
    closed: closed ?? before.closed,
    followed: [...before.followed, step],
  };
  return { ...bench, reactions: bench.reactions.set(id, after) };
};

const answered: Effect<'due-answered'> = (bench, { item, answer, until, bestBefore }) => ({
  ...bench,
  answers: bench.answers.set(item, { answer, ...defined({ until, bestBefore }) }),
});

/** A reminder that is changed owes the days the old one owed, and starts afresh with failures. */
const reminded: Effect<'reminder-set'> = (bench, { kind: _kind, ...set }) => {
  const { reminder: before } = bench;
  const from = before ? before.from : set.from;
  const { from: _from, ...rest } = set;
  const { stopped: _stopped, ...others } = bench;
  return { ...others, reminder: { ...rest, ...defined({ from, begun: before?.begun }) } };
};

/** What was set is kept, for when reminders are wanted again. */
const silenced: Effect<'reminder-stopped'> = ({ reminder, ...rest }) => {
  if (!reminder) return rest;
  const { hour, minute, zone, leadDays } = reminder;
  return { ...rest, stopped: { hour, minute, zone, leadDays } };
};

const withReminder = (
  bench: Bench,
  change: (reminder: NonNullable<Bench['reminder']>) => Bench['reminder'],
) => {
  const reminder = bench.reminder && change(bench.reminder);
  return reminder ? { ...bench, reminder } : bench;
};

const effects: { [K in BenchEvent['kind']]: Effect<K> } = {
  'lot-bought': bought,
  'oil-infused': infused,
  'lot-opened': (bench, { lot, on }) => withLot(bench, lot, (before) => ({ ...before, opened: on })),
  'lot-dated': (bench, { lot, bestBefore }) =>
    withLot(bench, lot, ({ bestBefore: _old, ...rest }) => (bestBefore ? { ...rest, bestBefore } : rest)),
  'lot-priced': (bench, { lot, price }) => withLot(bench, lot, (before) => ({ ...before, price })),
  'lot-noted': (bench, { lot, text }) =>
    withLot(bench, lot, (before) => ({ ...before, notes: [...before.notes, text] })),
  'lot-counted': (bench, { lot, leftG }) =>
    withLot(bench, lot, (before) => ({ ...before, leftG: exactG(leftG) })),
  'stock-taken': (bench, { draws }) => drawn(bench, draws),
  'low-mark-set': (bench, { ingredient, grams }) => ({
    ...bench,
    low: grams === null ? bench.low.delete(ingredient) : bench.low.set(ingredient, exactG(grams)),
  }),
  'batch-poured': poured,
  'batch-corrected': corrected,
  'batch-noted': (bench, { kind: _kind, lot, ...note }, seq) =>
    withBatch(bench, lot, seq, (batch) => ({ ...batch, notes: [...batch.notes, note] })),
  'tins-gone': (bench, { kind: _kind, lot, ...gone }, seq) =>
    withBatch(bench, lot, seq, (batch) => ({ ...batch, gone: [...batch.gone, gone] })),
  'tins-back': (bench, { kind: _kind, lot, ...back }, seq) =>
    withBatch(bench, lot, seq, (batch) => ({ ...batch, back: [...batch.back, back] })),
  'batch-looked': (bench, { kind: _kind, lot, ...look }, seq) =>
    withBatch(bench, lot, seq, (batch) => ({ ...batch, looks: [...batch.looks, look] })),
  'reaction-noted': noted,
  'reaction-followed': followed,
  'reminder-set': reminded,
  'reminder-stopped': silenced,
  'reminder-begun': (bench, { day, nonce, at }) =>
    withReminder(bench, (reminder) => ({ ...reminder, begun: { day, nonce, at } })),
  'reminder-sent': (bench, { day, items }) => ({
    ...withReminder(bench, ({ begun: _begun, failedDay: _failed, toldOwner: _told, ...rest }) => rest),
    told: { day, items },
  }),
  'reminder-failed': (bench, { day, told }) =>
    withReminder(bench, ({ begun: _begun, ...reminder }) => ({
      ...reminder,
      failedDay: day,
      toldOwner: told || reminder.toldOwner === true,
    })),
  'due-answered': answered,
};

/** The bench after one more event. Pure; an event about something that is not there changes nothing. */
export const afterBenchEvent = (bench: Bench, event: BenchEvent, seq: number): Bench => {
  const after = (effects[event.kind] as Effect<BenchEvent['kind']>)(bench, event as never, seq);
  followLookups(bench, after, () => touchedBy(event, (lot) => bench.batches.get(lotKey(lot))?.lines));
  return after;
};
