import { partGrams } from '../../core/infuse/mix.ts';
import type { ScaleStep } from '../../core/settings.ts';
import { stepDecimals } from '../../core/steps.ts';
import { gramsIn } from '../../core/units.ts';
import type { Block } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { InfuseWish } from '../topics/infuse.ts';
import type { Steep } from './infuse-plan.ts';
import { andList } from './lists.ts';
import { atStep } from './numbers.ts';
import { shortName } from './warnings.ts';

export const herbName = ({ herbs }: Steep): string =>
  herbs.length === 0 ? 'dried herb' : andList(herbs.map(({ of }) => shortName(of.id)));
export const oilName = ({ oils }: Steep): string =>
  oils.length === 0 ? 'oil' : andList(oils.map(({ of }) => shortName(of.id)));

const herbRows = ({ herbs, infusion }: Steep, stepG: ScaleStep): (readonly [string, number])[] => {
  const grams = partGrams(herbs, infusion?.herbG ?? 0, stepG);
  if (herbs.length < 2 || !grams)
    return [
      [
        `dry ${herbs[0] ? shortName(herbs[0].of.id) : 'dried herb'}`.replace('dry dried', 'dry'),
        infusion?.herbG ?? 0,
      ],
    ];
  return herbs.map(({ of }, at) => [`dry ${shortName(of.id)}`, grams[at] ?? 0]);
};

const oilRows = (steep: Steep, mass: string, stepG: ScaleStep): (readonly [string, number])[] => {
  const { oils, infusion } = steep;
  const grams = partGrams(oils, infusion?.oilInG ?? 0, stepG);
  if (oils.length < 2 || !grams) return [[`${mass} in`, infusion?.oilInG ?? 0]];
  return oils.map(({ of }, at) => [`${shortName(of.id)} in`, grams[at] ?? 0]);
};

/** The same in ounces, for groups that want them. */
const inOunces = ({ infusion }: Steep, tools: Tools): Block[] => {
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

/** Herbs, oils in, kept, oil out: the two last with their range. */
export const infusionTable = (steep: Steep, tools: Tools, way?: InfuseWish['way']): Block[] => {
  const { infusion } = steep;
  if (!infusion) return [];
  const { stepG } = tools.settings;
  const g = (grams: number): string => atStep(grams, stepDecimals(stepG));
  const about = (low: number, high: number): string => `${g(low)} to ${g(high)}`;
  const mass = way === 'melt' ? 'melted mass' : oilName(steep);
  return [
    {
      kind: 'table',
      columns: [
        { title: '', align: 'left' },
        { title: 'g', align: 'right' },
        { title: 'from … to', align: 'right' },
      ],
      rows: [
        ...[...herbRows(steep, stepG), ...oilRows(steep, mass, stepG)].map(([name, grams]) => [
          name,
          g(grams),
          '',
        ]),
        ['kept by herb, cloth', g(infusion.uptakeG), about(infusion.uptakeLowG, infusion.uptakeHighG)],
        ['strained out', g(infusion.oilOutG), about(infusion.oilOutLowG, infusion.oilOutHighG)],
      ],
    },
    ...inOunces(steep, tools),
  ];
};
