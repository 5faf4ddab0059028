import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { memoryStore } from '../../../bot/book/keeper-memory.ts';
import { openKeeper } from '../../../bot/book/keeper-open.ts';
import { pipkin } from '../../../bot/handle.ts';
import { pouredAgain } from '../../../core/bench/correct.ts';
import { drawFor } from '../../../core/bench/draw.ts';
import { tinsLeft, tinsOut } from '../../../core/bench/state.ts';
import { type BookEvent, type BookState, benchOf, emptyBook } from '../../../core/book.ts';
import { ok } from '../../../core/result.ts';
import { anyone, heard, now } from '../../helpers/house.ts';

// Random commands by two members, with restarts, undoing and moves into a fresh store by file, against the plainest model
// there is: a list of what was done, with a mark on what was undone, added up from the start each time.

/** The nightly run sets 1,000. */
const runs = Number(process.env.MODEL_RUNS ?? 60);
const lots = ['A1', 'B2', 'C3'] as const;
const names = ['Winter balm', 'Hall salve'] as const;
const members = ['hazel', 'wren'] as const;
const day = '2026-11-25';

const member = fc.constantFrom(...members);
const command = fc.oneof(
  fc.record({
    do: fc.constant('buy' as const),
    who: member,
    lot: fc.constantFrom(...lots),
    grams: fc.integer({ min: 1, max: 5000 }),
  }),
  fc.record({
    do: fc.constant('pour' as const),
    who: member,
    grams: fc.integer({ min: 1, max: 4000 }),
    count: fc.integer({ min: 2, max: 9 }),
    /** Of the oil infused in the house. */
    oil: fc.boolean(),
  }),
  {
    weight: 2,
    arbitrary: fc.record({
      do: fc.constant('give' as const),
      who: member,
      pick: fc.nat(20),
      count: fc.constant(1),
    }),
  },
  fc.record({
    do: fc.constant('save' as const),
    who: member,
    name: fc.constantFrom(...names),
    grams: fc.integer({ min: 1, max: 99 }),
  }),
  fc.record({ do: fc.constant('price' as const), who: member, pence: fc.integer({ min: 1, max: 99 }) }),
  {
    weight: 3,
    arbitrary: fc.record({ do: fc.constant('back' as const), who: member, pick: fc.nat(20) }),
  },
  fc.record({
    do: fc.constant('infuse' as const),
    who: member,
    grams: fc.integer({ min: 2, max: 3000 }),
  }),
  fc.record({
    do: fc.constant('correct' as const),
    who: member,
    pick: fc.nat(20),
    // A correction that changes nothing is not written down.
    more: fc.integer({ min: 1, max: 5 }),
    grams: fc.option(fc.integer({ min: 1, max: 4000 }), { nil: undefined }),
  }),
  { weight: 4, arbitrary: fc.record({ do: fc.constant('undo' as const), who: member }) },
  { weight: 3, arbitrary: fc.record({ do: fc.constant('redo' as const), who: member }) },
  fc.constantFrom({ do: 'restart' as const }, { do: 'move' as const }, { do: 'forget' as const }),
);
type Command = typeof command extends fc.Arbitrary<infer C> ? C : never;

interface Deed {
  readonly who: string;
  readonly event: BookEvent;
  on: boolean;
}

interface Poured {
  readonly count: number;
  /** Milligrams by lot. */
  readonly draws: readonly (readonly [string, number])[];
}

class Sums {
  /** Lots and batches that there are. */
  readonly known = new Set<string>();
  readonly left = new Map<string, number>();
  /** Tins in the house. */
  readonly batches = new Map<string, number>();
  readonly poured = new Map<string, Poured>();
  readonly recipes = new Map<string, number>();
  price: string | undefined;
}

const mg = (grams: number): number => Math.round(grams * 1000);

/** A pour may have drawn from a lot that is undone, as long as a correction gave it back: only the end has to add up. */
const take = (from: Map<string, number>, key: string, much: number): void => {
  from.set(key, (from.get(key) ?? 0) - much);
};

/** Throws when more was taken than there was: then an undoing let through what it must not. */
const addsUp = (sums: Sums): Sums => {
  for (const of of [sums.left, sums.batches])
    for (const [key, much] of of) {
      if (much < 0 || (much > 0 && !sums.known.has(key))) throw new Error(`taken from nothing: ${key}`);
      if (!sums.known.has(key)) of.delete(key);
    }
  return sums;
};

const adding: { readonly [kind: string]: (sums: Sums, event: never) => void } = {
  'lot-bought': ({ known, left }, { lot, grams }: Of<'lot-bought'>) => {
    known.add(lot);
    take(left, lot, -mg(grams));
  },
  'recipe-saved': ({ recipes }, { name, lines }: Of<'recipe-saved'>) =>
    recipes.set(name, lines[0]?.amount ?? 0),
  'price-noted': (sums, { price }: Of<'price-noted'>) => {
    sums.price = price;
  },
  'tins-gone': ({ batches }, { lot, count }: Of<'tins-gone'>) => take(batches, lot, count),
  'tins-back': ({ batches }, { lot, count }: Of<'tins-back'>) => take(batches, lot, -count),
  'oil-infused': ({ known, left }, { lot, grams, draws }: Of<'oil-infused'>) => {
    known.add(lot);
    for (const draw of draws) take(left, draw.lot, mg(draw.grams));
    take(left, lot, -mg(grams));
  },
  'batch-poured': ({ known, batches, poured, left }, event: Of<'batch-poured'>) => {
    known.add(event.lot);
    const draws = drawsIn(event.lines);
    for (const [lot, much] of draws) take(left, lot, much);
    take(batches, event.lot, -event.count);
    poured.set(event.lot, { count: event.count, draws });
  },
  'batch-corrected': ({ batches, poured, left }, { lot, changes }: Of<'batch-corrected'>) => {
    const before = poured.get(lot) ?? { count: Number.NaN, draws: [] };
    const count = changes.count ?? before.count;
    const draws = changes.lines ? drawsIn(changes.lines) : before.draws;
    for (const [from, much] of before.draws) take(left, from, -much);
    for (const [from, much] of draws) take(left, from, much);
    take(batches, lot, before.count - count);
    poured.set(lot, { count, draws });
  },
};

const drawsIn = (lines: Of<'batch-poured'>['lines']): Poured['draws'] =>
  lines.flatMap(({ draws }) => draws.map(({ lot, grams }) => [lot, mg(grams)] as const));

type Of<K extends BookEvent['kind']> = Extract<BookEvent, { readonly kind: K }>;

/** Added up in plain objects, from the first deed that stands to the last. */
const addUp = (deeds: readonly Deed[]): Sums => {
  const sums = new Sums();
  for (const { event, on } of deeds) if (on) adding[event.kind]?.(sums, event as never);
  return addsUp(sums);
};

const seen = (state: BookState): Omit<Sums, 'poured' | 'known'> => {
  const { lots: shelf, batches } = benchOf(state);
  return {
    left: new Map([...shelf.values()].map(({ lot, leftG }) => [lot, mg(leftG)])),
    batches: new Map([...batches.values()].map((batch) => [batch.lot, tinsLeft(batch)])),
    recipes: new Map(Object.values(state.recipes).map(({ name, lines }) => [name, lines[0]?.amount ?? 0])),
    price: state.prices?.beeswax?.price,
  };
};

const sorted = (sums: Omit<Sums, 'poured' | 'known'>) => ({
  left: [...sums.left].sort(),
  batches: [...sums.batches].sort(),
  recipes: [...sums.recipes].sort(),
  price: sums.price,
});

/** The program under test beside the model. */
class Both {
  #store = memoryStore();
  #keeper = openKeeper(this.#store);
  readonly #faults: unknown[] = [];
  #bot = pipkin({ keeper: this.#keeper, onFault: (_id, fault) => this.#faults.push(fault) });
  readonly deeds: Deed[] = [];
  /** What each member undid and could do again, the last one last. */
  readonly #again = new Map<string, Deed[]>();
  /** How often each kind of thing was done. */
  readonly done = new Map<string, number>();
  undone = 0;
  redone = 0;
  refused = 0;

  book = () => this.#keeper.open('local');

  say = async (text: string, who: string, more: object = {}) => {
    const asker = { ...anyone, id: who, name: who };
    const reply = await this.#bot.hear(heard(text, { member: asker, ...more }));
    expect(this.#faults).toEqual([]);
    return reply;
  };

  async restart(): Promise<void> {
    this.#keeper = openKeeper(this.#store);
    this.#bot = pipkin({ keeper: this.#keeper, onFault: (_id, fault) => this.#faults.push(fault) });
  }

  async move(): Promise<void> {
    const exported = await this.say('export', 'hazel');
    const bytes = 'answer' in exported ? exported.answer.files?.[0]?.bytes : undefined;
    if (!bytes || (await this.book()).state.seq === 0) return;
    this.#store = memoryStore();
    await this.restart();
    const file = { name: 'a.json', said: 'a.json', read: async () => ok(bytes) };
    const shown = await this.say('import', 'hazel', { files: { attached: [file] } });
    if (!('answer' in shown)) throw new Error(shown.error.text);
    await this.say(`confirm import ${shown.answer.figures.confirm}`, 'hazel');
    const again = await this.say('export', 'hazel');
    const back = 'answer' in again ? again.answer.files?.[0]?.bytes : undefined;
    expect(Buffer.from(back ?? []).equals(Buffer.from(bytes))).toBe(true);
    this.#count('moved');
  }

  #count(what: string): void {
    this.done.set(what, (this.done.get(what) ?? 0) + 1);
  }

  async did(who: string, event: BookEvent): Promise<void> {
    await (await this.book()).record(event, { who, at: now });
    this.deeds.push({ who, event, on: true });
    this.#count(event.kind);
    this.#again.delete(who);
  }

  /** Everything is forgotten when the waiting time is over and the book is next opened. */
  async forget(): Promise<void> {
    if ((await this.book()).state.seq === 0) return;
    const asked = await this.say('forget everything', 'hazel');
    if (!('answer' in asked)) throw new Error(asked.error.text);
    const { confirm } = asked.answer.figures;
    const begun = await this.say(`confirm forget ${confirm}`, 'hazel');
    if (!('answer' in begun)) throw new Error(begun.error.text);
    await this.say('list recipes', 'wren', { at: now + 30 * 86_400_000 });
    expect((await this.book()).state).toEqual(emptyBook);
    this.#count('forgotten');
    this.deeds.length = 0;
    this.#again.clear();
  }

  /** Redo of what the member undid last, unless they did something else since. */
  async redo(who: string): Promise<void> {
    const last = this.#again.get(who)?.at(-1);
    const before = (await this.book()).state;
    const reply = await this.say('redo', who);
    if ('error' in reply) {
      if (last) this.refused += 1;
      expect((await this.book()).state).toBe(before);
      return;
    }
    if (!last) throw new Error('did again what nobody undid');
    last.on = true;
    this.#again.get(who)?.pop();
    this.redone += 1;
    expect(reply.answer.figures.again).toBe(true);
  }

  /** Undo of the member's last deed that still stands: a second undo takes back the one before it. */
  async undo(who: string): Promise<void> {
    const last = this.deeds.findLast((deed) => deed.who === who && deed.on);
    const before = (await this.book()).state;
    const reply = await this.say('undo', who);
    if ('error' in reply) {
      this.refused += 1;
      expect((await this.book()).state).toBe(before);
      return;
    }
    if (!last) throw new Error('undid what nobody did');
    last.on = false;
    this.#again.set(who, [...(this.#again.get(who) ?? []), last]);
    this.undone += 1;
    expect(reply.answer.figures.again).toBe(false);
  }
}

type Doing = Exclude<Command, { do: 'undo' | 'redo' | 'restart' | 'move' | 'forget' }>;

const eventOf: {
  readonly [D in Doing['do']]: (given: Extract<Doing, { do: D }>, state: BookState) => BookEvent | undefined;
} = {
  buy: ({ lot, grams }) => ({ kind: 'lot-bought', lot, ingredient: 'beeswax', grams: grams / 1000, on: day }),
  save: ({ name, grams }) => ({
    kind: 'recipe-saved',
    recipe: name.toLowerCase().replace(' ', '-'),
    name,
    lines: [{ ingredient: 'beeswax', amount: grams, unit: 'g' }],
  }),
  price: ({ pence }) => ({
    kind: 'price-noted',
    thing: 'beeswax',
    price: `0.${String(pence).padStart(2, '0')}`,
    currency: 'EUR',
    pack: { amount: 1, unit: 'g' },
  }),
  give: ({ pick, count }, state) => {
    const left = [...benchOf(state).batches.values()].filter((batch) => tinsLeft(batch) > 0);
    const batch = left[pick % Math.max(1, left.length)];
    return batch && { kind: 'tins-gone', lot: batch.lot, count, how: 'given', on: day };
  },
  back: ({ pick }, state) => {
    const out = [...benchOf(state).batches.values()].filter((batch) => tinsOut(batch) > 0);
    const batch = out[pick % Math.max(1, out.length)];
    return batch && { kind: 'tins-back', lot: batch.lot, count: 1, on: day };
  },
  infuse: ({ grams: milligrams }, state) => {
    const grams = milligrams / 1000;
    const { draws } = drawFor(benchOf(state), { ingredient: 'beeswax', grams }, day);
    const because = { kind: 'said' } as const;
    const made = { ingredient: 'olive-oil', herbs: ['calendula'], grams: grams / 2, on: day, because };
    const lot = `I${state.seq + 1}`;
    return { kind: 'oil-infused', lot, ...made, bestBefore: '2027-05-25', draws: [...draws], short: [] };
  },
  correct: ({ pick, more, grams }, state) => {
    const all = [...benchOf(state).batches.values()];
    const batch = all[pick % Math.max(1, all.length)];
    if (!batch) return undefined;
    const { ingredient = 'beeswax', infusedWith } = batch.lines[0] ?? {};
    const lines = grams === undefined ? undefined : [{ ingredient, infusedWith, grams: grams / 1000 }];
    const again = pouredAgain(benchOf(state), batch, { lines });
    if (!again.ok) throw new Error(again.problem.code);
    const changes = { count: batch.count + more, ...(lines ? { lines: [...again.value.lines] } : {}) };
    return { kind: 'batch-corrected', lot: batch.lot, changes, why: 'counted again' };
  },
  pour: ({ grams: milligrams, count, oil }, state) => {
    const grams = milligrams / 1000;
    const what = oil ? { ingredient: 'olive-oil', infusedWith: 'calendula' } : { ingredient: 'beeswax' };
    const { draws } = drawFor(benchOf(state), { ...what, grams }, day);
    return {
      kind: 'batch-poured',
      lot: `P${state.seq + 1}`,
      name: 'Winter balm',
      lines: [{ ...what, grams, draws: [...draws] }],
      count,
      container: 'tin',
      madeOn: day,
      bestBefore: '2027-05-25',
      because: { kind: 'said' },
      weighedG: grams,
    };
  },
};

const step = async (both: Both, given: Command): Promise<void> => {
  if (given.do === 'restart') return both.restart();
  if (given.do === 'move') return both.move();
  if (given.do === 'forget') return both.forget();
  if (given.do === 'undo') return both.undo(given.who);
  if (given.do === 'redo') return both.redo(given.who);
  const next = eventOf[given.do](given as never, (await both.book()).state);
  if (next) await both.did(given.who, next);
};

describe('a book under random commands', () => {
  it('should be what a plain list of the deeds that stand adds up to', {
    timeout: 60_000 + runs * 2000,
  }, async () => {
    let [undone, redone, refused] = [0, 0, 0];
    const done = new Map<string, number>();
    const run = async (commands: readonly Command[]): Promise<void> => {
      const both = new Both();
      for (const given of commands) {
        await step(both, given);
        expect(sorted(seen((await both.book()).state))).toEqual(sorted(addUp(both.deeds)));
      }
      for (const [what, count] of both.done) done.set(what, (done.get(what) ?? 0) + count);
      undone += both.undone;
      redone += both.redone;
      refused += both.refused;
    };
    await fc.assert(fc.asyncProperty(fc.array(command, { minLength: 20, maxLength: 60, size: 'max' }), run), {
      numRuns: runs,
      seed: 20_261_125,
    });
    // Were every undo refused, or none, nothing would have been shown.
    expect(Math.min(undone, redone, refused)).toBeGreaterThan(50);
    expect([...done.keys()].sort()).toEqual([...Object.keys(adding), 'forgotten', 'moved'].sort());
    expect(Math.min(...done.values())).toBeGreaterThan(10);
  });
});
