import { judgeClaim } from '../../core/claim/claim.ts';
import { defined } from '../../core/defined.ts';
import type { Region } from '../../core/settings.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import type { Item } from './item.ts';
import { lotsIn } from './lots.ts';
import { regionBesides, regionSaid } from './region-said.ts';
import { quoted, trimmed, wordingIn } from './wording-asked.ts';

/** Longest wording that is judged at once, in characters. */
export const maxWording = 600;

const followUp =
  /^(?:(?:and|or|so|ok|okay|but|then)\s+){0,3}(?:and|or|then|so|what about|how about|what if (?:i|we) (?:say|write)|if (?:i|we) (?:say|write))\b\s*/i;

const followed = (text: string): string | undefined => {
  const inQuotes = quoted(text);
  if (inQuotes) return inQuotes;
  const match = followUp.exec(text);
  return match ? trimmed(text.slice(match[0].length)).replace(/\s+instead$/i, '') : undefined;
};

/** "Why", "what can I say then", "and if I only say it on a card": about the wording before. */
const sameAgain =
  /^\W*(?:(?:and|so|then|ok|okay|but|oh)\W+){0,3}(?:why(?: not)?|what (?:can|could|should|may|do|would|shall) (?:i|we) (?:say|write|put|use|print|call it)(?: then| instead| there)*|what (?:instead|then|else)|(?:what )?if (?:i|we) (?:only |just )?(?:say|write|put|post|print) (?:it|that|this) .{0,40})\W*$/i;

/** "Which words must I not use": no list, but a look at what they have in mind. */
const whichWords =
  /\b(?:which|what) (?:words?|claims?|phrases?|wordings?|things)\b.{0,40}\b(?:not|never|avoid|forbidden|banned|illegal|allowed)\b|\bwhat (?:am i|are we) (?:not )?allowed to (?:say|write|claim|print)\b|\bwhat (?:can't|cannot|mustn't|shouldn't) (?:i|we) (?:say|write|claim|print)\b/i;

const oneByOne: Trouble = {
  code: 'missing',
  text: 'I look at one wording at a time. Diseases, healing, pain, germs and sun protection are what makes a medicine of a balm; look, feel, scent and care are fine. Ask for example: can I say "heals cracked lips".',
};

const missing: Trouble = {
  code: 'missing',
  text: 'Which wording? Say it as it would stand on the label, for example: can I say "heals cracked lips".',
};

const tooLong: Trouble = {
  code: 'too-long',
  text: `That is more than I judge at once (${maxWording} characters). Send one sentence, for example: can I say "softens dry lips".`,
};

const health: Trouble = {
  code: 'not-understood',
  text: 'I cannot help with health: please ask a pharmacist or a doctor, and for swelling of the tongue or hard breathing call the emergency number. I can look at a wording, for example: can I say "softens dry lips".',
};

/** The maker's own lips are no claim. */
const ownHealth =
  /\b(?:my|our|his|her)\s+(?:(?:own|little|dry)\s+)*(?:lips?|mouth|skin|face|child|son|daughter|baby|kid|husband|wife)\b.{0,40}\b(?:is|are|has|have|hurts?|got|keeps?|feels?|gets?)\b|\bi(?:'ve| have| get| got| suffer)\b/i;
const asksAdvice =
  /\bwhat (?:should|can|do) (?:i|we)\b|\bshould i see\b|\bwhat to do\b|\bcan you help\b|\bhelp me\b/i;

const isOwnHealth = (text: string): boolean =>
  ownHealth.test(text) && asksAdvice.test(text) && judgeClaim(text, 'us').matches.length > 0;

/** What the balm does in the heat is a forecast, not a label. */
const forecast =
  /\b(?:survives?|melting|copes? with)\b|^\d{1,4}(?:\.\d+)? ?(?:ml|g|oz)\b|\d ?°|\bmelts?\b(?! (?:into|onto|on) (?:the |your |my )?(?:lips?|skin)\b)/i;

/** Nothing that would stand on a label. */
const noWording =
  /^(?:hello|hi|sorry|something|nothing|anything|no|yes|a joke|what|that|this|it|so|to|too|also|more)$/i;

const settle = (wording: string, region: Region | undefined, weight: number): Claim | undefined => {
  if (forecast.test(wording)) return undefined;
  if (wording.length < 2) return refuse(missing, 1.5);
  if (wording.length > maxWording) return refuse(tooLong, weight);
  if (noWording.test(wording)) return undefined;
  return claim({ wording, ...defined({ region }) }, weight);
};

const withoutRegion = (text: string): { readonly text: string; readonly region?: Region } => {
  const said = regionSaid(text);
  if (!said) return { text };
  // Inside quotes it belongs to the wording.
  const quotesBefore = text.slice(0, said.from).split('"').length - 1;
  if (quotesBefore % 2 === 1) return { text };
  return {
    text: `${text.slice(0, said.from)}${text.slice(said.to)}`.replace(/^[\s,:]+/, ''),
    region: said.region,
  };
};

/** "In what order do I write the ingredients", "how do I write the net weight": asks how a label is made. */
const labelMaking =
  /\bbefore (?:i|we) print\b|\b(?:what|which|everything) (?:must|should|has to|have to|needs to) (?:appear|stand|be|go)\b[^.?!]{0,20}\bon\b|\bwhat (?:goes|stands|belongs|must go|has to go|should go) on (?:the|a|my|our) (?:labels?|tins?|lids?)\b|\b(?:which|what) price\b|\b(?:must|should|does|do|has|have|needs?)\b(?: to)? (?:a|the|my|our) (?:label|tin|lid|jar|pot)s? (?:have to |need to )?say\b|\b(?:what|which|legal|right|falling|descending) order\b|\bhow (?:do|should|must|can) (?:i|we) (?:write|put|state|print) (?:the |my |a )?(?:net|ingredients?|inci|lot|best before|weight)\b/i;
/** "Write me a poem", "say hello to everyone": something done for people, not words on a tin. */
const forPeople =
  /\b(?:write|tell|say|show|print|sell)\s+(?:me|us|you|him|her)\b|\bwrite (?:out |down |up )?(?:the|a|our|my) (?:plan|list|shopping list|recipe|schedule|timeline|handout)\b|\b(?:can|could|will|would) you (?:please )?call\b(?! (?:it|this|that|them)\b)|\bsay (?:(?:a|some|the) (?:prayer|word|words|few words)|hello|hi|thanks|thank you|sorry|goodbye)\b/i;

const isNoWording = (text: string): boolean =>
  (labelMaking.test(text) || forPeople.test(text)) && quoted(text) === undefined;

/** After a wording "and cooling peppermint feel?" is another one, unless it measures something. */
const weightOfMore = (text: string): number => {
  if (quoted(text) !== undefined) return 2.9;
  return /^(?:and|or)\b.*\?$/i.test(text) && !/\d/.test(text) ? 2.65 : 2.2;
};

const claimFollow = (
  text: string,
  region: Region | undefined,
  last: Readonly<Record<string, unknown>>,
): Claim | undefined => {
  const before = last.wording;
  if (typeof before === 'string' && sameAgain.test(text))
    return claim({ ...last, ...defined({ region }) }, 3);
  const more = followed(text);
  if (more) return settle(more, region, weightOfMore(text));
  return region && typeof before === 'string' && text.trim().length < 24
    ? claim({ wording: before, region }, 2.2)
    : undefined;
};

const aroundNames =
  /\b(?:of|for|on|by|at|in|to|the|a|my|our|recipe|tins?|jars?|sticks?|\d+|ml|g|oz|rules?|law|shops?|market|labels?|safety|caution|us|uk|eu)\b|[^a-z]/gi;

/** "Packaging wording for R, 15 ml": which words a label has to carry, and none of the maker's own. */
const namesOnlyRecipe = (wording: string, { items, text }: Reading): boolean => {
  const recipe = items.find(({ letter }) => letter === 'R');
  if (!recipe || quoted(text) !== undefined) return false;
  const rest = wording.replace(text.slice(recipe.from, recipe.to), ' ');
  return rest !== wording && rest.replace(aroundNames, '') === '';
};

/** Amounts of something, a heat, a code of the book: what a label may say is worded without. */
const isMeasure = ({ letter }: Item): boolean => /^[gvtrR]$/.test(letter);

/** "My tins say 15 ml and I bought 40 of them", "call back everything from K12": promises nothing, and is about the bench. */
const isBenchTalk = (wording: string, reading: Reading): boolean =>
  quoted(reading.text) === undefined &&
  (reading.items.some(isMeasure) || lotsIn(reading).length > 0) &&
  judgeClaim(wording, 'us').matches.length === 0;

const ownWording = (text: string, reading: Reading): string | undefined => {
  const wording = wordingIn(text);
  const isOther =
    wording !== undefined && (namesOnlyRecipe(wording, reading) || isBenchTalk(wording, reading));
  return isOther ? undefined : wording;
};

/** "And under US rules", "what about customers in Canada": the same wording elsewhere. */
const elsewhereOnly =
  /\b(?:and|so|but|then|what|how|about|if|i|we|sell|sold|selling|it|customers?|buyers?|people|folks|for|from|in|at|to|by|under|the|a|rules?|law|market|same|too|also|over|up|down|there|does|that|hold|go|ok|okay|now|going)\b|[^a-z]/gi;
const sameElsewhere = ({ text: heard, last }: Reading): Claim | undefined => {
  const text = heard.replace(/^[^"]{0,80}[?.,;-]\s*(?:no|or rather|i mean)\b[\s,]*(?=\S)/i, '');
  const said = regionSaid(text) ?? regionBesides(text);
  const wording = last?.topic === 'claim' ? last.request.wording : undefined;
  if (!said || typeof wording !== 'string') return undefined;
  const rest = `${text.slice(0, said.from)} ${text.slice(said.to)}`;
  return rest.replace(elsewhereOnly, '') === '' ? claim({ wording, region: said.region }, 3.4) : undefined;
};

const claimSaid = (reading: Reading): Claim | undefined => {
  const { text, region } = withoutRegion(reading.text.replace(/\s+/g, ' ').trim());
  const last = reading.last?.topic === 'claim' ? reading.last.request : undefined;
  const follows = last && sameAgain.test(text) ? claimFollow(text, region, last) : undefined;
  if (follows) return follows;
  if (whichWords.test(text) && quoted(text) === undefined) return refuse(oneByOne, 2.6);
  const wording = ownWording(text, reading);
  if (wording !== undefined) return settle(wording, region, region ? 3.3 : 2.95);
  if (isOwnHealth(text)) return refuse(health, 2);
  return last && claimFollow(text, region, last);
};

/** "I could not say no": nothing that is to be printed. */
const saysNo = /\b(?:not|n't|never) say no\b/i;

/** A written-out recipe is no wording, whatever is said about writing it. */
const isRecipe = ({ items }: Reading): boolean =>
  items.filter(({ letter }, at) => letter === 'i' && /[g%]/.test(items[at - 1]?.letter ?? '')).length > 1;

/** What a message would mean as a question about a wording on a label. */
export const claimWording = (reading: Reading): Claim | undefined => {
  if (saysNo.test(reading.text) || isRecipe(reading)) return undefined;
  if (isNoWording(reading.text)) return undefined;
  return sameElsewhere(reading) ?? claimSaid(reading);
};
