import { describe, expect, it } from 'vitest';
import { judgeClaim } from '../../../core/claim/claim.ts';
import type { Region } from '../../../core/settings.ts';
import wordings from '../../fixtures/claim-wordings.json' with { type: 'json' };

/**
 * Wordings written apart from the word lists: inflections, negations, slips, hashtags, praise, sentences about an ingredient. The verdict
 * is what the order of decision gives by our own judgement; no authority's list of phrases was seen.
 */
describe('wordings written blind', () => {
  it('should be at least 200', () => {
    expect(wordings.length).toBeGreaterThanOrEqual(200);
  });

  it.each(wordings.map(({ wording, region = 'eu', verdict }) => [wording, region, verdict] as const))(
    'should judge "%s" in %s as %s',
    (wording, region, verdict) => {
      expect(judgeClaim(wording, region as Region).verdict).toBe(verdict);
    },
  );
});
