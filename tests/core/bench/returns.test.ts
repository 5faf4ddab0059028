import { it as check, fc } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { returnsOf } from '../../../core/bench/returns.ts';
import { type Batch, tinsOut } from '../../../core/bench/state.ts';
import { holdersOf } from '../../../core/bench/trace.ts';

const on = '2026-11-25';

const batchWith = (gone: readonly [number, string?][], back: readonly [number, string?][] = []): Batch => ({
  lot: '26-KIVO',
  name: 'Hall balm',
  lines: [],
  count: 40,
  container: 'tin',
  madeOn: on,
  bestBefore: '2027-05-14',
  because: { kind: 'said' },
  weighedG: 60,
  notes: [],
  gone: gone.map(([count, to]) => ({ count, how: 'given', on, ...(to ? { to } : {}) })),
  back: back.map(([count, from]) => ({ count, on, ...(from ? { from } : {}) })),
  looks: [],
  corrected: [],
  seq: 1,
});

const outcome = (...args: Parameters<typeof returnsOf>) => {
  const found = returnsOf(...args);
  return found.ok ? found.value : found.problem;
};

describe('what comes back', () => {
  const two = batchWith([
    [6, 'the Spring fair'],
    [2, 'village shop'],
  ]);

  it.each<[string, Batch, Parameters<typeof returnsOf>[1], unknown]>([
    ['the only place', batchWith([[6, 'Spring fair']]), [{ count: 2 }], [{ count: 2, to: 'Spring fair' }]],
    ['the only place, not named', batchWith([[6]]), [{ count: 2 }], [{ count: 2 }]],
    ['what was not named either', batchWith([[6, 'Spring fair'], [3]]), [{ count: 3 }], [{ count: 3 }]],
    [
      'a place by part of its name',
      two,
      [{ count: 1, to: 'the fair' }],
      [{ count: 1, to: 'the Spring fair' }],
    ],
    ['all of one place', two, [{ all: true, to: 'village shop' }], [{ count: 2, to: 'village shop' }]],
    [
      'all there are, from every place',
      two,
      [{ all: true }],
      [
        { count: 6, to: 'the Spring fair' },
        { count: 2, to: 'village shop' },
      ],
    ],
    [
      'one place after the other',
      two,
      [{ count: 2, to: 'village shop' }, { count: 1 }],
      [
        { count: 2, to: 'village shop' },
        { count: 1, to: 'the Spring fair' },
      ],
    ],
    [
      'a stranger, from the only place there is',
      batchWith([[6, 'Spring fair']]),
      [{ count: 1, to: 'Ada' }],
      [{ count: 1, to: 'Ada' }],
    ],
  ])('should be taken from %s', (_what, batch, parts, moved) => {
    expect(outcome(batch, parts)).toEqual(moved);
  });

  it.each<[string, Batch, Parameters<typeof returnsOf>[1], unknown]>([
    [
      'no place, where two hold some',
      two,
      [{ count: 1 }],
      {
        code: 'which-place',
        places: [
          { count: 6, to: 'the Spring fair' },
          { count: 2, to: 'village shop' },
        ],
      },
    ],
    [
      'more than a place holds',
      two,
      [{ count: 3, to: 'village shop' }],
      { code: 'which-place', said: 'village shop' },
    ],
    ['a stranger, where two hold some', two, [{ count: 1, to: 'Ada' }], { code: 'which-place', said: 'Ada' }],
    ['more than are out', two, [{ count: 9 }], { code: 'too-many', count: 9 }],
    ['any, when all are back', batchWith([[2]], [[2]]), [{ all: true }], { code: 'too-many', count: 1 }],
  ])('should be asked about: %s', (_what, batch, parts, problem) => {
    expect(outcome(batch, parts)).toMatchObject(problem as object);
  });

  const place = fc.constantFrom(undefined, 'Spring fair', 'village shop', 'Ada', 'the fair');
  const some = fc.array(fc.tuple(fc.integer({ min: 1, max: 5 }), place), { maxLength: 6 });

  check.prop([some, some, fc.boolean()])(
    'should never leave a place below nothing, and lose no tin',
    (out, back, all) => {
      let batch = batchWith(out as [number, string?][]);
      for (const [count, to] of back) {
        const found = returnsOf(batch, [all ? { all, to } : { count, to }]);
        if (!found.ok) continue;
        const before = tinsOut(batch);
        const more = found.value.map(({ count: each, to: from }) => ({
          count: each,
          on,
          ...(from ? { from } : {}),
        }));
        batch = { ...batch, back: [...batch.back, ...more] };
        expect(before - tinsOut(batch)).toBe(found.value.reduce((sum, each) => sum + each.count, 0));
        const holders = holdersOf({ batches: [{ batch }] });
        expect(holders.every((holder) => holder.count > 0)).toBe(true);
        expect(holders.reduce((sum, holder) => sum + holder.count, 0)).toBe(tinsOut(batch));
      }
    },
  );
});
