import { describe, expect, it } from 'vitest';
import { readDuration } from '../../bot/readers/duration.ts';
import { tokens } from '../../bot/readers/tokens.ts';

describe('a length of time', () => {
  it.each([
    ['2 h', 120],
    ['labour 15 an hour, 2 hours', 120],
    ['12 euros an hour, and a batch takes an hour and a half', 90],
    ['two and a half hours', 150],
    ['half an hour', 30],
    ['three quarters of an hour', 45],
    ['1 hour 15 minutes', 75],
    ['an hour and 20 minutes', 80],
    ['90 minutes', 90],
  ])('should be read in minutes: %s', (said, minutes) => {
    expect(readDuration(tokens(said))?.minutes).toBe(minutes);
  });

  it.each(['15 an hour', '12 euros an hour', 'twelve per hour', '12/h', 'no time'])(
    'should not be seen in a rate: %s',
    (said) => {
      expect(readDuration(tokens(said))).toBeUndefined();
    },
  );
});
