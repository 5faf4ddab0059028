import type { Use } from '../gathered/use.ts';
import { isBackground, isMonth } from '../readers/background-words.ts';
import type { Item } from '../readers/item.ts';
import { letters } from '../readers/lexicon.ts';
import { wordSet } from '../readers/word-list.ts';
import type { Place } from '../understand.ts';

/** What stands around what is told at a bench, and changes nothing of it. */
const bench = wordSet(`
  block blocks bag bags canister canisters carton cartons sack sacks packet packets box boxes bucket buckets jug jugs pan tray trays crate drum flask can cans pouch slab
  count counts weight weights scale scales book record log number code lid lids stock shelf supply store supplies workbench bench table
  first second third fourth fifth another further new fresh last final only just still now again too also more other others pour pours batch
  lunch noon midday breakfast dinner teatime supper hour minutes after before since ago last week month today yesterday already
  all both together altogether total each apiece made make wax oil butter herb herbs dried whole
  out off up down away over in on under by there around is are was were been being has have had did done does do
  well as it its it's he she they them his her their we us our i my me you your who which that this these those
  forgot forgotten missed put set stood scale forgot entry entries note noted
  report what s used up there's that's i've we've had year season
`);

/** Letters that carry nothing by themselves. */
const quiet = /^[,;.:()\-!>"@<\n/*AToIFWxeyb]$/;

const isTold = ({ letter, word }: Item): boolean => {
  if (quiet.test(letter) || letter === letters.container) return true;
  if (
    letter === letters.unknown ||
    letter === letters.past ||
    letter === 'B' ||
    letter === 'u' ||
    letter === letters.danger
  )
    return bench.has(word) || (letter === letters.unknown && (isBackground(word) || isMonth(word)));
  return false;
};

const bounds = /[,;:.!()\n]|\s-\s|\b(?:and|but|so|because|since|as|which|who)\b/gi;

const clausesIn = (text: string): readonly Place[] => {
  const stops = [...text.matchAll(bounds)].map(({ index }) => index);
  return [...stops, text.length].map((to, at) => ({ from: stops[at - 1] ?? 0, to }));
};

const isIn = ({ from, to }: Place, place: Place): boolean => from < place.to && to > place.from;

/** "Olive oil soap", "my cat weighs 4 kg": a word right after a thing, or of somebody, is another thing. */
const isOwnThing = ({ from }: Item, text: string, slots: readonly Place[]): boolean =>
  slots.some(({ to }) => to <= from && /^[ -]*$/.test(text.slice(to, from))) ||
  /\b(?:my|our|your|his|her|their)\s+$/i.test(text.slice(Math.max(0, from - 12), from));

/** Words nobody knows beside things and cues: so many only colour what is told. */
const mostStrange = 3;
const onlyColours = (strange: readonly Item[], text: string, slots: readonly Place[]): boolean =>
  strange.length <= mostStrange &&
  strange.every((item) => item.letter === letters.unknown && !isOwnThing(item, text, slots));

const isWord = ({ letter, generic }: Item): boolean => /^[wzZBT]$/.test(letter) || generic === true;

/** More words than this beside what is told are about something else. */
const mostBesides = 9;
const isTalk = (strange: readonly Item[]): boolean =>
  strange.length <= mostBesides && strange.every(({ letter }) => /^[wZBT]$/.test(letter));

export interface Cover {
  /** Words that nobody can account for. */
  readonly open: readonly string[];
  /** A clause of talk besides, as it was typed. */
  readonly besides: readonly Besides[];
  /** Words beside the things, that only colour what is told. */
  readonly colours: readonly string[];
}

export interface Besides extends Place {
  readonly said: string;
}

const cuesIn = ({ cues, around }: Use, text: string): readonly Place[] =>
  [...cues, ...(around ? [around] : [])].flatMap((cue) =>
    [...text.matchAll(cue)].map((match) => ({ from: match.index, to: match.index + match[0].length })),
  );

const isAmongTalk = ({ amongTalk }: Use, strange: readonly Item[]): boolean =>
  amongTalk && strange.every(isWord);

/** A clause as it was typed, without the signs around it. */
const saidIn = (text: string, { from, to }: Place): string =>
  text.slice(from, to).replace(/^[\s,;:.!()-]+|[\s,;:.!()-]+$/g, '');

/** What a use leaves of a message: everything a thing, a cue or talk, and a few words of colour; a clause with neither thing nor cue may say more. */
export const coverOf = (use: Use, text: string, slots: readonly Place[], loose: readonly Item[]): Cover => {
  const held: readonly Place[] = [...slots, ...cuesIn(use, text)];
  const isHeld = (place: Place): boolean => held.some((other) => isIn(other, place));
  const left = loose.filter((item) => !isHeld(item) && !isTold(item));
  const cover = { open: [] as string[], colours: [] as string[], besides: [] as Besides[] };
  for (const clause of clausesIn(text)) {
    const strange = left.filter((item) => item.from >= clause.from && item.from < clause.to);
    const words = strange.map(({ word }) => word);
    const isTelling = isHeld(clause);
    const isTalked = isTelling ? onlyColours(strange, text, slots) : isTalk(strange);
    if (strange.length === 0) continue;
    if (!isTalked && !isAmongTalk(use, strange)) cover.open.push(...words);
    else if (isTelling) cover.colours.push(...words);
    else cover.besides.push({ ...clause, said: saidIn(text, clause) });
  }
  return cover;
};
