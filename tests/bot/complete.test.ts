import { describe, expect, it } from 'vitest';
import { complete } from '../../bot/complete.ts';
import { topics } from '../../bot/topics.ts';
import { benchHouse } from '../helpers/bench-house.ts';
import { now, testHouse } from '../helpers/house.ts';
import { recipeSaved } from '../helpers/recipes-saved.ts';

const stateWith = async (...names: readonly string[]) => {
  const { keeper } = await testHouse();
  const book = await keeper.open('other');
  for (const [at, name] of names.entries())
    await book.record(recipeSaved(`r${at}`, name), { who: 'm1', at: now });
  return book.state;
};

const benchState = async () => (await (await benchHouse()).keeper.open('local')).state;

describe('completing names', () => {
  it('should put names that start so first, then words that do, then the rest, each in order', async () => {
    const state = await stateWith('Unsalted', 'Winter salve', 'Salve two', 'Salve one', 'Balm');
    expect(complete(state, topics, 'recipe', 'sal')).toEqual([
      'Salve one',
      'Salve two',
      'Winter salve',
      'Unsalted',
    ]);
    expect(complete(state, topics, 'recipe', '')).toEqual([
      'Balm',
      'Salve one',
      'Salve two',
      'Unsalted',
      'Winter salve',
    ]);
    expect(complete(state, topics, 'recipe', 'zzz')).toEqual([]);
  });

  it('should find an ingredient by its other names, behind those whose own name fits', async () => {
    const state = await stateWith();
    expect(complete(state, topics, 'ingredient', 'beesw')).toEqual(['beeswax', 'white beeswax']);
    expect(complete(state, topics, 'ingredient', 'cera alba')).toContain('white beeswax');
    expect(complete(state, topics, 'ingredient', 'c')).toHaveLength(25);
  });

  it('should see a recipe saved, renamed or deleted meanwhile', async () => {
    const { keeper } = await testHouse();
    const book = await keeper.open('other');
    const by = { who: 'm1', at: now };
    const found = () => complete(book.state, topics, 'recipe', 'wint');
    expect(found()).toEqual([]);
    await book.record(recipeSaved('r1', 'Winter salve'), by);
    expect(found()).toEqual(['Winter salve']);
    await book.record({ kind: 'recipe-renamed', recipe: 'r1', name: 'Wintry salve' }, by);
    expect(found()).toEqual(['Wintry salve']);
    await book.record({ kind: 'recipe-deleted', recipe: 'r1' }, by);
    expect(found()).toEqual([]);
  });

  it('should offer lots and batches, the latest first, with or without the sign in the code', async () => {
    const state = await benchState();
    expect(complete(state, topics, 'lot', '')).toEqual(['26-ZIRO', 'C2', 'G7', 'K12']);
    expect(complete(state, topics, 'batch', '')).toEqual(['26-MULE', '26-KIVO', '26-BAFO']);
    expect(complete(state, topics, 'batch', '26ki')).toEqual(['26-KIVO']);
    expect(complete(state, topics, 'batch', '26-ki')).toEqual(['26-KIVO']);
    expect(complete(state, topics, 'lot-or-batch', 'k')).toEqual(expect.arrayContaining(['K12', '26-KIVO']));
  });

  it('should complete the last of several lots and leave the others', async () => {
    const state = await benchState();
    expect(complete(state, topics, 'lots', 'k1')).toEqual(['K12']);
    expect(complete(state, topics, 'lots', 'K12, g')).toEqual(['K12, G7']);
    expect(complete(state, topics, 'lots', 'K12,G7, c')).toEqual(['K12,G7, C2']);
  });
});
