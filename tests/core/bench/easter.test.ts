import { expect, it } from 'vitest';
import { easterOf } from '../../../core/bench/days.ts';

// Dates of Easter Sunday as printed in calendars (US Naval Observatory, "The Date of Easter"; from memory).
it.each([
  [1961, '1961-04-02'],
  [2000, '2000-04-23'],
  [2008, '2008-03-23'],
  [2011, '2011-04-24'],
  [2024, '2024-03-31'],
  [2025, '2025-04-20'],
  [2026, '2026-04-05'],
  [2027, '2027-03-28'],
  [2038, '2038-04-25'],
])('should be the Sunday of Easter in %i', (year, day) => {
  expect(easterOf(year)).toBe(day);
});
