import type { BookEntry, SavedRecipe } from '../../core/book.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import { type Answer, mostChoices, type Trouble } from '../answer.ts';
import { recipeNames } from '../readers/recipe-names.ts';
import type { Tools } from '../topic.ts';
import type { RecipeWish } from '../topics/recipe.ts';
import { findRecipe } from './find-recipe.ts';
import { nameTrouble, savedAnswer, saveRecipe } from './recipe-save.ts';
import { badLineWarnings, by, linesTable, next, recipeFigures } from './recipe-table.ts';
import { localRules } from './warnings.ts';

const versionLines = (entry: BookEntry | undefined): readonly RecipeLine[] | undefined =>
  entry?.event.kind === 'recipe-saved' ? entry.event.lines : undefined;

const noVersion = (saved: SavedRecipe, version: number): Trouble => ({
  code: 'not-found',
  text: `${saved.name} has ${saved.versions.length} version${saved.versions.length === 1 ? '' : 's'}; there is no version ${version}. Try "show version 1 of ${saved.name}".`,
});

const linesAt = async (
  saved: SavedRecipe,
  version: number,
  tools: Tools,
): Promise<readonly RecipeLine[] | Trouble> => {
  const seq = saved.versions[version - 1];
  const lines = seq === undefined ? undefined : versionLines(await tools.book.entry(seq));
  return lines ?? noVersion(saved, version);
};

const show = async (saved: SavedRecipe, wish: RecipeWish, tools: Tools): Promise<Answer | Trouble> => {
  const latest = saved.versions.length;
  const version = wish.version ?? latest;
  const lines = version === latest ? saved.lines : await linesAt(saved, version, tools);
  if ('code' in lines) return lines;
  const old = version === latest ? '' : ` (now version ${latest})`;
  return {
    title: `${saved.name}, version ${version}${old}`,
    blocks: [linesTable(lines)],
    figures: recipeFigures(saved.name, version, lines),
    warnings: [...badLineWarnings(lines), localRules],
    next: next(saved.name, version === latest ? lines : undefined),
  };
};

const restore = async (saved: SavedRecipe, wish: RecipeWish, tools: Tools): Promise<Answer | Trouble> => {
  const lines = await linesAt(saved, wish.version ?? 0, tools);
  if ('code' in lines) return lines;
  await tools.book.record(
    {
      kind: 'recipe-saved',
      recipe: saved.id,
      name: saved.name,
      lines: [...lines],
    },
    by(tools),
  );
  const now = tools.book.state.recipes[saved.id] ?? saved;
  return savedAnswer(now, true);
};

const rename = async (saved: SavedRecipe, wish: RecipeWish, tools: Tools): Promise<Answer | Trouble> => {
  const newName = wish.newName ?? '';
  const taken = recipeNames(tools.book.state).exact(newName);
  if (taken && taken.id !== saved.id) {
    return {
      code: 'not-allowed',
      text: `There is a recipe called "${taken.name}" already. Choose another name.`,
    };
  }
  const trouble = nameTrouble(newName);
  if (trouble) return trouble;
  await tools.book.record({ kind: 'recipe-renamed', recipe: saved.id, name: newName }, by(tools));
  return {
    title: `Renamed: ${saved.name} is now ${newName}`,
    blocks: [],
    figures: recipeFigures(newName, saved.versions.length, saved.lines),
    warnings: [],
    next: next(newName),
  };
};

const remove = async (saved: SavedRecipe, tools: Tools): Promise<Answer> => {
  await tools.book.record({ kind: 'recipe-deleted', recipe: saved.id }, by(tools));
  return {
    title: `Deleted: ${saved.name}`,
    blocks: [
      {
        kind: 'text',
        text: 'It is off the list. To have it again, save these lines under its name:',
      },
      linesTable(saved.lines),
    ],
    figures: recipeFigures(saved.name, saved.versions.length, saved.lines),
    warnings: [],
  };
};

/** Versions told in one answer, newest first; a recipe edited for years stays readable on a phone. */
const mostVersions = 20;

const versions = async (saved: SavedRecipe, tools: Tools): Promise<Answer> => {
  const all = saved.versions
    .map((seq, index) => ({ seq, version: index + 1 }))
    .slice(-mostVersions)
    .reverse();
  const entries = await Promise.all(all.map(({ seq }) => tools.book.entry(seq)));
  const rows = all.map(({ version }, index) => {
    const entry = entries[index];
    return [String(version), entry?.at.slice(0, 10) ?? '', String(versionLines(entry)?.length ?? 0)];
  });
  return {
    title: `${saved.name}: ${saved.versions.length} version${saved.versions.length === 1 ? '' : 's'}`,
    blocks: [
      {
        kind: 'table',
        columns: [
          { title: 'version', align: 'right' },
          { title: 'saved', align: 'left' },
          { title: 'lines', align: 'right' },
        ],
        rows,
      },
      {
        kind: 'text',
        text: `Read one with "show version 1 of ${saved.name}".`,
      },
    ],
    figures: {
      ...recipeFigures(saved.name, saved.versions.length, saved.lines),
      versions: all.map(({ version }, index) => ({
        version,
        saved_at: entries[index]?.at ?? '',
        who: entries[index]?.who ?? '',
      })),
    },
    warnings: [],
  };
};

/** Recipe names told in one answer. */
const mostListed = 50;

const list = (tools: Tools): Answer => {
  const all = Object.values(tools.book.state.recipes).toSorted((a, b) => a.name.localeCompare(b.name, 'en'));
  const shown = all.slice(0, mostListed);
  const more =
    all.length > shown.length ? [`… and ${all.length - shown.length} more; ask "show" with a name.`] : [];
  const empty =
    'No recipes yet. Save one: "save recipe Winter balm: 20 g beeswax, 30 g shea butter, 50 g olive oil".';
  return {
    title: all.length === 1 ? '1 recipe' : `${all.length} recipes`,
    blocks:
      all.length === 0
        ? [{ kind: 'text', text: empty }]
        : [
            {
              kind: 'list',
              items: [...shown.map((each) => `${each.name} (${each.lines.length} lines)`), ...more],
            },
          ],
    figures: {
      recipes: shown.map(({ name, versions: seqs }) => ({
        name,
        version: seqs.length,
      })),
      count: all.length,
    },
    warnings: [],
    choices: {
      label: 'Show a recipe',
      steps: all.slice(0, mostChoices).map(({ name }) => ({ label: name, say: `show recipe "${name}"` })),
    },
  };
};

/** Answers everything about saved recipes. What it says is recorded is on disk. */
export const answerRecipe = async (wish: RecipeWish, tools: Tools): Promise<Answer | Trouble> => {
  if (wish.action === 'list') return list(tools);
  if (wish.action === 'save') return saveRecipe(wish, tools);
  const saved = findRecipe(wish.name ?? '', tools.book);
  if ('code' in saved) return saved;
  switch (wish.action) {
    case 'show':
      return show(saved, wish, tools);
    case 'versions':
      return versions(saved, tools);
    case 'restore':
      return restore(saved, wish, tools);
    case 'rename':
      return rename(saved, wish, tools);
    case 'delete':
      return remove(saved, tools);
  }
};
