import { describe, expect, it } from 'vitest';
import {
  blendsMelting,
  firmnessSeen,
  knownGaps,
  settingShares,
  slipPoints,
  softestMixes,
  solidFat,
} from './melt-measurements.ts';
import { holds, type Row } from './melt-rows.ts';

const expectHeld = (row: Row): void => {
  const value = row.model();
  expect(value, `${row.claim} (${row.source})`).toBeGreaterThanOrEqual(row.low - row.tolerance);
  expect(value, `${row.claim} (${row.source})`).toBeLessThanOrEqual(row.high + row.tolerance);
};

describe('solid fat of whole fats (memory: no proof)', () => {
  it.each(solidFat)('should hold $claim: $low % ($use)', expectHeld);

  it('should stay within 6 points rms on the origins of cocoa butter that were not used for setting', () => {
    const heldOut = [...solidFat, ...knownGaps].filter(
      ({ claim, use }) => claim.startsWith('solids of cocoa butter') && use === 'held-out',
    );
    expect(heldOut).toHaveLength(12);
    const squares = heldOut.reduce((sum, { model, low }) => sum + (model() - low) ** 2, 0);
    expect(Math.sqrt(squares / heldOut.length)).toBeLessThanOrEqual(6);
  });
});

describe('slip and clear points of whole fats', () => {
  it.each(slipPoints)('should hold $claim: $low-$high °C ($mark, $use)', expectHeld);
});

describe('wax in oil and whole blends', () => {
  it.each(blendsMelting)('should hold $claim: $low °C ($mark, $use)', expectHeld);
});

describe('cocoa butter with coconut oil', () => {
  it.each(softestMixes)('should hold $claim: $low % coconut oil ($mark, $use)', expectHeld);
});

describe('what sets, and how firm', () => {
  it.each(settingShares)('should hold $claim: $low % ($mark, $use)', expectHeld);
  it.each(firmnessSeen)('should hold $claim ($mark, $use)', expectHeld);
});

describe('known gaps', () => {
  it.each(knownGaps)('should still miss $claim, because $why', (gap) => {
    expect(Number.isFinite(gap.model())).toBe(true);
    expect(holds(gap)).toBe(false);
  });
});
