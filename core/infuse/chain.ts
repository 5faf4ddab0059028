import type { Herb } from '../data/ingredient.ts';
import { defined } from '../defined.ts';
import { ingredientById, isFat, isHerb } from '../ingredients.ts';
import type { RecipeLine } from '../recipe.ts';
import { fail, ok, type Result } from '../result.ts';
import { type Scaled, type ScaledLine, type ScaleProblem, type ScaleRequest, scaleRecipe } from '../scale.ts';
import { type InfuseProblem, type Infusion, infuse } from './infuse.ts';
import { type HerbMix, mixRatio, mixUptake, type Part } from './mix.ts';
import type { Yields } from './yields.ts';

/** A recipe made with herbs: what is scaled, and how its oil, or all of it, is infused. */
export interface ChainRequest {
  readonly scale: ScaleRequest;
  /** The herbs; where none are given, those of the recipe's own infused lines, or the ones it strains out. */
  readonly herbs?: readonly Part<string>[];
  /** All the herbs together, where their weight was said. */
  readonly herbG?: number;
  /** Which line is infused; where it is not given, the line that says so, or the largest liquid oil. */
  readonly oil?: string;
  readonly ratio?: number;
  readonly yields?: Yields;
  /** `melt`: the herbs go straight into the whole melted mass and are strained out of it. */
  readonly way?: 'melt';
}

export type ChainProblem =
  | ScaleProblem
  | InfuseProblem
  /** No liquid oil in the recipe to infuse. */
  | { readonly code: 'no-oil-line' }
  | { readonly code: 'no-herb' };

/** One infusion of a chain: of one line of the recipe, or of the whole mass where no line is named. */
export interface ChainPart {
  readonly line?: ScaledLine;
  readonly herbs: HerbMix;
  readonly infusion: Infusion;
}

/**
 * From herb to tins. Two named losses: `uptakeG` of every part stays in herb and cloth, `allowanceG` in jug and spoon.
 * All oil set aside and the other lines together, less these two, are what the tins hold (`netG`).
 */
export interface Chain {
  /** The recipe as scaled to the target, before the herb takes its share. */
  readonly scaled: Scaled;
  /** What is weighed out: more than `scaled` where the herb drinks from the whole mass. */
  readonly weighed: Scaled;
  readonly parts: readonly [ChainPart, ...ChainPart[]];
  readonly netG: number;
  readonly allowanceG: number;
  /** The recipe's lines with the infused ones marked, as they are weighed out. */
  readonly lines: readonly RecipeLine[];
  /** The oil was not named, and there were others: the largest was taken. */
  readonly oilChosen: boolean;
}

const isLiquidOil = ({ ingredient }: { readonly ingredient: string }): boolean => {
  const found = ingredientById(ingredient);
  return found !== undefined && isFat(found) && /^liquid/.test(found.form);
};

const herbRow = (id: string | undefined): Herb | undefined => {
  const found = id === undefined ? undefined : ingredientById(id);
  return found && isHerb(found) ? found : undefined;
};

const mixOf = (parts: readonly Part<string>[]): HerbMix =>
  parts.flatMap((part) => {
    const herb = herbRow(part.of);
    return herb ? [{ of: herb, parts: part.parts }] : [];
  });

interface Job {
  readonly line: ScaledLine;
  readonly herbs: HerbMix;
  readonly herbG?: number;
}

interface Jobs {
  readonly jobs: readonly Job[];
  readonly chosen: boolean;
}

const largestOil = (scaled: Scaled): { readonly line?: ScaledLine; readonly chosen: boolean } => {
  const oils = scaled.lines.filter(isLiquidOil).toSorted((a, b) => b.grams - a.grams);
  return { ...defined({ line: oils[0] }), chosen: oils.length > 1 };
};

/** Every line that says what it is infused with. */
const markedJobs = (scaled: Scaled): readonly Job[] =>
  scaled.lines.flatMap((line) => {
    const herb = herbRow(line.infusedWith);
    return herb ? [{ line, herbs: [{ of: herb, parts: 1 }] }] : [];
  });

/** Herbs that the recipe strains out again, with the weight it gives them. */
const strainedMix = (scaled: Scaled): { readonly herbs: HerbMix; readonly herbG: number } => {
  const herbs = mixOf(scaled.strained.map(({ ingredient, grams }) => ({ of: ingredient, parts: grams })));
  return { herbs, herbG: herbs.reduce((sum, { parts }) => sum + parts, 0) };
};

const namedLine = (
  scaled: Scaled,
  oil: string | undefined,
): Result<{ line: ScaledLine; chosen: boolean }, ChainProblem> => {
  if (oil !== undefined) {
    const line = scaled.lines.find((each) => each.ingredient === oil);
    return line ? ok({ line, chosen: false }) : fail({ code: 'not-in-recipe', ingredient: oil });
  }
  const marked = scaled.lines.find((line) => line.infusedWith !== undefined);
  if (marked) return ok({ line: marked, chosen: false });
  const { line, chosen } = largestOil(scaled);
  return line ? ok({ line, chosen }) : fail({ code: 'no-oil-line' });
};

const jobsOf = (request: ChainRequest, scaled: Scaled): Result<Jobs, ChainProblem> => {
  const said = mixOf(request.herbs ?? []);
  const marked = said.length === 0 && request.oil === undefined ? markedJobs(scaled) : [];
  if (marked.length > 0) return ok({ jobs: marked, chosen: false });
  const picked = namedLine(scaled, request.oil);
  if (!picked.ok) return picked;
  const { line, chosen } = picked.value;
  const own = herbRow(line.infusedWith);
  const strained = strainedMix(scaled);
  if (said.length > 0)
    return ok({ jobs: [{ line, herbs: said, ...defined({ herbG: request.herbG }) }], chosen });
  if (own) return ok({ jobs: [{ line, herbs: [{ of: own, parts: 1 }] }], chosen });
  if (strained.herbs.length === 0) return fail({ code: 'no-herb' });
  // A recipe that strains out 10 g of herb says how much herb there is: the ratio follows from it.
  const fixed = request.ratio === undefined ? { herbG: strained.herbG } : {};
  return ok({ jobs: [{ line, herbs: strained.herbs, ...fixed }], chosen });
};

const partOf = (request: ChainRequest, job: Job): Result<ChainPart, ChainProblem> => {
  const { line, herbs, herbG } = job;
  const infusion = infuse({
    oilOutG: line.grams,
    ...defined({ ratio: request.ratio, herbG }),
    usualRatio: mixRatio(herbs).middle,
    uptake: mixUptake(herbs, request.yields),
    stepG: request.scale.stepG,
  });
  return infusion.ok ? ok({ line, herbs, infusion: infusion.value }) : infusion;
};

const sameLine = (a: { ingredient: string; infusedWith?: string | undefined }, b: typeof a): boolean =>
  a.ingredient === b.ingredient && a.infusedWith === b.infusedWith;

/** The recipe as it is weighed out: infused lines marked, herbs that are in the oil by then left out. */
const markedLines = (lines: readonly RecipeLine[], parts: readonly ChainPart[]): readonly RecipeLine[] => {
  const herbs = new Set(parts.flatMap((part) => part.herbs.map(({ of }) => of.id)));
  return lines.flatMap((each) => {
    if (each.strained && herbs.has(each.ingredient)) return [];
    const part = parts.find(({ line }) => line && sameLine(each, line));
    const [first] = part?.herbs ?? [];
    return first && !each.strained ? [{ ...each, infusedWith: first.of.id }] : [each];
  });
};

const isSome = <T>(list: readonly T[]): list is readonly [T, ...T[]] => list.length > 0;

/** Works back from the recipe's infused lines to the herb and the oil to set aside. */
const oilChain = (request: ChainRequest, scaled: Scaled): Result<Chain, ChainProblem> => {
  const picked = jobsOf(request, scaled);
  if (!picked.ok) return picked;
  const parts: ChainPart[] = [];
  for (const job of picked.value.jobs) {
    const part = partOf(request, job);
    if (!part.ok) return part;
    parts.push(part.value);
  }
  if (!isSome(parts)) return fail({ code: 'no-herb' });
  return ok({
    scaled,
    weighed: scaled,
    parts,
    netG: scaled.netG,
    allowanceG: scaled.allowanceG,
    lines: markedLines(request.scale.lines, parts),
    oilChosen: picked.value.chosen,
  });
};

const tidy = (grams: number): number => Number(grams.toFixed(4));

/** Lines without the herbs, which are strained out of the melt and weighed apart. */
const withoutHerbs = (lines: readonly RecipeLine[]): readonly RecipeLine[] =>
  lines.filter((line) => !(line.strained && herbRow(line.ingredient)));

interface MeltHerbs {
  readonly herbs: HerbMix;
  readonly herbG?: number;
}

const meltHerbs = (request: ChainRequest, scaled: Scaled): MeltHerbs | undefined => {
  const said = mixOf(request.herbs ?? []);
  if (said.length > 0) return { herbs: said, ...defined({ herbG: request.herbG }) };
  const strained = strainedMix(scaled);
  if (strained.herbs.length === 0) return undefined;
  return request.ratio === undefined ? strained : { herbs: strained.herbs };
};

/** Herb straight into the melt: it keeps some of everything, so more of every line is weighed out for as many tins. */
const meltChain = (request: ChainRequest, scaled: Scaled): Result<Chain, ChainProblem> => {
  const steeped = meltHerbs(request, scaled);
  if (!steeped) return fail({ code: 'no-herb' });
  const { scale, ratio } = request;
  // A number of tins has to come out of the cloth; a mass is what goes into the pot.
  const counted = scale.target.kind === 'containers';
  const infusion = infuse({
    ...(counted ? { oilOutG: scaled.totalG } : { oilInG: scaled.totalG }),
    ...defined({ ratio, herbG: steeped.herbG }),
    usualRatio: mixRatio(steeped.herbs).middle,
    uptake: mixUptake(steeped.herbs, request.yields),
    stepG: scale.stepG,
  });
  if (!infusion.ok) return infusion;
  const lines = withoutHerbs(scale.lines);
  const weighed = scaleRecipe({ ...scale, lines, target: { kind: 'mass', grams: infusion.value.oilInG } });
  if (!weighed.ok) return weighed;
  const { oilOutG } = infusion.value;
  const netG = counted ? scaled.netG : tidy(oilOutG * (1 - scale.lossPercent / 100));
  return ok({
    scaled,
    weighed: weighed.value,
    parts: [{ herbs: steeped.herbs, infusion: infusion.value }],
    netG,
    allowanceG: tidy(oilOutG - netG),
    lines,
    oilChosen: false,
  });
};

/** Scales the recipe and reckons the herb, what it keeps, and everything to be weighed out for it. */
export const chainOf = (request: ChainRequest): Result<Chain, ChainProblem> => {
  const scaled = scaleRecipe(request.scale);
  if (!scaled.ok) return scaled;
  return request.way === 'melt' ? meltChain(request, scaled.value) : oilChain(request, scaled.value);
};
