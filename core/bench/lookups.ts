import { lotKey } from './codes.ts';
import type { Draw } from './event-fields.ts';
import { type Groups, groupsOf, Lookup, noGroups, withMember, withoutMember } from './lookup.ts';
import { type Batch, type Bench, type DueAnswer, tinsLeft } from './state.ts';

/** A lot or a batch by its key: what an answer to something due names. */
export type Item = `lot:${string}` | `batch:${string}`;

/** Answers count as long as the date they were given for stands. Used up is told by what is left, not by the answer. */
export const standing = (answer: DueAnswer | undefined, bestBefore: string): DueAnswer | undefined =>
  answer === undefined || (answer.bestBefore ?? bestBefore) !== bestBefore || answer.answer === 'used-up'
    ? undefined
    : answer;

export type DueKind = 'lot' | 'batch';

/** Keys of what has a date and something left, by that date; apart from it what was answered as done. */
export type DueDays = Readonly<Record<DueKind, { readonly open: Groups; readonly done: Groups }>>;

interface DuePlace {
  readonly key: string;
  readonly day: string;
  readonly part: 'open' | 'done';
}

type PlaceOf = (bench: Bench, key: string) => DuePlace | undefined;

const duePlace = ({ answers }: Bench, kind: DueKind, key: string, day: string): DuePlace => ({
  key,
  day,
  part: standing(answers.get(`${kind}:${key}`), day)?.answer === 'done' ? 'done' : 'open',
});

const lotPlace: PlaceOf = (bench, key) => {
  const lot = bench.lots.get(key);
  const dated = lot?.bestBefore !== undefined && lot.leftG > 0;
  return dated ? duePlace(bench, 'lot', key, lot.bestBefore) : undefined;
};

const batchPlace: PlaceOf = (bench, key) => {
  const batch = bench.batches.get(key);
  return batch && tinsLeft(batch) > 0 ? duePlace(bench, 'batch', key, batch.bestBefore) : undefined;
};

const dueBuilt = (bench: Bench, keys: Iterable<string>, placeOf: PlaceOf): DueDays[DueKind] => {
  const places = [...keys].flatMap((key) => placeOf(bench, key) ?? []);
  const of = (part: DuePlace['part']) =>
    groupsOf(places.filter((each) => each.part === part).map(({ day, key }) => [day, key] as const));
  return { open: of('open'), done: of('done') };
};

const dueMoved = (
  due: DueDays[DueKind],
  was: DuePlace | undefined,
  is: DuePlace | undefined,
): DueDays[DueKind] => {
  if (was?.day === is?.day && was?.part === is?.part) return due;
  const without = was ? { ...due, [was.part]: withoutMember(due[was.part], was.day, was.key) } : due;
  return is ? { ...without, [is.part]: withMember(without[is.part], is.day, is.key) } : without;
};

const noDue = { open: noGroups(), done: noGroups() };

export const dueDays = new Lookup<DueDays>(
  { lot: noDue, batch: noDue },
  (bench) => ({
    lot: dueBuilt(bench, bench.lots.keys(), lotPlace),
    batch: dueBuilt(bench, bench.batches.keys(), batchPlace),
  }),
  ({ lot, batch }, before, after, key) => ({
    lot: dueMoved(lot, lotPlace(before, key), lotPlace(after, key)),
    batch: dueMoved(batch, batchPlace(before, key), batchPlace(after, key)),
  }),
);

/** Keys of batches by the day they were made. */
export const madeDays = new Lookup<Groups>(
  noGroups(),
  ({ batches }) => groupsOf([...batches].map(([key, { madeOn }]) => [madeOn, key] as const)),
  (days, before, after, key) => {
    const [was, is] = [before.batches.get(key)?.madeOn, after.batches.get(key)?.madeOn];
    if (was === is) return days;
    const without = was === undefined ? days : withoutMember(days, was, key);
    return is === undefined ? without : withMember(without, is, key);
  },
);

const drawsIn = (lines: Batch['lines'] | undefined): readonly Draw[] =>
  lines?.flatMap(({ draws }) => draws) ?? [];

/** `lotKey`, once for each way a code is written. */
const keyedOnce = (): ((code: string) => string) => {
  const keys = new Map<string, string>();
  return (code) => {
    const known = keys.get(code) ?? lotKey(code);
    keys.set(code, known);
    return known;
  };
};

const usesOf = function* ({ lots, batches }: Bench): Generator<readonly [string, Item]> {
  const keyOf = keyedOnce();
  for (const [key, { draws }] of lots)
    for (const { lot } of draws ?? []) yield [keyOf(lot), `lot:${key}`] as const;
  for (const [key, { lines }] of batches)
    for (const { draws } of lines) for (const { lot } of draws) yield [keyOf(lot), `batch:${key}`] as const;
};

const movedUses = (
  users: Groups<Item>,
  item: Item,
  was: readonly Draw[],
  is: readonly Draw[],
): Groups<Item> => {
  const [before, after] = [was, is].map((draws) => new Set(draws.map(({ lot }) => lotKey(lot))));
  let moved = users;
  for (const lot of before ?? []) if (!after?.has(lot)) moved = withoutMember(moved, lot, item);
  for (const lot of after ?? []) if (!before?.has(lot)) moved = withMember(moved, lot, item);
  return moved;
};

/** Which batches, and which oils infused in the house, drew from a lot: by the lot's key. */
export const usersOfLots = new Lookup<Groups<Item>>(
  noGroups(),
  (bench) => groupsOf(usesOf(bench)),
  (users, before, after, key) => {
    const [was, is] = [before.lots.get(key)?.draws ?? [], after.lots.get(key)?.draws ?? []];
    const [lines, linesNow] = [before.batches.get(key)?.lines, after.batches.get(key)?.lines];
    const ofLots = movedUses(users, `lot:${key}`, was, is);
    return lines === linesNow ? ofLots : movedUses(ofLots, `batch:${key}`, drawsIn(lines), drawsIn(linesNow));
  },
);

/**
 * Keeps up what is known of `before` after one event. `codes` gives all the lots and batches that may differ in `after`.
 * A bench that was not followed costs one look at all of it when it is next asked.
 */
export const followLookups = (before: Bench, after: Bench, codes: () => readonly string[]): void => {
  if (before === after) return;
  const keys = (): string[] => [...new Set(codes().map(lotKey))];
  for (const lookup of [dueDays, madeDays, usersOfLots]) lookup.follow(before, after, keys);
};
