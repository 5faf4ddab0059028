import { defined } from '../../core/defined.ts';
import { ingredientById } from '../../core/ingredients.ts';
import { isMassUnit, isTemperatureUnit, isVolumeUnit, type Unit } from '../../core/units.ts';
import type { Trouble } from '../answer.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import type { ConvertWish } from '../topics/convert.ts';
import { askWhich, echo } from './ask-back.ts';
import type { Item } from './item.ts';
import { leftover } from './leftover.ts';
import { quantityTrouble } from './scale-target.ts';
import { type Board, boardOf, free, take } from './target.ts';

/** Words around a conversion that ask for nothing more. */
export const convertWords = new Set(
  `what whats what's which wat wot wut how hot express convert conversion converted converting many much is equals equal weigh weighs weight
  does work out make makes come comes worth into per mean measure measured calculate change turn translate degree degrees temperature volume
  mass amount number instead other remind someone always only says say said bath thermometer oven jug book recipe i've forget melted or not don't dont care matter needs scale shows read reads same too`.split(
    /\s+/,
  ),
);
const withMinus = new Set([...convertWords, 'minus']);

const cues = ['convert', 'conversion', 'converted', 'many', 'weigh', 'weighs', 'turn', 'translate'];
const weighing = ['weigh', 'weighs', 'weight', 'heavy'];
const asking = ['what', "what's"];

const intoWhat: Trouble = {
  code: 'missing',
  text: 'Into which unit? For example "5 oz in g", "2 tbsp shea butter in grams" or "150F in C".',
};
const convertWhat: Trouble = {
  code: 'missing',
  text: 'Convert what? For example "5 oz in g" or "2 tbsp shea butter in grams".',
};
const negative: Trouble = {
  code: 'bad-quantity',
  text: 'An amount below zero cannot be weighed or measured. Write it without the minus, for example "5 oz in g".',
};
const unknownThing = (items: readonly Item[]): Trouble => ({
  code: 'unknown-ingredient',
  text: `I can convert the amount, but I do not know "${echo(items.map((item) => item.word).join(' '))}". Name an ingredient I know, for example "2 tbsp shea butter in grams".`,
});

const isUnit = (unit: string | undefined): unit is Unit =>
  unit !== undefined && (isMassUnit(unit) || isVolumeUnit(unit) || isTemperatureUnit(unit));

const takeOne = (board: Board, letters: string): Item | undefined => {
  const [item, ...more] = free(board).filter((each) => letters.includes(each.letter));
  // "My scale shows grams … how many grams is that": the same unit twice is one.
  if (!item || more.some(({ letter, unit }) => letter !== 'u' || unit !== item.unit)) return undefined;
  const at = board.items.indexOf(item);
  take(board, at, at + 1);
  return item;
};

interface Named {
  readonly id?: string;
  readonly trouble?: Trouble;
  readonly assumed: readonly string[];
}

/** Drops are of an essential oil, which settles names that mean herb and oil. */
const ingredientOf = (item: Item | undefined, drops: boolean): Named => {
  if (!item) return { assumed: [] };
  const ids = item.ingredients ?? [];
  const oils = drops ? ids.filter((id) => ingredientById(id)?.kind === 'essential-oil') : [];
  const id = ids.length === 1 && !item.because ? ids[0] : oils.length === 1 ? oils[0] : undefined;
  if (id === undefined) return { trouble: askWhich(item), assumed: [] };
  const name = ingredientById(id)?.name ?? id;
  return {
    id,
    assumed: item.misspelt ? [`I read "${item.misspelt}" as ${name}.`] : [],
  };
};

/** "minus 5 C", "-5 C" at the start of a message. */
const signed = (reading: Reading, amount: Item | undefined): number | undefined => {
  if (amount?.value === undefined) return undefined;
  const before = reading.items[reading.items.indexOf(amount) - 1];
  return amount.bulletOrMinus || before?.word === 'minus' ? -amount.value : amount.value;
};

interface Draft {
  readonly wish: Partial<ConvertWish>;
  readonly named: Named;
  readonly amount?: Item;
  readonly unit?: Item;
  readonly continues: boolean;
}

type LastConvert = Partial<ConvertWish>;

const lastConvert = (reading: Reading): LastConvert =>
  reading.last?.topic === 'convert' ? reading.last.request : {};

/** The unit asked for. "how much does a cup of coconut oil weigh" names none, and means grams. */
const unitAsked = (unit: Item | undefined, base: LastConvert, weighs: boolean): Unit | undefined => {
  if (isUnit(unit?.unit)) return unit.unit;
  return base.to ?? (weighs ? 'g' : undefined);
};

/** The conversion before, as far as this message leaves something of it standing. */
const baseOf = (reading: Reading, board: Board, complete: boolean): LastConvert | undefined => {
  const last = lastConvert(reading);
  if (last.value === undefined || complete) return undefined;
  // "no, I meant 40": the no takes back the amount before.
  if (board.items[0]?.letter === 'N') take(board, 0, 1);
  return last;
};

/** "A pound of wax in grams": a weight is a weight, of whatever wax. */
const isWeightOnly = (from = '', to = ''): boolean => isMassUnit(from) && isMassUnit(to);

/** "How much is a cup of shea butter": spoons and cups are no packs with a price. */
const asksWeight = (reading: Reading, from: string | undefined): boolean =>
  anyWord(reading, weighing) ||
  (/^(?:tsp|tbsp|cup|drop)/.test(from ?? '') && /\bhow much (?:is|are|would|does|do)\b/i.test(reading.text));

const draftOf = (reading: Reading, board: Board): Draft => {
  const measured = takeOne(board, 'gvdt');
  const unit = takeOne(board, 'u');
  const base = baseOf(reading, board, measured !== undefined && unit !== undefined);
  const amount = measured ?? (base ? takeOne(board, 'n') : undefined);
  const from = isUnit(amount?.unit) ? amount.unit : base?.from;
  const named = ingredientOf(takeOne(board, 'i'), from === 'drop' || unit?.unit === 'drop');
  const ingredient = named.id ?? base?.ingredient;
  const weighs = ingredient !== undefined && asksWeight(reading, from) && isVolumeUnit(from ?? '');
  const to = unitAsked(unit, base ?? {}, weighs);
  const value = signed(reading, amount) ?? base?.value;
  return {
    wish: defined({ value, from, to, ingredient }),
    named: isWeightOnly(from, to) ? { assumed: named.assumed } : named,
    ...defined({ amount, unit }),
    continues: base !== undefined,
  };
};

const wishTrouble = ({ wish, named }: Draft, reading: Reading): Trouble | undefined => {
  const temperature = isTemperatureUnit(wish.from ?? '');
  const quantity = temperature ? undefined : quantityTrouble(reading.items);
  if (quantity) return quantity;
  if ((wish.value ?? 0) < 0 && !temperature) return negative;
  return named.trouble;
};

/** Something in the message is no part of a conversion: an unknown thing to convert, or another question. */
const blockedClaim = ({ amount, unit }: Draft, blocking: readonly Item[]): Claim | undefined => {
  const thing = amount && unit && blocking.every((item) => item.letter === 'w');
  return thing ? refuse(unknownThing(blocking), 0.7) : undefined;
};

const isAsked = (reading: Reading, { unit, continues }: Draft): boolean =>
  anyWord(reading, cues) || anyWord(reading, asking) || unit !== undefined || continues;

const isAbout = (reading: Reading, draft: Draft): boolean => {
  const { amount, unit, named, continues } = draft;
  if (!amount && !continues) return false;
  return (amount ?? unit ?? named.id ?? named.trouble) !== undefined && isAsked(reading, draft);
};

/** "How many drops in 100 g of lip balm" asks how strong it may be. */
const intoBalm = /\bdrops?\b.{0,60}\b(?:in|for|to|into)\b.{0,30}\b(?:balm|balms|salve|salves|lipstick)\b/i;

/** "A 50 g batch. How many drops could I add?" */
const howManyMore =
  /\bhow many drops\b.{0,50}\b(?:can|could|may|might|should|shall|am i allowed)\b.{0,20}\b(?:add|put|use|go|have|mix|be)\b|\bhow many drops\b.{0,50}\b(?:at (?:the )?most|maximum|at max)\b/i;

const asksHowStrong = (text: string): boolean => intoBalm.test(text) || howManyMore.test(text);

/** What a message would mean as a conversion. */
export const claimConvert = (reading: Reading): Claim | undefined => {
  if (asksHowStrong(reading.text)) return undefined;
  const board = boardOf(reading.items);
  const draft = draftOf(reading, board);
  const { wish, named, amount } = draft;
  if (!isAbout(reading, draft)) {
    return !amount && reading.words.has('convert') ? refuse(convertWhat, 0.6) : undefined;
  }
  const whole = amount !== undefined && draft.unit !== undefined;
  const { blocking } = leftover(board, isTemperatureUnit(wish.from ?? '') ? withMinus : convertWords, whole);
  if (blocking.length > 0) return blockedClaim(draft, blocking);
  const weight = anyWord(reading, cues) ? 2.5 : 2;
  const trouble = wishTrouble(draft, reading);
  if (trouble) return refuse(trouble, weight);
  return wish.to === undefined ? refuse(intoWhat, 0.9, wish) : claim(wish, weight, named.assumed);
};
