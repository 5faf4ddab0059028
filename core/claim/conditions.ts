import {
  type ClaimWord,
  chapping,
  diseaseWords,
  dryness,
  hardConditions,
  irritation,
  mildVerbs,
  shieldWord,
} from '../data/rules/claim-words.ts';
import type { Region } from '../settings.ts';
import { deniedWhy, find, matchOf } from './found.ts';
import type { ClaimMatch } from './match.ts';
import { isDenied, isPromise } from './negation.ts';
import { hasAny, patternOf } from './words.ts';

/** The EU and Great Britain draw the line alike. */
export const isEurope = (region: Region): boolean => region === 'eu' || region === 'uk';

const condition = (why: string, instead: string): ClaimWord => ({
  stems: [],
  why,
  instead,
  source: ['MHRA-GN8', 'FDA-LETTERS'],
  status: 'read',
});

const hardWord = condition('a mild verb with a condition reads as treating it', 'Softens dry-feeling lips');
const itchWord = condition('itching and irritation are conditions', 'Leaves dry lips feeling comfortable');
const chapWord: ClaimWord = {
  ...condition('chapped lips are what skin-protectant drugs are for in the US', 'Softens dry-feeling lips'),
  source: ['CFR347'],
  status: 'read-secondary',
};
const chapEurope: ClaimWord = {
  ...condition('"relieves" and the like with a condition is borderline', 'Cares for dry lips'),
  source: ['OWN'],
  status: 'memory',
};

const hardMatches = (text: string, acts: boolean): ClaimMatch[] => {
  const found = find(text, hardConditions);
  if (!found) return [];
  const word = /^itch|^allerg/.test(found.words) ? itchWord : hardWord;
  if (isDenied(text, found.at)) return [matchOf(word, found, 'reword', { denied: true, why: deniedWhy })];
  return [matchOf(word, found, acts ? 'medicinal' : 'reword')];
};

/** Wording of the US drug rules; elsewhere a matter of judgement, in Canada and Australia the stricter reading. */
const softMatches = (text: string, region: Region, acts: boolean): ClaimMatch[] => {
  const chapped = find(text, chapping);
  const irritated = find(text, irritation);
  const found = chapped ?? irritated;
  if (!found) return [];
  if (isDenied(text, found.at)) return [matchOf(chapWord, found, 'reword', { denied: true, why: deniedWhy })];
  if (isEurope(region)) return [matchOf(chapped ? chapEurope : itchWord, found, 'reword')];
  const strict = acts || hasAny(text, ['protect*', 'shield*', 'guards']);
  const more = region === 'us' ? {} : ({ askLocally: true } as const);
  return [matchOf(chapped ? chapWord : itchWord, found, strict ? 'medicinal' : 'reword', more)];
};

/** "Cold sores" are told as a disease; their "sores" are not told again. */
const withoutDiseases = (text: string): string =>
  diseaseWords
    .flatMap(({ stems }) => stems)
    .reduce((left, stem) => left.replace(patternOf(stem), (said) => 'x'.repeat(said.length)), text);

/** Conditions beside a mild verb. */
export const conditionMatches = (wording: string, region: Region): ClaimMatch[] => {
  const text = withoutDiseases(wording);
  const acts = hasAny(text, mildVerbs) || isPromise(text);
  return [...hardMatches(text, acts), ...softMatches(text, region, acts)];
};

const gentleVerbs: readonly string[] = ['sooth*', 'calms', 'eases', 'reliev*', 'relief'];
const gentleWord: ClaimWord = {
  stems: gentleVerbs,
  why: 'a cosmetic care word in the EU; near drug wording elsewhere',
  instead: 'Leaves dry lips feeling comfortable',
  source: ['OWN'],
  status: 'memory',
};

/** "Soothes dry lips" is care in the EU and UK; elsewhere the stricter reading. */
export const gentleMatches = (text: string, region: Region): ClaimMatch[] => {
  const found = find(text, gentleVerbs);
  if (!found || isEurope(region) || !hasAny(text, [...dryness, 'lips', 'lip'])) return [];
  return [matchOf(gentleWord, found, 'reword', { unsure: true, askLocally: true })];
};

/** Weather and drying out. */
export const shieldMatches = (text: string, region: Region): ClaimMatch[] => {
  const found = find(text, shieldWord.stems);
  if (!found || isEurope(region)) return [];
  return [matchOf(shieldWord, found, 'reword', region === 'us' ? {} : { askLocally: true })];
};
