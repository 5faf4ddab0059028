import { nameAfter } from '../readers/bench-text.ts';
import type { Reading } from '../reading.ts';

const verb = '(?:sold|gave|given|brought|supplied|sent|posted|dropped|delivered|let)';
const nobody =
  '(?!(?:i|we|you|they|he|she|it|who|which|that|this|these|those|today|yesterday|there|also|then|both|all|post|the post|the courier|courier|postman|the postman)\\b)';
/** "Our beekeeper sold me …", "Brita from the allotment brought us …". */
const giver = new RegExp(
  `(?:^|[.;:!\\n]\\s*|[,_]\\s+|\\b(?:today|yesterday|and|as)\\s+)${nobody}(\\p{L}[\\p{L}' -]{1,40}?)\\s+(?:(?:has|have|had|just|kindly|also|very)\\s+){0,3}${verb}\\b(?=[^.;]{0,16}\\b(?:me|us)\\b)`,
  'iu',
);
const fromCue = /\bfrom\s+(?:the\s+)?(?=\p{L})/iu;
/** "From the label", "from last year": nobody. */
const noName =
  /\b(?:label|lid|pack|bag|bottle|tin|tub|jar|back|bottom|top|book|list|bill|last|this|them|it|him|her|old|my hives?|our hives?|garden|allotment harvest|january|february|march|april|may|june|july|august|september|october|november|december|spring|summer|autumn|winter|now|scratch)\b/i;

const mostWords = 5;

/** Who it came from: "from the oil mill", "our beekeeper sold me". */
export const supplierIn = ({ text, items }: Reading): string | undefined => {
  const named = nameAfter(text, fromCue)?.name ?? giver.exec(text)?.[1]?.trim();
  if (named === undefined || noName.test(named) || named.split(/\s+/).length > mostWords) return undefined;
  const from = text.indexOf(named);
  const isThing = items.some(
    (item) => /[gvnRic]/.test(item.letter) && item.from < from + named.length && item.to > from,
  );
  return isThing || /_/.test(named) ? undefined : named.replace(/^(?:our|my|the|a) /i, '');
};
