import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blendDensity } from '../../../core/density.ts';
import type { Blend } from '../../../core/melt/blend.ts';
import { fullyMeltedC } from '../../../core/melt/temperatures.ts';
import { firstPour, jugFor, volumeMlPerG } from '../../../core/melt/volume.ts';
import { blended, linesOf, type Recipe, worked } from './blends.ts';

const mlPerG = (blend: Blend, celsius: number): number => worked(volumeMlPerG(blend, celsius));

/** Apricot kernel oil has the 0.915 g/ml of the worked example. */
const stick = { beeswax: 20, 'cocoa-butter': 15, 'shea-butter': 15, 'apricot-kernel-oil': 50 };

const shrinkPercent = (recipe: Recipe, hotC: number): number => {
  const blend = blended(recipe);
  return 100 * (1 - mlPerG(blend, 20) / mlPerG(blend, hotC));
};

describe('volume', () => {
  // The worked example of the model, not a measurement.
  it('should give 1.1496 ml/g at 70 °C and 1.0744 at 20 °C for a butter stick', () => {
    const blend = blended(stick);
    expect(mlPerG(blend, 70)).toBeCloseTo(1.1496, 4);
    expect(mlPerG(blend, 20)).toBeCloseTo(1.0744, 4);
    expect(shrinkPercent(stick, 70)).toBeCloseTo(6.5, 1);
  });

  it('should shrink beeswax by about 13 % and cocoa butter by about 9.5 % (worked example)', () => {
    expect(Math.abs(shrinkPercent({ beeswax: 1 }, 70) - 13)).toBeLessThanOrEqual(0.6);
    expect(Math.abs(shrinkPercent({ 'cocoa-butter': 1 }, 70) - 9.5)).toBeLessThanOrEqual(0.6);
  });

  it('should set beeswax to 0.958-0.970 g/ml within 1.5 % (S-DENS, memory)', () => {
    const density = 1 / mlPerG(blended({ beeswax: 1 }), 20);
    expect(density).toBeGreaterThan(0.958 * 0.985);
    expect(density).toBeLessThan(0.97 * 1.015);
  });

  it('should agree with the densities of the library at 20 °C within 4 %', () => {
    for (const recipe of [stick, { beeswax: 20, 'olive-oil': 80 }, { 'cocoa-butter': 60, 'olive-oil': 40 }]) {
      const { densityGMl } = blendDensity(linesOf(recipe));
      expect(Math.abs(densityGMl * mlPerG(blended(recipe), 20) - 1)).toBeLessThanOrEqual(0.04);
    }
  });
});

describe('first pour and top-up', () => {
  it('should fill the container with both together', () => {
    const blend = blended(stick);
    const pour = firstPour(blend, { ml: 15 });
    expect(pour.ok).toBe(true);
    if (!pour.ok) return;
    const { pourC, firstPourG, topUpG, dentMl, shrinkPercent: shrink } = pour.value;
    expect(firstPourG * mlPerG(blend, pourC)).toBeCloseTo(15, 9);
    expect((firstPourG + topUpG) * mlPerG(blend, 20)).toBeCloseTo(15, 9);
    expect(dentMl).toBeCloseTo((15 * shrink) / 100, 9);
    expect(topUpG).toBeGreaterThan(0.5);
    expect(topUpG).toBeLessThan(1.2);
  });

  it('should make up exactly the grams that a container is to hold', () => {
    const pour = firstPour(blended(stick), { grams: 14 });
    expect(pour.ok && pour.value.firstPourG + pour.value.topUpG).toBeCloseTo(14, 9);
  });

  it('should ask for a jug that the hot batch fills to two thirds', () => {
    const blend = blended(stick);
    const jug = jugFor(blend, 300);
    expect(jug.ok && jug.value.hotMl).toBeCloseTo(300 * mlPerG(blend, (fullyMeltedC(blend) ?? 0) + 5.5), 9);
    expect(jug.ok && jug.value.leastJugMl / jug.value.hotMl).toBeCloseTo(1.5, 9);
    expect(jugFor(blended({ 'olive-oil': 1 }), 91.2)).toMatchObject({ ok: true });
    expect(jugFor(blend, 0)).toEqual({ ok: false, problem: { code: 'bad-fill', amount: 0 } });
  });

  it('should grow in proportion to the container', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 5000, noNaN: true }), (ml) => {
        const one = firstPour(blended(stick), { ml: 1 });
        const many = firstPour(blended(stick), { ml });
        expect(one.ok && many.ok && many.value.topUpG / one.value.topUpG).toBeCloseTo(ml, 6);
      }),
    );
  });

  it('should refuse impossible temperatures', () => {
    expect(volumeMlPerG(blended(stick), Number.NaN)).toMatchObject({ ok: false });
  });

  it('should refuse impossible containers and blends that do not set', () => {
    const blend = blended(stick);
    for (const ml of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(firstPour(blend, { ml })).toEqual({ ok: false, problem: { code: 'bad-fill', amount: ml } });
    const oil = { ok: false, problem: { code: 'does-not-set' } };
    expect(firstPour(blended({ 'olive-oil': 1 }), { ml: 15 })).toEqual(oil);
    expect(firstPour(blended({ 'olive-oil': 98, beeswax: 2 }), { ml: 15 })).toEqual(oil);
  });
});
