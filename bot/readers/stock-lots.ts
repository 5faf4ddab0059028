import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading } from '../reading.ts';
import type { BenchReading } from './bench-reading.ts';
import type { LotSaid } from './lots.ts';
import { gramsRead, isAmount } from './stock-amount.ts';
import { countCue, dayIn, openCue, relative } from './stock-told.ts';

/** The lots of the shelf that a message names, each once; undefined where a batch or a code nobody knows is among them. */
const severalLots = ({ lots }: BenchReading): readonly LotSaid[] | undefined => {
  const own = lots.filter(
    ({ code }, at) => lots.findIndex((other) => lotKey(other.code) === lotKey(code)) === at,
  );
  return own.length > 1 && own.every(({ kind, others }) => kind === 'lot' && !others) ? own : undefined;
};

const betweenLots = (bench: BenchReading, from: number, to: number): BenchReading['rest']['items'] =>
  bench.rest.items.filter((item) => item.from >= from && item.to <= to);

/** "Stocktake: K12 230 g, G7 410 g": one amount after each code. */
export const claimCountedEach = (reading: Reading, bench: BenchReading): Claim | undefined => {
  const lots = severalLots(bench);
  const amounts = bench.rest.items.filter(isAmount);
  if (!lots || amounts.length !== lots.length || relative.test(bench.rest.text)) return undefined;
  if (!countCue.test(bench.rest.text) || bench.rest.items.some(({ letter }) => /[RctM%n]/.test(letter)))
    return undefined;
  // "1900 g of W7 and 2800 g of O9 left": each before its code.
  const amountsFirst = amounts.every(
    ({ from }, at) => from < (lots[at]?.from ?? 0) && (at === 0 || from > (lots[at - 1]?.from ?? 0)),
  );
  const each = lots.map(({ code, to }, at) => {
    const amount = amountsFirst
      ? amounts[at]
      : betweenLots(bench, to, lots[at + 1]?.from ?? bench.rest.text.length).find(isAmount);
    const known = reading.bench.lots.get(lotKey(code))?.ingredient ?? '';
    return { lot: code, grams: amount && gramsRead(amount, known, reading.settings.region).grams };
  });
  if (!each.every(({ grams }) => grams !== undefined)) return undefined;
  return claim({ action: 'counted', each, ...defined({ on: dayIn(bench) }) }, 3.3);
};

const bothEmpty = /\b(?:are|is|have|has) (?:both |all )?(?:now )?(?:empty|used up|finished|gone|run out)\b/i;

/** "K12 and G7 are both empty". */
export const claimEmptyEach = (bench: BenchReading): Claim | undefined => {
  const lots = severalLots(bench);
  if (
    !lots ||
    !bothEmpty.test(bench.rest.text) ||
    /\b(?:nearly|almost|not|half|soon)\b/i.test(bench.rest.text)
  )
    return undefined;
  if (bench.rest.items.some(({ letter }) => /[gvRnic%]/.test(letter))) return undefined;
  const each = lots.map(({ code }) => ({ lot: code, grams: 0 }));
  return claim({ action: 'counted', each, ...defined({ on: dayIn(bench) }) }, 3.3);
};

/** "Opened K12 today and G7 yesterday", "K12 and G7 are open": the day after each, or the one there is. */
export const claimOpenedEach = (bench: BenchReading): Claim | undefined => {
  const lots = severalLots(bench);
  if (!lots || !openCue.test(bench.rest.text)) return undefined;
  const others = bench.rest.items.filter(({ letter }) => /[gvRn%]/.test(letter));
  if (others.some(({ value }) => value !== lots.length)) return undefined;
  const days = bench.days.filter(({ role }) => role === 'on');
  if (days.length > 1 && days.length !== lots.length) return undefined;
  const each = lots.map(({ code }, at) => ({
    lot: code,
    ...defined({ on: (days.length > 1 ? days[at] : days[0])?.past }),
  }));
  return claim({ action: 'opened', each }, 3.3);
};
