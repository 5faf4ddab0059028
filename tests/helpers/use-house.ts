import { afterEach, expect } from 'vitest';
import type { TestHouse } from './house.ts';

/** Keeps the house that a test opened: after the test no fault of the program may have been met in it. */
export const useHouse = () => {
  let house: TestHouse | undefined;
  afterEach(() => {
    expect(house?.faults).toEqual([]);
    house = undefined;
  });
  return <H extends TestHouse>(made: H): H => {
    house = made;
    return made;
  };
};
