import { blendOf } from '../../core/melt/blend.ts';
import { firstPour, jugFor } from '../../core/melt/volume.ts';
import type { Scaled } from '../../core/scale.ts';
import type { Answer, Block } from '../answer.ts';
import { plain } from './numbers.ts';

export interface PourFigures {
  readonly eachG: number;
  readonly topUpEachG: number;
  readonly pourC: number;
  readonly jugMl: number;
}

/** Jugs are bought in steps; a figure to the millilitre would claim too much. */
const jugStepMl = 50;

export const pourText = (pour: PourFigures | undefined): Block[] =>
  pour
    ? [
        {
          kind: 'text',
          text: `Poured at about ${Math.round(pour.pourC)} °C, about ${plain(pour.eachG, 1)} g fills each to the line; about ${plain(pour.topUpEachG, 1)} g more tops up the dent once it has set. Jug: at least ${Math.ceil(pour.jugMl / jugStepMl) * jugStepMl} ml, so that it is two thirds full at most.`,
        },
      ]
    : [];

export const pourFigures = (
  pour: PourFigures | undefined,
  containers: number | undefined,
): Answer['figures'] => ({
  first_pour_g_each: pour ? Number(pour.eachG.toFixed(3)) : null,
  top_up_g_each: pour ? Number(pour.topUpEachG.toFixed(3)) : null,
  top_up_g: pour && containers !== undefined ? Number((pour.topUpEachG * containers).toFixed(2)) : null,
  jug_ml: pour ? Math.ceil(pour.jugMl) : null,
});

/** Hot liquid to the fill line, and what fills the dent that setting leaves. Undefined where the model has no figures. */
export const pourOf = (scaled: Scaled): PourFigures | undefined => {
  const { fillGEach, containers } = scaled;
  if (fillGEach === undefined || containers === undefined) return undefined;
  const blend = blendOf(scaled.resolved.lines);
  const pour = blend.ok ? firstPour(blend.value, { grams: fillGEach }) : undefined;
  const jug = blend.ok ? jugFor(blend.value, scaled.totalG) : undefined;
  if (!pour?.ok || !jug?.ok) return undefined;
  return {
    eachG: pour.value.firstPourG,
    topUpEachG: pour.value.topUpG,
    pourC: pour.value.pourC,
    jugMl: jug.value.leastJugMl,
  };
};
