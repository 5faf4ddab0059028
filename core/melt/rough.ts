import type { Blend, BlendPart } from './blend.ts';

/** Percent of weak figures, aroma or castor oil from which on a forecast is only a rough estimate. */
const weakLimitPercent = 10;
const aromaLimitPercent = 5;
const castorLimitPercent = 30;

/** What makes a forecast rough. */
export interface Roughness {
  /** Percent of the recipe that is left out or taken by weak figures. */
  readonly weakPercent: number;
  /** Ids of what the model knows too little about for its share; empty when the forecast is as good as it gets. */
  readonly because: readonly string[];
}

const isWeak = ({ by, composition }: BlendPart): boolean =>
  by === 'stand-in' || composition.confidence === 'low';

const percentOf = (parts: readonly BlendPart[]): number =>
  parts.reduce((sum, { share }) => sum + 100 * share, 0);

const ids = (parts: readonly BlendPart[]): readonly string[] => parts.map(({ ingredient }) => ingredient.id);

/** These, when they come to more than the limit. */
const beyond = (parts: readonly BlendPart[], limitPercent: number): readonly string[] =>
  percentOf(parts) > limitPercent ? ids(parts) : [];

/** How much of a recipe lies outside what the model knows well, and which ingredients that is. */
export const roughnessOf = ({ parts, leftOut }: Blend): Roughness => {
  const outPercent = leftOut.reduce((sum, { percent }) => sum + percent, 0);
  const weak = parts.filter(isWeak);
  const weakPercent = outPercent + ((100 - outPercent) * percentOf(weak)) / 100;
  const like = (id: string): readonly BlendPart[] => parts.filter((part) => part.like === id);
  const because = [
    ...(weakPercent >= weakLimitPercent
      ? [...ids(weak), ...leftOut.map(({ ingredient }) => ingredient)]
      : []),
    ...beyond(like('essential-oil'), aromaLimitPercent),
    ...beyond(like('castor-oil'), castorLimitPercent),
  ];
  return { weakPercent, because: [...new Set(because)] };
};
