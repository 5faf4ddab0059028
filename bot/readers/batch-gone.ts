import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { batchMeant, type Meant } from './batch-meant.ts';
import { howManyGone, whichBatch } from './batch-words.ts';
import type { BenchReading } from './bench-reading.ts';
import { asksOrPlans, nameAfter } from './bench-text.ts';
import type { Item } from './item.ts';

type How = 'given' | 'sold' | 'used' | 'wasted' | 'kept' | 'back';

const verbs: readonly (readonly [How, RegExp])[] = [
  [
    'back',
    /\b(?:returned|came back|come back|got back|took back|taken back|brought back|gave back|handed back|sent back|are back|is back|back from)\b/i,
  ],
  [
    'kept',
    /\b(?:keep|kept|retain|retained|put aside|set aside|put by)\b|\b(?:put|set)\b.{1,40}\baside\b|\bretention\b|\b(?:reference|control) sample\b/i,
  ],
  ['sold', /\bsold\b/i],
  [
    'given',
    /\b(?:gave|given|give|donated|handed|lent|went(?: out)? to|sent|posted|delivered|dropped off)\b/i,
  ],
  ['wasted', /\b(?:threw|thrown|binned|wasted|discarded|dropped|broke|spilled|spilt|chucked|ruined)\b/i],
  ['used', /\b(?:used|opened|finished)\b/i],
];

const isCount = ({ letter, value }: Item): boolean => letter === 'n' && value !== undefined;

const oneSaid = /\b(?:one|a (?:tin|jar|pot|tube|stick)|a sample)\b/i;
const allSaid = /\b(?:all(?: of| the)?|the rest|everything|the remaining|remaining|what(?:'s| is) left)\b/i;

interface Part {
  readonly count?: number;
  readonly all?: true;
  readonly to?: string;
}

const cueFor = (how: How): RegExp => (how === 'back' ? /\bfrom\s+/i : /\b(?:to|at)\s+/i);

const nobody =
  /^(?:i|we|you|they|he|she|it|us|them|someone|somebody|people|away|out|back|another|just|all|only|up)\b/i;

/** "The corner shop returned 2 tins", "gave the library 3 tins": the place stands before its verb, or right after. */
const placeBeside = (text: string, how: How): string | undefined => {
  const found =
    how === 'back'
      ? /^\W*((?:the\s+)?\p{L}[\p{L}\p{N}'’ -]{1,80}?)\s+(?:(?:has|have|had|just)\s+)*(?:returned|brought back|gave back|handed back|sent back)\b/iu.exec(
          text,
        )
      : /\b(?:gave|sold|sent|lent|handed)\s+((?:the\s+)?\p{L}[\p{L}'’ -]{1,80}?)\s+(?:another\s+)?(?=\d|(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|half|all)\b)/iu.exec(
          text,
        );
  const name = found?.[1]?.trim();
  return name === undefined || nobody.test(name) ? undefined : name;
};

const partIn = (text: string, count: number | undefined, how: How): Part => {
  const to = nameAfter(text, cueFor(how))?.name;
  return defined({ count, to }) as Part;
};

/** "to room 12" names a room: further counts stand after "and" or a comma. */
const countsIn = ({ items }: Reading): readonly Item[] => {
  const first = items.findIndex(isCount);
  return items.filter(
    (item, at) => isCount(item) && (at === first || /[A,;\n]/.test(items[at - 1]?.letter ?? '')),
  );
};

/** "6 tins of LOT to the fair and 2 to the library": one part for each number. */
const partsOf = (rest: Reading, how: How): readonly Part[] => {
  const counts = countsIn(rest);
  const { text } = rest;
  const beside = (part: Part): Part => ({ ...defined({ to: placeBeside(text, how) }), ...part });
  if (counts.length === 0) {
    const part = beside(partIn(text, oneSaid.test(text) || how === 'kept' ? 1 : undefined, how));
    return [allSaid.test(text) && part.count === undefined ? { ...part, all: true } : part];
  }
  return counts.map((item, at) => {
    const end = counts[at + 1]?.from ?? text.length;
    // "to the fair 6 tins of LOT": with one number the name may stand before it.
    return counts.length === 1
      ? beside(partIn(text, item.value, how))
      : partIn(text.slice(item.from, end), item.value, how);
  });
};

const badCount = (parts: readonly Part[]): Trouble | undefined =>
  parts.some(({ count }) => count !== undefined && !(Number.isInteger(count) && count >= 1))
    ? {
        code: 'bad-quantity',
        text: 'Containers go out whole, at least one of them. For example "gave 6 tins of 26-KIVO to the spring fair".',
      }
    : undefined;

/** "6 g of 26-KIVO": a batch is counted in containers. */
const weighs = ({ items }: Reading): boolean => items.some(({ letter }) => /[gvd%]/.test(letter));

const dayIn = ({ days }: BenchReading): string | undefined => days.find(({ role }) => role === 'on')?.past;

/** Whether the containers are what the message is about: a batch's code, or a recipe with containers. */
const isAboutBatch = (bench: BenchReading, meant: Meant): boolean =>
  meant.said
    ? meant.said.kind !== 'lot'
    : (meant.lot ?? meant.trouble) !== undefined && bench.rest.items.some(({ letter }) => letter === 'c');

const claimParts = (bench: BenchReading, meant: Meant, how: How): Claim => {
  const parts = partsOf(bench.rest, how);
  const trouble = bench.trouble ?? meant.trouble ?? badCount(parts);
  if (trouble) return refuse(trouble, 3.3);
  if (meant.lot === undefined) return refuse(whichBatch, 2.6);
  if (parts.some(({ count, all }) => count === undefined && !all)) return refuse(howManyGone, 3.2);
  const on = dayIn(bench);
  const again = /\b(?:another|again|more)\b/i.test(bench.rest.text) || undefined;
  if (how === 'back')
    return claim({ action: 'back', lot: meant.lot, parts, ...defined({ on, again }) }, 3.4, meant.assumed);
  return claim({ action: 'gone', lot: meant.lot, how, parts, ...defined({ on, again }) }, 3.4, meant.assumed);
};

const upWords =
  /\b(?:used up|all gone|finished|is empty|sold out|ran out|run out|none (?:is |are )?left|(?:is|are|was|were) gone|gone)\b/i;

/** "26-KIVO is used up": every container that is left. */
const claimUsedUp = (bench: BenchReading, meant: Meant): Claim | undefined => {
  const { text } = bench.rest;
  if (!upWords.test(text) || bench.rest.items.some(isCount) || meant.lot === undefined) return undefined;
  if (meant.trouble) return refuse(meant.trouble, 3.3);
  const how = /\bsold out\b/i.test(text) ? 'sold' : 'used';
  const request = {
    action: 'gone',
    lot: meant.lot,
    how,
    parts: [{ all: true }],
    ...defined({ on: dayIn(bench) }),
  };
  return claim(request, 3.4, meant.assumed);
};

/** Containers that left the house, came back, or are kept as a sample. */
export const claimGone = (reading: Reading, bench: BenchReading): Claim | undefined => {
  const { text } = bench.rest;
  if (asksOrPlans(text) || weighs(bench.rest)) return undefined;
  const meant = batchMeant(reading, bench, bench.lots.length === 0);
  if (!isAboutBatch(bench, meant)) return undefined;
  const how = verbs.find(([, pattern]) => pattern.test(text))?.[0];
  const up = how === 'given' || how === 'back' ? undefined : claimUsedUp(bench, meant);
  return up ?? (how ? claimParts(bench, meant, how) : undefined);
};
