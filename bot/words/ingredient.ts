import type { Figure, Ingredient } from '../../core/data/ingredient.ts';
import { ingredientById } from '../../core/ingredients.ts';
import { shelfLifeDays } from '../../core/shelf-life.ts';
import type { Answer, Block, Trouble } from '../answer.ts';
import type { FigureValue } from '../figures.ts';
import type { Aspect } from '../readers/ingredient-claim.ts';
import type { Tools } from '../topic.ts';
import type { IngredientWish } from '../topics/ingredient.ts';
import { plain } from './numbers.ts';
import { about, type Provenance, sourceText } from './sources.ts';

const rangeText = (figure: Figure, unit: string, decimals: number): string => {
  const { low, high, value } = figure;
  const ranged = low !== undefined && high !== undefined && low !== high;
  const number = ranged ? `${plain(low, decimals)} to ${plain(high, decimals)}` : plain(value, decimals);
  return `${about(figure)}${number}${unit}`;
};

interface Line {
  readonly aspect: Aspect;
  readonly title: string;
  readonly text: string;
  readonly from?: Provenance;
}

const veganText = {
  yes: 'yes',
  no: 'no',
  varies: 'depends on where it comes from',
} as const;

const allergenText = ({ allergen }: Ingredient): string => {
  const flag = allergen.flag === 'none' ? 'none usual' : allergen.flag.replace('-', ' ');
  return allergen.note ? `${flag}; ${allergen.note}` : flag;
};

const shelfText = (found: Ingredient): Line[] => {
  const life = found.shelfLifeMonths;
  if (!life) return [];
  const months = life.high === undefined ? `at least ${life.low}` : `${life.low} to ${life.high}`;
  return [
    {
      aspect: 'shelf-life',
      title: 'keeps',
      text: `${months} months unopened`,
      from: life,
    },
  ];
};

const figureLine = (
  aspect: Aspect,
  title: string,
  figure: Figure | undefined,
  unit: string,
  decimals: number,
): Line[] => (figure ? [{ aspect, title, text: rangeText(figure, unit, decimals), from: figure }] : []);

const useLine = ({ usePercent }: Ingredient): Line[] =>
  usePercent
    ? [
        {
          aspect: 'use',
          title: 'usual share',
          text: `${usePercent.low} to ${usePercent.high} %`,
          from: usePercent,
        },
      ]
    : [];

const linesOf = (found: Ingredient): Line[] => [
  ...figureLine('melting', 'melts', found.meltC, ' °C', 1),
  ...figureLine('density', 'density', found.densityGMl, ' g/ml', 3),
  ...figureLine('iodine', 'iodine value', found.iodineValue, '', 1),
  ...shelfText(found),
  ...useLine(found),
  { aspect: 'allergen', title: 'allergen', text: allergenText(found) },
  { aspect: 'vegan', title: 'vegan', text: veganText[found.vegan] },
  {
    aspect: 'inci',
    title: 'INCI',
    text: found.inciUs && found.inciUs !== found.inci ? `${found.inci}; US: ${found.inciUs}` : found.inci,
  },
];

const ordered = (lines: readonly Line[], about: Aspect | undefined): readonly Line[] =>
  about === undefined
    ? lines
    : [...lines.filter((line) => line.aspect === about), ...lines.filter((line) => line.aspect !== about)];

/** Each source once, with the figures it stands behind. */
const sourceBlocks = (lines: readonly Line[]): Block[] => {
  const bySource = new Map<string, string[]>();
  for (const { title, from } of lines) {
    if (!from) continue;
    const what = sourceText(from);
    bySource.set(what, [...(bySource.get(what) ?? []), title]);
  }
  return [...bySource].map(([what, titles]) => ({
    kind: 'source',
    text: `${titles.join(', ')}: ${what}`,
  }));
};

const sentence = (text: string): string => {
  const said = text.trim();
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}${/[.!?]$/.test(said) ? '' : '.'}`;
};

const notes = (found: Ingredient): Block[] => {
  const lips =
    found.lips === 'ok'
      ? []
      : [
          `On lips: ${found.lips === 'avoid' ? 'leave it out' : 'with care'}${found.lipNote ? `; ${found.lipNote}` : ''}.`,
        ];
  return [...lips, ...(found.comment ? [sentence(found.comment)] : [])].map((text) => ({
    kind: 'text',
    text,
  }));
};

const ranged = (figure: Figure | undefined): FigureValue =>
  figure ? [figure.low ?? figure.value, figure.high ?? figure.value] : null;

const sourceFigure = (from: Provenance | undefined): FigureValue =>
  from ? { source: from.source, how: from.how } : null;

/** Days in an average month, for the shelf life in days. */

const figuresOf = (found: Ingredient): Answer['figures'] => ({
  id: found.id,
  name: found.name,
  inci: found.inci,
  kind: found.kind,
  melt_c: ranged(found.meltC),
  density_g_ml: found.densityGMl?.value ?? null,
  density_range_g_ml: ranged(found.densityGMl),
  iodine_value: found.iodineValue?.value ?? null,
  iodine_range: ranged(found.iodineValue),
  allergen: found.allergen.flag,
  // Null where it depends on the maker of the ingredient.
  vegan: found.vegan === 'varies' ? null : found.vegan === 'yes',
  shelf_life_days: found.shelfLifeMonths ? shelfLifeDays(found.shelfLifeMonths.low) : null,
  sources: {
    melt_c: sourceFigure(found.meltC),
    density_g_ml: sourceFigure(found.densityGMl),
    iodine_value: sourceFigure(found.iodineValue),
    shelf_life_days: sourceFigure(found.shelfLifeMonths),
    allergen: { source: ['CP'], how: 'common-practice' },
    vegan: { source: ['CP'], how: 'common-practice' },
  },
});

/** Answers what is known of one ingredient, with the source of each figure. */
export const answerIngredient = (wish: IngredientWish, _tools: Tools): Answer | Trouble => {
  const found = ingredientById(wish.ingredient);
  if (!found)
    return {
      code: 'unknown-ingredient',
      text: `I do not know the ingredient "${wish.ingredient}". Try "what is shea butter".`,
    };
  const lines = ordered(linesOf(found), wish.about);
  return {
    title: sentence(found.name).slice(0, -1),
    blocks: [
      { kind: 'text', text: sentence(found.purpose) },
      {
        kind: 'table',
        columns: [
          { title: '', align: 'left' },
          { title: '', align: 'left' },
        ],
        rows: lines.map((line) => [line.title, line.text]),
      },
      ...notes(found),
      ...sourceBlocks(lines),
    ],
    figures: figuresOf(found),
    warnings: [],
  };
};
