import { lotKey } from '../../core/bench/codes.ts';
import { batchMeant } from '../readers/batch-meant.ts';
import { readBench } from '../readers/bench-reading.ts';
import { lotsIn } from '../readers/lots.ts';
import { isOnlyAsking, spokenLot } from '../readers/of-spoken-lot.ts';
import { placeNamed } from '../readers/trace-place.ts';
import type { Reading } from '../reading.ts';
import { readingWithout } from '../understand.ts';

/** What a question of the bench book is about. */
export interface Subject {
  readonly kind: 'lot' | 'lots' | 'batch' | 'batches' | 'ingredient' | 'recipe' | 'place' | 'none';
  /** A code, an ingredient's id, a recipe's name or a place. */
  readonly name: string;
  /** Where several lots or batches are asked about at once: their codes. */
  readonly names?: readonly string[];
  /** The one batch of a recipe. */
  readonly batch?: string;
  /** True where its own code stands for it, or a word such as "it". */
  readonly pointed?: true;
  readonly assumed: readonly string[];
}

const spokenWords =
  /\b(?:it|its|it's|them|they|their|those|these|this|that|there|the (?:rest|others?|other (?:ones?|tins|jars|pots|sticks)|batch|lot|pour|(?:\d+ )?tins|jars|pots|sticks|tubes)|ones?|he|she)\b/i;
/** A question that leaves out what it is about is short. */
const mostTokens = 10;

/** "In the shed": where somebody keeps things. */
const where = /\b(?:in|on|at|by) (?:the|my|our) [\p{L}]+(?= ?(?:now|still|today|right now)?\W*$)/iu;
const withoutWhere = (reading: Reading): Reading => {
  const said = where.exec(reading.text);
  return said ? readingWithout(reading, [{ from: said.index, to: said.index + said[0].length }]) : reading;
};

const ofTins =
  /\bwhen\b.{0,20}\b(?:made|make|poured?)\b|\bhow many\b|\b(?:tins|jars|pots|sticks|tubes)\b|\bin (?:our|my) own\b/i;

const ofMade = /\b(?:made|make|poured?|tins|jars|pots|sticks|tubes)\b/i;

/** "Which of the two did the tea room get". */
const asksOfPlace =
  /\b(?:does|do|did|has|have)\b.{0,60}\b(?:tins?|jars?|pots?|sticks?|tubes?)\b|\b(?:which|what|how many|any|tins?|jars?|pots?|sticks?|tubes?)\b.{0,60}\b(?:get|got|take|took|taken|receive[d]?|buy|bought|hold|holds)\b/i;

const kindOf = ({ bench }: Reading, code: string): 'lot' | 'batch' =>
  bench.batches.has(lotKey(code)) ? 'batch' : 'lot';

const mostLots = 10;

/** "Status of OV1, OV2 and HW3": lots of the shelf alone, or batches alone. */
const several = (reading: Reading): Subject | undefined => {
  const names = [...new Set(lotsIn(reading).map(({ code }) => code))];
  if (names.length < 2 || names.length > mostLots) return undefined;
  const { lots, batches } = reading.bench;
  const same = { name: '', names, pointed: true, assumed: [] } as const;
  if (names.every((code) => lots.has(lotKey(code)))) return { kind: 'lots', ...same };
  return names.every((code) => batches.has(lotKey(code))) ? { kind: 'batches', ...same } : undefined;
};

/** The one lot or batch that a message names by its code; a batch before the lots that are asked about with it. */
const coded = (reading: Reading): Subject | undefined => {
  const said = lotsIn(reading);
  if (said.some(({ kind, others }) => kind === 'new' || others !== undefined)) return undefined;
  const codes = [...new Set(said.map(({ code }) => code))];
  const [first, second] = codes.toSorted(
    (a, b) => Number(kindOf(reading, b) === 'batch') - Number(kindOf(reading, a) === 'batch'),
  );
  if (first === undefined || codes.length > 2) return undefined;
  if (second !== undefined && kindOf(reading, second) === kindOf(reading, first)) return undefined;
  return { kind: kindOf(reading, first), name: first, pointed: true, assumed: [] };
};

const named = (reading: Reading): Subject | undefined => {
  const names = [...new Set(reading.items.flatMap(({ recipe }) => recipe ?? []))];
  const [recipe, more] = names;
  if (recipe !== undefined) {
    const { lot, assumed } = batchMeant(reading, readBench(reading));
    if (more !== undefined) return undefined;
    return { kind: 'recipe', name: recipe, assumed, ...(lot === undefined ? {} : { batch: lot }) };
  }
  const things = reading.items.filter(({ letter }) => letter === 'i' || letter === 'h');
  const ids = [...new Set(things.flatMap(({ ingredients }) => ingredients ?? []))];
  const held = ids.filter((id) => [...reading.bench.lots.values()].some((lot) => lot.ingredient === id));
  const [id, second] = held;
  return id === undefined || second !== undefined ? undefined : { kind: 'ingredient', name: id, assumed: [] };
};

/** What is asked of an ingredient is asked of its lot where there is only one. */
const onlyLotOf = ({ bench }: Reading, id: string): Subject | undefined => {
  const [only, second] = [...bench.lots.values()].filter(({ ingredient }) => ingredient === id);
  return only && !second
    ? { kind: 'lot', name: only.lot, assumed: [`I took ${only.lot}, your only lot of it.`] }
    : undefined;
};

const theOther =
  /^\W*(?:(?:and|n|so|what about|how about|ok|now)\b\W*)*the other (?:one|batch|lot|pour|bottle|bag|tub)\W*$/i;

/** "And the other one?": of two batches, or two lots of the same, the one that was not spoken of. */
export const otherOf = (reading: Reading): Subject | undefined => {
  const { bench } = reading;
  const code = theOther.test(reading.text) ? spokenLot(reading) : undefined;
  if (code === undefined) return undefined;
  const of = bench.lots.get(lotKey(code))?.ingredient;
  const all =
    of === undefined
      ? [...bench.batches.values()]
      : [...bench.lots.values()].filter(({ ingredient }) => ingredient === of);
  const [other, more] = all.filter(({ lot }) => lotKey(lot) !== lotKey(code));
  return other && !more
    ? { kind: kindOf(reading, other.lot), name: other.lot, pointed: true, assumed: [`I took ${other.lot}.`] }
    : undefined;
};

/** "How many are back with me", in a book with one batch. */
const onlyBatch = (reading: Reading): Subject | undefined => {
  const [only] = reading.bench.batches.size === 1 ? reading.bench.batches.values() : [];
  return only && ofTins.test(reading.text) && isOnlyAsking(withoutWhere(reading))
    ? { kind: 'batch', name: only.lot, assumed: [`I took ${only.lot}, your only batch.`] }
    : undefined;
};

/** "Does anything else end in March", "what did we record": not of what was spoken of. */
const ofOthers =
  /\b(?:any|some|every)thing else\b|\b(?:all|everything) that (?:has|was|is)\b|\bwhat else (?:is|are|has|have|will|do we)\b|\bwhat (?:did|have|has|was)\b.{0,20}\b(?:record(?:ed)?|written|write|enter(?:ed)?|noted?|changed?)\b/i;

const spoken = (reading: Reading): Subject | undefined => {
  const code = spokenLot(reading);
  if (code === undefined || ofOthers.test(reading.text)) return undefined;
  const pointed = spokenWords.test(reading.text);
  if (!pointed && (reading.tokens.length > mostTokens || !isOnlyAsking(withoutWhere(reading))))
    return undefined;
  const assumed = [`I took ${code}, which we spoke of.`];
  return { kind: kindOf(reading, code), name: code, assumed, ...(pointed ? { pointed } : {}) };
};

const all = (...found: readonly (Subject | undefined)[]) => found.flatMap((each) => each ?? []);

const ofPlace = (reading: Reading): readonly Subject[] | undefined => {
  const place = placeNamed(reading);
  if (!place) return undefined;
  // "Has any of it been handed to the fire brigade?"
  const batch = /\bit\b/i.test(reading.text) ? spoken(reading) : undefined;
  if (batch?.kind === 'batch') return [batch];
  return asksOfPlace.test(reading.text) || isOnlyAsking(readingWithout(reading, [place]))
    ? [{ kind: 'place', name: place.name, assumed: [] }]
    : [];
};

const ofUnnamed = (reading: Reading): readonly Subject[] => {
  const before = spoken(reading);
  const nothing: Subject = { kind: 'none', name: '', assumed: [] };
  const only = onlyBatch(reading);
  return before?.kind === 'lot' && ofMade.test(reading.text)
    ? all(nothing, only, before)
    : all(nothing, before, only);
};

/** What a question is about: a code first, then a name, then a place that tins went to, then what was spoken of before. */
export const subjectsOf = (reading: Reading): readonly Subject[] => {
  if (lotsIn(reading).length > 0) return all(several(reading) ?? coded(reading));
  const names = reading.items.filter(({ letter }) => /[ihR]/.test(letter));
  const name = names.length > 0 ? named(reading) : undefined;
  // "Which oil is in it" names a kind of thing, and no thing.
  if (name || names.some(({ generic }) => !generic))
    return all(name, name?.kind === 'ingredient' ? onlyLotOf(reading, name.name) : undefined);
  return ofPlace(reading) ?? ofUnnamed(reading);
};
