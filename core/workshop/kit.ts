import { ingredientById, isSmallDose } from '../ingredients.ts';
import type { RecipeLine } from '../recipe.ts';
import { ok, type Result } from '../result.ts';
import { type Scaled, type ScaleProblem, scaleRecipe, type TooSmall } from '../scale.ts';
import type { Region, ScaleStep } from '../settings.ts';
import { shareOut } from '../share.ts';
import { gramsOfSteps, stepsAtLeast } from '../steps.ts';
import type { Fill } from '../target.ts';

/** What everybody makes: so many containers each of one recipe. */
export interface Making {
  readonly name?: string;
  readonly lines: readonly RecipeLine[];
  /** Containers for each person. */
  readonly each: number;
  readonly fill: Fill;
  /** The container's word: tin, stick, jar. */
  readonly container: string;
  /** Parts of oil to one part of herb, where an infused line's ratio was said. */
  readonly infuseRatio?: number;
}

export interface Weighing {
  readonly stepG: ScaleStep;
  /** Share of the weigh-out that stays in jug and spoon, in percent. */
  readonly lossPercent: number;
  readonly region: Region;
}

export interface KitLine {
  readonly ingredient: string;
  /** Percent by weight of what goes into the containers. */
  readonly percent: number;
  readonly grams: number;
  readonly infusedWith?: string;
}

/** A dose too small to be weighed person by person: weighed once for a whole jug, by whoever leads. */
export interface TogetherLine extends Omit<KitLine, 'grams'> {
  /** What one person's share comes to, not rounded. */
  readonly gramsEach: number;
}

/** One person's weigh-out of one recipe. */
export interface Kit {
  readonly making: Making;
  /** Whole steps of the scale; together they are `weighedG`. */
  readonly lines: readonly KitLine[];
  readonly weighedG: number;
  readonly together: readonly TogetherLine[];
  /** Everything that is melted for one person, the doses weighed together among it; not rounded. */
  readonly meltedG: number;
  /** What the person's containers hold in all. */
  readonly netG: number;
  readonly fillGEach: number;
  /** Lines of the kit that the scale tells badly. */
  readonly tooSmall: readonly TooSmall[];
  readonly scaled: Scaled;
}

const own = (scaled: Scaled, at: number): Omit<KitLine, 'grams'> => {
  const line = scaled.lines[at];
  return {
    ingredient: line?.ingredient ?? '',
    percent: line?.percent ?? 0,
    ...(line?.infusedWith ? { infusedWith: line.infusedWith } : {}),
  };
};

const isDose = (ingredient: string): boolean => {
  const found = ingredientById(ingredient);
  return found !== undefined && isSmallDose(found);
};

/** A line that was raised to one step would be several times what the recipe asks for: never in a kit. */
const togetherAt = (scaled: Scaled): ReadonlySet<number> => {
  const small = scaled.tooSmall.filter(({ ingredient, raised }) => raised || isDose(ingredient));
  const names = new Set(small.map(({ ingredient }) => ingredient));
  const at = scaled.lines.flatMap(({ ingredient }, index) => (names.has(ingredient) ? [index] : []));
  return new Set(at.length < scaled.lines.length ? at : []);
};

interface Shared {
  readonly lines: readonly KitLine[];
  readonly weighedG: number;
}

/** The lines that are weighed person by person, in whole steps. */
const kitLines = (scaled: Scaled, together: ReadonlySet<number>): Shared => {
  if (together.size === 0) {
    const lines = scaled.lines.map((line, at) => ({ ...own(scaled, at), grams: line.grams }));
    return { lines, weighedG: scaled.totalG };
  }
  const { stepG, resolved } = scaled;
  const sum = resolved.lines.reduce((all, line) => all + line.weight, 0);
  const kept = resolved.lines
    .map((line, at) => ({ at, weight: line.weight }))
    .filter(({ at }) => !together.has(at));
  const share = kept.reduce((all, { weight }) => all + weight, 0) / sum;
  const steps = Math.max(kept.length, stepsAtLeast(scaled.totalG * share, stepG));
  const shares = shareOut(
    kept.map(({ weight }) => weight),
    steps,
  );
  const counts = shares.ok ? shares.value.steps : kept.map(() => 0);
  return {
    lines: kept.map(({ at }, index) => ({
      ...own(scaled, at),
      grams: gramsOfSteps(counts[index] ?? 0, stepG),
    })),
    weighedG: gramsOfSteps(steps, stepG),
  };
};

/**
 * One person's kit of one recipe: what `each` containers need with the loss on top, in whole steps of the scale. Doses
 * too small for the scale are taken out of the kit and weighed for a whole jug instead.
 */
export const kitOf = (making: Making, weighing: Weighing): Result<Kit, ScaleProblem> => {
  const scaling = scaleRecipe({
    lines: making.lines,
    target: { kind: 'containers', count: making.each, fill: making.fill },
    ...weighing,
  });
  if (!scaling.ok) return scaling;
  const scaled = scaling.value;
  const at = togetherAt(scaled);
  const together = [...at].map((index) => {
    const part = own(scaled, index);
    return { ...part, gramsEach: (scaled.totalG * part.percent) / 100 };
  });
  const kit = kitLines(scaled, at);
  const names = new Set(together.map(({ ingredient }) => ingredient));
  return ok({
    making,
    ...kit,
    together,
    meltedG: kit.weighedG + together.reduce((sum, { gramsEach }) => sum + gramsEach, 0),
    netG: scaled.netG,
    fillGEach: scaled.fillGEach ?? 0,
    tooSmall: scaled.tooSmall.filter(({ ingredient }) => !names.has(ingredient)),
    scaled,
  });
};
