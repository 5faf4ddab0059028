import type { Region } from '../../core/settings.ts';

const names: readonly (readonly [Region, string])[] = [
  ['eu', 'eu|europe|european union'],
  ['uk', 'uk|gb|great britain|britain|england|scotland|wales'],
  ['us', 'usa|u\\.s\\.|united states|america'],
  ['ca', 'canada'],
  ['au', 'australia'],
];

export interface RegionSaid {
  readonly region: Region;
  readonly from: number;
  readonly to: number;
}

const patterns: readonly (readonly [Region, RegExp])[] = [
  ...(['eu', 'uk', 'us', 'ca', 'au'] as const).map(
    (region) => [region, new RegExp(`,?\\s*\\(?\\bregion\\s*[:=]?\\s*${region}\\b\\)?`)] as const,
  ),
  // A bare "us" is a pronoun; "in the US" is not.
  ['us', /,?\s*\b(?:in|for|under)\s+the\s+us\b(?:\s+(?:rules|law|laws|market))?/],
  ...names.map(
    ([region, said]) =>
      [
        region,
        new RegExp(
          `,?\\s*\\b(?:in|for|under|region)\\s+(?:the\\s+)?(?:${said})(?![a-z])(?:\\s+(?:rules|law|laws|market))?`,
        ),
      ] as const,
  ),
];

/** The region a message names, and where; undefined when it names none. */
export const regionSaid = (text: string): RegionSaid | undefined => {
  const plain = text.toLowerCase();
  for (const [region, pattern] of patterns) {
    const match = pattern.exec(plain);
    if (match) return { region, from: match.index, to: match.index + match[0].length };
  }
  return undefined;
};
