/**
 * Lot codes of the house: two digits of the year and two or three syllables, as in `26-KIVO`. They are short enough for
 * the underside of a tin, can be read out over a hall, and neighbours in time do not look alike.
 */

// Left out: letters that are heard as another one (b p d t, m n, c k s) keep one of each; none that looks like a digit.
const consonants = ['b', 'd', 'f', 'g', 'k', 'l', 'm', 'r', 's', 'v', 'z', 'j'] as const;
const vowels = ['a', 'e', 'i', 'o', 'u'] as const;

const syllables = consonants.length * vowels.length;
const short = syllables ** 2;
const long = syllables ** 3;
// Odd, and free of 3 and 5: it has no factor in common with 60, so every count up to the end gets a code of its own.
const shortStride = 1451;
const longStride = 86_213;

const syllable = (index: number): string =>
  `${consonants[Math.floor(index / vowels.length)]}${vowels[index % vowels.length]}`;

const spelt = (value: number, count: number): string => {
  const parts: string[] = [];
  for (let rest = value, at = 0; at < count; at += 1) {
    parts.unshift(syllable(rest % syllables));
    rest = Math.floor(rest / syllables);
  }
  return parts.join('').toUpperCase();
};

/** Codes that a maker would rather not print on a tin, and words that mean something else when said alone. */
const unwanted = new Set(
  `KAKA BUMU FUDU SUKU GOBU ZIGI LULU RAGE KILU JUDE ROSE SAGE LIME LIRE SAVE SAFE SALE SAME SIZE SOLE SURE SORE SIDE SOME SOFA
  MADE MAKE MALE MARE MERE MILE MIRE MOLE MORE MOVE MULE MUSE GAVE GIVE GALE GAME GAZE GORE BAKE BALE BARE BASE BIKE BILE BITE BODE BORE
  RAKE RARE RAVE RIDE RISE RULE RUDE ROBE LAKE LAME LIFE LIKE LIVE LOBE LOSE LOVE LURE KALE FADE FAKE FAME FARE FIFE FILE FIRE FIVE FORE FUSE
  FUME FEDE DARE DAZE DALE DIVE DOLE DOSE DOME DOVE DUDE VALE VASE VILE ZERO SOLO SOJA SODA JOKE JULE JADE KILO KOLA LILA LIDO MEDI MEGA MIDI
  MIRU RICE SERE VIRE LEGO MAZE BABE BABA BEBE DEMO DODO FORI GALA GURU JUJU KUKU LAVA LOGO MAMA MEMO MIMO MONO SAGO SARI SILO VISA YOGA`.split(
    /\s+/,
  ),
);

/**
 * The house's lot code for the day `madeOn` (ISO) and the number of codes given before it. Different counts below
 * 219,600 make different codes within a year; the caller passes over codes that are taken.
 */
export const lotCode = (madeOn: string, count: number): string => {
  const year = madeOn.slice(2, 4);
  const word =
    count < short ? spelt((count * shortStride) % short, 2) : spelt(((count - short) * longStride) % long, 3);
  return `${year}-${word}`;
};

export const isUnwanted = (code: string): boolean => unwanted.has(code.slice(3));

/** What a lot is found by: letters and digits in upper case, so that "26 kivo" and "26-KIVO" are one. */
export const lotKey = (code: string): string =>
  code
    .normalize('NFKC')
    .toUpperCase()
    .replace(/[^\p{L}\p{N}]/gu, '');
