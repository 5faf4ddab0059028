import type { Wish } from './scale-wish.ts';
import type { MakingRead } from './workshop-makings.ts';

/** What a workshop makes so far. */
export const makingsOf = (wish: Wish): readonly MakingRead[] =>
  Array.isArray(wish.makings) ? (wish.makings as readonly MakingRead[]) : [];

const changed = (making: MakingRead, by: MakingRead): MakingRead => {
  const { recipe: _recipe, lines: _lines, ...target } = making;
  const body = by.recipe !== undefined || by.lines !== undefined;
  return { ...(body ? target : making), ...by };
};

const adds = /^\W*(?:and|plus|also)\b|\b(?:too|also|as well|in addition|additionally)\b/i;

export const hasBody = ({ recipe, lines }: MakingRead): boolean =>
  recipe !== undefined || lines !== undefined;

/** The makings before with what this message says in their place; undefined where it cannot be told which. */
export const mergedMakings = (
  before: readonly MakingRead[],
  now: readonly MakingRead[],
  text: string,
): readonly MakingRead[] | undefined => {
  const [only, second] = now;
  if (!only) return before;
  const [first, other] = before;
  if (!first || second) return now;
  const same = before.findIndex(({ recipe }) => recipe !== undefined && recipe === only.recipe);
  if (same >= 0) return before.map((making, at) => (at === same ? changed(making, only) : making));
  const whole = only.size !== undefined && hasBody(only);
  if (whole && adds.test(text) && hasBody(first)) return [...before, only];
  return whole || !other ? [changed(first, only)] : undefined;
};

export const isTarget = ({ each, container }: MakingRead): boolean =>
  each !== undefined || container !== undefined;

/** A new size or number alone, or a recipe that the plan has already, belongs to the plan. */
export const isKnown = (making: MakingRead, last: Wish): boolean =>
  !hasBody(making) || makingsOf(last).some(({ recipe }) => recipe !== undefined && recipe === making.recipe);
