import { mixWays, type Part, partGrams } from '../../core/infuse/mix.ts';
import type { ScaleStep } from '../../core/settings.ts';
import type { Answer } from '../answer.ts';
import type { FigureValue } from '../figures.ts';
import type { Steep } from './infuse-plan.ts';

const tidy = (value: number): number => Number(value.toFixed(4));

const idOf = (parts: readonly Part<{ readonly id: string }>[]): string | null =>
  parts.length === 1 ? (parts[0]?.of.id ?? null) : null;

const shares = (
  what: 'herb' | 'oil',
  parts: readonly Part<{ readonly id: string }>[],
  totalG: number | undefined,
  stepG: ScaleStep,
): FigureValue => {
  const grams = totalG === undefined ? undefined : partGrams(parts, totalG, stepG);
  return parts.map(({ of }, at) => ({ [what]: of.id, grams: grams?.[at] ?? null }));
};

/** The figures of an infusion; grams are null where no amount was given, `herb` and `oil` where there are several. */
export const infuseFigures = (plan: Steep, stepG: ScaleStep): Answer['figures'] => {
  const { herbs, oils, infusion, uptake, usual } = plan;
  const { hours, bathC, coldWeeks } = mixWays(herbs);
  return {
    herb: idOf(herbs),
    oil: idOf(oils),
    herbs: shares('herb', herbs, infusion?.herbG, stepG),
    oils: shares('oil', oils, infusion?.oilInG, stepG),
    herb_g: infusion?.herbG ?? null,
    oil_in_g: infusion?.oilInG ?? null,
    uptake_g: infusion?.uptakeG ?? null,
    uptake_low_g: infusion?.uptakeLowG ?? null,
    uptake_high_g: infusion?.uptakeHighG ?? null,
    uptake_g_per_g: uptake.value,
    own_yields: uptake.weighings,
    oil_out_g: infusion?.oilOutG ?? null,
    oil_out_low_g: infusion?.oilOutLowG ?? null,
    oil_out_high_g: infusion?.oilOutHighG ?? null,
    ratio: tidy(infusion?.ratio ?? usual.middle),
    hours: [...hours],
    bath_c: [...bathC],
    cold_weeks: [...coldWeeks],
  };
};
