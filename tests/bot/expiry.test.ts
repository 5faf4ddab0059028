import { describe, expect, it } from 'vitest';
import { timeIn } from '../../bot/readers/clock-time.ts';
import { zoneIn } from '../../bot/readers/zones.ts';
import { isZone } from '../../core/bench/days.ts';
import { type BookEvent, benchOf } from '../../core/book.ts';
import { ambiguousPlaces, placesByZone } from '../../core/data/places.ts';
import { answerOf, anyone, now, testHouse, troubleIn } from '../helpers/house.ts';

// A Wednesday, 25 November 2026. Dates are counted by hand in the calendar.

const lot = (code: string, ingredient: string, bestBefore?: string, grams = 500): BookEvent => ({
  kind: 'lot-bought',
  lot: code,
  ingredient,
  grams,
  on: '2026-01-10',
  ...(bestBefore ? { bestBefore } : {}),
});

const batch = (code: string, name: string, bestBefore: string, count: number): BookEvent => ({
  kind: 'batch-poured',
  lot: code,
  name,
  lines: [{ ingredient: 'beeswax', grams: 10, draws: [] }],
  count,
  container: 'tin',
  madeOn: '2026-01-10',
  bestBefore,
  because: { kind: 'said' },
  weighedG: 90,
});

const shelf = [
  lot('OLD1', 'olive-oil', '2026-10-31', 120),
  lot('G7', 'grapeseed-oil', '2026-11-28'),
  lot('K12', 'beeswax', '2026-12-20'),
  lot('N1', 'candelilla-wax'),
  batch('26-KIVO', 'Fernlea hand balm', '2026-12-02', 6),
  batch('26-RABO', 'Fernlea mint lip balm', '2027-01-15', 24),
];

const hall = async () => {
  const house = await testHouse();
  const book = await house.keeper.open('local');
  await book.record(shelf, { who: 'm1', at: now });
  const bench = () => benchOf(book.state);
  const due = async (say: string) => answerOf(await house.say(say)).figures.due;
  const lots = async (say: string) => ((await due(say)) as { lot: string }[]).map((each) => each.lot);
  return { ...house, book, bench, due, lots };
};

describe('what expires', () => {
  it('should tell kind, code, name, date and days left, soonest first', async () => {
    const { due } = await hall();
    expect(await due('what expires in the next 60 days')).toEqual([
      {
        kind: 'lot',
        lot: 'G7',
        what: 'grapeseed-oil',
        best_before: '2026-11-28',
        days_left: 3,
        grams_left: 500,
      },
      {
        kind: 'batch',
        lot: '26-KIVO',
        what: 'Fernlea hand balm',
        best_before: '2026-12-02',
        days_left: 7,
        containers_left: 6,
      },
      { kind: 'lot', lot: 'K12', what: 'beeswax', best_before: '2026-12-20', days_left: 25, grams_left: 500 },
      {
        kind: 'batch',
        lot: '26-RABO',
        what: 'Fernlea mint lip balm',
        best_before: '2027-01-15',
        days_left: 51,
        containers_left: 24,
      },
    ]);
  });

  it.each([
    ['what expires this week', ['G7']],
    ['what expires next week', ['26-KIVO']],
    ['which lots expire next month', ['K12']],
    ['which batches expire in the next 60 days', ['26-KIVO', '26-RABO']],
    ['what expires by 2 December', ['G7', '26-KIVO']],
    ['what expires before 2 December', ['G7']],
    ['what is out of date', ['OLD1']],
    ['what expires this year', ['OLD1', 'G7', '26-KIVO', 'K12']],
    ['does any beeswax expire next month', ['K12']],
    ['which batches of Fernlea mint lip balm expire in January', ['26-RABO']],
    ['when does K12 expire', ['K12']],
    ['when does lot K12 go out of date', ['K12']],
    ['when does KIVO expire', ['26-KIVO']],
    ['is lot OLD1 out of date', ['OLD1']],
    ['when does lot N1 expire', []],
  ])('should answer %j', async (say, wanted) => {
    const { lots } = await hall();
    expect(await lots(say)).toEqual(wanted);
  });

  it('should begin the day by the group’s own zone', async () => {
    const { say, book } = await hall();
    // 23:30 UTC on the 27th is already the 28th in Auckland.
    const at = Date.UTC(2026, 10, 27, 23, 30);
    const today = async () => answerOf(await say('what expires today', { at })).figures.count;
    expect(await today()).toBe(0);
    await book.record(
      { kind: 'settings-changed', settings: { zone: 'Pacific/Auckland' } },
      { who: 'm1', at },
    );
    expect(await today()).toBe(1);
  });

  it('should warn of what is past its date, and only then', async () => {
    const { say } = await hall();
    const codes = async (text: string) => answerOf(await say(text)).warnings.map(({ code }) => code);
    expect(await codes('what is out of date')).toEqual(['out-of-date', 'local-rules']);
    expect(await codes('what expires next month')).toEqual([]);
  });
});

describe('an answer to something due', () => {
  it.each([
    'done with K12',
    'done with lot K12',
    'K12 is done',
    'lot K12 is dealt with, thanks!',
    'Done with K12. Ta!',
  ])('should be closed by %j', async (say) => {
    const { say: tell, bench, lots } = await hall();
    expect(answerOf(await tell(say)).figures).toMatchObject({
      answer: 'done',
      answered: [{ kind: 'lot', lot: 'K12' }],
    });
    expect(bench().answers.get('lot:K12')).toEqual({ answer: 'done', bestBefore: '2026-12-20' });
    expect(bench().lots.get('K12')?.leftG).toBe(500);
    expect(await lots('what expires next month')).toEqual(['26-KIVO']);
  });

  it.each(['KIVO is used up', 'batch 26-KIVO is used up', '26 kivo is all gone', 'used up 26-KIVO'])(
    'should leave nothing in the book after %j',
    async (say) => {
      const { say: tell, bench, lots } = await hall();
      answerOf(await tell(say));
      expect(bench().batches.get('26KIVO')?.gone).toMatchObject([
        { count: 6, how: 'used', on: '2026-11-25' },
      ]);
      expect(await lots('what expires next week')).toEqual([]);
    },
  );

  it('should leave nothing of a lot that is used up', async () => {
    const { say, bench, lots } = await hall();
    answerOf(await say('lot K12 is used up'));
    expect(bench().lots.get('K12')?.leftG).toBe(0);
    expect(await lots('which lots expire next month')).toEqual([]);
  });

  it.each([
    ['remind me of K12 again in a week', '2026-12-02'],
    ['ask about lot K12 again in a week', '2026-12-02'],
    ['ask again about K12 in 10 days', '2026-12-05'],
    ['snooze K12 for two weeks', '2026-12-09'],
    ['remind us of K12 again on 5 January', '2027-01-05'],
    ['ask about K12 again tomorrow', '2026-11-26'],
    ['put K12 off until 1 December', '2026-12-01'],
  ])('should be put off by %j', async (say, until) => {
    const { say: tell, bench } = await hall();
    expect(answerOf(await tell(say)).figures.until).toBe(until);
    expect(bench().answers.get('lot:K12')).toEqual({ answer: 'again', until, bestBefore: '2026-12-20' });
  });

  it('should put off everything that is due', async () => {
    const { say, bench } = await hall();
    await say('ask about all of them again in a week');
    expect([...bench().answers.keys()].sort()).toEqual(['batch:26KIVO', 'lot:G7', 'lot:K12', 'lot:OLD1']);
  });

  it('should be refused for a code nobody knows, for a day gone by, and for those who may not write', async () => {
    const { say, bench } = await hall();
    expect(troubleIn(await say('done with lot ZZ9')).code).toBe('not-found');
    expect(troubleIn(await say('ask about K12 again on 3 November 2026')).code).toBe('out-of-range');
    await say('only role Bench may write');
    const guest = { ...anyone, manages: false };
    expect(troubleIn(await say('done with K12', { member: guest })).code).toBe('not-allowed');
    expect(troubleIn(await say('remind us daily at 9 in Lisbon', { member: guest })).code).toBe(
      'not-allowed',
    );
    expect(bench().answers.size).toBe(0);
    expect(
      answerOf(await say('done with K12', { member: { ...guest, roles: ['Bench'] } })).figures.answer,
    ).toBe('done');
  });
});

describe('the reminder in words', () => {
  it('should come where it was asked, from the first hour to come, and set the group’s zone where there was none', async () => {
    const { say, bench, book } = await hall();
    const { figures } = answerOf(
      await say('remind us daily at 9 in Lisbon, 30 days ahead', { channel: 'kitchen' }),
    );
    expect(figures.reminder).toEqual({
      hour: 9,
      minute: 0,
      zone: 'Europe/Lisbon',
      lead_days: [30],
      channel: 'kitchen',
    });
    // Asked at 9:00 sharp in Lisbon (UTC in winter): the next is tomorrow's.
    expect(bench().reminder?.from).toBe('2026-11-26');
    expect(figures.next_day).toBe('2026-11-26');
    expect(book.state.settings.zone).toBe('Europe/Lisbon');
    await say('remind us daily at 7 in Tokyo');
    expect(book.state.settings.zone).toBe('Europe/Lisbon');
    expect(bench().reminder).toMatchObject({ hour: 7, zone: 'Asia/Tokyo', leadDays: [30], channel: 'hall' });
  });
});

describe('places and times', () => {
  it('should name only zones there are', () => {
    const zones = [
      ...Object.keys(placesByZone),
      ...Object.values(ambiguousPlaces).flatMap((all) => all.map(([, zone]) => zone)),
    ];
    expect(zones.filter((zone) => !isZone(zone))).toEqual([]);
  });

  it('should know the city of every IANA zone, unless its name is another place’s too', () => {
    const names = Intl.supportedValuesOf('timeZone').map(
      (zone) => [zone, (zone.split('/').at(-1) ?? '').replaceAll('_', ' ')] as const,
    );
    const missed = names.filter(([, name]) => zoneIn(`at 9 in ${name}`) === undefined);
    expect(missed).toEqual([]);
    const other = names.filter(([zone, name]) => {
      const said = zoneIn(`at 9 in ${name}`);
      return said?.trouble === undefined && said?.zone !== zone;
    });
    // A zone's name that is a better known place elsewhere, or a country's.
    expect(other.map(([zone]) => zone).length).toBeLessThanOrEqual(6);
  });

  it('should take every IANA zone by its full name', () => {
    const missed = Intl.supportedValuesOf('timeZone').filter(
      (zone) => zone.includes('/') && zoneIn(`daily at 9, ${zone.toLowerCase()}`)?.zone !== zone,
    );
    expect(missed).toEqual([]);
  });

  it.each([
    ['at 9', 9, 0],
    ['at 9am', 9, 0],
    ['at 9 p.m.', 21, 0],
    ['at 12 am', 0, 0],
    ['at 12pm', 12, 0],
    ['at 21:30', 21, 30],
    ['at 9.05', 9, 5],
    ['at 18h30', 18, 30],
    ['at half past eight', 8, 30],
    ['at half past 8 in the evening', 20, 30],
    ['at quarter past seven', 7, 15],
    ['at ten to six pm', 17, 50],
    ["at 7 o'clock", 7, 0],
    ['every evening at 6', 18, 0],
    ['at noon', 12, 0],
    ['at 24:00', 0, 0],
  ])('should read %j', (text, hour, minute) => {
    expect(timeIn(text)).toMatchObject({ hour, minute });
  });
});
