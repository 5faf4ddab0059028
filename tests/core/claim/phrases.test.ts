import { describe, expect, it } from 'vitest';
import { judgeClaim } from '../../../core/claim/claim.ts';
import { type Region, regions } from '../../../core/settings.ts';

/**
 * Wordings with the verdict each reads as, typed by hand. The status is that of the rule behind the row; the verdict on
 * each exact phrase is a judgement, because no authority's list of phrases was seen. Rules: MHRA Guidance Note 8
 * section 10, FDA letters on drug claims for cosmetics, 21 CFR 347.50, Regulation (EU) 655/2013.
 */
type Row = readonly [
  phrase: string,
  region: Region | 'any',
  verdict: 'ok' | 'reword' | 'medicinal',
  status: 'read' | 'read-secondary' | 'memory',
];

const rows: readonly Row[] = [
  ['Heals cracked lips', 'any', 'medicinal', 'read'],
  ['Treats eczema around the mouth', 'any', 'medicinal', 'read'],
  ['Cures cold sores', 'any', 'medicinal', 'read'],
  ['Helps prevent cold sores', 'any', 'medicinal', 'read'],
  ['Antibacterial honey balm', 'any', 'medicinal', 'read'],
  ['Anti-inflammatory calendula', 'any', 'medicinal', 'read'],
  ['Calms inflammation', 'any', 'medicinal', 'read'],
  ['SPF 15 natural protection', 'us', 'medicinal', 'memory'],
  ['SPF 15 natural protection', 'eu', 'reword', 'memory'],
  ['Zinc oxide for sun protection', 'us', 'medicinal', 'memory'],
  ['Relieves pain with clove', 'any', 'medicinal', 'read'],
  ['Numbs sore lips', 'any', 'medicinal', 'read'],
  ['Stimulates circulation for fuller lips', 'any', 'medicinal', 'read'],
  ['Boosts collagen', 'any', 'medicinal', 'read'],
  ['Regenerates skin cells overnight', 'any', 'medicinal', 'read'],
  ['Relieves chapped lips', 'us', 'medicinal', 'read-secondary'],
  ['Relieves chapped lips', 'eu', 'reword', 'memory'],
  ['Protects lips from wind and cold', 'eu', 'ok', 'read'],
  ['Protects lips from wind and cold', 'us', 'reword', 'memory'],
  ['Softens and moisturises dry lips', 'any', 'ok', 'read'],
  ['Adds shine and a hint of mint', 'any', 'ok', 'read'],
  ['Cooling peppermint feel', 'any', 'ok', 'memory'],
  ['Leaves lips feeling smooth', 'any', 'ok', 'read'],
  ['Soothes dry lips', 'eu', 'ok', 'memory'],
  ['Soothes irritated, itchy lips', 'us', 'medicinal', 'read'],
  ['100 % natural', 'eu', 'reword', 'memory'],
  ['Chemical-free', 'any', 'reword', 'read'],
  ['Hypoallergenic', 'eu', 'reword', 'memory'],
  ['Dermatologist tested', 'any', 'reword', 'read'],
  ['Approved by the FDA', 'us', 'reword', 'read'],
  ['Approved by the EU', 'eu', 'reword', 'read'],
  ['Not tested on animals', 'eu', 'reword', 'read'],
  ['Free from parabens, unlike other balms', 'eu', 'reword', 'read'],
  ['Organic lip balm', 'us', 'reword', 'memory'],
  ['Safe for babies', 'any', 'reword', 'memory'],
  ['Edible lip balm', 'any', 'reword', 'memory'],
  ['My customer says it cleared her dermatitis', 'any', 'medicinal', 'read'],
  ['Lavender is known to be antiseptic', 'any', 'medicinal', 'read'],
  ['Medicated balm', 'any', 'medicinal', 'read'],
  ['Detoxifying charcoal balm', 'any', 'medicinal', 'memory'],
  ['Anti-ageing lip care', 'eu', 'reword', 'memory'],
  ['Anti-ageing lip care', 'us', 'reword', 'read'],
  ['Hydrates for 24 hours', 'eu', 'reword', 'read'],
  ['Vegan', 'any', 'ok', 'memory'],
  ['Nut-free', 'any', 'reword', 'memory'],
  ['Vanilla and orange lip balm', 'any', 'ok', 'memory'],
  ['Not a medicine, does not treat eczema', 'any', 'reword', 'memory'],
  ['Self-heal infused balm', 'any', 'reword', 'memory'],
];

const everywhere = (region: Region | 'any'): readonly Region[] => (region === 'any' ? regions : [region]);

describe('wordings', () => {
  it('should be forty-eight', () => {
    expect(rows).toHaveLength(48);
  });

  it.each(rows)('should read "%s" in %s as %s (%s)', (phrase, region, verdict) => {
    for (const each of everywhere(region)) expect(judgeClaim(phrase, each).verdict).toBe(verdict);
  });

  it.each([
    ['Heals cracked lips', 'eu', 'Softens dry-feeling lips'],
    ['Antibacterial honey balm', 'eu', 'Honey-scented balm'],
    ['Anti-inflammatory calendula', 'eu', 'With calendula infused oil'],
    ['Calms inflammation', 'eu', 'Leaves lips feeling comfortable'],
    ['Zinc oxide for sun protection', 'us', 'Zinc oxide for a soft white look'],
    ['Relieves pain with clove', 'eu', 'Clove scent'],
    ['Numbs sore lips', 'eu', 'Gives a cool tingle'],
    ['Stimulates circulation for fuller lips', 'eu', 'For a fuller-looking shine'],
    ['Boosts collagen', 'eu', 'Smooths the look of lips'],
    ['Regenerates skin cells overnight', 'eu', 'Overnight softness'],
    ['Relieves chapped lips', 'us', 'Softens dry-feeling lips'],
    ['Relieves chapped lips', 'eu', 'Cares for dry lips'],
    ['Lavender is known to be antiseptic', 'us', 'Lavender scent'],
    ['Self-heal infused balm', 'uk', 'Prunella-infused balm'],
    ['Treats eczema around the mouth', 'eu', undefined],
    ['Cures cold sores', 'eu', undefined],
    ['SPF 15 natural protection', 'us', undefined],
    ['Not tested on animals', 'eu', undefined],
  ] as const)('should reword "%s" in %s as %s', (phrase, region, instead) => {
    expect(judgeClaim(phrase, region).sayInstead).toBe(instead);
  });

  it.each(rows)('should offer for "%s" in %s only what itself is not medicinal', (phrase, region) => {
    for (const each of everywhere(region)) {
      const { sayInstead } = judgeClaim(phrase, each);
      if (sayInstead) expect(judgeClaim(sayInstead, each).verdict).not.toBe('medicinal');
    }
  });
});
