import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import { oncePerReading, type Reading } from '../reading.ts';
import { type Place, readingWithout } from '../understand.ts';
import { type DaySaid, daysIn, todayOf } from './days.ts';
import { type LotSaid, lotsIn } from './lots.ts';

/** A message as the bench topics see it: its lots and dates, and everything else read again without them. */
export interface BenchReading {
  readonly lots: readonly LotSaid[];
  readonly days: readonly DaySaid[];
  /** A date that does not exist. */
  readonly trouble?: Trouble;
  /** The rest of the message; places in its text are those of the whole. */
  readonly rest: Reading;
  /** The group's own day, ISO. */
  readonly today: string;
}

/** Reads lots and dates once for all the topics that want them. */
export const readBench = oncePerReading((reading): BenchReading => {
  const lots = lotsIn(reading);
  const { days, trouble } = daysIn(reading);
  const rest = readingWithout(reading, [...lots, ...days]);
  return { lots, days, rest, today: todayOf(reading), ...defined({ trouble }) };
});

/** The codes that stand in a stretch of the message. */
export const lotsWithin = (lots: readonly LotSaid[], { from, to }: Place): readonly LotSaid[] =>
  lots.filter((lot) => lot.to > from && lot.from < to);

/** The lot on the shelf a message is about, said once or twice: one that is known, or a new code after the word "lot". */
export const lotMeant = ({ lots }: BenchReading): LotSaid | undefined => {
  const shelf = lots.filter(({ kind }) => kind !== 'batch');
  const [first, ...more] = shelf;
  const others =
    lots.length > shelf.length || more.some(({ code }) => lotKey(code) !== lotKey(first?.code ?? ''));
  return others ? undefined : first;
};
