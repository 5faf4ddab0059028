import {
  chapping,
  diseaseWords,
  dryness,
  effectWords,
  hardConditions,
  irritation,
  mildVerbs,
  plantNameWords,
  rewordWords,
  safeWords,
  shieldWord,
  sunWord,
  unsureWords,
} from '../data/rules/claim-words.ts';
import { slips } from '../edit-distance.ts';

/** Lower case, one space between words, apostrophes straight; clause marks stay. */
export const plainClaim = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[‘’`]/g, "'")
    .replace(/(\d)\s*%/g, '$1 %')
    .replace(/\s+/g, ' ')
    .trim();

const cache = new Map<string, RegExp>();

/** A stem as a pattern: `*` any ending, a hyphen also a space or nothing. */
export const patternOf = (stem: string): RegExp => {
  const known = cache.get(stem);
  if (known) return known;
  const body = stem.replace(/[- ]/g, (sign) => (sign === ' ' ? '[- ]' : '[- ]?')).replace(/\*/g, "[a-z']*");
  const pattern = new RegExp(`(?<![a-z])${body}(?![a-z%])`, 'g');
  cache.set(stem, pattern);
  return pattern;
};

export const hasAny = (text: string, stems: readonly string[]): boolean =>
  stems.some((stem) => text.search(patternOf(stem)) >= 0);

const singleWords = (stems: readonly string[]): string[] => stems.filter((stem) => /^[a-z]+\*?$/.test(stem));

const allStems = [
  ...[
    ...diseaseWords,
    ...effectWords,
    ...plantNameWords,
    ...rewordWords,
    ...unsureWords,
    sunWord,
    shieldWord,
  ].flatMap(({ stems }) => stems),
  ...hardConditions,
  ...irritation,
  ...chapping,
  ...dryness,
  ...mildVerbs,
  ...safeWords,
];

/** Whole words that a slip is put right to: carrying ones, long enough not to be something else. */
const carrying =
  `heals healing cures curing treats remedy therapeutic medicated medicinal antibacterial antimicrobial antiseptic antifungal antiviral
  disinfects anti-inflammatory inflammation analgesic anaesthetic anesthetic numbing infection herpes eczema dermatitis psoriasis impetigo cheilitis rosacea
  wounds swelling bruises immune detoxifying detoxifies regenerates regenerating circulation collagen stimulates sunscreen sunblock natural organic hypoallergenic
  dermatologist clinically certified approved soothes relieves repairs chapped cracked bleeding irritated moisturises moisturizes softens chemical edible
  blisters protects painful sunburn parabens`.split(/\s+/);

/** Ordinary words a slip away from a carrying one. */
const ordinary = new Set(
  `seals sealing feels feeling meals deals heels cares caring cubes pures sores treads threats smooths smoothes smoothing soaks hails hearing heating
  stains strains paint paints painted printed scarlet crackle cracker health moisture natured nature origin mineral minerals organza trapped capped chipped clapped wrapped
  cleaning cracking relives approve collage immense`.split(/\s+/),
);

/** Misspellings further off than a slip or two. */
const misspelt: Readonly<Record<string, string>> = {
  excema: 'eczema',
  exzema: 'eczema',
  ezcema: 'eczema',
  exema: 'eczema',
  eczma: 'eczema',
  soriasis: 'psoriasis',
  herpies: 'herpes',
  anesthetik: 'anesthetic',
  remedie: 'remedy',
  moisterises: 'moisturises',
  relievs: 'relieves',
  releives: 'relieves',
  releaves: 'relieves',
  sooths: 'soothes',
  infamation: 'inflammation',
  heelz: 'heals',
  healz: 'heals',
  heelin: 'healing',
  healin: 'healing',
};

const isSwap = (a: string, b: string): boolean =>
  a.length === b.length && [...a].sort().join('') === [...b].sort().join('');

const mostSlips = (length: number): number => {
  if (length <= 5) return 0;
  return length <= 7 ? 1 : 2;
};

const isNear = (said: string, meant: string): boolean => {
  if (said.charAt(0) !== meant.charAt(0)) return false;
  const most = mostSlips(meant.length);
  if (Math.abs(said.length - meant.length) > Math.max(1, most)) return false;
  if (isSwap(said, meant) && slips(said, meant, 2) <= 1) return true;
  return most > 0 && slips(said, meant, most) <= most;
};

const knownStems = singleWords(allStems);

/** Words of longer stems ("no chemicals"): no slips of other words. */
const insideStems = new Set(
  allStems.flatMap((stem) => stem.split(/[- ]/)).filter((part) => !part.includes('*')),
);

const isKnown = (said: string): boolean =>
  ordinary.has(said) || insideStems.has(said) || hasAny(said, knownStems);

const corrected = (said: string): string => {
  const sure = Object.hasOwn(misspelt, said) ? misspelt[said] : undefined;
  if (sure !== undefined) return sure;
  if (said.length < 5 || isKnown(said)) return said;
  return carrying.find((meant) => isNear(said, meant)) ?? said;
};

/** Words and phrases as they run together in a hashtag, longest first: "coldsore", "eczema", "antibacterial". */
const runTogether: readonly (readonly [glued: string, apart: string])[] = [
  ...carrying,
  ...[...diseaseWords, ...effectWords, ...rewordWords, sunWord].flatMap(({ stems }) => stems),
]
  .map((stem) => stem.replace(/\*$/, ''))
  .filter((stem) => /^[a-z' -]+$/.test(stem))
  .map((stem) => [stem.replace(/[^a-z]/g, ''), stem] as const)
  .filter(([glued]) => glued.length > 5)
  .toSorted(([a], [b]) => b.length - a.length);

/** Shorter words are only known at the beginning, or "manicure" would cure. */
const atStart =
  /^#(heals?|healing|cures?|cured|curing|pain|acne|scars?|spf|rash|numbs?)(?!th|t|f)(?=[a-z0-9])/;

/** "#eczemarelief", "#curescoldsores": words run together in a hashtag, set apart where some of them carry. */
const apartInTags = (plain: string): string =>
  plain.replace(/#[a-z0-9_]+/g, (tag) => {
    let apart = tag.replaceAll('_', ' ');
    for (const [glued, stem] of runTogether)
      if (apart.includes(glued)) apart = apart.replace(glued, ` ${stem} `);
    return apart.replace(atStart, '# $1 ');
  });

/** "Heels cracked lips" speaks of no feet. */
const heels = /(?<![a-z])heels(?= (?:[a-z]+ ){0,3}(?:lips?|skin|mouth|sores?|wounds?)(?![a-z]))/g;

/** The claim with slips in its carrying words put right ("excema", "antibacterail"). */
export const correctedClaim = (plain: string): string =>
  apartInTags(plain)
    .replace(heels, 'heals')
    .replace(/[a-z]+(?:-[a-z]+)*/g, corrected);
