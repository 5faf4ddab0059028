import { defined } from '../../core/defined.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import type { Trouble } from '../answer.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { type Subject, takeOwnIngredients, takeRemembered, takeSubject } from './body.ts';
import { isCalledOff } from './called-off.ts';
import { settleDoubts } from './check-doubts.ts';
import { goesOn } from './check-forms.ts';
import { freshHerbs, takeAnalyses, withWatched } from './check-parts.ts';
import { cueWords } from './cues.ts';
import { takeLabelAmounts } from './label-amounts.ts';
import { isAsked, isListQuestion, whatItSays } from './label-asked.ts';
import { takeBatch } from './label-batch.ts';
import { amountsBefore, bodyBefore, continued, hasBody, type LabelRead, lastLabel } from './label-last.ts';
import { takeParts } from './label-parts.ts';
import { takeSizes } from './label-sizes.ts';
import { takeLotAndDays } from './label-told.ts';
import { labelCues, labelOfPart, labelOfWhat, labelWords } from './label-words.ts';
import { leftover } from './leftover.ts';
import { recipeInText } from './recipe-in-text.ts';
import { unknownRecipe } from './scale-troubles.ts';
import { namesOwnBalm } from './second-look.ts';
import { boardOf } from './target.ts';

/** A wording to be judged, prices, limits and stock belong to others. */
const elsewhere =
  /\b(?:can|may|could|should|am|are)\s+(?:i|we|you)\s+(?:allowed\s+to\s+)?(?:say|write|claim|call)\b|\b(?:ok|okay|allowed|fine|alright)\s+(?:on|for|to\s+(?:put|say|print|write))\b|\bwhat (?:can|may|could) (?:i|we) (?:say|write|put)\b|\b(?:says?|saying|claims?|claiming|costs?|prices?|priced|bought|stock|workshop|swap|heals?|cures?)\b/i;

const markFresh = (lines: readonly RecipeLine[], fresh: readonly string[]): readonly RecipeLine[] =>
  lines.map((line) => (fresh.includes(line.ingredient) ? { ...line, fresh: true } : line));

/** A recipe that another sentence names, where no label is gone on with. */
const fromTalk = (reading: Reading): Subject | undefined => {
  const recipe = lastLabel(reading) ? undefined : recipeInText(reading);
  return recipe === undefined ? undefined : { recipe, assumed: [`I took it to be for ${recipe}.`] };
};

/** "12 g in a tin": how a tin is spoken of, and no number of them. */
const withoutArticles = ({ items, text }: Reading): Reading['items'] =>
  items.filter(
    ({ letter, word, from }, at) =>
      // "Twelve this time" is no multiple.
      !(letter === 'x' && /\b(?:this|next|last)\s$/i.test(text.slice(Math.max(0, from - 5), from))) &&
      (letter !== 'n' || !/^an?$/.test(word) || !/[cgv]/.test(items[at + 1]?.letter ?? '')),
  );

const readAll = (reading: Reading): LabelRead => {
  const { text } = reading;
  const { items, assumed } = settleDoubts(withWatched(withoutArticles(reading), text), text);
  const board = boardOf(items);
  const last = lastLabel(reading);
  const poured = takeBatch(board, reading);
  const parts = takeParts(board, text);
  const told = takeLotAndDays(board, reading, parts.said);
  const { trouble: sizeTrouble, ...sizes } = takeSizes(board, text, last?.strip !== undefined);
  const analyses = takeAnalyses(board, text);
  const amounts = takeLabelAmounts(board, reading);
  const own = takeSubject(board);
  const subject =
    own.recipe === undefined && !own.lines && !own.ingredient
      ? (takeRemembered(board, reading, labelWords) ?? fromTalk(reading) ?? own)
      : own;
  takeOwnIngredients(board, reading, subject.recipe);
  const { trouble, ...counted } = amounts;
  const { batch } = poured;
  const { recipe: _recipe, ...besides } = subject;
  return {
    board,
    subject: {
      ...(batch === undefined ? subject : besides),
      assumed: [...subject.assumed, ...assumed, ...poured.assumed],
      ...defined({ lines: subject.lines && markFresh(subject.lines, freshHerbs(board.items, text)) }),
    },
    fields: {
      ...told,
      ...defined({ batch }),
      ...sizes,
      ...counted,
      ...(analyses.length > 0 ? { analyses } : {}),
    },
    ...defined({ trouble: poured.trouble ?? parts.trouble ?? sizeTrouble ?? trouble ?? subject.trouble }),
  };
};

/** Words in quotes that are the product's name or the maker's are no wording to be judged. */
const isQuoted = ({ name, maker, contact }: Readonly<Record<string, unknown>>): boolean =>
  name !== undefined || maker !== undefined || contact !== undefined;

/** "Poured 24 tins of R, lot H3, labels please": what was poured is to be noted before anything is printed. */
const pours = /\b(?:poured|made)\b.{0,20}\b\d+\s*(?:x|tins?|jars?|pots?|tubes?|sticks?)\b/i;
const isDated = ({ lot, madeOn, bestBefore }: Readonly<Record<string, unknown>>): boolean =>
  lot !== undefined || madeOn !== undefined || bestBefore !== undefined;

const weightOf = (reading: Reading, read: LabelRead): number => {
  const { fields } = read;
  if (isQuoted(fields)) return 3.4;
  if (isDated(fields) && hasBody(read) && anyWord(reading, labelCues) && !pours.test(reading.text))
    return 3.4;
  return isListQuestion(reading) && fields.region !== undefined ? 3.2 : 3;
};

/** "Lids 0.08 each" is a price: without a recipe, or a label before it, nothing is sure. */
const troubled = (reading: Reading, read: LabelRead, trouble: Trouble): Claim => {
  if (hasBody(read)) return refuse(trouble, weightOf(reading, read));
  const last = lastLabel(reading);
  return refuse(trouble, last ? weightOf(reading, read) : 1.2, last);
};

const settle = (reading: Reading, read: LabelRead): Claim => {
  const { subject, fields, trouble } = read;
  const strong = weightOf(reading, read);
  if (trouble) return troubled(reading, read, trouble);
  if (subject.ingredient) return refuse(labelOfPart, 1.5);
  const said = defined({ recipe: subject.recipe, lines: subject.lines });
  if (hasBody(read)) return claim({ ...said, ...fields }, strong, subject.assumed);
  const last = lastLabel(reading);
  if (last) return claim(continued(last, read), strong, subject.assumed);
  const before = bodyBefore(reading);
  if (before)
    return claim({ ...before, ...amountsBefore(reading, fields), ...fields }, strong - 0.2, subject.assumed);
  return refuse(labelOfWhat, 1.2, Object.keys(fields).length > 0 ? fields : undefined);
};

/** "And for the US?", "make it 60 mm", "on letter": another label of the same, said without the word. */
const follows = (reading: Reading, read: LabelRead): Claim | undefined => {
  const last = lastLabel(reading);
  if (!last || read.subject.ingredient || read.subject.lines) return undefined;
  if (Object.keys(read.fields).length === 0 && read.subject.recipe === undefined) return undefined;
  if (read.trouble) return refuse(read.trouble, 2.3, last);
  const only = Object.keys(read.fields);
  // A bare number of tins or an amount may be meant for a scaling too.
  const weak = only.every((field) => field === 'tins' || field === 'net');
  // "It's lot B4" after a label is no question of the stock, and a maker's name is no wording to be judged.
  const sure =
    !pours.test(reading.text) &&
    (isQuoted(read.fields) || isDated(read.fields) || read.subject.recipe !== undefined);
  const place = only.includes('region') && goesOn.test(reading.text);
  return claim(continued(last, read), weak ? 2.2 : sure || place ? 3.4 : 2.6, read.subject.assumed);
};

/** "A label for nut-free R" is of another recipe. */
const isChange = (aside: readonly string[]): boolean =>
  aside.some((said) => said.split(' ').some((word) => cueWords.has(word)));

const labelled =
  /\b(?:labels?|labelling)\b.{0,20}\b(?:for|of)\s+(?:the |our |my )?((?:[A-Z][\w'-]{1,30} ){1,4}(?:lip )?(?:balm|salve|butter|stick))\b/;
/** "Label for the Moonlit balm": one that nobody saved. */
const unknownBalm = (reading: Reading): Claim | undefined => {
  const [, name] = labelled.exec(reading.text.replace(/^label/i, 'label')) ?? [];
  return name && namesOwnBalm(reading) ? refuse(unknownRecipe(name), 1) : undefined;
};

/** What a message would mean as labels for the tins of a recipe or batch. */
export const claimLabel = (reading: Reading): Claim | undefined => {
  if (isCalledOff(reading.text)) return undefined;
  const asked = isAsked(reading);
  if ((!asked && reading.last?.topic !== 'label') || elsewhere.test(reading.text.replace(whatItSays, '')))
    return undefined;
  const read = readAll(reading);
  // A label of a recipe that is named: talk around it changes nothing, and is told.
  const { blocking, aside } = leftover(read.board, labelWords, anyWord(reading, labelCues) && hasBody(read));
  if (blocking.length > 0) return unknownBalm(reading);
  if (isChange(aside)) return undefined;
  const found = asked ? settle(reading, read) : follows(reading, read);
  return found?.kind === 'request' && aside.length > 0
    ? { ...found, assumed: [...found.assumed, `I set aside "${aside.join('", "')}".`] }
    : found;
};
