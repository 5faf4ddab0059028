import { z } from 'zod';
import { lotCodeText, mostContainers } from '../../core/bench/event-fields.ts';
import { maxLines, recipeLine, recipeName } from '../../core/recipe.ts';
import { pourForm } from '../forms/bench-forms.ts';
import { claimBatch } from '../readers/batch-claim.ts';
import { withoutRefused } from '../readers/batch-without.ts';
import { namedByWord } from '../readers/named-by-word.ts';
import { ofSpokenLot } from '../readers/of-spoken-lot.ts';
import { sameAgain } from '../readers/same-again.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerBatch } from '../words/batch.ts';

const example = 'For example "poured 24 tins of Fernlea hand balm today".';
const count = z
  .int(`Containers are counted whole. ${example}`)
  .min(1, `At least one container. ${example}`)
  .max(
    mostContainers,
    `More than ${mostContainers.toLocaleString('en')} containers is no small batch. ${example}`,
  );
const grams = (what: string) =>
  z
    .number()
    .gt(0, `${what} has to be more than zero. ${example}`)
    .max(1_000_000, `${what} is more than a tonne. ${example}`);
const celsius = z
  .number()
  .min(-50, 'Balm is not poured that cold. Say it like "bath 75 C, poured at 68 C".')
  .max(300, 'Nothing here is heated that far. Say it like "bath 75 C, poured at 68 C".');
const code = lotCodeText.max(40, 'A lot code has at most 40 characters.');
const remark = z.string().min(1).max(500, 'A note has at most 500 characters.');

const part = z.strictObject({
  count: count.optional(),
  all: z.literal(true).optional(),
  to: z.string().min(1).max(100).optional(),
  /** Where they differ from what the rest of the request says. */
  how: z.enum(['given', 'sold', 'used', 'wasted', 'kept', 'back']).optional(),
  lot: code.optional(),
  on: z.iso.date().optional(),
});

const request = z.strictObject({
  action: z.enum(['pour', 'correct', 'show', 'list', 'gone', 'back', 'look', 'note']),
  /** The batch: its code, or for a pour the maker's own code for it. */
  lot: code.optional(),
  recipe: recipeName.optional(),
  lines: z.array(recipeLine).max(maxLines, `A recipe has at most ${maxLines} lines.`).optional(),
  count: count.optional(),
  container: z.string().max(30).optional(),
  size: z.strictObject({ amount: grams('What one container holds'), unit: z.enum(['g', 'ml']) }).optional(),
  totalG: grams('What was weighed out').optional(),
  lossPercent: z.number().min(0).max(50, 'A loss of more than half is more waste than balm.').optional(),
  stepG: z.union([z.literal(1), z.literal(0.1), z.literal(0.01), z.literal(0.001)]).optional(),
  /** Lots that went into it, named by the maker; for a list the batches that are looked at. */
  lots: z.array(code).max(60, 'At most 60 lots in one batch.').optional(),
  /** The day it was done, ISO; today where it is missing. */
  on: z.iso.date().optional(),
  bestBefore: z.iso.date().optional(),
  bathC: celsius.optional(),
  pourC: celsius.optional(),
  weighedG: grams('What was weighed out').optional(),
  filledG: grams('What was filled').optional(),
  note: remark.optional(),
  pictures: z.array(z.url().max(500)).max(10, 'At most ten pictures at once.').optional(),
  why: remark.optional(),
  how: z.enum(['given', 'sold', 'used', 'wasted', 'kept']).optional(),
  parts: z.array(part).max(20, 'At most twenty places at once.').optional(),
  fine: z.boolean().optional(),
  text: remark.optional(),
  which: z.enum(['open', 'looks']).optional(),
  /** Poured from this day to that one, ISO, both in it. */
  from: z.iso.date().optional(),
  to: z.iso.date().optional(),
  /** The batch's last event that the member had seen. */
  seen: z.int().optional(),
  /** Said a second time on purpose. */
  again: z.boolean().optional(),
  /** In place of what was told before of this batch, or of the one that was named by mistake. */
  instead: z.union([z.literal(true), code]).optional(),
  /** A lot past its date was used, and the maker knows it. */
  expiredToo: z.boolean().optional(),
});
export type BatchWish = z.output<typeof request>;

const poured = ({ recipe, tins, size, lots, on, say: said }: SlashValues): string => {
  const many = tins === undefined ? '' : `${tins} tins${size === undefined ? '' : ` of ${size}`} of `;
  const from = lots === undefined ? '' : ` with lots ${lots}`;
  return `poured ${many}${recipe ?? ''}${from}${on === undefined ? ' today' : ` on ${on}`}${said === undefined ? '' : `, ${said}`}`;
};

const commands = {
  poured,
  list: () => 'list batches',
  show: ({ lot }: SlashValues) => `batch ${lot ?? ''}`,
  gave: ({ tins, lot, say: to }: SlashValues) => `gave ${tins ?? ''} tins of ${lot ?? ''} to ${to ?? ''}`,
  correct: ({ lot, say: said }: SlashValues) => `correct ${lot ?? ''}: ${said ?? ''}`,
  note: ({ lot, say: said }: SlashValues) => `note on ${lot ?? ''}: ${said ?? ''}`,
  fine: ({ lot }: SlashValues) => `${lot ?? ''} looks fine`,
} as const;
const commandNames = Object.keys(commands) as (keyof typeof commands)[];

const spoken = (values: SlashValues): string => commands[values.do as keyof typeof commands](values);

export const batch = topic({
  name: 'batch',
  summary:
    'Write down pours with their lots, best before, tins given out, notes; correct and look things up.',
  request,
  examples: [
    {
      say: 'poured 24 tins of Fernlea hand balm today',
      means: { action: 'pour', recipe: 'Fernlea hand balm', count: 24 },
      demo: 'Fernlea hand balm',
      changes: true,
    },
    {
      say: 'poured 12 jars of 30 g of Fernlea hand balm yesterday with lots K12, G7, weighed out 371 g, filled 355 g',
      means: { action: 'pour', count: 12, lots: ['K12', 'G7'], weighedG: 371, filledG: 355 },
      demo: 'Fernlea hand balm',
      changes: true,
    },
    { say: 'list batches', means: { action: 'list' } },
  ],
  slash: {
    options: z.object({
      do: z.enum(commandNames).describe('What to write down or look up'),
      recipe: z.string().max(1000).optional().describe('For poured: a saved recipe, or one written out'),
      tins: z.int().min(1).max(mostContainers).optional().describe('How many'),
      size: z.string().max(30).optional().describe('What each holds, for example 15 ml'),
      lots: z.string().max(200).optional().describe('For poured: lots used, for example K12, G7'),
      on: z.string().max(30).optional().describe('For poured: the day, for example yesterday or 2027-05-03'),
      lot: z.string().max(40).optional().describe("A batch's code, for example 26-KIVO"),
      say: z.string().max(500).optional().describe('To whom, what was wrong, or the note'),
    }),
    complete: { recipe: 'recipe', lot: 'batch', lots: 'lots' },
    form: pourForm,
    say: spoken,
  },
  writes: ({ action }) => action !== 'show' && action !== 'list',
  read: withoutRefused(sameAgain('batch', ofSpokenLot(namedByWord(claimBatch)))),
  answer: answerBatch,
});
