import { isZone } from '../../core/bench/days.ts';
import { ambiguousPlaces, placesByZone, widePlaces } from '../../core/data/places.ts';
import type { Trouble } from '../answer.ts';
import { echo, orList } from './ask-back.ts';

export interface ZoneSaid {
  /** IANA name. */
  readonly zone?: string;
  readonly trouble?: Trouble;
  /** Where it stands in the text it was looked for in. */
  readonly from: number;
  readonly to: number;
}

/** "São Paulo", "sao_paulo" and "Sao Paulo" are one. */
const placeKey = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[_-]/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

const byPlace = new Map<string, string>();
for (const zone of Intl.supportedValuesOf('timeZone'))
  byPlace.set(placeKey(zone.split('/').at(-1) ?? zone), zone);
for (const [zone, names] of Object.entries(placesByZone))
  for (const name of names.split(',')) byPlace.set(placeKey(name), zone);
for (const name of ['utc', 'gmt', 'greenwich', 'zulu']) byPlace.set(name, 'UTC');

const mostWords = 4;
const example = '"remind us daily at 9 in Lisbon"';

const askWhich = (said: string, choices: readonly string[]): Trouble => ({
  code: 'missing',
  text: `"${echo(said)}" may mean more than one time zone. Say a city that keeps your time, for example ${orList(choices.slice(0, 4))}.`,
});

/** No such place here: a large city of the same zone will do. */
export const unknownPlace = (said: string): Trouble => ({
  code: 'not-found',
  text: `I do not know the time in "${echo(said)}". Name a large city in your time zone, as in ${example}, or the zone itself, as in "Europe/Lisbon".`,
});

const zoneFor = (said: string): Pick<ZoneSaid, 'zone' | 'trouble'> | undefined => {
  const key = placeKey(said);
  if (Object.hasOwn(ambiguousPlaces, key)) {
    const choices = ambiguousPlaces[key] ?? [];
    return {
      trouble: askWhich(
        said,
        choices.map(([say]) => say),
      ),
    };
  }
  if (Object.hasOwn(widePlaces, key)) return { trouble: askWhich(said, widePlaces[key] ?? []) };
  const zone = byPlace.get(key);
  return zone === undefined ? undefined : { zone };
};

const fullName = /(?<![\w/])([A-Za-z]{2,14}(?:\/[A-Za-z][\w+-]{1,30}){1,2})(?![\w/])/;

/** "Europe/Lisbon" as it stands, in any case. */
const namedZone = (text: string): ZoneSaid | undefined => {
  const match = fullName.exec(text);
  const said = match?.[1];
  if (!match || said === undefined) return undefined;
  const place = { from: match.index, to: match.index + said.length };
  const proper = Intl.supportedValuesOf('timeZone').find((zone) => zone.toLowerCase() === said.toLowerCase());
  if (proper !== undefined) return { zone: proper, ...place };
  const area = /^(?:africa|america|antarctica|arctic|asia|atlantic|australia|europe|indian|pacific|etc)\//i;
  if (!area.test(said)) return undefined;
  return isZone(said) ? { zone: said, ...place } : { trouble: unknownPlace(said), ...place };
};

const offset = /\b(?:utc|gmt)\s?[+-]\s?\d{1,2}(?::?\d{2})?\b/i;

/** A fixed distance from Greenwich is no zone: it would be an hour off for half of the year. */
const offsetSaid = (text: string): ZoneSaid | undefined => {
  const match = offset.exec(text);
  if (!match) return undefined;
  const trouble: Trouble = {
    code: 'missing',
    text: `With ${echo(match[0])} alone I could not follow summer time. Name a city in your zone, as in ${example}.`,
  };
  return { trouble, from: match.index, to: match.index + match[0].length };
};

const word = "[\\p{L}][\\p{L}'.]*";
// Looked ahead at, so that the next "in" within it is tried as well: "quarter to nine in Lisbon".
const placeAfter = new RegExp(
  `\\b(?:in|for|on|zone|timezone|to|by)\\s+(?:is\\s+)?(?:the\\s+)?(?=(${word}(?:[ -]${word}){0,3}))`,
  'giu',
);
const placeBefore = new RegExp(`(${word}(?:[ -]${word}){0,3})\\s+(?:local\\s+)?time\\b`, 'giu');
const placeLast = new RegExp(`[,\\d]\\s*(${word}(?:[ -]${word}){0,3})\\s*$`, 'giu');

/** The longest run of words from `first` on that is a place. */
const longest = (
  words: readonly string[],
  first: number,
): { readonly count: number; readonly hit: Pick<ZoneSaid, 'zone' | 'trouble'> } | undefined => {
  for (let count = Math.min(mostWords, words.length - first); count > 0; count -= 1) {
    const hit = zoneFor(
      words
        .slice(first, first + count)
        .join(' ')
        .replace(/[.']+$/, ''),
    );
    if (hit) return { count, hit };
  }
  return undefined;
};

const inMatch = (match: RegExpMatchArray, fromEnd: boolean): ZoneSaid | undefined => {
  const said = match[1] ?? '';
  const words = said.split(/[ -]/);
  const inside = match[0].indexOf(said);
  const start = (match.index ?? 0) + (inside < 0 ? match[0].length : inside);
  const firsts = fromEnd ? words.map((_, index) => index) : [0];
  for (const first of firsts) {
    const found = longest(words, first);
    if (!found || (fromEnd && first + found.count !== words.length)) continue;
    const from = start + words.slice(0, first).join(' ').length + (first > 0 ? 1 : 0);
    const to = from + words.slice(first, first + found.count).join(' ').length;
    return { ...found.hit, from, to };
  }
  return undefined;
};

/**
 * The place or zone a message names: "in Lisbon", "New York time", "Europe/Berlin", "…, Porto" at its end. A name that fits
 * several zones, or a whole continent, is asked back about.
 */
export const zoneIn = (text: string): ZoneSaid | undefined => {
  const named = namedZone(text) ?? offsetSaid(text);
  if (named) return named;
  for (const [pattern, fromEnd] of [
    [placeAfter, false],
    [placeBefore, true],
    [placeLast, false],
  ] as const)
    for (const match of text.matchAll(pattern)) {
      const found = inMatch(match, fromEnd);
      if (found) return found;
    }
  return undefined;
};
