import { defined } from '../../core/defined.ts';
import type { Form } from '../../core/design/wishes.ts';
import { type Claim, claim, type Reading } from '../reading.ts';
import { type DesignRequest, notVegan, unlessEmpty, type WishesRead } from './design-wishes.ts';
import { leftover } from './leftover.ts';
import { boardOf } from './target.ts';

/** Softest first. */
const order: readonly Form[] = ['tube', 'tin', 'stick'];

const firmer = /\b(?:firmer|harder|stiffer|more wax|less oil)\b/i;
const softer =
  /\b(?:softer|creamier|less wax|more oil|less (?:hard|firm|stiff)|(?:too|so) (?:hard|firm|stiff))\b/i;

/** "make it softer" is the next softer form: what a balm is for decides how firm it is. */
const shifted = ({ corrected }: Reading, form: Form): Form => {
  const up = firmer.test(corrected) ? 1 : 0;
  const down = softer.test(corrected) ? 1 : 0;
  const at = order.indexOf(form) + up - down;
  return order[Math.min(order.length - 1, Math.max(0, at))] ?? form;
};

const joined = (old: DesignRequest, more: DesignRequest): DesignRequest => {
  const named = new Set(more.with?.map(({ ingredient }) => ingredient));
  const without = [...new Set([...(old.without ?? []), ...(more.without ?? [])])];
  const kept = (old.with ?? []).filter(
    ({ ingredient }) => !named.has(ingredient) && !more.without?.includes(ingredient),
  );
  const wanted = [...kept, ...(more.with ?? [])];
  return defined({
    ...old,
    ...more,
    without: unlessEmpty(without.filter((word) => !named.has(word))),
    with: unlessEmpty(wanted),
  });
};

/** Wishes that add to those of the design before. */
export const continued = (reading: Reading, old: DesignRequest, read: WishesRead): Claim | undefined => {
  const { show: _show, ...before } = old;
  const wished = notVegan.test(reading.corrected) ? defined({ ...before, vegan: undefined }) : before;
  const shape = shifted(reading, old.form ?? 'stick');
  const form = read.wishes.form ?? (shape === (old.form ?? 'stick') ? old.form : shape);
  const wishes = { ...joined(wished, read.wishes), ...defined({ form }) };
  const changed = wished !== before || Object.keys(read.wishes).length > 0 || form !== old.form;
  return changed ? claim(wishes, 2.75, read.assumed) : undefined;
};

/** Words around "the second one" that ask for no more than to see it. */
const showing = new Set(
  `show see tell give details detail more about full whole open like take prefer want pick choose go with that sounds good look at number
  what whats is how forecast explain please up looks look nice lovely best better promising interesting third second first`.split(
    /\s+/,
  ),
);

const proposals = 3;

/** "Something else?", "another one": the next proposal in full. */
export const claimNext = (reading: Reading, old: DesignRequest): Claim | undefined => {
  if (
    !/\b(?:something|anything|what|any) (?:else|different|other)\b|\banother(?: one)?\b|\bothers?\b|\bnext\b/i.test(
      reading.text,
    )
  )
    return undefined;
  const words = new Set([
    ...showing,
    ...'something anything what any else different other others another next'.split(' '),
  ]);
  if (leftover(boardOf(reading.items), words, false).blocking.length > 0) return undefined;
  return reading.items.some(({ letter }) => /[inRct%gv]/.test(letter))
    ? undefined
    : claim({ ...old, show: ((old.show ?? 0) + 1) % proposals }, 2.75);
};

/** "The second one", "more about number 3": a proposal told in full. */
export const claimShown = (reading: Reading, old: DesignRequest): Claim | undefined => {
  const { picked } = reading.last ?? {};
  if (picked === undefined) return undefined;
  const { blocking } = leftover(boardOf(reading.items), showing, false);
  return blocking.length > 0 ? undefined : claim({ ...old, show: picked }, 2.9);
};
