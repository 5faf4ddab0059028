import { describe, expect, it } from 'vitest';
import { ambiguousNames, ordinaryNames } from '../../core/data/ambiguous-names.ts';
import { otherThings } from '../../core/data/other-things.ts';
import { ingredientById, ingredients } from '../../core/ingredients.ts';
import { carriers } from '../../core/name-index.ts';
import { allNames, longestName, nameKey, nameWords } from '../../core/names.ts';

describe('keys', () => {
  it.each([
    ['Colour', 'color'],
    ['FLAVOURS', 'flavor'],
    ['karité', 'karite'],
    ['cacao', 'cocoa'],
    ['grapeseed', 'grape seed'],
    ['Rose-hips', 'rose hip'],
    ['wheatgerm', 'wheat germ'],
    ["St John's", 'st john'],
    ['peppermint e.o.', 'pepper mint essential oil'],
    ['peppermint EO', 'pepper mint essential oil'],
    ['deodorised', 'deodorized'],
    ['waxes', 'wax'],
    ['berries', 'berry'],
    ['leaves', 'leaf'],
    ['sheabutter', 'shea butter'],
    ['ﬂax', 'flax'],
  ])('should fold "%s" to "%s"', (text, key) => {
    expect(nameKey(text)).toBe(key);
  });

  it('should give the same key for the key itself', () => {
    for (const key of allNames().keys()) expect(nameKey(key)).toBe(key);
  });
});

describe('name tables', () => {
  const declared = new Set(
    [...ambiguousNames.flatMap(({ names }) => names), ...Object.keys(ordinaryNames)].map(nameKey),
  );

  it('should have no name on two ingredients that is not declared', () => {
    const shared = [...carriers()].filter(([key, ids]) => ids.length > 1 && !declared.has(key));
    expect(shared).toEqual([]);
  });

  it('should declare no meaning away: every carrier of an ambiguous name is offered', () => {
    const carried = carriers();
    const hidden = ambiguousNames.flatMap(({ names, ids }) =>
      names.flatMap((name) =>
        (carried.get(nameKey(name)) ?? []).filter((id) => !ids.includes(id)).map((id) => [name, id]),
      ),
    );
    expect(hidden).toEqual([]);
  });

  it('should settle only names that are shared', () => {
    const carried = carriers();
    const idle = Object.keys(ordinaryNames).filter((name) => (carried.get(nameKey(name))?.length ?? 0) < 2);
    expect(idle).toEqual([]);
  });

  it('should point to ingredients that exist', () => {
    const unknown = [...allNames().values()].flat().filter((id) => ingredientById(id)?.id !== id);
    expect(unknown).toEqual([]);
  });

  it('should call no name of ours something else', () => {
    const carried = carriers();
    expect(otherThings.filter((name) => carried.has(nameKey(name)))).toEqual([]);
    expect(new Set(otherThings).size).toBe(otherThings.length);
  });

  it('should know how long the longest name is', () => {
    const words = [...allNames().keys()].map((key) => key.split(' ').length);
    expect(Math.max(...words)).toBe(longestName);
    const typed = ingredients.flatMap(({ names }) => names.map((name) => nameWords(name).length));
    expect(Math.max(...typed)).toBeLessThanOrEqual(longestName);
  });
});
