import { defined } from '../../core/defined.ts';
import type { Reading } from '../reading.ts';
import { subjectBefore } from './body.ts';
import type { ScaleReading } from './scale-reading.ts';

/** A scale request in the making: its fields as far as they are known. The topic's schema checks it in the end. */
export type Wish = Readonly<Record<string, unknown>>;

const amounts = ['count', 'size', 'totalG', 'totalMl', 'factor', 'limit'] as const;
const totals = ['totalG', 'totalMl', 'factor', 'limit'] as const;

const showing = new Set(['recipe', 'melt', 'check']);

export const hasTarget = (read: ScaleReading): boolean =>
  read.limit !== undefined || Object.keys(read.target).length > 0;

export const changesSomething = (read: ScaleReading): boolean =>
  hasTarget(read) || read.lossPercent !== undefined || read.stepG !== undefined;

const without = (wish: Wish, keys: readonly string[]): Wish =>
  Object.fromEntries(Object.entries(wish).filter(([key]) => !keys.includes(key)));

const modifiers = ({ lossPercent, stepG, units }: ScaleReading): Wish =>
  defined({ lossPercent, stepG, units });

/** What the message itself says about how much, and how. */
export const said = (read: ScaleReading): Wish => ({
  ...read.target,
  ...defined({ limit: read.limit }),
  ...modifiers(read),
});

const times = (wish: Wish, factor: number): Wish => {
  for (const key of ['count', 'totalG', 'totalMl', 'factor']) {
    const value = wish[key];
    if (typeof value === 'number') return { ...wish, [key]: value * factor };
  }
  return { ...wish, factor };
};

const sizeUnder = (last: Wish): { amount: number; unit: 'g' | 'ml' } | undefined =>
  last.size as { amount: number; unit: 'g' | 'ml' } | undefined;

/** How many times the last fill a lone amount may be and still be a fill: "actually 30 ml" after 15 ml tins. */
const mostTimesTheFill = 8;

/** A lone mass or volume after containers is what each holds, unless it is far more: "make it 500 g". */
const isFill = (last: Wish, size: { amount: number; unit: 'g' | 'ml' }): boolean => {
  if (last.count === undefined) return false;
  const before = sizeUnder(last);
  return (
    before === undefined || (before.unit === size.unit && size.amount <= before.amount * mostTimesTheFill)
  );
};

const withTotal = (last: Wish, base: Wish, { totalG, totalMl }: ScaleReading['target']): Wish => {
  const size =
    totalG === undefined
      ? ({ amount: totalMl ?? 0, unit: 'ml' } as const)
      : ({ amount: totalG, unit: 'g' } as const);
  return isFill(last, size)
    ? { ...base, size }
    : { ...without(base, amounts), ...defined({ totalG, totalMl }) };
};

/** "Sorry, I need 650" after 500 g: a number alone, no container named, and about as large as the mass before. */
const asMass = (last: Wish, { target, board }: ScaleReading): ScaleReading['target'] => {
  const { count } = target;
  const { totalG } = last;
  const alone = count !== undefined && target.size === undefined && last.count === undefined;
  if (!alone || typeof totalG !== 'number' || board.items.some(({ letter }) => letter === 'c')) return target;
  const near = count >= leastMass && count <= totalG * mostTimesTheFill && count * mostTimesTheFill >= totalG;
  return near ? { totalG: count } : target;
};

/** Fewer grams than this nobody weighs out; it counts tins. */
const leastMass = 50;

/** The last request with what this message says put in its place. */
export const continued = (last: Wish, read: ScaleReading): Wish => {
  const { limit } = read;
  const target = asMass(last, read);
  const base = { ...last, ...modifiers(read) };
  if (limit)
    return {
      ...without(base, ['count', 'totalG', 'totalMl', 'factor']),
      limit,
    };
  if (target.factor !== undefined) return times(base, target.factor);
  if (target.totalG !== undefined || target.totalMl !== undefined) return withTotal(last, base, target);
  const containers = target.count !== undefined || target.size !== undefined;
  return { ...(containers ? without(base, totals) : base), ...target };
};

/** The last scale request, if that is what the member asked last. */
export const lastScale = (reading: Reading): Wish | undefined =>
  reading.last?.topic === 'scale' ? reading.last.request : undefined;

/** "… and the same for Fernlea mint lip balm": the last amounts for another recipe. */
export const sameFor = (last: Wish, body: Wish, read: ScaleReading): Wish => ({
  ...without(last, ['recipe', 'lines']),
  ...body,
  ...modifiers(read),
});

/** The recipe that was just shown, saved, swapped or designed: "now scale it to 500 g". */
export const shownBefore = (reading: Reading): Wish | undefined => {
  const { last } = reading;
  const made = last?.made?.[0];
  if (made) return { ...made.make, lines: made.lines };
  return last && showing.has(last.topic) ? subjectBefore(reading) : undefined;
};
