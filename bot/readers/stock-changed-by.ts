import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { lotMeant } from './bench-reading.ts';
import type { BenchText } from './bench-text.ts';
import { gramsRead, isAmount } from './stock-amount.ts';
import { dayIn } from './stock-told.ts';

const thing = '(?: the)?(?: (?:stock|amount|count|weight|balance))?(?: (?:of|in|for|on))?';
const changes = new RegExp(
  `^\\W*(?:please )?(?:(?<less>reduce|lower|decrease|cut)|(?<more>increase|raise)|adjust|correct|change|move|put|bring|take)${thing} _+(?<way> up| down)?(?<by> by)?(?<sign> minus| plus| ?[-+])? *$`,
  'i',
);

/** Up or down, or that it is not said; undefined where a message changes nothing by an amount. */
const directionIn = (before: string): 1 | -1 | 'unsaid' | undefined => {
  const { less, more, way, by, sign } = changes.exec(before)?.groups ?? {};
  if (by === undefined && !(sign && !less && !more)) return undefined;
  const down = less !== undefined || / down/i.test(way ?? '') || /minus|-/i.test(sign ?? '');
  const up = more !== undefined || / up/i.test(way ?? '') || /plus|\+/i.test(sign ?? '');
  if (down === up) return 'unsaid';
  return down ? -1 : 1;
};

const upOrDown = (lot: string): Trouble => ({
  code: 'missing',
  text: `Up or down? Say it like "adjust ${lot} down by 20 g", or what there is now: "${lot} is really 230 g".`,
});

const tooMuch = (lot: string, left: number): Trouble => ({
  code: 'out-of-range',
  text: `Only ${left} g of ${lot} are left. Nothing was written down. Say what there is: "${lot} is really 0 g".`,
});

/** "Adjust K12 down by 20 g", "reduce K12 by 20 g", "K12 up by 50 g": counted at what that leaves. */
export const claimChangedBy = (reading: Reading, { bench, note }: BenchText): Claim | undefined => {
  const said = lotMeant(bench);
  const { items, text } = bench.rest;
  const [amount, second] = items.filter(isAmount);
  const lot = said && reading.bench.lots.get(lotKey(said.code));
  if (!lot || !amount || second) return undefined;
  const direction = directionIn(text.slice(0, amount.from));
  if (direction === undefined) return undefined;
  if (direction === 'unsaid') return refuse(upOrDown(lot.lot), 3.4);
  const { trouble, grams, assumed } = gramsRead(amount, lot.ingredient, reading.settings.region);
  if (trouble || grams === undefined) return trouble && refuse(trouble, 3.4);
  const left = Math.round((lot.leftG + direction * Math.abs(grams)) * 1000) / 1000;
  if (left < 0) return refuse(tooMuch(lot.lot, lot.leftG), 3.4);
  const request = {
    action: 'counted',
    lot: lot.lot,
    grams: left,
    ...defined({ on: dayIn(bench), why: note }),
  };
  return claim(request, 3.4, [`The book had ${lot.leftG} g of it.`, ...(assumed ? [assumed] : [])]);
};
