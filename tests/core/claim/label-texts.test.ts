import { describe, expect, it } from 'vitest';
import { judgeClaim } from '../../../core/claim/claim.ts';

const told = (wording: string): readonly string[] =>
  judgeClaim(wording, 'eu').matches.map(({ words, verdict }) => `${words}: ${verdict}`);

/** Verdicts are judgements on the rules cited in the table of words; the rows are typed by hand. */
describe('a whole label text', () => {
  it('should have each claim in it named, the worst first', () => {
    expect(told('Softens dry lips. Cures herpes and eczema. 100 % natural. Helps you sleep.')).toEqual([
      'cures: medicinal',
      'herpes: medicinal',
      'eczema: medicinal',
      '100 %: reword',
      'sleep: reword',
    ]);
  });

  it('should tell a word once that is denied once and promised once', () => {
    expect(told('Does not cure eczema. Cures eczema.')).toEqual([
      'cures: medicinal',
      'eczema: medicinal',
      'cure: reword',
    ]);
  });

  it.each([
    ['this is not a medicine and does not treat eczema', 'reword'],
    ['does not dry lips and cures eczema', 'medicinal'],
    ['a little treat for your lips', 'ok'],
    ['treats eczema', 'medicinal'],
    ['beeswax from our own hives', 'ok'],
    ['soothes hives', 'medicinal'],
    ['#curescoldsores', 'medicinal'],
    ['#eczema_relief', 'medicinal'],
    ['#painrelief', 'medicinal'],
    ['#manicure #paintedtin', 'ok'],
    ['#softlips #handmade', 'ok'],
    ['first aid salve', 'medicinal'],
    ['repels mosquitoes', 'reword'],
  ] as const)('should read "%s" as %s', (wording, verdict) => {
    expect(judgeClaim(wording, 'eu').verdict).toBe(verdict);
  });

  it.each(['heilt rissige Lippen', 'guérit les lèvres gercées', 'cura los labios', 'hilft'])(
    'should not judge what is not English: %s',
    (wording) => {
      expect(judgeClaim(wording, 'eu')).toMatchObject({ verdict: 'reword', unsure: true, foreign: true });
    },
  );

  it.each(['crème brûlée scented balm', 'rosé tint', 'per tin of 15 ml', 'die-cut label'])(
    'should know English with a borrowed word: %s',
    (wording) => {
      expect(judgeClaim(wording, 'eu').foreign).toBeUndefined();
    },
  );
});
