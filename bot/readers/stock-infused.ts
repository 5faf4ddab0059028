import { defined } from '../../core/defined.ts';
import { ingredientById } from '../../core/ingredients.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { whichLot } from './batch-meant.ts';
import type { BenchReading } from './bench-reading.ts';
import { asksOrPlans, type BenchText } from './bench-text.ts';
import type { Item } from './item.ts';
import type { LotSaid } from './lots.ts';
import { gramsRead, isAmount, nameRead } from './stock-amount.ts';

/** One thing that went into the jar, with its lot where it was named. */
interface Part {
  readonly ingredient: string;
  readonly grams: number;
  readonly lot?: string;
}

const cue = /\b(?:strained|infused|made|filtered|pressed)\b/i;

const isHerb = (id: string): boolean => ingredientById(id)?.kind === 'herb';

interface Pair {
  readonly amount: Item;
  readonly name: Item;
  readonly to: number;
}

/** Amounts each with the name right after it: "320 g olive oil", "40 g calendula". */
const pairsIn = (rest: Reading): readonly Pair[] => {
  const items = rest.items.filter((item) => isAmount(item) || item.letter === 'i');
  return items.flatMap((amount, at): Pair[] => {
    // "The calendula oil: 410 g from …": what came out may be named before its amount.
    const name = at === 1 && items[at + 1]?.letter !== 'i' ? items[0] : items[at + 1];
    if (!isAmount(amount) || name?.letter !== 'i') return [];
    const next = items.slice(at + 2).find(isAmount);
    return [{ amount, name, to: next?.from ?? rest.text.length }];
  });
};

const howMuch = {
  code: 'missing',
  text: 'How much came out, and of what? For example "strained 260 g of calendula oil from 320 g olive oil lot O1 and 40 g calendula lot C2".',
} as const;

const homeDried =
  /\b(?:home[- ]?dried|self[- ]?dried|from (?:the|our|my) garden|dried (?:it |them )?(?:at home|ourselves|myself))\b/i;

interface Jar {
  readonly parts: readonly Part[];
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

/** "…, as lot LAV1": the code of the oil that came out, before all that went in or after it. */
const ownLot = ({ lots, rest }: BenchReading, into: readonly Pair[]): LotSaid | undefined => {
  const first = into[0]?.amount.from ?? 0;
  const before = lots.find((said) => said.kind === 'new' && said.from < first);
  if (before) return before;
  const last = into.at(-1);
  const after = lots.filter(({ from }) => last !== undefined && from >= last.name.to);
  const named = after.find(({ from }) =>
    /\b(?:as|call(?:ed)?(?: it)?|named?(?: it)?|new|into|label(?:l?ed)?(?: it)?)[\s:,]*$/i.test(
      rest.text.slice(0, from),
    ),
  );
  return named ?? after[1];
};

const tooManyLots: Trouble = {
  code: 'bad-quantity',
  text: 'One lot for each thing that went in, please, each right after its name: "from 200 g olive oil lot O1 and 120 g olive oil lot O2 and 40 g calendula lot C2".',
};

const jarOf = (
  reading: Reading,
  { lots }: BenchReading,
  into: readonly Pair[],
  own: LotSaid | undefined,
): Jar => {
  const parts: Part[] = [];
  const assumed: string[] = [];
  for (const { amount, name, to } of into) {
    const { id = '', trouble } = nameRead(name);
    const read = gramsRead(amount, id, reading.settings.region);
    const wrong = trouble ?? read.trouble;
    if (wrong) return { parts, assumed, trouble: wrong };
    if (read.assumed) assumed.push(read.assumed);
    const lot = lots.find((said) => said.from >= name.to && said.from < to && said !== own)?.code;
    if (read.grams !== undefined) parts.push({ ingredient: id, grams: read.grams, ...defined({ lot }) });
  }
  const named = parts.filter(({ lot }) => lot !== undefined).length + (own ? 1 : 0);
  return named < lots.length ? { parts, assumed, trouble: tooManyLots } : { parts, assumed };
};

const isTold = ({ lots, rest }: BenchReading): boolean =>
  (lots.length > 0 || /\b(?:stock|shelf)\b/i.test(rest.text)) &&
  cue.test(rest.text) &&
  !asksOrPlans(rest.text) &&
  !rest.items.some(
    ({ letter }, at) => letter === 'R' || (letter === 'c' && /[nx]/.test(rest.items[at - 1]?.letter ?? '')),
  );

const aboutJar = ({ days, rest }: BenchReading, note: string | undefined) =>
  defined({
    on: days.find(({ role }) => role === 'on')?.past,
    bestBefore: days.find(({ role }) => role === 'best-before')?.future,
    homeDried: homeDried.test(rest.text) || undefined,
    fresh: /\bfresh\b/i.test(rest.text) || undefined,
    note,
  });

/** "strained 260 g of calendula oil from 320 g olive oil lot O1 and 40 g calendula lot C2" */
export const claimInfused = (reading: Reading, { bench, note }: BenchText): Claim | undefined => {
  if (!isTold(bench)) return undefined;
  const [out, ...into] = pairsIn(bench.rest);
  if (!out || into.length === 0) return undefined;
  const unclear = bench.lots.find(({ others }) => others);
  const own = ownLot(bench, into);
  const jar = jarOf(reading, bench, into, own);
  const oils = jar.parts.filter(({ ingredient }) => !isHerb(ingredient));
  const got = gramsRead(out.amount, oils[0]?.ingredient ?? '', reading.settings.region);
  const trouble = (unclear && whichLot(unclear)) ?? bench.trouble ?? jar.trouble ?? got.trouble;
  if (trouble) return refuse(trouble, 3.3);
  if (
    !got.grams ||
    got.grams < 0 ||
    jar.parts.some(({ grams }) => grams <= 0) ||
    oils.length !== 1 ||
    oils.length === jar.parts.length
  )
    return refuse(howMuch, 3.3);
  const request = {
    action: 'infused',
    grams: got.grams,
    parts: jar.parts,
    ...defined({ lot: own?.code }),
    ...aboutJar(bench, note),
  };
  return claim(request, 3.5, [...jar.assumed, ...(got.assumed ? [got.assumed] : [])]);
};
