import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { memoryStore } from '../../../bot/book/keeper-memory.ts';
import { openKeeper } from '../../../bot/book/keeper-open.ts';
import { pipkin } from '../../../bot/handle.ts';
import { drawFor } from '../../../core/bench/draw.ts';
import { tinsLeft } from '../../../core/bench/state.ts';
import { type BookEvent, type BookState, benchOf } from '../../../core/book.ts';
import { ok } from '../../../core/result.ts';
import { anyone, heard, now } from '../../helpers/house.ts';

// Random commands by two members, with restarts, undoing and moves into a fresh store by file, against the plainest model
// there is: a list of what was done, with a mark on what was undone, added up from the start each time.

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
  }),
  fc.record({ do: fc.constant('give' as const), who: member, pick: fc.nat(20), count: fc.constant(1) }),
  fc.record({
    do: fc.constant('save' as const),
    who: member,
    name: fc.constantFrom(...names),
    grams: fc.integer({ min: 1, max: 99 }),
  }),
  fc.record({ do: fc.constant('price' as const), who: member, pence: fc.integer({ min: 1, max: 99 }) }),
  fc.record({ do: fc.constant('undo' as const), who: member }),
  fc.constantFrom({ do: 'restart' as const }, { do: 'move' as const }),
);
type Command = typeof command extends fc.Arbitrary<infer C> ? C : never;

interface Deed {
  readonly who: string;
  readonly event: BookEvent;
  on: boolean;
}

class Sums {
  readonly left = new Map<string, number>();
  readonly batches = new Map<string, number>();
  readonly recipes = new Map<string, number>();
  price: string | undefined;
}

const mg = (grams: number): number => Math.round(grams * 1000);

/** Takes from what is there; throws when there is not so much, because then an undoing let through what it must not. */
const take = (from: Map<string, number>, key: string, much: number): void => {
  const rest = (from.get(key) ?? Number.NaN) - much;
  if (!(rest >= 0)) throw new Error(`taken from nothing: ${key}`);
  from.set(key, rest);
};

const adding: { readonly [kind: string]: (sums: Sums, event: never) => void } = {
  'lot-bought': ({ left }, { lot, grams }: Of<'lot-bought'>) =>
    left.set(lot, (left.get(lot) ?? 0) + mg(grams)),
  'recipe-saved': ({ recipes }, { name, lines }: Of<'recipe-saved'>) =>
    recipes.set(name, lines[0]?.amount ?? 0),
  'price-noted': (sums, { price }: Of<'price-noted'>) => {
    sums.price = price;
  },
  'tins-gone': ({ batches }, { lot, count }: Of<'tins-gone'>) => take(batches, lot, count),
  'batch-poured': ({ batches, left }, event: Of<'batch-poured'>) => {
    batches.set(event.lot, event.count);
    for (const { lot, grams } of event.lines[0]?.draws ?? []) take(left, lot, mg(grams));
  },
};

type Of<K extends BookEvent['kind']> = Extract<BookEvent, { readonly kind: K }>;

/** Added up in plain objects, from the first deed that stands to the last. */
const addUp = (deeds: readonly Deed[]): Sums => {
  const sums = new Sums();
  for (const { event, on } of deeds) if (on) adding[event.kind]?.(sums, event as never);
  return sums;
};

const seen = (state: BookState): Sums => {
  const { lots: shelf, batches } = benchOf(state);
  return {
    left: new Map([...shelf.values()].map(({ lot, leftG }) => [lot, mg(leftG)])),
    batches: new Map([...batches.values()].map((batch) => [batch.lot, tinsLeft(batch)])),
    recipes: new Map(Object.values(state.recipes).map(({ name, lines }) => [name, lines[0]?.amount ?? 0])),
    price: state.prices?.beeswax?.price,
  };
};

const sorted = (sums: Sums) => ({
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
  undone = 0;
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
  }

  async did(who: string, event: BookEvent): Promise<void> {
    await (await this.book()).record(event, { who, at: now });
    this.deeds.push({ who, event, on: true });
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
    this.undone += 1;
    expect(reply.answer.figures.again).toBe(false);
  }
}

type Doing = Exclude<Command, { do: 'undo' | 'restart' | 'move' }>;

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
  pour: ({ grams: milligrams, count }, state) => {
    const grams = milligrams / 1000;
    const { draws } = drawFor(benchOf(state), { ingredient: 'beeswax', grams }, day);
    return {
      kind: 'batch-poured',
      lot: `P${state.seq + 1}`,
      name: 'Winter balm',
      lines: [{ ingredient: 'beeswax', grams, draws: [...draws] }],
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
  if (given.do === 'undo') return both.undo(given.who);
  const next = eventOf[given.do](given as never, (await both.book()).state);
  if (next) await both.did(given.who, next);
};

describe('a book under random commands', () => {
  it('should be what a plain list of the deeds that stand adds up to', { timeout: 120_000 }, async () => {
    let undone = 0;
    let refused = 0;
    const run = async (commands: readonly Command[]): Promise<void> => {
      const both = new Both();
      for (const given of commands) {
        await step(both, given);
        expect(sorted(seen((await both.book()).state))).toEqual(sorted(addUp(both.deeds)));
      }
      undone += both.undone;
      refused += both.refused;
    };
    await fc.assert(fc.asyncProperty(fc.array(command, { minLength: 5, maxLength: 40 }), run), {
      numRuns: Number(process.env.MODEL_RUNS ?? 60),
      seed: 20_261_125,
    });
    // Were every undo refused, or none, nothing would have been shown.
    expect(undone).toBeGreaterThan(50);
    expect(refused).toBeGreaterThan(10);
  });
});
