import type { Scaled, ScaledLine } from '../../core/scale.ts';
import type { Settings } from '../../core/settings.ts';
import { stepDecimals } from '../../core/steps.ts';
import { gramsIn } from '../../core/units.ts';
import type { Block, Column } from '../answer.ts';
import { atStep, plain } from './numbers.ts';
import { shortName } from './warnings.ts';

const lineName = (line: ScaledLine): string => {
  const infused = line.infusedWith ? `${shortName(line.infusedWith)}-infused ` : '';
  return `${infused}${line.ingredient === 'infused-oil' && infused ? 'oil' : shortName(line.ingredient)}`;
};

interface TableColumn extends Column {
  readonly cell: (line: ScaledLine) => string;
  readonly total: string;
}

/** Nobody counts sixty-three drops: above twenty they are told to the nearest five. */
const roughDrops = (count: number): number => (count > 20 ? Math.round(count / 5) * 5 : count);

const drops = (line: ScaledLine): string => (line.drops === undefined ? '' : `~${roughDrops(line.drops)}`);
const ounces = (grams: number): string => (grams / gramsIn('oz')).toFixed(2);

/** The weigh-out's columns: drops only where there is scent, ounces only for groups that want them. */
const columnsFor = (scaled: Scaled, units: Settings['units']): readonly TableColumn[] => {
  const decimals = stepDecimals(scaled.stepG);
  const right = 'right' as const;
  const hasDrops = scaled.lines.some((line) => line.drops !== undefined);
  return [
    { title: 'ingredient', align: 'left', cell: lineName, total: 'total' },
    { title: '%', align: right, cell: ({ percent }) => plain(percent, percent < 1 ? 2 : 1), total: '100' },
    {
      title: 'g',
      align: right,
      cell: ({ grams }) => atStep(grams, decimals),
      total: atStep(scaled.totalG, decimals),
    },
    ...(units === 'oz'
      ? [
          {
            title: 'oz',
            align: right,
            cell: ({ grams }: ScaledLine) => ounces(grams),
            total: ounces(scaled.totalG),
          },
        ]
      : []),
    ...(hasDrops ? [{ title: 'drops', align: right, cell: drops, total: '' }] : []),
  ];
};

/** The weigh-out as a table whose lines sum to its total. */
export const scaleTable = (scaled: Scaled, units: Settings['units']): Block => {
  const columns = columnsFor(scaled, units);
  return {
    kind: 'table',
    columns: columns.map(({ title, align }) => ({ title, align })),
    rows: scaled.lines.map((line) => columns.map((column) => column.cell(line))),
    total: columns.map((column) => column.total),
  };
};
