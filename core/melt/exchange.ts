import { ingredientById } from '../ingredients.ts';
import { fail, ok, type Result } from '../result.ts';
import type { BlendLine } from './blend.ts';
import type { Composition } from './composition.ts';
import { treatmentOf } from './treatment.ts';

/** A line of a recipe whose percent slides in a straight line: `start + slope · p`. */
export interface SlidingLine {
  readonly ingredient: string;
  /** Place of the line it comes from; a line that the swap brings in has none. */
  readonly line?: number;
  readonly start: number;
  readonly slope: number;
}

/** A recipe in which p percent of one ingredient slide in against the liquid oil; p runs from 0 to `most`. */
export interface Exchange {
  readonly lines: readonly SlidingLine[];
  readonly most: number;
}

/** One line after an exchange; percent by weight of the whole recipe. */
export interface ExchangedLine {
  readonly ingredient: string;
  readonly line?: number;
  readonly percent: number;
}

export type ExchangeProblem =
  | { readonly code: 'not-in-recipe'; readonly ingredient: string }
  /** Nothing to give way: the recipe has no liquid oil besides the two that are exchanged. */
  | { readonly code: 'no-liquid-oil' };

interface Weighed extends BlendLine {
  readonly line: number;
  readonly percent: number;
}

const weighed = (lines: readonly BlendLine[]): readonly Weighed[] => {
  const total = lines.reduce((sum, { weight }) => sum + weight, 0);
  return lines.map((line, place) => ({ ...line, line: place, percent: (100 * line.weight) / total }));
};

const canonical = (id: string): string => ingredientById(id)?.id ?? id;

const compositionIn = (id: string): { composition: Composition; like: string } | undefined => {
  const ingredient = ingredientById(id);
  const treatment = ingredient && treatmentOf(ingredient);
  return treatment?.kind === 'melts' ? treatment : undefined;
};

/** Whether an ingredient melts in but never brings crystals. */
export const isLiquid = (id: string): boolean => compositionIn(id)?.composition.strength === 'liquid';

/** Lines that give way or take up the difference: vegetable oils, or any liquid oil where there is none. */
const fillers = (lines: readonly Weighed[], except: readonly string[]): readonly Weighed[] => {
  const oils = lines.filter(
    ({ ingredient, percent }) =>
      percent > 0 &&
      !except.includes(canonical(ingredient)) &&
      ingredientById(ingredient)?.kind === 'liquid-oil',
  );
  const vegetable = oils.filter(({ ingredient }) => compositionIn(ingredient)?.like === 'liquid-oil');
  return vegetable.length > 0 ? vegetable : oils;
};

const percentOf = (lines: readonly Weighed[]): number => lines.reduce((sum, { percent }) => sum + percent, 0);

interface Plan {
  readonly lines: readonly Weighed[];
  readonly from: string;
  /** What comes in the place of `from`: this much for certain and `slope` for each percent that slides in. */
  readonly into: { readonly ingredient: string; readonly start: number; readonly slope: number };
  readonly oils: readonly Weighed[];
  readonly oilStart: number;
  /** Share of `from` that goes: 1 for all of it. */
  readonly share: number;
}

/** A line as it slides when oil gives way to, or takes up, what is exchanged. */
const slidingOil = ({ ingredient, line, percent }: Weighed, oil: number, oilStart: number): SlidingLine => ({
  ingredient,
  line,
  start: (percent / oil) * oilStart,
  slope: -percent / oil,
});

/** What does not go: every other line, and what is left of the exchanged one. */
const staying = (lines: readonly Weighed[], from: string, share: number): readonly Weighed[] =>
  lines.flatMap((line) => {
    if (canonical(line.ingredient) !== from) return [line];
    return share < 1 ? [{ ...line, percent: line.percent * (1 - share) }] : [];
  });

/** The lines in their old order; what comes in joins its own line or takes the first place of what goes out. */
const slidingLines = ({ lines, from, into, oils, oilStart, share }: Plan): readonly SlidingLine[] => {
  const oil = percentOf(oils);
  const kept = staying(lines, from, share);
  const own = kept.find(({ ingredient }) => canonical(ingredient) === into.ingredient);
  const place = own?.line ?? lines.find(({ ingredient }) => canonical(ingredient) === from)?.line ?? 0;
  const slid = kept
    .filter((line) => line !== own)
    .map((line) =>
      oils.includes(line)
        ? { place: line.line, sliding: slidingOil(line, oil, oilStart) }
        : {
            place: line.line,
            sliding: { ingredient: line.ingredient, line: line.line, start: line.percent, slope: 0 },
          },
    );
  const comesIn = {
    ...into,
    ...(own === undefined ? {} : { line: own.line }),
    start: into.start + (own?.percent ?? 0),
  };
  return [...slid, { place, sliding: comesIn }]
    .sort((a, b) => a.place - b.place)
    .map(({ sliding }) => sliding);
};

const taken = (lines: readonly Weighed[], from: string): number =>
  percentOf(lines.filter(({ ingredient }) => canonical(ingredient) === from));

/**
 * Takes `from` out and slides `to` in; the difference goes to or comes from the liquid oil.
 * @param share how much of `from` goes, above 0 and at most 1.
 */
export const replacing = (
  recipe: readonly BlendLine[],
  from: string,
  to: string,
  share = 1,
): Result<Exchange & { readonly takenPercent: number }, ExchangeProblem> => {
  const lines = weighed(recipe);
  const takenPercent = taken(lines, from) * share;
  if (!(takenPercent > 0)) return fail({ code: 'not-in-recipe', ingredient: from });
  const oils = fillers(lines, [from, to]);
  const oil = percentOf(oils);
  if (oil <= 0) return fail({ code: 'no-liquid-oil' });
  const into = { ingredient: to, start: 0, slope: 1 };
  return ok({
    lines: slidingLines({ lines, from, into, oils, oilStart: oil + takenPercent, share }),
    most: takenPercent + oil,
    takenPercent,
  });
};

/** Puts as many percent of `to` in as go out of `from`, of which `share` goes; nothing slides. */
export const gramForGram = (
  recipe: readonly BlendLine[],
  from: string,
  to: string,
  share = 1,
): Result<Exchange & { readonly takenPercent: number }, ExchangeProblem> => {
  const lines = weighed(recipe);
  const takenPercent = taken(lines, from) * share;
  if (!(takenPercent > 0)) return fail({ code: 'not-in-recipe', ingredient: from });
  const into = { ingredient: to, start: takenPercent, slope: 0 };
  return ok({
    lines: slidingLines({ lines, from, into, oils: [], oilStart: 0, share }),
    most: 0,
    takenPercent,
  });
};

/** Slides more of a wax into lines against their liquid oil; `except` names oils that must not give way. */
export const firming = (
  exchanged: readonly ExchangedLine[],
  wax: string,
  except: readonly string[],
): Result<Exchange, ExchangeProblem> => {
  const lines = weighed(exchanged.map(({ ingredient, percent }) => ({ ingredient, weight: percent })));
  const gentle = fillers(lines, [wax, ...except]);
  const oils = gentle.length > 0 ? gentle : fillers(lines, [wax]);
  const oil = percentOf(oils);
  if (oil <= 0) return fail({ code: 'no-liquid-oil' });
  const present = lines.find(({ ingredient }) => canonical(ingredient) === wax);
  const sliding = lines.map(({ ingredient, line, percent }) => {
    const source = exchanged[line]?.line;
    const isWax = line === present?.line;
    const gives = oils.some((other) => other.line === line);
    return {
      ingredient,
      ...(source === undefined ? {} : { line: source }),
      start: percent,
      slope: isWax ? 1 : gives ? -percent / oil : 0,
    };
  });
  return ok({ lines: present ? sliding : [...sliding, { ingredient: wax, start: 0, slope: 1 }], most: oil });
};

/** Below this many percent a line is gone: rounding noise of what gave way altogether. */
const gonePercent = 1e-9;

export const linesAt = ({ lines }: Exchange, p: number): readonly ExchangedLine[] =>
  lines.flatMap(({ ingredient, line, start, slope }) => {
    const percent = start + slope * p;
    return percent > gonePercent ? [{ ingredient, ...(line === undefined ? {} : { line }), percent }] : [];
  });
