import { blendOf } from '../../core/melt/blend.ts';
import { firstPour, jugFor } from '../../core/melt/volume.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import type { Scaled } from '../../core/scale.ts';
import type { Region } from '../../core/settings.ts';
import type { Answer, Block } from '../answer.ts';
import { plain } from './numbers.ts';

export interface PourFigures {
  readonly eachG: number;
  readonly topUpEachG: number;
  readonly pourC: number;
  readonly jugMl: number;
}

/** Both pour and jug grow in proportion, so a recipe is reckoned once, for one gram. */
interface PourPerGram {
  readonly first: number;
  readonly topUp: number;
  readonly pourC: number;
  readonly jugMl: number;
}

const perGram = (scaled: Scaled): PourPerGram | undefined => {
  const blend = blendOf(scaled.resolved.lines);
  const pour = blend.ok ? firstPour(blend.value, { grams: 1 }) : undefined;
  const jug = blend.ok ? jugFor(blend.value, 1) : undefined;
  if (!pour?.ok || !jug?.ok) return undefined;
  const { firstPourG, topUpG, pourC } = pour.value;
  return { first: firstPourG, topUp: topUpG, pourC, jugMl: jug.value.leastJugMl };
};

// A saved recipe's lines are the same array until it is edited, so its pour is reckoned once a version and region.
const known = new WeakMap<readonly RecipeLine[], Map<Region, PourPerGram | undefined>>();

const knownPerGram = (
  lines: readonly RecipeLine[],
  region: Region,
  scaled: Scaled,
): PourPerGram | undefined => {
  const byRegion = known.get(lines) ?? new Map<Region, PourPerGram | undefined>();
  if (!known.has(lines)) known.set(lines, byRegion);
  if (!byRegion.has(region)) byRegion.set(region, perGram(scaled));
  return byRegion.get(region);
};

/**
 * Hot liquid to the fill line of a container, and what fills the dent that setting leaves. Undefined for fills by
 * weight, whose line nobody knows, and where the model has no figures.
 */
export const pourOf = (
  scaled: Scaled,
  lines: readonly RecipeLine[],
  region: Region,
): PourFigures | undefined => {
  const { fillGEach, containers } = scaled;
  if (fillGEach === undefined || containers === undefined) return undefined;
  const one = knownPerGram(lines, region, scaled);
  if (!one) return undefined;
  return {
    eachG: one.first * fillGEach,
    topUpEachG: one.topUp * fillGEach,
    pourC: one.pourC,
    jugMl: one.jugMl * scaled.totalG,
  };
};

/** Jugs are bought in steps; a figure to the millilitre would claim too much. */
const jugStepMl = 50;

const jugText = ({ jugMl }: PourFigures): string =>
  `Jug: at least ${Math.ceil(jugMl / jugStepMl) * jugStepMl} ml, so that it is two thirds full at most.`;

/** @param byVolume true when containers are filled to a line, so that the hot fill can be told. */
export const pourText = (pour: PourFigures | undefined, byVolume: boolean): Block[] => {
  if (!pour) return [];
  const hot = `Poured at about ${Math.round(pour.pourC)} °C, about ${plain(pour.eachG, 1)} g fills each to the line; about ${plain(pour.topUpEachG, 1)} g more tops up the dent once it has set. `;
  return [{ kind: 'text', text: `${byVolume ? hot : ''}${jugText(pour)}` }];
};

export const pourFigures = (
  pour: PourFigures | undefined,
  containers: number | undefined,
  byVolume: boolean,
): Answer['figures'] => ({
  first_pour_g_each: pour && byVolume ? Number(pour.eachG.toFixed(3)) : null,
  top_up_g_each: pour && byVolume ? Number(pour.topUpEachG.toFixed(3)) : null,
  top_up_g:
    pour && byVolume && containers !== undefined ? Number((pour.topUpEachG * containers).toFixed(2)) : null,
  jug_ml: pour ? Math.ceil(pour.jugMl) : null,
});
