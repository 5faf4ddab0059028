import { execFileSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { growingFlag, keepHeapLean } from '../../bot/lean-heap.ts';

describe('a lean heap', () => {
  it('should be asked for by a name that this engine knows', () => {
    expect(execFileSync(process.execPath, ['--v8-options'], { encoding: 'utf8' })).toContain(growingFlag);
    expect(keepHeapLean).not.toThrow();
  });
});
