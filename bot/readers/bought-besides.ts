import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading } from '../reading.ts';
import { readBench } from './bench-reading.ts';
import { asksOrPlans } from './bench-text.ts';
import { gramsRead, isAmount } from './stock-amount.ts';

/** Longest message that tells of one more purchase of the same, in tokens. */
const mostTokens = 24;
const weight = 3.3;

type Request = Readonly<Record<string, unknown>>;

const opens =
  /^\W*(?:(?:and|also|plus|then|oh|ok|bought|got|another|one more|a second|the same again|same again|the same|a further)\b\W*)+/i;
const words =
  /^(?:and|also|plus|then|oh|ok|bought|got|another|one|more|second|further|a|an|the|same|again|of|it|that|them|this|lot|date|best|before|bb|best-before|with|bag|bottle|tub|pack|block|bigger|smaller|too|as|well|price|shop|from|but|its|number|no|g|kg|ml|l|litre|kilo|today|yesterday)$/i;
const sameDate =
  /\bsame (?:date|best[- ]before|again|one|everything)\b|^\W*(?:and )?the same again\b|\bditto\b/i;

/** The one purchase that was told just before. */
const boughtBefore = ({ last }: Reading): Request | undefined => {
  if (last?.topic !== 'stock' || last.request.action !== 'bought' || !last.done) return undefined;
  const [only, second] = Array.isArray(last.request.purchases) ? (last.request.purchases as Request[]) : [];
  return second ? undefined : only;
};

/** "Another 500 g, lot X4, same date", "and the same again, lot X5": more of what was bought just before. */
export const claimBoughtBesides = (reading: Reading): Claim | undefined => {
  const before = boughtBefore(reading);
  const { text, tokens } = reading;
  if (!before || tokens.length > mostTokens || !opens.test(text) || /\?/.test(text) || asksOrPlans(text))
    return undefined;
  const { lots, days, rest, today } = readBench(reading);
  const [lot, second] = lots;
  const amounts = rest.items.filter(isAmount);
  if (!lot || second || amounts.length > 1 || reading.bench.lots.has(lotKey(lot.code))) return undefined;
  if (!rest.items.every((item) => isAmount(item) || words.test(item.word) || /^[,;.:()-]$/.test(item.letter)))
    return undefined;
  const [amount] = amounts;
  const read = amount && gramsRead(amount, String(before.ingredient), reading.settings.region);
  const grams = amount ? read?.grams : before.grams;
  const best = days.find(({ role, past }) => role === 'best-before' || past > today)?.future;
  const { ingredient, herb, supplier } = before;
  const purchase = defined({
    ingredient,
    herb,
    supplier,
    grams,
    lot: lot.code,
    bestBefore: best ?? (sameDate.test(text) ? before.bestBefore : undefined),
    on: days.find(({ role, past }) => role === 'on' && past <= today)?.past,
  });
  return grams === undefined
    ? undefined
    : claim({ action: 'bought', purchases: [purchase] }, weight, [
        'I took it as more of what you bought before.',
      ]);
};
