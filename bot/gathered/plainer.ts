import { shapeOf } from '../likeness/pieces.ts';
import type { Item } from '../readers/item.ts';
import { pointedNames } from '../readers/pointed-name.ts';
import { holds, matters, sentencesIn } from '../readers/sentences.ts';
import type { Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';

/** "Grams, please." */
const asksIn =
  /\b(?:grams?|ounces|pounds|ml|millilit(?:re|er)s|celsius|fahrenheit|drops|weights?|quantities|amounts|masses)\b/i;

/** The message without the sentences that hold nothing and ask nothing. */
const withoutAsides = (reading: Reading): Reading => {
  const { text } = reading;
  const sentences = sentencesIn(text);
  const kept = sentences.filter((sentence) => {
    const said = text.slice(sentence.from, sentence.to);
    return holds(reading, sentence) || matters(said) || asksIn.test(said) || /\?\s*$/.test(said);
  });
  if (kept.length === 0 || kept.length === sentences.length) return reading;
  const said = kept.map(({ from, to }) => text.slice(from, to));
  return readAgain(said.map((each) => `${each.trim()}${/\n\s*$/.test(each) ? '\n' : ' '}`).join(''), reading);
};

const degrees = /(\d)\s?degrees?\b(?!\s+(?:[cf]\b|celsius|centigrade|fahrenheit))/gi;
/** "Tins: 16" in a list. */
const countAfter = /\b(tins?|jars?|pots?|tubes?|sticks?) ?[:=] ?(\d{1,4})\b(?! ?(?:ml|g|oz|x)\b)/gi;
/** "Fifty tins (15 ml)". */
const bracketed = /\b(tins|jars|pots|tubes|sticks) ?\((\d[\d.,]{0,5} ?(?:ml|g|oz|fl oz))(?: each)?\)/gi;
/** "To fill a 500 ml jar". */
const oneHolder = /(?<=\bfill )(?:an?|one) (\d[\d.,]{0,5} ?(?:ml|g|oz|fl oz)) (tin|jar|pot|tube|tub)\b/gi;
/** "In one tin go 30 ml". */
const inOne =
  /\b(?:(?:in|into) (?:one|a|every) (?:tin|jar|pot|tube|stick) (?:goes|go|fits?)|(?:one|a|every) (?:tin|jar|pot|tube|stick) (?:takes|holds|is for))\b/gi;
const oneOf =
  /(?<![\d€£$] ?)\b(?:an?|one) (?=(?:kilo(?:gram(?:me)?)?|kg|lit(?:re|er)|pound|ounce|pint)s? of (?:(?:the|our|my) )?(?:[\w-]+ ){0,3}(?:balm|salve)\b)/gi;
/** A telegram's full stops. */
const withStops = (text: string): string =>
  /[a-z]/.test(text) ? text : text.replace(/(?<=\S\s+\S+)\s+STOP\b/g, '.');

/** "A litre of olive oil" to work with, "a walnut allergy". */
const onePack = /\ban? (lit(?:re|er)|kilo|kg|pound|ounce)(?= of\b)/gi;
const someNut = /\b(?:walnut|hazelnut|almond|cashew|pecan|macadamia|brazil nut)s?(?= allerg)/gi;

/** "36 degrees" for 36 °C, "a kilo of hand balm" for 1 kg of it. */
const withFigures = (reading: Reading): Reading => {
  const text = withStops(reading.text)
    .replace(degrees, '$1 °C')
    .replace(/\bhalf (?:a )?grams?\b/gi, '0.5 g')
    .replace(/\b(?:a|one) third of the\b/gi, '33.3% of the')
    .replace(/\b(?:a|one) quarter of the\b/gi, '25% of the')
    .replace(countAfter, '$2 $1')
    .replace(bracketed, '$1 of $2')
    .replace(oneHolder, '1 $2 of $1')
    .replace(inOne, 'each')
    .replace(oneOf, '1 ')
    .replace(onePack, '1 $1')
    .replace(someNut, 'nut');
  return text === reading.text ? reading : readAgain(text, reading);
};

const apart = /nco(R)[@,:(]?([gv])(?!o?i)/;

/** "30 tins of hand balm at 15 g" is 30 tins of 15 g of it. */
const together = (reading: Reading, { index, 0: said }: RegExpExecArray): Reading => {
  const { items, text } = reading;
  const [count, holder, , name] = items.slice(index, index + 4);
  const size = items[index + said.length - 1];
  if (!count || !holder || !name?.recipe || !size) return reading;
  const held = `${text.slice(count.from, holder.to)} of ${text.slice(size.from, size.to)} of ${name.recipe}`;
  return readAgain(`${text.slice(0, count.from)}${held}${text.slice(size.to)}`, reading);
};

/** "24 15 ml hand balm tins" is 24 tins of 15 ml of it. */
const sizeFirst = (reading: Reading, at: number): Reading => {
  const { items, text } = reading;
  const [count, size, name, holder] = items.slice(at, at + 4);
  if (!count || !size || !name?.recipe || !holder) return reading;
  const said = (item: Item): string => text.slice(item.from, item.to);
  const tins = `${said(count)} ${said(holder)} of ${said(size)} of ${name.recipe}`;
  return readAgain(`${text.slice(0, count.from)}${tins}${text.slice(holder.to)}`, reading);
};

/** "24 hand balm tins of 15 ml" is 24 tins of 15 ml of hand balm. */
const withHoldersTogether = (reading: Reading): Reading => {
  const { items, text } = reading;
  const shape = shapeOf(items);
  const swapped = /n[vg]Rc/.exec(shape);
  if (swapped) return sizeFirst(reading, swapped.index);
  const split = apart.exec(shape);
  if (split) return together(reading, split);
  const found = /nR(c[oe@]?[vg]|[vg]c)/.exec(shape);
  if (!found) return reading;
  const [count, name, held] = items.slice(found.index);
  const to = items[found.index + found[0].length - 1]?.to;
  if (!count || !name?.recipe || !held || to === undefined) return reading;
  const tins = `${text.slice(count.from, count.to)} ${text.slice(held.from, to)} of ${name.recipe}`;
  return readAgain(`${text.slice(0, count.from)}${tins}${text.slice(to)}`, reading);
};

/** The message as uses are looked for in it. */
export const forUses = (message: Reading): Reading =>
  withHoldersTogether(pointedNames(withoutAsides(pointedNames(withFigures(message)).reading)).reading);
