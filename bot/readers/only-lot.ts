import { oncePerReading, type Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { asksOrPlans } from './bench-text.ts';
import { daysIn } from './days.ts';
import type { Item } from './item.ts';
import { lotsIn } from './lots.ts';
import { isAmount, nameRead } from './stock-amount.ts';

/** Longest message that names an ingredient in place of its lot, in tokens. */
const mostTokens = 30;

/** "Opened the shea butter", "the shea is really 850 g", "we have 850 g of shea left": what is told of the one lot there is. */
const tells =
  /\b(?:opened|started (?:on )?(?:the|our|a)|(?:broke|cut|tore) (?:the seal|open)|(?:is|are) (?:now )?open|open since|began|begun|(?:by mistake|wrongly|error|mistaken)\b|took the lid off|broke into|weighs|weighed|really|actually|in fact|(?:there(?:'s| is| are)|we(?:'ve| have)|i(?:'ve| have)|only|still|just) (?:only |still |got |just |about )*\d.{0,40}\bleft|left is|left are|down to|counted|scales?|is empty|best[- ]before|keeps until|date (?:on|of)|(?:was|is|were) (?:only|not) \d+|(?:wasn't|isn't) \d+)\b/i;
const elsewhere =
  /\b(?:bought|got in|arrived|delivered|received|poured|made|warn|alert|tell me|low mark|below|under|recipe|needs?|strained|infused|threw|binned|used|costs?|price|(?:at|in) (?:the|a|that) (?:shop|store|market)|at home|(?:anna|somebody|someone|she|he|they) has)\b/i;

/** "Started the jojoba bottle" counts no bottles. */
const isOther = ({ letter }: Item, at: number, all: readonly Item[]): boolean =>
  /[R%p]/.test(letter) ||
  (letter === 'c' && /[nx]/.test(all[at - 1]?.letter ?? '') && all[at - 1]?.value !== 1);

/** The message with the code of the only lot that there is of the one ingredient it names, in place of the name. */
export const ofOnlyLot = oncePerReading(
  (reading): { readonly reading: Reading; readonly code: string } | undefined => {
    const { text, tokens, items, bench } = reading;
    if (tokens.length > mostTokens || !tells.test(text) || elsewhere.test(text)) return undefined;
    if (text.includes('?') || asksOrPlans(text) || lotsIn(reading).length > 0) return undefined;
    if (items.some(isOther)) return undefined;
    if (items.some(isAmount) && daysIn(reading).days.some(({ role }) => role === 'best-before'))
      return undefined;
    const [name, second] = items.filter(({ letter, generic }) => letter === 'i' && !generic);
    if (!name || second) return undefined;
    const { id, herb } = nameRead(name);
    const held = [...bench.lots.values()].filter(
      (lot) => lot.ingredient === id && lot.leftG > 0 && (herb === undefined || lot.herbs?.includes(herb)),
    );
    const [only, other] = held;
    if (!only || other) return undefined;
    const from = text
      .slice(0, name.from)
      .replace(/\b(?:the|our|my|of)\s+$/i, (said) => (/of/i.test(said) ? said : ''));
    return { code: only.lot, reading: readAgain(`${from}lot ${only.lot}${text.slice(name.to)}`, reading) };
  },
);
