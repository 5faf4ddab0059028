import { defined } from '../defined.ts';
import { blendOf } from '../melt/blend.ts';
import { heatPlan } from '../melt/heat.ts';
import { softensC } from '../melt/temperatures.ts';
import { firstPour, jugFor } from '../melt/volume.ts';
import type { Kit } from './kit.ts';

/** What the melting model says of one recipe; all temperatures in °C. */
export interface Melting {
  readonly hotMlPerG: number;
  /** The volume is not the model's but the set blend's with a tenth on top: the model lacks an ingredient. */
  readonly rough: boolean;
  readonly pourC?: number;
  readonly bathC?: readonly [number, number];
  readonly addAromaBelowC?: number;
  readonly softensC?: number;
  /** Hot liquid to the fill line and what fills the dent, as shares of the set fill. */
  readonly firstPour?: { readonly first: number; readonly topUp: number };
}

/** Melts grow by under a tenth on the way to their pour temperature (0.75 ‰ a kelvin and what freezing takes). */
const roughGrowth = 1.1;

/** Volume at the pour temperature, temperatures and first pour of a kit's recipe. */
export const meltingOf = (kit: Kit): Melting => {
  const { resolved, densityGMl } = kit.scaled;
  const blend = blendOf(resolved.lines);
  const jug = blend.ok ? jugFor(blend.value, 1) : undefined;
  if (!blend.ok || !jug?.ok) return { hotMlPerG: roughGrowth / densityGMl, rough: true };
  const plan = heatPlan(blend.value);
  const pour = firstPour(blend.value, { grams: 1 });
  return {
    hotMlPerG: jug.value.hotMl,
    rough: false,
    ...defined({ softensC: softensC(blend.value) }),
    ...(plan ? { pourC: plan.pourC, bathC: plan.bathC, addAromaBelowC: plan.addAromaBelowC } : {}),
    ...(pour.ok ? { firstPour: { first: pour.value.firstPourG, topUp: pour.value.topUpG } } : {}),
  };
};

/** A jug is filled to two thirds at most (safety rule of the trade, no source). */
export const fullestShare = 2 / 3;

/** Jugs that kitchens have, in ml; the first is taken unless it is too small for one person's kit. */
const usualJugsMl = [500, 1000, 2000] as const;

export interface JugPlan {
  readonly jugMl: number;
  readonly jugs: number;
  /** Fewest and most people who share a jug; one person's kit in several jugs is `[1, 1]` with `jugsPerPerson` > 1. */
  readonly people: readonly [number, number];
  readonly jugsPerPerson: number;
  /** Hot volume in the fullest jug, and of everything with its spare, at the pour temperature. */
  readonly hotMlFullest: number;
  readonly hotMlAll: number;
  readonly gramsFullest: number;
}

interface JugsAsked {
  readonly people: number;
  readonly meltedGEach: number;
  /** Everything set aside, spare and all. */
  readonly totalG: number;
  readonly hotMlPerG: number;
  readonly jugMl?: number;
}

/**
 * How many jugs melt everything with its spare, none more than two thirds full at the pour temperature, and how many
 * people share one. A kit that is too big for a jug takes several.
 */
export const jugsFor = ({ people, meltedGEach, totalG, hotMlPerG, jugMl }: JugsAsked): JugPlan => {
  const kitMl = meltedGEach * hotMlPerG;
  const size = jugMl ?? usualJugsMl.find((ml) => ml * fullestShare >= kitMl) ?? 2000;
  const holds = size * fullestShare;
  const hotMlAll = totalG * hotMlPerG;
  const kitsEach = Math.floor(holds / kitMl + 1e-9);
  const forAll = Math.ceil(hotMlAll / holds - 1e-9);
  if (kitsEach < 1) {
    const perPerson = Math.ceil(kitMl / holds - 1e-9);
    return {
      jugMl: size,
      jugs: Math.max(people * perPerson, forAll),
      people: [1, 1],
      jugsPerPerson: perPerson,
      hotMlFullest: kitMl / perPerson,
      hotMlAll,
      gramsFullest: meltedGEach / perPerson,
    };
  }
  const jugs = Math.max(Math.ceil(people / kitsEach), forAll);
  const most = Math.ceil(people / jugs);
  return {
    jugMl: size,
    jugs,
    people: [Math.floor(people / jugs), most],
    jugsPerPerson: 1,
    hotMlFullest: Math.max(most * kitMl, hotMlAll / jugs),
    hotMlAll,
    gramsFullest: most * meltedGEach,
  };
};

export interface Baths {
  readonly jugs: number;
  /** Jugs that melt at the same time, one to a water bath. */
  readonly atOnce: number;
  readonly rounds: number;
}

/** Rounds of melting when there are fewer water baths, or fewer jugs, than are needed at once. */
export const bathsFor = (
  jugs: number,
  hotPlates: number | undefined,
  jugsThere: number | undefined,
): Baths => {
  const atOnce = Math.min(jugs, hotPlates ?? jugs, jugsThere ?? jugs);
  return { jugs, atOnce, rounds: Math.ceil(jugs / atOnce) };
};
