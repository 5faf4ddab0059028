import { defined } from '../../core/defined.ts';
import { ingredientById } from '../../core/ingredients.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { type Place, readingWithout } from '../understand.ts';
import { unknownIngredient } from './ask-back.ts';
import { whichLot } from './batch-meant.ts';
import type { BenchReading } from './bench-reading.ts';
import { type BenchText, nameAfter, readBenchText, withoutReasons } from './bench-text.ts';
import type { Item } from './item.ts';
import { leftover } from './leftover.ts';
import { withPacks } from './pack-times.ts';
import { gramsRead, isAmount, nameRead } from './stock-amount.ts';
import { bareCode, boughtCue, isElsewhere, looksBought } from './stock-bought-cues.ts';
import { countsLots, withoutHeading } from './stock-bought-heading.ts';
import { isThing, type Piece, piecesOf, timesIn } from './stock-pieces.ts';
import { priceTold } from './stock-price.ts';
import { boughtWords, howMuchBought, noContainers, notInStock, whatBought } from './stock-words.ts';
import { boardOf, take } from './target.ts';

/** One purchase as the topic's request has it. */
export interface PurchaseRead {
  readonly ingredient: string;
  readonly herb?: string;
  readonly grams: number;
  readonly lot?: string;
  readonly bestBefore?: string;
  readonly on?: string;
  readonly supplier?: string;
  readonly price?: string;
  readonly paid?: string;
  readonly currency?: string;
  readonly pack?: { readonly amount: number; readonly unit: 'g' | 'ml' };
}

const supplierCue =
  /\b(?:from|by|at|off|supplier(?: is| was)?[:,]?)\s+(?!(?:the )?(?:it\b|that\b|this\b|post|mail|courier|parcel|mistake|kilo|gram|cost|last|least|once|about|home|half|noon|price|least|now|hand|accident|before|earlier|(?:the )?(?:back|bottom|top|spring|summer|autumn|winter|old|older)|january|february|march|april|may|june|july|august|september|october|november|december)\b)(?:the\s+)?(?=\p{L})/iu;
/** Where it came, and what it is for: "in the post", "for the winter workshop". */
const around =
  /\b(?:in|with|by) (?:the |our |this |a )?(?:post|mail|parcel|delivery|box|bag|courier|order|van)\b|\bfor (?:infusing|infusions|melting|pouring|making [a-z]+|candles|soap|balms?|salves?|testing|tests|practice|trials?|teaching|demonstrations?)\b|\bfor (?:the|our|my|next|this)(?: [a-z]+){0,2} (?:batch|batches|infusion|infusions|candle|candles|kitchen|shop|workshop|workshops|fair|market|class|balm|balms|salve|salves|pour|group|season|year|month|week|stall)\b/gi;

interface One {
  readonly purchase?: PurchaseRead;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
  readonly loose: readonly Item[];
  readonly aside?: readonly string[];
}

/** The message as it was typed, for currencies, and without codes and days. */
interface Whole {
  readonly typed: Reading;
  readonly rest: Reading;
}

/** What is named once for several lots: "olive oil: 100 g lot V2, 500 g lot V3". */
const withNames = (pieces: readonly Piece[]): readonly Piece[] => {
  let name: Item | undefined;
  return pieces.map((piece) => {
    const own = piece.items.find(isThing);
    name = own ?? name;
    return own || !name ? piece : { ...piece, items: [name, ...piece.items] };
  });
};

const inPiece = <T extends Place>(list: readonly T[], piece: Place): readonly T[] =>
  list.filter(({ from, to }) => to > piece.from && from < piece.to);

const bareLot = (text: string, piece: Place): (Place & { readonly code: string }) | undefined => {
  const match = bareCode.exec(text.slice(piece.from, piece.to));
  if (!match) return undefined;
  const from = piece.from + match.index;
  return { code: match[0], from, to: from + match[0].length };
};

const isWithin = ({ from, to }: Item, place: Place | undefined): boolean =>
  place !== undefined && from >= place.from && to <= place.to;

/** What is left of a purchase; talk at the edge of a clause is set aside and told. */
const looseIn = (piece: Piece, used: readonly Item[], text: string) => {
  const items = piece.items.filter(
    (item) =>
      used.includes(item) ||
      (isLoose(item) && !countsLots(item, text) && !isPurpose(item, text)) ||
      /^[,;.:()\n!-]$/.test(item.letter),
  );
  const board = boardOf(items);
  for (const [at, item] of board.items.entries()) if (used.includes(item)) take(board, at, at + 1);
  return leftover(board, boughtWords, true);
};

const bestOf = (days: BenchReading['days'], today: string) =>
  days.find(({ role }) => role === 'best-before') ?? days.find((day) => day.future > today);

const sameThing = (one: Item, other: Item): boolean => one.ingredients?.join() === other.ingredients?.join();

const readPiece = (piece: Piece, { typed, rest }: Whole, bench: BenchReading, whole: PurchaseRead): One => {
  const [name, ...more] = piece.items.filter(isThing);
  if (!name) return { assumed: [], loose: [], trouble: whatBought };
  const named = nameRead(name);
  if (named.trouble) return { assumed: [], loose: [], trouble: named.trouble };
  const id = named.id ?? '';
  const amounts = piece.items.filter(isAmount);
  const label = (ingredientById(id)?.name ?? id).replace(/ \([^)]*\)$/, '');
  const [amount] = amounts;
  if (!amount) return { assumed: [], loose: [], trouble: howMuchBought(label) };
  const times = timesIn(piece.items, amount);
  const read = gramsRead(amount, id, rest.settings.region, times.times);
  const days = inPiece(bench.days, piece);
  const { lots } = bench;
  const best = bestOf(days, bench.today);
  const again = more.filter((other) => sameThing(name, other));
  const used = [name, ...again, amount, ...times.items];
  const bare = lots.length === 0 && best ? bareLot(rest.text, piece) : undefined;
  const plain = { ...piece, items: piece.items.filter((item) => !isWithin(item, bare)) };
  const price = priceTold(plain, [amount, ...times.items], typed, read.pack);
  const left = looseIn(plain, [...used, ...price.items], rest.text);
  return {
    assumed: [named.assumed, read.assumed, ...days.map(({ assumed }) => assumed)].flatMap(
      (each) => each ?? [],
    ),
    aside: left.aside,
    loose: [...left.blocking, ...more.filter((other) => !again.includes(other))],
    ...defined({ trouble: read.trouble ?? price.trouble ?? lotTrouble(lots) }),
    purchase: {
      ...whole,
      ingredient: id,
      grams: read.grams ?? 0,
      ...defined({
        herb: named.herb,
        lot: lots[0]?.code ?? bare?.code,
        bestBefore: best?.future,
        on: days.find((day) => day !== best && day.role === 'on')?.past,
        price: price.price,
        paid: price.paid,
        currency: price.currency,
        pack: price.pack,
      }),
    },
  };
};

const lotTrouble = (lots: BenchReading['lots']): Trouble | undefined => {
  const unclear = lots.find(({ others }) => others);
  if (unclear) return whichLot(unclear);
  return lots.length > 1
    ? {
        code: 'bad-quantity',
        text: `One lot for each purchase, please: ${lots.map(({ code }) => code).join(' or ')}? Write them on lines of their own.`,
      }
    : undefined;
};

/** "For Trail Wax I bought …": what it is going to be used for. */
const isPurpose = ({ letter, from }: Item, text: string): boolean =>
  letter === 'R' &&
  /\b(?:for|towards|into)(?: (?:the|our|my|another|more|a batch of|some))?\s+$/i.test(
    text.slice(Math.max(0, from - 26), from),
  );

const isLoose = ({ letter, word }: Item): boolean =>
  /[wzZRgvn%dptrMQ]/.test(letter) && !boughtWords.has(word) && !/^[€$£]$/.test(word);

const forAll = /\b(?:both|all(?: (?:three|four|of (?:it|them)))?|each|everything)\b[^.;]*$/i;

/** What holds for all of them: one shop, one day. */
const sharedOf = (
  bench: BenchReading,
  supplier: string | undefined,
  pieces: number,
): Partial<PurchaseRead> => {
  const on = bench.days.filter(({ role, future }) => role === 'on' && future <= bench.today);
  const [best, second] = bench.days.filter(({ role }) => role === 'best-before');
  const isShared =
    pieces > 1 &&
    best &&
    !second &&
    forAll.test(bench.rest.text.slice(Math.max(0, best.from - 40), best.from));
  return defined({
    supplier,
    on: pieces > 1 && on.length === 1 ? on[0]?.past : undefined,
    bestBefore: isShared ? best.future : undefined,
  });
};

interface Shop {
  readonly bench: BenchReading;
  readonly rest: Reading;
  readonly supplier?: string;
}

const shopOf = ({ bench }: BenchText): Shop => {
  const found = nameAfter(bench.rest.text, supplierCue);
  const talk = [...bench.rest.text.matchAll(around)].map((match) => ({
    from: match.index,
    to: match.index + match[0].length,
  }));
  const rest = readingWithout(bench.rest, [...(found ? [found.place] : []), ...talk]);
  return { bench, rest, ...defined({ supplier: found?.name }) };
};

const nothingNamed = (rest: Reading): Trouble => {
  if (rest.items.some(({ letter }) => letter === 'c')) return noContainers;
  const unknown = rest.items.filter(({ letter, word }) => letter === 'w' && !boughtWords.has(word));
  return unknown.length > 0 && rest.items.some(isAmount)
    ? unknownIngredient(unknown.map(({ word }) => word).join(' '))
    : whatBought;
};

/** The lots of each piece; in their order where they stand before what they are of ("lot K45: 1 kg beeswax; lot K46: …"). */
const lotsOf = ({ lots }: BenchReading, pieces: readonly Piece[]): readonly BenchReading['lots'][] => {
  const inside = pieces.map((piece) => inPiece(lots, piece));
  const even = lots.length === pieces.length && inside.some((each) => each.length !== 1);
  return even
    ? pieces.map((piece, at) =>
        lots.slice(at, at + 1).map((lot) => ({ ...lot, from: piece.from, to: piece.to })),
      )
    : inside;
};

const asideOf = (read: readonly One[]): readonly string[] => {
  const said = read.flatMap(({ aside = [] }) => aside);
  return said.length > 0 ? [`I set aside "${said.join('", "')}".`] : [];
};

/** "bought 500 g beeswax lot K12, best before 2027-03, 14.50 from Hive Lane", one or many, typed or pasted. */
export const claimBought = (message: Reading): Claim | undefined => {
  const reading = withPacks(message);
  const typed = readBenchText(reading);
  const text = { ...typed, bench: withoutReasons(typed.bench) };
  const told = boughtCue.test(text.bench.rest.text);
  if ((!told && !looksBought(text.bench)) || isElsewhere(text.bench.rest.text, told)) return undefined;
  const { bench, rest: said, supplier } = shopOf(text);
  const rest = withoutHeading(said);
  if (bench.trouble) return refuse(bench.trouble, 3.3);
  if (!rest.items.some(isThing)) return told ? refuse(nothingNamed(rest), 2.6) : undefined;
  const pieces = withNames(piecesOf(rest.text, rest.items));
  const shared = sharedOf(bench, supplier, pieces.length) as PurchaseRead;
  const whole = { typed: { ...rest, text: reading.text }, rest };
  const lots = lotsOf(bench, pieces);
  const read = pieces.map((piece, at) => readPiece(piece, whole, { ...bench, lots: lots[at] ?? [] }, shared));
  const trouble = read.find((one) => one.trouble)?.trouble;
  if (trouble) return refuse(trouble, 3.3);
  const loose = read.flatMap((one) => one.loose);
  if (loose.length > 0) return refuse(notInStock(loose.map(({ word }) => word)), 3.2);
  const purchases = read.flatMap(({ purchase }) => purchase ?? []);
  const again = /\b(?:another|again|once more|more of)\b/i.test(bench.rest.text) || undefined;
  const request = { action: 'bought', purchases, ...defined({ note: text.note, again }) };
  return claim(request, 3.4, [...read.flatMap((one) => one.assumed), ...asideOf(read)]);
};
