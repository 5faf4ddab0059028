import { expect } from 'vitest';
import { z } from 'zod';
import { troubleCodes } from '../../bot/answer.ts';

// What a step of a story expects, under short names: lots and batches by their code, so that the order of a list does
// not matter. "{a}" stands for the code that an earlier step of the story gave.

const byCode = <T extends z.ZodType>(value: T) => z.record(z.string(), value);
const due = byCode(z.tuple([z.iso.date(), z.int()]));

const expected = z.strictObject({
  grams_left: byCode(z.number()).optional(),
  lot_best_before: byCode(z.iso.date()).optional(),
  got_on: byCode(z.iso.date()).optional(),
  opened: byCode(z.iso.date()).optional(),
  lot_count: z.int().optional(),
  /** Exactly these lots, with the grams drawn from each. */
  lots_used: byCode(z.number()).optional(),
  short: byCode(z.number()).optional(),
  best_before: z.iso.date().optional(),
  made_on: z.iso.date().optional(),
  containers_and_left: z.tuple([z.int(), z.int()]).optional(),
  out_and_left: z.tuple([z.int(), z.int()]).optional(),
  kept: z.int().optional(),
  batches: z.array(z.string()).optional(),
  /** At least these lots on the way back from a batch. */
  lots_from: z.array(z.string()).optional(),
  given_to: byCode(z.int()).optional(),
  due: due.optional(),
  due_has: due.optional(),
  reminder: z.record(z.string(), z.unknown()).nullable().optional(),
  reaction: z.tuple([z.string(), z.iso.date()]).optional(),
  reaction_count: z.int().optional(),
  low: byCode(z.number()).optional(),
  not_low: z.array(z.string()).optional(),
  figures: z.record(z.string(), z.unknown()).optional(),
  says: z.array(z.string()).optional(),
});
type Expected = z.output<typeof expected>;

export const story = z.strictObject({
  name: z.string(),
  steps: z
    .array(
      z.strictObject({
        text: z.string(),
        now: z.iso.datetime(),
        member: z.string().optional(),
        topic: z.string().optional(),
        /** Name under which the code this step gives is known later. */
        as: z.string().optional(),
        refuse: z.enum(troubleCodes).optional(),
        expect: expected,
      }),
    )
    .min(4),
});
export type Story = z.output<typeof story>;

/** Half of what the scale of these stories reads: grams of ounces and millilitres are told in full. */
const halfStepG = 0.05;

type Row = Readonly<Record<string, unknown>>;
const rowsOf = (value: unknown): readonly Row[] => (Array.isArray(value) ? (value as Row[]) : []);
const codeOf = (row: unknown): string => String((row as Row)?.lot ?? row).toUpperCase();

const byLot = (rows: readonly Row[], field: string): Record<string, unknown> => {
  const found: Record<string, unknown> = {};
  for (const row of rows) {
    const before = found[codeOf(row)];
    const value = row[field];
    found[codeOf(row)] = typeof before === 'number' && typeof value === 'number' ? before + value : value;
  }
  return found;
};

const upper = <T>(wanted: Readonly<Record<string, T>>): [string, T][] =>
  Object.entries(wanted).map(([code, value]) => [code.toUpperCase(), value]);

const near = (got: unknown, wanted: number): boolean =>
  typeof got === 'number' && Math.abs(got - wanted) <= halfStepG + 1e-9;

const gramsFaults = (
  got: Record<string, unknown>,
  wanted: Readonly<Record<string, number>>,
  what: string,
): string[] =>
  upper(wanted)
    .filter(([code, grams]) => !near(got[code], grams) && !(grams === 0 && !(code in got)))
    .map(([code, grams]) => `${what} ${code}: ${String(got[code])}, not ${grams}`);

const sameFaults = (got: unknown, wanted: unknown, what: string): string[] =>
  JSON.stringify(got) === JSON.stringify(wanted)
    ? []
    : [`${what}: ${JSON.stringify(got)}, not ${JSON.stringify(wanted)}`];

const lotFaults = (figures: Row, wanted: Readonly<Record<string, string>> = {}, field: string): string[] => {
  const got = byLot(rowsOf(figures.lots), field);
  return upper(wanted).flatMap(([code, value]) => sameFaults(got[code], value, `${field} of ${code}`));
};

const usedFaults = (figures: Row, wanted: Expected['lots_used']): string[] => {
  if (!wanted) return [];
  const got = byLot(rowsOf(figures.lots_used), 'grams');
  const more = Object.keys(got).filter((code) => !upper(wanted).some(([each]) => each === code));
  return [...gramsFaults(got, wanted, 'used'), ...more.map((code) => `used ${code} too`)];
};

const givenFaults = (figures: Row, wanted: Expected['given_to'] = {}): string[] =>
  Object.entries(wanted).flatMap(([place, count]) => {
    const there = rowsOf(figures.given_to).filter(({ to }) =>
      String(to).toLowerCase().includes(place.toLowerCase()),
    );
    const got = there.reduce((sum, row) => sum + Number(row.count), 0);
    return sameFaults(got, count, `given to ${place}`);
  });

const dueFaults = (figures: Row, { due: all, due_has: some }: Expected): string[] => {
  if (!all && !some) return [];
  if (!Array.isArray(figures.due)) return ['no list of what is due'];
  const got = Object.fromEntries(
    rowsOf(figures.due).map((row) => [codeOf(row), [row.best_before, row.days_left]]),
  );
  const wanted = upper({ ...all, ...some });
  const more = all ? Object.keys(got).filter((code) => !wanted.some(([each]) => each === code)) : [];
  return [
    ...wanted.flatMap(([code, days]) => sameFaults(got[code], days, `due ${code}`)),
    ...more.map((code) => `due ${code} too`),
  ];
};

const listFaults = (figures: Row, wanted: Expected): string[] => {
  const codes = (rows: unknown) => rowsOf(rows).map(codeOf).toSorted();
  const from = codes(figures.lots);
  const low = rowsOf(figures.low);
  return [
    ...(wanted.batches
      ? sameFaults(
          codes(figures.batches),
          wanted.batches.map((code) => code.toUpperCase()).toSorted(),
          'batches',
        )
      : []),
    ...(wanted.lots_from ?? [])
      .filter((code) => !from.includes(code.toUpperCase()))
      .map((code) => `no lot ${code} on the way`),
    ...gramsFaults(
      Object.fromEntries(low.map((row) => [String(row.ingredient).toUpperCase(), row.grams_left])),
      wanted.low ?? {},
      'low',
    ),
    ...(wanted.not_low ?? [])
      .filter((id) => low.some((row) => row.ingredient === id))
      .map((id) => `low ${id}`),
  ];
};

const plainFaults = (figures: Row, wanted: Expected): string[] => {
  const pairs: readonly (readonly [unknown, unknown, string])[] = [
    [figures.best_before, wanted.best_before, 'best before'],
    [figures.made_on, wanted.made_on, 'made on'],
    [[figures.containers, figures.left], wanted.containers_and_left, 'containers and left'],
    [[figures.containers_out, figures.containers_left], wanted.out_and_left, 'out and left'],
    [figures.kept, wanted.kept, 'kept'],
    [rowsOf(figures.lots).length, wanted.lot_count, 'lots'],
    [[figures.lot, figures.when], wanted.reaction, 'reaction'],
    [rowsOf(figures.reactions).length, wanted.reaction_count, 'reactions'],
    ...Object.entries(wanted.figures ?? {}).map(([key, value]) => [figures[key], value, key] as const),
    ...Object.entries(wanted.reminder ?? {}).map(
      ([key, value]) => [(figures.reminder as Row | null)?.[key], value, key] as const,
    ),
  ];
  const set = pairs.filter(([, value]) => value !== undefined);
  const off = wanted.reminder === null ? sameFaults(figures.reminder ?? null, null, 'reminder') : [];
  return [...set.flatMap(([got, value, what]) => sameFaults(got, value, what)), ...off];
};

/** What differs between an answer and what a step expects of it, in words; nothing when all is exact. */
export const storyFaults = (figures: Row, text: string, wanted: Expected): readonly string[] => [
  ...gramsFaults(byLot(rowsOf(figures.lots), 'grams_left'), wanted.grams_left ?? {}, 'left'),
  ...lotFaults(figures, wanted.lot_best_before, 'best_before'),
  ...lotFaults(figures, wanted.got_on, 'got_on'),
  ...lotFaults(figures, wanted.opened, 'opened'),
  ...usedFaults(figures, wanted.lots_used),
  ...gramsFaults(
    Object.fromEntries(
      rowsOf(figures.short).map(({ ingredient, grams }) => [String(ingredient).toUpperCase(), grams]),
    ),
    wanted.short ?? {},
    'short',
  ),
  ...givenFaults(figures, wanted.given_to),
  ...dueFaults(figures, wanted),
  ...listFaults(figures, wanted),
  ...plainFaults(figures, wanted),
  ...(wanted.says ?? [])
    .filter((words) => !text.replace(/\s+/g, ' ').toLowerCase().includes(words.toLowerCase()))
    .map((words) => `does not say "${words}"`),
];

/** The code or number that an answer gave: of the batch, the reaction, or the lot that was made. */
export const codeGiven = (figures: Row): string => {
  const [lot] = rowsOf(figures.lots);
  const code = figures.id ?? figures.lot ?? (lot && codeOf(lot));
  expect(typeof code).toBe('string');
  return String(code);
};
