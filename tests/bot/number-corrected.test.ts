import { describe, expect, it } from 'vitest';
import { withNumbersCorrected } from '../../bot/readers/number-corrected.ts';

describe('a number put right in mid-sentence', () => {
  it.each([
    ['workshop for 12, no, 14 people', 'workshop for 14 people'],
    ['for 12 people, sorry 14 people, 2 tins', 'for 14 people, 2 tins'],
    ['2 tins, no, 3 tins of 15 ml', '3 tins of 15 ml'],
    ['24 tins of 15 ml, make that 30 ml, Fernlea', '24 tins of 30 ml, Fernlea'],
    ['24 tins, make it 30', '30 tins'],
    ['for twelve, sorry, fourteen people', 'for fourteen people'],
    ['for 12 no 14 ppl', 'for 14 ppl'],
    ['a dozen, sorry, two dozen tins', 'two dozen tins'],
    ['14 people, not 12', '14 people'],
    ['tins are 0.37 not 0.35', 'tins are 0.37 '],
  ])('should be meant as it was said last: %s', (said, meant) => {
    expect(withNumbersCorrected(said)).toBe(meant);
  });

  it.each([
    '24 tins, no loss',
    '12 people, no 30 ml tins',
    '24 tins of 15 ml, no 5 % loss',
    'scale to 24 tins, no, 500 g',
    '20 g tins, not 15 ml',
    '2 tins, no, 12 people',
    'no, 40',
  ])('should leave another amount alone: %s', (said) => {
    expect(withNumbersCorrected(said)).toBe(said);
  });
});
