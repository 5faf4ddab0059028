import { defined } from '../../core/defined.ts';
import { hazardsOf, weighingHazards } from '../../core/hazards.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import type { Resolved } from '../../core/resolve.ts';
import { type Scaled, scaleRecipe } from '../../core/scale.ts';
import type { Region } from '../../core/settings.ts';
import { stepDecimals } from '../../core/steps.ts';
import type { Fill, Target } from '../../core/target.ts';
import { isKitchenMeasure } from '../../core/units.ts';
import type { Answer, Block, NextStep, Trouble, Warning } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { ScaleWish } from '../topics/scale.ts';
import { findRecipe } from './find-recipe.ts';
import { atStep, brief, plain, readable } from './numbers.ts';
import { troubleOf } from './problems.ts';
import { type PourFigures, pourOf, pourText } from './scale-pour.ts';
import { scaleTable } from './scale-table.ts';
import { toolsIn } from './units-said.ts';
import { localRules, potCautions, shortName, warningOf } from './warnings.ts';

const fillOf = (size: ScaleWish['size']): Fill | undefined => {
  if (!size) return undefined;
  return size.unit === 'g' ? { grams: size.amount } : { ml: size.amount };
};

const noTarget: Trouble = {
  code: 'missing',
  text: 'How much do you want to make? For example "to 24 tins of 15 ml" or "to 500 g".',
};

const targetOf = (wish: ScaleWish): Target | Trouble => {
  const size = fillOf(wish.size);
  const fill = defined({ fill: size });
  if (wish.limit) return { kind: 'limit', ...wish.limit, ...fill };
  if (wish.count !== undefined && size) return { kind: 'containers', count: wish.count, fill: size };
  if (wish.totalG !== undefined) return { kind: 'mass', grams: wish.totalG, ...fill };
  if (wish.totalMl !== undefined) return { kind: 'volume', ml: wish.totalMl, ...fill };
  return wish.factor === undefined ? noTarget : { kind: 'multiple', factor: wish.factor, ...fill };
};

const sizeText = (wish: ScaleWish): string =>
  wish.size ? `${readable(wish.size.amount)} ${wish.size.unit}` : '';

/** Small batches are told finer, so that the parts add up to the whole as shown. */
const smallBatchG = 50;

const gramsFor = (scaled: Scaled) => {
  const decimals = scaled.totalG < smallBatchG ? 2 : 1;
  return (grams: number): string => plain(grams, decimals);
};

const filledText = (scaled: Scaled, wish: ScaleWish, containers: number, fillGEach: number): string => {
  const grams = gramsFor(scaled);
  const each = `${grams(fillGEach)} g each`;
  if (wish.count !== undefined)
    return `For ${containers} × ${sizeText(wish)}: ${each}, ${grams(scaled.netG)} g net.`;
  const over = scaled.netG - containers * fillGEach;
  return `That fills ${containers} × ${sizeText(wish)}: ${each}, ${grams(over)} g over.`;
};

const summary = (scaled: Scaled, wish: ScaleWish): string => {
  const grams = gramsFor(scaled);
  const allowance = `${grams(scaled.allowanceG)} g (${plain(scaled.lossPercent)} %)`;
  const loss = scaled.lossPercent > 0 ? `, ${allowance} of it for jug and spoon` : ', no loss counted';
  const head = `Weigh out ${atStep(scaled.totalG, stepDecimals(scaled.stepG))} g in all${loss}.`;
  const { containers, fillGEach } = scaled;
  if (containers === undefined || fillGEach === undefined) {
    return `${head} That leaves ${grams(scaled.netG)} g to fill.`;
  }
  return `${head} ${filledText(scaled, wish, containers, fillGEach)}`;
};

const strainedText = (scaled: Scaled): Block[] => {
  if (scaled.strained.length === 0) return [];
  const decimals = stepDecimals(scaled.stepG);
  const herbs = scaled.strained.map(
    (herb) => `${atStep(herb.grams, decimals)} g ${shortName(herb.ingredient)}`,
  );
  return [
    {
      kind: 'text',
      text: `Weigh besides, to strain out again: ${herbs.join(', ')}. The herb keeps some oil, so the table's oil is what you need after straining: steep it in more.`,
    },
  ];
};

const measureRegion: Readonly<Record<Region, string>> = {
  eu: 'metric',
  uk: 'metric',
  us: 'US',
  ca: 'metric',
  au: 'Australian',
};

export const volumesAssumed = (scaled: Scaled, region: Region): string[] =>
  scaled.resolved.volumes.map((volume) => {
    const measure = isKitchenMeasure(volume.unit)
      ? ` (${measureRegion[region]} measure, ${readable(volume.ml)} ml)`
      : '';
    const about = volume.unit === 'drop' ? 'about ' : '';
    const pressed = volume.unit !== 'drop' && volume.densityGMl > 0.94 ? ', melted or pressed flat' : '';
    const unit = volume.unit === 'drop' && volume.amount !== 1 ? 'drops' : volume.unit;
    return `${readable(volume.amount)} ${unit} ${shortName(volume.ingredient)}${measure} is ${about}${brief(volume.grams)} g at ${volume.densityGMl} g/ml${pressed}.`;
  });

const densityAssumed = (scaled: Scaled, wish: ScaleWish): string[] => {
  const byVolume = wish.size?.unit === 'ml' || wish.totalMl !== undefined;
  if (!byVolume) return [];
  const unknown =
    scaled.densityUnknown.length > 0
      ? ` No density known for ${scaled.densityUnknown.map(shortName).join(', ')}: taken as dense as the rest.`
      : '';
  return [
    `The set blend weighs ${plain(scaled.densityGMl, 3)} g/ml at 20 °C, reckoned from the lines.${unknown}`,
  ];
};

const assumed = (scaled: Scaled, wish: ScaleWish, region: Region): Block[] => {
  const { percentSum } = scaled.resolved;
  const lines = [
    ...densityAssumed(scaled, wish),
    ...volumesAssumed(scaled, region),
    ...(percentSum === undefined
      ? []
      : [`The percentages come to ${plain(percentSum, 2)} %; I took that as 100 %.`]),
    ...(scaled.lines.some((line) => line.drops !== undefined)
      ? ['Drops are rough: 30 to the ml, and bottles give 20 to 40. Trust the grams.']
      : []),
  ];
  return lines.map((text) => ({ kind: 'assumed', text }));
};

const roughDrops: Warning = {
  code: 'rough-estimate',
  text: 'The recipe counts drops: weigh them once and save the grams.',
};

const own = new WeakMap<Resolved, readonly Warning[]>();

/** What a recipe has to be warned of however much is made of it: the same for as long as the recipe is. */
const ownWarnings = (scaled: Scaled): readonly Warning[] => {
  const found = own.get(scaled.resolved) ?? hazardsOf({ ...scaled, tooSmall: [] }).map(warningOf);
  own.set(scaled.resolved, found);
  return found;
};

const warnings = (scaled: Scaled): Warning[] => [
  ...ownWarnings(scaled),
  ...weighingHazards(scaled.tooSmall).map(warningOf),
  ...(scaled.resolved.volumes.some((volume) => volume.unit === 'drop') ? [roughDrops] : []),
  ...potCautions,
  localRules,
];

/** Counts to go on with: twice as many, half as many. */
const countSteps = (count: number, say: (count: number) => string): NextStep[] =>
  [count * 2, Math.max(1, Math.round(count / 2))]
    .filter((other) => other !== count)
    .map((other) => ({ label: other === 1 ? '1 tin' : `${other} tins`, say: say(other) }));

const nextSteps = (wish: ScaleWish, name: string | undefined, lines: readonly RecipeLine[]): NextStep[] => {
  if (!name || wish.count === undefined || !wish.size) return [];
  const tins = (count: number): string => `${count} tins of ${sizeText(wish)}`;
  const [first] = lines;
  return [
    ...countSteps(wish.count, (count) => `scale "${name}" to ${tins(count)}`),
    {
      label: 'Record this pour',
      say: `poured ${tins(wish.count)} of "${name}" today`,
      form: { name: 'batch', filled: { recipe: name, make: tins(wish.count) } },
    },
    { label: 'Labels', say: `labels for "${name}", ${tins(wish.count)}` },
    ...(first
      ? [
          {
            label: `Swap ${shortName(first.ingredient)}`,
            say: `what can replace ${shortName(first.ingredient)} in "${name}"`,
          },
        ]
      : []),
  ];
};

// One literal: putting two objects together into a third is many times slower.
const figuresOf = (scaled: Scaled, pour: PourFigures | undefined, byVolume: boolean): Answer['figures'] => ({
  lines: scaled.lines.map(({ ingredient, percent, grams, drops, infusedWith }) => ({
    ingredient,
    percent,
    grams,
    ...(drops === undefined ? {} : { drops }),
    ...(infusedWith ? { infused_with: infusedWith } : {}),
  })),
  ...(scaled.strained.length > 0
    ? {
        strained: scaled.strained.map(({ ingredient, grams }) => ({
          ingredient,
          grams,
        })),
      }
    : {}),
  containers: scaled.containers ?? null,
  fill_g_each: scaled.fillGEach ?? null,
  net_g: scaled.netG,
  allowance_g: scaled.allowanceG,
  total_g: scaled.totalG,
  density_g_ml: scaled.densityGMl,
  step_g: scaled.stepG,
  loss_percent: scaled.lossPercent,
  first_pour_g_each: pour && byVolume ? Number(pour.eachG.toFixed(3)) : null,
  top_up_g_each: pour && byVolume ? Number(pour.topUpEachG.toFixed(3)) : null,
  top_up_g:
    pour && byVolume && scaled.containers !== undefined
      ? Number((pour.topUpEachG * scaled.containers).toFixed(2))
      : null,
  jug_ml: pour ? Math.ceil(pour.jugMl) : null,
});

const titleOf = (wish: ScaleWish, scaled: Scaled, name: string | undefined): string => {
  const what = name ?? 'Your recipe';
  if (scaled.containers !== undefined && wish.size)
    return `${what}: ${scaled.containers} × ${sizeText(wish)}`;
  return `${what}: ${atStep(scaled.totalG, stepDecimals(scaled.stepG))} g`;
};

/** Answers a scale request: the gram table with its total, what was assumed, and the warnings that matter. */
export const answerScale = (wish: ScaleWish, tools: Tools): Answer | Trouble => {
  const { settings } = toolsIn(wish.units, tools);
  const recipe = wish.recipe === undefined ? undefined : findRecipe(wish.recipe, tools.book);
  if (recipe && 'code' in recipe) return recipe;
  const lines: readonly RecipeLine[] = recipe?.lines ?? wish.lines ?? [];
  const target = targetOf(wish);
  if ('code' in target) return target;
  const lossPercent = wish.lossPercent ?? settings.lossPercent;
  const scaled = scaleRecipe({
    lines,
    target,
    lossPercent,
    stepG: wish.stepG ?? settings.stepG,
    region: settings.region,
  });
  if (!scaled.ok) return troubleOf(scaled.problem);
  const byVolume = wish.size?.unit === 'ml';
  const pour = pourOf(scaled.value);
  return {
    title: titleOf(wish, scaled.value, recipe?.name),
    blocks: [
      scaleTable(scaled.value, wish.units ?? settings.units),
      { kind: 'text', text: summary(scaled.value, wish) },
      ...pourText(pour, byVolume),
      ...strainedText(scaled.value),
      ...assumed(scaled.value, wish, settings.region),
    ],
    figures: figuresOf(scaled.value, pour, byVolume),
    warnings: warnings(scaled.value),
    next: nextSteps(wish, recipe?.name, lines),
  };
};
