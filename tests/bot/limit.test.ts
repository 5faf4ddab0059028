import { fc, it as property } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { gate } from '../../bot/discord/gate.ts';
import { Buckets, defaultLimits, limitsFor } from '../../bot/limit.ts';
import { anyone } from '../helpers/house.ts';

describe('a token bucket', () => {
  it('should give a burst at once, then one for each stretch of time', () => {
    const buckets = new Buckets({ burst: 3, perMinute: 60 });
    expect([0, 0, 0].map((at) => buckets.take('wren', at))).toEqual([0, 0, 0]);
    expect(buckets.take('wren', 0)).toBe(1000);
    expect(buckets.take('wren', 400)).toBe(600);
    expect(buckets.take('wren', 1000)).toBe(0);
    expect(buckets.take('wren', 1000)).toBe(1000);
    expect(buckets.take('hazel', 1000)).toBe(0);
  });

  it('should never hold more than its burst, and gain nothing from a clock that goes back', () => {
    const buckets = new Buckets({ burst: 2, perMinute: 60 });
    const days = 86_400_000;
    expect([days, days, days].map((at) => buckets.take('wren', at) === 0)).toEqual([true, true, false]);
    expect(buckets.take('wren', 0)).toBeGreaterThan(0);
    expect(buckets.take('wren', days + 1000)).toBe(0);
  });

  property.prop([
    fc.array(fc.nat(5000), { maxLength: 200 }),
    fc.integer({ min: 1, max: 20 }),
    fc.integer({ min: 1, max: 600 }),
  ])('should let through at most the burst and what the time is worth', (steps, burst, perMinute) => {
    const buckets = new Buckets({ burst, perMinute });
    let at = 0;
    let through = 0;
    for (const step of steps) {
      at += step;
      const wait = buckets.take('wren', at);
      if (wait === 0) through += 1;
      else expect(buckets.waitMs('wren', at + wait)).toBe(0);
    }
    expect(through).toBeLessThanOrEqual(burst + (at * perMinute) / 60_000 + 1e-6);
  });

  it('should stay bounded however many ask', () => {
    const buckets = new Buckets({ burst: 1, perMinute: 1 });
    for (let at = 0; at < 25_000; at += 1) buckets.take(`member ${at}`, at);
    expect(buckets.size).toBe(20_000);
  });
});

describe('the limits', () => {
  it('should be the usual ones, or grow with what one member may ask', () => {
    expect(limitsFor()).toEqual(defaultLimits);
    expect(limitsFor(600)).toMatchObject({
      member: { burst: 200, perMinute: 600 },
      group: { burst: 2000, perMinute: 12_000 },
    });
    expect(limitsFor(1).member).toEqual({ burst: 1, perMinute: 1 });
  });
});

describe('the gate', () => {
  const asker = (id: string, group = 'guild:1') => ({ group, member: { ...anyone, id } });
  const rates = { ...defaultLimits, member: { burst: 2, perMinute: 60 }, group: { burst: 5, perMinute: 60 } };

  it('should stop one member without taking anything from the others', () => {
    const { admit } = gate(rates, () => 1);
    const asked = Array.from({ length: 10 }, () => admit(asker('wren'), 0));
    expect(asked.map((one) => one === 'in')).toEqual([true, true, ...Array.from({ length: 8 }, () => false)]);
    expect(asked[2]).toMatchObject({ sorry: expect.stringContaining('in 1 second:'), tell: true });
    expect(asked[3]).toMatchObject({ tell: false });
    expect(admit(asker('hazel'), 0)).toBe('in');
    expect(admit(asker('wren', 'guild:2'), 0)).toBe('in');
  });

  it('should stop a group that asks too much all together, and that group alone', () => {
    const { admit } = gate(rates, () => 1);
    const asked = Array.from({ length: 8 }, (_, at) => admit(asker(`m${at}`), 0));
    expect(asked.filter((one) => one === 'in')).toHaveLength(5);
    expect(asked[5]).toMatchObject({ sorry: expect.stringContaining('Everybody is asking at once') });
    expect(admit(asker('m1', 'guild:2'), 0)).toBe('in');
  });

  it('should take on no more than it can have under way', () => {
    let underWay = defaultLimits.underWay;
    const { admit } = gate(defaultLimits, () => underWay);
    expect(admit(asker('wren'), 0)).toBe('in');
    underWay += 1;
    expect(admit(asker('wren'), 0)).toMatchObject({ sorry: expect.stringContaining('hands full') });
  });
});
