import { describe, expect, it } from 'vitest';
import { isCheckable } from '../../../core/check/check.ts';
import { groupName, sharesOf } from '../../../core/check/composition.ts';
import { aromas } from '../../../core/data/essential-oils.ts';
import { allergenRows } from '../../../core/data/rules/allergens.ts';
import { limitedConstituents, ownLabelNames } from '../../../core/data/rules/constituents.ts';
import { limitRows } from '../../../core/data/rules/limits.ts';
import {
  informationOnly,
  lightRows,
  limitedIngredients,
  limitedSubstance,
} from '../../../core/data/rules/links.ts';
import { oilAllergenRows } from '../../../core/data/rules/oil-allergens.ts';
import { ruleSources } from '../../../core/data/rules/sources.ts';
import { watchedThings } from '../../../core/data/rules/watched.ts';
import { ingredientById } from '../../../core/ingredients.ts';

const twice = (list: readonly string[]): string[] => list.filter((each, at) => list.indexOf(each) !== at);

describe('limit rows', () => {
  const linked = new Set([
    ...Object.keys(limitedSubstance),
    ...Object.keys(limitedIngredients),
    ...Object.values(lightRows),
    ...informationOnly,
    'total-aroma',
  ]);

  it('should each be compared with something, or be there for information', () => {
    expect(limitRows.map(({ id }) => id).filter((id) => !linked.has(id))).toEqual([]);
  });

  it('should not be linked to rows that are not there', () => {
    const ids = new Set(limitRows.map(({ id }) => id));
    expect([...linked].filter((id) => !ids.has(id))).toEqual([]);
  });

  it('should have a figure, or say that none was found or that it is allowed', () => {
    for (const { limit, allowed, status, note, cite } of limitRows)
      expect(
        limit !== undefined || allowed === true || status === 'none-found' || Boolean(note ?? cite),
      ).toBe(true);
  });

  it('should only be called law with a place in it', () => {
    for (const row of limitRows.filter(({ kind }) => kind.startsWith('law'))) expect(row.cite).not.toBe('');
  });

  it('should have ISO dates', () => {
    for (const { from, until } of limitRows)
      for (const day of [from, until]) if (day !== undefined) expect(day).toMatch(/^20\d\d-\d\d-\d\d$/);
  });
});

describe('links', () => {
  it('should lead to ingredients of the library or watched things', () => {
    const ids = [
      ...Object.values(limitedIngredients).flat(),
      ...Object.keys(lightRows),
      ...Object.keys(ownLabelNames),
    ];
    expect(ids.filter((id) => !isCheckable(id))).toEqual([]);
    const oils = [...oilAllergenRows, ...limitedConstituents].flatMap(({ ingredients }) => ingredients);
    expect(oils.filter((id) => !isCheckable(id))).toEqual([]);
  });

  it('should name own entries by names of the list', () => {
    const names = new Set(allergenRows.map(({ name }) => name));
    const own = [
      ...Object.values(ownLabelNames),
      ...watchedThings.flatMap(({ labelName }) => labelName ?? []),
    ];
    expect(own.filter((name) => !names.has(name))).toEqual([]);
  });

  it('should know the label name of each constituent that is on the list', () => {
    const names = new Set(allergenRows.map(({ name }) => name));
    expect([...new Set(oilAllergenRows.map(({ name }) => name))].filter((name) => !names.has(name))).toEqual(
      [],
    );
    const library = aromas.flatMap(({ constituents }) =>
      constituents.allergens.map(({ name }) => groupName(name)),
    );
    // Pulegone is no entry of the list; everything else in the library's allergen column is one.
    expect([...new Set(library)].filter((name) => !names.has(name))).toEqual(['pulegone']);
  });

  it('should lead to light-sensitising oils of the library by the same figures', () => {
    for (const [id, row] of Object.entries(lightRows)) {
      const found = ingredientById(id);
      if (!found || !('limits' in found)) continue;
      expect(limitRows.find((each) => each.id === row)?.limit).toBe(found.limits.leaveOnMaxPercent);
    }
  });
});

describe('watched things', () => {
  it('should not be in the library, and have ids and names of their own', () => {
    expect(watchedThings.filter(({ id }) => ingredientById(id)).map(({ id }) => id)).toEqual([]);
    expect(twice(watchedThings.map(({ id }) => id))).toEqual([]);
    expect(twice(watchedThings.flatMap(({ names }) => names))).toEqual([]);
  });

  it('should have names in lower case', () => {
    for (const { names } of watchedThings) for (const name of names) expect(name).toBe(name.toLowerCase());
  });
});

describe('sources', () => {
  it('should each be there once and say how they were seen', () => {
    expect(twice(ruleSources.map(({ id }) => id))).toEqual([]);
    for (const { what } of ruleSources) expect(what.length).toBeGreaterThan(5);
  });

  it('should not be called read in a row when the source is from memory', () => {
    const seen = new Map<string, string>(ruleSources.map(({ id, seen: how }) => [id, how]));
    const claimed = [...limitRows, ...allergenRows, ...oilAllergenRows].filter(
      ({ status }) => status === 'read',
    );
    expect(claimed.filter(({ source }) => source.every((id) => seen.get(id) === 'memory'))).toEqual([]);
  });
});

describe('shares', () => {
  it('should take the higher of two tables', () => {
    const peppermint = sharesOf('peppermint-essential-oil', []);
    expect(peppermint.find(({ name }) => name === 'Limonene')).toMatchObject({ high: 5, certain: true });
  });

  it("should let the supplier's own figure replace any other", () => {
    const own = sharesOf('peppermint-essential-oil', [
      { ingredient: 'peppermint-essential-oil', name: 'limonene', percent: 1.5 },
    ]);
    expect(own.find(({ name }) => name === 'Limonene')).toMatchObject({ low: 1.5, high: 1.5, certain: true });
  });
});
