import { setImmediate as turn } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { collector } from '../../bot/threads/collect.ts';

describe('collecting at once', () => {
  it('should let go of what nobody holds, and of nothing else', async () => {
    const collect = collector();
    const held = { pixels: new Uint8Array(1000) };
    const refs = [new WeakRef(held), new WeakRef({ pixels: new Uint8Array(1000) })];
    // A reference that was made or looked at holds for the rest of its turn.
    await turn();
    collect();
    expect(refs.map((ref) => ref.deref() !== undefined)).toEqual([true, false]);
    expect(held.pixels).toHaveLength(1000);
  });
});
