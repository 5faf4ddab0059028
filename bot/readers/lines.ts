import { watchedThing } from '../../core/check/composition.ts';
import { defined } from '../../core/defined.ts';
import { ingredientById } from '../../core/ingredients.ts';
import type { RecipeLine, RecipeUnit } from '../../core/recipe.ts';
import type { Trouble } from '../answer.ts';
import { askWhich } from './ask-back.ts';
import { segmentsOf } from './cut.ts';
import type { Item } from './item.ts';
import { type Draft, draftOf, readSegment } from './segments.ts';

/** Recipe lines read from a stretch of a message, with what had to be assumed and what was left over. */
export interface LinesRead {
  readonly lines: readonly RecipeLine[];
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
  /** What a totals line says: "Total 100 g". */
  readonly total?: Item;
  /** Items that belong to no line: amounts without a name, names without an amount, other words. */
  readonly loose: readonly Item[];
}

const recipeUnit = (item: Item, fallback: RecipeUnit): RecipeUnit => {
  if (item.letter === 'n') return fallback;
  return item.unit === undefined || item.unit === 'C' || item.unit === 'F' ? fallback : item.unit;
};

/** Bare numbers take the unit of the other lines; a list of bare numbers is percent when it sums to 100, else parts. */
const bareUnit = (drafts: readonly Draft[]): { unit: RecipeUnit; said?: string } => {
  const bare = drafts.filter((draft) => draft.amount?.letter === 'n');
  if (bare.length === 0)
    return { unit: drafts.some((draft) => draft.amount?.letter === '%') ? 'percent' : 'part' };
  const other = drafts.find(
    (draft) => draft.amount && draft.amount.letter !== 'n' && draft.amount.letter !== 'd',
  );
  if (other?.amount) {
    const unit = recipeUnit(other.amount, 'part');
    return {
      unit,
      said: `I took the numbers without a unit as ${unit === 'percent' ? 'percent' : unit}.`,
    };
  }
  const sum = bare.reduce((all, draft) => all + (draft.amount?.value ?? 0), 0);
  const rest = drafts.some((draft) => draft.rest === 100);
  return Math.abs(sum - 100) < 0.51 || rest
    ? { unit: 'percent', said: 'I took the numbers as percent by weight.' }
    : { unit: 'part', said: 'I took the numbers as parts by weight.' };
};

interface Named {
  readonly id?: string;
  readonly trouble?: Trouble;
  readonly assumed?: string;
}

/** Settles a name that means several things where the amount tells: drops are of an essential oil. */
const settle = (draft: Draft): Named => {
  const ids = draft.name.ingredients ?? [];
  if (ids.length === 1) return draft.name.because ? { trouble: askWhich(draft.name) } : { id: ids[0] ?? '' };
  const drops = draft.amount?.letter === 'd';
  const aroma = ids.filter((id) => ingredientById(id)?.kind === 'essential-oil');
  const herbs = ids.filter((id) => ingredientById(id)?.kind === 'herb');
  if (drops && aroma.length === 1) return { id: aroma[0] ?? '' };
  if ((draft.strained || draft.fresh) && herbs.length === 1) return { id: herbs[0] ?? '' };
  return { trouble: askWhich(draft.name) };
};

interface LineRead {
  readonly line?: RecipeLine;
  readonly trouble?: Trouble;
  readonly assumed: readonly string[];
}

const unitOfDraft = (draft: Draft, bare: RecipeUnit): RecipeUnit => {
  if (draft.rest !== undefined) return 'rest';
  return draft.amount ? recipeUnit(draft.amount, bare) : 'part';
};

/** "olive oil to 100" among percentages fills up to 100 %, which is no amount. */
const restAmount = (draft: Draft, bare: RecipeUnit): number | undefined =>
  draft.rest === 100 && bare === 'percent' ? 0 : draft.rest;

const assumedOf = (draft: Draft, name: string, herb: boolean): string[] => {
  const { misspelt } = draft.name;
  return [
    ...(misspelt ? [`I read "${misspelt}" as ${name}.`] : []),
    ...(herb && !draft.strained
      ? [`I took the ${name} as strained out again: weighed, but not in the tin.`]
      : []),
  ];
};

const lineOf = (draft: Draft, bare: RecipeUnit): LineRead => {
  const { id, trouble } = settle(draft);
  if (id === undefined) return { ...defined({ trouble }), assumed: [] };
  const found = ingredientById(id);
  const herb = found?.kind === 'herb';
  const steeped = draft.infusedWith?.ingredients?.find((each) => ingredientById(each)?.kind === 'herb');
  const line: RecipeLine = {
    ingredient: id,
    amount: restAmount(draft, bare) ?? draft.amount?.value ?? 1,
    unit: unitOfDraft(draft, bare),
    ...defined({
      strained: draft.strained || herb || undefined,
      infusedWith: draft.name.infusedWith ?? steeped,
      fresh: draft.fresh || undefined,
    }),
  };
  return { line, assumed: assumedOf(draft, found?.name ?? watchedThing(id)?.name ?? id, herb) };
};

const ratioLines = (items: readonly Item[], names: readonly Item[]): Draft[] | undefined => {
  const ratio = items.find((item) => item.letter === 'r' || (item.letter === 'n' && item.upTo !== undefined));
  if (!ratio) return undefined;
  const parts = ratio.ratio ?? [ratio.value ?? 0, ratio.upTo ?? 0];
  if (parts.length !== names.length) return undefined;
  return names.map((name, index) => ({
    ...draftOf(items, name, {
      ...ratio,
      letter: 'p',
      unit: 'part',
      value: parts[index] ?? 0,
    }),
    strained: false,
  }));
};

/** "Equal parts", "the same weight of", "as much … as …": told of all the names there are. */
export const saysEqual = (items: readonly Item[]): boolean =>
  items.some(({ word }, at) => {
    if (word === 'equal' || word === 'equally' || word === 'half-and-half') return true;
    const next = items[at + 1];
    return (
      word === 'same' &&
      (next?.letter === 'b' || /^weigh/.test(next?.word ?? '')) &&
      items[at + 2]?.letter === 'o'
    );
  });

const equalLines = (items: readonly Item[], names: readonly Item[]): Draft[] | undefined => {
  if (!saysEqual(items) || names.length < 2) return undefined;
  return names.map((name) => ({
    ...draftOf([], name, undefined),
    strained: false,
  }));
};

const ratioTrouble: Trouble = {
  code: 'bad-quantity',
  text: 'The ratio has to name as many parts as there are ingredients, for example "beeswax and olive oil 1:3".',
};

const quietInRatio = new Set([
  'same',
  'weigh',
  'weight',
  'weights',
  'equal',
  'equally',
  'ratio',
  'proportion',
  'proportions',
  'by',
]);

const finish = (
  drafts: readonly Draft[],
  loose: readonly Item[],
  trouble: Trouble | undefined,
): LinesRead => {
  const bare = bareUnit(drafts);
  const lines: RecipeLine[] = [];
  const assumed: string[] = bare.said ? [bare.said] : [];
  let problem = trouble;
  for (const draft of drafts) {
    const read = lineOf(draft, bare.unit);
    problem ??= read.trouble;
    if (read.line) lines.push(read.line);
    assumed.push(...read.assumed);
  }
  return { lines, assumed, loose, ...(problem ? { trouble: problem } : {}) };
};

/**
 * Reads recipe lines out of items: one line a segment between commas, line breaks and "and"s, amount before or after
 * the name, or several pairs in a row; ratios, equal parts, "the rest", and totals lines.
 */
export const readLines = (items: readonly Item[]): LinesRead => {
  const names = items.filter((item) => item.letter === 'i');
  const whole = ratioLines(items, names) ?? equalLines(items, names);
  if (!whole && names.length > 1 && items.some((item) => item.letter === 'r')) {
    return { lines: [], assumed: [], loose: [], trouble: ratioTrouble };
  }
  if (whole) {
    const loose = items.filter((item) => /[wgvd%]/.test(item.letter) && !quietInRatio.has(item.word));
    return finish(whole, loose, undefined);
  }
  const segments = segmentsOf(items).map(readSegment);
  const drafts = segments.flatMap((segment) => segment.drafts);
  const nameless = drafts.filter((draft) => !draft.amount && draft.rest === undefined);
  // "Butter, shea 30 %": the kind before the name; it only counts where nothing else was named.
  const stray = nameless.filter((draft) => !draft.name.generic || nameless.length === drafts.length);
  const loose = [...segments.flatMap((segment) => segment.loose), ...stray.map((draft) => draft.name)];
  const total = segments.find((segment) => segment.total)?.total;
  const trouble = segments.find((segment) => segment.trouble)?.trouble;
  const read = finish(
    drafts.filter((draft) => !nameless.includes(draft)),
    loose,
    trouble,
  );
  return { ...read, ...defined({ total }) };
};
