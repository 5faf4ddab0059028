import { describe, expect, it } from 'vitest';
import { firmness, structureAt } from '../../../core/melt/firmness.ts';
import { fullyMeltedC, softensC, solidPercent } from '../../../core/melt/temperatures.ts';
import { blended, worked } from './blends.ts';
import { goldenRows } from './golden-rows.ts';

// These values come from a prototype of the same model. They check the implementation; they prove nothing about nature.
describe.each(goldenRows)('golden blend: $name, $state', (row) => {
  const blend = blended(row.recipe);

  it('should have the solids of the prototype within 0.05 points', () => {
    for (const [place, expected] of row.solidPercent.entries()) {
      const percent = solidPercent(blend, 20 + 5 * place, row.state);
      expect(percent.ok && Math.abs(percent.value - expected)).toBeLessThanOrEqual(0.05);
    }
  });

  it('should have its temperatures within 0.05 °C', () => {
    expect(Math.abs((fullyMeltedC(blend, row.state) ?? Number.NaN) - row.fullyMeltedC)).toBeLessThanOrEqual(
      0.05,
    );
    expect(Math.abs((softensC(blend, row.state) ?? Number.NaN) - row.softensC)).toBeLessThanOrEqual(0.05);
  });

  it('should have its firmness within 0.5 and its structure within half a printed unit', () => {
    expect(Math.abs(structureAt(blend.freezing[row.state], 20) - row.structure20)).toBeLessThanOrEqual(6e-6);
    for (const [place, expected] of row.firmness.entries())
      expect(Math.abs(worked(firmness(blend, 20 + 5 * place, row.state)) - expected)).toBeLessThanOrEqual(
        0.5,
      );
  });
});
