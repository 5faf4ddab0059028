import { stepDecimals } from '../../core/steps.ts';
import { gramsIn } from '../../core/units.ts';
import type { Block } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { InfuseWish } from '../topics/infuse.ts';
import type { Plan } from './infuse-plan.ts';
import { atStep } from './numbers.ts';
import { shortName } from './warnings.ts';

export const herbName = ({ herb }: Plan): string => (herb ? shortName(herb.id) : 'dried herb');
export const oilName = ({ oil }: Plan): string => (oil ? shortName(oil.id) : 'oil');

/** The same in ounces, for groups that want them. */
const inOunces = ({ infusion }: Plan, tools: Tools): Block[] => {
  if (!infusion || tools.settings.units !== 'oz') return [];
  const oz = (grams: number): string => (grams / gramsIn('oz')).toFixed(2);
  const { herbG, oilInG, oilOutG } = infusion;
  return [
    {
      kind: 'text',
      text: `In ounces: ${oz(herbG)} oz herb, ${oz(oilInG)} oz oil in, about ${oz(oilOutG)} oz out.`,
    },
  ];
};

/** Herb, oil in, kept, oil out: the two last with their range. */
export const infusionTable = (plan: Plan, tools: Tools, way?: InfuseWish['way']): Block[] => {
  const { infusion } = plan;
  if (!infusion) return [];
  const decimals = stepDecimals(tools.settings.stepG);
  const g = (grams: number): string => atStep(grams, decimals);
  const about = (low: number, high: number): string => `${g(low)} to ${g(high)}`;
  const mass = way === 'melt' ? 'melted mass' : oilName(plan);
  return [
    {
      kind: 'table',
      columns: [
        { title: '', align: 'left' },
        { title: 'g', align: 'right' },
        { title: 'from … to', align: 'right' },
      ],
      rows: [
        [`dry ${herbName(plan)}`, g(infusion.herbG), ''],
        [`${mass} in`, g(infusion.oilInG), ''],
        ['kept by herb, cloth', g(infusion.uptakeG), about(infusion.uptakeLowG, infusion.uptakeHighG)],
        ['strained out', g(infusion.oilOutG), about(infusion.oilOutLowG, infusion.oilOutHighG)],
      ],
    },
    ...inOunces(plan, tools),
  ];
};
