import type { Reading } from '../reading.ts';
import { cueWords } from './cues.ts';
import type { Item } from './item.ts';
import { letters } from './lexicon.ts';
import type { Phrase } from './substitute-phrases.ts';
import { type Board, free, take } from './target.ts';

/** Ways to ask what else would do, wherever in the message the name stands: "we are out of A. What else works?" */
const asked: readonly RegExp[] = [
  /\bwhat(?:'s|s)? (?:is |are |the |most )*(?:similar|closest|nearest|most like)\b|^\W*(?:alternatives?|substitutes?|replacements?)\b/i,
  /\b(?:which|what)(?: other)? (?:oils?|butters?|wax(?:es)?|fats?)\b[^.?!]{0,40}\b(?:stand in|replace|instead|in its place|step in)\b/i,
  /\b(?:suggest|recommend|need|want|find|give|try|is there|got)\b[^.?!]{0,15}\b(?:something|anything) else\b/i,
  /\bwhat(?:'s)? (?:other|could|can|should|would|might|do|does|is|are|will|to)\b[^.?!]{0,60}\b(?:instead(?! of [a-z ]{1,20} (?:for|with|in) )|in (?:its|it's|their) (?:place|stead)|in(?:stead| place| lieu) of|the same(?: job| thing| work)?|works? (?:like|the same)|take (?:its|the) place|step in|similar|nearest|closest)/i,
  /\bwhat else\b(?! (?:is|are) (?:in|it)\b)(?! can i do\b)|\belse (?:works?|is there|would (?:do|work)|to use)\b/i,
  /\b(?:any|other|some|which|what|good|best|better|list|show|suggest|give me|find|candidates)\b[^.?!]{0,25}\b(?:alternatives?|substitutes?|replacements?|candidates?|stand-ins?)\b|\bcandidates? (?:for|to)\b/i,
  /\b(?:vegan|free|plant|good|cheap|cheaper|any|a|easy|simple|best) (?:swap|switch|sub|stand-in) for\b/i,
  /\b(?:which|what) (?:oils?|butters?|wax(?:es)?) (?:is|are|comes?|would be) (?:the )?(?:closest|nearest|most (?:like|similar)|similar)/i,
  /\b(?:anything|something) (?:else )?(?:that (?:works?|acts?|behaves?|sets?) |just )?(?:like|similar to|close to)\b/i,
];

/** "I can't get candelilla, what could we use?": why it is looked for, and that something is. */
const lack =
  /\b(?:can't|cannot|cant|couldn't|no|out of|don't have|doesn't have|haven't|hasn't|without|finished|gone|stopped|sold out|allergic|allergy|reacts?|reaction|tolerate|discontinued|ran|short|hate|hates|dislikes?|bear|avoid|bad|rancid)\b/i;
const use =
  /\bwhat (?:can|could|should|do|would|might|may) (?:i|we|you|one|she|he|they) (?:use|take|try|put|get|recommend|suggest|do)\b(?! (?:with|it|about))|\bwhat now\b|\bany (?:ideas?|suggestions?)\b|\bwhat (?:would|could|will) (?:work|do)\b|\b(?:which|what) (?:oil|butter|wax) (?:can|could|should|would|do|might)\b/i;

/** "What about candelilla instead?" names what comes in; "what else can I make with shea" asks for no replacement. */
const otherwise =
  /\b(?:what|how) about\b|\b(?:make|do|mix|pair|combine|goes?|go|cook) (?:\w+ )?with\b|\bwhat (?:is|are|does)\b[^.?!]{0,20}\bmean/i;

/** The one ingredient a message is about, when it asks what else would do. */
export const takeAsked = (board: Board, { text }: Reading): Phrase | undefined => {
  const all = free(board).filter(({ letter }) => letter === letters.ingredient);
  // "Which oil is closest to jojoba?": the kind that is asked for is not what it is compared with.
  const names = all.some(({ generic }) => !generic) ? all.filter(({ generic }) => !generic) : all;
  const [what, ...others] = names;
  if (!what || others.some(({ ingredients }) => ingredients?.[0] !== what.ingredients?.[0])) return undefined;
  if (free(board).some(({ letter, word }) => /[gvd%pnrtM]/.test(letter) && !/^an?$/.test(word)))
    return undefined;
  if (otherwise.test(text)) return undefined;
  if (!asked.some((shape) => shape.test(text)) && !(lack.test(text) && use.test(text))) return undefined;
  for (const item of all) take(board, board.items.indexOf(item), board.items.indexOf(item) + 1);
  return { kind: 'what', what };
};

/** Words that elsewhere are another request, and around a change only tell why it is wanted. */
const fineHere = new Set(
  `which because than or unless who where whose can't cant cannot won't wont isn't isnt aren't doesn't doesnt didn't couldn't haven't better best worse
  allergic allergy allergies sweat weather
  swap swapping swapped replace replaces replacing replacement substitute substitutes substitution switch exchange instead vegan unscented cheap cheaper cheapest
  make fill nut nuts free class course people participants makers change convert update edit recommend suggest propose recipes recipe show list help`.split(
    /\s+/,
  ),
);
/** A dislike tells why something else is looked for; before a swap it forbids it. */
const dislikes = new Set(["don't", 'dont', 'not', 'never', 'buy', 'sell', 'selling', 'sold']);

const mostLoose = 40;

/**
 * True when what is left over can only be talk: no amount, no name, no word that asks for something of its own.
 * @param asksWhat what else would do is asked, so nothing is forbidden by a "don't".
 */
export const isOnlyTalk = (board: Board, blocking: readonly Item[], asksWhat: boolean): boolean =>
  board.items.length <= mostLoose &&
  blocking.every(({ letter }) => /[wzZySLN]/.test(letter)) &&
  free(board).every(
    ({ letter, word }) =>
      fineHere.has(word) ||
      (asksWhat && dislikes.has(word)) ||
      (letter !== letters.danger && !cueWords.has(word)),
  );
