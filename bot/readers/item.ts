import type { Token } from './tokens.ts';
import type { ReadUnit } from './unit.ts';

/** One thing in a message: an amount, a name, a word with a role, a sign. `from`/`to` are places in the tidied text. */
export interface Item {
  readonly letter: string;
  readonly word: string;
  readonly from: number;
  readonly to: number;
  readonly value?: number;
  readonly unit?: ReadUnit;
  readonly ratio?: readonly number[];
  /** Upper end of a range such as `20-24`; which of the two is meant is asked back about. */
  readonly upTo?: number;
  /** Several ids when the name means more than one thing. */
  readonly ingredients?: readonly string[];
  /** Why the name has to be asked back about, though it may stand for one ingredient only. */
  readonly because?: string;
  /** True for a name that is only a kind: "oil", "wax", "butter". Above a list it is a heading. */
  readonly generic?: boolean;
  /** Set when the name was not quite right: what was typed. */
  readonly misspelt?: string;
  /** Herb of an oil that was named by its herb alone ("calendula oil"). */
  readonly infusedWith?: string;
  /** True for a name that may be a restricted plant: the Latin name has to be asked for. */
  readonly doubtful?: boolean;
  /** True for a plant read with its form. */
  readonly plant?: boolean;
  readonly recipe?: string;
  /** True for `-5 oz` at the start of a line: a minus in a conversion, a bullet in a list. */
  readonly bulletOrMinus?: boolean;
  /** True when the number was said as a fraction word: "half", "a quarter". */
  readonly fraction?: boolean;
}

/** What stands at a token: an item, or nothing worth keeping; `next` is the first token after it. */
export interface Read {
  readonly item?: Item;
  readonly next: number;
}

/** An item made of the tokens from `at` up to `next`. */
export const placed = (
  list: readonly Token[],
  at: number,
  next: number,
  letter: string,
  part: Partial<Item>,
): Read => {
  const first = list[at];
  const last = list[next - 1] ?? first;
  return {
    item: {
      letter,
      word: first?.word ?? '',
      from: first?.from ?? 0,
      to: last?.to ?? 0,
      ...part,
    },
    next,
  };
};
