import { afterEach, describe, expect, it } from 'vitest';
import { benchOf } from '../../../core/book.ts';
import { type TestHouse, testHouse } from '../../helpers/house.ts';

// Names that are keys of every object in JavaScript: they are names like any other, or are asked back about.
const names = ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'valueOf'];

let house: TestHouse;
afterEach(() => {
  expect(house.faults).toEqual([]);
  expect(Object.keys(Object.prototype)).toEqual([]);
  expect(Object.prototype).not.toHaveProperty('lines');
});

describe('names that are keys of every object', () => {
  it.each(names)('should be a recipe like any other: %s', async (name) => {
    house = await testHouse();
    const missing = await house.say(`scale ${name} to 100 g`);
    expect('error' in missing).toBe(true);
    await house.say(`save recipe ${name}: 20 g beeswax, 80 g olive oil`);
    const book = await house.keeper.open('local');
    const saved = Object.values(book.state.recipes).map((recipe) => recipe.name);
    const scaled = await house.say(`scale ${name} to 100 g`);
    // Saved under its name and scaled by it, or neither.
    expect('answer' in scaled).toBe(saved.includes(name));
    if ('answer' in scaled) expect(scaled.answer.figures).toMatchObject({ total_g: 100 });
  });

  it.each(names)('should be a lot like any other: %s', async (name) => {
    house = await testHouse();
    const before = await house.say(`which batches used lot ${name}`);
    expect(JSON.stringify(before)).not.toMatch(/native code|\[object|undefined|NaN/);
    await house.say(`bought 500 g beeswax lot ${name}`);
    await house.say(`threw away 50 g of ${name}, rancid`);
    const { lots } = benchOf((await house.keeper.open('local')).state);
    for (const lot of lots.values()) expect(Object.keys(lot)).toContain('ingredient');
    expect(lots.size).toBeLessThanOrEqual(1);
  });

  it.each(names)('should be no herb, and no ingredient: %s', async (name) => {
    house = await testHouse();
    for (const text of [
      `infuse 40 g ${name} in sunflower oil`,
      `what is ${name}`,
      `20 g ${name}, 80 g olive oil to 100 g`,
      `${name} costs 5 per kg`,
    ]) {
      const reply = await house.say(text);
      expect('error' in reply, text).toBe(true);
      expect(JSON.stringify(reply)).not.toMatch(/native code|\[object|undefined|NaN/);
    }
  });
});
