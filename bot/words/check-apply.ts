import { checkRecipe } from '../../core/check/check.ts';
import type { Finding } from '../../core/check/finding.ts';
import { type Shares, sharesOfLines } from '../../core/check/shares.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import type { Region } from '../../core/settings.ts';
import type { Answer, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { CheckWish } from '../topics/check.ts';
import { changedLines } from './check-next.ts';
import { capital, verdictWords } from './check-tables.ts';
import { nameOf, share } from './check-text.ts';
import { findRecipe } from './find-recipe.ts';
import { plain } from './numbers.ts';
import { by } from './recipe-table.ts';
import { localRules } from './warnings.ts';

const nothingToChange: Trouble = {
  code: 'not-found',
  text: 'There is no change of a share that would clear it: leave the line out, or dry the herb first. Then ask again, for example "check Fernlea mint lip balm".',
};

const notSo: Trouble = {
  code: 'missing',
  text: 'I can change a whole recipe only, in weights or percent, without herbs that are strained out. Write it out, for example "check 20 g beeswax, 79 g olive oil, 1 g lemongrass oil".',
};

const sentence = (lines: readonly RecipeLine[]): string =>
  lines.map(({ ingredient, amount }) => `${plain(amount, 3)}% ${nameOf(ingredient)}`).join(', ');

const rowsOf = (before: Shares, after: readonly RecipeLine[]): readonly (readonly string[])[] =>
  before.lines.map(({ ingredient, percent }) => {
    const now = after.find((line) => line.ingredient === ingredient)?.amount ?? 0;
    return [nameOf(ingredient), plain(percent, 3), now === 0 ? '–' : plain(now, 3)];
  });

/** Saves the changed recipe as a new version of the saved one; tells where it went. */
const saved = async (
  wish: CheckWish,
  lines: readonly RecipeLine[],
  tools: Tools,
): Promise<string | Trouble> => {
  if (wish.recipe === undefined) return `To keep it: "save recipe My balm: ${sentence(lines)}".`;
  const found = findRecipe(wish.recipe, tools.book);
  if ('code' in found) return found;
  await tools.book.record(
    { kind: 'recipe-saved', recipe: found.id, name: found.name, lines: [...lines] },
    by(tools),
  );
  const version = findRecipe(found.name, tools.book);
  const before = 'code' in version ? 1 : version.versions.length - 1;
  return `Saved as a new version of ${found.name}. The one before stays: "restore version ${before} of ${found.name}".`;
};

export interface Applied {
  readonly wish: CheckWish;
  readonly title: string;
  readonly findings: readonly Finding[];
  readonly shares: Shares;
  readonly input: Omit<Parameters<typeof checkRecipe>[0], 'lines' | 'strained'>;
  readonly region: Region;
}

/** Makes the change that clears the findings: what it was and is, how it looks now, and where it is kept. */
export const applyChange = async (applied: Applied, tools: Tools): Promise<Answer | Trouble> => {
  const { wish, title, findings, shares, input, region } = applied;
  const change = changedLines(findings, shares);
  if (!change) return findings.some((finding) => 'cuts' in finding) ? notSo : nothingToChange;
  const lines = [...change.lines];
  const after = sharesOfLines(lines, region);
  if (!after.ok) return notSo;
  const report = checkRecipe({ ...input, lines: after.value.lines, strained: [] });
  const kept = await saved(wish, lines, tools);
  if (typeof kept !== 'string') return kept;
  return {
    title: `${capital(title)}, changed: ${verdictWords(report)}`,
    blocks: [
      {
        kind: 'table',
        columns: [
          { title: '%', align: 'left' },
          { title: 'was', align: 'right' },
          { title: 'is', align: 'right' },
        ],
        rows: rowsOf(shares, lines),
      },
      {
        kind: 'text',
        text: `${capital(nameOf(change.filler))} takes up what was cut. Scent is ${share(report.aromaPercent)} now.`,
      },
      { kind: 'text', text: kept },
    ],
    figures: {
      verdict: report.verdict,
      aroma_percent: report.aromaPercent,
      saved: wish.recipe !== undefined,
      lines: lines.map(({ ingredient, amount }) => ({ ingredient, percent: amount })),
    },
    warnings: [localRules],
    next: [{ label: 'Look again', say: wish.recipe === undefined ? 'check it' : `check "${wish.recipe}"` }],
  };
};
