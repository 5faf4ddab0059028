import { smallNumbers } from './number.ts';

const coinWords: Readonly<Record<string, string>> = {
  ten: '10',
  twenty: '20',
  thirty: '30',
  forty: '40',
  fifty: '50',
  sixty: '60',
  seventy: '70',
  eighty: '80',
  ninety: '90',
};
const someCoins = new RegExp(
  `\\b(\\d{1,6}|${Object.keys(smallNumbers).join('|')})\\s?(euros?|€|pounds?|£|quid|dollars?)\\s?(?:and\\s)?(\\d\\d|${Object.keys(coinWords).join('|')})\\b(?!\\s*(?:[%x×.,:/-]?\\d|%|(?:g|kg|ml|l|oz|lb|tins?|jars?|pots?|sticks?|tubes?|people|for)\\b))`,
  'gi',
);

/** "Six euros fifty", "6€50": one sum of money. */
export const withCoinsJoined = (text: string): string =>
  text.replace(someCoins, (_said, whole: string, sign: string, coins: string) => {
    const units = smallNumbers[whole.toLowerCase()] ?? whole;
    return `${units}.${coinWords[coins.toLowerCase()] ?? coins} ${sign}`;
  });

const numberWord = Object.keys(smallNumbers).join('|');
const pounds = new RegExp(`\\b(\\d{1,6}(?:[.,]\\d{1,2})?|${numberWord})\\s?pounds?\\b`, 'gi');
const otherMoney = /[€$£]|\b(?:euros?|dollars?|quid|gbp|usd)\b/i;
const aPiece =
  /^\s{0,2}(?:each|apiece|(?:an?|per|\/)\s?(?:k(?:g|ilo)|l(?:it|b)?|hour|hr|day|week|month|tin|jar|pot|stick|tube|piece|person|head|pack|lid|label|hundred|100))/i;
const priceWord =
  /\b(?:cost(?:s|ing)?|charg(?:e|es|ed|ing)|pay(?:s|ing)?|paid|sell(?:s|ing)?|sold|pric(?:e|es|ed|ing)|worth|earn\w{0,3}|wages?|rent|fees?|postage|margin|profit|ask(?:ed)? (?:for|me)|overheads?)\b[^.;\n]{0,60}$/i;
/** "Cost of R for 5 pounds", "20 for 5 pounds": a mass. "Sell it for 5 pounds": money. */
const massBefore =
  /(?:\b(?:of|mak(?:e|ing)|pour(?:ing)?|batch(?:es)?|weigh\w{0,4}|to)|\d for|\bcosts? (?!me |us )[^.;\n]{2,40}\bfor)\s$/i;
const massAfter =
  /^\s{1,2}(?!(?:for|on|in|and|each|per|an?|the|it|is|are|if|as|with|from|to|or|when|this|what|how|i|we|by|at|after|last|all)\b)[a-z]/i;

const isMoney = (text: string, from: number, to: number): boolean => {
  const after = text.slice(to, to + 24);
  const before = text.slice(Math.max(0, from - 80), from);
  if (aPiece.test(after)) return true;
  return priceWord.test(before) && !massBefore.test(before) && !massAfter.test(after);
};

/** "What margin at 6.50 pounds", "tins cost 12 pounds for 50": pounds beside a word of money weigh nothing. */
export const withPoundsOfMoney = (text: string): string =>
  otherMoney.test(text)
    ? text
    : text.replace(pounds, (said, sum: string, at: number) =>
        isMoney(text, at, at + said.length) ? `${sum} GBP` : said,
      );
