import { type Claim, claim, type Reading } from '../reading.ts';
import { claimUnits } from './in-ounces.ts';
import { lastInfuse } from './infuse-fields.ts';
import { leftover } from './leftover.ts';
import { readScale } from './scale-reading.ts';
import { changesSomething, continued, type Wish } from './scale-wish.ts';
import { wordSet } from './word-list.ts';

const around = wordSet(
  'and for same again but make it what about if instead tins tin jars pots now only then',
);

/** "And for 48 tins" after a batch with infused oil. */
const otherBatch = (reading: Reading, before: Wish): Claim | undefined => {
  const { batch } = before;
  if (typeof batch !== 'object' || batch === null) return undefined;
  const wish = batch as Wish;
  const read = readScale({ ...reading, last: { topic: 'scale', request: wish } });
  const names = read.recipe !== undefined || read.lines.length > 0 || read.trouble !== undefined;
  if (names || !changesSomething(read)) return undefined;
  if (leftover(read.board, around, false).blocking.length > 0) return undefined;
  return claim({ ...before, batch: continued(wish, read) }, 2.7);
};

/** "How much oil will I get", "and how long": what the answer before has told. */
const asked =
  /^\W*(?:(?:and|so|ok|okay|then)\W+){0,2}(?:how much (?:oil )?(?:will|do|would) (?:i|we) (?:get|have)(?: (?:out|back|in the end))?|how much (?:oil )?(?:comes|will come) (?:out|back)|how (?:long|warm|hot)(?: (?:for|does (?:it|that) (?:take|need)|do (?:i|we) (?:leave|heat|warm) it))?)\W*$/i;

/** What goes on from the infusion before it, by itself. */
export const claimAgain = (reading: Reading): Claim | undefined => {
  const before = lastInfuse(reading);
  if (!before) return undefined;
  if (asked.test(reading.text)) return claim(before, 3.1);
  return claimUnits(reading, 'infuse') ?? otherBatch(reading, before);
};
