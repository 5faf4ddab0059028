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
  readonly kind: 'lot' | 'batch' | 'ingredient' | 'recipe' | 'place' | 'none';
  /** A code, an ingredient's id, a recipe's name or a place. */
  readonly name: string;
  /** The one batch of a recipe. */
  readonly batch?: string;
  /** True where its own code stands for it, or a word such as "it". */
  readonly pointed?: true;
  readonly assumed: readonly string[];
}

const spokenWords =
  /\b(?:it|its|it's|them|they|their|those|these|this|that|there|the (?:rest|others?|other (?:ones?|tins|jars|pots|sticks)|batch|lot|pour|tins|jars|pots|sticks|tubes)|ones?|he|she)\b/i;
/** A question that leaves out what it is about is short. */
const mostTokens = 10;

/** "In the shed": where somebody keeps things. */
const where = /\b(?:in|on|at|by) (?:the|my|our) [\p{L}]+(?= ?(?:now|still|today|right now)?\W*$)/iu;
const withoutWhere = (reading: Reading): Reading => {
  const said = where.exec(reading.text);
  return said ? readingWithout(reading, [{ from: said.index, to: said.index + said[0].length }]) : reading;
};

const kindOf = ({ bench }: Reading, code: string): 'lot' | 'batch' =>
  bench.batches.has(lotKey(code)) ? 'batch' : 'lot';

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
  const things = reading.items.filter(({ letter }) => letter === 'i');
  const ids = [...new Set(things.flatMap(({ ingredients }) => ingredients ?? []))];
  const held = ids.filter((id) => [...reading.bench.lots.values()].some((lot) => lot.ingredient === id));
  const [id, second] = held;
  return id === undefined || second !== undefined ? undefined : { kind: 'ingredient', name: id, assumed: [] };
};

const spoken = (reading: Reading): Subject | undefined => {
  const code = spokenLot(reading);
  if (code === undefined) return undefined;
  const pointed = spokenWords.test(reading.text);
  if (!pointed && (reading.tokens.length > mostTokens || !isOnlyAsking(withoutWhere(reading))))
    return undefined;
  const assumed = [`I took ${code}, which we spoke of.`];
  return { kind: kindOf(reading, code), name: code, assumed, ...(pointed ? { pointed } : {}) };
};

/** What a question is about: a code first, then a name, then a place that tins went to, then what was spoken of before. */
export const subjectsOf = (reading: Reading): readonly Subject[] => {
  const said = lotsIn(reading);
  const all = (...found: readonly (Subject | undefined)[]) => found.flatMap((each) => each ?? []);
  if (said.length > 0) return all(coded(reading));
  const hasNames = reading.items.some(({ letter }) => letter === 'i' || letter === 'R');
  if (hasNames) return all(named(reading));
  const place = placeNamed(reading);
  if (place)
    return isOnlyAsking(readingWithout(reading, [place]))
      ? [{ kind: 'place', name: place.name, assumed: [] }]
      : [];
  const before = spoken(reading);
  const nothing: Subject = { kind: 'none', name: '', assumed: [] };
  return all(nothing, before);
};
