import { lotKey } from '../../core/bench/codes.ts';
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

const cue =
  /\b(?:strained|after (?:straining|pressing|filtering|squeezing|draining)|(?:sitting|sat|stood|standing|steeped|steeping|soaked|soaking|been|lay|lain) in (?:(?:the|its|my|our|that) )?(?:[a-z]+ )?(?:oil|_|\d)|infused(?! (?:[a-z]+ )?oil\b)|made|filtered|pressed|drained|sieved|squeezed|decanted|bottled|through (?:the|a|my|our) (?:sieve|filter|cloth|muslin|cheesecloth|strainer))\b/i;
/** Said of an infused oil that is named, these tell that it was strained too. */
const doneCue =
  /\b(?:ready|finished|done|gave|yield(?:ed|s)?|got|came out|turned into|became|used|went in(?:to)?|harvested)\b/i;

const isHerb = (id: string): boolean => ingredientById(id)?.kind === 'herb';

interface Pair {
  readonly amount: Item;
  /** What is named with the amount; a lot may stand for it. */
  readonly name?: Item;
  readonly lot?: LotSaid;
  readonly from: number;
  readonly to: number;
}

const pairAt = ({ rest, lots }: BenchReading, items: readonly Item[], at: number): Pair | undefined => {
  const [amount, after] = [items[at], items[at + 1]];
  if (!amount || !isAmount(amount)) return undefined;
  const to = items.slice(at + 1).find(isAmount)?.from ?? rest.text.length;
  const from = amount.from;
  const lot = lots.find((said) => said.kind === 'lot' && said.from >= amount.to && said.from < to);
  const named = after?.letter === 'i' ? after : undefined;
  // A lot that stands where the name would.
  if (lot && !(named && named.from < lot.from)) return { amount, lot, from, to };
  // "The calendula oil: 410 g from …": what came out may be named before its amount.
  const name = named ?? (at === 1 && items[0]?.letter === 'i' ? items[0] : undefined);
  return name && { amount, name, from, to, ...defined({ lot }) };
};

/** Amounts each with what it is of right after it: "320 g olive oil", "40 g of C2"; "calendula, 40 g" where no name follows. */
const pairsIn = (bench: BenchReading): readonly Pair[] => {
  const items = bench.rest.items.filter((item) => isAmount(item) || item.letter === 'i');
  return items.flatMap((_, at) => pairAt(bench, items, at) ?? []);
};

const gotBefore =
  /\b(?:got|gave|have(?: now)?|there (?:is|are|was|were)|weighs|weighed|left me with|leaves|became|turned into|yield(?:ed|s|ing)?|strained|came out|made|filtered|pressed out|out came|out(?:put)?(?=\W{1,3}$)|left with|total(?: of)?|=)\W*(?:(?:off|out|of|was|is|it|about|us|me|now|in all|then)\W*){0,3}$/i;

const gotAfter =
  /^\W*(?:of (?:it|oil|the oil|finished oil) )?(?:(?:have|has|is|are|was|were|then|finally) )*(?:came|come|ran|dripped|what came|what came|left)(?: (?:out|through|of it|over))?\b/i;

const isGot = (text: string, { from, to }: Item): boolean =>
  gotBefore.test(text.slice(Math.max(0, from - 30), from)) || gotAfter.test(text.slice(to, to + 50));

/** What came out: the oil that has a herb in its name, or the amount that is said to have been got; else the first. */
const cameOut = (pairs: readonly Pair[], text: string): Pair | undefined => {
  const isInfused = ({ name }: Pair): boolean => name?.infusedWith !== undefined;
  return pairs.find(isInfused) ?? pairs.find(({ amount }) => isGot(text, amount)) ?? pairs[0];
};

/** "…, got 300 g": an amount of nothing that is named, after what went in. */
const loneOut = ({ rest }: BenchReading, pairs: readonly Pair[]): Pair | undefined => {
  const lone = rest.items.filter((item) => isAmount(item) && !pairs.some(({ amount }) => amount === item));
  const [amount, second] = lone;
  return amount && !second && isGot(rest.text, amount)
    ? { amount, from: amount.from, to: rest.text.length }
    : undefined;
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
  const first = Math.min(...into.map(({ from }) => from));
  const before = lots.find((said) => said.kind === 'new' && said.from < first);
  if (before) return before;
  const taken = into.flatMap(({ lot }) => lot ?? []);
  const after = lots.filter((said) => said.from >= first && !taken.includes(said));
  const named = after.find(({ from }) =>
    /\b(?:as|call(?:ed)?(?: it)?|named?(?: it)?|new|into|label(?:l?ed)?(?: it)?)[\s:,]*$/i.test(
      rest.text.slice(0, from),
    ),
  );
  const last = into.at(-1);
  return (
    named ??
    after.find(
      ({ kind, from }) =>
        kind === 'new' && from >= (last?.lot?.to ?? last?.name?.to ?? 0) && last?.lot !== undefined,
    )
  );
};

const tooManyLots: Trouble = {
  code: 'bad-quantity',
  text: 'One lot for each thing that went in, please, each right after its name: "from 200 g olive oil lot O1 and 120 g olive oil lot O2 and 40 g calendula lot C2".',
};

const heldIn = ({ bench }: Reading, lot: LotSaid | undefined): string =>
  (lot && bench.lots.get(lotKey(lot.code))?.ingredient) ?? '';

/** One thing that went in, in grams, with the lot that stands with it. */
const partIn = (
  reading: Reading,
  lots: readonly LotSaid[],
  { amount, name, lot: said, to }: Pair,
): { readonly part?: Part; readonly assumed?: string; readonly trouble?: Trouble } => {
  const { id = '', trouble } = name ? nameRead(name) : { id: heldIn(reading, said) };
  const read = gramsRead(amount, id, reading.settings.region);
  const wrong = trouble ?? read.trouble;
  if (wrong) return { trouble: wrong };
  const from = name?.to ?? amount.to;
  const lot = lots.find((each) => each.from >= from && each.from < to)?.code;
  return defined({
    assumed: read.assumed,
    part: read.grams === undefined ? undefined : { ingredient: id, grams: read.grams, ...defined({ lot }) },
  });
};

const jarOf = (
  reading: Reading,
  { lots }: BenchReading,
  into: readonly Pair[],
  own: LotSaid | undefined,
): Jar => {
  const others = lots.filter((said) => said !== own);
  const read = into.map((pair) => partIn(reading, others, pair));
  const parts = read.flatMap(({ part }) => part ?? []);
  const assumed = read.flatMap((each) => each.assumed ?? []);
  const named = parts.filter(({ lot }) => lot !== undefined).length;
  const trouble =
    read.find((each) => each.trouble)?.trouble ?? (named < others.length ? tooManyLots : undefined);
  return { parts, assumed, ...defined({ trouble }) };
};

/** "Calendula oil", "the calendula infusion". */
const namesInfusion = (rest: Reading): boolean =>
  rest.items.some(({ infusedWith }) => infusedWith !== undefined) ||
  /\b(?:infus(?:ion|ed)|macera(?:te|tion))\b/i.test(rest.text);

/** "In a bottle" counts none. */
const isCounted = (before: Item | undefined): boolean =>
  /^[nx]$/.test(before?.letter ?? '') && before?.word !== 'a';

const notYet =
  /\b(?:not|isn't|aren't|wasn't|never)(?: (?:yet|quite|even|been))* (?:ready|finished|done|strained|filtered)\b/i;

const isTold = ({ lots, rest }: BenchReading): boolean =>
  (lots.length > 0 || /\b(?:stock|shelf)\b/i.test(rest.text)) &&
  (cue.test(rest.text) || (doneCue.test(rest.text) && namesInfusion(rest))) &&
  !asksOrPlans(rest.text) &&
  !notYet.test(rest.text) &&
  !rest.items.some(({ letter }, at) => letter === 'R' || (letter === 'c' && isCounted(rest.items[at - 1])));

const aboutJar = ({ days, rest }: BenchReading, note: string | undefined) =>
  defined({
    // "Put up four weeks ago, pressed off today": the last day is that of the oil.
    on: days
      .flatMap(({ role, past }) => (role === 'on' ? past : []))
      .toSorted()
      .at(-1),
    bestBefore: days.find(({ role }) => role === 'best-before')?.future,
    homeDried: homeDried.test(rest.text) || undefined,
    fresh: /\bfresh\b/i.test(rest.text) || undefined,
    note,
  });

/** Without a herb among what went in, it is no infusion. */
const hasHerb = (into: readonly Pair[], reading: Reading): boolean =>
  into.some(({ name, lot }) => [...(name?.ingredients ?? []), heldIn(reading, lot)].some((id) => isHerb(id)));

/** "strained 260 g of calendula oil from 320 g olive oil lot O1 and 40 g calendula lot C2" */
export const claimInfused = (reading: Reading, { bench, note }: BenchText): Claim | undefined => {
  if (!isTold(bench)) return undefined;
  const pairs = pairsIn(bench);
  const out = loneOut(bench, pairs) ?? cameOut(pairs, bench.rest.text);
  const into = pairs.filter((pair) => pair !== out);
  if (!out || into.length === 0 || !hasHerb(into, reading)) return undefined;
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
