import '../helpers/undrawn.ts';
import { describe, expect, it } from 'vitest';
import { memoryKeeper } from '../../bot/book/keeper-memory.ts';
import { pipkin } from '../../bot/handle.ts';
import { anyone, heard } from '../helpers/house.ts';

// Whoever gets tins, under whatever name and in whatever order of words: all of it stands under that one name in the trace.
// The counts are plain addition: 6 + 4 + 3 - 2 + 5 + 2 = 18 out of 40.

const places = [
  'the school',
  "St Mary's",
  'ward 5',
  'Anna',
  'year 6',
  'class 9b',
  'Lavender House',
  'Beeswax Lane',
  'the oil mill',
  'the Rose and Crown',
  'the October fair',
  'my gran',
  'the Sunday market',
  'Dr Hill',
  'the WI',
  'a lady from Hull',
  'next door',
  'the chemist in the square',
  'the hospice in the old mill',
  'Ben and Mia',
  'uncle Stan',
  'the day centre',
  'my sister-in-law',
  'the gift shop',
  'the sample table',
  'the recipe club',
  "the Fernlea Makers' Circle",
];

describe('who got tins', () => {
  it.each(places)('should be one name, however it is told: %s', async (place) => {
    const house = pipkin({ keeper: memoryKeeper(), onFault: (_id, fault) => expect.fail(String(fault)) });
    let minutes = 0;
    const say = async (text: string) => {
      minutes += 1;
      const at = Date.UTC(2027, 0, 5, 10, minutes);
      const reply = await house.hear(heard(text, { group: 'hall', at, member: anyone }));
      if (!('answer' in reply)) throw new Error(`${text}: ${reply.error.text}`);
      return reply.answer.figures;
    };
    const { lot } = await say('poured 40 tins of 20 g of 20 % beeswax, 80 % olive oil today');
    const told: readonly (readonly [string, number])[] = [
      [`gave 6 tins of ${lot} to ${place}`, 34],
      [`sold 4 of ${lot} to ${place}`, 30],
      [`${place} took 3 tins of ${lot}`, 27],
      [`2 tins of ${lot} came back from ${place}`, 29],
      [`5 more of ${lot} for ${place}`, 24],
      [`handed ${place} 2 tins of ${lot}`, 22],
    ];
    for (const [text, left] of told) expect(await say(text), text).toMatchObject({ left });
    const traced = await say(`where are the tins of ${lot} now?`);
    expect(traced).toMatchObject({ given_to: [{ count: 18 }], containers_out: 18, containers_left: 22 });
    const [{ to }] = traced.given_to as [{ to: string }];
    const bare = (name: string): string => name.toLowerCase().replace(/^(?:the|a|my) /, '');
    expect(bare(to)).toBe(bare(place));
  });
});
