import fc from 'fast-check';
import { expect, it } from 'vitest';

it('should draw the same random inputs in every run', () => {
  const drawn = (seed?: number) => {
    const seen: number[] = [];
    fc.assert(
      fc.property(fc.integer(), (value) => void seen.push(value)),
      seed === undefined ? {} : { seed },
    );
    return seen;
  };
  expect(fc.readConfigureGlobal().seed).toBeTypeOf('number');
  expect(drawn()).toEqual(drawn());
  expect(drawn(1)).not.toEqual(drawn());
});
