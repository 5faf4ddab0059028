import type { Slot } from '../likeness/features.ts';
import { nameAfter, noPlace } from '../readers/bench-text.ts';

/** "To the spring fair", "with Marta": where things went. A bin, a test and the like are nobody. */
const goals =
  /\b(?:(?:over|round|across|along|out|off|in|up|down) )?(?:to|by|with|into)\s+(?!(?:parcel|post|mail|courier|train|van|bus|be|throw|bin|give|sell|keep|use|test|take|make|get|go|have|pour|say|see|show|tell|write|note|report|\d|_)\b)/gi;
/** Said besides who it was, as often as not: "for its open day", "on the market". */
const occasions =
  /\b(?:for|at|on (?=(?:the|our|a) (?:[\w'’-]+ ){0,2}(?:market|bazaar|fair|f[eê]te|stall|festival|show|sale)\b))\s*(?!(?:the )?(?:bench|book|shelf|record)\b|\d|_)/gi;
/** "From the spring fair", "by post from Hive Lane": where things came from. */
const sources = /\b(?:from|off|at|by)\s+(?!\d|_)/gi;

/** What no name begins with, or is. */
const nobody =
  /^(?:(?:the|a|an|our|my|this|that) )?(?:bin|rubbish|trash|skip|compost(?: heap)?|floor|ground|house|home|kitchen|bench|shelf|shop shelf|book|post|mail|parcel|courier|mistake|accident|hand|last|once|least|first|all|half|noon|lunch(?:time)?|breakfast|dinner|night|midday|midnight|present|gift|free|nothing|good|sale|use|testing|tests?|sample|samples|record|records|stock|water|heat|sun|jug|jar|tub|tin|pot|canister|pan|scales?|morning|afternoon|evening|weekend|date|price|cost|tidy(?:ing)?|luck|joy|love|pleasure|pride|care|thanks|store|cupboard|drawer|fridge|cellar|attic|winter|summer|spring|autumn|him|her|them|us|me|you|it|cash|change|charity's sake|ourselves|himself|herself|myself|themselves)$/i;

const articles = /^(?:The|My|Our|A|An|Some|Her|His|Their)(?= )/;
/** "The tea room" at the beginning of a sentence is "the tea room" elsewhere. */
const inside = (name: string): string => name.replace(articles, (word) => word.toLowerCase());

const before = (text: string, at: number): string =>
  /(?:^|[.,;:!?()\n_]|\s-\s)([^.,;:!?()\n_]*)$/.exec(text.slice(Math.max(0, at - 90), at))?.[1] ?? '';

const takes =
  /\b(?:(?:has|have|had|just|also|then|already|kindly|now|today|even|both|all)\s+){0,3}(?:bought|purchased|took|taken|takes|got|gets|received|receives|has|have|had|accepted|collected|picked up|came for|came by for|left with|walked off with|went home with|went away with|snapped up|grabbed|acquired|is (?:now )?the (?:proud |happy )?owner of|are (?:now )?the (?:proud |happy )?owners of|(?:has been|have been|was|were) (?:supplied|provided) with|was given|were given|been given|is given|was handed|were handed|was sent|were sent)\b/i;
const brings =
  /\b(?:(?:has|have|had|just|also|then|already|kindly|now|today)\s+){0,3}(?:brought|returned|returns|gave|given|handed|sent|posted|mailed|delivered|supplied|shipped|sold|dropped off)\b/i;
const leads =
  /^(?:(?:and|also|then|so|but|ok|well|now|today|yesterday|hello|hi|please|note|noted|news|just|later|oh|finally|this (?:morning|afternoon|evening|week|noon)|for the (?:book|record))\s+)*/i;
/** "Marta came by and took". */
const came = /\s+(?:came|called|popped|dropped|stopped|walked|visited|looked)\b.*$/i;
const mostWords = 6;

const small =
  /^(?:as|at|to|for|by|with|in|on|from|of|over|into|off|back|was|were|is|are|has|have|had|been|be|and|but|so|then|also|too|just|now|again|which|that|who)\b/i;

/** "To water my plants". */
const doing = /^(?!(?:all|both) )\p{Ll}+ (?:my|the|our|your|his|her|their|its|it|them|us|a|an)\b/u;
/** "Class 9b". */
const numbered = /\b(?:class|year|group|room|table|team|form|grade) \d{1,2}[a-z]?\b/i;
/** "M.", "J. K.": somebody all the same. */
const initials = /^(?!I\b|A$)\p{Lu}\.?(?: ?\p{Lu}\.?)?$/u;
const isName = (name: string): boolean =>
  (/\p{L}{2}/u.test(name) || initials.test(name)) &&
  !/[_\d]/.test(name.replace(numbered, '')) &&
  !nobody.test(name) &&
  !noPlace.test(name) &&
  !small.test(name) &&
  !doing.test(name) &&
  name.split(/\s+/).length <= mostWords;

const slot = (name: string, from: number): Slot => ({
  kind: 'whom',
  text: inside(name),
  before: '',
  after: '',
  from,
  to: from + name.length,
});

/** Who took or brought: what stands before the verb, to the beginning of its clause. */
const subjectOf = (text: string, verb: RegExp): readonly Slot[] => {
  const found: Slot[] = [];
  for (const { index } of text.matchAll(new RegExp(verb.source, 'gi'))) {
    const clause = before(text, index).replace(/^\s+/, '');
    const name = clause.replace(leads, '').replace(came, '').trim();
    const from = text.lastIndexOf(name, index);
    if (name !== '' && isName(name)) found.push(slot(name, from));
  }
  return found;
};

const given =
  /\b(?:gave|given|sold|sent|handed|posted|mailed|brought|lent|passed|left|promised)\s+(?:out\s+|over\s+)?((?:the\s+|my\s+|our\s+|a\s+)?\p{L}[\p{L}'’.-]*(?: \p{L}[\p{L}'’.-]*){0,4}?)\s+(?=_)/giu;

/** "Gave the library 3 tins": who stands between the verb and the things. */
const receiverIn = (text: string): readonly Slot[] =>
  [...text.matchAll(given)].flatMap((match) => {
    const name = match[1] ?? '';
    return isName(name) ? [slot(name, match.index + match[0].lastIndexOf(name))] : [];
  });

const named = (text: string, cue: RegExp): readonly Slot[] =>
  [...text.matchAll(cue)].flatMap(({ index }) => {
    const found = nameAfter(text.slice(index), new RegExp(cue.source, 'i'));
    return found && isName(found.name)
      ? [{ ...slot(found.name, index + found.place.to - found.name.length), from: index }]
      : [];
  });

/** What it was for, and where: accounted for where somebody else is named. */
export const occasionsIn = (text: string): readonly Slot[] => named(text, occasions);

/**
 * Who got things, or where they came from, as it was typed, the most telling first: after "to" and the like, between verb
 * and things, or before the verb.
 * @param text the message with its things made into "_".
 * @param role how a plain form leads to the name: `to` or `from`.
 */
export const whomIn = (text: string, role: string): readonly Slot[] =>
  role === 'from'
    ? [...named(text, sources), ...subjectOf(text, brings)]
    : [...receiverIn(text), ...named(text, goals), ...subjectOf(text, takes), ...occasionsIn(text)];
