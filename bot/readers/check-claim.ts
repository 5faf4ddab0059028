import { watchedThing } from '../../core/check/composition.ts';
import { defined } from '../../core/defined.ts';
import { ingredientById, isAdditive, isAroma } from '../../core/ingredients.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import { gramsIn, isMassUnit } from '../../core/units.ts';
import type { Trouble } from '../answer.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { askWhich } from './ask-back.ts';
import { type Subject, subjectBefore, takeOwnIngredients, takeRemembered, takeSubject } from './body.ts';
import { isCalledOff } from './called-off.ts';
import { otherShare, takeAdded } from './check-added.ts';
import { inBalm, isAsked, type Parts, weightOf } from './check-asked.ts';
import { type Settled, settleDoubts } from './check-doubts.ts';
import { asksLook, asksWhether, goesOn, isListed } from './check-forms.ts';
import {
  withoutCounts,
  withoutHeadings,
  withoutInnerCommas,
  withoutListName,
  withoutRemarks,
  withoutTails,
  withUnclear,
} from './check-lines.ts';
import {
  doubtfulNames,
  freshHerbs,
  takeAnalyses,
  takeDay,
  takeRegion,
  takeWatchedHerbs,
  withWatched,
} from './check-parts.ts';
import { withEach, withoutSteeped } from './check-steeped.ts';
import { withVague } from './check-vague.ts';
import { takeWearer } from './check-wearer.ts';
import { checkWords, mildCues, strongCues } from './check-words.ts';
import { leftover } from './leftover.ts';
import { unknownRecipe } from './scale-troubles.ts';
import { namesOwnBalm } from './second-look.ts';
import { type Board, boardOf, findShape, take } from './target.ts';

const missing = (text: string): Trouble => ({ code: 'missing', text });
const ofWhat = missing(
  'Check what? Name a recipe, write one out, or ask about one oil: "check Fernlea mint lip balm", "is 2% peppermint oil ok in a lip balm".',
);

/** "10 drops of peppermint oil in 100 g": the grams are the batch, not the oil. */
const takeBatch = (board: Board, asksHowMany: boolean): number | undefined => {
  const found =
    (asksHowMany ? findShape(board, /g(?=o?[yB]*[.,;:\n]+%o?i)/) : undefined) ??
    findShape(board, /g(?<=[d%gv]o?i(?:[,A]+[d%gv]o?i)*[wZITFo]{0,3}[ITFo]+[oByb]*g)(?![oB]*i)/) ??
    findShape(board, /g(?<=i[,:]?[d%][wZITFo]{0,3}[ITFo][oByb]*g)(?![oB]*i)/) ??
    findShape(
      board,
      asksHowMany ? /(?<=i[wITF]*[ITF][oByb]*)g(?![oB]*i)/ : /(?<=i[wIF]*[IF][oByb]*)g(?![oB]*i)/,
    );
  const item = found ? board.items[found.from] : undefined;
  if (!found || item?.value === undefined || !isMassUnit(item.unit ?? '')) return undefined;
  take(board, found.from, found.to);
  return item.value * gramsIn(item.unit as 'g');
};

const has = (subject: Subject): boolean =>
  subject.recipe !== undefined ||
  subject.lines !== undefined ||
  subject.ingredient !== undefined ||
  subject.trouble !== undefined;

const withAdded = (own: Subject, board: Board, reading: Reading): Subject => {
  const added = own.recipe === undefined ? undefined : takeAdded(board, reading, own.recipe);
  return added ? { lines: added.lines, assumed: [...own.assumed, added.assumed] } : own;
};

/** "Is that ok with a nut allergy?" after a look at a recipe. */
const pointsBack = ({ last, text }: Reading): boolean =>
  last?.topic === 'check' &&
  /\b(?:it|that|this|they)\b/i.test(text) &&
  /\ballerg|\bnuts?\b|\bsun(?:light|shine)?\b/i.test(text);

const subjectOf = (board: Board, reading: Reading, strong: boolean): Subject => {
  const own = takeSubject(board);
  if (has(own)) return withAdded(own, board, reading);
  const near = takeRemembered(board, reading, checkWords);
  if (near) return near;
  const before = strong || pointsBack(reading) ? subjectBefore(reading) : undefined;
  return before ? { ...before, assumed: [] } : own;
};

const markFresh = (lines: readonly RecipeLine[], fresh: readonly string[]): readonly RecipeLine[] =>
  fresh.length === 0
    ? lines
    : lines.map((line) => (fresh.includes(line.ingredient) ? { ...line, fresh: true } : line));

const doubtfulIn = (board: Board, text: string): readonly string[] | undefined => {
  const items = board.items.filter(({ doubtful }) => doubtful).map(({ word }) => word.slice(0, 40));
  const all = [...new Set([...doubtfulNames(text), ...items])].slice(0, 5);
  return all.length > 0 ? all : undefined;
};

const partsOf = (board: Board, reading: Reading, strong: boolean, steeped: readonly string[] = []): Parts => {
  const { text } = reading;
  const analyses = takeAnalyses(board, text);
  const infused = [...new Set([...takeWatchedHerbs(board), ...steeped])].slice(0, 5);
  const more = {
    region: takeRegion(board, text),
    on: takeDay(board, text),
    wearer: takeWearer(board, text),
    analyses: analyses.length > 0 ? analyses : undefined,
    infused: infused.length > 0 ? infused : undefined,
    batchG: takeBatch(board, /\bhow (?:many|much)\b/i.test(text)),
    use: /\brinse[- ]off|\bscrub|washed off\b/i.test(text) ? 'rinse-off' : undefined,
    doubtful: doubtfulIn(board, text),
  };
  const subject = subjectOf(board, reading, strong);
  const fresh = freshHerbs(board.items, text);
  const one = subject.ingredient?.ingredients?.[0];
  return {
    subject: { ...subject, ...defined({ lines: subject.lines && markFresh(subject.lines, fresh) }) },
    more: defined({ ...more, fresh: one !== undefined && fresh.includes(one) ? true : undefined }),
  };
};

const settle = ({ subject, more }: Parts, weight: number, settled: readonly string[]): Claim => {
  const { ingredient, recipe, lines, trouble, assumed } = subject;
  if (trouble) return refuse(trouble, weight);
  if (ingredient && (ingredient.ingredients?.length ?? 0) !== 1) return refuse(askWhich(ingredient), weight);
  if (recipe === undefined && !lines && !ingredient) return refuse(ofWhat, 0.9);
  const misspelt = ingredient?.misspelt
    ? [`I read "${ingredient.misspelt}" as ${ingredient.ingredients?.[0]}.`]
    : [];
  return claim(
    {
      ...defined({
        recipe,
        lines: recipe === undefined ? lines : undefined,
        ingredient: ingredient?.ingredients?.[0],
        herb: ingredient?.infusedWith,
      }),
      ...more,
    },
    weight,
    [...settled, ...assumed, ...misspelt],
  );
};

/** "And for children?", "and in the US?" after a check: the same question for somebody else. */
const follows = (reading: Reading, { subject, more }: Parts): Claim | undefined => {
  if (reading.last?.topic !== 'check' || has(subject) || Object.keys(more).length === 0) return undefined;
  const { apply: _apply, ...before } = reading.last.request;
  return claim(
    { ...before, ...more },
    /^\W*(?:and|or|what about|how about|under|by|in|for|with)\b/i.test(reading.text) ? 3.3 : 2.4,
  );
};

/** "And the hand balm?" after a look at another recipe. */
const alsoLook = (reading: Reading, { subject, more }: Parts): Claim | undefined => {
  const { last, text } = reading;
  if (last?.topic !== 'check' || subject.recipe === undefined || !goesOn.test(text)) return undefined;
  const { region, on, wearer, use } = last.request;
  return claim(
    { ...defined({ region, on, wearer, use }), ...more, recipe: subject.recipe },
    2.6,
    subject.assumed,
  );
};

const applying =
  /^\W*(?:(?:yes|yep|ok|okay|please|pls|pipkin|now|go ahead|and|then)\b[\s,.!]*)*(?:apply|make|do|take|save|use)\s+(?:it|that|this|them|(?:the|that|those|these|your|all)\s+(?:change|changes|cut|cuts|suggestions?|fix))(?:\s+(?:please|pls|to it|now|then))*\W*$/i;

/** "Apply it", after a look that said what would clear it. */
const claimApply = (reading: Reading): Claim | undefined => {
  const { last, text } = reading;
  if (last?.topic !== 'check' || !applying.test(text)) return undefined;
  const { recipe, lines } = last.request;
  return recipe === undefined && lines === undefined
    ? undefined
    : claim({ ...last.request, apply: true }, 3.2);
};

/** "Any objection to 0.3 % …?", "ok to sell 20 g beeswax, …": nothing is to be filled up there. */
const withoutObject = (items: Reading['items']): Reading['items'] =>
  items.filter(
    ({ letter }, at) =>
      letter !== 'T' ||
      !(
        /^(?:objections?|say|against|opposed)$/.test(items[at - 1]?.word ?? '') ||
        /^(?:sell|make|use|wear|put|pour|give|offer|hand)$/.test(items[at + 1]?.word ?? '')
      ),
  );

/** "If I melt 20 % beeswax, …, is that a safe lip balm?" asks nothing of the melting. */
const melting = /\b(?:if|when|once|before|after|as) (?:i|we|you|they|she|he)(?:'d|'ll|'ve)? melt(?:ed)?\b/i;
const withoutMelting = (items: Reading['items'], text: string): Reading['items'] =>
  melting.test(text) ? items.filter(({ word }) => !/^melt(?:ed)?$/.test(word)) : items;

/** "20 drops per 200 g": into so much of it. */
const perAsIn = (items: Reading['items']): Reading['items'] =>
  items.map((item, at) =>
    item.word === 'per' && /[gv]/.test(items[at + 1]?.letter ?? '') ? { ...item, letter: 'I' } : item,
  );

const plainItems = ({ items, text }: Reading): Reading['items'] =>
  withEach(perAsIn(withoutObject(withoutMelting(items, text))));

const isCued = (reading: Reading, strong: boolean): boolean =>
  strong || anyWord(reading, mildCues) || inBalm.test(reading.text) || asksWhether(reading);

/** A written-out list that is to be looked at: headings, remarks and counts are passed over, open names are judged each. */
const asList = ({ items, assumed }: Settled): Settled => {
  const { items: plain, passed } = withoutRemarks(
    withoutTails(withoutCounts(withoutHeadings(withoutInnerCommas(items)))),
    checkWords,
  );
  const { items: settled, unclear } = withUnclear(plain);
  const said = passed.length > 0 ? [`I passed over "${passed.join(' ')}".`] : [];
  return { items: settled, assumed: [...assumed, ...said], unclear };
};

/** A look at what the message names, its doubtful names settled. */
const looked = (reading: Reading, read: Settled, strong: boolean): Claim | undefined => {
  const unnamed = withoutListName(read.items);
  const listed = strong && isListed(unnamed) && !unnamed.some(({ letter }) => letter === 'R');
  const { items, assumed, unclear = [] } = listed ? asList({ ...read, items: unnamed }) : read;
  const board = boardOf(items);
  const found = partsOf(board, reading, strong, read.infused);
  const parts = unclear.length > 0 ? { ...found, more: { ...found.more, unclear } } : found;
  takeOwnIngredients(board, reading, parts.subject.recipe, parts.subject.lines);
  const clear =
    has(parts.subject) && (listed || parts.subject.recipe !== undefined || reading.words.has('check'));
  if (leftover(board, checkWords, clear && strong).blocking.length > 0) return undefined;
  const again = follows(reading, parts) ?? alsoLook(reading, parts);
  if (again) return again;
  if (!isCued(reading, strong)) return undefined;
  const weight = isAsked(reading, parts, strong) ? weightOf(reading, parts, strong) : undefined;
  return weight === undefined ? undefined : settle(parts, weight, assumed);
};

const mayAdd =
  /\b(?:can|could|may|might|should|shall|am i allowed to|is it (?:ok|okay|safe|fine) to)\s+(?:(?:i|we|you|one)\s+)?(?:also\s+)?(?:put|add|use|mix|stir|pour|have)\b/i;

const isWatched = (id: string): boolean => {
  const found = ingredientById(id);
  return watchedThing(id) !== undefined || (found !== undefined && isAdditive(found) && !isAroma(found));
};

/** "May I put water in R": of a thing that is watched, whatever it goes into and however little of it. */
const addedWatched = (reading: Reading, items: Reading['items']): Claim | undefined => {
  if (!mayAdd.test(reading.text) || items.some(({ letter }) => /[g%vdpnc]/.test(letter))) return undefined;
  const [only, second] = items.filter(({ letter }) => letter === 'i');
  const into = items.some(({ letter }) => letter === 'R');
  const [id] = only?.ingredients ?? [];
  if (!into || second || id === undefined || !isWatched(id)) return undefined;
  return claim({ ingredient: id }, 3.1, ['I looked at it for any balm.']);
};

/** "Check the Sea Mist balm": one that nobody saved. */
const checked =
  /\bcheck (?:the |our |my )?((?:[A-Z][\w'-]{1,30} ){1,4}(?:lip )?(?:balm|salve|butter|stick))\b/;
const unknownBalm = (reading: Reading): Claim | undefined => {
  const [, name] = checked.exec(reading.text.replace(/^check/i, 'check')) ?? [];
  return name && namesOwnBalm(reading) ? refuse(unknownRecipe(name), 1) : undefined;
};

/** What a message would mean as a look at a recipe, or at one share of one thing. */
export const claimCheck = (reading: Reading): Claim | undefined => {
  if (isCalledOff(reading.text)) return undefined;
  const applied = claimApply(reading);
  if (applied) return applied;
  const strong = anyWord(reading, strongCues) || asksLook(reading);
  if (mayAdd.test(reading.text)) {
    const added = addedWatched(reading, withWatched(reading.items, reading.text));
    if (added) return added;
  }
  if (!isCued(reading, strong) && reading.last?.topic !== 'check') return undefined;
  const vague = withVague(plainItems(reading), reading.text);
  const doubts = settleDoubts(withWatched(vague.items, reading.text), reading.text);
  const steeped = withoutSteeped(doubts.items);
  const settled = {
    ...doubts,
    items: steeped.items,
    infused: steeped.infused,
    assumed: [...vague.assumed, ...doubts.assumed],
  };
  const share = otherShare(reading, settled.items);
  if (share) return claim(share, 3.05, settled.assumed);
  return looked(reading, settled, strong) ?? unknownBalm(reading);
};
