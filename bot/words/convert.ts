import { type Converted, type ConvertProblem, convertAmount } from '../../core/convert.ts';
import type { Region } from '../../core/settings.ts';
import { isKitchenMeasure, type Unit } from '../../core/units.ts';
import type { Answer, Block, Trouble, Warning } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { ConvertWish } from '../topics/convert.ts';
import { plain, readable } from './numbers.ts';
import { troubleOf } from './problems.ts';
import { shortName } from './warnings.ts';

const unitName = (unit: Unit, value: number): string => {
  if (unit === 'C' || unit === 'F') return `°${unit}`;
  return (unit === 'drop' || unit === 'cup') && value !== 1 ? `${unit}s` : unit;
};

const amountText = (value: number, unit: Unit): string => {
  const number = unit === 'C' || unit === 'F' ? plain(value, 1) : readable(value);
  return `${number} ${unitName(unit, value)}`;
};

const convertTrouble = (problem: ConvertProblem): Trouble => {
  switch (problem.code) {
    case 'different-kinds':
      return {
        code: 'bad-quantity',
        text: `${unitName(problem.from, 2)} and ${unitName(problem.to, 2)} measure different things, so one cannot become the other. Try "150 F in C" or "5 oz in g".`,
      };
    case 'needs-ingredient':
      return {
        code: 'missing',
        text: `Of what? Weight and volume meet through the density of the thing itself. For example "2 tbsp shea butter in grams".`,
      };
    case 'below-absolute-zero':
      return {
        code: 'out-of-range',
        text: 'That is colder than anything can be. Try "20 C in F".',
      };
    default:
      return troubleOf(problem);
  }
};

const measures: Readonly<Record<Region, string>> = {
  eu: 'metric spoons and cups (5, 15, 250 ml), US fluid ounce',
  uk: 'metric spoons and cups (5, 15, 250 ml), imperial fluid ounce',
  us: 'US customary measures',
  ca: 'metric spoons and cups (5, 15, 250 ml), imperial fluid ounce',
  au: 'Australian spoons (5, 20 ml), metric cup 250 ml, imperial fluid ounce',
};

const assumed = (wish: ConvertWish, converted: Converted, region: Region): Block[] => {
  const lines: string[] = [];
  const kitchen = isKitchenMeasure(wish.from) || isKitchenMeasure(wish.to);
  if (kitchen) lines.push(`Measures: ${measures[region]}.`);
  if (converted.densityGMl !== undefined && wish.ingredient) {
    lines.push(`${shortName(wish.ingredient)} at ${converted.densityGMl} g/ml (20 °C).`);
  }
  if (converted.dropsPerMl !== undefined) lines.push(`Drops: ${converted.dropsPerMl} to the ml.`);
  return lines.map((text) => ({ kind: 'assumed', text }));
};

const roughDrops: Warning = {
  code: 'rough-estimate',
  text: 'Drops differ from bottle to bottle (20 to 40 to the ml for oils): weigh where it matters.',
};

/** Answers a conversion with the figure first and what it rests on below. */
export const answerConvert = (wish: ConvertWish, tools: Tools): Answer | Trouble => {
  const { region } = tools.settings;
  const result = convertAmount({
    value: wish.value,
    from: wish.from,
    to: wish.to,
    region,
    ...(wish.ingredient === undefined ? {} : { ingredient: wish.ingredient }),
  });
  if (!result.ok) return convertTrouble(result.problem);
  const { value, unit, low, high, dropsPerMl } = result.value;
  const of = wish.ingredient ? ` of ${shortName(wish.ingredient)}` : '';
  const about = dropsPerMl === undefined ? '' : 'about ';
  const range = low === undefined || high === undefined ? '' : ` (${readable(low)} to ${readable(high)})`;
  return {
    title: `${amountText(wish.value, wish.from)}${of} = ${about}${amountText(value, unit)}${range}`,
    blocks: assumed(wish, result.value, region),
    figures: {
      value,
      unit,
      ...(low === undefined || high === undefined ? {} : { low, high }),
      ...(wish.ingredient ? { ingredient: wish.ingredient } : {}),
    },
    warnings: dropsPerMl === undefined ? [] : [roughDrops],
  };
};
