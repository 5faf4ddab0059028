import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { askWhich } from './ask-back.ts';
import { readCostBatch } from './cost-batch.ts';
import { containerWord } from './cost-prices.ts';
import { readWhen } from './cost-when.ts';
import { aroundMoney } from './cost-words.ts';
import { leftover } from './leftover.ts';
import { boardOf } from './target.ts';

export const oneThing = (reading: Reading): { readonly thing?: string; readonly trouble?: Trouble } => {
  const [item, second] = reading.items.filter((each) => /[ic]/.test(each.letter));
  if (!item || second) return {};
  if (item.letter === 'c') return { thing: containerWord(item.word) };
  const [id, ...more] = item.ingredients ?? [];
  return id === undefined || more.length > 0 || item.because ? { trouble: askWhich(item) } : { thing: id };
};

/** Only names and words of the trade are left: nothing that would make it another request. */
export const isPlain = (reading: Reading): boolean => {
  const rest = reading.items.filter((item) => !/[ic]/.test(item.letter));
  return leftover(boardOf(rest), aroundMoney, false).blocking.length === 0;
};

const pasts =
  /\bhistory\b|\b(?:earlier|former|old|past|previous) prices?\b|\bprices? (?:over time|before)\b|\bused to (?:cost|pay)\b|\b(?:has|have|is|are|did|was|were)\b.{0,30}\b(?:become|became|got|gotten|gone up|went up|risen|dearer)\b/i;
const asksPast = /\b(?:what|how much|price|prices|pay|paid|cost)\b/i;

/** "What did shea cost in March", "price history of shea". */
export const claimPast = (reading: Reading): Claim | undefined => {
  const dated = readWhen(reading);
  const history = pasts.test(reading.text);
  if (!history && !(dated && asksPast.test(reading.text))) return undefined;
  const items = reading.items.filter(
    (item) =>
      !dated?.items.includes(item) &&
      !/^(?:history|earlier|former|old|past|previous|over|time|used|become|became|got|gotten|gone|went|risen|lately|recently|has|have|did)$/.test(
        item.word,
      ),
  );
  const rest = { ...reading, items };
  if (items.some((item) => /[ngvdt%pR]/.test(item.letter)) || !isPlain(rest)) return undefined;
  const { thing, trouble } = oneThing(rest);
  if (trouble) return refuse(trouble, 2.5);
  return thing === undefined
    ? undefined
    : claim({ action: 'history', thing, ...defined({ when: dated?.when }) }, 3.05);
};

const missingWords = /^(?:missing|lacking|lack|lacks|which|without|no|have|still|list|for|in)$/;
const asksMissing =
  /\b(?:missing|lack(?:s|ing)?|without|have no|no)\b.{0,30}\bprices?\b|\bprices?\b.{0,40}\b(?:missing|lacking|still need(?:ed)?)\b/i;

/** "Which prices are missing for R". */
export const claimMissing = (reading: Reading): Claim | undefined => {
  if (!asksMissing.test(reading.text)) return undefined;
  const asked = readCostBatch(
    reading,
    reading.items.filter((item) => !missingWords.test(item.word)),
  );
  if (asked.blocking.length > 0 || !asked.batch) return undefined;
  const { recipe, lines } = asked.batch;
  const more = defined({ container: asked.container });
  // "What would 12 jars cost, and which prices are missing": the reckoning names those as well.
  if (/\bcosts?\b/i.test(reading.text) && asked.batch.count !== undefined && !asked.trouble)
    return claim({ action: 'cost', batch: asked.batch, ...more }, 3.1);
  const batch = defined({ recipe, lines });
  return recipe === undefined && lines === undefined
    ? undefined
    : claim({ action: 'missing', batch, ...more }, 3.1);
};
