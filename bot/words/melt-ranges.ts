import { ingredientById } from '../../core/ingredients.ts';
import type { Answer, Trouble } from '../answer.ts';
import { both } from './forecast.ts';
import { about, sourceText } from './sources.ts';
import { shortName } from './warnings.ts';

type Ingredient = NonNullable<ReturnType<typeof ingredientById>>;
type Range = NonNullable<Ingredient['meltC']>;

/** The ends of a range, in °C: the same twice where one value is known. */
const endsOf = ({ low, high, value }: Range): [number, number] => [low ?? value, high ?? value];

const rangeText = (range: Range): string => {
  const [low, high] = endsOf(range);
  return `${about(range)}${low === high ? both(low) : `${both(low)} to ${both(high)}`}`;
};

const knownRange = (id: string): { readonly found: Ingredient; readonly range: Range } | Trouble => {
  const found = ingredientById(id);
  if (!found)
    return {
      code: 'unknown-ingredient',
      text: `I do not know the ingredient "${id}". Try "melting point of beeswax".`,
    };
  const range = found.meltC;
  return range
    ? { found, range }
    : {
        code: 'not-found',
        text: `I have no melting range for ${found.name}. Try one of the fats and waxes, for example "melting point of beeswax".`,
      };
};

const figuresOf = ({ id }: Ingredient, range: Range) => ({
  ingredient: id,
  melt_c: endsOf(range),
  how: range.how,
  source: [...range.source],
});

/** One ingredient's published melting range. */
export const answerOne = (id: string): Answer | Trouble => {
  const known = knownRange(id);
  if ('code' in known) return known;
  const { found, range } = known;
  return {
    title: `${found.name} melts at ${rangeText(range)}`,
    blocks: [
      ...(range.basis ? [{ kind: 'text', text: `Measured as: ${range.basis}.` } as const] : []),
      { kind: 'source', text: sourceText(range) },
    ],
    figures: figuresOf(found, range),
    warnings: [],
    next: [{ label: `About ${shortName(found.id)}`, say: `what is ${found.name}` }],
  };
};

const middleOf = (range: Range): number => endsOf(range)[0] + endsOf(range)[1];

/** Several ingredients' ranges side by side, the first to melt above; the figures keep the order they were asked in. */
export const answerSeveral = (ids: readonly string[]): Answer | Trouble => {
  const all = ids.map(knownRange);
  const trouble = all.find((known) => 'code' in known);
  if (trouble) return trouble;
  const ranges = all.flatMap((known) => ('code' in known ? [] : [known]));
  const [first, ...more] = ranges.map(({ found, range }) => figuresOf(found, range));
  const inOrder = ranges.toSorted((a, b) => middleOf(a.range) - middleOf(b.range));
  const overlap = inOrder.some(({ range }, at) => {
    const after = inOrder[at + 1];
    return after !== undefined && endsOf(after.range)[0] < endsOf(range)[1];
  });
  return {
    title: `${inOrder[0]?.found.name} melts first`,
    blocks: [
      {
        kind: 'list',
        items: inOrder.map(({ found, range }) => `${found.name}: ${rangeText(range)}.`),
      },
      ...(overlap
        ? [{ kind: 'text', text: 'Their ranges overlap: which one goes first depends on the lot.' } as const]
        : []),
      ...[...new Set(ranges.map(({ range }) => sourceText(range)))].map(
        (text) => ({ kind: 'source', text }) as const,
      ),
    ],
    figures: { ...first, also: more },
    warnings: [],
    next: inOrder.slice(0, 2).map(({ found }) => ({
      label: `About ${shortName(found.id)}`,
      say: `what is ${found.name}`,
    })),
  };
};
