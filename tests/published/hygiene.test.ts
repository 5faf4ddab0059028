import { describe, expect, it } from 'vitest';
import { hygiene } from '../../core/workshop/hygiene.ts';

/**
 * Figures of the bench against the pages they come from: a university safety page and an infection-control review on
 * alcohol (read), general first-aid pages on burns (read second-hand; 20 minutes is the usual official advice, memory),
 * a general science page on float glass (read second-hand).
 */
describe('alcohol for the bench (university safety page, infection-control review, read)', () => {
  it('should name 70 to 80 % by volume, and at least 3 minutes wet', () => {
    expect(hygiene.alcoholPercent.value).toEqual([70, 80]);
    expect(hygiene.wetMin.value).toBe(3);
  });
});

describe('heat', () => {
  it('should cool a burn for the 20 minutes that are the long end of the 10 to 20 the pages give', () => {
    expect(hygiene.coolBurnMin.value).toBe(20);
  });

  it('should warm jars so that the jump from the pour is under the 40 °C that break ordinary glass', () => {
    // A balm is poured at 60 to 75 °C: from 35 °C at least, the jump is 40 °C at most.
    const [coldest] = hygiene.warmJarsC.value;
    expect(75 - (coldest ?? 0)).toBeLessThanOrEqual(hygiene.glassJumpC.value);
  });

  it('should say that 70 % alcohol lights at room temperature (flash point about 17 °C, memory)', () => {
    expect(hygiene.alcoholFlashC.value).toBeLessThan(20);
    expect(hygiene.alcoholFlashC.how).toBe('memory');
  });
});
