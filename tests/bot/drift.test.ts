import { fc, it as property } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { drift, judged, most, type Sample } from '../bench/drift.ts';

const megabyte = 1024 * 1024;

/** A sample every five seconds for two minutes, forty requests a second. */
const run = (
  heapAt: (minute: number) => number,
  rssAt: (minute: number) => number = () => 150 * megabyte,
): Sample[] =>
  Array.from({ length: 24 }, (_, at) => {
    const minute = ((at + 1) * 5) / 60;
    return { minute, asked: Math.round(minute * 2400), heapUsed: heapAt(minute), rss: rssAt(minute) };
  });

describe('memory under steady load', () => {
  property.prop([fc.double({ min: -20, max: 20, noNaN: true })])(
    'should rise by what a straight line rises by',
    (perMinute) => {
      const found = drift(run((minute) => (50 + perMinute * minute) * megabyte));
      expect(found.heap / megabyte).toBeCloseTo(perMinute * found.minutes, 6);
    },
  );

  it('should be flat while it only goes up and down, and after a beginning', () => {
    const noise = (minute: number) => Math.sin(minute * 37) * megabyte;
    expect(judged(drift(run((minute) => 50 * megabyte + noise(minute)))).flat).toBe(true);
    expect(judged(drift(run((minute) => (minute < 0.7 ? 20 : 50) * megabyte))).flat).toBe(true);
  });

  it('should not be flat when the heap or the process grows', () => {
    // Three kilobytes of every request kept: 7 MB a minute.
    const leaking = judged(drift(run((minute) => 50 * megabyte + minute * 2400 * 3000)));
    expect(leaking.flat).toBe(false);
    expect(leaking.lines.join()).toContain('NOT FLAT');
    const swelling = run(
      () => 50 * megabyte,
      (minute) => 150 * megabyte + minute * most.rss,
    );
    expect(judged(drift(swelling)).flat).toBe(false);
  });

  it('should not be told from too few samples', () => {
    const few = judged(drift(run(() => 50 * megabyte).slice(0, 5)));
    expect(few.flat).toBe(false);
    expect(few.lines.join()).toContain('too few');
  });
});
