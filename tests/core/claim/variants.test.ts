import { fc, test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { judgeClaim } from '../../../core/claim/claim.ts';
import { regions } from '../../../core/settings.ts';

const verdict = (wording: string) => judgeClaim(wording, 'eu').verdict;

describe('denials', () => {
  it.each([
    'does not heal cracked lips',
    "doesn't cure cold sores",
    'this is not a medicine',
    'not tested for eczema',
    'no sunscreen in it',
    'pain-free',
    'without antiseptics',
  ])('should leave the word of "%s" better unsaid', (wording) => {
    expect(verdict(wording)).toBe('reword');
  });

  it.each([
    'not only softens, it heals',
    "doesn't just soothe: it cures eczema",
    'burn balm',
    'cooling burn salve',
    'no more cold sores',
    'never have cold sores again',
    'not a perfume, but heals lips',
    'say goodbye to eczema',
  ])('should read the promise in "%s"', (wording) => {
    expect(verdict(wording)).toBe('medicinal');
  });
});

describe('inflections', () => {
  it.each([
    'heal your lips',
    'healing balm',
    'healed in a day',
    'curing dry lips',
    'a cure for winter lips',
    'a lip remedy',
    'remedies for lips',
    'therapeutic balm',
    'aromatherapy balm',
    'antimicrobial oils',
    'anti microbial oils',
    'antimicrobials',
    'disinfecting mint',
    'regenerating balm',
    'numbing mint',
    'bruises vanish',
    'infections stay away',
    'immune-boosting',
    'soothing for cracked lips',
    'repairs split lips',
    'eases itching',
    'helps with sore lips',
    'good for bleeding lips',
  ])('should read "%s" as medicinal', (wording) => {
    expect(verdict(wording)).toBe('medicinal');
  });
});

describe('slips of the pen', () => {
  it.each([
    'haels lips',
    'antibacterail balm',
    'anti-inflamatory balm',
    'excema balm',
    'psoriasys balm',
    'herpies balm',
    'treats dermatits',
    'an antiseptik',
    'colagen and circulaton',
    'infecton',
  ])('should still read "%s" as medicinal', (wording) => {
    expect(verdict(wording)).toBe('medicinal');
  });
});

describe('words that only look like others', () => {
  it.each([
    'seals in moisture',
    'cares for lips',
    'feels smooth',
    'painted by hand in a tin',
    'scarlet tint',
    'burnt sugar scent',
    'manicure red tint',
    'secure lid on the tin',
    'a hint of thyme and honey',
    'heather honey scent',
  ])('should read "%s" as cosmetic', (wording) => {
    expect(verdict(wording)).toBe('ok');
  });
});

describe('what is not known', () => {
  it.each(['restores lips', 'revives tired lips', 'healthy lips', 'antioxidant-rich'])(
    'should reword "%s" and say that it is unsure',
    (wording) => {
      expect(judgeClaim(wording, 'eu')).toMatchObject({ verdict: 'reword', unsure: true });
    },
  );

  it('should be unsure of words it has never seen', () => {
    expect(judgeClaim('zorbles the quux', 'eu')).toMatchObject({ verdict: 'ok', unsure: true });
  });
});

describe('any wording', () => {
  test.prop([fc.string({ maxLength: 200 }), fc.constantFrom(...regions)])(
    'should get one of three verdicts, and a reason unless it is fine',
    (wording, region) => {
      const judged = judgeClaim(wording, region);
      expect(['ok', 'reword', 'medicinal']).toContain(judged.verdict);
      const reason = judged.foreign === true || judged.matches.length > 0;
      expect(reason).toBe(judged.verdict !== 'ok');
    },
  );

  it('should give its language as the reason for a word that is not English', () => {
    expect(judgeClaim('El', 'eu')).toMatchObject({ verdict: 'reword', foreign: true, matches: [] });
  });

  test.prop([
    fc.constantFrom('heals cracked lips', 'cures eczema', 'antiseptic'),
    fc.constantFrom(...regions),
  ])('should stay medicinal whatever kind words stand before it', (claim, region) => {
    expect(judgeClaim(`Softens and moisturises. ${claim}`, region).verdict).toBe('medicinal');
  });
});
