import type { Trouble } from '../answer.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { echo } from './ask-back.ts';
import { cueWords } from './cues.ts';
import { inventingWords } from './design-words.ts';
import type { Item } from './item.ts';
import { leftover } from './leftover.ts';
import { readPointed } from './pointed-name.ts';
import { scaleWords } from './scale-claim.ts';
import { looseWords, readScale } from './scale-reading.ts';
import { targetTrouble } from './scale-troubles.ts';
import { changesSomething, continued, type Wish } from './scale-wish.ts';
import { type ChangeBody, takeChangeBody } from './substitute-body.ts';
import { type Choice, isChosen, takeChoice, withChoice } from './substitute-choice.ts';
import { takeCompared, takeOutcomeAsked } from './substitute-compare.ts';
import {
  bodyOf,
  type Draft,
  linesOf,
  phraseDraft,
  type Said,
  swapsBefore,
  withFurther,
  withoutDraft,
} from './substitute-draft.ts';
import { lastChange } from './substitute-last.ts';
import { idsOf } from './substitute-names.ts';
import { isOnlyTalk, takeAsked } from './substitute-open.ts';
import { type PartRead, takePart } from './substitute-part.ts';
import { type Phrase, takeFurther, takePhrase } from './substitute-phrases.ts';
import { sameChange, strangeFree, withoutInIt } from './substitute-same.ts';
import { claimScores } from './substitute-scores.ts';
import { inWhat, noRecipeCalled, notPlaced } from './substitute-troubles.ts';
import { takeWithouts, type Withouts } from './substitute-without.ts';
import { substituteWords } from './substitute-words.ts';
import { type Board, boardOf } from './target.ts';

const known: ReadonlySet<string> = new Set([...substituteWords, ...scaleWords]);

const wantsOut = ({ kinds, names }: Withouts): boolean => kinds.length + names.length > 0;

const hasBody = ({ recipe, lines }: ChangeBody): boolean => recipe !== undefined || lines !== undefined;

/** Asked in general, candidates are judged in a plain salve; everything else needs its recipe. */
const needsBody = ({ request }: Draft): boolean => request.replaces === undefined;

const isHalfMake = (make: unknown): Trouble | undefined => {
  if (!make || typeof make !== 'object') return undefined;
  const { stepG: _s, lossPercent: _l, ...amounts } = make as Wish;
  return Object.keys(amounts).length > 0 ? targetTrouble(amounts) : undefined;
};

/** "My niece is allergic": why something is left out asks for nothing more. */
const reasons = ['allergic', 'allergy', 'allergies', 'vegan'];

const knownHere = ({ withouts }: Said): ReadonlySet<string> =>
  wantsOut(withouts) ? new Set([...known, ...reasons]) : known;

/** "Save recipe Vegan Stick: …" asks for something of its own; that is no talk. */
const asksElse = (words: string): boolean => words.split(' ').some((word) => cueWords.has(word));

/** "… in Harbour Lights balm": a name nobody knows, which no general answer is meant for. */
const namesUnknown = ({ items, taken }: Board): boolean =>
  items.some(
    (item, at) => item.letter === 'w' && !taken[at] && !known.has(item.word) && items[at + 1]?.letter === 'B',
  );

/** With talk around it, a change is less sure than one that stands alone. */
const looseWeight = 2.65;
const looseAskWeight = 2.9;
/** "Can a customer with a nut allergy use it?" asks, and wants nothing changed. */
const changing =
  /\b(?:make|making|change|changing|redo|rework|adapt|alter|adjust|modify|rewrite|version|variant|without|free|need|needs|want|wants|turn|convert|do|instead|suit\w*|like|swap|replace)\b/i;

/** What is left of the message once its change is read: what blocks it, what is only talk. */
const restOf = (board: Board, said: Said, { request }: Draft) => {
  const named = hasBody(said.body) && !said.body.before;
  const { blocking, aside } = leftover(board, knownHere(said), named);
  const words = [...blocking.map((item) => item.word), ...aside.filter(asksElse)];
  const asksWhat = request.replaces !== undefined;
  const whole = hasBody(said.body) || (asksWhat && !namesUnknown(board));
  const wished = request.from !== undefined || asksWhat || changing.test(said.reading.text);
  const talk = words.length > 0 && whole && wished && isOnlyTalk(board, blocking, asksWhat);
  const left = [...aside, ...(talk ? blocking.map(({ word }) => word) : [])];
  return {
    blocks: talk ? [] : words,
    talk,
    aside: left.length > 0 ? [`I set aside "${echo(left.join('", "'))}".`] : [],
  };
};

const withoutBody = (board: Board, draft: Draft): Claim => {
  const loose = looseWords(board, known);
  return loose ? refuse(noRecipeCalled(loose), 0.9) : refuse(inWhat, 0.9, draft.request);
};

const looseWeightOf = ({ request }: Draft): number =>
  request.replaces === undefined ? looseWeight : looseAskWeight;

const settle = (board: Board, said: Said, draft: Draft, sure: boolean): Claim => {
  const weight = sure ? 3 : 2.4;
  const { blocks, talk, aside } = restOf(board, said, draft);
  if (draft.trouble) return refuse(draft.trouble, talk || blocks.length > 0 ? 1.2 : weight);
  if (needsBody(draft) && !hasBody(said.body)) return withoutBody(board, draft);
  if (blocks.length > 0) return refuse(notPlaced(blocks), 1.2);
  const half = isHalfMake(draft.request.make);
  if (half) return refuse(half, weight, draft.request);
  const assumed = [...said.body.assumed, ...draft.assumed, ...aside];
  return claim(draft.request, talk ? looseWeightOf(draft) : weight, assumed);
};

/** Words that ask what else would do. */
const asking =
  `what whats what's which ideas idea suggestions options alternatives closest nearest else`.split(' ');

/** "Only what is in stock, no cocoa butter" has a "what" that asks for nothing. */
const asksWhat = (reading: Reading, { stocked }: Choice): boolean =>
  anyWord(reading, stocked ? asking.filter((word) => !word.startsWith('what')) : asking);

/** "The coconut oil has gone solid": how it is, and not that there is none. */
const changed = /\b(?:gone|went) (?:solid|hard|grainy|liquid|runny|soft|sandy|lumpy|cloudy)\b/i;
const otherwise = /\b(?:instead|else|replace|alternative|substitute|swap)/i;

/** "Don't swap the beeswax", "my vegan friends love it". */
const forbids =
  /\b(?:don't|dont|do not|never|didn't|no need to|needn't) (?:want to |wish to |need to )?(?:swap|replace|substitute|change|switch)\b|\b(?:friends?|customers?|people|members?|they|she|he)\b[^.?!]{0,20}\b(?:loves?|loved|adores?|bought|enjoys?|enjoyed)\b/i;

/** "Can a customer with a nut allergy use it?" */
const usesIt =
  /^\W*(?:can|could|may|should) (?:a|an|my|our|someone|somebody|people|anyone|he|she|they)\b[^.?!]{0,60}\b(?:use|wear|have|try)\b(?![^.?!]{0,60}\b(?:instead|in place|without|version)\b)/i;

/** "Is it vegan?", "does it contain nuts?", "I swapped …": told or asked about, not asked for. */
const isOnlyAsked = ({ text }: Reading): boolean =>
  usesIt.test(text) ||
  forbids.test(text) ||
  (changed.test(text) && !otherwise.test(text)) ||
  (/^\W*(?:is|are|does|do(?! (?:the|a|an|our|my|it|that|this|me)\b)|has|did|was|were|isn't|doesn't)\b/i.test(
    text,
  )
    ? !/\b(?:swap|replace|substitut|instead|in place|rather|version|alternative|replacement|way\b|possible|(?:i|we) (?:could|can) use|to use|works? like|like|closest|similar|else)/i.test(
        text,
      )
    : /(?<!\b(?:if|suppose|imagine) )\b(?:i|we|they|she|he) (?:have |had )?(?:swapped|replaced|substituted|exchanged)\b/i.test(
        text,
      ));

/** An amount to make after a change: "and make 30 tins of 15 ml". */
const continuedMake = (reading: Reading): Claim | undefined => {
  const last = lastChange(reading);
  if (!last || last.replaces !== undefined || (last.recipe ?? last.lines) === undefined) return undefined;
  const make = (last.make ?? {}) as Wish;
  const read = readScale({ ...reading, last: { topic: 'scale', request: make } });
  if (!changesSomething(read) || read.recipe !== undefined || read.lines.length > 0) return undefined;
  if (read.trouble) return refuse(read.trouble, 2.7);
  const blocking = leftover(read.board, known, false).blocking.map((item) => item.word);
  if (blocking.length > 0) return refuse(notPlaced(blocking), 0.8);
  const request = { ...last, make: continued(make, read) };
  const half = isHalfMake(request.make);
  return half ? refuse(half, 2.7, request) : claim(request, 2.7);
};

/** A name on its own after a change, or with "instead": "what about rice bran wax?", "and with sunflower wax?". */
const loneName = (board: Board, reading: Reading): Phrase | undefined => {
  const names = board.items.filter((item) => item.letter === 'i');
  const [to, second] = names;
  const follows = lastChange(reading) !== undefined;
  if (!to || second || !follows || board.items.some((item) => /[gvd%pnrR]/.test(item.letter)))
    return undefined;
  board.taken[board.items.indexOf(to)] = true;
  return { kind: 'lone', to };
};

/** The recipe that was missing: "In which recipe?" – "Fernlea hand balm". */
const suppliedBody = (board: Board, reading: Reading): Claim | undefined => {
  const last = lastChange(reading);
  if (!last || (last.recipe ?? last.lines) !== undefined || last.replaces !== undefined) return undefined;
  const body = takeChangeBody(board, reading, known);
  if (!hasBody(body) || body.before || body.trouble) return undefined;
  if (leftover(board, known, false).blocking.length > 0) return undefined;
  return claim({ ...last, ...bodyOf(body) }, 2.6, body.assumed);
};

/** "And the cheapest?" after candidates, "only what is in stock" after a change: the same, chosen otherwise. */
const chosenAgain = (board: Board, reading: Reading, choice: Choice): Claim | undefined => {
  const last = lastChange(reading);
  const plain = (choice.gramForGram || choice.dark) && last?.from === undefined;
  if (!last || plain || board.items.some((item, at) => !board.taken[at] && /[iRgvn%]/.test(item.letter)))
    return undefined;
  if (leftover(board, known, false).blocking.length > 0) return undefined;
  const { scores: _scores, about: _about, ...rest } = last;
  return claim(withChoice(rest, choice), 2.7);
};

/** "A cheaper Fernlea hand balm", "Fernlea hand balm from what we have": no ingredient is named, the recipe is. */
const chosenWhole = (board: Board, reading: Reading, choice: Choice): Claim | undefined => {
  if (choice.gramForGram || choice.dark || anyWord(reading, ['cost', 'costs', 'sell', 'margin']))
    return undefined;
  const body = takeChangeBody(board, reading, known);
  const asked = anyWord(reading, [
    'version',
    'make',
    'cheaper',
    'cheapest',
    'instead',
    'only',
    'swap',
    'way',
    'from',
    'with',
  ]);
  if (!hasBody(body) || body.before || !asked || body.trouble) return undefined;
  if (leftover(board, known, true).blocking.length > 0) return undefined;
  return claim(withChoice(bodyOf(body), choice), 2.7, body.assumed);
};

const isOnly = ({ letter, ingredients }: Item, id: unknown): boolean =>
  letter === 'i' && ingredients !== undefined && ingredients.includes(String(id));

/** "What if only half?" after a swap: the same swap in part. */
const partAgain = (reading: Reading): Claim | undefined => {
  const last = lastChange(reading);
  const asks = /\b(?:only|just|what if|how about|what about|of it|part(?:ly)?)\b/i.test(reading.text);
  if (last?.from === undefined || !asks || anyWord(reading, ['make', 'batch', 'recipe'])) return undefined;
  const board = boardOf(reading.items);
  const [share, second] = board.items.filter(({ letter }) => /[n%M]/.test(letter));
  const amount = share?.letter === '%' ? (share.value ?? 0) / 100 : share?.value;
  if (!share || second || amount === undefined || amount <= 0 || amount >= 1) return undefined;
  board.taken[board.items.indexOf(share)] = true;
  for (const [at, item] of board.items.entries())
    if (/[NW]/.test(item.letter) || /^(?:do|that|it)$/.test(item.word) || isOnly(item, last.from))
      board.taken[at] = true;
  if (leftover(board, known, false).blocking.length > 0) return undefined;
  return claim({ ...last, part: { amount, unit: 'share' } }, 2.9);
};

const isSure = (phrase: Phrase | undefined, body: ChangeBody): boolean =>
  (phrase !== undefined && phrase.kind !== 'gone') || hasBody(body);

/** Everything the message says, with the recipe's own ingredients and those that swaps before brought in. */
const saidIn = (reading: Reading, withouts: Withouts, body: ChangeBody): Said => {
  const lines = linesOf(reading, body);
  const bare: Said = { reading, withouts, body, own: undefined };
  if (!lines) return bare;
  return { ...bare, own: [...new Set([...idsOf(lines), ...swapsBefore(bare).map(({ to }) => to)])] };
};

/** How much of it, and how to choose. */
interface How {
  readonly part: PartRead | undefined;
  readonly choice: Choice;
}

const mostOfWhole = 90;

/** "New balm, 20 % mango butter, no beeswax": shares that are far from a whole are wished for, and no recipe. */
const isWishList = (lines: ChangeBody['lines']): boolean => {
  const shares = lines?.map(({ unit, amount }) => (unit === 'percent' ? Number(amount) : Number.NaN)) ?? [];
  return shares.length > 0 && shares.reduce((sum, share) => sum + share, 0) < mostOfWhole;
};

/** What is in stock has to be enough for what is made of it. */
const madeOf = ({ replaces }: Wish, { make }: ChangeBody, { stocked }: Choice): Wish =>
  stocked && replaces !== undefined && Object.keys(make).length > 0 ? { make } : {};

const changeClaim = (
  board: Board,
  reading: Reading,
  phrase: Phrase | undefined,
  withouts: Withouts,
  { part, choice }: How,
): Claim | undefined => {
  const further = phrase?.kind === 'swap' ? takeFurther(board) : [];
  const body = takeChangeBody(board, reading, known);
  if (body.trouble) return refuse(body.trouble, hasBody(body) ? 2.7 : 1);
  // "And without coconut?" after a design belongs to the design.
  const onlyOut = !phrase || phrase.kind === 'gone';
  if (onlyOut && body.before && reading.last?.topic === 'design') return undefined;
  if (onlyOut && isWishList(body.lines)) return undefined;
  const said = { ...saidIn(reading, withouts, body), part };
  const draft = phrase ? phraseDraft(said, phrase) : withoutDraft(said);
  if (!draft) return undefined;
  const whole = withFurther(said, draft, further);
  const request = withChoice({ ...whole.request, ...madeOf(whole.request, body, choice) }, choice);
  return settle(board, said, { ...whole, request }, isSure(phrase, body));
};

const leavingOut = new Set(['nut', 'nuts', 'free', 'palm', 'scent', 'fragrance']);

/**
 * "24 tins of 15 ml" of something, and no word that takes anything out of it: nothing to change. Looked at first, because
 * most messages are of this kind and finding out the long way costs more than answering them.
 */
const isPlainBatch = ({ items, last }: Reading): boolean =>
  last?.topic !== 'substitute' &&
  items.some((item) => item.letter === 'c') &&
  !items.some((item) => /[zNiZ]/.test(item.letter) || leavingOut.has(item.word));

/** "Think up something vegan for hands": a new one, and no change of any that is saved. */
const invents = (reading: Reading): boolean =>
  (anyWord(reading, inventingWords) || /\b(?:think|come|dream|make) up\b/i.test(reading.text)) &&
  !reading.items.some(({ letter }) => letter === 'R');

/** "How long should calendula stand in the oil": it stays there. */
const stands =
  /\b(?:how long|hours|days|weeks|how warm|temperature)\b.{0,60}\b(?:stand|stands|sit|sits|stay|stays)\s+in\s+(?:the\s+|my\s+|its\s+)?(?:\w+\s+)?(?:oil|jar|sun)\b/i;

const read = (heard: Reading): Claim | undefined => {
  const reading = withoutInIt(heard);
  const same = sameChange(reading);
  if (same) return same;
  if (isPlainBatch(reading) || isOnlyAsked(reading) || invents(reading) || stands.test(reading.text))
    return undefined;
  const again = claimScores(reading) ?? partAgain(reading);
  return again ?? changeOf(reading);
};

/** What is to be changed, by its words, by what is left out, or by how it is to be chosen. */
const changeOf = (reading: Reading): Claim | undefined => {
  const board = boardOf(reading.items);
  const choice = takeChoice(board, reading);
  const part = takePart(board);
  takeOutcomeAsked(board, reading);
  const taken =
    takeCompared(board, reading) ?? takeAsked(board, reading) ?? takePhrase(board, asksWhat(reading, choice));
  const withouts = takeWithouts(board);
  if (taken || wantsOut(withouts)) {
    const strange = strangeFree(board);
    if (strange) return refuse(notPlaced([`${strange}-free`]), 2.6);
    return changeClaim(board, reading, taken, withouts, { part, choice });
  }
  if (isChosen(choice)) return chosenAgain(board, reading, choice) ?? chosenWhole(board, reading, choice);
  const phrase = loneName(board, reading);
  if (phrase) return changeClaim(board, reading, phrase, withouts, { part, choice });
  return suppliedBody(boardOf(reading.items), reading) ?? continuedMake(reading);
};

/** What a message would mean as a wish to replace something or to do without it. */
export const claimSubstitute = readPointed(read);
