import { defined } from '../../core/defined.ts';
import { ingredientById } from '../../core/ingredients.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { lotMeant } from './bench-reading.ts';
import { type BenchText, readBenchText } from './bench-text.ts';
import { claimBoughtBesides } from './bought-besides.ts';
import { withHeldNames } from './held-names.ts';
import type { Item } from './item.ts';
import { leftover } from './leftover.ts';
import { lotsIn } from './lots.ts';
import { ofOnlyLot } from './only-lot.ts';
import { nameRead } from './stock-amount.ts';
import { asksAll, goneOut, leftWord, lowWord, shouldWord, stockWord } from './stock-asks.ts';
import { claimBought } from './stock-bought.ts';
import { claimInfused } from './stock-infused.ts';
import { claimLot, claimOpenedAgain } from './stock-lot.ts';
import { claimLow } from './stock-low.ts';
import { listWords, lotWords, stockCues } from './stock-words.ts';
import { boardOf } from './target.ts';

const isPlain = ({ bench }: BenchText, around = listWords): boolean => {
  const items = bench.rest.items.filter(({ letter }) => letter !== 'i' && letter !== '?');
  return leftover(boardOf(items), around, false).blocking.length === 0;
};

const whichOf = (said: string): 'low' | 'expired' | undefined => {
  if (lowWord.test(said)) return 'low';
  return /\b(?:expired|(?:past|over|beyond) (?:its|their|the) (?:best[- ]before|dates?)|out of date)\b/i.test(
    said,
  )
    ? 'expired'
    : undefined;
};

/** "Any beeswax?", "the shea?": of what the shelf has lots of. */
const isBareAny = ({ bench }: BenchText): boolean =>
  /^\W*(?:and )?any(?: more)? [^?]{2,40}\?\W*$|^\W*(?:so |and |ok )?how much(?: of)?(?: the| our)? [^?]{2,40}\W*$/i.test(
    bench.rest.text,
  ) &&
  bench.rest.items.some(({ letter }) => letter === 'i') &&
  bench.lots.length === 0 &&
  bench.days.length === 0;

/** "Which price do we have for beeswax": of the price list. */
const asksPrice = /\b(?:what|which) prices?\b/i;

const asksList = ({ bench }: BenchText): boolean => {
  const { text, items } = bench.rest;
  if (goneOut.test(text) || asksPrice.test(text) || /\b(?:balms?|salves?|batch(?:es)?)\b/i.test(text))
    return false;
  if (bench.days.length > 0 || bench.lots.length > 0) return false;
  if (/\b(?:in|into|inside) (?:it|them|this|that|there)\b/i.test(text)) return false;
  if (items.some(({ letter }) => /[gvnRct%]/.test(letter))) return false;
  return [lowWord, stockWord, leftWord, shouldWord, asksAll].some((word) => word.test(text));
};

const lotsHeld = ({ bench }: Reading, id: string | undefined): boolean =>
  id === undefined
    ? bench.lots.size > 0
    : [...bench.lots.values()].some(({ ingredient }) => ingredient === id);

type Named = ReturnType<typeof nameRead>;

const listRequest = (text: string, [named, ...more]: readonly Named[]) => {
  const also = more.flatMap(({ id }) => id ?? []);
  return {
    action: 'list',
    ...defined({
      ingredient: named?.id,
      herb: named?.herb,
      also: also.length > 0 ? also : undefined,
      which: named && /\b(?:run|running|ran|are we|we're) out\b/i.test(text) ? undefined : whichOf(text),
      prices: /\bprices?|cost\b/i.test(text) || undefined,
    }),
  };
};

/** "So what's left", right after one lot or batch was spoken of. */
const bareLeft =
  /^\W*(?:(?:so|and|ok|now|then)\b\W*)*(?:what(?:'s| is|s)? (?:still )?(?:left|remaining|remains)(?: now| then)?|(?:which|what) lots(?: (?:were|was|are|did we|went)\b[^.?!]{0,30})?)\W*$/i;
const spokeOfOne = ({ last }: Reading): boolean =>
  /^(?:batch|stock|trace)$/.test(last?.topic ?? '') && typeof (last?.lot ?? last?.request.lot) === 'string';

/** "How much do I have left" of nothing in particular is no question about the shelf. */
const isAboutShelf = (reading: Reading, text: string, named: Named | undefined, bare: boolean): boolean => {
  if (!named && bareLeft.test(text) && spokeOfOne(reading)) return false;
  if (named) return !bare || lotsHeld(reading, named.id);
  if (bare) return false;
  const all = asksAll.test(text) && lotsHeld(reading, undefined);
  return whichOf(text) !== undefined || stockWord.test(text) || all;
};

/** What is past its date is first of all a matter of dates. */
const weightOf = (text: string): number =>
  whichOf(text) === 'expired' && !/\b(?:stock|inventory)\b/i.test(text) ? 2.95 : 3.1;

/** "How much coconut is left": of several that a name can mean, the only one the shelf has. */
const asHeld = (item: Item, { bench }: Reading): Item => {
  const { ingredients = [] } = item;
  if (ingredients.length < 2) return item;
  const lots = [...bench.lots.values()];
  const held = ingredients.filter((id) => lots.some(({ ingredient }) => ingredient === id));
  if (held.length !== 1) return item;
  const { because: _because, ...plain } = item;
  return { ...plain, ingredients: held };
};

const kindSaid: readonly (readonly [RegExp, (id: string) => boolean])[] = [
  [/^wax(?:es)?$/, (id) => ingredientById(id)?.kind === 'wax'],
  [/^butters?$/, (id) => ingredientById(id)?.kind === 'butter'],
  [/^(?:carrier |base )?oils?$/, (id) => ingredientById(id)?.kind === 'liquid-oil'],
  [/^(?:essential oils?|aromas?|eos?)$/, (id) => ingredientById(id)?.kind === 'essential-oil'],
  [/^herbs?$/, (id) => ingredientById(id)?.kind === 'herb'],
];

/** "Which oils do we still have": all of that kind that the shelf has lots of. */
const heldOfKind = (item: Item, { bench }: Reading): readonly string[] => {
  const isKind = kindSaid.find(([said]) => said.test(item.word))?.[1];
  if (!item.generic || !isKind) return [];
  return [...new Set([...bench.lots.values()].map(({ ingredient }) => ingredient).filter(isKind))].slice(
    0,
    11,
  );
};

const namesIn = (items: readonly Item[], reading: Reading): readonly Named[] =>
  items
    .filter(({ letter }) => letter === 'i')
    .flatMap((item) => {
      const kind = heldOfKind(item, reading);
      return kind.length > 0 ? kind.map((id) => ({ id })) : [nameRead(asHeld(item, reading))];
    });

/** "stock", "stock of shea", "how much beeswax do we have left", "running low". */
/** "I found groundnut oil in the cupboard, what can you tell me about it?": of the oil, not of the shelf. */
const aboutThing =
  /\b(?:tell me (?:more |all |something )?about|know about|what is it (?:good )?for|what (?:can|do) (?:i|we|you) (?:do|make|use) with)\b/i;

const claimList = (reading: Reading, whole: BenchText): Claim | undefined => {
  const bare = isBareAny(whole);
  if ((!bare && !asksList(whole)) || !isPlain(whole) || aboutThing.test(reading.text)) return undefined;
  const { text, items } = whole.bench.rest;
  const names = namesIn(items, reading);
  const trouble = names.find((named) => named.trouble)?.trouble;
  if (trouble) return refuse(trouble, 2.9);
  if (!isAboutShelf(reading, text, names[0], bare && !asksList(whole))) return undefined;
  return claim(
    listRequest(text, names),
    weightOf(text),
    names.flatMap(({ assumed }) => assumed ?? []),
  );
};

/** "How much should be in the bottle": what the lot stands in. */
const isVessel =
  /\b(?:in|inside|into) (?:the|that|this|its|our|my)(?: (?:big|small|old|new|open|opened))? $/i;

/** What only the shelf can tell. */
const isSure = (said: string): boolean =>
  leftWord.test(said) || /\b(?:get|got|bought|buy|brought)\b/i.test(said);

/** "lot K12", "how much of K12 is left". */
const claimShow = (text: BenchText): Claim | undefined => {
  const lot = lotMeant(text.bench);
  if (!lot || text.bench.days.length > 0 || !isPlain(text, lotWords)) return undefined;
  const { text: said, items } = text.bench.rest;
  if (
    /\b(?:batches|pours|balms|any batch|made (?:with|from|of)|(?:outside|out of) the house|how long(?!.{0,30}\bopen)|how many (?:days|weeks|months))\b/i.test(
      said,
    )
  )
    return undefined;
  if (items.some(({ letter, from }) => /[gvnRct%]/.test(letter) && !isVessel.test(said.slice(0, from))))
    return undefined;
  return lot.kind === 'lot' || lot.cued || leftWord.test(text.bench.rest.text)
    ? claim({ action: 'show', lot: lot.code }, lot.kind === 'lot' ? (isSure(said) ? 3 : 2.9) : 2)
    : undefined;
};

const asksSeveral =
  /\b(?:how much|left|remain\w*|still|show|list|give (?:me|us)|see|check|what about|what is|what's)\b/i;

/** "How much of K12 and O9 is left": several lots of the shelf, each in its row. */
const claimShowSeveral = (text: BenchText): Claim | undefined => {
  const { lots, days, rest } = text.bench;
  const codes = [...new Set(lots.map(({ code }) => code))];
  if (codes.length < 2 || codes.length > 12 || days.length > 0) return undefined;
  if (lots.some(({ kind }) => kind !== 'lot') || !asksSeveral.test(rest.text)) return undefined;
  if (rest.items.some(({ letter }) => /[gvnRct%]/.test(letter)) || !isPlain(text, lotWords)) return undefined;
  return claim({ action: 'list', codes }, 3);
};

const shortTokens = 40;

const howAreWe = /\b(?:how|where) are we\b|\bare we (?:ok|okay|all right|alright|fine|good)\b/i;

const concerns = (reading: Reading): boolean =>
  anyWord(reading, stockCues) ||
  howAreWe.test(reading.text) ||
  ofOnlyLot(reading) !== undefined ||
  (reading.last?.topic === 'stock' && /^(?:opened|low)$/.test(String(reading.last.request.action))) ||
  (reading.tokens.length <= shortTokens &&
    reading.bench.lots.size > 0 &&
    (lotsIn(reading).length > 0 ||
      anyWord(reading, [
        'warned',
        'alerted',
        'informed',
        'begun',
        'began',
        'price',
        'cost',
        'bill',
        'was',
        'par',
        'level',
      ])));

const further =
  /^\W*(?:(?:and|also|what about|how about|same for|now|ok|then|the|our|any|how much|of|for|have we|do we have|left|is there|please)\b\W*)*$/i;

/** "And the shea?" after a look at the shelf. */
const claimListAgain = (reading: Reading): Claim | undefined => {
  const { last, items, text } = reading;
  const looked = last?.topic === 'stock' && /^(?:list|show)$/.test(String(last.request.action));
  const [name, second] = items.filter(({ letter }) => letter === 'i');
  if (!looked || !name || second || !/^\W*(?:and|also|what about|how about|same for)\b/i.test(text))
    return undefined;
  const around = text.slice(0, name.from) + text.slice(name.to);
  const named = nameRead(asHeld(name, reading));
  if (!further.test(around) || named.id === undefined || !lotsHeld(reading, named.id)) return undefined;
  return claim({ action: 'list', ingredient: named.id, ...defined({ herb: named.herb }) }, 3);
};

const claimPlain = (reading: Reading): Claim | undefined => {
  const text = readBenchText(reading);
  return (
    claimInfused(reading, text) ??
    claimBought(reading) ??
    claimLow(reading, text.bench) ??
    claimOpenedAgain(reading) ??
    claimLot(reading, text) ??
    claimList(reading, text) ??
    claimShow(text) ??
    claimShowSeveral(text)
  );
};

const writesOnLot: ReadonlySet<unknown> = new Set(['opened', 'counted', 'dated']);

/** "Opened the shea butter", where there is one lot of it. */
const claimOfOnlyLot = (reading: Reading): Claim | undefined => {
  const only = ofOnlyLot(reading);
  const made = only && claimLot(only.reading, readBenchText(only.reading));
  return only && made?.kind === 'request' && writesOnLot.has(made.request.action)
    ? { ...made, weight: 3.1, assumed: [...made.assumed, `I took ${only.code}, the only lot of it.`] }
    : undefined;
};

/** "W7 1900 g", right after another lot was weighed. */
const claimCountedNext = (reading: Reading): Claim | undefined => {
  const { last, text } = reading;
  if (last?.topic !== 'stock' || last.request.action !== 'counted' || /\?/.test(text)) return undefined;
  const [code, second] = lotsIn(reading);
  if (!code || second || code.kind !== 'lot') return undefined;
  const around = text.slice(0, code.from) + text.slice(code.to);
  if (!/^\W*(?:and\W+)?\d[\d.,]* ?(?:k?g|grams?|kilos?|oz|lbs?|ml|l)\W*$/i.test(around)) return undefined;
  const plain = readAgain(`${code.code} is really ${around.replace(/^\W*(?:and\W+)?/i, '')}`, reading);
  return claimLot(plain, readBenchText(plain));
};

/** What a message would mean to the stock, names that the shelf settles read as that. */
export const claimStock = (message: Reading): Claim | undefined => {
  const { reading, assumed } = withHeldNames(message);
  const made = claimNamed(reading);
  return made?.kind === 'request' && assumed.length > 0
    ? { ...made, assumed: [...made.assumed, ...assumed] }
    : made;
};

const claimNamed = (reading: Reading): Claim | undefined => {
  const again = claimListAgain(reading) ?? claimBoughtBesides(reading) ?? claimCountedNext(reading);
  if (again) return again;
  if (!concerns(reading)) return undefined;
  const plain = claimPlain(reading);
  return plain?.kind === 'request' && writesOnLot.has(plain.request.action)
    ? plain
    : (claimOfOnlyLot(reading) ?? plain);
};
