import type { Reading } from '../reading.ts';
import { takeItem } from './body.ts';
import type { Phrase } from './substitute-phrases.ts';
import { type Board, free } from './target.ts';

/** "Compare beeswax and candelilla in R", "beeswax or candelilla in R, which is firmer?" */
const compares =
  /\bcompar(?:e|es|ed|ing|ison)\b|\b(?:versus|vs)\b|\bor\b.{0,60}\bwhich\b|\bwhich\b.{0,60}\bor\b|\b(?:difference|choose|decide) between\b/i;
const comparing =
  /^(?:compare|compares|compared|comparing|comparison|versus|vs|or|and|with|to|which|what|what's|difference|between|choose|decide|one|is|are|makes?|gives?|would|will|be|the|a|firmer|softer|harder|better|firm|soft|hard|me|us|for|once|both|against|balm|done|made|\?|,)$/;

/** How it comes out is what every answer to a swap tells. */
const tail =
  /(?:[,.;]|\band\b|\bthen\b|&)\s*(?:(?:tell|show) (?:me|us) |see |say |let me know |check )?(?:if|whether|does|do|will|would|is|how much)\b(?: (?:it|that|this|they|the balm|still|be|is|are|get|gets|getting|become|becomes|go|goes|turn|turns|come|comes|will|would|out|any|much|a bit|too)){0,5} (?:softer|firmer|harder|creamier|stiffer|soft|firm|hard)\b(?: (?:then|that way|now|too|than before|or firmer|or harder|or softer|or not)){0,2}\s*[?.!]*$/i;

/** Takes "… and tell me if it gets softer" off a change. */
export const takeOutcomeAsked = (board: Board, { text }: Reading): void => {
  const from = tail.exec(text)?.index;
  if (from === undefined) return;
  for (const item of free(board)) if (item.from >= from) takeItem(board, item);
};

/** Two names set side by side for one recipe: the one that is in it against the other. */
export const takeCompared = (board: Board, { text }: Reading): Phrase | undefined => {
  if (!compares.test(text) || /\bmelts?\b|\bgo(?:es)? in\b/i.test(text)) return undefined;
  const named = free(board).filter(({ letter }) => letter === 'i');
  const [from, to, third] = named;
  const others = free(board).filter(({ letter, word }) => !/[iR.]/.test(letter) && !comparing.test(word));
  const hasRecipe = board.items.some(({ letter }) => letter === 'R');
  if (!from || !to || third || !hasRecipe || others.some(({ letter }) => /[gvd%pnrct]/.test(letter)))
    return undefined;
  for (const item of free(board)) if (comparing.test(item.word) || item.letter === 'i') takeItem(board, item);
  return { kind: 'swap', from, to, eitherWay: true };
};
