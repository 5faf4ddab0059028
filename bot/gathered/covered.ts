import { wetHeads } from '../../core/data/rules/wet-words.ts';
import { isOtherThing } from '../../core/exact-names.ts';
import { nameKey } from '../../core/names.ts';
import { type Slot, turning } from '../likeness/features.ts';
import { isInSayings } from '../likeness/likely.ts';
import { isBackground } from '../readers/background-words.ts';
import type { Item } from '../readers/item.ts';
import { letters } from '../readers/lexicon.ts';
import { wordSet } from '../readers/word-list.ts';
import type { Reading } from '../reading.ts';
import type { Use } from './use.ts';

/** Words that turn some requests round, and are only talk around others. */
const mild = wordSet(
  `why where who whom whose which whether because than buy buying bought ought before after other more only note gave given opened long post pay
  order better can't cant shelf pour send eat drink cook bake sell selling`,
);
/** A no that says no to nothing. */
const idleNo =
  /\b(?:not|n't) (?:(?:quite|very|really|too|entirely) )?(?:sure|certain|clear|clever|good at)\b|\b(?:don't|do not|doesn't|didn't) (?:know|mind|remember|understand|have a clue)\b|\bno (?:idea|doubt|hurry|rush|clue|problem|worries|wonder)\b|\b(?:could(?:n't| not)|can(?:'t|not| not)) (?:say no|resist|remember|decide|work (?:it|this|that) out|find out|tell|wait|go wrong|let (?:it|them|that|this) go)\b|\bwhy not\b|\bor so\b|\bnot to mention\b/gi;
const isTurning = (letter: string, word: string): boolean =>
  (letter === letters.danger || turning.has(word)) && !mild.has(word);

type Stretch = readonly [from: number, to: number];

const stretchesOf = (patterns: readonly RegExp[], text: string): readonly Stretch[] =>
  patterns.flatMap((pattern) =>
    [...text.matchAll(pattern)].map(({ 0: match, index }) => [index, index + match.length] as const),
  );

/** What makes a thing another one, or tells of what has happened: a use has to know of it. */
const modifiers = [
  /\b(?:nuts?|palm|coconut|bee|fragrance|scent|almond|animal|cruelty)[- ]?free\b|\bnuts?\b|\bunscented\b|\borganic\b|\b(?:cakes?|bread|biscuits?|cookies?|soup|dinner|pizza)\b/gi,
  /\b(?:who (?:made|poured|did)|how long|yesterday|last (?:week|month|time)|joke|in all|until|versus|vs|fell)\b|(?<=^\W*|[.!?]\s+)(?:who|why|did|was|were)\b/gi,
];

/** "With lard", "2 tbsp plutonium": a word there that nobody knows is a thing. */
const leadsToThing =
  /\b(?:(?:with|without|of|instead|using|contains?|add|and|or|plus|no)\s+(?:(?:the|a|an|some|any|my|our)\s+)?|for\s+)$/i;
/** "My cat weighs 4 kg", after an infusion. */
const owned = /\b(?:my|our|your|his|her|their|the|an?)\s+$/i;
const mostStrange = 3;
/** What goes on from the message before is short: more than this is about something else. */
const mostBeside = 2;
const isTalkBesides = ({ after }: Use, strange: readonly Item[], unknown: readonly Item[]): boolean =>
  after === undefined ? strange.length > mostStrange : strange.length > 1 || unknown.length > mostBeside;

/** What a message has in it that this use cannot account for. */
export const uncovered = (use: Use, { items, text }: Reading, slots: readonly Slot[]): readonly string[] => {
  const said = [
    ...stretchesOf([...use.cues, ...use.wishes.map(({ words }) => words), idleNo], text),
    ...slots.map(({ from, to }) => [from, to] as const),
  ];
  const isSaid = ([from, to]: Stretch): boolean =>
    said.some(([start, end]) => start < Math.max(to, from + 1) && end > from);
  const open = items.filter(({ from, to }) => !isSaid([from, to]));
  const turned = open.filter(({ letter, word }) => isTurning(letter, word));
  const isThing = (item: Item): boolean =>
    (use.after !== undefined && owned.test(text.slice(Math.max(0, item.from - 12), item.from))) ||
    leadsToThing.test(text.slice(Math.max(0, item.from - 30), item.from)) ||
    slots.some((slot) => isMeasuredBy(item, slot) || isPartOf(item, slot));
  const unknown = open.filter(({ letter }) => letter === letters.unknown);
  const strange = unknown.filter(({ word }) => !isBackground(word.replace(/'s$/, '')) && !isInSayings(word));
  return [
    ...turned.map(({ word }) => word),
    ...strange.filter(isThing).map(({ word }) => word),
    ...unknown
      .filter((item) => slots.some((slot) => isWetOf(item, slot) || isLineOf(item, slot)))
      .map(({ word }) => word),
    ...strange
      .filter((item) => slots.some(isListSlot) && isCountedThing(item, items, text))
      .map(({ word }) => word),
    ...unknown.filter(({ from, to }) => namesOwn(text, from, to)).map(({ word }) => word),
    ...(isTalkBesides(use, strange, unknown) ? ['so much else'] : []),
    ...stretchesOf(modifiers, text)
      .filter(([from, to]) => !said.some(([start, end]) => start <= from && end >= to))
      .map(([from, to]) => text.slice(from, to)),
    ...items.flatMap(({ upTo, word }) => (upTo === undefined ? [] : [word])),
    // "1 part unicorn tears": a line of a recipe that nobody could read is not left out of it.
    ...open.filter(({ letter }) => letter === 'p').map(({ word }) => word),
  ];
};

/** "2 tbsp plutonium". */
const isMeasuredBy = ({ from }: Item, { kind, to }: Slot): boolean =>
  /^[gvd%]$/.test(kind) && from >= to && from - to <= 1;

/** "Phoenix tallow". */
const isPartOf = ({ to }: Item, { from, ingredients }: Slot): boolean =>
  ingredients !== undefined && from - to === 1;

/** "6 % calendula water": another thing than calendula. */
const isWetOf = ({ word, from }: Item, { to, ingredients, kind }: Slot): boolean =>
  (ingredients !== undefined || kind === 'R') && from - to === 1 && Object.hasOwn(wetHeads, nameKey(word));

const isListSlot = ({ kind, text }: Slot): boolean => kind === 'R' && /\d/.test(text);

/** "Goop 8", ", some goop" beside a list that is written out. */
const isCountedThing = (item: Item, items: readonly Item[], text: string): boolean => {
  const at = items.indexOf(item);
  const counted = [items[at - 1], items[at + 1]].some(
    (near) => near?.letter === 'n' && Math.max(near.from - item.to, item.from - near.to) <= 2,
  );
  return (
    counted || /[,+&]\s*(?:and |plus )?(?:some|an?|the|a little|a bit of)\s+$/i.test(text.slice(0, item.from))
  );
};

/** "20 g beeswax, 79 g olive oil, some rose water": of a list that is written out nothing is left out that has a name. */
const isLineOf = ({ word }: Item, slot: Slot): boolean =>
  isListSlot(slot) &&
  (isOtherThing(nameKey(word)) || Object.hasOwn(wetHeads, nameKey(word.split(' ').at(-1) ?? '')));

/** "Thunder balm" inside a sentence is the name of one that nobody saved. */
const namesOwn = (text: string, from: number, to: number): boolean =>
  /^[A-Z]/.test(text.slice(from, to)) &&
  /[a-z,] $/.test(text.slice(Math.max(0, from - 2), from)) &&
  /^ (?:lip ?)?(?:balm|salve|butter|stick)s?\b/i.test(text.slice(to, to + 16));
