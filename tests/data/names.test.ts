import { describe, expect, it } from 'vitest';
import { ingredients } from '../../core/ingredients.ts';
import { ambiguousName, clearName, exactName, isOtherThing, nameKey, nearNames } from '../../core/names.ts';
import { exact, misspelt, nothing, twoThings } from './name-phrases.ts';

describe('names as they stand', () => {
  it.each(exact)('should read "%s" as %s', (phrase, id) => {
    expect(exactName(nameKey(phrase))).toEqual([id]);
    expect(nearNames(phrase)).toMatchObject([{ id, distance: 0 }]);
  });

  it.each(twoThings)('should ask back about "%s"', (phrase, ids) => {
    expect(exactName(nameKey(phrase))).toEqual(ids);
    expect(ambiguousName(nameKey(phrase))?.because.length).toBeGreaterThan(10);
    expect(clearName(nearNames(phrase))).toBeUndefined();
  });

  it.each(['wax', 'butter', 'oil', 'carrier oil', 'essential oil'])(
    'should count "%s" only when it stands alone',
    (phrase) => {
      expect(exactName(nameKey(phrase))?.length).toBeGreaterThan(1);
      expect(ambiguousName(nameKey(phrase))?.alone).toBe(true);
      expect(exactName(nameKey(`organic ${phrase}`))).toBeUndefined();
    },
  );

  it('should take marigold as calendula, with a note', () => {
    expect(exactName(nameKey('Marigold'))).toEqual(['calendula']);
    expect(ambiguousName(nameKey('marigold'))?.because).toContain('Tagetes');
  });

  it('should leave infused oils to the reader', () => {
    for (const phrase of ['calendula oil', 'calendula infused oil', 'st johns wort oil'])
      expect(exactName(nameKey(phrase))).toBeUndefined();
  });

  it.each(nothing)('should know no "%s"', (phrase) => {
    expect(exactName(nameKey(phrase))).toBeUndefined();
    expect(nearNames(phrase)).toEqual([]);
  });

  it.each([
    'peanut butter',
    'bitter almond oil',
    'motor oil',
    'clary sage oil',
    'organic coconut milk',
    'pure paraffin oil',
  ])('should know "%s" to be something else', (phrase) => {
    expect(isOtherThing(nameKey(phrase))).toBe(true);
  });

  it.each(['', '   ', '🙂', '%%%', 'x'.repeat(500), 'oil '.repeat(100)])(
    'should find nothing in noise: %j',
    (noise) => {
      expect(nearNames(noise)).toEqual([]);
    },
  );
});

describe('names a slip or two off', () => {
  it.each(misspelt)('should read "%s" as %s', (phrase, id) => {
    expect(clearName(nearNames(phrase))?.id).toBe(id);
  });

  it.each([
    ['lavendar', 'lavender'],
    ['rosmary', 'rosemary'],
    ['lemmon oil', 'cold-pressed-lemon-essential-oil'],
    ['cinamon', 'cinnamon-stick'],
  ])('should offer both meanings of "%s"', (phrase, first) => {
    const [best] = nearNames(phrase);
    expect(best?.ids.length).toBeGreaterThan(1);
    expect(best?.id).toBe(first);
    expect(clearName(nearNames(phrase))).toBeUndefined();
  });

  it('should offer, but not take, a short name two slips off', () => {
    const near = nearNames('tamanoo oil');
    expect(near[0]).toMatchObject({ id: 'tamanu-oil', distance: 2 });
    expect(clearName(near)).toBeUndefined();
  });

  it('should know every ingredient by the name it is shown with, and nothing else by it', () => {
    for (const { id, name } of ingredients) expect([name, exactName(nameKey(name))]).toEqual([name, [id]]);
  });
});
