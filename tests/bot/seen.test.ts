import { describe, expect, it } from 'vitest';
import { seenIds } from '../../bot/seen.ts';

describe('ids seen before', () => {
  it('should be known again, each for itself', () => {
    const seen = seenIds();
    expect(['a', 'b', 'a', '__proto__', '__proto__'].map(seen)).toEqual([false, false, true, false, true]);
  });

  it('should be as many as are remembered, the oldest forgotten first', () => {
    const seen = seenIds(3);
    for (const id of ['a', 'b', 'c', 'd']) expect(seen(id)).toBe(false);
    expect(['d', 'c', 'b'].map(seen)).toEqual([true, true, true]);
    expect(seen('a')).toBe(false);
  });
});
