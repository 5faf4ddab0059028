import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { memoryStore } from '../../../bot/book/keeper-memory.ts';
import { openKeeper } from '../../../bot/book/keeper-open.ts';
import { openStore } from '../../../bot/book/store.ts';
import { afterEntries, type BookEntry, type BookEvent, bookState, emptyBook } from '../../../core/book.ts';
import { recipeUnits } from '../../../core/recipe.ts';
import { defaultSettings } from '../../../core/settings.ts';
import { by, freshFolder } from '../../helpers/book.ts';

const id = fc.constantFrom('a', 'b', 'c', '7', 'constructor', 'to-string');
const name = fc
  .string({ minLength: 1, maxLength: 20, unit: 'grapheme' })
  .filter((text) => /\S/u.test(text) && text.length <= 80);
const line = fc.record({
  ingredient: fc.string({ minLength: 1, maxLength: 10 }),
  amount: fc.double({ min: 0, max: 1e6, noNaN: true }),
  unit: fc.constantFrom(...recipeUnits),
});
const lines = fc.array(line, { minLength: 1, maxLength: 4 });
const settings = fc.record(
  {
    region: fc.constantFrom('eu' as const, 'uk' as const, 'us' as const),
    lossPercent: fc.integer({ min: 0, max: 50 }),
  },
  { requiredKeys: [] },
);
const thing = fc.constantFrom('shea-butter', 'tin', 'constructor');
const event: fc.Arbitrary<BookEvent> = fc.oneof(
  fc.record({
    kind: fc.constant('recipe-saved' as const),
    recipe: id,
    name,
    lines,
  }),
  fc.record({ kind: fc.constant('recipe-renamed' as const), recipe: id, name }),
  fc.record({ kind: fc.constant('recipe-deleted' as const), recipe: id }),
  fc.record({ kind: fc.constant('settings-changed' as const), settings }),
  fc.record({
    kind: fc.constant('price-noted' as const),
    thing,
    price: fc.constantFrom('18', '14.50', '0.35'),
    currency: fc.constant('EUR'),
    pack: fc.constantFrom({ amount: 500, unit: 'g' as const }, { amount: 1, unit: 'each' as const }),
  }),
  fc.record({ kind: fc.constant('price-removed' as const), thing }),
  fc.record({
    kind: fc.constant('labour-set' as const),
    ratePerHour: fc.constantFrom('15', null),
    currency: fc.constant('EUR'),
  }),
  fc.record({
    kind: fc.constant('yield-noted' as const),
    herb: fc.constantFrom('calendula', 'plantain'),
    herbG: fc.constant(40),
    oilInG: fc.constant(320),
    oilOutG: fc.integer({ min: 200, max: 320 }),
  }),
);

const isRecipeEvent = (
  event: BookEvent,
): event is Extract<BookEvent, { readonly kind: `recipe-${string}` }> => event.kind.startsWith('recipe-');

/** Once a region was set, the group is known to have chosen. */
const chosenIn = ({ region }: { readonly region?: unknown }) =>
  region === undefined ? {} : { regionChosen: true };

/** The book kept in the simplest way there is: a list, searched from the start each time. */
class Model {
  seq = 0;
  settings: object = defaultSettings;
  recipes: { id: string; name: string; lines: unknown; versions: number[] }[] = [];

  readonly prices: [string, object][] = [];
  /** Every price since the thing was last without one, in order. */
  noted: [string, object][] = [];
  readonly yields: [string, { herbG: number; keptG: number }][] = [];
  labour: object | undefined;
  pricesSeen = false;

  take(event: BookEvent): void {
    this.seq += 1;
    if (event.kind === 'price-noted' || event.kind === 'price-removed') {
      this.takePrice(event);
      return;
    }
    if (event.kind === 'labour-set') {
      this.labour = { ratePerHour: event.ratePerHour, currency: event.currency };
      return;
    }
    if (event.kind === 'yield-noted') {
      this.yields.push([event.herb, { herbG: event.herbG, keptG: event.oilInG - event.oilOutG }]);
      return;
    }
    if (event.kind === 'settings-changed') {
      this.settings = { ...this.settings, ...event.settings, ...chosenIn(event.settings) };
      return;
    }
    if (!isRecipeEvent(event)) throw new Error('the bench has a model of its own');
    const found = this.recipes.find((each) => each.id === event.recipe);
    if (event.kind === 'recipe-deleted') this.recipes = this.recipes.filter((each) => each !== found);
    else if (event.kind === 'recipe-renamed') {
      if (found) found.name = event.name.trim();
    } else {
      const versions = [...(found?.versions ?? []), this.seq];
      const recipe = {
        id: event.recipe,
        name: event.name.trim(),
        lines: JSON.parse(JSON.stringify(event.lines)),
        versions,
      };
      this.recipes = [...this.recipes.filter((each) => each !== found), recipe];
    }
  }

  takePrice(event: Extract<BookEvent, { kind: 'price-noted' | 'price-removed' }>): void {
    this.pricesSeen = true;
    const at = this.prices.findIndex(([name]) => name === event.thing);
    const earlier =
      at >= 0 ? this.noted.filter(([name]) => name === event.thing).map(([, price]) => price) : [];
    if (at >= 0) this.prices.splice(at, 1);
    else this.noted = this.noted.filter(([name]) => name !== event.thing);
    if (event.kind === 'price-removed') return;
    const { price, currency, pack } = event;
    const kept = { price, currency, pack, at: '2026-11-25' };
    this.noted.push([event.thing, kept]);
    const before = earlier.slice(-60);
    this.prices.push([event.thing, before.length > 0 ? { ...kept, before } : kept]);
  }

  yieldsByHerb(): object {
    const names = new Set(this.yields.map(([name]) => name));
    const last = (name: string) => this.yields.filter((each) => each[0] === name).slice(-5);
    return Object.fromEntries([...names].map((name) => [name, last(name).map((each) => each[1])]));
  }

  book(): object {
    const recipes = Object.fromEntries(this.recipes.map((each) => [each.id, each]));
    return {
      v: 1,
      seq: this.seq,
      settings: this.settings,
      recipes,
      ...(this.pricesSeen ? { prices: Object.fromEntries(this.prices) } : {}),
      ...(this.labour ? { labour: this.labour } : {}),
      ...(this.yields.length > 0 ? { yields: this.yieldsByHerb() } : {}),
    };
  }
}

const steps = fc.array(
  fc.oneof({ weight: 9, arbitrary: event }, { weight: 1, arbitrary: fc.constant('reopen' as const) }),
  {
    maxLength: 40,
  },
);

describe('a book', () => {
  it('should be what a plain list makes of the same events, whenever it is opened again', async () => {
    await fc.assert(
      fc.asyncProperty(steps, async (taken) => {
        const store = memoryStore();
        const model = new Model();
        let book = await openKeeper(store).open('local');
        for (const step of taken) {
          if (step === 'reopen') book = await openKeeper(store).open('local');
          else {
            await book.record(step, by);
            model.take(step);
          }
          expect(book.state).toEqual(model.book());
          expect(bookState.parse(book.state)).toEqual(book.state);
        }
      }),
      { numRuns: 150 },
    );
  });

  it('should be the same on disk', async () => {
    await fc.assert(
      fc.asyncProperty(steps, async (taken) => {
        const folder = await freshFolder();
        const model = new Model();
        let keeper = openKeeper(await openStore(folder));
        for (const step of taken) {
          if (step === 'reopen') {
            await keeper.close();
            keeper = openKeeper(await openStore(folder));
          } else {
            await (await keeper.open('local')).record(step, by);
            model.take(step);
          }
        }
        expect((await keeper.open('local')).state).toEqual(model.book());
        await keeper.close();
      }),
      { numRuns: 15 },
    );
  });

  it('should not depend on how its entries are cut into calls, nor change an older state', () => {
    fc.assert(
      fc.property(fc.array(event, { maxLength: 30 }), fc.nat(30), (events, cut) => {
        const entries = events.map((each, at): BookEntry => {
          return {
            v: 1,
            group: 'local',
            seq: at + 1,
            at: '2026-11-25T09:00:00.000Z',
            who: 'me',
            event: each,
          };
        });
        const half = afterEntries(emptyBook, entries.slice(0, cut));
        const before = JSON.stringify(half);
        expect(afterEntries(half, entries.slice(cut))).toEqual(afterEntries(emptyBook, entries));
        expect(JSON.stringify(half)).toBe(before);
      }),
    );
  });
});
