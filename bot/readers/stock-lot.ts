import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { whichLot } from './batch-meant.ts';
import { type BenchReading, lotMeant } from './bench-reading.ts';
import { asksOrPlans, type BenchText, longestNote, readBenchText } from './bench-text.ts';
import { withoutDenied } from './denied.ts';
import { isGroupNumber } from './group-number.ts';
import type { Item } from './item.ts';
import { claimChangedBy } from './stock-changed-by.ts';
import { claimCounted } from './stock-counted.ts';
import { claimCountedEach, claimEmptyEach, claimOpenedEach } from './stock-lots.ts';
import { claimPriced } from './stock-priced.ts';
import { claimTaken } from './stock-taken.ts';
import { dayIn, openCue } from './stock-told.ts';

/** Of two dates the one holds that is said to be the right one. */
const holds =
  /\b(?:but\b[^.;]*|should (?:be|have been|say|read)|really|actually|correct(?:ly)?(?: (?:one|date))?(?: is)?[:,]?|right (?:one|date) is|to|in fact(?: it(?:'s| is))?)\s*(?:the |on )?$/i;
const bestIn = ({ days, rest }: BenchReading): string | undefined => {
  if (days.length === 2) {
    const right = days.findLast(({ from }) => holds.test(rest.text.slice(Math.max(0, from - 40), from)));
    if (right) return right.future;
  }
  return days.find(({ role }) => role === 'best-before')?.future;
};

/** "opened K12 today". */
const claimOpened = ({ bench }: BenchText): Claim | undefined => {
  const lot = lotMeant(bench);
  const told = openCue.test(bench.rest.text);
  const more = bench.rest.items.some(
    (item, at, all) =>
      /[gvRn%]/.test(item.letter) &&
      !isGroupNumber(item, bench.rest.text) &&
      !(item.value === 1 && all[at + 1]?.letter === 'c'),
  );
  if (!lot || !told || more) return undefined;
  return claim({ action: 'opened', lot: lot.code, ...defined({ on: dayIn(bench) }) }, 3.3);
};

const putsRight =
  /^\W*(?:(?:no|sorry|oops|actually|wait|i|we|it|that|this|was|is|mean|meant|opened|open|have|been|had|should|be|correction|rather|wrong|day|date|not|today|but|it's|in fact|really|on|the)\b\W*)*_+\W*(?:not today)?\W*$/i;

/** "I meant yesterday", right after a lot was opened. */
export const claimOpenedAgain = (reading: Reading): Claim | undefined => {
  const { last } = reading;
  const { days, lots, rest } = readBenchText(withoutDenied(reading).reading).bench;
  const bench = { days };
  const lot = last?.topic === 'stock' && last.request.action === 'opened' ? last.request.lot : undefined;
  if (typeof lot !== 'string' || lots.length > 0 || !putsRight.test(rest.text)) return undefined;
  const on = dayIn(bench);
  return on === undefined || days.length > 1
    ? undefined
    : claim({ action: 'opened', lot, on }, 3.2, [`I took ${lot}, which we spoke of.`]);
};

/** "The date on K12 is wrong, it is 30/09/2027": the one date there is. */
const dateSaid = ({ days, rest }: BenchReading): string | undefined =>
  days.length === 1 &&
  /\b(?:label|pack|bag|bottle|packet|lid|it)\b.{0,20}\b(?:says|said|reads|shows|gives)\b|\b(?:dates?|best[- ]before|bbe?|expiry|expires|use[- ]by|lasts?|keeps)\b/i.test(
    rest.text,
  )
    ? days[0]?.future
    : undefined;

/** "K12 can wait until June" is an answer to the reminder. */
const putOff =
  /\b(?:wait(?= (?:until|till|for|a|an|another|\d)\b|\W*$)|snooze|ask|remind|postpone|leave|later|closed|away|reserve|save|saved|keep it|kept)\b/i;

/** "The bottle says …" counts no bottles. */
const isOtherThing = ({ letter, word }: Item, at: number, all: readonly Item[]): boolean =>
  (/[gvRn%]/.test(letter) && !/^(?:one|two)$/.test(word)) ||
  (letter === 'c' && /^[nx]$/.test(all[at - 1]?.letter ?? ''));

/** "K12 is best before 2027-04", "the date of K12 is wrong: no date". */
const claimDated = ({ bench, note }: BenchText): Claim | undefined => {
  const lot = lotMeant(bench);
  if (!lot || bench.rest.items.some(isOtherThing)) return undefined;
  const bestBefore = bestIn(bench) ?? dateSaid(bench);
  const none = /\b(?:has|with|there is|is) no (?:best before|date)\b|\bno best before\b/i.test(
    bench.rest.text,
  );
  if ((bestBefore === undefined && !none) || putOff.test(bench.rest.text)) return undefined;
  return claim(
    { action: 'dated', lot: lot.code, ...defined({ bestBefore, why: note }) },
    3.3,
    assumedIn(bench),
  );
};

const assumedIn = ({ days }: BenchReading): string[] => days.flatMap(({ assumed }) => assumed ?? []);

/** "note on K12: smells nutty". */
const claimNote = (reading: Reading, { bench, note }: BenchText): Claim | undefined => {
  const lot = lotMeant(bench);
  if (lot?.kind !== 'lot') return undefined;
  const after = /\bnotes?\s+(?:on|for|about|to|against|that)\b/i.test(reading.text)
    ? reading.text.slice(lot.to).replace(/^[\s:,;-]+/, '')
    : '';
  const said = note ?? (after === '' ? undefined : after.slice(0, longestNote));
  const bare = bench.rest.items.every(({ letter }) => /[wbF,:;.-]/.test(letter));
  return said === undefined || (!bare && after === '')
    ? undefined
    : claim({ action: 'note', lot: lot.code, note: said }, 3.4);
};

/** "Note that K12 was opened today" tells of the lot; where it tells nothing that is known, it is a note. */
const saysThat = /\bnotes? that\b/i;

/** What was done to one lot, or to the stock of one ingredient. */
export const claimLot = (reading: Reading, text: BenchText): Claim | undefined => {
  const unclear = text.bench.lots.find(({ others }) => others);
  if (unclear) return refuse(whichLot(unclear), 2);
  const noted = claimNote(reading, text);
  if (noted && !saysThat.test(reading.text)) return noted;
  if (asksOrPlans(text.bench.rest.text)) return noted;
  const found =
    claimPriced(reading, text) ??
    claimChangedBy(reading, text) ??
    claimTaken(reading, text) ??
    claimCounted(reading, text) ??
    claimCountedEach(reading, text.bench) ??
    claimEmptyEach(text.bench) ??
    claimOpened(text) ??
    claimOpenedEach(text.bench) ??
    claimDated(text);
  return found && text.bench.trouble ? refuse(text.bench.trouble, 3.3) : (found ?? noted);
};
