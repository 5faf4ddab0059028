import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { type BenchReading, lotMeant } from './bench-reading.ts';
import type { BenchText } from './bench-text.ts';
import type { Item } from './item.ts';
import { gramsRead, isAmount } from './stock-amount.ts';
import { isPartOf } from './stock-taken.ts';
import { countCue, dayIn, isVague, isWhatIs, reasonIn, relative } from './stock-told.ts';

const emptyCue =
  /\bno longer (?:here|there|with us|on the shelf|in stock)\b|\b(?:set|put|bring|take) (?:it |_+ |this |that )?(?:down )?to (?:zero|nil|nothing)\b|\b(?:is empty|used up|all gone|is gone|finished|is out(?! of)|run out|ran out|none left|empty now|emptied|no more|nothing (?:is )?left|all used|used it all|run dry)\b|_\W{0,2}(?:is )?(?:now )?empty\b|\bempty\W+(?:of )?_/i;
/** "My cat weighs 4 kg and sits on K12": somebody else's weight. */
const weighsElse =
  /\b(?:my|our|his|her|their|an?) (?!(?:tub|jar|tin|can|canister|bottle|bucket|bag|block|box|jug|lot|rest|wax|oil|butter|herb|stock|scales?)s?\b)[a-z]{2,15} (?:weighs?|weighed)\b/i;

const whatItWeighs = (lot: string): Trouble => ({
  code: 'missing',
  text: `How much is there now? Say it like "${lot} is really 230 g".`,
});

const otherThing = ({ letter, from }: Item, text: string): boolean =>
  /[RctM%]/.test(letter) &&
  !(
    letter === 'c' &&
    /\b(?:(?:in|inside|into) (?:the|its|this|that|two|one)|the) $/i.test(text.slice(0, from))
  );

/** "…, not 3 kg". */
const isDenied = ({ from }: Item, text: string): boolean =>
  /\b(?:not|instead of|rather than|wrote|written|noted|put down|typed|entered|told you|said) (?:(?:the|only|just|down|in|it was|it as) )?$/i.test(
    text.slice(Math.max(0, from - 24), from),
  );

/** The one amount that is what a lot weighs. */
const weighedIn = ({ rest: { items, text } }: BenchReading): Item | undefined => {
  const amounts = items.filter((item) => isAmount(item) && !isDenied(item, text));
  if (amounts.length === 1 && !items.some(({ letter }) => letter === 'n')) return amounts[0];
  const sure = amounts.filter((amount) => isWhatIs(amount, text));
  return sure.length === 1 ? sure[0] : undefined;
};

const countedAs = (reading: Reading, lot: string, amount: Item, more: object): Claim | undefined => {
  const known = reading.bench.lots.get(lotKey(lot))?.ingredient ?? '';
  const { trouble, grams, assumed } = gramsRead(amount, known, reading.settings.region);
  if (trouble) return refuse(trouble, 3.3);
  return grams === undefined
    ? undefined
    : claim({ action: 'counted', lot, grams, ...more }, 3.3, assumed ? [assumed] : []);
};

/** "K12 is really 230 g", "K12 is empty". */
export const claimCounted = (reading: Reading, { bench, note }: BenchText): Claim | undefined => {
  const lot = lotMeant(bench);
  const { text, items } = bench.rest;
  if (!lot) return undefined;
  const more = defined({ on: dayIn(bench), why: note ?? reasonIn(text.replace(/^[^_]*_+\s*:/, '')) });
  const amounts = items.filter(isAmount);
  if (emptyCue.test(text) && amounts.length === 0)
    return claim({ action: 'counted', lot: lot.code, grams: 0, ...more }, 3.3);
  const isElse = items.some((item) => otherThing(item, text)) || weighsElse.test(text);
  const amount = isElse || !countCue.test(text) ? undefined : weighedIn(bench);
  if (
    !amount ||
    amounts.some(
      (each) =>
        !isDenied(each, text) && isPartOf(each, bench) && !(isVague(each, text) && isWhatIs(amount, text)),
    )
  )
    return undefined;
  if (relative.test(text.slice(Math.max(0, amount.from - 24), amount.to + 24)))
    return refuse(whatItWeighs(lot.code), 3.2);
  return countedAs(reading, lot.code, amount, more);
};
