import { shortagesOf } from '../../core/bench/cover.ts';
import { localDay } from '../../core/bench/days.ts';
import type { Need } from '../../core/bench/draw.ts';
import { benchOf } from '../../core/book.ts';
import { linesOfMix, type Mix } from '../../core/substitute/mix.ts';
import type { Candidate } from '../../core/substitute/rank.ts';
import { replace } from '../../core/substitute/replace.ts';
import type { Answer, Trouble } from '../answer.ts';
import type { FigureValue } from '../figures.ts';
import type { Tools } from '../topic.ts';
import { scale } from '../topics/scale.ts';
import { capital } from './lists.ts';
import { plain } from './numbers.ts';
import { shortName } from './warnings.ts';

/** How much of a recipe is made, as the scale topic takes it. */
export type Make = Readonly<Record<string, unknown>> | undefined;

export const isMade = (make: Make): make is Readonly<Record<string, unknown>> =>
  make !== undefined && Object.keys(make).length > 0;

/** What one line takes and what the shelf holds of it, in grams. */
export interface Cover {
  readonly ingredient: string;
  readonly neededG: number;
  readonly haveG: number;
}

interface Weighed {
  readonly ingredient: string;
  readonly grams: number;
  readonly infused_with?: string;
}

/** The lines of a weigh-out as needs of the shelf. */
export const needsIn = ({ figures }: Pick<Answer, 'figures'>): readonly Need[] =>
  ((figures.lines ?? []) as unknown as readonly Weighed[]).map(({ ingredient, grams, infused_with }) => ({
    ingredient,
    grams,
    infusedWith: infused_with,
  }));

/** What the shelf is short of for a weigh-out, today. */
export const shortFor = (weighed: Pick<Answer, 'figures'>, { book, at }: Tools): readonly Cover[] => {
  const bench = benchOf(book.state);
  return shortagesOf(bench, needsIn(weighed), localDay(at, bench.reminder?.zone ?? 'UTC'));
};

const grams = (value: number): string => `${plain(value, 1)} g`;

/** "Not enough in stock: jojoba oil, 5 g of 172 g". */
export const shortLines = (short: readonly Cover[]): readonly string[] =>
  short.length === 0
    ? []
    : [
        `Not enough in stock for that: ${short
          .map(({ ingredient, neededG, haveG }) =>
            haveG > 0
              ? `${shortName(ingredient)}, ${grams(haveG)} of the ${grams(neededG)} it takes`
              : `${shortName(ingredient)}, none of the ${grams(neededG)} it takes`,
          )
          .join('; ')}.`,
      ];

/** Why something that is on the shelf was not used. */
export const tooLittleLines = (tooLittle: readonly Cover[]): readonly string[] =>
  tooLittle.map(
    ({ ingredient, neededG, haveG }) =>
      `${capital(shortName(ingredient))} is in stock, but ${grams(haveG)} are too little: it would take ${grams(neededG)}.`,
  );

export const coverFigures = (covers: readonly Cover[]): FigureValue =>
  covers.map(({ ingredient, neededG, haveG }) => ({
    ingredient,
    needed_g: Number(neededG.toFixed(2)),
    have_g: Number(haveG.toFixed(2)),
    enough: haveG >= neededG,
  }));

/** What each candidate would take for the batch, and what the shelf holds of it; those that cannot be put in are left away. */
export const coversOf = async (
  mix: Mix,
  old: string,
  candidates: readonly Candidate[],
  stock: ReadonlyMap<string, number>,
  { make, tools }: { readonly make: Readonly<Record<string, unknown>>; readonly tools: Tools },
): Promise<readonly Cover[] | Trouble> => {
  const covers: Cover[] = [];
  for (const { ingredient } of candidates) {
    const done = replace(mix, old, ingredient);
    if (!done.ok) continue;
    const weighed = await scale.run({ lines: linesOfMix(done.value.mix), ...make }, tools);
    if ('code' in weighed) return weighed;
    const neededG = needsIn(weighed)
      .filter((need) => need.ingredient === ingredient)
      .reduce((sum, need) => sum + need.grams, 0);
    covers.push({ ingredient, neededG, haveG: stock.get(ingredient) ?? 0 });
  }
  return covers;
};

/** Which of the candidates there is enough of, in words. */
export const coverText = (covers: readonly Cover[]): string => {
  const all = covers.map(({ ingredient, neededG, haveG }) =>
    haveG >= neededG
      ? `${shortName(ingredient)} takes ${grams(neededG)}, ${grams(haveG)} in stock`
      : `${shortName(ingredient)} takes ${grams(neededG)} and only ${grams(haveG)} are in stock`,
  );
  const none = covers.every(({ neededG, haveG }) => haveG < neededG);
  return `${none ? 'Nothing in stock is enough for that batch: ' : 'For that batch: '}${all.join('; ')}.`;
};
