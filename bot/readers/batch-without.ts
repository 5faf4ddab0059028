import { lotKey } from '../../core/bench/codes.ts';
import { type Claim, oncePerReading, type Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { todayOf } from './days.ts';

const withoutIt =
  /^\W*(?:(?:then|so|ok|okay|well|fine|alright|all right|right)\b\W*)*(?:without|not with) (?:it|them|that(?: one| lot)?|this(?: one| lot)?)\s*[:,;-]+\s*/i;

/** The lots of the pour that was refused just before, where all of them are past their date: no pour takes those by itself. */
const refusedLots = (reading: Reading): readonly string[] => {
  const { last, bench } = reading;
  if (last?.topic !== 'batch' || last.done || last.request.action !== 'pour') return [];
  const lots = Array.isArray(last.request.lots) ? (last.request.lots as readonly string[]) : [];
  const today = todayOf(reading);
  const isPast = (code: string): boolean => (bench.lots.get(lotKey(code))?.bestBefore ?? today) < today;
  return lots.every(isPast) ? lots : [];
};

const told = oncePerReading((reading): Reading | undefined => {
  const match = withoutIt.exec(reading.text);
  if (!match || refusedLots(reading).length === 0) return undefined;
  return readAgain(reading.text.slice(match[0].length), reading);
});

/** "Then without it: poured 9 pots", after a pour with a lot past its date was refused. */
export const withoutRefused =
  (read: (reading: Reading) => Claim | undefined) =>
  (reading: Reading): Claim | undefined => {
    const rest = told(reading);
    const made = rest && read(rest);
    return made?.kind === 'request' && made.request.action === 'pour' ? made : read(reading);
  };
