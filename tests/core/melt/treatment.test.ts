import { describe, expect, it } from 'vitest';
import { ingredientById, ingredients } from '../../../core/ingredients.ts';
import { blendOf } from '../../../core/melt/blend.ts';
import { type Treatment, treatmentOf } from '../../../core/melt/treatment.ts';
import { linesOf, type Recipe } from './blends.ts';

const treated = (id: string): Treatment | undefined => {
  const ingredient = ingredientById(id);
  return ingredient && treatmentOf(ingredient);
};

describe('how the model takes each ingredient of the library', () => {
  it('should take every liquid vegetable oil as liquid oil, three by their own figures', () => {
    const own = ['jojoba-oil', 'castor-oil', 'fractionated-coconut-oil'];
    for (const { id, kind } of ingredients.filter((ingredient) => ingredient.kind === 'liquid-oil'))
      expect(treated(id), `${id} (${kind})`).toMatchObject(
        own.includes(id) ? { by: 'own' } : { by: 'class', like: 'liquid-oil' },
      );
  });

  it('should take every essential oil, resinoid and flavour as essential oil', () => {
    const aromas = ingredients.filter(({ kind }) => ['essential-oil', 'resinoid', 'flavour'].includes(kind));
    expect(aromas.length).toBeGreaterThan(30);
    for (const { id } of aromas)
      expect(treated(id), id).toMatchObject({ by: 'class', like: 'essential-oil' });
  });

  it('should have figures for every butter and animal fat', () => {
    for (const { id } of ingredients.filter(({ kind }) => kind === 'butter' || kind === 'animal-fat'))
      expect(treated(id)?.kind, id).toBe('melts');
  });

  it('should know exactly these waxes and refuse the others by name', () => {
    const waxes = ingredients.filter(({ kind }) => kind === 'wax').map(({ id }) => id);
    const known = [
      'beeswax',
      'beeswax-white',
      'candelilla-wax',
      'carnauba-wax',
      'rice-bran-wax',
      'sunflower-wax',
    ];
    expect(waxes.filter((id) => treated(id)?.kind === 'melts').sort()).toEqual([...known].sort());
    for (const id of waxes.filter((wax) => !known.includes(wax)))
      expect(blendOf(linesOf({ 'olive-oil': 80, [id]: 20 }))).toEqual({
        ok: false,
        problem: { code: 'no-melting-data', ingredients: [id] },
      });
  });

  it('should leave out powders, herbs and water', () => {
    for (const { id } of ingredients.filter(({ kind }) => kind === 'herb'))
      expect(treated(id), id).toEqual({ kind: 'left-out', why: 'herb' });
    expect(treated('honey')).toEqual({ kind: 'left-out', why: 'water-based' });
    for (const id of ['mica', 'zinc-oxide', 'arrowroot-starch', 'stevia', 'allantoin', 'cocoa-powder'])
      expect(treated(id), id).toEqual({ kind: 'left-out', why: 'powder' });
    expect(treated('propolis-extract')).toEqual({ kind: 'left-out', why: 'not-dissolved' });
  });

  it('should say which additives are taken as something close', () => {
    for (const id of ['menthol-crystals', 'camphor', 'flavour-oil', 'vanilla-oleoresin'])
      expect(treated(id), id).toMatchObject({ by: 'stand-in', like: 'essential-oil' });
    for (const id of ['tocopheryl-acetate', 'rosemary-antioxidant', 'squalane', 'bisabolol'])
      expect(treated(id), id).toMatchObject({ by: 'stand-in', like: 'vitamin-e' });
    for (const id of ['vitamin-e', 'stearic-acid', 'cetyl-alcohol'])
      expect(treated(id), id).toMatchObject({ by: 'own', like: id });
  });
});

describe('recipes', () => {
  const problem = (recipe: Recipe): unknown => {
    const blend = blendOf(linesOf(recipe));
    return blend.ok ? undefined : blend.problem;
  };

  it('should list what is left out with its share of the whole, and not count it', () => {
    const blend = blendOf(linesOf({ beeswax: 18, 'olive-oil': 72, mica: 6, calendula: 4 }));
    expect(blend.ok && blend.value.leftOut).toEqual([
      { ingredient: 'mica', percent: 6, why: 'powder' },
      { ingredient: 'calendula', percent: 4, why: 'herb' },
    ]);
    expect(blend.ok && blend.value.parts.map(({ share }) => share)).toEqual([0.2, 0.8]);
  });

  it('should refuse nothing, nonsense and the unknown', () => {
    expect(problem({})).toEqual({ code: 'no-lines' });
    expect(problem({ beeswax: 0 })).toEqual({ code: 'no-lines' });
    expect(problem({ beeswax: -1, 'olive-oil': 2 })).toMatchObject({ code: 'bad-weight', weight: -1 });
    expect(problem({ beeswax: Number.NaN })).toMatchObject({ code: 'bad-weight' });
    expect(problem({ beeswax: Number.POSITIVE_INFINITY })).toMatchObject({ code: 'bad-weight' });
    expect(problem({ beeswax: 1e308, 'olive-oil': 1e308 })).toMatchObject({ code: 'bad-weight' });
    expect(problem({ 'moon-wax': 1, beeswax: 1 })).toEqual({
      code: 'unknown-ingredient',
      ingredient: 'moon-wax',
    });
    expect(problem({ mica: 1, honey: 1 })).toMatchObject({ code: 'nothing-melts' });
    expect(problem({ paraffin: 5, ozokerite: 5, 'olive-oil': 90 })).toEqual({
      code: 'no-melting-data',
      ingredients: ['paraffin', 'ozokerite'],
    });
  });

  it('should count a line of weight 0 as absent', () => {
    expect(problem({ paraffin: 0, beeswax: 20, 'olive-oil': 80 })).toBeUndefined();
  });
});
