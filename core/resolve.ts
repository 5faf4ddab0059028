import { type GramsProblem, gramsOfLine, type VolumeTaken } from './grams.ts';
import type { RecipeLine } from './recipe.ts';
import { fail, ok, type Result } from './result.ts';
import type { Region } from './settings.ts';

export type RecipeProblem =
  | GramsProblem
  | { readonly code: 'no-lines' }
  | { readonly code: 'zero-line'; readonly ingredient: string }
  /** Percentages that neither reach 100 nor leave room for grams: asked about, never normalised in silence. */
  | { readonly code: 'percent-sum'; readonly sum: number }
  | { readonly code: 'two-rests' }
  /** "The rest" beside grams, without a total to reach. */
  | { readonly code: 'rest-without-total' }
  | { readonly code: 'nothing-left-for-rest'; readonly ingredient: string }
  /** Parts beside grams or drops: no telling how big a part is. */
  | { readonly code: 'parts-beside-amounts' };

/** What goes into the containers: `weight` is a share of the whole in any one unit. */
export interface ResolvedLine {
  readonly ingredient: string;
  readonly weight: number;
  readonly infusedWith?: string;
  readonly fresh?: boolean;
}

/** A herb weighed and strained out again: grams of herb for each gram that goes into the containers. */
export interface StrainedLine {
  readonly ingredient: string;
  readonly perGram: number;
  readonly fresh?: boolean;
}

export interface Resolved {
  readonly lines: readonly ResolvedLine[];
  readonly strained: readonly StrainedLine[];
  /** Total in grams as written, when the recipe is written in amounts and not only in shares. */
  readonly batchG?: number;
  readonly volumes: readonly VolumeTaken[];
  /** The percentages' own sum when it was close to 100 but not 100. */
  readonly percentSum?: number;
}

/** 99.9 % is a rounded 100 %; 99 % is a question. */
export const percentSlack = 0.5;

interface Sums {
  readonly lines: readonly (RecipeLine & { readonly grams?: number })[];
  readonly volumes: readonly VolumeTaken[];
}

const weighLines = (lines: readonly RecipeLine[], region: Region): Result<Sums, RecipeProblem> => {
  const volumes: VolumeTaken[] = [];
  const weighed: (RecipeLine & { grams?: number })[] = [];
  for (const line of lines) {
    if (line.unit !== 'rest' && line.amount <= 0)
      return fail({ code: 'zero-line', ingredient: line.ingredient });
    const grams = gramsOfLine(line, region);
    if (grams && !grams.ok) return grams;
    if (grams?.value.volume) volumes.push(grams.value.volume);
    weighed.push(grams ? { ...line, grams: grams.value.grams } : line);
  }
  return ok({ lines: weighed, volumes });
};

/** Sums without floating-point noise: 0.1 + 64.1 + 35.8 is 100, not 99.99999999999999. */
const tidy = (sum: number): number => Number(sum.toFixed(9));

const total = (lines: Sums['lines'], unit: 'percent' | 'part'): number =>
  tidy(lines.filter((line) => line.unit === unit).reduce((sum, line) => sum + line.amount, 0));

const gramsTotal = (lines: Sums['lines']): number =>
  tidy(lines.reduce((sum, line) => sum + (line.grams ?? 0), 0));

/** Grams as written, brought to shares; `whole` is what 100 % comes to in the weights' own unit. */
interface Frame {
  readonly whole: number;
  readonly perPart: number;
  readonly rest: number;
  readonly batchG?: number;
  readonly percentSum?: number;
}

const amountsFrame = (inTin: Sums['lines'], percent: number, grams: number): Result<Frame, RecipeProblem> => {
  const rest = inTin.find((line) => line.unit === 'rest');
  if (rest) {
    if (percent > 0 || rest.amount <= 0) return fail({ code: 'rest-without-total' });
    if (rest.amount <= grams)
      return fail({
        code: 'nothing-left-for-rest',
        ingredient: rest.ingredient,
      });
    return ok({
      whole: rest.amount,
      perPart: 0,
      rest: rest.amount - grams,
      batchG: rest.amount,
    });
  }
  if (percent >= 100) return fail({ code: 'percent-sum', sum: percent });
  const whole = grams / (1 - percent / 100);
  return ok({ whole, perPart: 0, rest: 0, batchG: whole });
};

const restFrame = (rest: Sums['lines'][number], percent: number): Result<Frame, RecipeProblem> => {
  if (percent >= 100) return fail({ code: 'nothing-left-for-rest', ingredient: rest.ingredient });
  // "olive oil to 500 g" beside percentages says how big the batch is.
  const batch = rest.amount > 0 ? { batchG: rest.amount } : {};
  return ok({
    whole: rest.amount > 0 ? rest.amount : 100,
    perPart: 0,
    rest: restShare(rest.amount, percent),
    ...batch,
  });
};

const restShare = (batchG: number, percent: number): number =>
  tidy(((batchG > 0 ? batchG : 100) * (100 - percent)) / 100);

/** 99.5 to 100.5 % reads as 100 %; both ends belong to it, floating-point noise or not. */
const isWhole = (percent: number): boolean => tidy(Math.abs(percent - 100)) <= percentSlack;

const sharesFrame = (inTin: Sums['lines'], percent: number, parts: number): Result<Frame, RecipeProblem> => {
  const rest = inTin.find((line) => line.unit === 'rest');
  if (rest) return parts > 0 ? fail({ code: 'rest-without-total' }) : restFrame(rest, percent);
  if (parts > 0 && percent < 100) return ok({ whole: 100, perPart: (100 - percent) / parts, rest: 0 });
  if (parts > 0 || !isWhole(percent)) return fail({ code: 'percent-sum', sum: percent });
  return ok({ whole: percent, perPart: 0, rest: 0, ...(percent === 100 ? {} : { percentSum: percent }) });
};

const frameOf = (inTin: Sums['lines'], strained: Sums['lines']): Result<Frame, RecipeProblem> => {
  if (inTin.filter((line) => line.unit === 'rest').length > 1) return fail({ code: 'two-rests' });
  const percent = total(inTin, 'percent');
  const parts = total(inTin, 'part');
  const grams = gramsTotal(inTin);
  if (grams > 0 && parts > 0) return fail({ code: 'parts-beside-amounts' });
  if (grams > 0) return amountsFrame(inTin, percent, grams);
  const herbs = total(strained, 'percent');
  const countsHerbs = herbs > 0 && parts === 0 && isWhole(percent + herbs);
  if (countsHerbs && !inTin.some((line) => line.unit === 'rest'))
    return ok({ whole: percent, perPart: 0, rest: 0 });
  return sharesFrame(inTin, percent, parts);
};

const weightOf = (line: Sums['lines'][number], frame: Frame): number => {
  if (line.grams !== undefined) return line.grams;
  if (line.unit === 'rest') return frame.rest;
  if (line.unit === 'part') return line.amount * frame.perPart;
  // Beside grams a percentage is of the whole batch; among shares it already is the weight.
  return frame.batchG === undefined ? line.amount : (line.amount / 100) * frame.whole;
};

const strainedShare = (line: Sums['lines'][number], frame: Frame): Result<number, RecipeProblem> => {
  if (line.unit === 'percent') return ok(line.amount / (frame.batchG === undefined ? frame.whole : 100));
  if (line.unit === 'part' && frame.perPart > 0) return ok((line.amount * frame.perPart) / frame.whole);
  if (line.grams !== undefined && frame.batchG !== undefined) return ok(line.grams / frame.batchG);
  return fail({ code: 'parts-beside-amounts' });
};

const resolveStrained = (
  strained: Sums['lines'],
  frame: Frame,
): Result<readonly StrainedLine[], RecipeProblem> => {
  const resolved: StrainedLine[] = [];
  for (const line of strained) {
    const share = strainedShare(line, frame);
    if (!share.ok) return share;
    const same = resolved.findIndex(
      (other) => other.ingredient === line.ingredient && other.fresh === line.fresh,
    );
    const before = resolved[same];
    if (before) resolved[same] = { ...before, perGram: before.perGram + share.value };
    else
      resolved.push({
        ingredient: line.ingredient,
        perGram: share.value,
        ...(line.fresh ? { fresh: true } : {}),
      });
  }
  return ok(resolved);
};

const sameThing = (a: ResolvedLine, b: ResolvedLine): boolean =>
  a.ingredient === b.ingredient && a.infusedWith === b.infusedWith && a.fresh === b.fresh;

/** One ingredient on two lines is one thing to weigh. */
const merged = (lines: readonly ResolvedLine[]): readonly ResolvedLine[] => {
  const list: ResolvedLine[] = [];
  for (const line of lines) {
    const index = list.findIndex((other) => sameThing(other, line));
    const before = list[index];
    if (before) list[index] = { ...before, weight: before.weight + line.weight };
    else list.push(line);
  }
  return list;
};

/**
 * Works out what share of the whole each line is, whatever units the recipe is written in.
 * Percentages must reach 100 (within 0.5); "the rest" fills up; beside grams a percentage is of the finished batch;
 * beside percentages, parts share out what is left. Strained herbs come apart: they are not in the containers.
 */
export const resolveRecipe = (
  lines: readonly RecipeLine[],
  region: Region,
): Result<Resolved, RecipeProblem> => {
  const weighed = weighLines(lines, region);
  if (!weighed.ok) return weighed;
  const inTin = weighed.value.lines.filter((line) => !line.strained);
  const strained = weighed.value.lines.filter((line) => line.strained);
  if (inTin.length === 0) return fail({ code: 'no-lines' });
  const frame = frameOf(inTin, strained);
  if (!frame.ok) return frame;
  const herbs = resolveStrained(strained, frame.value);
  if (!herbs.ok) return herbs;
  const { batchG, percentSum } = frame.value;
  return ok({
    lines: merged(
      inTin.map((line) => ({
        ingredient: line.ingredient,
        weight: weightOf(line, frame.value),
        ...(line.infusedWith ? { infusedWith: line.infusedWith } : {}),
        ...(line.fresh ? { fresh: true } : {}),
      })),
    ),
    strained: herbs.value,
    volumes: weighed.value.volumes,
    ...(batchG === undefined ? {} : { batchG }),
    ...(percentSum === undefined ? {} : { percentSum }),
  });
};
