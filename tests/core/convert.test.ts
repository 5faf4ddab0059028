import { fc, it } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import {
  type Converted,
  type ConvertProblem,
  type ConvertRequest,
  convertAmount,
} from '../../core/convert.ts';
import { regions } from '../../core/settings.ts';
import { massUnits, temperatureUnits, type Unit, volumeUnits } from '../../core/units.ts';
import { problemOf, worked } from '../helpers/lines.ts';

type Ask = Omit<ConvertRequest, 'region'> & Partial<Pick<ConvertRequest, 'region'>>;

const converted = (ask: Ask): Converted => worked(convertAmount({ region: 'eu', ...ask }));
const problem = (ask: Ask): ConvertProblem => problemOf(convertAmount({ region: 'eu', ...ask }));

describe('converting', () => {
  it('should bring ounces to grams without asking of what', () => {
    expect(converted({ value: 5, from: 'oz', to: 'g' })).toEqual({ value: 141.747615625, unit: 'g' });
  });

  it('should bring spoons to grams through the density, and tell which', () => {
    // 2 × 15 ml × 0.93 g/ml.
    expect(converted({ value: 2, from: 'tbsp', to: 'g', ingredient: 'shea-butter' })).toEqual({
      value: 27.9,
      unit: 'g',
      densityGMl: 0.93,
    });
  });

  it('should bring grams back to millilitres', () => {
    expect(converted({ value: 9.3, from: 'g', to: 'ml', ingredient: 'shea-butter' }).value).toBe(10);
  });

  it('should count 30 drops of an essential oil to the ml, and give the range of 20 to 40', () => {
    expect(converted({ value: 30, from: 'drop', to: 'ml', ingredient: 'peppermint-essential-oil' })).toEqual({
      value: 1,
      unit: 'ml',
      low: 0.75,
      high: 1.5,
      dropsPerMl: 30,
    });
    expect(
      converted({ value: 1, from: 'ml', to: 'drop', ingredient: 'peppermint-essential-oil' }),
    ).toMatchObject({
      value: 30,
      low: 20,
      high: 40,
    });
  });

  it('should count 20 drops of anything else to the ml, without a range', () => {
    const watery = { value: 1, unit: 'ml', dropsPerMl: 20 };
    expect(converted({ value: 20, from: 'drop', to: 'ml' })).toEqual(watery);
    expect(converted({ value: 20, from: 'drop', to: 'ml', ingredient: 'olive-oil' })).toEqual(watery);
  });

  it('should not give drops a range in drops', () => {
    const same = converted({ value: 7, from: 'drop', to: 'drop', ingredient: 'peppermint-essential-oil' });
    expect(same.value).toBe(7);
    expect(same).not.toHaveProperty('low');
  });

  it('should go down to absolute zero and no further', () => {
    expect(converted({ value: -273.15, from: 'C', to: 'F' }).value).toBe(-459.67);
    expect(converted({ value: -459.67, from: 'F', to: 'C' }).value).toBe(-273.15);
    expect(problem({ value: -273.2, from: 'C', to: 'F' })).toEqual({ code: 'below-absolute-zero' });
    expect(problem({ value: -460, from: 'F', to: 'F' })).toEqual({ code: 'below-absolute-zero' });
  });

  it.each<{ ask: Ask; expected: ConvertProblem }>([
    { ask: { value: 1, from: 'C', to: 'g' }, expected: { code: 'different-kinds', from: 'C', to: 'g' } },
    { ask: { value: 1, from: 'tsp', to: 'F' }, expected: { code: 'different-kinds', from: 'tsp', to: 'F' } },
    { ask: { value: 1, from: 'tsp', to: 'g' }, expected: { code: 'needs-ingredient', from: 'tsp', to: 'g' } },
    {
      ask: { value: 1, from: 'oz', to: 'fl oz' },
      expected: { code: 'needs-ingredient', from: 'oz', to: 'fl oz' },
    },
    {
      ask: { value: 1, from: 'tsp', to: 'g', ingredient: 'moon-dust' },
      expected: { code: 'unknown-ingredient', ingredient: 'moon-dust' },
    },
    {
      ask: { value: 1, from: 'tsp', to: 'g', ingredient: 'mica' },
      expected: { code: 'no-density', ingredient: 'mica', unit: 'tsp' },
    },
    {
      ask: { value: 1, from: 'g', to: 'drop', ingredient: 'mica' },
      expected: { code: 'no-density', ingredient: 'mica', unit: 'drop' },
    },
  ])('should not convert $ask.value $ask.from of $ask.ingredient to $ask.to', ({ ask, expected }) => {
    expect(problem(ask)).toEqual(expected);
  });
});

const value = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
const pairs = (units: readonly Unit[]): readonly (readonly [Unit, Unit])[] =>
  units.flatMap((from) => units.map((to) => [from, to] as const));

const thereAndBack = (ask: Ask): number => {
  const there = converted(ask);
  return converted({ ...ask, value: there.value, from: ask.to, to: ask.from }).value;
};

describe('there and back', () => {
  it.prop([value, fc.constantFrom('olive-oil', 'peppermint-essential-oil', 'honey')])(
    'should come back to the same amount for every pair of units in every region',
    (amount, ingredient) => {
      for (const region of regions) {
        for (const [from, to] of pairs([...massUnits, ...volumeUnits])) {
          const back = thereAndBack({ value: amount, from, to, ingredient, region });
          expect(Math.abs(back / amount - 1)).toBeLessThanOrEqual(1e-9);
        }
      }
    },
    30_000,
  );

  it.prop([fc.double({ min: -273, max: 1000, noNaN: true })])(
    'should come back to the same temperature',
    (amount) => {
      for (const [from, to] of pairs(temperatureUnits)) {
        expect(Math.abs(thereAndBack({ value: amount, from, to }) - amount)).toBeLessThanOrEqual(1e-9);
      }
    },
  );

  it.prop([value, fc.constantFrom(...pairs([...massUnits])), fc.constantFrom(...regions)])(
    'should not depend on the region between weights',
    (amount, [from, to], region) => {
      expect(converted({ value: amount, from, to, region })).toEqual(
        converted({ value: amount, from, to, region: 'us' }),
      );
    },
  );

  it.prop([value, fc.constantFrom(...volumeUnits), fc.constantFrom(...massUnits)])(
    'should keep the usual figure within the range of drops',
    (amount, volume, mass) => {
      for (const [from, to] of [
        [volume, mass],
        [mass, volume],
      ] as const) {
        const told = converted({ value: amount, from, to, ingredient: 'peppermint-essential-oil' });
        expect(told.low === undefined).toBe(volume !== 'drop');
        expect(told.low ?? told.value).toBeLessThanOrEqual(told.value);
        expect(told.high ?? told.value).toBeGreaterThanOrEqual(told.value);
      }
    },
  );
});
