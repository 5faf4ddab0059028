import { containerThing } from '../../core/cost/prices.ts';
import { type ContainersToBuy, containersToBuy } from '../../core/workshop/shopping.ts';
import { lengthMin } from '../../core/workshop/timeline.ts';
import { spareOf, type WorkshopRecipe } from '../../core/workshop/workshop.ts';
import type { Answer } from '../answer.ts';
import type { FigureValue } from '../figures.ts';
import type { Tools } from '../topic.ts';
import type { Planned } from './workshop-plan.ts';
import { clockAt, isBefore, longStep } from './workshop-steps.ts';

const rounded = (value: number, decimals = 2): number => Number(value.toFixed(decimals));

const pair = (range: readonly [number, number] | undefined): FigureValue =>
  range ? range.map((each) => rounded(each, 1)) : null;

const recipeFigures = (recipe: WorkshopRecipe, { wish, makings }: Planned, at: number): FigureValue => {
  const { kit, melting, totalG } = recipe;
  const making = wish.makings[at];
  const pour = making?.size.unit === 'ml' ? melting.firstPour : undefined;
  return {
    recipe: makings[at]?.name ?? null,
    each: making?.each ?? null,
    container: making?.container ?? null,
    fill_g_each: kit.fillGEach,
    first_pour_g_each: pour ? rounded(pour.first * kit.fillGEach, 3) : null,
    top_up_g_each: pour ? rounded(pour.topUp * kit.fillGEach, 3) : null,
    kit_g: kit.weighedG,
    net_g: rounded(kit.netG, 4),
    total_g: totalG,
    density_g_ml: kit.scaled.densityGMl,
    bath_c: pair(melting.bathC),
    pour_c: melting.pourC === undefined ? null : rounded(melting.pourC, 1),
  };
};

const perPerson = ({ plan, makings, wish }: Planned): FigureValue => {
  const several = makings.length > 1;
  const named = (at: number) => (several ? { recipe: makings[at]?.name ?? `recipe ${at + 1}` } : {});
  return {
    lines: plan.recipes.flatMap(({ kit }, at) =>
      kit.lines.map(({ ingredient, percent, grams, infusedWith }) => ({
        ...named(at),
        ingredient,
        percent,
        grams,
        ...(infusedWith ? { infused_with: infusedWith } : {}),
      })),
    ),
    total_g: plan.perPersonG,
    net_g: rounded(
      plan.recipes.reduce((sum, { kit }) => sum + kit.netG, 0),
      4,
    ),
    containers: wish.makings.reduce((sum, { each }) => sum + each, 0),
    together: plan.recipes.flatMap(({ kit }, at) =>
      kit.together.map(({ ingredient, percent, gramsEach }) => ({
        ...named(at),
        ingredient,
        percent,
        grams_about: rounded(gramsEach, 4),
      })),
    ),
  };
};

const jugFigures = ({ plan, makings }: Planned): FigureValue =>
  plan.recipes.map(({ jugs, melting }, at) => ({
    recipe: makings[at]?.name ?? null,
    jug_ml: jugs.jugMl,
    count: jugs.jugs,
    people_each: [...jugs.people],
    hot_ml: rounded(jugs.hotMlAll, 1),
    hot_ml_fullest: rounded(jugs.hotMlFullest, 1),
    full_percent: rounded((100 * jugs.hotMlFullest) / jugs.jugMl, 1),
    pour_c: melting.pourC === undefined ? null : rounded(melting.pourC, 1),
  }));

/** Containers to buy, by kind; packs where the group noted how many come together. */
export const containersOf = ({ wish, sparePercent }: Planned, tools: Tools): readonly ContainersToBuy[] =>
  wish.makings.map(({ each, container, size }) => {
    const count = wish.people * each;
    const need = count + spareOf(count, sparePercent);
    return containersToBuy(container, containerThing(container, size), need, tools.book.state.prices);
  });

const timelineFigures = (planned: Planned, decimals: number): FigureValue => {
  const { start } = planned.wish;
  return planned.plan.timeline.map((entry) => ({
    at_min: entry.atMin,
    minutes: entry.minutes,
    step: entry.step,
    ...(start !== undefined && !isBefore(entry) ? { clock: clockAt(start, entry.atMin) } : {}),
    ...(entry.rounds ? { rounds: [...entry.rounds] } : {}),
    text: longStep(entry, planned, decimals),
  }));
};

const infuseFigures = ({ plan }: Planned): FigureValue =>
  plan.steeped.ahead.map(({ herb, oil, infusion, ways }) => ({
    herb,
    oil,
    herb_g: infusion.herbG,
    oil_in_g: infusion.oilInG,
    oil_in_sure_g: infusion.oilInSureG,
    uptake_g: infusion.uptakeG,
    oil_out_g: infusion.oilOutG,
    hours: [...ways.hours],
    bath_c: [...ways.bathC],
    cold_weeks: [...ways.coldWeeks],
  }));

const shoppingFigures = ({ plan }: Planned): FigureValue =>
  plan.shopping.map(({ ingredient, needG, stockG, gramsToBuy, packG, packs }) => ({
    ingredient,
    need_g: needG,
    grams_to_buy: gramsToBuy,
    ...(stockG === undefined ? {} : { stock_g: stockG }),
    ...(packG === undefined ? {} : { pack_g: packG, packs: packs ?? 0 }),
  }));

/** The contract's figures; grams of a person's lines sum to the person's total, those of `lines` to `total_g`. */
export const workshopFigures = (planned: Planned, tools: Tools, decimals: number): Answer['figures'] => {
  const { plan, wish, sparePercent, lossPercent } = planned;
  return {
    people: wish.people,
    per_person: perPerson(planned),
    recipes: plan.recipes.map((recipe, at) => recipeFigures(recipe, planned, at)),
    lines: plan.lines.map((line) => ({
      ingredient: line.ingredient,
      percent: line.percent,
      grams: line.grams,
      per_person_g: line.perPersonG,
      kits_g: line.kitsG,
      spare_g: line.spareG,
      ...(line.infusedWith ? { infused_with: line.infusedWith } : {}),
      ...(line.together ? { together: true } : {}),
    })),
    kits_g: plan.kitsG,
    spare_g: plan.spareG,
    total_g: plan.totalG,
    spare_percent: sparePercent,
    loss_percent: lossPercent,
    step_g: wish.stepG ?? tools.settings.stepG,
    containers: plan.containers,
    spare_containers: plan.spareContainers,
    infuse: infuseFigures(planned),
    jugs: jugFigures(planned),
    baths: { jugs: plan.baths.jugs, at_once: plan.baths.atOnce, rounds: plan.baths.rounds },
    kit: plan.equipment.map(({ what, count }) => ({ what, count })),
    timeline: timelineFigures(planned, decimals),
    length_min: lengthMin(plan.timeline),
    shopping: shoppingFigures(planned),
    containers_to_buy: containersOf(planned, tools).map(({ container, need, toBuy, pack }) => ({
      container,
      need,
      to_buy: toBuy,
      ...(pack === undefined ? {} : { pack }),
    })),
    start: wish.start ?? null,
    day: wish.day ?? null,
    room: wish.room ?? null,
  };
};
