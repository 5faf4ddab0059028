import { waysFor } from '../../core/infuse/uptake.ts';
import type { Answer } from '../answer.ts';
import type { Plan } from './infuse-plan.ts';

const tidy = (value: number): number => Number(value.toFixed(4));

/** The figures of an infusion; grams are null where no amount was given. */
export const infuseFigures = (plan: Plan): Answer['figures'] => {
  const { herb, oil, infusion, uptake, usual } = plan;
  const { hours, bathC, coldWeeks } = waysFor(herb);
  return {
    herb: herb?.id ?? null,
    oil: oil?.id ?? null,
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
