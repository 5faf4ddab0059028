import { keptFor } from '../../core/kept.ts';
import { blendOf } from '../../core/melt/blend.ts';
import { firstPour, jugFor } from '../../core/melt/volume.ts';
import type { Resolved } from '../../core/resolve.ts';
import type { Scaled } from '../../core/scale.ts';
import type { Block } from '../answer.ts';
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

const perGram = keptFor((resolved: Resolved): PourPerGram | undefined => {
  const blend = blendOf(resolved.lines);
  const pour = blend.ok ? firstPour(blend.value, { grams: 1 }) : undefined;
  const jug = blend.ok ? jugFor(blend.value, 1) : undefined;
  if (!pour?.ok || !jug?.ok) return undefined;
  const { firstPourG, topUpG, pourC } = pour.value;
  return { first: firstPourG, topUp: topUpG, pourC, jugMl: jug.value.leastJugMl };
});

/**
 * Hot liquid to the fill line of a container, and what fills the dent that setting leaves. Undefined for fills by
 * weight, whose line nobody knows, and where the model has no figures.
 */
export const pourOf = (scaled: Scaled): PourFigures | undefined => {
  const { fillGEach, containers } = scaled;
  if (fillGEach === undefined || containers === undefined) return undefined;
  const one = perGram(scaled.resolved);
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
