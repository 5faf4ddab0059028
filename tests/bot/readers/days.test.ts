import { describe, expect, it } from 'vitest';
import { daysIn } from '../../../bot/readers/days.ts';
import type { Settings } from '../../../core/settings.ts';
import { lotOf, readingOf } from '../../helpers/reading.ts';

// The day is Wednesday, 25 November 2026. The dates were reckoned by hand with a calendar.

const read = (text: string, settings: Partial<Settings> = {}, at?: number) =>
  daysIn(readingOf(text, [lotOf('K12')], settings, at));
const past = (text: string, settings: Partial<Settings> = {}, at?: number) =>
  read(text, settings, at).days.map((day) => day.past);
const future = (text: string) => read(text).days.map((day) => day.future);

describe('what was done', () => {
  it.each([
    ['poured 24 tins today', '2026-11-25'],
    ['poured 24 tins this morning', '2026-11-25'],
    ['poured 24 tins yesterday', '2026-11-24'],
    ['poured them last night', '2026-11-24'],
    ['the day before yesterday', '2026-11-23'],
    ['3 days ago', '2026-11-22'],
    ['two weeks ago', '2026-11-11'],
    ['a fortnight ago', '2026-11-11'],
    ['a month ago', '2026-10-25'],
    ['last Saturday', '2026-11-21'],
    ['on Saturday', '2026-11-21'],
    ['on sat', '2026-11-21'],
    ['last Wednesday', '2026-11-18'],
    ['poured on Wednesday', '2026-11-25'],
    ['on 14 May', '2026-05-14'],
    ['on 3 may', '2026-05-03'],
    ['on the 3rd of May', '2026-05-03'],
    ['on May 3rd', '2026-05-03'],
    // Soon to come, and almost a year ago: it is taken as to come, and a pour of that day is refused.
    ['on 3 December', '2026-12-03'],
    ['on 3 January', '2026-01-03'],
    ['on the 14th', '2026-11-14'],
    ['on the 30th', '2026-10-30'],
    ['on 2026-11-20', '2026-11-20'],
    ['14 Nov 2026', '2026-11-14'],
    ['November 14, 2026', '2026-11-14'],
    ['14.11.2026', '2026-11-14'],
    ['14.11.26', '2026-11-14'],
    ['14-Nov-2026', '2026-11-14'],
    ['14/11/2026', '2026-11-14'],
    ['on 3.5.', '2026-05-03'],
    ['29 February', '2024-02-29'],
  ])('should be read from %j', (text, day) => {
    expect(past(text)).toEqual([day]);
  });

  it('should be said in the order of the region, and how it was read', () => {
    expect(past('5/4/2026')).toEqual(['2026-04-05']);
    expect(past('5/4/2026', { region: 'us' })).toEqual(['2026-05-04']);
    expect(past('5/14/2026')).toEqual(['2026-05-14']);
    expect(read('5/4/2026', { region: 'us' }).days[0]?.assumed).toContain('2026-05-04');
    expect(read('5/14/2026').days[0]?.assumed).toBeUndefined();
  });

  it("should begin with the group's own day", () => {
    const late = Date.UTC(2026, 10, 25, 23, 30);
    expect(past('today', {}, late)).toEqual(['2026-11-25']);
    expect(past('today', { zone: 'Europe/Berlin' }, late)).toEqual(['2026-11-26']);
    expect(past('yesterday', { zone: 'America/Los_Angeles' }, Date.UTC(2026, 10, 25, 3))).toEqual([
      '2026-11-23',
    ]);
  });
});

describe('a best before', () => {
  it.each([
    ['best before 2027-03', '2027-03-31'],
    ['best before March 2027', '2027-03-31'],
    ['best before end of March 2027', '2027-03-31'],
    ['bb 03/2027', '2027-03-31'],
    ['bbe 03/27', '2027-03-31'],
    ['bb 2028-02', '2028-02-29'],
    ['best before 2027', '2027-12-31'],
    ['best before March', '2027-03-31'],
    ['best before 14 May', '2027-05-14'],
    ['best before: 14.5.2027', '2027-05-14'],
    ['expires 14 May 2027', '2027-05-14'],
    ['exp. 2027-05-14', '2027-05-14'],
    ['best before in 18 months', '2028-05-25'],
    ['use by the end of May 2027', '2027-05-31'],
    ['good until 1 June', '2027-06-01'],
    ['best before is really 2027-01', '2027-01-31'],
  ])('should be read from %j', (text, day) => {
    expect(read(text).days).toMatchObject([{ role: 'best-before', future: day, from: 0, to: text.length }]);
  });

  it('should end with its month, from a long one too', () => {
    const end = Date.UTC(2026, 7, 31, 9);
    expect(daysIn(readingOf('best before in 6 months', [], {}, end)).days[0]?.future).toBe('2027-02-28');
  });

  it('should stand beside the day of the purchase', () => {
    const text = 'bought 500 g beeswax lot K12 on 3 May, best before 2027-03, 14.50';
    expect(read(text).days).toMatchObject([
      { role: 'on', past: '2026-05-03' },
      { role: 'best-before', future: '2027-03-31' },
    ]);
  });
});

describe('what is no date', () => {
  it.each([
    'at 5 ml',
    '24 tins of 15 ml',
    '3.5 mar',
    '14.50',
    'lot K12',
    'you may use 24 may be enough',
    '12 may suffice',
    'sun balm',
    'sat overnight',
    'on 12 tins',
    '1:3',
    'second tin',
    'mars balm',
    'version 1.2.3',
    '2000-3000 g',
    'bought 2027 g',
  ])('should be left alone: %j', (text) => {
    expect(read(text)).toEqual({ days: [] });
  });

  it.each(['31 February 2027', '2027-02-30', '31.4.2027', '29 Feb 2027'])(
    'should be told when it does not exist: %j',
    (text) => {
      expect(read(text).trouble?.code).toBe('bad-quantity');
    },
  );

  it('should leave the future to best before', () => {
    expect(future('29 February')).toEqual(['2028-02-29']);
  });
});
