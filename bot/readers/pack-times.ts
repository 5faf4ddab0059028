import { oncePerReading, type Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';

const number = '(\\d{1,3}|two|three|four|five|six|seven|eight|nine|ten|twelve|a dozen)';
const pack =
  '(?:bags?|packs?|packets?|bottles?|jars?|tubs?|tins?|blocks?|sacks?|boxes|box|cans?|drums?|jugs?|bars?|cakes?|slabs?|pieces?|tubes?|pots?|cartons?|cases?|lumps?|bricks?|pouches|sachets?|bricks?|canisters?)';
const amount = '(\\d+(?:[.,]\\d+)? ?(?:kg|kilos?|g|grams?|ml|cl|l|litres?|liters?|oz|ounces?|lbs?|pounds?))';
const little = '(?:(?:big|small|large|little|new|full|more|further|whole|glass|plastic|sealed) )?';

/** "Two 500 g bags of beeswax". */
const before = new RegExp(`\\b${number} ${little}${amount} ${little}${pack}(?: of)?\\b`, 'i');
/** "3 bottles of sunflower oil, 750 ml each", "beeswax, 2 bags, 400 g each". */
const each = new RegExp(
  `\\b${number} ${little}${pack}\\b(?: of\\b)?([^\\d;.\\n]{0,40}?),? (?:with |at |of |each (?:of |holding )?|holding )*${amount} (?:each|apiece|per ${pack}|in each)\\b`,
  'i',
);
const eachBefore = new RegExp(
  `\\b${number} ${little}${pack}\\b(?: of\\b)?([^\\d;.\\n]{0,40}?),? each (?:of |with |holding )?${amount}\\b`,
  'i',
);

const inTimes = (_: string, many: string, size: string): string => `${many} x ${size} `;
const eachTimes = (_: string, many: string, name: string, size: string): string => {
  const plain = name.replace(/^[\s,]+/, '');
  // What it came from ends nowhere else.
  return /\bfrom\b/i.test(plain) ? `${many} x ${size} ${plain}` : `${plain} ${many} x ${size}`;
};

/** A purchase in several packs of one size, with the packs told as "3 x 750 ml". */
export const withPacks = oncePerReading((reading): Reading => {
  const { text } = reading;
  if (!/\d/.test(text) || !new RegExp(`\\b${pack}\\b`, 'i').test(text)) return reading;
  const plain = text.replace(each, eachTimes).replace(eachBefore, eachTimes).replace(before, inTimes);
  return plain === text ? reading : readAgain(plain, reading);
});
