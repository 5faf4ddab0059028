import type { Reading } from '../reading.ts';

const labels = /\blabels?\b/i;
/** A label or lid that is paid for: with a number and a word of money or of counting beside it. */
const pricedPart =
  /\b(?:lids?|labels?|stickers?|seals?|sleeves?)\b(?=.{0,40}(?:\d|\b(?:cents?|pence)\b))|\d.{0,30}\b(?:lids?|labels?|stickers?|seals?|sleeves?)\b|\b(?:prices?|costs?|pay)\b.{0,30}\b(?:lids?|labels?|stickers?|seals?|sleeves?)\b|\b(?:lids?|labels?|stickers?|seals?|sleeves?)\b.{0,20}\bprices?\b/i;
const moneyWord =
  /[€£$]|\b(?:costs?|prices?|pay|paid|each|apiece|cents?|pence|per|for)\b|\d[.,]\d{2}(?!\d)|\bare\b/i;
const partWord = /^(?:lids?|labels?|stickers?|seals?|sleeves?)$/;

/** "How much does each tin cost with its label?": a part of what is reckoned, and no label to be printed. */
const counted =
  /\bcosts?\b.{0,40}\b(?:with|including|incl|and)(?: (?:its|the|a|one|their))? (?:own )?(?:labels?|lids?)\b/i;

/** Lids, labels and the like are things with a price here, as tins are. */
export const withParts = (reading: Reading): Reading | undefined => {
  const priced = pricedPart.test(reading.text) && moneyWord.test(reading.text);
  if (!priced) return labels.test(reading.text) ? undefined : reading;
  if (counted.test(reading.text) && reading.items.some((item) => item.letter === 'R'))
    return { ...reading, items: reading.items.filter(({ word }) => !partWord.test(word)) };
  if (reading.items.some((item) => item.letter === 'R'))
    return labels.test(reading.text) ? undefined : reading;
  const items = reading.items.map((item) => (partWord.test(item.word) ? { ...item, letter: 'c' } : item));
  return { ...reading, items };
};
