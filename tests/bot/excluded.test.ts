import fc from 'fast-check';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { Answer } from '../../bot/answer.ts';
import { demoRecipes } from '../../bot/demo.ts';
import { textOf } from '../../bot/render/text.ts';
import type { Tools, Topic } from '../../bot/topic.ts';
import { design } from '../../bot/topics/design.ts';
import { substitute } from '../../bot/topics/substitute.ts';
import { shortName } from '../../bot/words/warnings.ts';
import { ingredients } from '../../core/ingredients.ts';
import { linesOfMix } from '../../core/substitute/mix.ts';
import { anyMix } from '../core/substitute/mixes.ts';
import { type Excluded, excludedKinds, isExcluded, isQuestion } from '../helpers/excluded.ts';
import { now, testHouse, toolsIn } from '../helpers/house.ts';
import { lotOf } from '../helpers/reading.ts';

// The words are looked at here, thousands of times; the pictures elsewhere.
vi.mock('../../bot/pictures/picture.ts', () => ({ pngOf: () => Promise.resolve(new Uint8Array()) }));

type Lines = readonly {
  readonly ingredient: string;
  readonly infusedWith?: string | undefined;
  readonly strained?: boolean | undefined;
}[];

/** What people say together, and each kind by itself. */
const wishes: readonly (readonly Excluded[])[] = [
  ...excludedKinds.map((kind) => [kind]),
  ['nuts', 'animal'],
  ['nuts', 'coconut', 'palm'],
  [...excludedKinds],
];

let tools: Tools;

/** Everything has a price, and a third of it is on the shelf: by its number, so that each run is the same. */
beforeAll(async () => {
  const house = await testHouse();
  const book = await house.keeper.open('local');
  const priced = ingredients.map(({ id }, at) => ({
    kind: 'price-noted' as const,
    thing: id,
    price: String(2 + ((at * 37) % 60)),
    currency: 'EUR',
    pack: { amount: 1000, unit: 'g' as const },
  }));
  const bought = ingredients
    .filter((_one, at) => at % 3 !== 1)
    .map(({ id }, at) => lotOf(`Z${at}`, id, 5000));
  await book.record([...priced, ...bought], { who: 'm1', at: now });
  tools = await toolsIn(house);
});

const idsIn = (lines: Lines): readonly string[] =>
  lines.flatMap(({ ingredient, infusedWith }) => (infusedWith ? [ingredient, infusedWith] : [ingredient]));

interface Seen {
  answered: number;
  refused: number;
  questions: number;
}

/** Ids that an answer offers or puts into a recipe: its lines to go on from, its candidates. */
const offeredBy = ({ made = [], figures }: Answer): readonly string[] => {
  const candidates = (figures.candidates ?? []) as readonly { readonly ingredient: string }[];
  return [...made.flatMap(({ lines }) => idsIn(lines)), ...candidates.map(({ ingredient }) => ingredient)];
};

/** Every shea, argan and coconut in a recipe that is to be nut-free has to be told in the answer's words as a question. */
const asksAbout = (answer: Answer, id: string): boolean => {
  const words = textOf({ topic: 'substitute', request: {}, answer }, { width: 4000 }).toLowerCase();
  return words
    .split('\n')
    .some((line) => line.includes('question') && line.includes(shortName(id).toLowerCase()));
};

const look = async (
  topic: Topic,
  request: Record<string, unknown>,
  without: readonly Excluded[],
  seen: Seen,
) => {
  const answer = await topic.run(request, tools);
  if ('code' in answer) {
    seen.refused += 1;
    return;
  }
  seen.answered += 1;
  const ids = offeredBy(answer);
  for (const kind of without) {
    const kept = ids.filter((id) => isExcluded(id, kind));
    expect(kept, `${kind} in ${JSON.stringify(request)}`).toEqual([]);
  }
  if (!without.includes('nuts')) return;
  const made = (answer.made ?? []).flatMap(({ lines }) => idsIn(lines));
  for (const id of new Set(made.filter(isQuestion))) {
    seen.questions += 1;
    expect(asksAbout(answer, id), `${id} in ${JSON.stringify(request)}`).toBe(true);
  }
};

interface Way {
  readonly name: string;
  readonly topic: Topic;
  readonly request: (lines: Lines, without: readonly Excluded[], other: string) => Record<string, unknown>;
}

const first = (lines: Lines): string => lines[0]?.ingredient ?? '';
/** The last thing that stays in the tin. */
const last = (lines: Lines): string => lines.filter(({ strained }) => !strained).at(-1)?.ingredient ?? '';

const ways: readonly Way[] = [
  { name: 'the whole recipe', topic: substitute, request: (lines, without) => ({ lines, without }) },
  {
    name: 'candidates',
    topic: substitute,
    request: (lines, without) => ({ lines, without, replaces: last(lines) }),
  },
  {
    name: 'candidates, cheapest first',
    topic: substitute,
    request: (lines, without) => ({ lines, without, replaces: first(lines), by: 'price' }),
  },
  {
    name: 'candidates in stock',
    topic: substitute,
    request: (lines, without) => ({ lines, without, replaces: last(lines), stocked: true }),
  },
  {
    name: 'candidates without a recipe',
    topic: substitute,
    request: (_lines, without, other) => ({ without, replaces: other }),
  },
  {
    name: 'the cheapest variant',
    topic: substitute,
    request: (lines, without) => ({ lines, without, by: 'price' }),
  },
  {
    name: 'only what is in stock',
    topic: substitute,
    request: (lines, without) => ({ lines, without, stocked: true }),
  },
  {
    name: 'a swap',
    topic: substitute,
    request: (lines, without, other) => ({ lines, without, from: last(lines), to: other }),
  },
  {
    name: 'a part swapped',
    topic: substitute,
    request: (lines, without, other) => ({
      lines,
      without,
      from: last(lines),
      to: other,
      part: { amount: 0.5, unit: 'share' },
    }),
  },
  {
    name: 'a swap gram for gram after another',
    topic: substitute,
    request: (lines, without, other) => ({
      lines,
      without,
      earlier: [{ from: last(lines), to: other, gramForGram: true }],
      from: first(lines),
      to: 'hazelnut-oil',
      gramForGram: true,
    }),
  },
  {
    name: 'a design with it',
    topic: design,
    request: (lines, without, other) => ({
      form: 'tin',
      without,
      with: [...new Set([last(lines), other])].map((ingredient) => ({ ingredient })),
    }),
  },
  {
    name: 'a design below a price',
    topic: design,
    request: (_lines, without) => ({
      form: 'stick',
      without,
      price: true,
      priceLimit: { amount: '9', per: 'kg' },
    }),
  },
  {
    name: 'a design from stock, shown in full',
    topic: design,
    request: (_lines, without) => ({ form: 'tin', without, stocked: true, show: 0 }),
  },
  {
    name: 'a vegan design for a hot day',
    topic: design,
    request: (_lines, without, other) => ({
      form: 'stick',
      vegan: true,
      survivesC: 44,
      without,
      with: [{ ingredient: other, percent: 20 }],
    }),
  },
];

const none = (): Seen => ({ answered: 0, refused: 0, questions: 0 });

describe('the list of what is excluded', () => {
  it('should know the nuts, palms and animals of the library', () => {
    const found = (kind: Excluded) => ingredients.map(({ id }) => id).filter((id) => isExcluded(id, kind));
    expect(found('nuts')).toEqual([
      'sweet-almond-oil',
      'macadamia-oil',
      'walnut-oil',
      'hazelnut-oil',
      'peanut-oil',
    ]);
    expect(found('palm')).toEqual(['palm-oil', 'palm-kernel-oil']);
    expect(found('coconut')).toEqual(['fractionated-coconut-oil', 'coconut-oil', 'virgin-coconut-oil']);
    expect(found('animal').length).toBeGreaterThan(7);
    expect(found('scent').length).toBeGreaterThan(40);
  });
});

describe.each(ways.map((way) => [way.name, way] as const))('what is left out, by %s', (_name, way) => {
  it.each(demoRecipes.map(({ name, lines }) => [name, lines] as const))(
    'should not be in %s',
    async (_recipe, lines) => {
      for (const without of wishes)
        for (const other of ['sweet-almond-oil', 'coconut-oil', 'candelilla-wax', 'shea-butter'])
          await look(way.topic, way.request(lines, without, other), without, none());
    },
  );

  it('should not be in any of hundreds of recipes', { timeout: 120_000 }, async () => {
    const seen = none();
    await fc.assert(
      fc.asyncProperty(
        anyMix,
        fc.constantFrom(...wishes),
        fc.constantFrom(...ingredients.map(({ id }) => id)),
        async (mix, without, other) => {
          await look(way.topic, way.request(linesOfMix(mix), without, other), without, seen);
        },
      ),
      { numRuns: way.topic === design ? 150 : 500, seed: 20_261_126 },
    );
    // Were all refused, the property would say nothing.
    expect(seen.answered).toBeGreaterThan(40);
  });
});
