import { isZone } from '../../core/bench/days.ts';
import type { Reading } from '../reading.ts';
import { echo } from './ask-back.ts';
import { type Found, none } from './settings-words.ts';

/** What was found, and the stretch of the message that said it. */
export interface FoundAt extends Found {
  readonly place?: { readonly from: number; readonly to: number };
}

const zones: readonly string[] = Intl.supportedValuesOf('timeZone');
const plainKey = (name: string): string => name.toLowerCase().replace(/[\s_-]+/g, '');

const zoneCue =
  /\b(?:our |the |my |group's )?time[ -]?zone\b(?:\s+(?:to|is|as|in|on|of|for|us|set)\b)*\s*[:=]?\s*([A-Za-z][A-Za-z_+/-]*(?:[ -]?[A-Za-z]+){0,2}(?:[+-]\d{1,2})?)/i;

/** "We are on Dublin time". */
const onTime =
  /\b(?:we're|we are|i'm|i am|were|it's|clocks? (?:is|are)|live|go|put us|set us|keep us)\s+(?:on|in|by)\s+([A-Z][A-Za-z_/-]*(?: [A-Z][a-z]+){0,2}) (?:time|timezone)\b/;

/** "Europe/Lisbon" however it is cased, "Lisbon" where only one zone ends so, "UTC". */
const zoneOf = (said: string): string | undefined => {
  const key = plainKey(said);
  if (/^(?:utc|gmt)$/.test(key)) return 'UTC';
  const whole = zones.find((zone) => plainKey(zone) === key);
  if (whole) return whole;
  const cities = zones.filter((zone) => plainKey(zone.split('/').at(-1) ?? '') === key);
  if (cities.length === 1) return cities[0];
  return said.includes('/') && isZone(said) ? said : undefined;
};

const badZone = (said: string): Found => ({
  wish: {},
  trouble: {
    code: 'bad-quantity',
    text: `I do not know the time zone "${echo(said)}". Give it by region and city, for example "time zone Europe/Lisbon".`,
  },
});

/** "time zone Europe/Lisbon": where the group's days begin. */
export const readZone = ({ text }: Reading): FoundAt => {
  const match = zoneCue.exec(text) ?? onTime.exec(text);
  const said = match?.[1]?.replace(
    /\s+(?:please|pls|thanks|thank you|now|and|would|could|will|can)\b.*$/i,
    '',
  );
  if (!match || said === undefined || /^(?:please|now|again|for|are|do)$/i.test(said)) return none;
  const place = { from: match.index, to: match.index + match[0].indexOf(said) + said.length };
  const zone = zoneOf(said);
  return zone === undefined ? badZone(said) : { wish: { zone }, place };
};

const capCue =
  /\b(?:best[ -]before(?: dates?)?|bbe?|shelf[ -]life|keeps?|good for)\b(?:\s+(?:is|of|for|our|everything|all|batches|after|the|pour|should|be|set|to|ceiling|limit|cap))*\s+(?:at most|no more than|not more than|never (?:more|longer) than|max(?:imum)?(?: of)?|up to|limit(?:ed to)?|ceiling(?: of)?|cap(?:ped at)?|at|longer than|more than|over|beyond|to)\s+(\d{1,3}|half a|a|one|two|three|four|five|six|eight|nine|ten|twelve|eighteen)\s+(months?|years?)\b/i;
/** "Best before a year at most", "our cap is 12 months best before". */
const capLast =
  /\b(?:best[ -]before|shelf[ -]life)\b(?: (?:is|of|dates?|should be|be))*\s+(\d{1,3}|half a|a|one|two|three|four|five|six|eight|nine|ten|twelve|eighteen)\s+(months?|years?) (?:at (?:the )?most|max(?:imum)?)\b|\bcap (?:is|of|at)\s+(\d{1,3}|a|one|two|three|six|nine|twelve)\s+(months?|years?)(?= best[ -]before)/i;
/** "Max best before 18 months", "cap of nine months on the best before". */
const capFirst =
  /\b(?:max(?:imum)?|longest|cap|limit|ceiling)\b.{0,12}\b(?:best[ -]before|shelf[ -]life)\b(?: (?:is|of|at|to|to be|should be))?\W+(\d{1,3}|a|one|two|three|six|nine|twelve|eighteen)\s+(months?|years?)\b/i;
/** "Nothing is kept longer than 6 months here", "no balm of ours lasts longer than half a year". */
const capNothing =
  /\b(?:(?:nothing|no (?:balm|salve|batch|tin|jar|pour)s?(?: of ours)?|none|(?:we|i) (?:do not|don't) give anything)\b.{0,24}\b(?:kept|keeps?|lasts?|stays?|good|older)|(?:we|i) (?:never|do not|don't) (?:keep|let)\b.{0,30})\b(?:\s+(?:for|good|in the house|anything|older|here|a balm))*\s+(?:longer than|more than|over|beyond|older than|than|past)\s+(\d{1,3}|half a|a|one|two|three|four|five|six|eight|nine|ten|twelve|eighteen)\s+(months?|years?)\b/i;
const numbers: Readonly<Record<string, number>> = {
  a: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  eight: 8,
  nine: 9,
  ten: 10,
  twelve: 12,
  eighteen: 18,
};

const badCap: Found = {
  wish: {},
  trouble: {
    code: 'out-of-range',
    text: 'A best before lies 1 to 60 months after the pour. For example "best before at most 9 months".',
  },
};

/** "best before at most 9 months": the group's own ceiling. */
export const readCap = ({ text }: Reading): FoundAt => {
  const match = capCue.exec(text) ?? capFirst.exec(text) ?? capNothing.exec(text) ?? capLast.exec(text);
  if (!match) return none;
  const said = (match[1] ?? match[3])?.toLowerCase() ?? '';
  const count = said === 'half a' ? 0.5 : Object.hasOwn(numbers, said) ? (numbers[said] ?? 0) : Number(said);
  const capMonths = /^year/i.test(match[2] ?? match[4] ?? '') ? count * 12 : count;
  if (!Number.isInteger(capMonths) || capMonths < 1 || capMonths > 60) return badCap;
  return { wish: { capMonths }, place: { from: match.index, to: match.index + match[0].length } };
};
