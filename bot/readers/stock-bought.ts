import { defined } from '../../core/defined.ts';
import { ingredientById } from '../../core/ingredients.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { type Place, readingWithout } from '../understand.ts';
import { unknownIngredient } from './ask-back.ts';
import { whichLot } from './batch-meant.ts';
import type { BenchReading } from './bench-reading.ts';
import { asksOrPlans, type BenchText, nameAfter, readBenchText } from './bench-text.ts';
import type { Item } from './item.ts';
import { gramsRead, isAmount, nameRead } from './stock-amount.ts';
import { isThing, type Piece, piecesOf, timesIn } from './stock-pieces.ts';
import { priceTold } from './stock-price.ts';
import { boughtWords, howMuchBought, noContainers, notInStock, whatBought } from './stock-words.ts';

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

const cue =
  /\b(?:bought|purchased|received|got in|delivery|delivered|arrived|restocked|stocked up|picked up|fetched|collected|add(?:ed)? to (?:the |our )?stock|new (?:stock|lot|in))\b|\bto (?:the |our )?stock\b/i;
const supplierCue = /\bfrom\s+(?:the\s+)?(?=\p{L})/iu;

/** "500 g beeswax lot K12 best before 2027-03": an amount, a name, and a lot with a date or a price beside them. */
const looksBought = ({ rest, lots, days }: BenchReading): boolean =>
  lots.some(({ cued, kind }) => cued && kind !== 'batch') &&
  rest.items.some(({ letter }) => letter === 'i') &&
  rest.items.filter(isAmount).length === 1 &&
  days.some(({ role }) => role === 'best-before');

interface One {
  readonly purchase?: PurchaseRead;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
  readonly loose: readonly Item[];
}

const inPiece = <T extends Place>(list: readonly T[], piece: Place): readonly T[] =>
  list.filter(({ from, to }) => to > piece.from && from < piece.to);

const readPiece = (piece: Piece, reading: Reading, bench: BenchReading, whole: PurchaseRead): One => {
  const [name, ...others] = piece.items.filter(isThing);
  if (!name) return { assumed: [], loose: [], trouble: whatBought };
  const named = nameRead(name);
  if (named.trouble) return { assumed: [], loose: [], trouble: named.trouble };
  const id = named.id ?? '';
  const amounts = piece.items.filter(isAmount);
  const label = (ingredientById(id)?.name ?? id).replace(/ \([^)]*\)$/, '');
  const [amount, ...more] = amounts;
  if (!amount) return { assumed: [], loose: [], trouble: howMuchBought(label) };
  const times = timesIn(piece.items, amount);
  const read = gramsRead(amount, id, reading.settings.region, times.times);
  const price = priceTold(piece, [amount, ...times.items], reading, read.pack);
  const days = inPiece(bench.days, piece);
  const lots = inPiece(bench.lots, piece);
  const best =
    days.find(({ role }) => role === 'best-before') ?? days.find((day) => day.future > bench.today);
  const used = [name, amount, ...times.items, ...price.items];
  const loose = [...more, ...others, ...piece.items.filter((item) => !used.includes(item) && isLoose(item))];
  return {
    assumed: [named.assumed, read.assumed, ...days.map(({ assumed }) => assumed)].flatMap(
      (each) => each ?? [],
    ),
    loose,
    ...defined({ trouble: read.trouble ?? price.trouble ?? lotTrouble(lots) }),
    purchase: {
      ...whole,
      ingredient: id,
      grams: read.grams ?? 0,
      ...defined({
        herb: named.herb,
        lot: lots[0]?.code,
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

const isLoose = ({ letter, word }: Item): boolean =>
  /[wzZRgvn%dptrMQ]/.test(letter) && !boughtWords.has(word) && !/^[€$£]$/.test(word);

/** What holds for all of them: one shop, one day. */
const sharedOf = (
  bench: BenchReading,
  supplier: string | undefined,
  pieces: number,
): Partial<PurchaseRead> => {
  const on = bench.days.filter(({ role, future }) => role === 'on' && future <= bench.today);
  return defined({ supplier, on: pieces > 1 && on.length === 1 ? on[0]?.past : undefined });
};

interface Shop {
  readonly bench: BenchReading;
  readonly rest: Reading;
  readonly supplier?: string;
}

const shopOf = ({ bench }: BenchText): Shop => {
  const found = nameAfter(bench.rest.text, supplierCue);
  if (!found) return { bench, rest: bench.rest };
  return { bench, rest: readingWithout(bench.rest, [found.place]), supplier: found.name };
};

const nothingNamed = (rest: Reading): Trouble => {
  if (rest.items.some(({ letter }) => letter === 'c')) return noContainers;
  const unknown = rest.items.filter(({ letter, word }) => letter === 'w' && !boughtWords.has(word));
  return unknown.length > 0 && rest.items.some(isAmount)
    ? unknownIngredient(unknown.map(({ word }) => word).join(' '))
    : whatBought;
};

/** "bought 500 g beeswax lot K12, best before 2027-03, 14.50 from Hive Lane", one or many, typed or pasted. */
export const claimBought = (reading: Reading): Claim | undefined => {
  const text = readBenchText(reading);
  const told = cue.test(text.bench.rest.text);
  if ((!told && !looksBought(text.bench)) || asksOrPlans(text.bench.rest.text)) return undefined;
  const { bench, rest, supplier } = shopOf(text);
  if (bench.trouble) return refuse(bench.trouble, 3.3);
  if (!rest.items.some(isThing)) return told ? refuse(nothingNamed(rest), 2.6) : undefined;
  const pieces = piecesOf(rest.text, rest.items);
  const shared = sharedOf(bench, supplier, pieces.length) as PurchaseRead;
  const read = pieces.map((piece) => readPiece(piece, { ...rest, text: reading.text }, bench, shared));
  const trouble = read.find((one) => one.trouble)?.trouble;
  if (trouble) return refuse(trouble, 3.3);
  const loose = read.flatMap((one) => one.loose);
  if (loose.length > 0) return refuse(notInStock(loose.map(({ word }) => word)), 3.2);
  const purchases = read.flatMap(({ purchase }) => purchase ?? []);
  const again = /\b(?:another|again|once more|more of)\b/i.test(bench.rest.text) || undefined;
  const request = { action: 'bought', purchases, ...defined({ note: text.note, again }) };
  return claim(
    request,
    3.4,
    read.flatMap((one) => one.assumed),
  );
};
