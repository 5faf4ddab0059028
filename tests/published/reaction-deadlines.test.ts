import { describe, expect, it } from 'vitest';
import { afterBusinessDays, reactionDuty, usHolidays } from '../../core/bench/deadline.ts';

/*
 * FD&C Act section 605 (MoCRA 2022): 15 business days after receipt, read second-hand. Regulation (EC) 1223/2009 Article 23:
 * without delay; the 20 calendar days of the reporting guidelines from memory. Australian Consumer Law section 131: 2 days,
 * from memory.
 */
describe('when a serious reaction has to be reported', () => {
  it('should be 15 business days in the US, Thanksgiving left out', () => {
    expect(reactionDuty('us', '2026-11-20').by).toBe('2026-12-14');
  });
  it('should be at once in the EU, at the latest 20 days after by the guideline', () => {
    expect(reactionDuty('eu', '2026-11-20')).toMatchObject({ by: '2026-12-10', seen: 'memory' });
  });
  it('should be 2 days in Australia', () => {
    expect(reactionDuty('au', '2026-11-20')).toMatchObject({ by: '2026-11-22', seen: 'memory' });
  });
  it('should have no date where the law gives none', () => {
    expect(reactionDuty('uk', '2026-11-20').by).toBeUndefined();
    expect(reactionDuty('ca', '2026-11-20')).toMatchObject({ seen: 'none-found' });
  });
});

/* 5 U.S.C. 6103; the dates of 2026 and 2027 as the Office of Personnel Management lists them (from memory). */
describe('federal holidays of the United States', () => {
  it('should be those of 2026, Independence Day kept on the Friday before', () => {
    expect([...usHolidays(2026)].toSorted()).toEqual([
      '2026-01-01',
      '2026-01-19',
      '2026-02-16',
      '2026-05-25',
      '2026-06-19',
      '2026-07-03',
      '2026-09-07',
      '2026-10-12',
      '2026-11-11',
      '2026-11-26',
      '2026-12-25',
      '2027-01-01',
    ]);
  });
  it('should keep New Year of 2028, a Saturday, on the last day of 2027', () => {
    expect(usHolidays(2027).has('2027-12-31')).toBe(true);
    expect(afterBusinessDays('2027-12-30', 1)).toBe('2028-01-03');
  });
});
