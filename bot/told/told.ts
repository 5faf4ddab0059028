import { type Form, isIn, type Use } from '../gathered/use.ts';
import type { Slot } from '../likeness/features.ts';
import { todayOf } from '../readers/days.ts';
import { lotsIn } from '../readers/lots.ts';
import type { Reading } from '../reading.ts';
import { blanked, readAgain } from '../understand.ts';
import { type Besides, coverOf } from './covered.ts';
import { tellsPlainly } from './guards.ts';
import { type Things, thingsIn } from './things.ts';
import { toldUses } from './uses.ts';
import { occasionsIn, whomIn } from './whom.ts';

/** A message read as a plain form of what it tells. */
export interface Told {
  readonly reading: Reading;
  readonly plain: string;
  /** What was passed over. */
  readonly besides: readonly string[];
  /** The word that names what happened, and what it happened to: they may hold for what is told next. */
  readonly verb: string;
  readonly slots: readonly Slot[];
}

/** A longer message is a letter. */
const mostTokens = 90;
const leastTokens = 3;

/** Which things a form takes, or a message has, in any order; several lots are one thing. */
const signatureOf = (slots: readonly Slot[]): string =>
  slots
    .map(({ kind }) => kind)
    .toSorted()
    .join(' ');

interface Shelved {
  readonly use: Use;
  readonly form: Form;
}

let shelves: ReadonlyMap<string, readonly Shelved[]> | undefined;

/** The uses by the things they take. */
const shelved = (signature: string): readonly Shelved[] => {
  if (!shelves) {
    const all = new Map<string, Shelved[]>();
    for (const use of toldUses())
      for (const form of use.forms) {
        const key = signatureOf(form.slots);
        all.set(key, [...(all.get(key) ?? []), { use, form }]);
      }
    shelves = all;
  }
  return shelves.get(signature) ?? [];
};

/** The lots of a pour are named together, a purchase's or a count's one by one. */
const withLotsTogether = (slots: readonly Slot[]): readonly Slot[] => {
  const lots = slots.filter(({ kind }) => kind === 'lot');
  const [first] = lots;
  if (!first) return slots;
  const all: Slot = { ...first, kind: 'lots', text: lots.map(({ text }) => text).join(', ') };
  return [...slots.filter(({ kind }) => kind !== 'lot'), all];
};

/** What containers brought in is noted nowhere. */
const withoutMoney = (slots: readonly Slot[]): readonly Slot[] =>
  slots.some(({ kind }) => kind === 'count') ? slots.filter(({ kind }) => kind !== 'paid') : slots;

/** "1 bottle of castor oil, 250 ml": what it came in. */
const withoutPack = (slots: readonly Slot[]): readonly Slot[] =>
  slots.some(({ kind }) => kind === 'i') && slots.some(({ kind }) => kind === 'g')
    ? slots.filter(({ kind, text }) => kind !== 'count' || !text.startsWith('1 '))
    : slots;

/** "24 tins of it at 20 g, a different shea this time": what a recipe is made of needs no telling. */
const withoutMakings = (slots: readonly Slot[]): readonly Slot[] => {
  const amounts = slots.filter(({ kind }) => kind === 'g').length;
  const isPour = amounts === 1 && ['R', 'count'].every((each) => slots.some(({ kind }) => kind === each));
  return isPour ? slots.filter(({ kind }) => kind !== 'i') : slots;
};

/** A recipe's name may stand for what is poured of it, or for the batch of it that there is. */
const looksAt = (slots: readonly Slot[]): readonly (readonly Slot[])[] => {
  const all = withoutMakings(withoutMoney(withoutPack(slots)));
  if (!all.some(({ kind }) => kind === 'R')) return [all];
  const asBatch = all.map((slot): Slot => (slot.kind === 'R' ? { ...slot, kind: 'batch' } : slot));
  return [withLotsTogether(all), asBatch];
};

/** A plain form with things in its places, each in the order it was told. */
const filled = ({ plain, slots: open }: Form, said: readonly Slot[]): string => {
  const left = [...said];
  return open.reduce((text, place) => {
    const at = left.findIndex((slot) => slot.kind === place.kind);
    const [slot] = left.splice(at, 1);
    return text.replace(place.text, () => slot?.text ?? '');
  }, plain);
};

interface Looked {
  readonly around: string;
  readonly things: Things;
  readonly slots: readonly Slot[];
}

/** On a day gone by, or under the day it is written in a diary. */
const isEarlier = (slots: readonly Slot[], reading: Reading): boolean =>
  slots.some(({ kind, text, from }) => kind === 'date' && (text < todayOf(reading) || from < atOnce));
const atOnce = 3;

/** "And 15 tins of the other", right after a pour, or after a look at what was poured; or of a day gone by. */
const goesOn = ({ after }: Use, reading: Reading, slots: readonly Slot[]): boolean => {
  if (after === undefined) return true;
  if (after === 'earlier') return isEarlier(slots, reading);
  const { last } = reading;
  const { action } = last?.request ?? {};
  return last?.topic === 'batch' && (action === after || (after === 'pour' && action === 'show'));
};

const isMeant = (use: Use, around: string): boolean =>
  use.cues.every((cue) => isIn(cue, around)) && !(use.never && isIn(use.never, around));

/** The forms for these things, with nobody named, or with one of those who may be meant. */
function* formsFor({ around, slots }: Looked): Generator<Shelved & { readonly slots: readonly Slot[] }> {
  for (const role of ['to', 'from']) {
    for (const whom of whomIn(around, role)) {
      const all = [...slots, whom];
      for (const { use, form } of shelved(signatureOf(all)))
        if (form.slots.find(({ kind }) => kind === 'whom')?.before === role) yield { use, form, slots: all };
    }
  }
  for (const found of shelved(signatureOf(slots))) yield { ...found, slots };
}

/** What is said after the first thing may go down with it: with a pour as a note, with what was thrown out as the reason. */
const tailOf = (
  plain: string,
  { text: { note }, figures, slots }: Things,
  besides: readonly Besides[],
): { readonly tail: string; readonly kept: readonly Besides[] } => {
  const first = slots[0]?.to ?? 0;
  const after = besides.filter(({ from }) => from >= first);
  const said = after.map((each) => each.said).join('; ');
  if (plain.startsWith('poured') && said !== '' && note === undefined)
    return { tail: `${figures}, note: ${said}`, kept: after };
  if (note !== undefined) return { tail: `${figures}, note: ${note}`, kept: [] };
  const isReason =
    said !== '' && plain.startsWith('threw away') && !slots.some(({ kind }) => kind === 'count');
  return isReason ? { tail: `, ${said}`, kept: after } : { tail: figures, kept: [] };
};

/** Words of which any telling has one, however it is worded, are many; things of which it has two are few. */
const mayTell = (reading: Reading): boolean => {
  const { tokens, items } = reading;
  if (tokens.length < leastTokens || tokens.length > mostTokens || reading.text.includes('?')) return false;
  const isNamed =
    items.some(({ letter }) => /[Ri]/.test(letter)) && items.some(({ letter }) => /[cgvn]/.test(letter));
  return isNamed || lotsIn(reading).length > 0;
};

type Found = Omit<Told, 'reading'>;

/** "5 pots of it to the chemist": where no verb says so, "to" does. */
const isSentTo = ({ cues }: Use, around: string, [whom]: readonly Slot[]): boolean =>
  cues.length > 0 ||
  whom === undefined ||
  /^\s*(?:\w+ )?(?:in)?to\b/i.test(around.slice(whom.from, whom.from + 12));

/** The plain form of one use, where it accounts for everything. */
const foundAs = (
  { use, form, slots }: Shelved & { readonly slots: readonly Slot[] },
  { around, things }: Looked,
  reading: Reading,
): Found | undefined => {
  const named = slots.filter(({ kind }) => kind === 'whom');
  const open = blanked(around, named);
  if (!goesOn(use, reading, slots) || !isMeant(use, open) || !isSentTo(use, around, named)) return undefined;
  const held = [...slots, ...things.figuresAt, ...(named.length > 0 ? occasionsIn(open) : [])];
  const cover = coverOf(use, open, held, things.loose);
  if (cover.open.length > 0) return undefined;
  const bare = filled(form, slots);
  const { tail, kept } = tailOf(bare, things, cover.besides);
  const over = [
    ...cover.besides.filter((each) => !kept.includes(each)).map((each) => each.said),
    ...cover.colours,
  ];
  const verb = use.cues.flatMap((cue) => open.match(cue) ?? [])[0] ?? '';
  return { plain: `${bare}${tail}`, besides: over, verb, slots };
};

/** "About 10 tins", "all but two": nothing that could be counted. */
const uncounted =
  /\b(?:about|around|roughly|over|at least|up to|more than|less than|under|all but|all except) _/i;
/** "Both grandmas got a jar": one for each of them. */
const oneEach = /\b(?:both|each|every|all)\b[^,.;_]{0,30}\b(?:got|took|had|have|received) _/i;
/** "Bought 12 tins of hand balm at the market", "only 5 tins left": none of ours that went. */
const boughtTins = /^\W*(?:(?:i|we|just|also|today|yesterday)\W+)*bought\b|\bfor sale\b/i;
const stillHere =
  /_[\s_]*(?:of [\s_]*)?(?:are |is |still )*(?:left|remaining|remain)\b(?! (?:with|at|for|to|on|by|from|in|the)\b)/i;
/** "Both grandmas got a jar" is one jar or two. */
const isForBoth = (around: string, slots: readonly Slot[]): boolean =>
  /\bboth\b/i.test(around) && slots.some(({ kind, text }) => kind === 'count' && /^1\b/.test(text));

const isUncounted = (around: string, slots: readonly Slot[]): boolean =>
  slots.some(({ kind }) => kind === 'count') &&
  (isForBoth(around, slots) ||
    uncounted.test(around) ||
    oneEach.test(around) ||
    boughtTins.test(around) ||
    stillHere.test(around));

/** "We're pouring 12 tins on Saturday" is still to come. */
const isAhead = (around: string, slots: readonly Slot[]): boolean =>
  /(?:\b(?:are|am)|'re|'m) (?:pouring|making|filling)\b/i.test(around) &&
  slots.some(({ kind }) => kind === 'date');

/** "Did 12 more sticks" asks nothing. */
const withoutDid = (around: string, [first]: readonly Slot[]): string =>
  first?.kind === 'count' && first.from < 20 ? around.replace(/\bdid(?= _)/i, 'made') : around;

/** "10 more jars" counts jars, and says that there were some before. */
const withMore = (around: string, text: string): string =>
  [...text.matchAll(/\b(?:more|another|further|extra|additional)\b/gi)].reduce(
    (left, { index, 0: word }) => left.slice(0, index) + word + left.slice(index + word.length),
    around,
  );

/** Plain forms of what a message plainly tells, each accounting for everything in it, in the order the uses are listed. */
export const toldIn = (reading: Reading): readonly Told[] => {
  if (!mayTell(reading)) return [];
  const things = thingsIn(reading);
  if (!things || things.slots.length === 0) return [];
  const { text } = things.text.bench.rest;
  const around = withMore(blanked(text, things.slots), text);
  if (
    !tellsPlainly(withoutDid(around, things.slots)) ||
    isUncounted(around, things.slots) ||
    isAhead(around, things.slots)
  )
    return [];
  const found = new Map<string, Found>();
  for (const slots of looksAt(things.slots)) {
    for (const form of formsFor({ around, things, slots })) {
      const made = foundAs(form, { around, things, slots }, reading);
      if (made && !found.has(made.plain)) found.set(made.plain, made);
    }
  }
  return [...found.values()].map((made) => ({ ...made, reading: readAgain(made.plain, reading) }));
};
