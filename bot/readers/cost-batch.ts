import { defined } from '../../core/defined.ts';
import { isMassUnit, isVolumeUnit } from '../../core/units.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { takeOwnIngredients, takeRemembered } from './body.ts';
import { withManyAlone } from './cost-one-of-many.ts';
import { containerWord } from './cost-prices.ts';
import { batchCostWords, howMuch, noBatch } from './cost-words.ts';
import { withoutUnits } from './in-ounces.ts';
import type { Item } from './item.ts';
import { leftover } from './leftover.ts';
import { readScale, type ScaleReading } from './scale-reading.ts';
import { targetTrouble } from './scale-troubles.ts';
import {
  changesSomething,
  continued,
  hasTarget,
  said,
  sameFor,
  shownBefore,
  type Wish,
} from './scale-wish.ts';
import { type Size, sizeOf } from './target.ts';

/** The batch a cost question is about. */
export interface BatchAsked {
  readonly batch?: Wish;
  readonly container?: string;
  /** True when one container is asked about: labour for a batch is not put on it. */
  readonly one?: true;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
  readonly blocking: readonly Item[];
  /** True when the message itself names a recipe or an amount to make. */
  readonly own: boolean;
}

/** Everybody's containers of a workshop that makes one thing. */
const ofWorkshop = ({ people, makings }: Wish): Wish | undefined => {
  const [only, second] = Array.isArray(makings) ? (makings as readonly Wish[]) : [];
  if (!only || second || typeof people !== 'number' || typeof only.each !== 'number') return undefined;
  const { recipe, lines, size, each } = only;
  return defined({ recipe, lines, size, count: people * each });
};

/** The batch asked about before: costed, scaled, or only shown. */
const batchBefore = (reading: Reading): Wish | undefined => {
  const { last } = reading;
  if (last?.topic === 'scale') return withoutUnits(last.request);
  if (last?.topic === 'workshop') return ofWorkshop(last.request);
  const batch = last?.topic === 'cost' || last?.topic === 'infuse' ? last.request.batch : undefined;
  if (typeof batch === 'object' && batch !== null) return batch as Wish;
  return shownBefore(reading);
};

const containerBefore = (reading: Reading): string | undefined => {
  const container = reading.last?.topic === 'cost' ? reading.last.request.container : undefined;
  return typeof container === 'string' ? container : undefined;
};

interface Each {
  readonly size?: Size;
  readonly items: readonly Item[];
}

/** "per tin of 15 g": what one container holds, where no number of them is said. */
const takeEach = (reading: Reading, items: readonly Item[]): Each => {
  const at = items.findIndex((item) => item.letter === 'e');
  const holds = items.slice(at + 1, at + 3).find((item) => /[gv]/.test(item.letter));
  const counted = items.some((item) => item.letter === 'n');
  const size = at >= 0 && holds && !counted ? sizeOf(holds, reading.settings.region) : undefined;
  const used = holds ? items.slice(at, items.indexOf(holds) + 1) : [];
  return size ? { size, items: used } : { items: [] };
};

/** One container is reckoned as finely as a scale can, so that steps of the scale do not hide its cost. */
const oneOf = (batch: Wish, size: Size): Wish => {
  const { totalG: _g, totalMl: _ml, factor: _factor, limit: _limit, ...rest } = batch;
  return { ...rest, size, count: 1, stepG: 0.001 };
};

const isSingle = (reading: Reading, batch: Wish): boolean =>
  batch.size !== undefined && batch.count === undefined && /\b(?:per|each|a|one)\b/i.test(reading.text);

const hasBody = (wish: Wish): boolean => wish.recipe !== undefined || wish.lines !== undefined;

const batchOf = (reading: Reading, read: ScaleReading): Wish | undefined => {
  const before = batchBefore(reading);
  const own =
    read.recipe !== undefined
      ? { recipe: read.recipe }
      : read.lines.length > 1
        ? { lines: read.lines }
        : undefined;
  if (own && before && !hasTarget(read)) return sameFor(before, own, read);
  if (own) return { ...own, ...said(read) };
  if (!before) return undefined;
  return changesSomething(read) ? continued(before, read) : before;
};

const lackOf = (batch: Wish | undefined): Trouble | undefined => {
  if (!batch || !hasBody(batch)) return noBatch;
  const lacking = targetTrouble(batch);
  return lacking?.code === 'missing' ? howMuch : lacking;
};

const containerIn = (reading: Reading, items: readonly Item[]): string | undefined => {
  const per = /\b(?:per|each|a)\s+(?:\d+\s*\w+\s+)?(tin|jar|pot|tube|stick|bottle|tub|vial)\b/i.exec(
    reading.text,
  )?.[1];
  const word = items.find((item) => item.letter === 'c')?.word ?? per?.toLowerCase();
  return word === undefined ? containerBefore(reading) : containerWord(word);
};

/** Reads with what was asked before in the place of a scaling, so that "and for 40 tins?" changes that. */
const readWithBefore = (reading: Reading, items: readonly Item[], before: Wish | undefined): ScaleReading => {
  const { last: _last, ...bare } = reading;
  return readScale({ ...bare, items, ...(before ? { last: { topic: 'scale', request: before } } : {}) });
};

interface BodyRead {
  readonly read: ScaleReading;
  readonly assumed: readonly string[];
}

const withRemembered = (reading: Reading, read: ScaleReading): BodyRead => {
  if (read.recipe !== undefined || read.lines.length > 1) return { read, assumed: [] };
  const near = takeRemembered(read.board, reading, batchCostWords);
  return near?.recipe === undefined
    ? { read, assumed: [] }
    : { read: { ...read, recipe: near.recipe }, assumed: near.assumed };
};

const isWeighed = (line: unknown): boolean => {
  const unit = typeof line === 'object' && line !== null && 'unit' in line ? String(line.unit) : '';
  return isMassUnit(unit) || isVolumeUnit(unit);
};

/** "Cost of 20 g beeswax, 80 g olive oil": amounts that were written out are the amounts to reckon. */
const asWritten = (asked: BatchAsked): BatchAsked => {
  const { batch, trouble, ...rest } = asked;
  const lines = batch?.lines;
  if (trouble !== howMuch || !batch || !Array.isArray(lines) || !lines.every(isWeighed)) return asked;
  return { ...rest, batch: { ...batch, factor: 1 } };
};

/** Reads the batch of a cost question off `items`, what was asked before filling the gaps. */
export const readCostBatch = (reading: Reading, items: readonly Item[]): BatchAsked => {
  const before = batchBefore(reading);
  const each = takeEach(reading, items);
  const rest = withManyAlone(items.filter((item) => !each.items.includes(item)));
  const { read, assumed } = withRemembered(reading, readWithBefore(reading, rest, before));
  takeOwnIngredients(read.board, reading, read.recipe ?? before?.recipe);
  const whole = batchOf(reading, read);
  const single = each.size ?? (whole && isSingle(reading, whole) ? (whole.size as Size) : undefined);
  const batch = whole && single ? oneOf(whole, single) : whole;
  const { blocking } = leftover(read.board, batchCostWords, batch !== undefined);
  return asWritten({
    assumed: [...read.assumed, ...assumed],
    blocking,
    own:
      read.recipe !== undefined || read.lines.length > 1 || changesSomething(read) || each.size !== undefined,
    ...defined({
      batch,
      one: single ? true : undefined,
      container: containerIn(reading, items),
      trouble: read.trouble ?? lackOf(batch),
    }),
  });
};
