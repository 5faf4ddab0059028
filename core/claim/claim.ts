import {
  type ClaimWord,
  diseaseWords,
  effectWords,
  plantNameWords,
  rewordWords,
  safeWords,
  sunWord,
  unsureWords,
} from '../data/rules/claim-words.ts';
import type { Region } from '../settings.ts';
import { conditionMatches, gentleMatches, isEurope, shieldMatches } from './conditions.ts';
import { isForeign } from './foreign.ts';
import { deniedWhy, everyPromise, find, firstPromise, matchOf } from './found.ts';
import { suggestionFor } from './instead.ts';
import type { ClaimMatch } from './match.ts';
import { correctedClaim, hasAny, patternOf, plainClaim } from './words.ts';

export type ClaimVerdict = 'ok' | 'reword' | 'medicinal';

export interface Judgement {
  readonly verdict: ClaimVerdict;
  /** Worst first. */
  readonly matches: readonly ClaimMatch[];
  /** A cosmetic wording, where there is one. Missing: leave it out. */
  readonly sayInstead?: string;
  /** True where no rule for it was seen, so that the verdict is a careful guess. */
  readonly unsure: boolean;
  /** Not in English, so that nothing can be said about it. */
  readonly foreign?: true;
  /** The wording as it was read, slips put right. */
  readonly read: string;
}

/** Diseases and effects on the body, in an affirmative sentence. */
const medicinalMatches = (text: string): ClaimMatch[] =>
  [...effectWords, ...diseaseWords].flatMap((word) =>
    everyPromise(text, word.stems).map(({ found, denied }) =>
      denied
        ? matchOf(word, found, 'reword', { denied: true, why: deniedWhy })
        : matchOf(word, found, 'medicinal'),
    ),
  );

const sunMatches = (text: string, region: Region): ClaimMatch[] => {
  const hit = firstPromise(text, sunWord.stems);
  if (!hit) return [];
  if (hit.denied) return [matchOf(sunWord, hit.found, 'reword', { denied: true, why: deniedWhy })];
  if (isEurope(region)) return [matchOf(sunWord, hit.found, 'reword')];
  return [matchOf(sunWord, hit.found, 'medicinal', region === 'au' ? { askLocally: true } : {})];
};

const plainMatches = (text: string, words: readonly ClaimWord[], more: Partial<ClaimMatch>): ClaimMatch[] =>
  words.flatMap((word) => {
    const found = find(text, word.stems);
    return found ? [matchOf(word, found, 'reword', more)] : [];
  });

/** A plant's name is taken out, so that the "heal" in self-heal is not read as a promise. */
const withoutPlants = (text: string): { readonly rest: string; readonly plants: ClaimMatch[] } => {
  const plants = plainMatches(text, plantNameWords, {});
  const rest = plantNameWords
    .flatMap(({ stems }) => stems)
    .reduce((left, stem) => left.replace(patternOf(stem), 'herb'), text);
  return { rest, plants };
};

/** Scents and phrases that only sound like something: a treat for the lips, the bees' own hives. */
const harmless =
  /(?<![a-z])(?:feel free|free shipping|burnt (?:sugar|caramel|orange|honey)|(?:a|an|the|little|sweet|real|daily|winter|small|lovely|your|minty|tasty) treats?|treat (?:yourself|your (?:lips|hands|skin|feet) to)|(?:our|own|my|local|bee|village|neighbour's|beekeeper's) (?:bee)?hives)(?![a-z])/g;

const order = (match: ClaimMatch): number => {
  if (match.verdict === 'medicinal') return 0;
  if (match.denied) return 1;
  return match.unsure ? 3 : 2;
};

const matchesOf = (text: string, region: Region): ClaimMatch[] => {
  const { rest, plants } = withoutPlants(text);
  const sure = [
    ...medicinalMatches(rest),
    ...sunMatches(rest, region),
    ...conditionMatches(rest, region),
    ...plants,
    ...plainMatches(rest, rewordWords, {}),
  ];
  const careful = [...shieldMatches(rest, region), ...gentleMatches(rest, region)];
  if (sure.length > 0) return sure.toSorted((a, b) => order(a) - order(b));
  if (careful.length > 0) return careful;
  return plainMatches(rest, unsureWords, { unsure: true });
};

/** Sentences of a whole label text: each is judged by itself, so that a strong claim hides no weaker one beside it. */
const sentencesOf = (text: string): readonly string[] =>
  text.split(/[.!?;\n…]+\s*/).filter((part) => part.trim().length > 1);

/** What is found in all of it and in each sentence, each thing once, worst first. */
const allMatches = (text: string, region: Region): ClaimMatch[] => {
  const whole = matchesOf(text, region);
  const sentences = sentencesOf(text);
  if (sentences.length < 2) return whole;
  const more = sentences
    .flatMap((sentence) => matchesOf(sentence, region))
    .filter(({ words }, at, list) => list.findIndex((other) => other.words === words) === at)
    .filter(({ words }) => !whole.some((match) => match.words.includes(words)));
  return [...whole, ...more].toSorted((a, b) => order(a) - order(b));
};

/**
 * Judges a wording for a label, a shop page or a reply, in one region, in the order: disease or body function, sun,
 * reword words, otherwise fine. It says how a wording reads and never that it is lawful.
 */
export const judgeClaim = (wording: string, region: Region): Judgement => {
  const read = correctedClaim(plainClaim(wording)).replace(harmless, '');
  const matches = allMatches(read, region);
  const [worst] = matches;
  if (!worst && isForeign(read)) return { verdict: 'reword', matches, unsure: true, foreign: true, read };
  if (!worst) return { verdict: 'ok', matches, unsure: !hasAny(read, safeWords), read };
  const sayInstead = suggestionFor(read, matches);
  return {
    verdict: worst.verdict,
    matches,
    ...(sayInstead ? { sayInstead } : {}),
    unsure: worst.unsure === true,
    read,
  };
};
