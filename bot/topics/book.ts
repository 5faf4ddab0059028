import { z } from 'zod';
import { tableNames } from '../../core/exchange/tables.ts';
import { recipeName } from '../../core/recipe.ts';
import { claimBook } from '../readers/book-claim.ts';
import { changeKindNames } from '../readers/book-words.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerBook } from '../words/book.ts';

const about = z.strictObject({
  recipe: recipeName.optional(),
  lot: z.string().max(40).optional(),
  reaction: z.string().max(10).optional(),
});

const request = z.strictObject({
  action: z.enum(['export', 'import', 'undo', 'redo', 'history', 'forget', 'keep', 'forget-contact']),
  /** As tables instead of one file: all of them, or some. */
  tables: z.union([z.literal('all'), z.array(z.enum(tableNames)).min(1)]).optional(),
  path: z.string().max(300, 'That path is longer than 300 characters. Move the file nearer.').optional(),
  /** The word that confirms what was shown. */
  code: z.string().max(6).optional(),
  conflicts: z.enum(['keep', 'take']).optional(),
  kind: z.enum(changeKindNames).optional(),
  about: about.optional(),
  entry: z.int().min(1, 'Entries count from 1. Ask "history" to see them.').optional(),
  from: z.iso.date().optional(),
  to: z.iso.date().optional(),
  member: z.string().max(40).optional(),
  page: z.int().min(1).optional(),
  reaction: z.string().max(10).optional(),
});
export type BookWish = z.output<typeof request>;

const writing: ReadonlySet<BookWish['action']> = new Set([
  'import',
  'undo',
  'redo',
  'forget',
  'keep',
  'forget-contact',
]);

const words = ['export', 'export as tables', 'undo', 'redo', 'history', 'keep everything'] as const;

const spoken = ({ do: what, about: said, when, confirm }: SlashValues): string => {
  if (confirm !== undefined) return `confirm ${confirm}`;
  if (what === 'history')
    return ['history', said === undefined ? '' : `of ${said}`, when ?? ''].join(' ').trim();
  if (what === 'undo') return said === undefined ? 'undo' : `undo ${said}`;
  return String(what ?? 'history');
};

export const book = topic({
  name: 'book',
  summary: 'Export, import, undo, history, and forgetting everything for good.',
  request,
  examples: [
    { say: 'export', means: { action: 'export' } },
    { say: 'export as csv', means: { action: 'export', tables: 'all' } },
    { say: 'history', means: { action: 'history' } },
    {
      say: 'who changed Fernlea hand balm this month',
      means: { action: 'history', about: { recipe: 'Fernlea hand balm' } },
      demo: 'Fernlea hand balm',
    },
  ],
  slash: {
    options: z.object({
      do: z.enum(words).optional().describe('What to do'),
      about: z.string().max(80).optional().describe('A recipe, a lot or batch, or a number in the history'),
      when: z.string().max(40).optional().describe('For history: yesterday, in March, last week'),
      confirm: z.string().max(120).optional().describe('What I asked you to confirm, with its word'),
    }),
    complete: { about: 'recipe' },
    say: spoken,
  },
  writes: ({ action }) => writing.has(action),
  manages: ({ action }) => action === 'import' || action === 'forget',
  read: claimBook,
  answer: answerBook,
});
