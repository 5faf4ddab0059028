import { defined } from '../defined.ts';
import { type Infusion, infuse } from '../infuse/infuse.ts';
import { uptakeFor, usualRatio, type Ways, waysFor } from '../infuse/uptake.ts';
import type { Yields } from '../infuse/yields.ts';
import { ingredientById, isFat, isHerb } from '../ingredients.ts';
import type { ScaleStep } from '../settings.ts';
import { gramsOfSteps, stepsAtLeast } from '../steps.ts';
import type { Kit } from './kit.ts';
import type { SetAside } from './set-aside.ts';

/** Oil to be infused before the day; grams in whole steps of the scale. */
export interface Ahead {
  readonly recipe?: string;
  readonly herb: string;
  /** The base oil; `infused-oil` where the recipe names none. */
  readonly oil: string;
  /** The line says itself that its oil is infused; else the herb is steeped in a plain line's oil. */
  readonly lineInfused: boolean;
  readonly infusion: Infusion;
  readonly ways: Ways;
}

/** A herb that is strained out of the melt itself, because no liquid oil is there to steep it in. */
export interface InMelt {
  readonly herb: string;
  readonly herbG: number;
}

export interface Steeped {
  readonly ahead: readonly Ahead[];
  readonly inMelt: readonly InMelt[];
}

interface Job {
  readonly herb: string;
  readonly herbG?: number;
  readonly line: SetAside;
}

const isLiquid = ({ ingredient }: SetAside): boolean => {
  const found = ingredientById(ingredient);
  return found !== undefined && isFat(found) && /^liquid/.test(found.form);
};

const largestOil = (lines: readonly SetAside[]): SetAside | undefined =>
  lines.filter(isLiquid).toSorted((a, b) => b.grams - a.grams)[0];

/** Oil lines that say they are infused, and strained herbs with the oil they are steeped in. */
const jobsOf = (kit: Kit, lines: readonly SetAside[], totalG: number, stepG: ScaleStep) => {
  const { strained } = kit.scaled.resolved;
  const herbG = (perGram: number): number =>
    gramsOfSteps(Math.max(1, stepsAtLeast(perGram * totalG, stepG)), stepG);
  const said: Job[] = lines.flatMap((line) => {
    const { infusedWith } = line;
    if (infusedWith === undefined) return [];
    const own = strained.find(({ ingredient }) => ingredient === infusedWith);
    return [{ herb: infusedWith, line, ...(own ? { herbG: herbG(own.perGram) } : {}) }];
  });
  const loose = strained.filter(({ ingredient }) => !said.some(({ herb }) => herb === ingredient));
  const oil = largestOil(lines.filter(({ infusedWith }) => infusedWith === undefined)) ?? largestOil(lines);
  return {
    jobs: oil
      ? [...said, ...loose.map((each) => ({ herb: each.ingredient, herbG: herbG(each.perGram), line: oil }))]
      : said,
    inMelt: oil ? [] : loose.map(({ ingredient, perGram }) => ({ herb: ingredient, herbG: herbG(perGram) })),
  };
};

const aheadOf = (job: Job, kit: Kit, stepG: ScaleStep, yields: Yields | undefined): Ahead[] => {
  const found = ingredientById(job.herb);
  const herb = found && isHerb(found) ? found : undefined;
  const infusion = infuse({
    oilOutG: job.line.grams,
    ...defined({ herbG: job.herbG, ratio: job.herbG === undefined ? kit.making.infuseRatio : undefined }),
    usualRatio: usualRatio(herb).middle,
    uptake: uptakeFor(herb, yields),
    stepG,
  });
  if (!infusion.ok) return [];
  return [
    {
      herb: job.herb,
      oil: job.line.ingredient,
      lineInfused: job.line.infusedWith !== undefined,
      infusion: infusion.value,
      ways: waysFor(herb),
      ...defined({ recipe: kit.making.name }),
    },
  ];
};

/**
 * What has to be steeped before the day so that everything set aside is there: the herb and the oil to start with. Oil
 * that stays in herb and cloth is reckoned as {@link infuse} does, from the group's own weighings where there are any.
 */
export const steepedAhead = (
  kit: Kit,
  lines: readonly SetAside[],
  totalG: number,
  stepG: ScaleStep,
  yields: Yields | undefined,
): Steeped => {
  const { jobs, inMelt } = jobsOf(kit, lines, totalG, stepG);
  return { ahead: jobs.flatMap((job) => aheadOf(job, kit, stepG, yields)), inMelt };
};
