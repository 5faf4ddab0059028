import type { Region } from '../../core/settings.ts';
import { regionNames } from './region-names.ts';

const adjectives: readonly (readonly [Region, string])[] = [
  ['eu', 'european'],
  ['uk', 'british'],
  ['us', 'american'],
  ['ca', 'canadian'],
  ['au', 'australian|aussie'],
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
  ['us', /\b(?:would|do|will|let|for|to|by) (?:the )?americans\b/],
  [
    'uk',
    /\b(?:would|do|will|let|for|to|by) (?:the )?(?:british|brits|english)(?= (?:let|allow|permit|mind|object|say)\b|\W*$)/,
  ],
  ['ca', /\b(?:would|do|will|let|for|to|by) (?:the )?canadians\b/],
  ['au', /\b(?:would|do|will|let|for|to|by) (?:the )?(?:australians|aussies)\b/],
  ...regionNames.map(
    ([region, said]) =>
      [
        region,
        new RegExp(
          `\\b(?:would|does|will|do|did|could)\\s+(?:the\\s+)?(?:${said})(?=\\s+(?:let|allow|accept|permit|mind|object|see|call|want|need|ask|demand|require|forbid|ban)\\b)`,
        ),
      ] as const,
  ),
  // A bare "us" is a pronoun; "in the US" is not.
  ['us', /,?\s*\b(?:in|for|under|by|to|into|at)\s+the\s+us\b(?:\s+(?:rules|law|laws|market))?/],
  ...regionNames.map(
    ([region, said]) =>
      [
        region,
        new RegExp(
          `,?\\s*\\b(?:in|for|under|region|by|to|into)\\s+(?:the\\s+)?(?:${said})(?![a-z])(?:\\s+(?:rules|law|laws|market))?`,
        ),
      ] as const,
  ),
];

const short: readonly (readonly [Region, string])[] = [
  ['us', 'us|usa|u\\.s\\.a?\\.?|america'],
  ['uk', 'uk|gb|u k|britain'],
  ['eu', 'eu|europe'],
  ['au', 'au|australia'],
  ['ca', 'canada'],
];
/** After these an "us" at the end is the people who speak. */
const pronoun =
  "(?<!\\b(?:for|tell|of|give|to|with|by|all|both|help|let|show|send|from|and|on|make|like|let's|at|about|suits?|joins?|teach|remind)\\s)";
/** "12 g, us", "15 g us", "US names", "in American": without "in the" or "region" before it. */
const bare: readonly (readonly [Region, RegExp])[] = [
  ...short.map(([region, said]) => [region, new RegExp(`,\\s*(?:${said})(?=\\s*(?:[,.?!;]|$))`)] as const),
  ...short.map(
    ([region, said]) =>
      [
        region,
        new RegExp(
          `(?<=[\\w)"]\\s)${pronoun}\\b(?:${said})\\b(?=[\\s.?!]{0,9}(?:please|pls|thanks)?[\\s.?!]{0,9}$)`,
        ),
      ] as const,
  ),
  ...short.map(
    ([region, said]) =>
      [region, new RegExp(`\\b(?:${said})\\s+(?:names|naming|style|rules|law|labelling)\\b`)] as const,
  ),
  ...short.map(
    ([region, said]) =>
      [
        region,
        new RegExp(
          `(?<=\\b(?:g|oz|ml|label|balm)\\s)(?:${said})(?=\\s+(?:lot|batch|a4|letter|please|pls)\\b)`,
        ),
      ] as const,
  ),
  ...adjectives.map(
    ([region, said]) =>
      [region, new RegExp(`\\b(?:in|for)\\s+(?:${said})\\b(?:\\s+(?:style|rules|law|english))?`)] as const,
  ),
];

const all = [...patterns, ...bare];

/** Every pattern needs one of these; most messages have none, and are spared thirty looks. */
const anyRegion = new RegExp(
  `\\b(?:${regionNames.map(([, said]) => said).join('|')}|u k|au|british|brits|english|states|us|american|canadian|european|australian|aussie)|region`,
);

/** "We go to Canada on holiday", "Canada is a big country": a place that is spoken of. */
export const isPlaceOnly =
  /\b(?:on|for|our|my|a|the|his|her|their)\s+(?:\w+\s+)?(?:holidays?|vacation|honeymoon)\b|\bto (?:visit|see) |\b(?:is|are|was) (?:so |very |really )?(?:pretty|lovely|nice|beautiful|big|far|huge|sunny)\b|\bis an? (?:\w+ ){0,2}(?:country|place|city|island|state)\b/;

/** The region a message names, and where; undefined when it names none. */
export const regionSaid = (text: string): RegionSaid | undefined => {
  const plain = text.toLowerCase();
  if (!anyRegion.test(plain) || isPlaceOnly.test(plain)) return undefined;
  for (const [region, pattern] of all) {
    const match = pattern.exec(plain);
    if (match) return { region, from: match.index, to: match.index + match[0].length };
  }
  return undefined;
};

const regionWords: readonly (readonly [Region, string])[] = [
  ['us', 'us|usa|u\\.s\\.a?\\.?|united states|america|american'],
  ['uk', 'uk|gb|great britain|britain|british|england|scotland|wales'],
  ['eu', 'eu|europe|european|european union'],
  ['ca', 'canada|canadian'],
  ['au', 'australia|australian|aussie'],
];
const kinds =
  '(?:one|way|labels?|labelling|checks?|limits?|stickers?|rules?|version|strips?|sheets?|law|market|style|tins?|lids?)';

const besides = regionWords.map(
  ([region, words]) =>
    [
      region,
      new RegExp(`\\b(?:${words})(?=\\s+${kinds}\\b)(?:\\s+(?:rules?|version|law|market|style))?`, 'i'),
    ] as const,
);
/** "and the US?", "what about Canada": nothing but a region. */
const alone = regionWords.map(
  ([region, words]) =>
    [
      region,
      new RegExp(
        `^\\W*(?:(?:and|or|what about|how about|same|also|now|then|the same|ok|for|in|region|under)\\s+){0,4}(?:the\\s+)?(?:${words})\\b(?:\\s+(?:rules?|version|law|market|please|instead|too|then))*\\W*$`,
        'i',
      ),
    ] as const,
);

/** "Label, mint lip balm, 15 g, uk please": between signs, in small letters as well. */
const inPart = regionWords.map(
  ([region, words]) =>
    [
      region,
      new RegExp(
        `(?<=(?:^|[,;:(])\\s{0,3})(?:in )?(?:the )?(?:${words})(?:\\s+(?:please|pls|thanks|ta|rules?|version|law))*(?=\\s*(?:[,;).!?]|$))`,
        'i',
      ),
    ] as const,
);

/** "10 g EU lot 5B", "the US ingredient list": in capitals, in a message that is not all capitals. */
const capitals: readonly (readonly [Region, RegExp])[] = [
  ['eu', /\bEU\b/],
  ['uk', /\b(?:UK|GB)\b/],
  // "US Letter" is a paper.
  ['us', /\b(?:US|USA)\b(?! [Ll]etter)/],
];
const shouted = /^[^a-z]*$/;

/** The region a message names before a thing ("UK labels") or names and nothing else ("and Canada?"). */
export const regionBesides = (text: string): RegionSaid | undefined => {
  const plain = text.toLowerCase();
  if (!anyRegion.test(plain) || isPlaceOnly.test(plain)) return undefined;
  for (const [region, pattern] of [
    ...besides,
    ...alone,
    ...inPart,
    ...(shouted.test(text) ? [] : capitals),
  ]) {
    const match = pattern.exec(text);
    if (match) return { region, from: match.index, to: match.index + match[0].length };
  }
  return undefined;
};
