import { watchedThing } from '../../core/check/composition.ts';
import { defined } from '../../core/defined.ts';
import { hazardsOf } from '../../core/hazards.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import type { Answer, Block, Column, NextStep, Warning } from '../answer.ts';
import type { Tools } from '../topic.ts';
import { readable } from './numbers.ts';
import { shortName, warningOf } from './warnings.ts';

const unitText = (line: RecipeLine): string => {
  if (line.unit === 'rest') return line.amount > 0 ? `to ${readable(line.amount)}` : 'the rest';
  const unit =
    line.unit === 'percent' ? '%' : line.unit === 'part' ? (line.amount === 1 ? 'part' : 'parts') : line.unit;
  return `${readable(line.amount)} ${unit}`;
};

const nameOfLine = (line: RecipeLine): string => {
  // "Herb tea (chamomile)": nothing is infused in oil there.
  if (line.infusedWith && watchedThing(line.ingredient))
    return `${shortName(line.ingredient)} (${shortName(line.infusedWith)})`;
  const base = line.infusedWith
    ? `${shortName(line.infusedWith)}-infused ${line.ingredient === 'infused-oil' ? 'oil' : shortName(line.ingredient)}`
    : shortName(line.ingredient);
  return `${line.fresh ? 'fresh ' : ''}${base}${line.strained ? ' (strained out)' : ''}`;
};

const columns: readonly Column[] = [
  { title: 'ingredient', align: 'left' },
  { title: 'amount', align: 'right' },
];

export const linesTable = (lines: readonly RecipeLine[]): Block => ({
  kind: 'table',
  columns,
  rows: lines.map((line) => [nameOfLine(line), unitText(line)]),
});

const lineFigures = (lines: readonly RecipeLine[]) =>
  lines.map(({ ingredient, amount, unit, strained, infusedWith }) => ({
    ingredient,
    amount,
    unit,
    ...(strained ? { strained } : {}),
    ...(infusedWith ? { infused_with: infusedWith } : {}),
  }));

export const recipeFigures = (
  name: string,
  version: number,
  lines: readonly RecipeLine[],
): Answer['figures'] => ({
  recipe: { name, version, lines: lineFigures(lines) },
});

export const by = (tools: Tools) => ({ who: tools.member.id, at: tools.at });

/** A line as it is typed; the figure is written out whole, so that nothing changes when it is read again. */
const typedLine = (line: RecipeLine): string =>
  line.unit === 'rest' && line.amount > 0
    ? `${nameOfLine(line)} to ${line.amount}`
    : `${line.unit === 'rest' ? 'the rest' : unitText(line).replace(/^\S+/, String(line.amount))} ${nameOfLine(line)}`;

/** The lines of a recipe as a member would type them, one below the other. */
export const typedLines = (lines: readonly RecipeLine[]): string => lines.map(typedLine).join('\n');

const editStep = (name: string, lines: readonly RecipeLine[]): NextStep => ({
  label: 'Change it',
  say: `save recipe ${name}: ${lines.map(typedLine).join(', ')}`,
  form: { name: 'recipe', filled: { name, lines: typedLines(lines) } },
});

/** What to do with a saved recipe; with its lines where they are the latest, so that they can be changed. */
export const next = (name: string, lines?: readonly RecipeLine[]): NextStep[] => [
  { label: '24 × 15 ml', say: `scale "${name}" to 24 tins of 15 ml` },
  { label: '500 g', say: `scale "${name}" to 500 g` },
  ...(lines ? [editStep(name, lines)] : []),
];

/** What does not belong in a balm and was kept as it was written. */
export const badLineWarnings = (lines: readonly RecipeLine[]): readonly Warning[] => {
  const bad = lines
    .filter(({ ingredient, fresh }) => fresh || watchedThing(ingredient) !== undefined)
    .map(({ ingredient, infusedWith, fresh }) => ({
      ingredient,
      percent: 0,
      ...defined({ infusedWith, fresh }),
    }));
  const hazards = hazardsOf({ lines: bad, strained: [], tooSmall: [] });
  return hazards
    .filter(({ code }) => code === 'brings-water' || code === 'not-for-lips')
    .map((hazard) => warningOf(hazard));
};
