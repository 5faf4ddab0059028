import { linesOfMix, type Mix } from '../../core/substitute/mix.ts';
import type { Answer, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import { scale } from '../topics/scale.ts';
import type { SubstituteWish } from '../topics/substitute.ts';
import { type Cover, isMade, shortFor } from './stock-cover.ts';
import { change } from './substitute-change.ts';
import type { Changed } from './substitute-figures.ts';

export interface Weighed {
  readonly changed: Changed;
  /** The new lines weighed out, by the topic that does it for every recipe, when that was asked for. */
  readonly weighed?: Answer;
  /** What the shelf holds too little of, when only the stock was to be used. */
  readonly short: readonly Cover[];
  /** What is on the shelf and was left out because it is too little for the batch. */
  readonly tooLittle: readonly Cover[];
}

const isTrouble = (thing: object): thing is Trouble => 'code' in thing;

/** Each time something else is left out; a shelf rarely needs more than one. */
const mostRounds = 6;

const once = async (
  mix: Mix,
  wish: SubstituteWish,
  tools: Tools,
  tooLittle: ReadonlySet<string>,
): Promise<Weighed | Trouble> => {
  const changed = await change(mix, wish, tools, tooLittle);
  if (isTrouble(changed)) return changed;
  const { make } = wish;
  if (!isMade(make)) return { changed, short: [], tooLittle: [] };
  const weighed = await scale.run({ lines: linesOfMix(changed.after), ...make }, tools);
  if (isTrouble(weighed)) return weighed;
  return { changed, weighed, short: wish.stocked ? shortFor(weighed, tools) : [], tooLittle: [] };
};

/**
 * Changes a recipe and weighs the result out. From stock what is too little for the batch is tried without; where nothing
 * else is enough, the first way stands and tells what is short.
 */
export const changeWeighed = async (
  mix: Mix,
  wish: SubstituteWish,
  tools: Tools,
): Promise<Weighed | Trouble> => {
  const first = await once(mix, wish, tools, new Set());
  if (isTrouble(first)) return first;
  const tooLittle = new Set<string>();
  let latest = first;
  for (let round = 0; round < mostRounds && latest.short.length > 0; round += 1) {
    for (const { ingredient } of latest.short) tooLittle.add(ingredient);
    const next = await once(mix, wish, tools, tooLittle);
    if (isTrouble(next)) return first;
    latest = next;
  }
  if (latest.short.length > 0) return first;
  return { ...latest, tooLittle: first.short.filter(({ haveG }) => haveG > 0) };
};
