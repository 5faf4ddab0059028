import type { Trouble } from '../answer.ts';
import { type Claim, claim, refuse } from '../reading.ts';
import type { Wish } from './scale-wish.ts';
import type { Aspects } from './workshop-aspects.ts';
import type { WhenRead } from './workshop-clock.ts';
import type { MakingRead, MakingsRead } from './workshop-makings.ts';
import { noMaking, noPeople, noTins, notShared } from './workshop-words.ts';

/** What a message says about a workshop. */
export interface Parts {
  readonly when: WhenRead;
  readonly aspects: Aspects;
  readonly made: MakingsRead;
  readonly fields: Wish;
  /** A quantity that cannot be meant, outside clock times. */
  readonly quantity?: Trouble;
}

/** More than this for one person is the number for everybody, unless it is said to be each. */
export const mostEach = 10;

/** More than this for one person, where the number shares out evenly, is the number for everybody. */
const mostLikelyEach = 4;

const isTotal = ({ aspects, made }: Parts, people: number, each: number): boolean =>
  aspects.inAll ||
  (made.makings.length === 1 &&
    !aspects.each &&
    each > mostLikelyEach &&
    each >= people &&
    each % people === 0);

interface Shared {
  readonly makings: readonly MakingRead[];
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

/** "24 tins in all" for 12 people are 2 each. */
const sharedOut = (parts: Parts, makings: readonly MakingRead[], people: unknown): Shared => {
  if (typeof people !== 'number' || people < 1) return { makings, assumed: [] };
  const whole = makings
    .map((making) => making.each ?? 0)
    .filter((each) => each > 0 && isTotal(parts, people, each));
  const uneven = whole.find((each) => each % people !== 0);
  if (uneven !== undefined) return { makings, assumed: [], trouble: notShared(uneven, people) };
  return {
    makings: makings.map((making) =>
      making.each !== undefined && isTotal(parts, people, making.each)
        ? { ...making, each: making.each / people }
        : making,
    ),
    assumed: whole.map((each) => `I took ${each} as the number for everybody: ${each / people} each.`),
  };
};

/** What is still missing for a plan, in the order it would be asked. */
export const lackOf = (fields: Wish, makings: readonly MakingRead[]): Trouble | undefined => {
  if (fields.people === undefined) return noPeople;
  if (
    makings.length === 0 ||
    makings.some(({ recipe, lines }) => recipe === undefined && lines === undefined)
  ) {
    return noMaking;
  }
  return makings.some(({ size }) => size === undefined) ? noTins : undefined;
};

/** Everybody makes one, of a tin, where nothing else is said. */
const settledMakings = (makings: readonly MakingRead[]): Shared => ({
  makings: makings.map((making) => ({ each: 1, container: 'tin', ...making })),
  assumed: makings.some(({ each }) => each === undefined) ? ['One for each person.'] : [],
});

export const fieldsWith = (fields: Wish, makings: readonly MakingRead[]): Wish =>
  makings.length > 0 ? { ...fields, makings } : fields;

/** A plan to be made, or what is missing for one. */
export const settle = (
  parts: Parts,
  fields: Wish,
  makings: readonly MakingRead[],
  weight: number,
  said: readonly string[],
): Claim => {
  const shared = sharedOut(parts, makings, fields.people);
  const trouble = shared.trouble ?? lackOf(fields, shared.makings);
  if (trouble) return refuse(trouble, weight - 0.1, fieldsWith(fields, shared.makings));
  const settled = settledMakings(shared.makings);
  const aside = parts.made.aside.length > 0 ? [`I set aside "${parts.made.aside.join('", "')}".`] : [];
  return claim({ ...fields, makings: settled.makings }, weight, [
    ...said,
    ...shared.assumed,
    ...settled.assumed,
    ...aside,
  ]);
};
